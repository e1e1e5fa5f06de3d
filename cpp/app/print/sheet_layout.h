// SPDX-License-Identifier: MIT
#pragma once

#include "app/print/sheet_pen.h"
#include "app/print/walk_paper.h"

namespace duskrow::app {

// A walk's sheet as a page: the largest type at which all of it fits is taken, and pictures get the room that
// words leave. Only where even the smallest type is too large does the table of frames go to pages of its
// own.
class SheetLayout {
public:
    // page  without its margins, in points
    SheetLayout(const WalkPaper& paper, QPaintDevice& device, QSizeF page);

    [[nodiscard]] int pages() const { return 1 + static_cast<int>(m_tablePages); }
    [[nodiscard]] double type() const { return m_type; }

    // page  from 0; the painter's origin is the corner of the margins
    void paint(QPainter& painter, int page) const;

private:
    struct Columns {
        double map = 0; // heights of the pictures
        double lines = 0;
        double top = 0;
        double bottom = 0;
        bool isTimingLeft = false;
        [[nodiscard]] bool fits() const { return bottom >= 0; }
    };

    [[nodiscard]] bool hasSketch() const;
    double head(const SheetPen& pen) const;
    [[nodiscard]] double factGrid(const SheetPen& pen, double y) const;
    double verdictPanel(const SheetPen& pen, double y) const;
    [[nodiscard]] double verdictWords(const SheetPen& pen, const QPointF& at, double width) const;
    double foot(const SheetPen& pen, double y) const;
    [[nodiscard]] double decided(const SheetPen& pen, const QPointF& at, double width) const;
    [[nodiscard]] double block(
        const SheetPen& pen, text::SheetPart part, const QPointF& at, double width) const;
    [[nodiscard]] double frames(const SheetPen& pen, const QPointF& at, double width) const;
    [[nodiscard]] Columns columns(const SheetPen& pen) const;
    void paintColumns(const SheetPen& pen, const Columns& columns) const;
    void paintMap(const SheetPen& pen, double y, double height) const;
    void paintLines(const SheetPen& pen, double y, double height) const;
    void paintFirst(const SheetPen& pen) const;
    void paintTable(const SheetPen& pen, int page) const;
    [[nodiscard]] bool tryType(double type, bool isTableApart);
    [[nodiscard]] std::size_t rowsAPage(const SheetPen& pen) const;

    const WalkPaper& m_paper;
    QPaintDevice& m_device;
    QSizeF m_page;
    double m_column; // width of one
    double m_right; // where the right one begins
    double m_type = 9;
    bool m_isTableApart = false;
    std::size_t m_tablePages = 0;
};

} // namespace duskrow::app
