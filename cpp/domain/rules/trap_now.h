// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/rules/due.h"

namespace duskrow::domain {

// A part of a trap that is renewed, lure or strip, as it stands.
struct RenewedPart {
    std::optional<LocalDay> since = {}; // put in; nothing when it never was
    std::optional<LocalDay> expiry = {}; // on its packet
    bool wasRenewed = false; // after set-up
    std::optional<LocalDay> goneSince = {}; // found gone and not renewed
    std::optional<LocalDay> spentSince = {}; // a strip: moths found alive and it was not renewed
};

// A trap on one day, from the records up to that day.
struct TrapNow {
    std::span<const Visit> visits = {};
    std::optional<LocalDay> lastSeen = {}; // last visit, else set-up
    std::optional<LocalDay> lastEmptied = {}; // else set-up
    RenewedPart lure = {};
    RenewedPart strip = {};
    std::optional<GeoPoint> place = {}; // where it stands since it was last moved
    std::optional<Millimetres> entrance = {};
    std::vector<CanopyHeight> canopy = {};
    bool isFloweringOver = false;
};

TrapNow trapNow(const TrapFacts& facts, LocalDay today);

} // namespace duskrow::domain
