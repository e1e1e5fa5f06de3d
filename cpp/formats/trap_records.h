// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/base/uuid.h"

namespace duskrow::formats {

// One stretch of nights of a trap, as it was counted.
struct ExportedCatch {
    std::optional<domain::LocalDay> from = {};
    domain::LocalDay to = {};
    std::optional<domain::Moths> moths = {}; // nothing where nobody counted
    bool isAtLeast = false;
};

// One trap in one season, with its exact place: for the desk that keeps the records, never to be published.
struct ExportedTrap {
    domain::Uuid id;
    int season = 0;
    std::string district;
    std::string site;
    std::string tag;
    std::string pest; // protocol id
    std::string latin;
    std::string trapType;
    std::optional<domain::GeoPoint> place = {};
    std::optional<domain::Metres> accuracy = {}; // 68 % radius of the fix
    std::optional<domain::Moths> total = {}; // nothing where nobody counted
    bool isAtLeast = false;
    std::string band = {}; // empty while the season takes none
    std::vector<ExportedCatch> catches = {};
};

} // namespace duskrow::formats
