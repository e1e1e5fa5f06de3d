// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/time.h"
#include "domain/base/units.h"

namespace duskrow::formats {

// A time on the wall clock of whoever reads the calendar: written without zone or offset ("floating").
using WallTime = std::chrono::local_time<std::chrono::minutes>;

// Both days are part of the event.
struct WholeDays {
    domain::LocalDay first;
    domain::LocalDay last;
};

struct WallSpan {
    WallTime start;
    WallTime end;
};

// before  how long before the start it rings; negative for after, as in the evening of a whole-day event
struct CalendarAlarm {
    std::chrono::minutes before{0};
    std::string text;
};

// uid  stays the same for the same thing to do, so that a calendar read again replaces and does not add
struct CalendarEvent {
    std::string uid;
    std::variant<WholeDays, WallSpan> when;
    std::string summary;
    std::string description = {};
    std::string location = {};
    std::optional<domain::GeoPoint> place = {};
    std::optional<CalendarAlarm> alarm = {};
};

struct Calendar {
    std::string name;
    domain::Instant stamp; // when the file is made
    std::vector<CalendarEvent> events;
};

// The calendar as the bytes of an .ics file. Control characters in texts are left out, line breaks are kept.
//
// Errors  Empty {"uid"} when an event has none
//         OutOfRange {"year", ...} when a day has no year of four digits
//         OutOfRange {"end", ...} when an event ends before it starts
// Source  RFC 5545 (iCalendar), sections 3.1, 3.3.11, 3.6; RFC 7986 for NAME
domain::Result<std::string> writeCalendar(const Calendar& calendar);

// One content line, broken after at most 75 octets with CRLF and a space, never inside a character.
std::string foldedLine(std::string_view line);

// Backslash, semicolon, comma and line break as a TEXT value carries them.
std::string escapedCalendarText(std::string_view text);

} // namespace duskrow::formats
