// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <charconv>

#include "domain/log/turned_lines.h"
#include "domain/log/turned_tokens.h"

namespace duskrow::domain {

namespace {

bool takeVarint(std::string_view& bytes, std::uint64_t& number)
{
    number = 0;
    for (unsigned shift = 0; shift < 64 && !bytes.empty(); shift += 7) {
        const auto byte = static_cast<std::uint8_t>(bytes.front());
        bytes.remove_prefix(1);
        number |= std::uint64_t{byte & 0x7FU} << shift;
        if (byte < 0x80) return true;
    }
    return false;
}

bool takeLine(std::string_view& bytes, std::string_view& line)
{
    const std::size_t end = bytes.find('\n');
    if (end == std::string_view::npos) return false;
    line = bytes.substr(0, end);
    bytes.remove_prefix(end + 1);
    return true;
}

std::uint64_t zigzagBack(std::uint64_t number)
{
    return (number >> 1) ^ (0 - (number & 1));
}

// The values of one column, one after another.
class Values {
public:
    // Finds where they lie, and that all are there.
    bool take(std::string_view& bytes, Hole hole, std::size_t rows)
    {
        m_hole = hole;
        if (bytes.empty() || (bytes.front() != sameForAll && bytes.front() != oneEach)) return false;
        m_isSame = bytes.front() == sameForAll;
        m_count = m_isSame ? 1 : rows;
        bytes.remove_prefix(1);
        m_bytes = bytes;
        if (const std::size_t width = widthOf(hole); width > 0) {
            if (bytes.size() < width * m_count) return false;
            bytes.remove_prefix(width * m_count);
            return true;
        }
        std::uint64_t number = 0;
        std::string_view text;
        for (std::size_t i = 0; i < m_count; ++i)
            if (hole == Hole::Number ? !takeVarint(bytes, number) : !takeLine(bytes, text)) return false;
        return true;
    }

    [[nodiscard]] bool isSame() const { return m_isSame; }

    void appendNext(std::string& text)
    {
        if (m_hole == Hole::Number)
            appendNumber(text);
        else if (m_hole == Hole::Text)
            appendText(text);
        else
            appendHex(text);
    }

private:
    void appendNumber(std::string& text)
    {
        std::uint64_t difference = 0;
        takeVarint(m_bytes, difference);
        m_number += zigzagBack(difference);
        std::array<char, 24> digits{};
        const auto end =
            std::to_chars(digits.data(), digits.data() + digits.size(), static_cast<std::int64_t>(m_number));
        text.append(digits.data(), end.ptr);
    }

    void appendText(std::string& text)
    {
        std::string_view value;
        takeLine(m_bytes, value);
        text += value;
    }

    void appendHex(std::string& text)
    {
        static constexpr std::string_view hex = "0123456789abcdef";
        std::array<char, 64> digits{};
        std::size_t at = 0;
        const std::size_t width = widthOf(m_hole);
        for (std::size_t i = 0; i < width; ++i) {
            const auto byte = static_cast<std::uint8_t>(m_bytes[i * m_count + m_row]);
            if (m_hole == Hole::Id && (i == 4 || i == 6 || i == 8 || i == 10)) digits[at++] = '-';
            digits[at++] = hex[byte >> 4];
            digits[at++] = hex[byte & 0x0F];
        }
        ++m_row;
        text.append(digits.data(), at);
    }

    Hole m_hole{};
    bool m_isSame = false;
    std::size_t m_count = 0; // of values that are there
    std::size_t m_row = 0; // of planes
    std::string_view m_bytes;
    std::uint64_t m_number = 0;
};

// A shape with its columns; values that are the same in all lines are put into it once.
class Form {
public:
    std::size_t rows = 0; // lines of this shape

    bool takeText(std::string_view& bytes) { return takeLine(bytes, m_shape); }

    [[nodiscard]] std::size_t holes() const
    {
        return static_cast<std::size_t>(std::count_if(m_shape.begin(), m_shape.end(), isHole));
    }

    // left  bytes that this and the shapes behind it may come to
    bool takeColumns(std::string_view& bytes, std::size_t& left)
    {
        for (const char byte : m_shape) {
            if (isHole(byte)) {
                Values values;
                if (!values.take(bytes, static_cast<Hole>(byte), rows)) return false;
                if (values.isSame())
                    values.appendNext(m_text);
                else
                    m_parts.push_back({m_text.size(), values});
            } else {
                m_text += byte;
            }
            if (m_text.size() > left) return false;
        }
        left -= m_text.size();
        return true;
    }

    // False when it comes to more than `most` bytes.
    bool append(std::string& text, std::size_t most)
    {
        std::size_t from = 0;
        for (auto& [to, values] : m_parts) {
            text.append(m_text, from, to - from);
            values.appendNext(text);
            if (text.size() > most) return false;
            from = to;
        }
        text.append(m_text, from) += '\n';
        return text.size() <= most;
    }

private:
    std::string_view m_shape;
    std::string m_text;
    std::vector<std::pair<std::size_t, Values>> m_parts; // where they go
};

class Back {
public:
    Back(std::string_view bytes, std::size_t most) : m_bytes(bytes), m_most(most) { }

    std::optional<std::string> lines()
    {
        if (!isTurned(m_bytes)) return std::nullopt;
        m_bytes.remove_prefix(1);
        if (!takeShapes() || !takeOrder()) return std::nullopt;
        std::size_t left = m_most; // every shape stands in a line, so that all together are no longer
        for (Form& form : m_forms)
            if (form.rows == 0 || !form.takeColumns(m_bytes, left)) return std::nullopt;
        if (!m_bytes.empty()) return std::nullopt;
        std::string text;
        for (std::size_t line = 0; line < m_lines; ++line) {
            std::uint64_t number = 0;
            if (m_forms.size() > 1) takeVarint(m_order, number);
            if (!m_forms[number].append(text, m_most)) return std::nullopt;
        }
        return text;
    }

private:
    bool takeShapes()
    {
        std::uint64_t lines = 0;
        std::uint64_t shapes = 0;
        if (!takeVarint(m_bytes, lines) || lines == 0 || lines > mostTurnedLines) return false;
        if (!takeVarint(m_bytes, shapes) || shapes == 0 || shapes > lines) return false;
        m_lines = lines;
        m_forms.resize(shapes);
        std::size_t holes = 0;
        for (Form& form : m_forms) {
            if (!form.takeText(m_bytes)) return false;
            holes += form.holes();
            if (holes > mostTurnedHoles) return false;
        }
        return true;
    }

    bool takeOrder()
    {
        m_order = m_bytes;
        if (m_forms.size() == 1) m_forms.front().rows = m_lines;
        for (std::size_t i = 0; m_forms.size() > 1 && i < m_lines; ++i) {
            std::uint64_t number = 0;
            if (!takeVarint(m_bytes, number) || number >= m_forms.size()) return false;
            ++m_forms[number].rows;
        }
        return true;
    }

    std::string_view m_bytes;
    std::string_view m_order;
    std::size_t m_most;
    std::size_t m_lines = 0;
    std::vector<Form> m_forms;
};

} // namespace

bool isTurned(std::string_view content)
{
    return content.starts_with(turnedMark);
}

std::optional<std::string> turnBack(std::string_view turned, std::size_t most)
{
    return Back(turned, most).lines();
}

} // namespace duskrow::domain
