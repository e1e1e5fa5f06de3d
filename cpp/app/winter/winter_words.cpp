// SPDX-License-Identifier: MIT
#include "app/winter/winter_words.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/as_qstring.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct Winter {
    Q_DECLARE_TR_FUNCTIONS(Winter)
};

QString traps(std::int64_t count)
{
    return count == 1 ? Winter::tr("1 trap") : Winter::tr("%1 traps").arg(text::number(count));
}

QString visits(std::int64_t count)
{
    return count == 1 ? Winter::tr("1 visit") : Winter::tr("%1 visits").arg(text::number(count));
}

// "24", or "24 to 34" while some have not said.
QString fromTo(std::int64_t surely, std::int64_t atMost)
{
    return surely == atMost ? text::number(surely)
                            : Winter::tr("%1 to %2").arg(text::number(surely), text::number(atMost));
}

// How a thing lasts in a season: "each lasts 42 days, a season 56"
QString lasting(std::chrono::days life, std::chrono::days season)
{
    return Winter::tr("one lasts %1, a season %2").arg(text::days(life), text::days(season));
}

QStringList orderLines(const PestOrder& order)
{
    const std::int64_t atMost = order.surely + order.perhaps;
    QStringList lines{Winter::tr("Traps: %1").arg(fromTo(order.surely, atMost))};
    const SupplyRules& rules = order.rules;
    const Supplies least = suppliesFor(order.surely, rules);
    const Supplies most = suppliesFor(atMost, rules);
    if (least.lures && most.lures)
        lines << Winter::tr("Lures: %1 (%2 in a trap; %3)")
                     .arg(fromTo(*least.lures, *most.lures), text::number(*rules.luresAtOnce),
                         lasting(*rules.lureLife, *rules.season));
    else
        lines << Winter::tr("Lures: not worked out. The protocol does not say how long one lasts.");
    if (least.strips && most.strips)
        lines << Winter::tr("Killing strips: %1 (%2)")
                     .arg(fromTo(*least.strips, *most.strips), lasting(*rules.stripLife, *rules.season));
    else if (rules.hasStrip)
        lines << Winter::tr("Killing strips: not worked out. The protocol does not say how long one lasts.");
    if (order.lost > 0)
        lines << Winter::tr("Lost or replaced this season: %1. Those have to be bought again.")
                     .arg(text::number(order.lost));
    return lines;
}

QString orderTitle(const PestOrder& order)
{
    return order.trapType.isEmpty() ? order.pest : QStringLiteral("%1 · %2").arg(order.pest, order.trapType);
}

} // namespace

std::vector<Row> cooperatorRows(const WinterBook& book)
{
    std::vector<Row> rows;
    for (const Cooperator& person : book.cooperators) {
        std::int64_t made = 0;
        for (const text::ThankYouTrap& trap : person.thanks.traps) made += trap.visits;
        const std::optional<bool> goesOn = person.goesOn();
        const QString said = !goesOn ? QString() : *goesOn ? QStringLiteral("yes") : QStringLiteral("no");
        rows.push_back({.key = asQString(person.member),
            .title = person.thanks.name,
            .detail = QStringLiteral("%1 · %2").arg(
                traps(static_cast<std::int64_t>(person.thanks.traps.size())), visits(made)),
            .flags = {said}});
    }
    return rows;
}

std::vector<Row> orderRows(const WinterBook& book)
{
    std::vector<Row> rows;
    for (const PestOrder& order : book.orders)
        rows.push_back({.title = orderTitle(order), .flags = orderLines(order)});
    return rows;
}

QString orderText(const WinterBook& book, const QString& programme)
{
    QStringList lines{QStringLiteral("%1 · %2").arg(programme).arg(book.nextYear()), goingOnWords(book)};
    for (const PestOrder& order : book.orders) lines << QString() << orderTitle(order) << orderLines(order);
    return lines.join(QChar(u'\n'));
}

QString goingOnWords(const WinterBook& book)
{
    const auto count = [&](std::optional<bool> said) {
        return text::number(std::ranges::count(book.cooperators, said, &Cooperator::goesOn));
    };
    QString words =
        Winter::tr("%1 go on, %2 do not, %3 have not said.").arg(count(true), count(false), count({}));
    if (book.withoutKeeper > 0)
        //: "1 trap" or "3 traps"
        words += QChar(u' ') + Winter::tr("Without a keeper here: %1.").arg(traps(book.withoutKeeper));
    return words;
}

} // namespace duskrow::app
