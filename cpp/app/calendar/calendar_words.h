// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include "app/calendar/calendar_reading.h"
#include "app/row_list.h"
#include "formats/calendar_strip.h"
#include "formats/flight_fan.h"

namespace duskrow::app {

// What the page of the calendar says, and its pictures without their sizes.

std::vector<Row> calendarRows(const CalendarBook& book); // in the order of the days
formats::CalendarStripInput stripInput(const CalendarBook& book);

// What warmth has come to and what it rests on; nothing without a course.
QStringList warmthLines(const CalendarBook& book);
// What the calendar cannot say, with the way out.
QStringList gapLines(const CalendarBook& book);
QStringList cautionLines(const domain::Protocol& protocol);

// Whose flight a page speaks of.
enum class WhoseFlight { Trap, District };

QString flightTitle(const FlightRead& flight, WhoseFlight whose);
QStringList flightLines(const CalendarBook& book, const FlightRead& flight, WhoseFlight whose);
// How it was worked out, and from what.
QStringList flightMethod(const CalendarBook& book, const FlightRead& flight);
formats::FlightFanInput fanInput(const CalendarBook& book, const FlightRead& flight);

} // namespace duskrow::app
