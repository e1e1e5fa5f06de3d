// SPDX-License-Identifier: MIT
#include "domain/log/turned_lines.h"

#include <algorithm>
#include <unordered_map>

#include "domain/log/turned_tokens.h"

namespace duskrow::domain {

namespace {

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

// Bytes below a space are marks here, and canonical lines have none. In pieces of one length, which the
// compiler makes a few steps of.
bool mayTurn(std::string_view lines)
{
    constexpr std::size_t piece = 64;
    const auto isMark = [](char byte) { return static_cast<std::uint8_t>(byte) < 0x20 && byte != '\n'; };
    if (!lines.ends_with('\n')) return false;
    for (; lines.size() >= piece; lines.remove_prefix(piece)) {
        unsigned marks = 0;
        for (std::size_t i = 0; i < piece; ++i) marks += isMark(lines[i]) ? 1U : 0U;
        if (marks > 0) return false;
    }
    return std::none_of(lines.begin(), lines.end(), isMark);
}

} // namespace

std::string turn(std::string_view lines)
{
    if (!mayTurn(lines)) return std::string(lines);
    std::unordered_map<std::string, std::size_t> numbers;
    std::vector<Shape> shapes;
    std::vector<std::size_t> order;
    std::size_t holes = 0;
    std::string text;
    std::vector<Cell> cells;
    for (std::size_t from = 0; from < lines.size();) {
        const std::size_t to = lines.find('\n', from);
        const std::string_view line = lines.substr(from, to - from);
        from = to + 1;
        // Most often a line has the shape of the one before it.
        if (order.empty() || !splitAlike(line, shapes[order.back()].text, cells)) {
            splitLine(line, text, cells);
            const auto [at, isNew] = numbers.try_emplace(text, shapes.size());
            if (isNew) {
                shapes.push_back({text, {cells.begin(), cells.end()}});
                holes += cells.size();
            }
            order.push_back(at->second);
        } else {
            order.push_back(order.back());
        }
        if (order.size() > mostTurnedLines || holes > mostTurnedHoles) return std::string(lines);
        std::vector<Column>& columns = shapes[order.back()].columns;
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

} // namespace duskrow::domain
