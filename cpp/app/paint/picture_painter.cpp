// SPDX-License-Identifier: MIT
#include "app/paint/picture_painter.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace duskrow::app {

using namespace formats;

namespace {

QPointF toQt(Point point)
{
    return {point.x, point.y};
}

QPolygonF toQt(const std::vector<Point>& points)
{
    QPolygonF polygon;
    for (const Point& point : points) polygon << toQt(point);
    return polygon;
}

// Draws each kind of primitive; the counterpart of the SVG writer.
class PrimitivePainter {
public:
    PrimitivePainter(QPainter& painter, const PaintStyle& style) : m_painter(painter), m_style(style) { }

    void operator()(const Line& line) const
    {
        QPen pen(colour(line.ink), line.width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        if (line.isDashed) {
            pen.setCapStyle(Qt::FlatCap);
            pen.setDashPattern({3, 2});
        }
        m_painter.setPen(pen);
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPolyline(toQt(line.points));
    }

    void operator()(const Area& area) const
    {
        QPainterPath path;
        path.addPolygon(toQt(area.outline));
        path.closeSubpath();
        fill(path, area.ink, area.fill, area.opacity);
    }

    void operator()(const Bar& bar) const
    {
        QPainterPath path;
        path.addRoundedRect(
            QRectF(toQt({bar.frame.left, bar.frame.top}), toQt({bar.frame.right, bar.frame.bottom})),
            bar.radius, bar.radius);
        fill(path, bar.ink, bar.fill, bar.opacity);
    }

    void operator()(const Mark& mark) const
    {
        m_painter.setPen(mark.isHollow ? QPen(colour(mark.ink), 2) : QPen(Qt::NoPen));
        m_painter.setBrush(colour(mark.isHollow ? Ink::Card : mark.ink));
        if (mark.shape == MarkShape::Circle) {
            m_painter.drawEllipse(toQt(mark.at), mark.size / 2, mark.size / 2);
        } else {
            m_painter.drawPolygon(toQt(outlineOf(mark)));
        }
    }

    void operator()(const Words& words) const
    {
        QFont font = m_painter.font();
        if (!m_style.fontFamily.isEmpty()) font.setFamily(m_style.fontFamily);
        font.setPixelSize(std::max(1, static_cast<int>(std::lround(words.size * m_style.textScale))));
        font.setWeight(static_cast<QFont::Weight>(words.weight));
        const QString text = QString::fromStdString(words.text);
        const double width = QFontMetricsF(font).horizontalAdvance(text);
        double left = 0;
        if (words.anchor == Anchor::Middle) left = -width / 2;
        if (words.anchor == Anchor::End) left = -width;
        m_painter.save();
        m_painter.translate(toQt(words.at));
        m_painter.rotate(words.turn);
        m_painter.setFont(font);
        m_painter.setPen(colour(words.ink));
        m_painter.drawText(QPointF(left, 0), text);
        m_painter.restore();
    }

private:
    [[nodiscard]] QColor colour(Ink ink) const
    {
        const Rgb rgb = rgbOf(ink, m_style.light);
        return {rgb.red, rgb.green, rgb.blue};
    }

    void fill(const QPainterPath& path, Ink ink, Fill fill, double opacity) const
    {
        QColor with = colour(ink);
        with.setAlphaF(static_cast<float>(opacity));
        if (fill == Fill::Solid) {
            m_painter.fillPath(path, with);
        } else {
            hatch(path, with);
        }
    }

    // Own lines and not a Qt brush pattern: those are made of device pixels, too fine to see on paper.
    void hatch(const QPainterPath& path, const QColor& colour) const
    {
        const QRectF around = path.boundingRect();
        m_painter.save();
        m_painter.setClipPath(path, Qt::IntersectClip);
        m_painter.setPen(QPen(colour, 1.5));
        const double step = hatchSpacing * std::sqrt(2.0);
        // Lines hang on the origin, so that the hatching of neighbours joins.
        const int first = static_cast<int>(std::floor((around.left() - around.bottom()) / step));
        const int last = static_cast<int>(std::ceil((around.right() - around.top()) / step));
        for (int i = first; i < last; ++i) {
            const double shift = i * step;
            m_painter.drawLine(QPointF(around.top() + shift, around.top()),
                QPointF(around.bottom() + shift, around.bottom()));
        }
        m_painter.restore();
    }

    QPainter& m_painter;
    const PaintStyle& m_style;
};

} // namespace

void paintPicture(QPainter& painter, const Picture& picture, const PaintStyle& style)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    const PrimitivePainter draw(painter, style);
    for (const Primitive& primitive : picture.primitives) std::visit(draw, primitive);
    painter.restore();
}

} // namespace duskrow::app
