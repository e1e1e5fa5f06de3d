// SPDX-License-Identifier: MIT
#include "domain/log/turned_tokens.h"

#include <algorithm>
#include <charconv>

namespace duskrow::domain {

namespace {

bool isHex(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
}

bool isHexText(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), isHex);
}

bool isUuidText(std::string_view text)
{
    if (text.size() != 36) return false;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (i == 8 || i == 13 || i == 18 || i == 23 ? text[i] != '-' : !isHex(text[i])) return false;
    return true;
}

// A number that comes out as it went in: no zeros before it, and within 64 bits.
bool readNumber(std::string_view text, std::int64_t& number)
{
    const auto [end, failure] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (failure != std::errc{} || end != text.data() + text.size()) return false;
    const std::string_view digits = text.substr(text.front() == '-' ? 1 : 0);
    return digits.front() != '0' || text == "0";
}

class Splitter {
public:
    Splitter(std::string_view line, std::string& shape, std::vector<Cell>& cells)
        : m_line(line), m_shape(shape), m_cells(cells)
    {
    }

    void split()
    {
        if (m_line.size() == 65 && m_line.front() == '-' && isHexText(m_line.substr(1))) {
            m_shape += '-';
            put({Hole::Hash, 0, m_line.substr(1)});
            return;
        }
        while (m_at < m_line.size()) {
            const char c = m_line[m_at];
            if (c == '"')
                text();
            else if (c == '-' || (c >= '0' && c <= '9'))
                number();
            else {
                m_shape += c;
                ++m_at;
            }
        }
    }

private:
    void put(const Cell& cell)
    {
        m_shape += static_cast<char>(cell.hole);
        m_cells.push_back(cell);
    }

    void number()
    {
        std::size_t end = m_at + 1;
        while (end < m_line.size() && m_line[end] >= '0' && m_line[end] <= '9') ++end;
        const std::string_view digits = m_line.substr(m_at, end - m_at);
        Cell cell{Hole::Number, 0, digits};
        if (readNumber(digits, cell.number))
            put(cell);
        else
            m_shape += digits;
        m_at = end;
    }

    void text()
    {
        std::size_t end = m_at + 1;
        while (end < m_line.size() && m_line[end] != '"') end += m_line[end] == '\\' ? 2 : 1;
        if (end >= m_line.size()) { // no end: as it is
            m_shape += m_line.substr(m_at);
            m_at = m_line.size();
            return;
        }
        const std::string_view content = m_line.substr(m_at + 1, end - m_at - 1);
        m_at = end + 1;
        m_shape += '"';
        if (m_at < m_line.size() && m_line[m_at] == ':')
            m_shape += content;
        else
            value(content);
        m_shape += '"';
    }

    void value(std::string_view content)
    {
        Cell number{Hole::Number, 0, {}};
        if (isUuidText(content))
            put({Hole::Id, 0, content});
        else if (content.size() == 32 && isHexText(content))
            put({Hole::Stream, 0, content});
        else if (content.size() == 64 && isHexText(content))
            put({Hole::Hash, 0, content});
        else if (content.size() > 33 && content[32] == '.' && isHexText(content.substr(0, 32))
            && readNumber(content.substr(33), number.number)) {
            put({Hole::Stream, 0, content.substr(0, 32)});
            m_shape += '.';
            put(number);
        } else
            put({Hole::Text, 0, content});
    }

    std::string_view m_line;
    std::string& m_shape;
    std::vector<Cell>& m_cells;
    std::size_t m_at = 0;
};

} // namespace

void splitLine(std::string_view line, std::string& shape, std::vector<Cell>& cells)
{
    shape.clear();
    cells.clear();
    Splitter(line, shape, cells).split();
}

} // namespace duskrow::domain
