// SPDX-License-Identifier: MIT
#include "text/due_text.h"

#include <QCoreApplication>
#include <QStringList>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct DueWords {
    Q_DECLARE_TR_FUNCTIONS(Due)
};

std::int64_t numberAt(const DueItem& item, std::size_t at)
{
    return at < item.numbers.size() ? item.numbers[at] : 0;
}

QString daysAt(const DueItem& item, std::size_t at, const QLocale& locale)
{
    return days(std::chrono::days{numberAt(item, at)}, locale);
}

QString heightAt(const DueItem& item, std::size_t at, const QLocale& locale)
{
    return height(Millimetres{numberAt(item, at)}, locale);
}

QString ago(std::int64_t count, const QLocale& locale)
{
    if (count <= 0) return DueWords::tr("today");
    if (count == 1) return DueWords::tr("yesterday");
    //: "3 days ago"
    return DueWords::tr("%1 ago").arg(days(std::chrono::days{count}, locale));
}

QString setUpStep(SetUpStep step)
{
    switch (step) {
    case SetUpStep::Day:
        return DueWords::tr("the day");
    case SetUpStep::Place:
        return DueWords::tr("the place");
    case SetUpStep::Lure:
        return DueWords::tr("the lure");
    case SetUpStep::Strip:
        return DueWords::tr("the killing strip");
    case SetUpStep::Entrance:
        return DueWords::tr("the height of the entrance");
    }
    return {};
}

QString takeDownStep(TakeDownStep step)
{
    switch (step) {
    case TakeDownStep::LureOut:
        return DueWords::tr("take the lure away");
    case TakeDownStep::StripOut:
        return DueWords::tr("take the killing strip away, by its label");
    case TakeDownStep::Washed:
        return DueWords::tr("wash the trap");
    }
    return {};
}

template <typename Step>
QString steps(const DueItem& item, QString (*words)(Step))
{
    QStringList all;
    for (const std::int64_t number : item.numbers) all << words(static_cast<Step>(number));
    return all.join(QStringLiteral(", "));
}

QString task(const DueItem& item)
{
    switch (item.why) {
    case DueReason::SetUpStepsOpen:
        return DueWords::tr("finish setting up");
    case DueReason::WeeklyCount:
        return DueWords::tr("count");
    case DueReason::LureGone:
        return DueWords::tr("put in a lure");
    case DueReason::LureOld:
    case DueReason::LureExpired:
        return DueWords::tr("change the lure");
    case DueReason::StripGone:
        return DueWords::tr("put in a killing strip");
    case DueReason::StripOld:
        return DueWords::tr("change the killing strip");
    case DueReason::MothsAlive:
        return DueWords::tr("moths alive: change the killing strip");
    case DueReason::CropAtEntrance:
    case DueReason::CropWillReach:
        return DueWords::tr("raise the stake");
    case DueReason::SeasonOver:
        return DueWords::tr("take it down");
    case DueReason::TakeDownStepsOpen:
        return DueWords::tr("finish taking it down");
    case DueReason::PastPeak:
        return DueWords::tr("look for larvae");
    }
    return {};
}

QString countReason(const DueItem& item, LocalDay today, const QLocale& locale)
{
    if (item.day > today)
        return DueWords::tr("Counted every week; the next count day is %1.").arg(day(item.day, locale));
    QStringList sentences;
    if (item.numbers.size() > 1)
        sentences << DueWords::tr("%1 since it was emptied.").arg(nights(Nights{numberAt(item, 1)}, locale));
    else
        sentences << DueWords::tr("The count day was %1.").arg(day(item.day, locale));
    if (numberAt(item, 0) > 0)
        sentences << DueWords::tr(
            "A count day went by. What is in the trap now is the catch of the whole time.");
    return sentences.join(QLatin1Char(' '));
}

QString lureReason(const DueItem& item, LocalDay today, const QLocale& locale)
{
    const bool isAhead = item.day > today;
    if (item.why == DueReason::LureGone)
        return DueWords::tr("The lure was found gone %1.").arg(ago(numberAt(item, 0), locale));
    if (item.why == DueReason::LureExpired)
        return isAhead
            ? DueWords::tr("From %1 the lure is past the date on its packet.").arg(day(item.day, locale))
            : DueWords::tr("The lure is %1 past the date on its packet.").arg(daysAt(item, 0, locale));
    if (isAhead)
        return DueWords::tr("On %1 the lure has been in for %2, as long as it lasts.")
            .arg(day(item.day, locale), daysAt(item, 1, locale));
    return DueWords::tr("The lure has been in for %1; it lasts about %2.")
        .arg(daysAt(item, 0, locale), daysAt(item, 1, locale));
}

QString stripReason(const DueItem& item, LocalDay today, const QLocale& locale)
{
    if (item.why == DueReason::StripGone)
        return DueWords::tr("The killing strip was found gone %1.").arg(ago(numberAt(item, 0), locale));
    if (item.why == DueReason::MothsAlive)
        return DueWords::tr("Moths were found alive in the bucket %1: the strip is spent.")
            .arg(ago(numberAt(item, 0), locale));
    if (item.day > today)
        return DueWords::tr("On %1 the killing strip has been in for %2, as long as it lasts.")
            .arg(day(item.day, locale), daysAt(item, 1, locale));
    return DueWords::tr("The killing strip has been in for %1; it lasts about %2.")
        .arg(daysAt(item, 0, locale), daysAt(item, 1, locale));
}

