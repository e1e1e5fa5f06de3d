// SPDX-License-Identifier: MIT
#include "demo/nmea_log.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace duskrow::demo {

using namespace duskrow::domain;

namespace {

constexpr int firstSecond = 13 * 3600 + 30 * 60;
constexpr int secondsPerFix = 4;

template <typename... Args>
std::string formatted(const char* form, Args... args)
{
    std::array<char, 128> text{};
    std::snprintf(text.data(), text.size(), form, args...);
    return text.data();
}

// Degrees and minutes as one number, then the hemisphere: "5209.47412,N".
std::string angle(double degrees, int width, const char* positive, const char* negative)
{
    const double size = std::abs(degrees);
    const int whole = static_cast<int>(size);
    return formatted(
        "%0*d%08.5f,%s", width, whole, (size - whole) * 60.0, degrees >= 0 ? positive : negative);
}

std::string sentence(const std::string& body)
{
    unsigned sum = 0;
    for (const char c : body) sum ^= static_cast<unsigned char>(c);
    return '$' + body + formatted("*%02X\r\n", sum);
}

} // namespace

std::string nmeaLog(LocalDay day, const GeoPoint& place, int fixes)
{
    const std::chrono::year_month_day ymd{day};
    const std::string date = formatted("%02u%02u%02d", static_cast<unsigned>(ymd.day()),
        static_cast<unsigned>(ymd.month()), static_cast<int>(ymd.year()) % 100);
    const std::string where =
        angle(place.latitude(), 2, "N", "S") + ',' + angle(place.longitude(), 3, "E", "W");
    std::string log;
    for (int i = 0; i < fixes; ++i) {
        const int second = firstSecond + secondsPerFix * i;
        const std::string time = formatted("%02d%02d%02d.00", second / 3600, second / 60 % 60, second % 60);
        log += sentence("GPRMC," + time + ",A," + where + ",0.0,0.0," + date + ",,");
        log += sentence("GPGGA," + time + ',' + where + ",1,09,0.9,500.0,M,,M,,");
    }
    return log;
}

} // namespace duskrow::demo
