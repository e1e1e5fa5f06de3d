// SPDX-License-Identifier: MIT
#include "app/print/bulletin_printer.h"

#include <QPainter>

#include "app/print/bulletin_page.h"
#include "app/print/pdf_paper.h"

namespace duskrow::app {

QByteArray printedBulletin(const formats::BulletinDocument& document, const QPageSize& size)
{
    const text::BulletinWords& says = document.words;
    return writePdf(QString::fromStdString(says.title), QString::fromStdString(says.programme), size,
        [&](QPdfWriter& writer, const QSizeF& page) {
            const BulletinPage laid(document, writer, page);
            QPainter painter(&writer);
            laid.paint(painter);
        });
}

} // namespace duskrow::app
