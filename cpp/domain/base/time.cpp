// SPDX-License-Identifier: MIT
#include "domain/base/time.h"

#include <array>
#include <charconv>
#include <cstdio>

namespace duskrow::domain {

std::string formatDay(LocalDay day)
{
    const std::chrono::year_month_day ymd{day};
    std::array<char, 32> text{};
    const int year = static_cast<int>(ymd.year());
    if (year >= 0 && year <= 9999) { // every day of a record: many are written at once
        std::string plain(10, '-');
        const auto put = [&plain](std::size_t last, unsigned number, int digits) {
            for (; digits > 0; --digits, number /= 10) plain[last--] = static_cast<char>('0' + number % 10);
        };
        put(3, static_cast<unsigned>(year), 4);
        put(6, static_cast<unsigned>(ymd.month()), 2);
        put(9, static_cast<unsigned>(ymd.day()), 2);
        return plain;
    }
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", year, static_cast<unsigned>(ymd.month()),
        static_cast<unsigned>(ymd.day()));
    return text.data();
}

namespace {

bool readDigits(std::string_view text, unsigned& out)
{
    for (const char c : text)
        if (c < '0' || c > '9') return false;
    return std::from_chars(text.data(), text.data() + text.size(), out).ec == std::errc{};
}

} // namespace

Result<LocalDay> parseDay(std::string_view text)
{
    const auto refused = [text] { return Error{ErrorCode::NotADay, {std::string(text)}}; };
    unsigned year = 0;
    unsigned month = 0;
    unsigned day = 0;
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return refused();
    if (!readDigits(text.substr(0, 4), year) || !readDigits(text.substr(5, 2), month)
        || !readDigits(text.substr(8, 2), day))
        return refused();
    const std::chrono::year_month_day ymd{
        std::chrono::year{static_cast<int>(year)}, std::chrono::month{month}, std::chrono::day{day}};
    if (!ymd.ok()) return refused();
    return LocalDay{ymd};
}

} // namespace duskrow::domain
