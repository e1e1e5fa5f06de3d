// SPDX-License-Identifier: MIT
#pragma once

#include <memory>

#include "app/session.h"
#include "formats/bulletin/overlay.h"
#include "publish/week_draft.h"

namespace duskrow::app {

// A week's draft with all that it looks on.
struct WeekReading {
    publish::WeekDraft draft;
    std::map<std::string, domain::Protocol> protocols;
    formats::Overlay overlay; // boundaries of districts
    QString overlayTrouble; // why there are none, where a file of them was named; empty without one
    std::string programmeKey;
};

// What a desk keeps of the weeks it has published lies beside its store.
std::string keptFolder(const QString& storePath);

// The device setting that names a GeoJSON file with the boundaries of districts. Without it the files of the
// desk's map serve.
inline constexpr const char* boundariesSetting = "boundaries_file";

// To be called on a reading thread.
//
// Errors  those of publish::weekDraft
domain::Result<std::shared_ptr<WeekReading>> readWeek(store::Reader& reader, const publish::WeekAsked& asked);

} // namespace duskrow::app
