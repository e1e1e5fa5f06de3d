// SPDX-License-Identifier: MIT
#pragma once

#include "domain/import/count_row.h"

namespace duskrow::domain {

// Wide tables: one row for each trap, and one column for each day on which was counted, with the day as its
// heading, or for each week.

// Where no column holds days or counts: makes those whose heading is a day, and that nobody chose to be
// anything, hold the counts of that day.
void findDayColumns(ColumnMap& map);

// The number of a week as people write it over a column: "Week 24", "wk 24", "W24", "semaine 24".
std::optional<int> weekInWords(std::string_view words);

// Whether a heading is a day or a week, whatever its order and its year are.
bool isDayHeading(const std::string& heading);

bool isOfDay(const MappedColumn& column);
bool isWide(const ColumnMap& map); // whether any column is of a day

// Reads the rows of a wide table: a count for each cell with something in it. A blank cell is no visit, and
// nothing is made of it.
class WideRowReader {
public:
    explicit WideRowReader(const RowTerms& terms);

    // cells   as RowReader::read
    // Errors  as there, one for each cell of a day; what is wrong with the whole row is said once
    void read(
        std::size_t line, std::vector<std::string> cells, std::vector<CountRow>& rows, RowWords& refused);

private:
    struct OfDay {
        std::size_t column = 0;
        std::string heading;
    };
    std::size_t m_columns = 0;
    std::vector<OfDay> m_days;
    RowReader m_reader; // of a table with two columns more: day and count of the cell that is read
};

} // namespace duskrow::domain
