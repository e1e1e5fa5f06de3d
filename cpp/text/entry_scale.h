// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/records/field.h"

namespace duskrow::text {

// How people enter a whole number: "entrance_mm" in centimetres, a latitude in degrees.
struct EntryScale {
    double kept = 1; // so many of the unit that is kept make one of the unit that is typed
    int decimals = 0;
    double step = 1; // of the keys for less and more, in the unit that is typed
    QString unit = {}; // after the number; empty for a plain count
};

EntryScale entryScale(const domain::Field& field);

} // namespace duskrow::text
