// SPDX-License-Identifier: MIT
#include "demo/names.h"

#include <algorithm>

namespace duskrow::demo {

namespace {

using Words16 = std::array<std::string_view, 16>;
constexpr Words16 givenStarts{
    "Ba", "Do", "Fe", "Ji", "Ka", "Lo", "Mi", "Nu", "Oz", "Pe", "Ru", "Sa", "Te", "Vi", "We", "Yo"};
constexpr std::array<std::string_view, 10> givenEnds{
    "bel", "dris", "fin", "lo", "mavi", "nik", "rra", "sil", "tter", "vo"};
constexpr std::array<std::string_view, 20> familyStarts{"Ald", "Brun", "Cas", "Dorv", "Elk", "Farn", "Gosk",
    "Hamb", "Jest", "Kerv", "Lint", "Morv", "Orsk", "Pint", "Quib", "Rask", "Stev", "Tarn", "Ulv", "Wex"};
constexpr std::array<std::string_view, 12> familyEnds{
    "aby", "adoo", "eck", "effin", "ible", "ilo", "oddy", "omar", "onder", "ossil", "udge", "urn"};

constexpr std::array<std::string_view, 40> siteStarts{"Slough", "Poplar", "Willow", "Stone", "Sandy", "Long",
    "Crooked", "North", "South", "East", "West", "Far", "Old well", "Gravel", "Hawk", "Badger", "Crow",
    "Heron", "Rush", "Alder", "Birch", "Thistle", "Clover", "Rose", "Plum", "Sage", "Wind", "Frost",
    "Lantern", "Saddle", "Copper", "Silver", "Red barn", "Blue gate", "High", "Low", "Round", "Narrow",
    "Twin", "Lone"};
constexpr std::array<std::string_view, 20> siteEnds{"corner", "bend", "quarter", "rise", "hollow", "flat",
    "strip", "patch", "side", "draw", "ridge", "end", "bottom", "piece", "run", "half", "meadow", "bank",
    "turn", "slope"};

template <typename Starts, typename Ends>
std::string joined(const Starts& starts, const Ends& ends, std::size_t at, std::string_view between)
{
    return std::string(starts[at % starts.size()]).append(between).append(ends[at / starts.size()]);
}

} // namespace

std::string personName(std::uint64_t seed, std::size_t number)
{
    constexpr std::size_t givens = givenStarts.size() * givenEnds.size();
    constexpr std::size_t families = familyStarts.size() * familyEnds.size();
    // The steps share no factor with the lengths, so that neighbours differ and every pair comes up once.
    const std::size_t family = (number * 67 + seed % families) % families;
    const std::size_t given = (number * 37 + number / families + seed % givens) % givens;
    return joined(givenStarts, givenEnds, given, "") + ' ' + joined(familyStarts, familyEnds, family, "");
}

std::string siteName(std::uint64_t seed, std::size_t number)
{
    constexpr std::size_t pairs = siteStarts.size() * siteEnds.size();
    const std::size_t at = (number * 341 + seed % pairs) % pairs;
    std::string name = joined(siteStarts, siteEnds, at, " ");
    const bool isTaken = std::find(growersSites.begin(), growersSites.end(), name) != growersSites.end();
    const std::size_t round = number / pairs + (isTaken ? 1 : 0);
    if (round > 0) name.append(" ").append(std::to_string(round + 1));
    return name;
}

} // namespace duskrow::demo
