// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <string>
#include <string_view>

#include "domain/base/result.h"
#include "domain/base/units.h"

namespace duskrow::domain {

// An absolute moment, UTC, millisecond precision. Never a local time.
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

// A day on the wall calendar of the place observed. Never an instant.
using LocalDay = std::chrono::local_days;

// When field work was done: the local day it counts for, the moment, and the offset between the two.
struct Moment {
    LocalDay day;
    Instant at;
    std::chrono::minutes offset{0};
};

constexpr Instant instantFromMs(std::int64_t ms)
{
    return Instant{std::chrono::milliseconds{ms}};
}
constexpr std::int64_t toMs(Instant at)
{
    return at.time_since_epoch().count();
}

constexpr LocalDay dayOf(int year, unsigned month, unsigned day)
{
    return LocalDay{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day}};
}
constexpr LocalDay dayOf(Instant at, std::chrono::minutes offset)
{
    return LocalDay{std::chrono::floor<std::chrono::days>(at + offset).time_since_epoch()};
}
constexpr Nights nightsBetween(LocalDay from, LocalDay to)
{
    return Nights{(to - from).count()};
}
constexpr int yearOf(LocalDay day)
{
    return static_cast<int>(std::chrono::year_month_day{day}.year());
}

// "2026-07-14"
std::string formatDay(LocalDay day);

// Reads "2026-07-14" only.
//
// Errors  NotADay when the text has another form or names no day of the calendar
Result<LocalDay> parseDay(std::string_view text);

} // namespace duskrow::domain
