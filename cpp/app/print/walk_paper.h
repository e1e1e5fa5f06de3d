// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "formats/frame_map.h"
#include "formats/stop_lines_chart.h"
#include "text/walk_sheet.h"

namespace duskrow::app {

// One walk ready to be put on paper: its words, and what its pictures are drawn from.
struct WalkPaper {
    text::WalkSheet sheet;
    formats::FrameMapInput map; // width and height are the printer's
    std::optional<formats::StopLinesInput> lines; // nothing without a plan
    QString who;
    QString fileName; // "duskrow-2026-07-14-slough-corner.pdf"
};

// What is kept of a walk, worked out for the day on which something was decided, or else for today.
//
// Errors  as WalkBook::read and walkResult
domain::Result<WalkPaper> walkPaper(Session& session, const domain::Uuid& walk);

// The walk of that id, or the latest walk in the field of that name, whatever its season.
//
// Errors  NameMissing {"walk", what was asked for}; NameAmbiguous {"site", name} when two fields walked in
//         the same season are called so; those of store/queries.h
domain::Result<domain::Uuid> walkCalled(Session& session, const QString& name);

} // namespace duskrow::app
