// SPDX-License-Identifier: MIT
// Reads values from standard input (JSON) and writes them as a calendar or a table, so that a program that is
// not ours can hand in what it likes and compare what it reads back.
#include <iostream>
#include <nlohmann/json.hpp>
#include <string>

#include "formats/csv.h"
#include "formats/icalendar.h"

using namespace duskrow::domain;
using namespace duskrow::formats;
using nlohmann::json;

namespace {

WallTime wallTime(const json& value)
{
    return *parseDay(value.at("day").get<std::string>())
        + std::chrono::minutes{value.at("minutes").get<int>()};
}

CalendarEvent eventOf(const json& value)
{
    CalendarEvent event;
    event.uid = value.at("uid");
    if (value.contains("start")) {
        event.when = WallSpan{wallTime(value.at("start")), wallTime(value.at("end"))};
    } else {
        event.when = WholeDays{
            *parseDay(value.at("first").get<std::string>()), *parseDay(value.at("last").get<std::string>())};
    }
    event.summary = value.at("summary");
    event.description = value.at("description");
    event.location = value.at("location");
    if (value.contains("latE7")) event.place = GeoPoint{value.at("latE7"), value.at("lonE7")};
    if (value.contains("alarm")) {
        event.alarm =
            CalendarAlarm{std::chrono::minutes{value.at("alarm").get<int>()}, value.at("alarmText")};
    }
    return event;
}

Result<std::string> calendarOf(const json& value)
{
    Calendar calendar{value.at("name"), instantFromMs(value.at("stampMs")), {}};
    for (const json& event : value.at("events")) calendar.events.push_back(eventOf(event));
    return writeCalendar(calendar);
}

Result<std::string> tableOf(const json& value)
{
    Table table{"sample", value.at("header"), {}};
    for (const json& row : value.at("rows")) {
        std::vector<Cell> cells;
        for (const json& cell : row) cells.push_back(cell.is_null() ? Cell{} : Cell{cell.get<std::string>()});
        table.rows.push_back(cells);
    }
    return writeCsv(table, value.at("mark").get<bool>() ? ByteOrderMark::Present : ByteOrderMark::Absent);
}

} // namespace

int main(int count, char** arguments)
{
    if (count != 2) return 2;
    const json input = json::parse(std::cin);
    const auto bytes = std::string(arguments[1]) == "calendar" ? calendarOf(input) : tableOf(input);
    if (!bytes) return 1;
    std::cout << *bytes;
    return 0;
}
