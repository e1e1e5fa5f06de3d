// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/uuid.h"

namespace duskrow::sync {

// What the last item says: how many the file holds, and whose they are.
struct CarriedEnd {
    domain::Uuid programme;
    std::int64_t segments = 0;
    std::int64_t photographs = 0;

    bool operator==(const CarriedEnd&) const = default;
};

std::string endText(const CarriedEnd& end);
std::optional<CarriedEnd> readEnd(std::string_view text);

} // namespace duskrow::sync
