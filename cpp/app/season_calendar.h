// SPDX-License-Identifier: MIT
#pragma once

#include "app/today_stops.h"
#include "formats/icalendar.h"

namespace duskrow::app {

// What is still to come at the viewer's traps, as publish/season_events.h says.
//
// name   of the programme
// stamp  when the file is made
// Errors those of store/queries.h
domain::Result<formats::Calendar> seasonCalendar(
    store::Reader& reader, const TodayAsk& ask, const QString& name, domain::Instant stamp);

} // namespace duskrow::app
