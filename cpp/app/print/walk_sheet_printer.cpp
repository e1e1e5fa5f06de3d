// SPDX-License-Identifier: MIT
#include "app/print/walk_sheet_printer.h"

#include <QPainter>

#include "app/print/pdf_paper.h"
#include "app/print/sheet_layout.h"
#include "app/written_file.h"

namespace duskrow::app {

using namespace duskrow::domain;

PrintedSheet printedSheet(const WalkPaper& paper, const QPageSize& size)
{
    PrintedSheet printed;
    const QString title = QStringLiteral("%1: %2, %3")
                              .arg(paper.sheet.kind, paper.sheet.title, paper.sheet.facts.front().value);
    printed.pdf = writePdf(title, paper.who, size, [&](QPdfWriter& writer, const QSizeF& page) {
        const SheetLayout layout(paper, writer, page);
        printed.pages = layout.pages();
        QPainter painter(&writer);
        for (int i = 0; i < printed.pages; ++i) {
            if (i > 0) writer.newPage();
            layout.paint(painter, i);
        }
    });
    return printed;
}

Result<int> printSheet(const WalkPaper& paper, const QString& path, const QLocale& locale)
{
    const PrintedSheet printed = printedSheet(paper, paperOf(locale));
    if (const auto done = writeFile(path, printed.pdf); !done) return done.error();
    return printed.pages;
}

} // namespace duskrow::app