QString raiseTo(const DueItem& item, std::size_t at, const QLocale& locale)
{
    if (at < item.numbers.size()) return DueWords::tr("Set it to %1.").arg(heightAt(item, at, locale));
    return DueWords::tr("This stake may not reach high enough.");
}

QString cropReason(const DueItem& item, LocalDay today, const QLocale& locale)
{
    const QString heights = DueWords::tr("Entrance at %1, canopy at %2.")
                                .arg(heightAt(item, 0, locale), heightAt(item, 1, locale));
    if (item.why == DueReason::CropAtEntrance) return heights + QLatin1Char(' ') + raiseTo(item, 2, locale);
    const LocalDay reached = today + std::chrono::days{numberAt(item, 2)};
    const QString pace = numberAt(item, 2) < 0
        ? DueWords::tr("At its pace the crop has reached it; an estimate from the last heights.")
        : DueWords::tr("At its pace the crop reaches it about %1; an estimate from the last heights.")
              .arg(day(reached, locale));
    return QStringList{heights, pace, raiseTo(item, 3, locale)}.join(QLatin1Char(' '));
}

QString peakReason(const DueItem& item, const QLocale& locale)
{
    return DueWords::tr(
        "The highest catch, %1 in %2, is past; larvae are looked for about %3 after it. A trap catch "
        "never decides a spray.")
        .arg(moths(Moths{numberAt(item, 0)}, locale), nights(Nights{numberAt(item, 1)}, locale),
            daysAt(item, 2, locale));
}

} // namespace

QString dueName(DueWhat what)
{
    switch (what) {
    case DueWhat::SetUpUnfinished:
        return DueWords::tr("Finish setting up");
    case DueWhat::Count:
        return DueWords::tr("Count");
    case DueWhat::LureChange:
        return DueWords::tr("Change the lure");
    case DueWhat::StripChange:
        return DueWords::tr("Change the killing strip");
    case DueWhat::RaiseStake:
        return DueWords::tr("Raise the stake");
    case DueWhat::TakeDown:
        return DueWords::tr("Take down");
    case DueWhat::TakeDownUnfinished:
        return DueWords::tr("Finish taking down");
    case DueWhat::ScoutingWindow:
        return DueWords::tr("Look for larvae");
    }
    return {};
}

QString dueWords(const DueItem& item, LocalDay today, const QLocale& locale)
{
    const bool isAhead = item.day > today;
    const QString on = shortDay(item.day, locale);
    switch (item.what) {
    case DueWhat::Count:
        if (isAhead) return DueWords::tr("count on %1").arg(on);
        if (item.numbers.size() < 2)
            return item.isOverdue ? DueWords::tr("count overdue") : DueWords::tr("count due");
        return (item.isOverdue ? DueWords::tr("count overdue, %1") : DueWords::tr("count due, %1"))
            .arg(nights(Nights{numberAt(item, 1)}, locale));
    case DueWhat::ScoutingWindow:
        if (isAhead) return DueWords::tr("scouting for larvae opens about %1").arg(on);
        return DueWords::tr("look for larvae until %1").arg(shortDay(item.until.value_or(item.day), locale));
    case DueWhat::TakeDown:
        if (isAhead) return DueWords::tr("take it down on %1").arg(on);
        return task(item);
    default:
        //: a task and the day by which it is to be done: "change the lure by 17 Jul"
        return isAhead ? DueWords::tr("%1 by %2").arg(task(item), on) : task(item);
    }
}

QString dueLine(std::span<const DueItem> items, LocalDay today, const QLocale& locale)
{
    QStringList parts;
    for (const DueItem& item : items) parts << dueWords(item, today, locale);
    return parts.join(QStringLiteral("; "));
}

QString dueReason(const DueItem& item, LocalDay today, const QLocale& locale)
{
    switch (item.why) {
    case DueReason::SetUpStepsOpen:
        return DueWords::tr("Still to do: %1.").arg(steps(item, setUpStep));
    case DueReason::WeeklyCount:
        return countReason(item, today, locale);
    case DueReason::LureGone:
    case DueReason::LureOld:
    case DueReason::LureExpired:
        return lureReason(item, today, locale);
    case DueReason::StripGone:
    case DueReason::StripOld:
    case DueReason::MothsAlive:
        return stripReason(item, today, locale);
    case DueReason::CropAtEntrance:
    case DueReason::CropWillReach:
        return cropReason(item, today, locale);
    case DueReason::SeasonOver:
        return DueWords::tr("Traps come down from %1, after a last count.").arg(day(item.day, locale));
    case DueReason::TakeDownStepsOpen:
        return DueWords::tr("Still to do: %1.").arg(steps(item, takeDownStep));
    case DueReason::PastPeak:
        return peakReason(item, locale);
    }
    return {};
}

QString reportBy(const ReportDue& report, const QLocale& locale)
{
    const QString on = day(report.day, locale);
    if (!report.time) return DueWords::tr("Report by %1").arg(on);
    //: a day and a time of day
    return DueWords::tr("Report by %1, %2")
        .arg(on, timeOfDay(static_cast<int>(report.time->count()), locale));
}

} // namespace duskrow::text
