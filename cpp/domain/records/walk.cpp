// SPDX-License-Identifier: MIT
#include "domain/records/walk.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;
using table::longText;

namespace {
constexpr std::int64_t mostLarvae = 9'999; // in one frame: hundreds are an outbreak
constexpr std::int64_t mostPods = 99'999;
} // namespace

template <>
const RecordKind& kindOf<Walk>()
{
    static const RecordKind kind{"walk",
        {
            table::withdrawn(),
            table::id("site", &Walk::site),
            table::id("season", &Walk::season),
            table::required(table::text("pest", &Walk::pest, Label)),
            table::text("protocol_version", &Walk::protocolVersion, Label),
            table::day("day", &Walk::day),
            table::integer("at_ms", &Walk::atMs, "ms since 1970-01-01 UTC", 0, table::lastMs, Label),
            table::integer("offset_min", &Walk::offsetMin, "min", -1440, 1440, Label),
            table::text("observer", &Walk::observer, Label),
            table::integer("stage_bbch", &Walk::stageBbch, "BBCH", 0, 99),
            table::integer("frame_cm2", &Walk::frameCm2, "cm2", 100, 100'000),
            table::flag("dry_season", &Walk::drySeason, Measured),
            table::flag("finished", &Walk::finished, Label),
            table::text("remark", &Walk::remark, Remark, longText),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Frame>()
{
    static const RecordKind kind{"frame",
        {
            table::withdrawn(),
            table::id("walk", &Frame::walk),
            table::day("day", &Frame::day),
            table::integer("at_ms", &Frame::atMs, "ms since 1970-01-01 UTC", 0, table::lastMs, Label),
            table::integer("offset_min", &Frame::offsetMin, "min", -1440, 1440, Label),
            table::integer("stop", &Frame::stop, "stops", 1, 999),
            table::integer("lat_e7", &Frame::latE7, "1e-7 degree", -900'000'000, 900'000'000),
            table::integer("lon_e7", &Frame::lonE7, "1e-7 degree", -1'800'000'000, 1'800'000'000),
            table::integer("accuracy_mm", &Frame::accuracy, "mm", 1, 100'000'000),
            table::integer("larvae", &Frame::larvae, "larvae", 0, mostLarvae),
            table::text("by_size", &Frame::bySize, Measured),
            table::integer("sick", &Frame::sick, "larvae", 0, mostLarvae),
            table::integer("pods_seen", &Frame::podsSeen, "pods", 0, mostPods),
            table::integer("pods_damaged", &Frame::podsDamaged, "pods", 0, mostPods),
            table::text("remark", &Frame::remark, Remark, longText),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Decision>()
{
    static const RecordKind kind{"decision",
        {
            table::withdrawn(),
            table::id("walk", &Decision::walk),
            table::text("protocol_version", &Decision::protocolVersion, Label),
            table::day("day", &Decision::day),
            table::decimal("cost", &Decision::costSum, "cost_unit"),
            table::decimal("cost_product", &Decision::costProduct, "cost_unit"),
            table::decimal("cost_application", &Decision::costApplication, "cost_unit"),
            table::decimal("cost_tracks", &Decision::costTracks, "cost_unit"),
            table::text("cost_unit", &Decision::costUnit, Label),
            table::decimal("price", &Decision::price, "price_unit"),
            table::text("price_unit", &Decision::priceUnit, Label),
            table::decimal("dry_divisor", &Decision::dryDivisor, ""),
            table::integer("label_days", &Decision::labelDays, "d", 0, 365),
            table::day("cutting_day", &Decision::cuttingDay),
            table::text("verdict", &Decision::verdict, Label),
            table::code("decided", &Decision::decided, decidedNames, Label),
            table::day("look_again_day", &Decision::lookAgainDay, Label),
            table::text("remark", &Decision::remark, Remark, longText),
        }};
    return kind;
}

} // namespace duskrow::domain
