// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

#include "domain/base/result.h"
#include "formats/bulletin/overlay.h"
#include "store/store.h"

namespace duskrow::app {

// A file of boundaries or lines that this device shows on its map.
struct MapOverlay {
    QString path;
    formats::Overlay overlay = {};
    QString trouble = {}; // why it cannot be shown now, as a sentence with a way out
};

// The paths, as they were kept; they belong to the device and never travel.
//
// Errors  as in queries.h
domain::Result<QStringList> overlayPaths(store::Reader& reader);
domain::Result<domain::Done> keepOverlayPaths(store::Store& store, const QStringList& paths);

// Reads a file that anybody may have made: GeoJSON of at most 16 MiB and 400,000 positions. One that is
// larger is not read.
MapOverlay mapOverlay(const QString& path);

} // namespace duskrow::app
