// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/clock.h"
#include "domain/base/result.h"

namespace duskrow::app {

struct PrintOrder {
    QString storePath;
    QString keyFolder;
    QString what; // a walk by its id or the name of a field, whose latest it is; or a week: "2026-W28"
    QString path; // of the PDF
    Clock clock;
};

// Prints the sheet of a walk, or the bulletin of a week, without a window. A week that is not published yet
// is printed as a draft that says so. Returns what went amiss besides, as a sentence: boundaries that could
// not be read. Mostly empty.
//
// Errors  those of Session::open, walkCalled, walkPaper, readWeek and printSheet; StoreMissing, for nothing
//         is made; NotPublished {week} for a week whose counts are not all due
domain::Result<QString> printNow(const PrintOrder& order);

} // namespace duskrow::app
