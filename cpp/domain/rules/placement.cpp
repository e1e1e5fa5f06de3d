// SPDX-License-Identifier: MIT
#include "domain/rules/placement.h"

#include <algorithm>
#include <cmath>

namespace duskrow::domain {

namespace {

bool isMeasured(const PlacementMeasure& measure)
{
    return std::isfinite(measure.distance.value()) && measure.distance.value() >= 0.0;
}

std::optional<PlacementMeasure> nearestOf(PlacementKind kind, std::span<const PlacementMeasure> measures)
{
    std::optional<PlacementMeasure> nearest;
    for (const PlacementMeasure& measure : measures) {
        if (measure.kind != kind || !isMeasured(measure)) continue;
        if (!nearest || measure.distance < nearest->distance) nearest = measure;
    }
    return nearest;
}

PlacementVerdict verdictOn(const PlacementRule& rule, const PlacementMeasure& measure)
{
    const bool isAbout = rule.meant == PlacementDistance::About;
    const double error = std::isfinite(measure.error.value()) ? std::max(0.0, measure.error.value()) : 0.0;
    const double least = isAbout ? rule.distance.value() / 2.0 : rule.distance.value();
    if (measure.distance.value() + error < least) return PlacementVerdict::TooClose;
    if (isAbout && measure.distance.value() - error > rule.distance.value() * 2.0)
        return PlacementVerdict::TooFar;
    return PlacementVerdict::Fits;
}

} // namespace

std::vector<PlacementFinding> checkPlacement(
    std::span<const PlacementRule> rules, std::span<const PlacementMeasure> measures)
{
    std::vector<PlacementFinding> findings;
    for (const PlacementRule& rule : rules) {
        const auto nearest = nearestOf(rule.kind, measures);
        if (nearest)
            findings.push_back({rule, nearest->distance, verdictOn(rule, *nearest)});
        else
            findings.push_back({rule, std::nullopt, PlacementVerdict::NotKnown});
    }
    return findings;
}

} // namespace duskrow::domain
