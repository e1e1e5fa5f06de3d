// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/base/result.h"
#include "domain/base/units.h"

namespace duskrow::domain {

// Where the range of an estimated catch comes from.
enum class HeavyCatchMethod {
    WholeCounted, // everything was counted: no estimate, no range
    AssumedClumping, // one or two parts: the clumping is assumed
    SpreadOfParts, // three parts or more: the clumping is learned from how much they differ
};

struct HeavyCatch {
    Moths estimate;
    std::optional<Moths> low; // 95 % range; nothing when the whole was counted
    std::optional<Moths> high;
    std::optional<double> clumping; // variance of a part's count over its mean: 1 is perfect mixing
    HeavyCatchMethod method = HeavyCatchMethod::WholeCounted;
};

struct VolumePart {
    Moths counted;
    Microlitres amount;
};

struct WeightPart {
    Moths counted;
    Milligrams amount;
};

// The whole catch from one or more counted parts of it, drained and mixed.
//
// parts   different parts of the same catch, none counted twice
// whole   the amount of the whole catch, the counted parts included
// Errors  Empty without a part; PartTooLarge when an amount is not above zero or the parts exceed the whole;
//         OutOfRange when a count is negative, or counts or estimate exceed a thousand million
// Source  one or two parts: log-normal range for x/f with clumping 2 and 5 % (volume) or 2 % (balance) error
//         of the fraction; three or more: ratio estimator with Student's t (from memory: Cochran, Sampling
//         Techniques). Two parts are pooled, since Student's t of one degree of freedom says nothing useful;
//         so are parts that show no spread at all. A range never reaches below the moths actually counted.
Result<HeavyCatch> estimateHeavyCatch(std::span<const VolumePart> parts, Microlitres whole);
Result<HeavyCatch> estimateHeavyCatch(std::span<const WeightPart> parts, Milligrams whole);

struct MothRange {
    Moths low;
    Moths high;
};

// The exact 95 % range of the whole if mixing were perfect (binomial): the smallest and the largest whole
// that leave more than 2.5 % chance of a count this large, or this small. Too narrow for clumped catches.
//
// fraction  the counted part over the whole, above 0, at most 1
// Errors    PartTooLarge when the fraction is out of bounds; OutOfRange as above
Result<MothRange> perfectMixingRange(Moths counted, double fraction);

struct SpreadEstimate {
    double estimate = 0.0;
    double standardError = 0.0;
    double low = 0.0; // not yet held above the moths counted
    double high = 0.0;
    double clumping = 0.0;
};

// The ratio estimator alone, unrounded, for the explanation of a range.
//
// Errors  TooFewParts below two parts, otherwise as estimateHeavyCatch
Result<SpreadEstimate> estimateFromSpread(std::span<const VolumePart> parts, Microlitres whole);
Result<SpreadEstimate> estimateFromSpread(std::span<const WeightPart> parts, Milligrams whole);

} // namespace duskrow::domain
