// SPDX-License-Identifier: MIT
#pragma once

#include <QPainter>

#include "formats/picture.h"
#include "text/walk_sheet.h"

namespace duskrow::app {

// How a run of words looks. `size` is a multiple of the sheet's own type.
struct PenStyle {
    double size = 1;
    int weight = QFont::Normal;
    bool isSoft = false;
    Qt::Alignment align = Qt::AlignLeft;
};

// Puts words, tables and pictures on a page, or only measures them: the same code for both, so that what was
// measured is what is drawn. Lengths are in points.
class SheetPen {
public:
    static constexpr int unitsAPoint = 10; // device units; whole sizes of type are then tenths of a point

    // device   whose resolution is unitsAPoint * 72 dots an inch
    // painter  null to measure only
    // type     size of the usual words
    SheetPen(QPaintDevice& device, QPainter* painter, double type)
        : m_device(device), m_painter(painter), m_type(type)
    {
    }

    [[nodiscard]] double type() const { return m_type; }
    [[nodiscard]] double gap() const { return m_type * 0.9; } // between blocks

    // Each gives the height taken.
    double words(const QString& text, const QPointF& at, double width, const PenStyle& style = {}) const;
    double heading(const QString& text, const QPointF& at, double width) const;
    double lines(const QStringList& lines, const QPointF& at, double width, const PenStyle& style = {}) const;
    double bullets(const QStringList& lines, const QPointF& at, double width) const;
    double facts(const std::vector<text::SheetFact>& facts, const QPointF& at, double width) const;
    // from, count  the rows to show; the sums stand under the last row of all
    double table(const text::SheetTable& table, std::size_t from, std::size_t count, const QPointF& at,
        double width) const;
    // A row of a table whose cells may wrap: the name, then the others in equal columns.
    double nameAndCells(const QStringList& cells, const QPointF& at, double width, double nameShare,
        const PenStyle& style = {}) const;
    [[nodiscard]] double rowHeight() const;

    void rule(const QPointF& from, const QPointF& to, double width, bool isSoft = false) const;
    void box(const QRectF& frame, double radius, double width, formats::Ink ground) const;
    void disc(const QPointF& middle, double size, bool isHollow) const;
    // A picture laid out by its own measure, `scale` points to its pixel.
    void picture(const formats::Picture& picture, const QPointF& at, double scale) const;

private:
    [[nodiscard]] QFont font(const PenStyle& style) const;
    double row(const QStringList& cells, const std::vector<double>& edges, const QPointF& at,
        const PenStyle& style) const;

    QPaintDevice& m_device;
    QPainter* m_painter;
    double m_type;
};

} // namespace duskrow::app
