// SPDX-License-Identifier: MIT
#include "domain/records/bulletin.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;

template <>
const RecordKind& kindOf<PublishedBulletin>()
{
    static const RecordKind kind{"bulletin",
        {
            table::withdrawn(),
            table::id("season", &PublishedBulletin::season),
            table::required(table::text("pest", &PublishedBulletin::pest, Label)),
            table::text("trap_type", &PublishedBulletin::trapType, Label),
            table::required(table::text("week", &PublishedBulletin::week, Label)),
            table::integer("issue", &PublishedBulletin::issue, "issues", 1, 1'000'000, Label),
            table::integer("published_ms", &PublishedBulletin::publishedMs, "ms since 1970-01-01 UTC", 0,
                table::lastMs, Label),
            table::text("language", &PublishedBulletin::language, Label),
            table::text("title", &PublishedBulletin::title, Label),
            table::text("text", &PublishedBulletin::text, Label, table::halfAChange),
            table::text("areas", &PublishedBulletin::areas, Label, table::halfAChange),
        }};
    return kind;
}

Uuid bulletinId(
    const Uuid& programme, const std::string& pest, const std::string& trapType, const std::string& week)
{
    const std::array parts{formatUuid(programme), std::string("bulletin"), pest, trapType, week};
    return uuidFromName(parts);
}

} // namespace duskrow::domain
