// SPDX-License-Identifier: MIT
#include "app/print/sheet_pen.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

#include "app/paint/picture_painter.h"
#include "text/unbroken.h"

namespace duskrow::app {

namespace {

constexpr double units = SheetPen::unitsAPoint;

QColor colourOf(formats::Ink ink)
{
    const formats::Rgb rgb = formats::rgbOf(ink, formats::Light::Day);
    return {rgb.red, rgb.green, rgb.blue};
}

const QString& family()
{
    static const QString found = QFontDatabase::hasFamily(QStringLiteral("Inter"))
        ? QStringLiteral("Inter")
        : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
    return found;
}

} // namespace

namespace {

// Type such as Inter swaps brackets and signs beside figures for other shapes, which a PDF then cannot name:
// readers and searches would miss them. Scripts that need shaping keep it.
void keepReadable(QFont& font, const QString& text)
{
    constexpr char16_t firstShaped = 0x0590;
    constexpr char16_t lastShaped = 0x1CFF;
    const bool needsShaping = std::any_of(text.begin(), text.end(),
        [](QChar one) { return one.unicode() >= firstShaped && one.unicode() <= lastShaped; });
    if (!needsShaping) font.setStyleStrategy(QFont::PreferNoShaping);
}

} // namespace

namespace {

// "larvae/m²" may be broken behind its stroke by the rules of Unicode, and "95 %" at its space, but nobody
// reads them so: the line ends at the space before.
void keepUnitWhole(QTextLine& line, const QString& text)
{
    const int end = line.textStart() + line.textLength();
    if (end >= text.size() || (text[end - 1] != u'/' && text[end] != u'%')) return;
    const auto space = static_cast<int>(text.left(end).trimmed().lastIndexOf(u' '));
    if (space > line.textStart()) line.setLineWidth(line.cursorToX(space) + 1);
}

} // namespace

QFont SheetPen::font(const PenStyle& style) const
{
    QFont font(family());
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(m_type * style.size * units))));
    font.setWeight(static_cast<QFont::Weight>(style.weight));
    return font;
}

double SheetPen::words(const QString& written, const QPointF& at, double width, const PenStyle& style) const
{
    if (written.isEmpty()) return 0;
    const QString text = text::withoutJoiners(written);
    QFont used = font(style);
    keepReadable(used, text);
    QTextLayout layout(text, used, &m_device);
    QTextOption option(style.align);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    double high = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width * units);
        keepUnitWhole(line, text);
        line.setPosition({0, high});
        high += line.height();
    }
    layout.endLayout();
    if (m_painter) {
        m_painter->setPen(colourOf(style.isSoft ? formats::Ink::Soft : formats::Ink::Full));
        layout.draw(m_painter, at * units);
    }
    return high / units;
}

double SheetPen::heading(const QString& text, const QPointF& at, double width) const
{
    return words(text, at, width, {.size = 1.12, .weight = QFont::Bold}) + m_type * 0.25;
}

double SheetPen::lines(const QStringList& lines, const QPointF& at, double width, const PenStyle& style) const
{
    double y = at.y();
    for (const QString& line : lines) y += words(line, {at.x(), y}, width, style) + m_type * 0.12;
    return y - at.y();
}

double SheetPen::bullets(const QStringList& lines, const QPointF& at, double width) const
{
    const double indent = m_type * 0.9;
    double y = at.y();
    for (const QString& line : lines) {
        const double high = words(line, {at.x() + indent, y}, width - indent);
        disc({at.x() + m_type * 0.3, y + m_type * 0.62}, m_type * 0.3, false);
        y += high + m_type * 0.12;
    }
    return y - at.y();
}

double SheetPen::facts(const std::vector<text::SheetFact>& facts, const QPointF& at, double width) const
{
    double y = at.y();
    for (const text::SheetFact& fact : facts) {
        y += words(fact.name, {at.x(), y}, width, {.size = 0.88, .isSoft = true});
        y += words(fact.value, {at.x(), y}, width) + m_type * 0.2;
    }
    return y - at.y();
}

double SheetPen::rowHeight() const
{
    return m_type * 1.34;
}

double SheetPen::row(const QStringList& cells, const std::vector<double>& edges, const QPointF& at,
    const PenStyle& style) const
{
    PenStyle right = style;
    right.align = Qt::AlignRight;
    for (qsizetype i = 0; i < cells.size(); ++i) {
        const auto column = static_cast<std::size_t>(i);
        words(cells[i], {at.x() + edges[column], at.y()}, edges[column + 1] - edges[column], right);
    }
    return rowHeight();
}

