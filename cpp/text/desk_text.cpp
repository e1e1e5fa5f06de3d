// SPDX-License-Identifier: MIT
#include "text/desk_text.h"

#include <QCoreApplication>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct DeskWords {
    Q_DECLARE_TR_FUNCTIONS(Desk)
};

QString countedTraps(std::size_t traps, const QLocale& locale)
{
    return number(static_cast<std::int64_t>(traps), locale);
}

} // namespace

QString weekDays(const ReportingWeek& week, const QLocale& locale)
{
    //: the first and the last day of a week
    return DeskWords::tr("%1 to %2").arg(shortDay(week.first, locale), shortDay(week.last, locale));
}

QString reportedLine(const Reported& sum, const QLocale& locale)
{
    //: traps that reported, traps that are expected to
    QStringList parts{DeskWords::tr("%1 of %2 in")
                          .arg(countedTraps(sum.reported, locale), countedTraps(sum.expected, locale))};
    if (sum.notCounted > 0)
        parts << DeskWords::tr("%1 of them could not be counted").arg(countedTraps(sum.notCounted, locale));
    if (sum.late > 0) parts << DeskWords::tr("%1 late").arg(countedTraps(sum.late, locale));
    return parts.join(QStringLiteral(", "));
}

QString name(WeekStanding standing)
{
    switch (standing) {
    case WeekStanding::Counted:
        return DeskWords::tr("counted");
    case WeekStanding::NotCounted:
        return DeskWords::tr("could not count");
    case WeekStanding::Awaited:
        return DeskWords::tr("not yet");
    case WeekStanding::Late:
        return DeskWords::tr("late");
    }
    return {};
}

QString lateSubject(const LateAsk& ask, const QLocale& locale)
{
    return DeskWords::tr("Trap counts of the week %1").arg(weekDays(ask.week, locale));
}

QString lateMessage(const LateAsk& ask, const QLocale& locale)
{
    const QString greeting =
        ask.to.isEmpty() ? DeskWords::tr("Hello,") : DeskWords::tr("Hello %1,").arg(ask.to);
    const QString traps = ask.traps.join(QStringLiteral("\n- "));
    QStringList parts{greeting,
        DeskWords::tr("For the week %1 no count has arrived here yet from:\n- %2")
            .arg(weekDays(ask.week, locale), traps),
        DeskWords::tr(
            "If you have been there, send the number caught and the day, in any way that is easy for "
            "you. Zero is a count too. If the trap could not be counted, or you could not go, that "
            "helps as well.")};
    parts << (ask.from.isEmpty() ? DeskWords::tr("Thank you.")
                                 : DeskWords::tr("Thank you,\n%1").arg(ask.from));
    return parts.join(QStringLiteral("\n\n"));
}

} // namespace duskrow::text
