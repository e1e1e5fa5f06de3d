// SPDX-License-Identifier: MIT
#include "domain/records/trap.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;
using table::longText;

namespace {
constexpr std::int64_t farthest = 100'000'000; // mm
} // namespace

template <>
const RecordKind& kindOf<Site>()
{
    static const RecordKind kind{"site",
        {
            table::withdrawn(),
            table::id("season", &Site::season),
            table::id("district", &Site::district),
            table::id("keeper", &Site::keeper),
            table::required(table::text("name", &Site::name, Label)),
            table::text("field", &Site::field, Label),
            table::text("crop", &Site::crop, Label),
            table::text("landowner", &Site::landowner, Label),
            table::day("agreed_day", &Site::agreedDay, Label),
            table::text("gate", &Site::gate, Remark, longText),
            table::day("seeded_day", &Site::seededDay),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Trap>()
{
    static const RecordKind kind{"trap",
        {
            table::withdrawn(),
            table::id("site", &Trap::site),
            table::id("season", &Trap::season),
            table::text("tag", &Trap::tag, Label),
            table::required(table::text("pest", &Trap::pest, Label)),
            table::text("protocol_version", &Trap::protocolVersion, Label),
            table::text("trap_type", &Trap::trapType, Label),
            table::day("set_day", &Trap::setDay),
            table::integer("set_at_ms", &Trap::setAtMs, "ms since 1970-01-01 UTC", 0, table::lastMs, Label),
            table::integer("offset_min", &Trap::offsetMin, "min", -1440, 1440, Label),
            table::integer("lat_e7", &Trap::latE7, "1e-7 degree", -900'000'000, 900'000'000),
            table::integer("lon_e7", &Trap::lonE7, "1e-7 degree", -1'800'000'000, 1'800'000'000),
            table::integer("accuracy_mm", &Trap::accuracy, "mm", 1, farthest),
            table::code("fix_method", &Trap::fixMethod, fixMethodNames),
            table::integer("fix_at_ms", &Trap::fixAtMs, "ms since 1970-01-01 UTC", 0, table::lastMs, Label),
            table::integer("fix_count", &Trap::fixCount, "fixes", 1, 1'000'000, Label),
            table::flag("cleaned", &Trap::cleaned, Measured),
            table::flag("handling_read", &Trap::handlingRead, Label),
            table::flag("lure_in", &Trap::lureIn, Measured),
            table::text("lure_lot", &Trap::lureLot, Label),
            table::day("lure_expiry", &Trap::lureExpiry, Label),
            table::flag("strip_in", &Trap::stripIn, Measured),
            table::integer("entrance_mm", &Trap::entrance, "mm", 0, table::tallest),
            table::integer("canopy_mm", &Trap::canopy, "mm", 0, table::tallest),
            table::code("height_rule", &Trap::heightRule, heightRuleNames, Label),
            table::integer("edge_distance_mm", &Trap::edgeDistance, "mm", 0, farthest),
            table::integer("farmyard_distance_mm", &Trap::farmyardDistance, "mm", 0, farthest),
            table::integer("light_distance_mm", &Trap::lightDistance, "mm", 0, farthest),
            table::text("photo", &Trap::photo, Label),
            table::id("paired_with", &Trap::pairedWith, false),
            table::id("replaces", &Trap::replaces, false),
            table::day("end_day", &Trap::endDay),
            table::code("end_reason", &Trap::endReason, endReasonNames),
            table::flag("lure_out", &Trap::lureOut, Measured),
            table::flag("strip_out", &Trap::stripOut, Measured),
            table::flag("washed", &Trap::washed, Label),
            table::flag("spare_lures_frozen", &Trap::spareLuresFrozen, Label),
            table::text("remark", &Trap::remark, Remark, longText),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Service>()
{
    static const RecordKind kind{"service",
        {
            table::withdrawn(),
            table::id("trap", &Service::trap),
            table::day("day", &Service::day),
            table::integer("at_ms", &Service::atMs, "ms since 1970-01-01 UTC", 0, table::lastMs, Label),
            table::integer("offset_min", &Service::offsetMin, "min", -1440, 1440, Label),
            table::code("what", &Service::what, serviceWhatNames),
            table::text("lure_lot", &Service::lureLot, Label),
            table::day("lure_expiry", &Service::lureExpiry, Label),
            table::flag("handling_read", &Service::handlingRead, Label),
            table::integer("entrance_mm", &Service::entrance, "mm", 0, table::tallest),
            table::integer("lat_e7", &Service::latE7, "1e-7 degree", -900'000'000, 900'000'000),
            table::integer("lon_e7", &Service::lonE7, "1e-7 degree", -1'800'000'000, 1'800'000'000),
            table::integer("accuracy_mm", &Service::accuracy, "mm", 1, farthest),
            table::code("fix_method", &Service::fixMethod, fixMethodNames),
            table::text("remark", &Service::remark, Remark, longText),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Loan>()
{
    static const RecordKind kind{"loan",
        {
            table::withdrawn(),
            table::id("trap", &Loan::trap),
            table::text("borrower", &Loan::borrower, Label),
            table::id("member", &Loan::member),
            table::day("from_day", &Loan::fromDay, Label),
            table::day("until_day", &Loan::untilDay, Label),
        }};
    return kind;
}

Uuid siteId(const Uuid& programme, const Uuid& season, const std::string& district, const std::string& name)
{
    const std::array parts{formatUuid(programme), std::string("site"), formatUuid(season), district, name};
    return uuidFromName(parts);
}

Uuid trapId(const Uuid& programme, const Uuid& site, const std::string& pest, const std::string& tag)
{
    const std::array parts{formatUuid(programme), std::string("trap"), formatUuid(site), pest, tag};
    return uuidFromName(parts);
}

} // namespace duskrow::domain
