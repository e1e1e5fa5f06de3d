// SPDX-License-Identifier: MIT
#include "app/desk/desk_words.h"

#include <QCoreApplication>

#include <algorithm>

#include "text/amounts.h"
#include "text/code_names.h"
#include "text/flag_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct DeskText {
    Q_DECLARE_TR_FUNCTIONS(DeskText)
};

LocalDay countDay(const DeskBook& book, const WeekDesk& desk)
{
    return countDayOf(desk.week, book.rhythm().countDay);
}

} // namespace

QString idWords(const Uuid& id)
{
    return QString::fromStdString(formatUuid(id));
}

QString visitWords(const VisitOfDesk& visit)
{
    const QString day = text::shortDay(visit.day);
    //: a day, and how a count was reported: "14 Jul, by phone"
    return visit.how ? DeskText::tr("%1, %2").arg(day, text::name(*visit.how)) : day;
}

QString standingWords(WeekStanding standing, const VisitOfDesk* visit, const text::Animal& animal)
{
    return visit && visit->pest ? animal.amount(*visit->pest) : text::name(standing);
}

QString observerWords(const DeskBook& book, const Observer& observer)
{
    if (!observer.typed.empty()) return QString::fromStdString(observer.typed);
    const auto& members = book.records().members;
    const auto found = std::ranges::find(members, observer.member, &Member::id);
    return found == members.end() ? DeskText::tr("Somebody") : QString::fromStdString(found->name);
}

FlagWords flagWords(const Flag& flag, const text::Animal& animal)
{
    const QString check = QString::number(static_cast<int>(flag.check));
    const QString who = flag.visit.isNil()
        ? idWords(flag.observer.member) + QString::fromStdString(flag.observer.typed)
        : idWords(flag.visit);
    QStringList head{text::checkName(flag.check)};
    if (flag.day) head << text::shortDay(*flag.day);
    return {
        check + QLatin1Char('/') + who, head.join(QStringLiteral(" · ")), text::flagReason(flag, {}, animal)};
}

std::vector<Row> trapFacts(
    const DeskBook& book, std::size_t trap, const WeekDesk& desk, const text::Animal& animal)
{
    const auto of = std::ranges::find(desk.traps, trap, &TrapWeek::trap);
    std::vector<Row> rows;
    //: a week on a form, and how a trap stands in it
    const QString week = text::weekDays(desk.week);
    if (of == desk.traps.end()) {
        rows.push_back({.title = week, .besides = DeskText::tr("not expected")});
    } else {
        const VisitOfDesk* visit = of->visit ? &book.records().visits[*of->visit] : nullptr;
        rows.push_back({.title = week, .besides = standingWords(of->standing, visit, animal)});
    }
    const QString person = book.person(trap, countDay(book, desk));
    if (!person.isEmpty()) rows.push_back({.title = DeskText::tr("Who has it"), .besides = person});
    const Trap& record = book.records().traps[trap];
    rows.push_back({.title = DeskText::tr("District"),
        .besides = book.districtName(book.records().trapsOfDesk[trap].district)});
    if (record.setDay)
        rows.push_back({.title = DeskText::tr("Set up"), .besides = text::shortDay(*record.setDay)});
    if (record.endDay)
        rows.push_back({.title = DeskText::tr("Taken down"), .besides = text::shortDay(*record.endDay)});
    return rows;
}

Row flagRow(const DeskBook& book, const Flag& flag, const text::Animal& animal)
{
    const FlagWords words = flagWords(flag, animal);
    Row row{.key = words.key,
        .title = words.head,
        .besides = text::goodCounts(flag.check),
        .detail = words.reason};
    if (!flag.visit.isNil()) row.subject = idWords(flag.visit);
    for (const CountNearby& count : flag.around)
        if (const auto trap = book.trapAt(count.trap))
            row.flags << QStringLiteral("%1: %2").arg(book.title(*trap), text::countNearby(count));
    return row;
}

std::vector<Row> visitRows(const DeskBook& book, const Uuid& trap, const std::map<Uuid, std::string>& leftOut,
    const text::Animal& animal)
{
    const auto& all = book.records().visits;
    const auto [first, last] = std::ranges::equal_range(all, trap, {}, &VisitOfDesk::trap);
    std::vector<Row> rows;
    for (auto visit = std::make_reverse_iterator(last); visit != std::make_reverse_iterator(first); ++visit) {
        Row row{.key = idWords(visit->visit), .title = visitWords(*visit)};
        row.besides =
            standingWords(visit->pest ? WeekStanding::Counted : WeekStanding::NotCounted, &*visit, animal);
        row.route = QStringLiteral("history");
        row.subject = QStringLiteral("visit/") + row.key;
        const auto out = leftOut.find(visit->visit);
        row.isStruck = out != leftOut.end();
        if (row.isStruck) row.detail = DeskText::tr("Left out: %1").arg(QString::fromStdString(out->second));
        if (book.cameIn(*visit)) row.flags << DeskText::tr("new");
        rows.push_back(std::move(row));
    }
    return rows;
}

text::LateAsk lateAsk(const DeskBook& book, const WeekDesk& desk, std::size_t trap, const QString& from)
{
    const LocalDay day = countDay(book, desk);
    const TrapHolder to = book.holder(trap, day);
    text::LateAsk ask{to.name, from, desk.week, {}};
    for (const TrapWeek& of : desk.traps) {
        if (of.standing != WeekStanding::Late) continue;
        const bool isHis = !to.name.isEmpty() && book.holder(of.trap, day) == to;
        if (of.trap == trap || isHis) ask.traps << book.title(of.trap);
    }
    return ask;
}

} // namespace duskrow::app
