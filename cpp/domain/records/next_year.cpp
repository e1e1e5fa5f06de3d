// SPDX-License-Identifier: MIT
#include "domain/records/next_year.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;

template <>
const RecordKind& kindOf<NextYear>()
{
    static const RecordKind kind{"next_year",
        {
            table::withdrawn(),
            table::id("member", &NextYear::member),
            table::integer("year", &NextYear::year, "", 1900, 2200, Label),
            table::flag("goes_on", &NextYear::goesOn, Label),
        }};
    return kind;
}

Uuid nextYearId(const Uuid& programme, const Uuid& member, int year)
{
    const std::array parts{
        formatUuid(programme), std::string("next_year"), formatUuid(member), std::to_string(year)};
    return uuidFromName(parts);
}

} // namespace duskrow::domain
