// SPDX-License-Identifier: MIT
#include "formats/icalendar.h"

#include <cstdlib>

#include "formats/degrees.h"
#include "formats/utf8.h"

namespace duskrow::formats {

using domain::Done;
using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

std::string digits(long long value, std::size_t count)
{
    std::string text = std::to_string(value);
    if (text.size() < count) text.insert(0, count - text.size(), '0');
    return text;
}

std::string dateText(domain::LocalDay day)
{
    const std::chrono::year_month_day date{day};
    return digits(static_cast<int>(date.year()), 4) + digits(static_cast<unsigned>(date.month()), 2)
        + digits(static_cast<unsigned>(date.day()), 2);
}

std::string timeText(WallTime at)
{
    const auto day = std::chrono::floor<std::chrono::days>(at);
    const auto minutes = (at - day).count();
    return dateText(day) + "T" + digits(minutes / 60, 2) + digits(minutes % 60, 2) + "00";
}

std::string stampText(domain::Instant at)
{
    const auto seconds = std::chrono::floor<std::chrono::seconds>(at).time_since_epoch();
    const auto day = std::chrono::floor<std::chrono::days>(seconds);
    const auto rest = (seconds - day).count();
    return dateText(domain::LocalDay{day}) + "T" + digits(rest / 3600, 2) + digits(rest / 60 % 60, 2)
        + digits(rest % 60, 2) + "Z";
}

std::string triggerText(std::chrono::minutes before)
{
    const std::string length = "PT" + std::to_string(std::llabs(before.count())) + "M";
    return before.count() > 0 ? "-" + length : length;
}

class CalendarLines {
public:
    void add(std::string_view line) { m_bytes += foldedLine(line); }
    void addText(std::string_view name, std::string_view text)
    {
        add(std::string(name) + ":" + escapedCalendarText(text));
    }
    void addTextIfAny(std::string_view name, std::string_view text)
    {
        if (!text.empty()) addText(name, text);
    }
    [[nodiscard]] const std::string& bytes() const { return m_bytes; }

private:
    std::string m_bytes;
};

bool hasFourDigitYear(domain::LocalDay day)
{
    const int year = domain::yearOf(day);
    return year >= 0 && year <= 9999;
}

Result<Done> checkSpan(domain::LocalDay first, domain::LocalDay last, bool isInOrder)
{
    if (!hasFourDigitYear(first) || !hasFourDigitYear(last)) {
        return Error{ErrorCode::OutOfRange, {"year", "0", "9999"}, "calendar event"};
    }
    if (!isInOrder) {
        return Error{ErrorCode::OutOfRange, {"end", dateText(first), "99991231"}, "calendar event"};
    }
    return Done{};
}

Result<Done> addWhen(CalendarLines& lines, const WholeDays& days)
{
    const auto dayAfter = days.last + std::chrono::days{1};
    if (const auto checked = checkSpan(days.first, dayAfter, days.first <= days.last); !checked) {
        return checked.error();
    }
    lines.add("DTSTART;VALUE=DATE:" + dateText(days.first));
    lines.add("DTEND;VALUE=DATE:" + dateText(dayAfter));
    lines.add("TRANSP:TRANSPARENT"); // a day on which something is due is not a day taken
    return Done{};
}

Result<Done> addWhen(CalendarLines& lines, const WallSpan& span)
{
    const auto dayOf = [](WallTime at) { return std::chrono::floor<std::chrono::days>(at); };
    if (const auto checked = checkSpan(dayOf(span.start), dayOf(span.end), span.start <= span.end);
        !checked) {
        return checked.error();
    }
    lines.add("DTSTART:" + timeText(span.start));
    // An end equal to the start is not allowed; without one the event is a moment.
    if (span.end > span.start) lines.add("DTEND:" + timeText(span.end));
    return Done{};
}

void addAlarm(CalendarLines& lines, const CalendarAlarm& alarm, const std::string& summary)
{
    lines.add("BEGIN:VALARM");
    lines.add("ACTION:DISPLAY");
    lines.add("TRIGGER:" + triggerText(alarm.before));
    lines.addText("DESCRIPTION", alarm.text.empty() ? summary : alarm.text);
    lines.add("END:VALARM");
}

Result<Done> addEvent(CalendarLines& lines, const CalendarEvent& event, domain::Instant stamp)
{
    if (event.uid.empty()) return Error{ErrorCode::Empty, {"uid"}, "calendar event"};
    lines.add("BEGIN:VEVENT");
    lines.addText("UID", event.uid);
    lines.add("DTSTAMP:" + stampText(stamp));
    const auto added = std::visit([&lines](const auto& when) { return addWhen(lines, when); }, event.when);
    if (!added) return added.error();
    lines.addText("SUMMARY", event.summary);
    lines.addTextIfAny("DESCRIPTION", event.description);
    lines.addTextIfAny("LOCATION", event.location);
    if (event.place)
        lines.add("GEO:" + degreesText(event.place->latE7) + ";" + degreesText(event.place->lonE7));
    if (event.alarm) addAlarm(lines, *event.alarm, event.summary);
    lines.add("END:VEVENT");
    return Done{};
}

} // namespace

Result<std::string> writeCalendar(const Calendar& calendar)
{
    if (!hasFourDigitYear(domain::dayOf(calendar.stamp, std::chrono::minutes{0}))) {
        return Error{ErrorCode::OutOfRange, {"year", "0", "9999"}, "calendar stamp"};
    }
    CalendarLines lines;
    lines.add("BEGIN:VCALENDAR");
    lines.add("VERSION:2.0");
    lines.add("PRODID:-//Duskrow//Duskrow//EN");
    lines.add("CALSCALE:GREGORIAN");
    lines.addTextIfAny("NAME", calendar.name);
    for (const CalendarEvent& event : calendar.events) {
        if (const auto added = addEvent(lines, event, calendar.stamp); !added) return added.error();
    }
    lines.add("END:VCALENDAR");
    return lines.bytes();
}

std::string foldedLine(std::string_view line)
{
    constexpr std::size_t mostOctets = 75;
    std::string folded;
    std::size_t used = 0;
    while (!line.empty()) {
        std::string character;
        appendUtf8(character, takeCodePoint(line));
        if (used + character.size() > mostOctets) {
            folded += "\r\n ";
            used = 1; // the space counts
        }
        folded += character;
        used += character.size();
    }
    return folded + "\r\n";
}

std::string escapedCalendarText(std::string_view text)
{
    std::string escaped;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char byte = text[i];
        const bool isReturnOfPair = byte == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
        if (isReturnOfPair) continue;
        if (byte == '\n' || byte == '\r') {
            escaped += "\\n";
        } else if (byte == '\\' || byte == ';' || byte == ',') {
            escaped += '\\';
            escaped += byte;
        } else if (byte == '\t' || (static_cast<unsigned char>(byte) >= 0x20 && byte != 0x7F)) {
            escaped += byte;
        }
    }
    return escaped;
}

} // namespace duskrow::formats
