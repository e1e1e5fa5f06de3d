// SPDX-License-Identifier: MIT
#include "domain/log/turned_lines.h"

#include <algorithm>
#include <charconv>
#include <unordered_map>

#include "domain/log/turned_tokens.h"

namespace duskrow::domain {

namespace {

constexpr char turnedMark = 1; // no line begins so
constexpr char sameForAll = 0;
constexpr char oneEach = 1;
constexpr std::string_view hexDigits = "0123456789abcdef";

void appendVarint(std::string& bytes, std::uint64_t number)
{
    for (; number >= 0x80; number >>= 7) bytes += static_cast<char>(number | 0x80);
    bytes += static_cast<char>(number);
}

// Small differences of either sign become small numbers.
std::uint64_t zigzag(std::uint64_t difference)
{
    return (difference << 1) ^ (0 - (difference >> 63));
}

std::uint64_t zigzagBack(std::uint64_t number)
{
    return (number >> 1) ^ (0 - (number & 1));
}

int digitOf(char hex)
{
    return hex <= '9' ? hex - '0' : hex - 'a' + 10;
}

struct Column {
    Hole hole{};
    std::vector<std::int64_t> numbers;
    std::vector<std::string_view> texts;

    explicit Column(const Cell& cell) : hole(cell.hole) { }

    void add(const Cell& cell)
    {
        if (hole == Hole::Number)
            numbers.push_back(cell.number);
        else
            texts.push_back(cell.text);
    }

    [[nodiscard]] bool isSame() const
    {
        const auto allOf = [](const auto& values) {
            return std::all_of(values.begin(), values.end(), [&](auto v) { return v == values.front(); });
        };
        return hole == Hole::Number ? allOf(numbers) : allOf(texts);
    }

    void write(std::string& bytes) const
    {
        const bool same = isSame();
        bytes += same ? sameForAll : oneEach;
        const std::size_t count = same ? 1 : std::max(numbers.size(), texts.size());
        if (hole == Hole::Number) {
            std::uint64_t before = 0;
            for (std::size_t i = 0; i < count; ++i) {
                const auto number = static_cast<std::uint64_t>(numbers[i]);
                appendVarint(bytes, zigzag(number - before));
                before = number;
            }
        } else if (hole == Hole::Text) {
            for (std::size_t i = 0; i < count; ++i) bytes.append(texts[i]) += '\n';
        } else {
            writePlanes(bytes, count);
        }
    }

private:
    // First bytes of all, second bytes of all, and so on: ids made one after another begin alike.
    void writePlanes(std::string& bytes, std::size_t count) const
    {
        const std::size_t start = bytes.size();
        bytes.resize(start + widthOf(hole) * count);
        for (std::size_t i = 0; i < count; ++i) {
            std::size_t at = start + i;
            for (std::size_t digit = 0; digit < texts[i].size(); digit += 2) {
                if (texts[i][digit] == '-') ++digit;
                bytes[at] = static_cast<char>(digitOf(texts[i][digit]) << 4 | digitOf(texts[i][digit + 1]));
                at += count;
            }
        }
    }
};

struct Shape {
    std::string text;
    std::vector<Column> columns;
};

// The values of one column, one after another.
struct Values {
    Hole hole{};
    bool isSame = false;
    std::size_t count = 0; // of rows that have one
    std::string_view rest; // of numbers and texts
    std::string_view planes;
    std::size_t row = 0;
    std::uint64_t number = 0;
};

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

class Back {
public:
    Back(std::string_view bytes, std::size_t most) : m_bytes(bytes), m_most(most) { }

    std::optional<std::string> lines()
    {
        if (!isTurned(m_bytes)) return std::nullopt;
        m_bytes.remove_prefix(1);
        if (!takeShapes() || !takeOrder() || !takeColumns() || !m_bytes.empty()) return std::nullopt;
        std::string text;
        for (std::size_t line = 0; line < m_lines; ++line) {
            std::uint64_t shape = 0;
            if (m_shapes.size() > 1) takeVarint(m_order, shape);
            append(m_shapes[shape], text);
            if (text.size() > m_most) return std::nullopt;
        }
        return text;
    }

private:
    struct Form {
        std::string_view text;
        std::size_t rows = 0;
        std::vector<Values> columns;
    };

    bool takeShapes()
    {
        std::uint64_t lines = 0;
        std::uint64_t shapes = 0;
        if (!takeVarint(m_bytes, lines) || lines == 0 || lines > mostTurnedLines) return false;
        if (!takeVarint(m_bytes, shapes) || shapes == 0 || shapes > lines) return false;
        m_lines = lines;
        m_shapes.resize(shapes);
        std::size_t holes = 0;
        for (Form& shape : m_shapes) {
            if (!takeLine(m_bytes, shape.text)) return false;
            for (const char byte : shape.text)
                if (isHole(byte)) shape.columns.push_back({static_cast<Hole>(byte), false, 0, {}, {}, 0, 0});
            holes += shape.columns.size();
            if (holes > mostTurnedHoles) return false;
        }
        return true;
    }

