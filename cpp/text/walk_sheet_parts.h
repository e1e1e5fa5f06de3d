// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>

#include "text/walk_sheet.h"

namespace duskrow::text {

struct WalkSheetWords {
    Q_DECLARE_TR_FUNCTIONS(WalkSheet)
};

// The parts of a sheet that take more than a list of sentences.

// The frames one by one, with sums, so that a person can add them up again.
SheetBlock framesBlock(const WalkSheetInput& input, const QLocale& locale);

// What the sketch of the frames cannot show: those without a place.
SheetBlock mapBlock(const WalkSheetInput& input, const QLocale& locale);

// Day, who, pest, crop stage with the name of its scale, and the frame.
std::vector<SheetFact> walkFacts(const WalkSheetInput& input, const QLocale& locale);

QString written(const std::string& text);

// The sentences of a protocol in the reader's language.
QStringList statementsOf(const std::vector<domain::Statement>& statements, const std::string& language);

} // namespace duskrow::text
