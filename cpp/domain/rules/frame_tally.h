// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/units.h"
#include "domain/protocol/protocol_units.h"

namespace duskrow::domain {

using LarvaePerFrame = Quantity<struct LarvaePerFrameTag, double>;

// One independent sampling unit of a scouting walk: a stop. Frames laid at the same stop share its larvae and
// are no independent look at the field, so they count as one unit with a larger area.
struct FrameStop {
    Larvae larvae;
    Frames frames = Frames{1};
};

// All that the estimate needs of a walk. Two walks of one field are added by putting their stops together;
// the order of the stops leaves no trace here.
struct FrameTally {
    // So many stops found the same number of larvae.
    struct Count {
        double larvae = 0.0;
        double stops = 0.0;
    };
    // So many stops had the same number of frames, with so many larvae in all of them together.
    struct Size {
        double frames = 0.0;
        double stops = 0.0;
        double larvae = 0.0;
    };

    std::int64_t stops = 0;
    Frames frames;
    Larvae larvae;
    std::vector<Count> counts; // ascending, each number of larvae once
    std::vector<Size> sizes; // ascending, each number of frames once

    [[nodiscard]] bool isEven() const { return sizes.size() <= 1; } // as many frames at every stop
};

inline constexpr std::int64_t mostStops = 10'000;
inline constexpr std::int64_t mostFramesAtAStop = 100;
inline constexpr std::int64_t mostLarvaeAtAStop = 1'000'000;

// Errors  OutOfRange {"larvae" | "frames" | "stops", lowest, highest}: a count below zero, a stop without a
//         frame, or more than anybody lays or counts
Result<FrameTally> tallyOf(std::span<const FrameStop> stops);

} // namespace duskrow::domain
