// SPDX-License-Identifier: MIT
#include "formats/csv_reader.h"

#include <algorithm>
#include <optional>

#include "formats/utf8.h"

namespace duskrow::formats {

using domain::Done;
using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

// Where the comma is the decimal sign, spreadsheets part cells with semicolons.
char separatorOf(std::string_view firstLine)
{
    bool isQuoted = false;
    bool hasSemicolon = false;
    for (const char sign : firstLine) {
        if (sign == '"') isQuoted = !isQuoted;
        if (isQuoted) continue;
        if (sign == ',') return ',';
        hasSemicolon = hasSemicolon || sign == ';';
    }
    return hasSemicolon ? ';' : ',';
}

class CsvReader {
public:
    explicit CsvReader(std::string_view bytes, std::optional<char> separator = {}) : m_rest(bytes)
    {
        if (m_rest.starts_with("\xEF\xBB\xBF")) m_rest.remove_prefix(3);
        while (takeLineEnd()) { }
        m_separator = separator ? *separator : separatorOf(m_rest.substr(0, m_rest.find_first_of("\r\n")));
    }

    // The next row; false behind the last one. Cells of the row before give their room to those of this one.
    Result<bool> next(CsvRow& row, std::size_t mostCells)
    {
        while (takeLineEnd()) { }
        if (m_rest.empty()) return false;
        row.line = m_line;
        std::size_t count = 0;
        do {
            if (count == mostCells) return unreadable();
            if (row.cells.size() == count) row.cells.emplace_back();
            std::string& cell = row.cells[count++];
            if (!m_rest.starts_with('"'))
                takePlainCell(cell);
            else if (const auto taken = takeQuotedCell(cell); !taken)
                return taken.error();
        } while (takeSeparator());
        if (!m_rest.empty() && !takeLineEnd()) return unreadable(); // text behind a closing quote
        row.cells.resize(count);
        return true;
    }

private:
    [[nodiscard]] Error unreadable() const { return {ErrorCode::TableUnreadable, {std::to_string(m_line)}}; }

    bool takeSeparator()
    {
        if (!m_rest.starts_with(m_separator)) return false;
        m_rest.remove_prefix(1);
        return true;
    }

    bool takeLineEnd()
    {
        if (!m_rest.starts_with('\r') && !m_rest.starts_with('\n')) return false;
        m_rest.remove_prefix(m_rest.starts_with("\r\n") ? 2 : 1);
        ++m_line;
        return true;
    }

    void takePlainCell(std::string& cell)
    {
        const auto isEnd = [this](char c) { return c == m_separator || c == '\n' || c == '\r'; };
        const auto* const end = std::find_if(m_rest.begin(), m_rest.end(), isEnd);
        const auto size = static_cast<std::size_t>(end - m_rest.begin());
        cell.assign(m_rest.substr(0, size));
        m_rest.remove_prefix(size);
    }

    Result<Done> takeQuotedCell(std::string& cell)
    {
        const Error open = unreadable(); // on the line where it opens
        m_rest.remove_prefix(1);
        cell.clear();
        while (!m_rest.empty()) {
            if (m_rest.starts_with("\"\"")) {
                cell += '"';
                m_rest.remove_prefix(2);
                continue;
            }
            if (m_rest.starts_with('"')) {
                m_rest.remove_prefix(1);
                return Done{};
            }
            const bool isLineEnd =
                m_rest.starts_with('\n') || (m_rest.starts_with('\r') && !m_rest.starts_with("\r\n"));
            if (isLineEnd) ++m_line;
            cell += m_rest.front();
            m_rest.remove_prefix(1);
        }
        return open;
    }

    std::string_view m_rest;
    std::size_t m_line = 1;
    char m_separator = ',';
};

} // namespace

Result<std::vector<CsvRow>> readCsv(std::string_view bytes)
{
    std::vector<CsvRow> rows;
    CsvReader reader(bytes);
    CsvRow row;
    while (true) {
        const auto isThere = reader.next(row, std::string_view::npos);
        if (!isThere) return isThere.error();
        if (!*isThere) return rows;
        for (std::string& cell : row.cells) cell = validUtf8(cell);
        rows.push_back(row);
    }
}

Result<Done> eachCsvRow(std::string_view text, const CsvForm& form, const std::function<bool(CsvRow&)>& take)
{
    CsvReader reader(text, form.delimiter);
    CsvRow row;
    for (std::size_t count = 0;; ++count) {
        const auto isThere = reader.next(row, form.mostCells);
        if (!isThere) return isThere.error();
        if (!*isThere) return Done{};
        if (count == form.mostRows) return Error{ErrorCode::TableTooLong, {std::to_string(form.mostRows)}};
        if (!take(row)) return Done{};
    }
}

} // namespace duskrow::formats
