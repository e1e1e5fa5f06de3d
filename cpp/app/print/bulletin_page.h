// SPDX-License-Identifier: MIT
#pragma once

#include "app/print/sheet_pen.h"
#include "formats/bulletin/document.h"

namespace duskrow::app {

// A bulletin on one page: what is said beside the map, the table of districts below, the chart and the rules
// of privacy at its foot. The type is as large as lets all of it stand there.
class BulletinPage {
public:
    // document  must outlive it
    // page      points, inside the margins
    BulletinPage(const formats::BulletinDocument& document, QPaintDevice& device, QSizeF page);

    void paint(QPainter& painter) const;
    [[nodiscard]] bool isWhole() const { return m_rows >= m_document.words.districts.size(); }

private:
    double lay(const SheetPen& pen) const; // how far down it reaches
    double head(const SheetPen& pen) const;
    double said(const SheetPen& pen, const QPointF& at, double width) const;
    double pictures(const SheetPen& pen, const QPointF& at, double width) const;
    double districts(const SheetPen& pen, const QPointF& at, double width) const;
    double row(const SheetPen& pen, const QStringList& cells, const QPointF& at, double width,
        const PenStyle& style) const;
    [[nodiscard]] bool tryType(double type);

    const formats::BulletinDocument& m_document;
    QPaintDevice& m_device;
    QSizeF m_page;
    double m_type = 10; // points
    std::size_t m_rows = 0; // of the table that have room
};

} // namespace duskrow::app
