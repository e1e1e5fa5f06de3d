// SPDX-License-Identifier: MIT
#pragma once

namespace duskrow::domain {

// Whether a trap stays at one height or is raised with the crop.
enum class HeightRule { Fixed, FollowCanopy };

} // namespace duskrow::domain
