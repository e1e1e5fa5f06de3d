// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "domain/protocol/protocol.h"
#include "domain/records/walk.h"
#include "domain/rules/frame_tally.h"

namespace duskrow::domain {

// The frames of a walk as the estimate wants them: frames of one stop together. A frame without a number of
// larvae was not searched to the end and is left out; one that names no stop is a stop of its own.
std::vector<FrameStop> frameStops(std::span<const Frame> frames);

// The stop that a next frame belongs to: the last one's, or one further on.
int nextStop(std::span<const Frame> frames, bool isSameStop);

// Larvae of each size class of a protocol, in its order; in all frames together. Nothing when no frame told
// sizes.
std::optional<std::vector<std::int64_t>> sizesOf(
    const ScoutingAdvice& scouting, std::span<const Frame> frames);

// The text that a frame keeps its sizes in: "small:2 medium:1 large:0".
//
// counts  one for each size class
std::string writeSizes(const ScoutingAdvice& scouting, std::span<const std::int64_t> counts);

// And back, by the ids of the classes; 0 for a class that is not named. Nothing for an empty text.
std::optional<std::vector<std::int64_t>> readSizes(const ScoutingAdvice& scouting, const std::string& text);

// Share of the pods looked at that were damaged; nothing when none were looked at.
std::optional<Percent> podsDamagedOf(std::span<const Frame> frames);

// From here to the nearest frame of another stop that knows its place; nothing when none does.
std::optional<Metres> fromNearestStop(std::span<const Frame> frames, GeoPoint here, int stop);

} // namespace duskrow::domain
