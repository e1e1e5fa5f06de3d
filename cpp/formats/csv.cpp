// SPDX-License-Identifier: MIT
#include "formats/csv.h"

#include <algorithm>

#include "formats/utf8.h"

namespace duskrow::formats {

using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

bool isDigit(char byte)
{
    return byte >= '0' && byte <= '9';
}

bool takeDigits(std::string_view& rest)
{
    const auto end = std::find_if_not(rest.begin(), rest.end(), isDigit);
    const auto count = static_cast<std::size_t>(end - rest.begin());
    rest.remove_prefix(count);
    return count > 0;
}

bool takeSign(std::string_view& rest)
{
    const bool isSigned = !rest.empty() && (rest.front() == '+' || rest.front() == '-');
    if (isSigned) rest.remove_prefix(1);
    return isSigned;
}

// -3, +0.25, 1e-7
bool isPlainNumber(std::string_view text)
{
    takeSign(text);
    if (!takeDigits(text)) return false;
    if (!text.empty() && text.front() == '.') {
        text.remove_prefix(1);
        if (!takeDigits(text)) return false;
    }
    if (!text.empty() && (text.front() == 'e' || text.front() == 'E')) {
        text.remove_prefix(1);
        takeSign(text);
        if (!takeDigits(text)) return false;
    }
    return text.empty();
}

bool startsFormulaAfterApostrophes(std::string_view text)
{
    const auto first = text.find_first_not_of('\'');
    return first != std::string_view::npos
        && std::string_view("=+-@\t\r").find(text[first]) != std::string_view::npos;
}

std::string quoted(std::string_view text)
{
    std::string cell = "\"";
    for (const char byte : text) {
        if (byte == '"') cell += '"';
        cell += byte;
    }
    return cell + '"';
}

std::string cellText(const Cell& cell, bool isAlone)
{
    if (!cell) return isAlone ? "\"\"" : "";
    const std::string text = guardedCell(validUtf8(*cell));
    const bool hasOuterSpace = !text.empty() && (text.front() == ' ' || text.back() == ' ');
    const bool mustQuote =
        text.empty() || hasOuterSpace || text.find_first_of(",\"\r\n\t") != std::string::npos;
    return mustQuote ? quoted(text) : text;
}

void addRow(std::string& bytes, const std::vector<Cell>& row)
{
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (i > 0) bytes += ',';
        bytes += cellText(row[i], row.size() == 1);
    }
    bytes += "\r\n";
}

} // namespace

Result<std::string> writeCsv(const Table& table, ByteOrderMark mark)
{
    std::string bytes = mark == ByteOrderMark::Present ? "\xEF\xBB\xBF" : "";
    addRow(bytes, {table.header.begin(), table.header.end()});
    for (const auto& row : table.rows) {
        if (row.size() != table.header.size()) {
            const std::string cells = std::to_string(table.header.size());
            return Error{ErrorCode::OutOfRange, {"cells", cells, cells}, "table " + table.name};
        }
        addRow(bytes, row);
    }
    return bytes;
}

std::string guardedCell(std::string_view text)
{
    const bool isFormula = startsFormulaAfterApostrophes(text) && !isPlainNumber(text);
    return (isFormula ? "'" : "") + std::string(text);
}

std::string unguardedCell(std::string_view cell)
{
    const bool isGuarded = cell.starts_with('\'') && startsFormulaAfterApostrophes(cell);
    if (isGuarded) cell.remove_prefix(1);
    return std::string(cell);
}

} // namespace duskrow::formats
