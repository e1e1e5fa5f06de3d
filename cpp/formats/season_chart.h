// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "formats/picture.h"

namespace duskrow::formats {

// A band of whole-season catches, from its lower edge up to the next one's.
struct SeasonBand {
    domain::Moths from;
    std::string name;
    int dots = 1; // 1 to 4, so that no meaning hangs on colour
};

// What one count found for the nights between two days. Nights between one interval and the next were not
// trapped: the curve crosses them level.
struct SeasonInterval {
    domain::LocalDay from;
    domain::LocalDay to;
    domain::Moths caught;
    bool isLong = false; // longer than the protocol's interval: drawn dashed
    bool isAtLeast = false; // the trap failed, there were more
    std::string note = {}; // "one count over 14 nights"
};

// Days of which nothing is known, drawn hatched.
struct UnknownDays {
    domain::LocalDay from;
    domain::LocalDay to;
    std::string label = {};
};

// Where the season is likely to end.
struct SeasonFan {
    domain::Moths low;
    domain::Moths high;
    std::string label;
};

struct SeasonTick {
    domain::LocalDay day;
    std::string label;
};

// All words come translated. Intervals are in the order of their days and do not overlap; bands ascend from 0
// and are empty where none applies. Number writes a catch in the reader's way; plain digits when it is empty.
struct SeasonChartInput {
    double width = 360; // 320 or more
    double height = 360;
    double textScale = 1; // 1 to 2
    domain::LocalDay firstDay;
    domain::LocalDay lastDay;
    std::vector<SeasonBand> bands = {};
    std::vector<SeasonInterval> intervals = {};
    std::vector<UnknownDays> unknown = {};
    std::optional<SeasonFan> fan = {};
    std::optional<domain::LocalDay> today = {};
    std::vector<SeasonTick> ticks = {};
    std::string todayLabel = {};
    std::string totalLabel = {}; // "259", "at least 140"
    std::string emptyLabel = {}; // "No counts yet"
    std::string title = {};
    std::string description = {};
    std::function<std::string(domain::Moths)> number = {};
};

// One trap's season: the catch so far as a curve over the bands of whole seasons, each count as a bar at the
// bottom on the same scale, and the likely end of the season as a fan. A label that finds no room is left
// out, the total, the fan's and the empty season's excepted, which grow smaller first: what it said is in the
// list that stands beside every chart.
//
// Nothing is drawn below 160 x 160, as while a screen has no size yet.
Picture seasonChart(const SeasonChartInput& input);

} // namespace duskrow::formats
