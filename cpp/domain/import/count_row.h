// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/base/units.h"
#include "domain/import/table_survey.h"

namespace duskrow::domain {

// One count as a row of a table tells it, every cell read and within its bounds.
struct CountRow {
    std::size_t line = 0; // of the file
    int year = 0;
    LocalDay day;
    Moths pest;
    std::string district; // texts as typed, without the blanks around them
    std::string site;
    std::string tag;
    std::string observer;
    std::string remark;
    std::string field;
    std::string crop;
    std::optional<GeoPoint> place;
    std::optional<LocalDay> setDay;
    std::optional<LocalDay> fromDay; // on which the period began, by its own column or by the nights
    std::optional<std::int64_t> nights;
    std::optional<Moths> notIt;
    std::optional<Bees> bees;
    std::optional<Millimetres> entrance;
    std::optional<Millimetres> canopy;
    std::optional<bool> emptied; // the trap, at the count
};

// What is said of one cell, or of the whole row where there is no column.
struct RowWord {
    std::size_t line = 0;
    std::string column = {}; // its heading
    Error error;
};

// The words on all rows; of a hostile file only the first are kept, and all are counted.
struct RowWords {
    static constexpr std::size_t most = 10'000;

    std::vector<RowWord> words;
    std::size_t rows = 0; // all of them

    void add(RowWord word)
    {
        ++rows;
        if (words.size() < most) words.push_back(std::move(word));
    }
};

// How the cells of a table are to be read.
struct RowTerms {
    ColumnMap map;
    std::optional<DayOrder> dayOrder;
    std::optional<DecimalMark> decimalMark;
    std::optional<int> year; // of the whole table
    std::optional<int> weekStart =
        {}; // ISO weekday; a week in a heading is one of the programme. Monday if not said
};

// Reads rows, one after the other.
class RowReader {
public:
    explicit RowReader(RowTerms terms);

    // Adds the row to `rows`; true when it did.
    //
    // cells   may be fewer or more than the columns; what lies beyond them must be empty
    // Errors  as the first cell that cannot be read says; nothing at all for a row without any content
    bool read(std::size_t line, const std::vector<std::string>& cells, std::vector<CountRow>& rows,
        RowWords& refused) const;

    // As what is said of a row names it from now on.
    void nameColumn(std::size_t column, const std::string& heading) { m_terms.map[column].heading = heading; }

private:
    [[nodiscard]] std::string_view cell(
        const std::vector<std::string>& cells, const std::optional<std::size_t>& column) const;
    [[nodiscard]] std::optional<std::size_t> at(ImportField field) const
    {
        return m_columns[static_cast<std::size_t>(field)];
    }
    struct Reading;

    RowTerms m_terms;
    std::vector<std::optional<std::size_t>> m_columns; // by field
};

} // namespace duskrow::domain
