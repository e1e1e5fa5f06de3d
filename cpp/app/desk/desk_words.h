// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "app/desk/desk_book.h"
#include "app/row_list.h"
#include "text/animal.h"
#include "text/desk_text.h"

namespace duskrow::app {

QString idWords(const domain::Uuid& id);

// "14 Jul, by phone"
QString visitWords(const domain::VisitOfDesk& visit);
// "47 moths", "could not count", "late"
QString standingWords(
    domain::WeekStanding standing, const domain::VisitOfDesk* visit, const text::Animal& animal);
QString observerWords(const DeskBook& book, const domain::Observer& observer);

struct FlagWords {
    QString key; // the same flag has it again
    QString head; // "Far above the traps around · 14 Jul"
    QString reason;
};
FlagWords flagWords(const domain::Flag& flag, const text::Animal& animal = {});

// What is said of the trap that is chosen.
std::vector<Row> trapFacts(
    const DeskBook& book, std::size_t trap, const domain::WeekDesk& desk, const text::Animal& animal);
// A flag with its reason, the counts around it and how many good counts get it; `subject` is the visit.
Row flagRow(const DeskBook& book, const domain::Flag& flag, const text::Animal& animal);
// The visits of a trap, the latest first; struck where the count is left out.
std::vector<Row> visitRows(const DeskBook& book, const domain::Uuid& trap,
    const std::map<domain::Uuid, std::string>& leftOut, const text::Animal& animal);
// All that is late of whoever has this trap.
text::LateAsk lateAsk(
    const DeskBook& book, const domain::WeekDesk& desk, std::size_t trap, const QString& from);

} // namespace duskrow::app