// Each column as wide as its widest cell, and what is left shared out between them.
double SheetPen::table(
    const text::SheetTable& table, std::size_t from, std::size_t count, const QPointF& at, double width) const
{
    const QFontMetricsF metrics(font({.weight = QFont::Bold}), &m_device);
    std::vector<double> wide(static_cast<std::size_t>(table.heads.size()), 0);
    const auto measure = [&](const QStringList& cells) {
        for (qsizetype i = 0; i < cells.size(); ++i) {
            double& widest = wide[static_cast<std::size_t>(i)];
            widest = std::max(widest, metrics.horizontalAdvance(cells[i]) / units + 1);
        }
    };
    measure(table.heads);
    measure(table.sums);
    for (const QStringList& cells : table.rows) measure(cells);
    double sum = 0;
    for (const double one : wide) sum += one;
    const double spare = (width - sum) / static_cast<double>(wide.size());
    std::vector<double> edges{0};
    for (const double one : wide) edges.push_back(edges.back() + one + spare);

    double y = at.y();
    y += row(table.heads, edges, {at.x(), y}, {.size = 0.92, .isSoft = true});
    rule({at.x(), y}, {at.x() + width, y}, 0.75);
    y += m_type * 0.15;
    const std::size_t end = std::min(from + count, table.rows.size());
    for (std::size_t i = from; i < end; ++i) {
        y += row(table.rows[i], edges, {at.x(), y}, {});
        rule({at.x(), y - m_type * 0.02}, {at.x() + width, y - m_type * 0.02}, 0.5, true);
    }
    if (end == table.rows.size() && !table.sums.isEmpty()) {
        rule({at.x(), y}, {at.x() + width, y}, 0.75);
        y += m_type * 0.1 + row(table.sums, edges, {at.x(), y + m_type * 0.1}, {.weight = QFont::Bold});
    }
    return y - at.y() + m_type * 0.3;
}

double SheetPen::nameAndCells(
    const QStringList& cells, const QPointF& at, double width, double nameShare, const PenStyle& style) const
{
    const double pad = m_type * 0.25;
    double x = at.x();
    double high = 0;
    for (qsizetype i = 0; i < cells.size(); ++i) {
        const double wide =
            i == 0 ? width * nameShare : width * (1 - nameShare) / static_cast<double>(cells.size() - 1);
        high = std::max(high, words(cells[i], {x, at.y() + pad}, wide - m_type * 0.5, style));
        x += wide;
    }
    return high + 2 * pad;
}

void SheetPen::rule(const QPointF& from, const QPointF& to, double width, bool isSoft) const
{
    if (!m_painter) return;
    m_painter->setPen(QPen(colourOf(isSoft ? formats::Ink::Line : formats::Ink::Full), width * units,
        Qt::SolidLine, Qt::FlatCap));
    m_painter->drawLine(from * units, to * units);
}

void SheetPen::box(const QRectF& frame, double radius, double width, formats::Ink ground) const
{
    if (!m_painter) return;
    m_painter->setPen(QPen(colourOf(formats::Ink::Full), width * units));
    m_painter->setBrush(colourOf(ground));
    m_painter->drawRoundedRect(
        QRectF(frame.topLeft() * units, frame.size() * units), radius * units, radius * units);
}

void SheetPen::disc(const QPointF& middle, double size, bool isHollow) const
{
    if (!m_painter) return;
    const double line = isHollow ? size * 0.16 * units : 0;
    m_painter->setPen(isHollow ? QPen(colourOf(formats::Ink::Full), line) : QPen(Qt::NoPen));
    m_painter->setBrush(colourOf(isHollow ? formats::Ink::Card : formats::Ink::Full));
    const double half = (size * units - line) / 2;
    m_painter->drawEllipse(middle * units, half, half);
}

void SheetPen::picture(const formats::Picture& picture, const QPointF& at, double scale) const
{
    if (!m_painter) return;
    m_painter->save();
    m_painter->translate(at * units);
    m_painter->scale(scale * units, scale * units);
    QFont font = m_painter->font();
    keepReadable(font, QString::fromStdString(picture.title));
    m_painter->setFont(font);
    paintPicture(*m_painter, picture, {.fontFamily = family()});
    m_painter->restore();
}

} // namespace duskrow::app
