// SPDX-License-Identifier: MIT
#include "formats/gpx.h"

#include "formats/degrees.h"
#include "formats/svg.h"

namespace duskrow::formats {

using domain::Done;
using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

constexpr std::int32_t mostLatE7 = 900'000'000;
constexpr std::int32_t mostLonE7 = 1'800'000'000;

std::string element(std::string_view name, std::string_view text)
{
    if (text.empty()) return {};
    const std::string tag(name);
    return "<" + tag + ">" + escapedXml(text) + "</" + tag + ">";
}

Result<std::string> pointElement(std::string_view tag, const GpxPoint& point)
{
    const auto [lat, lon] = point.place;
    if (lat < -mostLatE7 || lat > mostLatE7) return Error{ErrorCode::OutOfRange, {"latitude", "-90", "90"}};
    if (lon < -mostLonE7 || lon > mostLonE7)
        return Error{ErrorCode::OutOfRange, {"longitude", "-180", "180"}};
    const std::string name(tag);
    return "<" + name + " lat=\"" + degreesText(lat) + "\" lon=\""
        + degreesText(lon == mostLonE7 ? -mostLonE7 : lon) + "\">" + element("name", point.name)
        + element("desc", point.description) + "</" + name + ">\n";
}

Result<Done> addPoints(std::string& bytes, std::string_view tag, const std::vector<GpxPoint>& points)
{
    for (const GpxPoint& point : points) {
        const auto added = pointElement(tag, point);
        if (!added) return added.error();
        bytes += *added;
    }
    return Done{};
}

std::string twoDigits(long long value)
{
    return (value < 10 ? "0" : "") + std::to_string(value);
}

Result<std::string> metadata(const Gpx& gpx)
{
    std::string inner = element("name", gpx.name) + element("desc", gpx.description);
    if (gpx.made) {
        const auto seconds = std::chrono::floor<std::chrono::seconds>(*gpx.made).time_since_epoch();
        const auto days = std::chrono::floor<std::chrono::days>(seconds);
        const domain::LocalDay day{days};
        if (domain::yearOf(day) < 0 || domain::yearOf(day) > 9999)
            return Error{ErrorCode::OutOfRange, {"year", "0", "9999"}};
        const long long rest = (seconds - days).count();
        inner += element("time",
            domain::formatDay(day) + "T" + twoDigits(rest / 3600) + ":" + twoDigits(rest / 60 % 60) + ":"
                + twoDigits(rest % 60) + "Z");
    }
    return inner.empty() ? inner : "<metadata>" + inner + "</metadata>\n";
}

} // namespace

Result<std::string> writeGpx(const Gpx& gpx)
{
    const auto about = metadata(gpx);
    if (!about) return about.error();
    std::string bytes =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<gpx version=\"1.1\" creator=\"Duskrow\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n";
    bytes += *about;
    if (const auto added = addPoints(bytes, "wpt", gpx.waypoints); !added) return added.error();
    for (const GpxRoute& route : gpx.routes) {
        bytes += "<rte>" + element("name", route.name) + element("desc", route.description) + "\n";
        if (const auto added = addPoints(bytes, "rtept", route.points); !added) return added.error();
        bytes += "</rte>\n";
    }
    return bytes + "</gpx>\n";
}

} // namespace duskrow::formats
