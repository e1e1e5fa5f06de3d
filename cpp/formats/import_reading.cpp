// SPDX-License-Identifier: MIT
#include "formats/import_reading.h"

#include <algorithm>

#include "domain/base/uuid.h"
#include "domain/import/day_columns.h"
#include "formats/csv.h"
#include "formats/csv_reader.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

constexpr std::size_t enoughSamples = 5;

// What our own export put in front of a text that looks like a formula is taken off again.
void unguard(CsvRow& row)
{
    for (std::string& cell : row.cells)
        if (cell.starts_with('\'')) cell = unguardedCell(cell);
}

class CountsReader {
public:
    CountsReader(std::string_view bytes, const ImportChoices& choices) : m_choices(choices)
    {
        m_reading.hash = formatHex(hashOf(bytes));
        m_reading.encoding =
            choices.encoding ? EncodingFinding{*choices.encoding, EncodingReason::Chosen} : encodingOf(bytes);
        m_text = toUtf8(bytes, m_reading.encoding.encoding);
        m_reading.delimiter = delimiterOf(m_text);
        if (choices.delimiter) {
            m_reading.delimiter.delimiter = *choices.delimiter;
            m_reading.delimiter.reason = DelimiterReason::Chosen;
        }
        m_form.delimiter = m_reading.delimiter.delimiter;
    }

    Result<ImportReading> read()
    {
        if (const auto found = findColumns(); !found) return found.error();
        if (const auto needed = checkNeeded(m_reading.columns); !needed) return needed.error();
        if (const auto surveyed = survey(); !surveyed) return surveyed.error();
        const RowTerms terms{m_reading.columns, m_reading.dayOrder.order, m_reading.decimalMark.mark,
            m_choices.year, m_choices.weekStart};
        const auto read = isWide(terms.map) ? readWide(terms) : readLong(terms);
        if (!read) return read.error();
        return std::move(m_reading);
    }

    Result<ImportReading> look()
    {
        if (const auto found = findColumns(); !found) return found.error();
        bool isHeader = true;
        const auto read = eachCsvRow(m_text, m_form, [&](CsvRow& row) {
            if (!std::exchange(isHeader, false)) m_reading.samples.push_back(row.cells);
            return m_reading.samples.size() < enoughSamples;
        });
        if (!read) return read.error();
        return std::move(m_reading);
    }

private:
    Result<Done> readLong(const RowTerms& terms)
    {
        const RowReader reader(terms);
        const auto lines = static_cast<std::size_t>(std::count(m_text.begin(), m_text.end(), '\n'));
        m_reading.rows.reserve(std::min(lines, m_form.mostRows));
        return eachRow([&](CsvRow& row) {
            unguard(row);
            reader.read(row.line, row.cells, m_reading.rows, m_reading.refused);
        });
    }

    // One row may hold as many counts as it has columns: what is too much for a table is so here too.
    Result<Done> readWide(const RowTerms& terms)
    {
        WideRowReader reader(terms);
        const auto read = eachRow([&](CsvRow& row) {
            if (m_reading.rows.size() > m_form.mostRows) return;
            unguard(row);
            reader.read(row.line, row.cells, m_reading.rows, m_reading.refused);
        });
        if (read && m_reading.rows.size() > m_form.mostRows)
            return Error{ErrorCode::TableTooLong, {std::to_string(m_form.mostRows)}};
        return read;
    }

    // Every row below the names.
    Result<Done> eachRow(const std::function<void(CsvRow&)>& use)
    {
        bool isHeader = true;
        return eachCsvRow(m_text, m_form, [&](CsvRow& row) {
            if (!std::exchange(isHeader, false)) use(row);
            return true;
        });
    }

    Result<Done> findColumns()
    {
        std::vector<std::string> header;
        const auto read = eachCsvRow(m_text, m_form, [&](CsvRow& row) {
            unguard(row);
            header = row.cells;
            return false;
        });
        if (!read) return read.error();
        auto columns = columnMap(header, m_choices.columns);
        if (!columns) return columns.error();
        m_reading.columns = std::move(*columns);
        findDayColumns(m_reading.columns);
        m_reading.delimiter.columns = header.size();
        return Done{};
    }

    Result<Done> survey()
    {
        TableSurvey survey(m_reading.columns);
        for (const MappedColumn& column : m_reading.columns)
            if (isOfDay(column)) survey.takeDay(column.heading);
        bool isAnything = false;
        const auto read = eachRow([&](CsvRow& row) {
            isAnything = true;
            survey.take(row.cells);
            if (m_reading.samples.size() < enoughSamples) m_reading.samples.push_back(row.cells);
        });
        if (!read) return read.error();
        if (!isAnything) return Error{ErrorCode::TableEmpty, {""}};
        m_reading.dayOrder = survey.dayOrder();
        if (m_choices.dayOrder) m_reading.dayOrder = {m_choices.dayOrder, DayOrderReason::Chosen};
        m_reading.decimalMark = survey.decimalMark();
        if (m_choices.decimalMark) m_reading.decimalMark = {m_choices.decimalMark, DecimalReason::Chosen};
        return Done{};
    }

    const ImportChoices& m_choices;
    std::string m_text;
    CsvForm m_form;
    ImportReading m_reading;
};

} // namespace

Result<ImportReading> readCounts(std::string_view bytes, const ImportChoices& choices)
{
    return CountsReader(bytes, choices).read();
}

Result<ImportReading> lookAtTable(std::string_view bytes, const ImportChoices& choices)
{
    return CountsReader(bytes, choices).look();
}

} // namespace duskrow::formats
