// SPDX-License-Identifier: MIT
#include "demo/heavy_count.h"

#include <array>

#include "domain/rules/heavy_catch.h"

namespace duskrow::demo {

using namespace duskrow::domain;

void countByCups(Visit& visit, std::int64_t caught, Dice& dice)
{
    constexpr std::int64_t cup = 50'000; // microlitres
    constexpr double mothsPerCup = 55.0; // invented: nobody has published how many go into a cup
    const auto whole = Microlitres{
        static_cast<std::int64_t>(static_cast<double>(caught) / mothsPerCup * static_cast<double>(cup))};
    std::array<VolumePart, 3> parts;
    std::string counts;
    std::string amounts;
    for (VolumePart& part : parts) {
        part = {Moths{dice.poisson(mothsPerCup)}, Microlitres{cup}};
        counts += (counts.empty() ? "" : " ") + std::to_string(part.counted.value());
        amounts += (amounts.empty() ? "" : " ") + std::to_string(cup);
    }
    const auto estimate = estimateHeavyCatch(parts, whole);
    if (!estimate) { // less than three cups in the bucket: then it is counted moth by moth
        visit.countMethod = CountMethod::Each;
        visit.pest = Moths{caught};
        return;
    }
    visit.countMethod = CountMethod::Volume;
    visit.partCounts = counts;
    visit.partAmounts = amounts;
    visit.wholeAmount = whole.value();
    visit.pest = estimate->estimate;
    visit.pestLow = estimate->low;
    visit.pestHigh = estimate->high;
}

} // namespace duskrow::demo
