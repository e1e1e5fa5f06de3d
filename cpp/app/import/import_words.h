// SPDX-License-Identifier: MIT
#pragma once

#include "app/import/import_work.h"
#include "app/row_list.h"

namespace duskrow::app {

// How a file is written down: `key` is the choice it belongs to, `subject` what was found or chosen.
std::vector<Row> formRows(const formats::ImportReading& reading);
// Its columns with what they hold, why, and what stands in the first rows: `key` counts from 1.
std::vector<Row> columnRows(const formats::ImportReading& reading);
// What bringing it in makes and meets.
std::vector<Row> makesRows(const domain::ImportPlan& plan);
// The first of the words on rows, with their lines.
std::vector<Row> wordRows(const domain::RowWords& words);
QString moreWords(const domain::RowWords& words); // "and 12 more"; empty for none
// What a column may be, as codes and as words.
QStringList columnCodes();
QStringList columnNames();
// What taking back does: "season: 1, visit: 12".
QString countsByKind(const std::map<std::string, std::size_t>& counts);

} // namespace duskrow::app
