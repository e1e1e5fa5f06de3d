// SPDX-License-Identifier: MIT
#include "app/print/bulletin_page.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/as_qstring.h"
#include "text/amounts.h"

namespace duskrow::app {

namespace {

struct BulletinPageWords {
    Q_DECLARE_TR_FUNCTIONS(BulletinPage)
};

constexpr double largestType = 13; // points
constexpr double smallestType = 7;
constexpr double gutter = 18;
constexpr double pictureWidth = 420; // pixels that a picture is laid out for
constexpr double saidShare = 0.54; // of the width, for what is said in words
constexpr double nameShare = 0.22; // of the width, for the name of a district

QStringList lines(const std::vector<std::string>& texts)
{
    QStringList found;
    for (const std::string& text : texts) found << asQString(text);
    return found;
}

} // namespace

BulletinPage::BulletinPage(const formats::BulletinDocument& document, QPaintDevice& device, QSizeF page)
    : m_document(document), m_device(device), m_page(page), m_rows(document.words.districts.size())
{
    for (double type = largestType; type >= smallestType; type -= 0.25)
        if (tryType(type)) return;
    // More districts than a page holds: the lines that have room, and where the others are.
    while (m_rows > 1 && !tryType(smallestType)) --m_rows;
}

bool BulletinPage::tryType(double type)
{
    m_type = type;
    return lay(SheetPen(m_device, nullptr, type)) <= m_page.height();
}

void BulletinPage::paint(QPainter& painter) const
{
    lay(SheetPen(m_device, &painter, m_type));
}

double BulletinPage::lay(const SheetPen& pen) const
{
    const text::BulletinWords& says = m_document.words;
    double y = head(pen);
    const double left = m_page.width() * saidShare - gutter / 2;
    const double right = m_page.width() - left - gutter;
    const double wordsEnd = said(pen, {0, y}, left);
    const double picturesEnd = pictures(pen, {left + gutter, y}, right);
    y = std::max(wordsEnd, picturesEnd) + pen.gap();
    y = districts(pen, {0, y}, m_page.width()) + pen.gap();
    pen.rule({0, y}, {m_page.width(), y}, 0.75, true);
    y += pen.type() * 0.5;
    y += pen.lines(lines(says.cautions), {0, y}, m_page.width(), {.size = 0.92, .weight = QFont::DemiBold});
    y += pen.type() * 0.4;
    const QString privacy =
        QStringLiteral("%1. %2").arg(asQString(says.privacyHeading), lines(says.privacy).join(QChar(u' ')));
    return y + pen.words(privacy, {0, y}, m_page.width(), {.size = 0.82, .isSoft = true});
}

double BulletinPage::head(const SheetPen& pen) const
{
    const text::BulletinWords& says = m_document.words;
    double y = pen.words(asQString(says.programme), {0, 0}, m_page.width(), {.isSoft = true});
    y += pen.words(asQString(says.title), {0, y}, m_page.width(), {.size = 2.2, .weight = QFont::Bold});
    QStringList parts{asQString(says.dates), asQString(says.issue), asQString(says.notice)};
    parts.removeAll(QString());
    y += pen.words(parts.join(QStringLiteral(" · ")), {0, y}, m_page.width(), {.weight = QFont::DemiBold});
    y += pen.type() * 0.5;
    pen.rule({0, y}, {m_page.width(), y}, 1.2);
    return y + pen.type() * 0.8;
}

double BulletinPage::said(const SheetPen& pen, const QPointF& at, double width) const
{
    const text::BulletinWords& says = m_document.words;
    double y = at.y();
    for (const std::string& paragraph : says.paragraphs)
        y += pen.words(asQString(paragraph), {at.x(), y}, width, {.size = 1.05}) + pen.type() * 0.55;
    if (says.toDo.empty()) return y;
    y += pen.type() * 0.2;
    y += pen.heading(asQString(says.toDoHeading), {at.x(), y}, width);
    return y + pen.bullets(lines(says.toDo), {at.x(), y}, width);
}

double BulletinPage::pictures(const SheetPen& pen, const QPointF& at, double width) const
{
    double y = at.y();
    const double scale = width / pictureWidth;
    for (const bool isMap : {true, false}) {
        const auto& says = m_document.words;
        y += pen.heading(asQString(isMap ? says.mapHeading : says.chartHeading), {at.x(), y}, width);
        const formats::Picture picture =
            isMap ? formats::mapOf(m_document, pictureWidth) : formats::chartOf(m_document, pictureWidth);
        pen.picture(picture, {at.x(), y}, scale);
        y += picture.height * scale + pen.gap();
    }
    return y - pen.gap();
}

double BulletinPage::districts(const SheetPen& pen, const QPointF& at, double width) const
{
    const text::BulletinWords& says = m_document.words;
    double y = at.y() + pen.heading(asQString(says.districtsHeading), at, width);
    y += pen.nameAndCells(
        lines(says.columns), {at.x(), y}, width, nameShare, {.size = 0.85, .weight = QFont::DemiBold});
    bool isWithheld = false;
    for (std::size_t i = 0; i < std::min(m_rows, says.districts.size()); ++i) {
        const text::AreaWords& area = says.districts[i];
        QStringList cells{asQString(area.name)};
        for (std::size_t cell = 0; cell + 1 < says.columns.size(); ++cell)
            cells << (cell < area.cells.size() ? asQString(area.cells[cell]) : QStringLiteral("–"));
        isWithheld = isWithheld || area.cells.empty();
        pen.rule({at.x(), y}, {at.x() + width, y}, 0.5, true);
        y += pen.nameAndCells(
            cells, {at.x(), y}, width, nameShare, {.weight = i == 0 ? QFont::DemiBold : QFont::Normal});
    }
    QStringList notes;
    if (isWithheld) notes << BulletinPageWords::tr("–: held back, so that no farm can be told from it.");
    if (!isWhole())
        notes << BulletinPageWords::tr("Districts that have no room here: %1. The web page has them.")
                     .arg(text::number(static_cast<std::int64_t>(says.districts.size() - m_rows)));
    if (!notes.isEmpty())
        y += pen.words(notes.join(QChar(u' ')), {at.x(), y}, width, {.size = 0.85, .isSoft = true});
    return y;
}

} // namespace duskrow::app
