// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "domain/import/count_row.h"
#include "domain/import/table_form.h"

namespace duskrow::text {

// What was found about a table of counts, and why: "Day first, because 14/07/2026 can be read no other way."
QString finding(const domain::EncodingFinding& found);
QString finding(const domain::DelimiterFinding& found);
QString finding(const domain::DayOrderFinding& found);
// What is taken for the emptying of the traps where a row does not say.
QString emptiedFinding(std::optional<bool> emptied);
// "Elm flats, Poplar bend and 3 more"
QString namesFromFile(const std::vector<std::string>& names);
QString finding(const domain::DecimalFinding& found);
// What is taken for the emptying of the traps where a row does not say.
QString emptiedFinding(std::optional<bool> emptied);

// What a column holds, "the latitude", or that it is kept out; and why.
QString columnIs(const domain::MappedColumn& column);
QString columnWhy(const domain::MappedColumn& column);

// "Line 12, column “Count”: the count of the pest is empty. Fill it in."
QString rowWord(const domain::RowWord& word);

// What stands in a file, on one line, without signs that would move a cursor or turn a line around. It is
// plain text: who shows it must not read it as markup.
QString fromFile(const std::string& cell);

} // namespace duskrow::text
