// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QLocale>
#include <QPageSize>

#include "app/print/walk_paper.h"

namespace duskrow::app {

struct PrintedSheet {
    QByteArray pdf;
    int pages = 0;
};

// A walk's sheet as a PDF. Needs fonts, and so a QGuiApplication, but no window and no printer.
PrintedSheet printedSheet(const WalkPaper& paper, const QPageSize& size);

// Writes it whole or not at all; gives the pages.
//
// Errors  FileUnwritable {path}
domain::Result<int> printSheet(const WalkPaper& paper, const QString& path, const QLocale& locale = {});

} // namespace duskrow::app
