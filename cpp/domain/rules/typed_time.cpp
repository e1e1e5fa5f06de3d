// SPDX-License-Identifier: MIT
#include "domain/rules/typed_time.h"

#include <optional>
#include <string>

namespace duskrow::domain {

namespace {

constexpr std::size_t longestTime = 20;
constexpr int hoursOfADay = 24;
constexpr int minutesOfAnHour = 60;
constexpr int noon = 12;

// Small letters without blanks and, at the end, without points: " 6:30 P.M." is "6:30pm".
std::string plainTime(std::string_view typed)
{
    static constexpr std::string_view narrowBlank = "\u202F"; // as printed between a time and "p.m."
    static constexpr std::string_view hardBlank = "\u00A0";
    std::string plain;
    while (!typed.empty()) {
        if (typed.starts_with(narrowBlank) || typed.starts_with(hardBlank)) {
            typed.remove_prefix(typed.starts_with(narrowBlank) ? narrowBlank.size() : hardBlank.size());
            continue;
        }
        const char c = typed.front();
        typed.remove_prefix(1);
        if (c != ' ') plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    for (const std::string_view dotted : {"a.m.", "a.m", "p.m.", "p.m"})
        if (plain.ends_with(dotted))
            return plain.substr(0, plain.size() - dotted.size()) + dotted.front() + 'm';
    return plain;
}

std::optional<int> wholeNumber(std::string_view digits)
{
    if (digits.empty() || digits.size() > 2) return std::nullopt;
    int value = 0;
    for (const char c : digits) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

struct TimeParts {
    std::string_view hours;
    std::string_view minutes = "0";
    bool isParted = true;
};

// Parts a text of a time; in one run of digits the last two are the minutes, if there are three or more.
TimeParts timePartsOf(std::string_view text)
{
    constexpr std::size_t mostDigitsOfHours = 2;
    const std::size_t sign = text.find_first_of(":.h");
    if (sign == std::string_view::npos && text.size() <= mostDigitsOfHours) return {text};
    if (sign == std::string_view::npos)
        return {text.substr(0, text.size() - 2), text.substr(text.size() - 2)};
    const std::string_view minutes = text.substr(sign + 1);
    // "18h" says the hour; after a point or colon minutes must follow, both digits of them.
    if (minutes.empty() && text[sign] == 'h') return {text.substr(0, sign)};
    return {text.substr(0, sign), minutes, minutes.size() == 2};
}

} // namespace

Result<std::chrono::minutes> parseTimeOfDay(std::string_view typed)
{
    const Error refused{ErrorCode::NotATime, {std::string(typed)}};
    if (typed.size() > longestTime) return refused;
    std::string plain = plainTime(typed);
    const bool isMorning = plain.ends_with("am");
    const bool isHalved = isMorning || plain.ends_with("pm");
    if (isHalved) plain.resize(plain.size() - 2);
    const TimeParts parts = timePartsOf(plain);
    const auto hours = wholeNumber(parts.hours);
    const auto minutes = wholeNumber(parts.minutes);
    if (!parts.isParted || !hours || !minutes || *minutes >= minutesOfAnHour) return refused;
    if (!isHalved) {
        if (*hours >= hoursOfADay) return refused;
        return std::chrono::minutes{*hours * minutesOfAnHour + *minutes};
    }
    if (*hours < 1 || *hours > noon) return refused;
    const int hour = *hours % noon + (isMorning ? 0 : noon);
    return std::chrono::minutes{hour * minutesOfAnHour + *minutes};
}

} // namespace duskrow::domain
