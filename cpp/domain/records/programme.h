// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "domain/records/field.h"

namespace duskrow::domain {

// A programme: one group of people trapping in one region, over many years.
struct Programme : Record {
    std::string name;
    std::string region;
    std::optional<bool> invented; // a made-up district for showing; said on every screen and sheet
};

// One year of a programme. Its id comes from the year, so two devices that roll over meet in one record.
struct Season : Record {
    std::optional<int> year;
    std::optional<int> weekStart; // ISO weekday, 1 Monday to 7 Sunday, on which the reporting week starts
    std::optional<int> countDay; // ISO weekday on which traps are counted
    std::optional<int> graceDays; // a count this many days late still belongs to its week
    std::optional<int> reportDay; // ISO weekday by which counts are in
    std::optional<int> reportMinute; // local minute of that day
};

struct District : Record {
    std::string name;
};

// A pest that is trapped in one season, by the protocol file and version that was in use.
struct ProtocolUse : Record {
    Uuid season;
    std::string pest;
    std::string version;
};

enum class Role { Grower, Agronomist, Coordinator };
inline constexpr std::array<std::string_view, 3> roleNames{"grower", "agronomist", "coordinator"};

struct Member : Record {
    std::string name;
    std::optional<Role> role;
    std::optional<LocalDay> untilDay; // no longer one of us after it
};

template <>
const RecordKind& kindOf<Programme>();
template <>
const RecordKind& kindOf<Season>();
template <>
const RecordKind& kindOf<District>();
template <>
const RecordKind& kindOf<ProtocolUse>();
template <>
const RecordKind& kindOf<Member>();

// The id of a programme's season of one year.
Uuid seasonId(const Uuid& programme, int year);
// The id of a district that a table of counts names; `name` as plainWord gives it.
Uuid districtId(const Uuid& programme, const std::string& name);
// The id of a pest in use in one season.
Uuid protocolUseId(const Uuid& programme, const Uuid& season, const std::string& pest);

} // namespace duskrow::domain
