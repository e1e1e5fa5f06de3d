// SPDX-License-Identifier: MIT
#include "domain/records/programme.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;

template <>
const RecordKind& kindOf<Programme>()
{
    static const RecordKind kind{"programme",
        {
            table::withdrawn(),
            table::required(table::text("name", &Programme::name, Label)),
            table::text("region", &Programme::region, Label),
            table::flag("invented", &Programme::invented, Label),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Season>()
{
    static const RecordKind kind{"season",
        {
            table::withdrawn(),
            table::integer("year", &Season::year, "", 1900, 2200, Label),
            table::integer("week_start", &Season::weekStart, "ISO weekday", 1, 7, Label),
            table::integer("count_day", &Season::countDay, "ISO weekday", 1, 7, Label),
            table::integer("grace_days", &Season::graceDays, "days", 0, 6, Label),
            table::integer("report_day", &Season::reportDay, "ISO weekday", 1, 7, Label),
            table::integer("report_minute", &Season::reportMinute, "minutes of the day", 0, 1439, Label),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<District>()
{
    static const RecordKind kind{"district",
        {
            table::withdrawn(),
            table::required(table::text("name", &District::name, Label)),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<ProtocolUse>()
{
    static const RecordKind kind{"protocol_use",
        {
            table::withdrawn(),
            table::id("season", &ProtocolUse::season),
            table::required(table::text("pest", &ProtocolUse::pest, Label)),
            table::text("version", &ProtocolUse::version, Label),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Member>()
{
    static const RecordKind kind{"member",
        {
            table::withdrawn(),
            table::required(table::text("name", &Member::name, Label)),
            table::code("role", &Member::role, roleNames, Label),
            table::day("until_day", &Member::untilDay, Label),
        }};
    return kind;
}

Uuid seasonId(const Uuid& programme, int year)
{
    const std::array parts{formatUuid(programme), std::string("season"), std::to_string(year)};
    return uuidFromName(parts);
}

Uuid districtId(const Uuid& programme, const std::string& name)
{
    const std::array parts{formatUuid(programme), std::string("district"), name};
    return uuidFromName(parts);
}

Uuid protocolUseId(const Uuid& programme, const Uuid& season, const std::string& pest)
{
    const std::array parts{formatUuid(programme), std::string("protocol_use"), formatUuid(season), pest};
    return uuidFromName(parts);
}

} // namespace duskrow::domain