    bool takeOrder()
    {
        m_order = m_bytes;
        if (m_shapes.size() == 1) m_shapes.front().rows = m_lines;
        for (std::size_t i = 0; m_shapes.size() > 1 && i < m_lines; ++i) {
            std::uint64_t shape = 0;
            if (!takeVarint(m_bytes, shape) || shape >= m_shapes.size()) return false;
            ++m_shapes[shape].rows;
        }
        return true;
    }

    bool takeColumns()
    {
        for (Form& shape : m_shapes)
            for (Values& column : shape.columns)
                if (!takeColumn(column, shape.rows)) return false;
        return true;
    }

    // Finds where the values lie, and that all are there.
    bool takeColumn(Values& column, std::size_t rows)
    {
        if (m_bytes.empty() || (m_bytes.front() != sameForAll && m_bytes.front() != oneEach)) return false;
        column.isSame = m_bytes.front() == sameForAll;
        column.count = column.isSame ? 1 : rows;
        m_bytes.remove_prefix(1);
        if (const std::size_t width = widthOf(column.hole) * column.count; width > 0) {
            if (m_bytes.size() < width) return false;
            column.planes = m_bytes.substr(0, width);
            m_bytes.remove_prefix(width);
            return true;
        }
        column.rest = m_bytes;
        std::uint64_t number = 0;
        std::string_view text;
        for (std::size_t i = 0; i < column.count; ++i)
            if (column.hole == Hole::Number ? !takeVarint(m_bytes, number) : !takeLine(m_bytes, text))
                return false;
        return true;
    }

    static void append(Form& shape, std::string& text)
    {
        auto column = shape.columns.begin();
        for (const char byte : shape.text) {
            if (isHole(byte))
                appendValue(*column++, text);
            else
                text += byte;
        }
        text += '\n';
    }

    static void appendValue(Values& column, std::string& text)
    {
        if (column.hole == Hole::Number)
            appendNumber(column, text);
        else if (column.hole == Hole::Text)
            appendText(column, text);
        else
            appendHex(column, text);
        ++column.row;
    }

    static void appendNumber(Values& column, std::string& text)
    {
        if (std::uint64_t difference = 0;
            (!column.isSame || column.row == 0) && takeVarint(column.rest, difference))
            column.number += zigzagBack(difference);
        char digits[24];
        const auto end =
            std::to_chars(digits, digits + sizeof digits, static_cast<std::int64_t>(column.number)).ptr;
        text.append(digits, end);
    }

    static void appendText(Values& column, std::string& text)
    {
        std::string_view rest = column.rest;
        std::string_view value;
        takeLine(rest, value);
        if (!column.isSame) column.rest = rest;
        text += value;
    }

    static void appendHex(const Values& column, std::string& text)
    {
        const std::size_t width = widthOf(column.hole);
        const std::size_t row = column.isSame ? 0 : column.row;
        for (std::size_t i = 0; i < width; ++i) {
            const auto byte = static_cast<std::uint8_t>(column.planes[i * column.count + row]);
            if (column.hole == Hole::Id && (i == 4 || i == 6 || i == 8 || i == 10)) text += '-';
            text += hexDigits[byte >> 4];
            text += hexDigits[byte & 0x0F];
        }
    }

    std::string_view m_bytes;
    std::string_view m_order;
    std::size_t m_most;
    std::size_t m_lines = 0;
    std::vector<Form> m_shapes;
};

// Bytes below a space are marks here, and canonical lines have none.
bool mayTurn(std::string_view lines)
{
    return lines.ends_with('\n') && std::none_of(lines.begin(), lines.end(), [](char byte) {
        return static_cast<std::uint8_t>(byte) < 0x20 && byte != '\n';
    });
}

} // namespace

bool isTurned(std::string_view content)
{
    return content.starts_with(turnedMark);
}

std::string turn(std::string_view lines)
{
    if (!mayTurn(lines)) return std::string(lines);
    std::unordered_map<std::string, std::size_t> numbers;
    std::vector<Shape> shapes;
    std::vector<std::size_t> order;
    std::size_t holes = 0;
    std::string text;
    std::vector<Cell> cells;
    std::string_view line;
    for (std::string_view rest = lines; takeLine(rest, line);) {
        splitLine(line, text, cells);
        const auto [at, isNew] = numbers.try_emplace(text, shapes.size());
        if (isNew) {
            shapes.push_back({text, {cells.begin(), cells.end()}});
            holes += cells.size();
        }
        order.push_back(at->second);
        if (order.size() > mostTurnedLines || holes > mostTurnedHoles) return std::string(lines);
        std::vector<Column>& columns = shapes[at->second].columns;
        for (std::size_t i = 0; i < cells.size(); ++i) columns[i].add(cells[i]);
    }
    std::string turned(1, turnedMark);
    appendVarint(turned, order.size());
    appendVarint(turned, shapes.size());
    for (const Shape& shape : shapes) turned.append(shape.text) += '\n';
    if (shapes.size() > 1)
        for (const std::size_t number : order) appendVarint(turned, number);
    for (const Shape& shape : shapes)
        for (const Column& column : shape.columns) column.write(turned);
    return turned.size() < lines.size() ? turned : std::string(lines);
}

std::optional<std::string> turnBack(std::string_view turned, std::size_t most)
{
    return Back(turned, most).lines();
}

} // namespace duskrow::domain
