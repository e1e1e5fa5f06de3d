// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/clock.h"
#include "domain/base/result.h"

namespace duskrow::app {

struct PrintOrder {
    QString storePath;
    QString keyFolder;
    QString walk; // its id, or the name of a field: its latest walk
    QString path; // of the PDF
    Clock clock;
};

// Prints the sheet of a walk without a window.
//
// Errors  those of Session::open, walkCalled, walkPaper and printSheet; StoreMissing, for nothing is made
domain::Result<domain::Done> printWalk(const PrintOrder& order);

} // namespace duskrow::app
