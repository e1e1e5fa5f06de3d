// SPDX-License-Identifier: MIT
#include "formats/csv_reader.h"

#include <algorithm>

#include "formats/utf8.h"

namespace duskrow::formats {

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
    explicit CsvReader(std::string_view bytes) : m_rest(bytes)
    {
        if (m_rest.starts_with("\xEF\xBB\xBF")) m_rest.remove_prefix(3);
    }

    Result<std::vector<CsvRow>> read()
    {
        std::vector<CsvRow> rows;
        while (takeLineEnd()) { }
        m_separator = separatorOf(m_rest.substr(0, m_rest.find_first_of("\r\n")));
        m_ends = {m_separator, '\r', '\n'};
        while (!m_rest.empty()) {
            if (takeLineEnd()) continue;
            CsvRow row{m_line, {}};
            do {
                auto cell = m_rest.starts_with('"') ? quotedCell() : Result<std::string>(plainCell());
                if (!cell) return cell.error();
                row.cells.push_back(validUtf8(*cell));
            } while (takeSeparator());
            if (!m_rest.empty() && !takeLineEnd()) return unreadable(); // text behind a closing quote
            rows.push_back(std::move(row));
        }
        return rows;
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

    std::string plainCell()
    {
        const std::size_t end = std::min(m_rest.find_first_of(m_ends), m_rest.size());
        std::string cell(m_rest.substr(0, end));
        m_rest.remove_prefix(end);
        return cell;
    }

    Result<std::string> quotedCell()
    {
        const Error open = unreadable(); // on the line where it opens
        m_rest.remove_prefix(1);
        std::string cell;
        while (!m_rest.empty()) {
            if (m_rest.starts_with("\"\"")) {
                cell += '"';
                m_rest.remove_prefix(2);
                continue;
            }
            if (m_rest.starts_with('"')) {
                m_rest.remove_prefix(1);
                return cell;
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
    std::string m_ends; // of a cell without quotes
};

} // namespace

Result<std::vector<CsvRow>> readCsv(std::string_view bytes)
{
    return CsvReader(bytes).read();
}

} // namespace duskrow::formats
