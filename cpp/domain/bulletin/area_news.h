// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "domain/bulletin/bulletin.h"

namespace duskrow::domain {

// What a published week says of the whole region or of one district, as it travels to the phones.
struct AreaNews {
    Uuid district; // nil for the whole region
    std::string name;
    // Nothing where fewer than five farms report. Levels of bands: 1 is the lowest.
    std::optional<AreaFigures> figures;

    bool operator==(const AreaNews&) const = default;
};

// The whole first, then the districts. Cells are not among them: the page has those.
//
// districts  ids, in the order of the bulletin's districts
std::vector<AreaNews> areaNewsOf(const Bulletin& bulletin, std::span<const Uuid> districts);

// JSON. What is beyond `most` bytes is left out from the end, so that it fits into a record's field.
std::string areaNewsText(std::span<const AreaNews> areas, std::size_t most);

// Passes over whatever is not as it should be: it may come from anybody's program.
std::vector<AreaNews> readAreaNews(std::string_view text);

} // namespace duskrow::domain
