// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/desk_book.h"
#include "app/row_list.h"
#include "store/questions.h"

namespace duskrow::app {

// "asked", "answered": how a question stands, as short as a line of the desk wants it.
QString questionState(const store::AskedQuestion& asked);
// What was asked whom by whom, in which words, and what came back: `key` is the question.
Row questionRow(const DeskBook& book, const store::AskedQuestion& asked);
QString memberWords(const DeskBook& book, const domain::Uuid& member);

} // namespace duskrow::app
