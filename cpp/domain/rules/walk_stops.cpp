// SPDX-License-Identifier: MIT
#include "domain/rules/walk_stops.h"

#include <algorithm>
#include <charconv>
#include <map>

#include "domain/rules/geodesy.h"

namespace duskrow::domain {

std::vector<FrameStop> frameStops(std::span<const Frame> frames)
{
    std::vector<FrameStop> stops;
    std::map<int, std::size_t> known;
    for (const Frame& frame : frames) {
        if (!frame.larvae) continue;
        const auto found = frame.stop ? known.find(*frame.stop) : known.end();
        if (found == known.end()) {
            if (frame.stop) known[*frame.stop] = stops.size();
            stops.push_back({*frame.larvae, Frames{1}});
            continue;
        }
        FrameStop& stop = stops[found->second];
        stop.larvae = Larvae{stop.larvae.value() + frame.larvae->value()};
        stop.frames = Frames{stop.frames.value() + 1};
    }
    return stops;
}

int nextStop(std::span<const Frame> frames, bool isSameStop)
{
    int last = 0;
    for (const Frame& frame : frames) last = std::max(last, frame.stop.value_or(0));
    return std::max(1, isSameStop ? last : last + 1);
}

std::optional<std::vector<std::int64_t>> readSizes(const ScoutingAdvice& scouting, const std::string& text)
{
    if (text.empty()) return std::nullopt;
    std::vector<std::int64_t> counts(scouting.sizeClasses.size(), 0);
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const std::string key = scouting.sizeClasses[i].id + ":";
        const std::size_t at = (" " + text).find(" " + key);
        if (at == std::string::npos) continue;
        const char* first = text.data() + at + key.size();
        std::from_chars(first, text.data() + text.size(), counts[i]);
    }
    return counts;
}

std::string writeSizes(const ScoutingAdvice& scouting, std::span<const std::int64_t> counts)
{
    std::string text;
    for (std::size_t i = 0; i < std::min(counts.size(), scouting.sizeClasses.size()); ++i)
        text += (text.empty() ? "" : " ") + scouting.sizeClasses[i].id + ":" + std::to_string(counts[i]);
    return text;
}

std::optional<std::vector<std::int64_t>> sizesOf(
    const ScoutingAdvice& scouting, std::span<const Frame> frames)
{
    std::optional<std::vector<std::int64_t>> all;
    for (const Frame& frame : frames) {
        const auto counts = readSizes(scouting, frame.bySize);
        if (!counts) continue;
        if (!all) all.emplace(scouting.sizeClasses.size(), 0);
        for (std::size_t i = 0; i < counts->size(); ++i) (*all)[i] += (*counts)[i];
    }
    return all;
}

std::optional<Percent> podsDamagedOf(std::span<const Frame> frames)
{
    std::int64_t seen = 0;
    std::int64_t damaged = 0;
    for (const Frame& frame : frames) {
        if (!frame.podsSeen || *frame.podsSeen == 0) continue;
        seen += *frame.podsSeen;
        damaged += std::min(*frame.podsSeen, frame.podsDamaged.value_or(0));
    }
    if (seen == 0) return std::nullopt;
    return Percent{100.0 * static_cast<double>(damaged) / static_cast<double>(seen)};
}

std::optional<Metres> fromNearestStop(std::span<const Frame> frames, GeoPoint here, int stop)
{
    std::optional<Metres> nearest;
    for (const Frame& frame : frames) {
        if (frame.stop == stop || !frame.latE7 || !frame.lonE7) continue;
        const GeoPoint there{
            static_cast<std::int32_t>(*frame.latE7), static_cast<std::int32_t>(*frame.lonE7)};
        const Metres away = courseBetween(here, there).distance;
        if (!nearest || away < *nearest) nearest = away;
    }
    return nearest;
}

} // namespace duskrow::domain
