// SPDX-License-Identifier: MIT
#include "app/print/sheet_layout.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

#include "text/amounts.h"

namespace duskrow::app {

using text::SheetBlock;
using text::SheetPart;

namespace {

struct SheetPageWords {
    Q_DECLARE_TR_FUNCTIONS(SheetPage)
};

constexpr double largestSheetType = 9.5; // points
constexpr double smallestSheetType = 7;
constexpr double sheetGutter = 18;
constexpr qsizetype longName = 40; // letters; such a field's name is set smaller
constexpr double pictureType = 16; // pixels of the usual words of a picture

// How high a picture may and must be, of the width of its column.
constexpr double mostMap = 0.8;
constexpr double leastMap = 0.45;
constexpr double mostLines = 0.72;
constexpr double leastLines = 0.4;

} // namespace

SheetLayout::SheetLayout(const WalkPaper& paper, QPaintDevice& device, QSizeF page)
    : m_paper(paper), m_device(device), m_page(page), m_column((page.width() - sheetGutter) / 2),
      m_right(m_column + sheetGutter)
{
    for (const bool isApart : {false, true}) {
        for (double type = largestSheetType; type >= smallestSheetType; type -= 0.25)
            if (tryType(type, isApart)) return;
    }
    // Remarks beyond measure: smaller still, and at last whatever comes out.
    for (double type = smallestSheetType; type >= 5; type -= 0.25)
        if (tryType(type, true)) return;
}

bool SheetLayout::tryType(double type, bool isTableApart)
{
    m_type = type;
    m_isTableApart = isTableApart;
    const SheetPen pen(m_device, nullptr, type);
    const SheetBlock* block = m_paper.sheet.block(SheetPart::Frames);
    const std::size_t rows = block ? block->table.rows.size() : 0;
    m_tablePages = isTableApart ? std::max<std::size_t>(1, (rows + rowsAPage(pen) - 1) / rowsAPage(pen)) : 0;
    return columns(pen).fits();
}

bool SheetLayout::hasSketch() const
{
    return std::any_of(m_paper.map.frames.begin(), m_paper.map.frames.end(),
        [](const formats::FrameSpot& spot) { return spot.place.has_value(); });
}

// Kind and programme, the field's name, and what is known of the walk.
double SheetLayout::head(const SheetPen& pen) const
{
    const text::WalkSheet& sheet = m_paper.sheet;
    const double width = m_page.width();
    double y = 0;
    double tag = 0;
    if (!sheet.invented.isEmpty()) {
        tag = width * 0.36;
        const double pad = pen.type() * 0.35;
        const QPointF at(width - tag + pad, pad);
        const PenStyle style{.weight = QFont::Bold, .align = Qt::AlignHCenter};
        const SheetPen measure(m_device, nullptr, pen.type());
        const double high = measure.words(sheet.invented, at, tag - 2 * pad, style);
        pen.box({width - tag, 0, tag, high + 2 * pad}, 3, 1, formats::Ink::Card);
        pen.words(sheet.invented, at, tag - 2 * pad, style);
    }
    const QString kind =
        sheet.programme.isEmpty() ? sheet.kind : QStringLiteral("%1 · %2").arg(sheet.kind, sheet.programme);
    y += pen.words(kind, {0, y}, width - tag - sheetGutter / 2, {.isSoft = true});
    const double size = sheet.title.size() <= longName ? 2.3 : 1.4;
    y += pen.words(sheet.title, {0, y}, width - tag - sheetGutter / 2, {.size = size, .weight = QFont::Bold});
    y = std::max(y, tag > 0 ? pen.type() * 2.2 : 0) + pen.type() * 0.5;
    return factGrid(pen, y);
}

// Three in a row; a long one, such as a remark, has a row to itself.
double SheetLayout::factGrid(const SheetPen& pen, double y) const
{
    constexpr int across = 3;
    constexpr qsizetype longest = 90; // letters
    const double wide = (m_page.width() - sheetGutter * (across - 1)) / across;
    double highest = 0;
    int column = 0;
    const auto endRow = [&] {
        if (column > 0) y += highest + pen.type() * 0.2;
        highest = 0;
        column = 0;
    };
    for (const text::SheetFact& fact : m_paper.sheet.facts) {
        const bool isLong = fact.value.size() > longest;
        if (isLong || column == across) endRow();
        const double taken =
            pen.facts({fact}, {column * (wide + sheetGutter), y}, isLong ? m_page.width() : wide);
        highest = std::max(highest, taken);
        ++column;
        if (isLong) endRow();
    }
    endRow();
    return y + pen.type() * 0.3;
}

double SheetLayout::verdictWords(const SheetPen& pen, const QPointF& at, double width) const
{
    const text::WalkSheet& sheet = m_paper.sheet;
    double x = at.x();
    double y = at.y();
    const double sign = pen.type() * 2.6;
    if (sheet.verdictSign) {
        // A disc over the line, on it or under it, as on the screen.
        const double middle = y + sign * 0.55;
        const double size = pen.type() * 0.95;
        const bool isOpen = *sheet.verdictSign == domain::ControlVerdict::TooCloseToCall;
        const double away = isOpen ? 0 : sign * 0.33;
        const bool isAbove = *sheet.verdictSign == domain::ControlVerdict::Above;
        pen.rule({x, middle}, {x + sign, middle}, 1.5);
        pen.disc({x + sign / 2, middle + (isAbove ? -away : away)}, size, isOpen);
        x += sign + pen.type() * 0.8;
    }
    const double wide = width - (x - at.x());
    y += pen.words(sheet.verdict, {x, y}, wide, {.size = 1.9, .weight = QFont::Bold});
    y += pen.words(sheet.mean, {x, y}, wide, {.size = 1.3, .weight = QFont::DemiBold});
    y += pen.words(sheet.range, {x, y}, wide);
    y += pen.type() * 0.4;
    y += pen.words(sheet.next, {x, y}, wide, {.weight = QFont::DemiBold});
    return y - at.y();
}

double SheetLayout::verdictPanel(const SheetPen& pen, double y) const
{
    const double pad = pen.type();
    const double inner = m_column - pad;
    const auto content = [&](const SheetPen& used) {
        const double right = block(used, SheetPart::Changes, {m_right, y + pad}, inner);
        const double wide = right > 0 ? inner : m_page.width() - 2 * pad;
        double left = verdictWords(used, {pad, y + pad}, wide) + used.type() * 0.6;
        left += block(used, SheetPart::Reasons, {pad, y + pad + left}, wide);
        return std::max(left, right);
    };
    const double high = content(SheetPen(m_device, nullptr, pen.type()));
    pen.box({0.5, y, m_page.width() - 1, high + 2 * pad}, 6, 1.2, formats::Ink::Tint1);
    content(pen);
    return y + high + 2 * pad + pen.gap();
}

double SheetLayout::block(const SheetPen& pen, SheetPart part, const QPointF& at, double width) const
{
    const SheetBlock* found = m_paper.sheet.block(part);
    if (!found || (found->lines.isEmpty() && found->facts.empty())) return 0;
    double y = at.y() + pen.heading(found->heading, at, width);
    y += pen.facts(found->facts, {at.x(), y}, width);
    y += pen.lines(found->lines, {at.x(), y}, width);
    return y - at.y();
}

double SheetLayout::frames(const SheetPen& pen, const QPointF& at, double width) const
{
    const SheetBlock* found = m_paper.sheet.block(SheetPart::Frames);
    if (!found) return 0;
    double y = at.y() + pen.heading(found->heading, at, width);
    if (m_isTableApart) {
        const auto count = static_cast<std::int64_t>(found->table.rows.size());
        y += pen.words(
            SheetPageWords::tr("The table of all %1 frames is on the next page.").arg(text::number(count)),
            {at.x(), y}, width);
        return y - at.y();
    }
    if (!found->table.rows.empty())
        y += pen.table(found->table, 0, found->table.rows.size(), {at.x(), y}, width);
    y += pen.lines(found->lines, {at.x(), y}, width, {.size = 0.88, .isSoft = true});
    return y - at.y();
}

// What was decided, or boxes to tick; and who stands for it.
double SheetLayout::decided(const SheetPen& pen, const QPointF& at, double width) const
{
    const SheetBlock* found = m_paper.sheet.block(SheetPart::Decided);
    double y = at.y() + pen.heading(found->heading, at, width);
    if (m_paper.sheet.isDecided) {
        y += pen.lines(found->lines, {at.x(), y}, width, {.weight = QFont::DemiBold});
    } else {
        const double side = pen.type() * 0.85;
        for (const QString& choice : text::choicesToTick()) {
            pen.box({at.x() + 0.5, y + pen.type() * 0.2, side, side}, 0, 0.75, formats::Ink::Card);
            y += pen.words(choice, {at.x() + side * 1.8, y}, width - side * 1.8) + pen.type() * 0.2;
        }
    }
    y += pen.type() * 2.1;
    const double name = width * 0.62;
    pen.rule({at.x(), y}, {at.x() + name, y}, 0.75);
    pen.rule({at.x() + name + sheetGutter / 2, y}, {at.x() + width, y}, 0.75);
    const PenStyle small{.size = 0.88, .isSoft = true};
    pen.words(SheetPageWords::tr("Who"), {at.x(), y + 1}, name, small);
    y += 1
        + pen.words(SheetPageWords::tr("Day"), {at.x() + name + sheetGutter / 2, y + 1}, width - name, small);
    return y - at.y();
}

// Cautions beside the decision, whatever else is on the page; sources under both.
double SheetLayout::foot(const SheetPen& pen, double y) const
{
    pen.rule({0, y}, {m_page.width(), y}, 0.75);
    y += pen.gap() * 0.7;
    const SheetBlock* cautions = m_paper.sheet.block(SheetPart::Cautions);
    double left = pen.heading(cautions->heading, {0, y}, m_column);
    left += pen.bullets(cautions->lines, {0, y + left}, m_column);
    y += std::max(left, decided(pen, {m_right, y}, m_column)) + pen.gap() * 0.6;
    const SheetBlock* sources = m_paper.sheet.block(SheetPart::Sources);
    const QString all =
        QStringLiteral("%1: %2").arg(sources->heading, sources->lines.join(QStringLiteral(" · ")));
    return y + pen.words(all, {0, y}, m_page.width(), {.size = 0.82, .isSoft = true});
}

// What the pictures may take once all words have their room; `bottom` below nothing when that is too little.
SheetLayout::Columns SheetLayout::columns(const SheetPen& pen) const
{
    Columns made;
    made.top = verdictPanel(pen, head(pen));
    const double room = m_page.height() - made.top - foot(pen, 0) - pen.gap();
    const auto high = [&](SheetPart part) {
        const double taken = block(pen, part, {}, m_column);
        return taken > 0 ? taken + pen.gap() : 0;
    };
    const SheetBlock* mapBlock = m_paper.sheet.block(SheetPart::Map);
    const double mapHead =
        pen.heading(mapBlock->heading, {}, m_column) + pen.gap() + pen.lines(mapBlock->lines, {}, m_column);
    double left = mapHead + frames(pen, {}, m_column) + pen.gap();
    double right = high(SheetPart::Density) + high(SheetPart::Lines) + high(SheetPart::Threshold);
    const double leastLeft = hasSketch() ? m_column * leastMap : 0;
    const double leastRight = m_paper.lines ? m_column * leastLines + pen.gap() : 0;
    const double timing = high(SheetPart::Timing);
    made.isTimingLeft = left + leastLeft < right + leastRight;
    (made.isTimingLeft ? left : right) += timing;
    if (left + leastLeft > room || right + leastRight > room) {
        made.bottom = -1;
        return made;
    }
    made.map = hasSketch() ? std::min(room - left, m_column * mostMap) : 0;
    made.lines = m_paper.lines ? std::min(room - right - pen.gap(), m_column * mostLines) : 0;
    made.bottom = m_page.height() - foot(pen, 0);
    return made;
}

void SheetLayout::paintMap(const SheetPen& pen, double y, double height) const
{
    formats::FrameMapInput input = m_paper.map;
    const double scale = pen.type() / pictureType;
    input.width = m_column / scale;
    input.height = height / scale;
    pen.picture(formats::frameMap(input), {0, y}, scale);
}

void SheetLayout::paintLines(const SheetPen& pen, double y, double height) const
{
    formats::StopLinesInput input = *m_paper.lines;
    const double scale = pen.type() / pictureType;
    input.width = m_column / scale;
    input.height = height / scale;
    pen.picture(formats::stopLinesChart(input), {m_right, y}, scale);
}

void SheetLayout::paintColumns(const SheetPen& pen, const Columns& columns) const
{
    const auto put = [&](SheetPart part, double x, double& y) {
        const double taken = block(pen, part, {x, y}, m_column);
        y += taken > 0 ? taken + pen.gap() : 0;
    };
    double left = columns.top;
    const SheetBlock* map = m_paper.sheet.block(SheetPart::Map);
    left += pen.heading(map->heading, {0, left}, m_column);
    if (hasSketch()) paintMap(pen, left, columns.map);
    left += columns.map;
    left += pen.lines(map->lines, {0, left}, m_column) + pen.gap();
    left += frames(pen, {0, left}, m_column) + pen.gap();
    double right = columns.top;
    put(SheetPart::Density, m_right, right);
    put(SheetPart::Lines, m_right, right);
    if (m_paper.lines) {
        paintLines(pen, right, columns.lines);
        right += columns.lines + pen.gap();
    }
    put(SheetPart::Threshold, m_right, right);
    if (columns.isTimingLeft)
        put(SheetPart::Timing, 0, left);
    else
        put(SheetPart::Timing, m_right, right);
}

void SheetLayout::paintFirst(const SheetPen& pen) const
{
    const SheetPen measure(m_device, nullptr, m_type);
    Columns columns = this->columns(measure);
    verdictPanel(pen, head(pen));
    if (!columns.fits())
        columns = {.map = m_column * leastMap, .lines = m_column * leastLines, .top = columns.top};
    paintColumns(pen, columns);
    foot(pen, m_page.height() - foot(measure, 0));
}

std::size_t SheetLayout::rowsAPage(const SheetPen& pen) const
{
    const SheetBlock* found = m_paper.sheet.block(SheetPart::Frames);
    double besides = pen.type() * 8; // title, heads and sums
    if (found) besides += pen.lines(found->lines, {}, m_page.width());
    return static_cast<std::size_t>(std::max(5.0, (m_page.height() - besides) / pen.rowHeight()));
}

void SheetLayout::paintTable(const SheetPen& pen, int page) const
{
    const SheetBlock* found = m_paper.sheet.block(SheetPart::Frames);
    double y =
        pen.words(QStringLiteral("%1 · %2").arg(m_paper.sheet.title, m_paper.sheet.facts.front().value), {},
            m_page.width() * 0.8, {.weight = QFont::Bold});
    pen.words(SheetPageWords::tr("Page %1 of %2").arg(page + 1).arg(pages()), {m_page.width() * 0.8, 0},
        m_page.width() * 0.2, {.isSoft = true, .align = Qt::AlignRight});
    y += pen.gap() + pen.heading(found->heading, {0, y + pen.gap()}, m_page.width());
    const std::size_t rows = rowsAPage(SheetPen(m_device, nullptr, m_type));
    y += pen.table(found->table, static_cast<std::size_t>(page - 1) * rows, rows, {0, y}, m_page.width());
    if (page + 1 == pages()) pen.lines(found->lines, {0, y}, m_page.width(), {.size = 0.88, .isSoft = true});
}

void SheetLayout::paint(QPainter& painter, int page) const
{
    const SheetPen pen(m_device, &painter, m_type);
    if (page == 0)
        paintFirst(pen);
    else
        paintTable(pen, page);
}

} // namespace duskrow::app
