// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>

#include "domain/rules/calendar_of_season.h"
#include "formats/icalendar.h"

namespace duskrow::publish {

// Traps with what they are called. The traps only look on.
struct TrapsToPlan {
    std::vector<domain::TrapToPlan> traps = {};
    std::map<domain::Uuid, QString> titles = {};
};

// What is still to come at them as events of whole days. At most one alarm a week: the evening of the count
// day. The same thing on the same day for the same traps is the same event, with the same uid, in every file.
std::vector<formats::CalendarEvent> seasonEvents(const TrapsToPlan& plan, domain::LocalDay today);

} // namespace duskrow::publish
