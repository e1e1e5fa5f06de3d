// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/rules/threshold_table.h"

namespace duskrow::tool {

// A threshold as JSON for other programs: keys end in their unit, nothing is rounded, codes stay the same in
// every language; what was not said or published is null.
std::string thresholdJson(
    const domain::Protocol& protocol, const domain::ThresholdRule& rule, const domain::Threshold& threshold);

} // namespace duskrow::tool
