// SPDX-License-Identifier: MIT
#include "domain/rules/frame_tally.h"

#include <map>
#include <string>

namespace duskrow::domain {

namespace {

Error outside(const char* field, std::int64_t low, std::int64_t high)
{
    return {ErrorCode::OutOfRange, {field, std::to_string(low), std::to_string(high)}};
}

} // namespace

Result<FrameTally> tallyOf(std::span<const FrameStop> stops)
{
    if (stops.size() > static_cast<std::size_t>(mostStops)) return outside("stops", 0, mostStops);
    std::map<std::int64_t, std::int64_t> counts;
    std::map<std::int64_t, FrameTally::Size> sizes;
    FrameTally tally;
    for (const FrameStop& stop : stops) {
        const std::int64_t larvae = stop.larvae.value();
        const std::int64_t frames = stop.frames.value();
        if (larvae < 0 || larvae > mostLarvaeAtAStop) return outside("larvae", 0, mostLarvaeAtAStop);
        if (frames < 1 || frames > mostFramesAtAStop) return outside("frames", 1, mostFramesAtAStop);
        tally.larvae += stop.larvae;
        tally.frames += stop.frames;
        ++tally.stops;
        ++counts[larvae];
        FrameTally::Size& size = sizes[frames];
        size.stops += 1.0;
        size.larvae += static_cast<double>(larvae); // whole numbers: exact in any order
    }
    for (const auto& [larvae, times] : counts)
        tally.counts.push_back({static_cast<double>(larvae), static_cast<double>(times)});
    for (auto& [frames, size] : sizes) {
        size.frames = static_cast<double>(frames);
        tally.sizes.push_back(size);
    }
    return tally;
}

} // namespace duskrow::domain
