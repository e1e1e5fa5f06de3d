// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/base/time.h"
#include "formats/picture.h"

namespace duskrow::formats {

// One row of the strip. Its likely days lie within its widest ones; a day on both ends is a point in time.
struct StripEntry {
    std::string label; // "Peak of the flight"
    std::string days; // "12 Jul to 18 Jul"
    domain::LocalDay earliest;
    domain::LocalDay from;
    domain::LocalDay to;
    domain::LocalDay latest;
    bool isMeasured = false; // drawn full; what is expected is drawn hatched or hollow
};

struct StripTick {
    domain::LocalDay day;
    std::string label; // "Jul"
};

// All words come translated.
struct CalendarStripInput {
    double width = 360;
    double textScale = 1; // 1 to 2
    domain::LocalDay firstDay;
    domain::LocalDay lastDay;
    std::vector<StripEntry> entries = {};
    std::vector<StripTick> ticks = {};
    std::optional<domain::LocalDay> today = {};
    std::string todayLabel = {};
    std::string measuredLabel = {}; // of the key: "measured"
    std::string expectedLabel = {}; // "expected"
    std::string widestLabel = {}; // "at the widest"
    std::string title = {};
    std::string description = {};
};

// Moth and crop on one strip of time: a row for each thing, its likely days as a bar, its widest days as a
// thin line with ends, today as a line through all rows. Rows are as high as their words need, so the picture
// finds its own height. On a wide picture words stand beside the bars, else above them.
//
// Nothing is drawn below 160, as while a screen has no size yet.
Picture calendarStrip(const CalendarStripInput& input);

} // namespace duskrow::formats
