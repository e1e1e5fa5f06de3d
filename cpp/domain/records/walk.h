// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "domain/records/field.h"

namespace duskrow::domain {

// A walk through one field, searching frames for larvae. It may go on over several days.
struct Walk : Record {
    Uuid site;
    Uuid season;
    std::string pest; // protocol id
    std::string protocolVersion; // that was in use when it began
    std::optional<LocalDay> day; // on which it began
    std::optional<std::int64_t> atMs;
    std::optional<int> offsetMin;
    std::string observer; // who walked, when it is not the author of the change
    std::optional<int> stageBbch; // crop stage, BBCH scale of the crop
    std::optional<std::int64_t> frameCm2; // area of the frame
    std::optional<bool> drySeason; // noted while walking; by itself it moves no threshold
    std::optional<bool> finished;
    std::string remark;
};

// One frame that was searched. Not searched is no record; searched and empty is 0.
struct Frame : Record {
    Uuid walk;
    std::optional<LocalDay> day;
    std::optional<std::int64_t> atMs;
    std::optional<int> offsetMin;
    std::optional<int> stop; // frames of one stop are one unit of the estimate; from 1
    std::optional<std::int64_t> latE7;
    std::optional<std::int64_t> lonE7;
    std::optional<Millimetres> accuracy;
    std::optional<Larvae> larvae; // alive and feeding, of all sizes
    std::string bySize; // the same by size class of the protocol: "small:2 medium:1 large:0"
    std::optional<Larvae> sick; // parasitised or diseased, not among `larvae`
    std::optional<std::int64_t> podsSeen;
    std::optional<std::int64_t> podsDamaged;
    std::string remark;
};

enum class Decided { Control, NoControl, LookAgain };
inline constexpr std::array<std::string_view, 3> decidedNames{"control", "no_control", "look_again"};

// What a walk was held against, as typed, and what the grower decided. The verdict is worked out anew from
// these and the walk's frames; what was shown then stands beside.
struct Decision : Record {
    Uuid walk;
    std::string protocolVersion;
    std::optional<LocalDay> day;
    std::string costSum; // decimal texts, in costUnit; either one sum or its parts
    std::string costProduct;
    std::string costApplication;
    std::string costTracks;
    std::string costUnit; // "CAD/ac"
    std::string price;
    std::string priceUnit; // "CAD/bu"
    std::string dryDivisor; // empty: no dry season
    std::optional<std::int64_t> labelDays; // pre-harvest interval of the label
    std::optional<LocalDay> cuttingDay;
    std::string verdict; // as shown: below, above, too_close
    std::optional<Decided> decided;
    std::optional<LocalDay> lookAgainDay;
    std::string remark;
};

template <>
const RecordKind& kindOf<Walk>();
template <>
const RecordKind& kindOf<Frame>();
template <>
const RecordKind& kindOf<Decision>();

} // namespace duskrow::domain
