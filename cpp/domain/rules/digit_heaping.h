// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/base/units.h"

namespace duskrow::domain {

// How many of somebody's counts end in 0 or 5.
struct DigitHeaping {
    std::int64_t rounded = 0;
    std::int64_t counts = 0; // of ten moths and more: in smaller ones the last digits are not alike

    [[nodiscard]] bool isHeaped() const;
};

// The chance of so many ends in 0 or 5, or more, where every last digit is as likely.
//
// rounded, counts  0 <= rounded <= counts
double chanceOfRounded(std::int64_t rounded, std::int64_t counts);

// counts  as they were counted, moth by moth: estimates of heavy catches are round by themselves
DigitHeaping digitHeapingOf(std::span<const Moths> counts);

} // namespace duskrow::domain
