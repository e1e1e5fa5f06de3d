// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/winter/winter_book.h"

namespace duskrow::app {

// Who kept traps: `flags` holds what was said of the next year, "yes", "no" or "".
std::vector<Row> cooperatorRows(const WinterBook& book);

// What another season needs, a row a pest and type of trap; `flags` are lines.
std::vector<Row> orderRows(const WinterBook& book);

// The same as a list to send to whoever orders.
QString orderText(const WinterBook& book, const QString& programme);

// "7 go on, 2 do not, 3 have not said."
QString goingOnWords(const WinterBook& book);

} // namespace duskrow::app
