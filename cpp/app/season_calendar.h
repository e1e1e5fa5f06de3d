// SPDX-License-Identifier: MIT
#pragma once

#include "app/today_stops.h"
#include "formats/icalendar.h"

namespace duskrow::app {

// What is still to come at the viewer's traps, as a calendar of whole days. At most one alarm a week: the
// evening of the count day. The same thing keeps its uid, so that the file may be read in again.
//
// name   of the programme
// stamp  when the file is made
// Errors those of store/queries.h
domain::Result<formats::Calendar> seasonCalendar(
    store::Reader& reader, const TodayAsk& ask, const QString& name, domain::Instant stamp);

} // namespace duskrow::app
