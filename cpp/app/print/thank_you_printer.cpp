// SPDX-License-Identifier: MIT
#include "app/print/thank_you_printer.h"

#include "app/print/pdf_paper.h"
#include "app/print/sheet_pen.h"

namespace duskrow::app {

namespace {

constexpr double type = 12; // points
constexpr double nameShare = 0.46; // of the width, for the name of a trap

double head(const SheetPen& pen, const text::ThankYouSheet& sheet, double width)
{
    double y = pen.words(sheet.above, {0, 0}, width, {.isSoft = true});
    y += pen.words(sheet.title, {0, y}, width, {.size = 2.4, .weight = QFont::Bold}) + pen.type() * 0.5;
    pen.rule({0, y}, {width, y}, 1.2);
    y += pen.gap();
    for (const QString& paragraph : sheet.before) y += pen.words(paragraph, {0, y}, width) + pen.type() * 0.6;
    return y + pen.gap();
}

double tableHead(const SheetPen& pen, const text::ThankYouSheet& sheet, double y, double width)
{
    return y
        + pen.nameAndCells(
            sheet.table.heads, {0, y}, width, nameShare, {.size = 0.85, .weight = QFont::DemiBold});
}

double foot(const SheetPen& pen, const text::ThankYouSheet& sheet, double y, double width)
{
    double end = y;
    for (const QString& paragraph : sheet.after)
        end += pen.words(paragraph, {0, end}, width) + pen.type() * 0.6;
    return end;
}

} // namespace

QByteArray printedThanks(const text::ThankYouSheet& sheet, const QString& author, const QPageSize& size)
{
    return writePdf(sheet.title, author, size, [&](QPdfWriter& writer, const QSizeF& page) {
        QPainter painter(&writer);
        const SheetPen pen(writer, &painter, type);
        const SheetPen measure(writer, nullptr, type);
        const double width = page.width();
        double y = tableHead(pen, sheet, head(pen, sheet, width), width);
        for (const QStringList& cells : sheet.table.rows) {
            if (y + measure.nameAndCells(cells, {0, y}, width, nameShare) > page.height()) {
                writer.newPage();
                y = tableHead(pen, sheet, 0, width);
            }
            pen.rule({0, y}, {width, y}, 0.5, true);
            y += pen.nameAndCells(cells, {0, y}, width, nameShare);
        }
        y += pen.gap();
        if (foot(measure, sheet, y, width) > page.height()) {
            writer.newPage();
            y = 0;
        }
        foot(pen, sheet, y, width);
    });
}

} // namespace duskrow::app
