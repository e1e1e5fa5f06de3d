// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "domain/base/height_rule.h"
#include "domain/records/field.h"

namespace duskrow::domain {

// A field of one season. The crop rotates, so next year's field is another site of the same keeper.
struct Site : Record {
    Uuid season;
    Uuid district;
    Uuid keeper; // the member whose field it is
    std::string name;
    std::string field; // as people there call it
    std::string crop;
    std::string landowner;
    std::optional<LocalDay> agreedDay; // the day the landowner said yes
    std::string gate; // how to get in
    std::optional<LocalDay> seededDay;
};

enum class FixMethod { Satellite, Typed };
inline constexpr std::array<std::string_view, 2> fixMethodNames{"satellite", "typed"};

// In the order of HeightRule.
inline constexpr std::array<std::string_view, 2> heightRuleNames{"fixed", "follow_canopy"};

enum class EndReason { SeasonOver, Lost, Moved, Replaced };
inline constexpr std::array<std::string_view, 4> endReasonNames{"season_over", "lost", "moved", "replaced"};

// One trap at one spot, from set-up to take-down.
struct Trap : Record {
    Uuid site;
    Uuid season;
    std::string tag; // written on the trap
    std::string pest; // protocol id
    std::string protocolVersion; // that was in use at set-up
    std::string trapType; // id in the protocol
    std::optional<LocalDay> setDay;
    std::optional<std::int64_t> setAtMs;
    std::optional<int> offsetMin;
    std::optional<std::int64_t> latE7;
    std::optional<std::int64_t> lonE7;
    std::optional<Millimetres> accuracy;
    std::optional<FixMethod> fixMethod;
    std::optional<std::int64_t> fixAtMs;
    std::optional<int> fixCount;
    std::optional<bool> cleaned;
    std::optional<bool> handlingRead; // the do-not-handle reminder was acknowledged
    std::optional<bool> lureIn;
    std::string lureLot;
    std::optional<LocalDay> lureExpiry;
    std::optional<bool> stripIn;
    std::optional<Millimetres> entrance;
    std::optional<Millimetres> canopy;
    std::optional<HeightRule> heightRule;
    std::optional<Millimetres> edgeDistance; // as paced in from the field edge
    std::optional<Millimetres> farmyardDistance;
    std::optional<Millimetres> lightDistance;
    std::string photo; // hash of its content
    Uuid pairedWith;
    Uuid replaces; // an earlier trap at the same spot
    std::optional<LocalDay> endDay;
    std::optional<EndReason> endReason;
    std::optional<bool> lureOut;
    std::optional<bool> stripOut;
    std::optional<bool> washed;
    std::optional<bool> spareLuresFrozen;
    std::string remark;

    [[nodiscard]] std::optional<GeoPoint> place() const
    {
        if (!latE7 || !lonE7) return std::nullopt;
        return GeoPoint{static_cast<std::int32_t>(*latE7), static_cast<std::int32_t>(*lonE7)};
    }
};

enum class ServiceWhat { Lure, Strip, Raise, Move };
inline constexpr std::array<std::string_view, 4> serviceWhatNames{"lure", "strip", "raise", "move"};

// Something done to a trap between set-up and take-down, outside or during a visit.
struct Service : Record {
    Uuid trap;
    std::optional<LocalDay> day;
    std::optional<std::int64_t> atMs;
    std::optional<int> offsetMin;
    std::optional<ServiceWhat> what;
    std::string lureLot;
    std::optional<LocalDay> lureExpiry;
    std::optional<bool> handlingRead;
    std::optional<Millimetres> entrance;
    std::optional<std::int64_t> latE7;
    std::optional<std::int64_t> lonE7;
    std::optional<Millimetres> accuracy;
    std::optional<FixMethod> fixMethod;
    std::string remark;
};

// A trap in another person's hands until a day.
struct Loan : Record {
    Uuid trap;
    std::string borrower; // by name
    Uuid member; // the same, when he is one of the programme: he may then report for it
    std::optional<LocalDay> fromDay;
    std::optional<LocalDay> untilDay;
};

template <>
const RecordKind& kindOf<Site>();
template <>
const RecordKind& kindOf<Trap>();
template <>
const RecordKind& kindOf<Service>();
template <>
const RecordKind& kindOf<Loan>();

// The ids of what a table of counts names, so that whoever takes the table in meets in the same records;
// names as plainWord gives them. What is set up in the field gets an id of its own.
Uuid siteId(const Uuid& programme, const Uuid& season, const std::string& district, const std::string& name);
Uuid trapId(const Uuid& programme, const Uuid& site, const std::string& pest, const std::string& tag);

} // namespace duskrow::domain
