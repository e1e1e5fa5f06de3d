// SPDX-License-Identifier: MIT
#pragma once

#include "formats/map/map_view.h"

namespace duskrow::formats {

// What lies under all else on a map: drawn first, for the part that is seen.
class MapGround {
public:
    MapGround() = default;
    MapGround(const MapGround&) = delete;
    MapGround& operator=(const MapGround&) = delete;
    virtual ~MapGround() = default;

    virtual void draw(const MapView& view, Picture& picture) const = 0;
};

// A plain sheet, which needs no network.
class PlainGround final : public MapGround {
public:
    void draw(const MapView& view, Picture& picture) const override
    {
        picture.primitives.emplace_back(Bar{{0, 0, view.width, view.height}, Ink::Card, Fill::Solid, 0, 1});
    }
};

} // namespace duskrow::formats
