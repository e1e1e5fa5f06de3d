// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/log/edit.h"
#include "store/queries.h"

namespace duskrow::app {

// What begins the season of a year as the one before it was: same week, same protocols. People and districts
// belong to the programme and stay; traps do not come along, since the crop rotates and next year's field is
// another one. Nothing when the year has a season already, or when there is none to go by.
//
// Errors  those of store/queries.h
domain::Result<std::vector<domain::Edit>> rollOver(
    store::Reader& reader, const domain::Uuid& programme, int year);

} // namespace duskrow::app
