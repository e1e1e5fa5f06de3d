// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/protocol/protocol.h"
#include "domain/rules/frame_tally.h"

namespace duskrow::domain {

// How much a walk can say, and with it what may be shown.
enum class FrameStanding {
    NoFrames, // nothing at all
    TooFewForSpread, // one or two stops: a mean, but a range would only repeat what was assumed
    NoneFound, // three stops or more without a larva: "none found, probably below `upperBound`"
    TooFewForRange, // below five stops, or an upper end above ten times the lower: the range, said to be too
                    // wide
    Range, // mean and range
};

struct DensityRange {
    LarvaePerSquareMetre low;
    LarvaePerSquareMetre high;
};

// The density of larvae in one field.
struct FrameEstimate {
    FrameStanding standing = FrameStanding::NoFrames;
    std::int64_t stops = 0;
    Frames frames;
    Larvae larvae;
    Larvae fullest; // of them at the stop that had the most
    std::optional<LarvaePerFrame> meanPerFrame = {}; // larvae over frames; nothing without a frame
    std::optional<LarvaePerSquareMetre> mean = {};
    std::optional<DensityRange> range = {}; // 95 %; for TooFewForRange and Range
    std::optional<LarvaePerSquareMetre> upperBound = {}; // 95 % one-sided; for NoneFound
    std::optional<double> probabilityAbove = {}; // the threshold; from three stops on, if one was given
    std::optional<double> dispersion = {}; // k per stop, half the weight below it; from three stops on
};

// The estimate from the frames of one field. Their order never matters, and walks of one field on one day are
// joined by putting their stops together.
//
// stops      the independent units of the walk, see FrameStop
// frameArea  of one frame; 0.01 to 10 square metres
// threshold  0.01 to 10,000 larvae per square metre; nothing where no threshold is known yet
// Coverage   of the range in simulated walks of 5 to 20 stops 0.90 (k = 0.5) to 0.99; after a walk that
// stopped
//            early 0.88 (k = 0.5), 0.91 (k = 1): call it approximate there (own simulations)
// Errors     as tallyOf; OutOfRange {"frame_m2" | "threshold_per_m2", lowest, highest}
// Source     range and chance: mean_posterior.h. No range below three stops, since n = 1 and 2 know next to
//            nothing of the spread; too wide below five stops (Canola Council of Canada asks for five sites
//            at least) or above a ratio of ten (own choice). None found: the mean that leaves 5 % chance of
//            so many empty frames when k = 0.5, patchier than the prior's median, to be careful
Result<FrameEstimate> estimateFrames(std::span<const FrameStop> stops, SquareMetres frameArea,
    std::optional<LarvaePerSquareMetre> threshold = {});

// The same from a tally, where it is at hand.
Result<FrameEstimate> estimateFrames(
    const FrameTally& tally, SquareMetres frameArea, std::optional<LarvaePerSquareMetre> threshold = {});

// The figures of a textbook, for an explanation only: with so few and so uneven counts the t interval covers
// the truth in 80 to 90 of 100 walks instead of 95, and nearly always errs towards too few larvae.
struct TextbookFigures {
    LarvaePerSquareMetre standardError;
    DensityRange tRange; // 95 %, cut at zero
    std::optional<double> momentDispersion = {}; // nothing when the counts are more even than by chance alone
};

// Errors  as estimateFrames; TooFewParts below two stops
// Source  Student's t for the ratio of larvae to frames, and the k whose variance m + m^2 / k is the observed
//         one; for stops of one frame x +- t s / sqrt n and x^2 / (s^2 - x) (from memory: any textbook)
Result<TextbookFigures> textbookFigures(std::span<const FrameStop> stops, SquareMetres frameArea);

// Of a protocol's scouting advice, a quarter of a square metre where it gives none.
//
// Source  Canola Council of Canada, quarter-square-metre frames counted times four
SquareMetres frameAreaOf(const Protocol& protocol);
inline constexpr SquareMetres usualFrameArea{0.25};

} // namespace duskrow::domain
