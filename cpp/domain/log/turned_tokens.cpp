// SPDX-License-Identifier: MIT
#include "domain/log/turned_tokens.h"

#include <algorithm>
#include <charconv>

namespace duskrow::domain {

namespace {

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool isHex(char c)
{
    return isDigit(c) || (c >= 'a' && c <= 'f');
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

// What stands in the place of a text between quotes; nothing of Cell::number.
Hole holeOf(std::string_view content)
{
    if (isUuidText(content)) return Hole::Id;
    if (content.size() == 32 && isHexText(content)) return Hole::Stream;
    if (content.size() == 64 && isHexText(content)) return Hole::Hash;
    return Hole::Text;
}

// "<stream>.<number>"
bool isRefText(std::string_view content, std::int64_t& number)
{
    return content.size() > 33 && content[32] == '.' && isHexText(content.substr(0, 32))
        && readNumber(content.substr(33), number);
}

// How many of the bytes are digits, a sign before them among them.
std::size_t digitsAt(std::string_view bytes)
{
    std::size_t end = bytes.starts_with('-') ? 1 : 0;
    while (end < bytes.size() && isDigit(bytes[end])) ++end;
    return end;
}

// How many bytes there are before the quote that ends a text; all of them when none does.
std::size_t textAt(std::string_view bytes)
{
    std::size_t end = 0;
    while (end < bytes.size() && bytes[end] != '"') end += bytes[end] == '\\' ? 2 : 1;
    return std::min(end, bytes.size());
}

// Reads the value that must stand first in these bytes.
bool readAlike(std::string_view bytes, Cell& cell)
{
    if (cell.hole == Hole::Number) {
        cell.text = bytes.substr(0, digitsAt(bytes));
        return !cell.text.empty() && readNumber(cell.text, cell.number);
    }
    if (cell.hole == Hole::Text) {
        cell.text = bytes.substr(0, textAt(bytes));
        std::int64_t number = 0;
        return holeOf(cell.text) == Hole::Text && !isRefText(cell.text, number);
    }
    const std::size_t width = cell.hole == Hole::Id ? 36 : 2 * widthOf(cell.hole);
    cell.text = bytes.substr(0, width);
    return cell.text.size() == width
        && (cell.hole == Hole::Id ? isUuidText(cell.text) : isHexText(cell.text));
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
            else if (c == '-' || isDigit(c))
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
        const std::string_view digits = m_line.substr(m_at, digitsAt(m_line.substr(m_at)));
        Cell cell{Hole::Number, 0, digits};
        if (readNumber(digits, cell.number))
            put(cell);
        else
            m_shape += digits;
        m_at += digits.size();
    }

    void text()
    {
        const std::size_t end = m_at + 1 + textAt(m_line.substr(m_at + 1));
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
        if (isRefText(content, number.number)) {
            put({Hole::Stream, 0, content.substr(0, 32)});
            m_shape += '.';
            put(number);
        } else
            put({holeOf(content), 0, content});
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

bool splitAlike(std::string_view line, std::string_view shape, std::vector<Cell>& cells)
{
    cells.clear();
    while (!shape.empty()) {
        const auto* const hole = std::find_if(shape.begin(), shape.end(), isHole);
        const auto plain = static_cast<std::size_t>(hole - shape.begin());
        if (line.substr(0, plain) != shape.substr(0, plain)) return false;
        // Digits behind these would be one number with them.
        const bool goesOn = plain > 0 && (shape[plain - 1] == '-' || isDigit(shape[plain - 1]));
        line.remove_prefix(plain);
        shape.remove_prefix(plain);
        if (shape.empty()) break;
        Cell cell{static_cast<Hole>(shape.front()), 0, {}};
        if (!readAlike(line, cell) || (cell.hole == Hole::Number && isDigit(cell.text.front()) && goesOn))
            return false;
        line.remove_prefix(cell.text.size());
        shape.remove_prefix(1);
        cells.push_back(cell);
    }
    return line.empty();
}

} // namespace duskrow::domain
