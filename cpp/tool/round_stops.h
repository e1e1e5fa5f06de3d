// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/time.h"
#include "domain/base/units.h"

namespace duskrow::tool {

// What a round is made of: places with names, and what is to be done there.
struct NamedStop {
    QString name;
    domain::GeoPoint place;
    bool isInfested = false;
    QString task = {}; // "count due, 8 nights"
};

struct NamedStops {
    std::vector<NamedStop> stops;
    QStringList withoutPlace = {}; // due, but nobody knows where
    QStringList cautions = {}; // that the protocols show on a round
};

// The traps of a store at which something is due today or was before.
domain::Result<NamedStops> stopsOfStore(
    const std::string& store, const std::string& keys, const std::string& protocols, domain::LocalDay today);

// A table with the columns name, lat and lon (also latitude, longitude), and infested (yes or no) if there is
// one.
//
// Errors  FileUnreadable, TableUnreadable, ColumnMissing; TableRow {path, row, what stands there, "place" or
//         "infested"}
domain::Result<NamedStops> stopsOfTable(const std::string& path);

// "52.1579,-106.6702", as parsePlace reads its halves.
//
// Errors  NotAPlace, or those of parsePlace
domain::Result<domain::GeoPoint> placeFrom(std::string_view typed);

} // namespace duskrow::tool
