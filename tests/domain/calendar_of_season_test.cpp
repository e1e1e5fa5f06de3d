// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/calendar_of_season.h"
#include "trap_story.h"

using namespace duskrow::domain;
using std::chrono::days;

namespace {

DueRules rulesOf()
{
    DueRules rules;
    rules.week = {std::chrono::Sunday, std::chrono::Tuesday, days{1}, {}, {}};
    rules.lureLife = days{42};
    rules.takeDownFrom = dayOf(2026, 7, 25);
    rules.takeDownTo = dayOf(2026, 7, 31);
    rules.scoutingAfterPeak = days{14};
    return rules;
}

TrapStory completeTrap(const QByteArray& text, std::uint8_t number = 1)
{
    TrapStory story(text, number);
    story.trap.lureIn = true;
    return story;
}

// "0609 count x2": day, what, at how many traps; "-0807" when it lasts longer; "@18:00" the alarm
QByteArrayList textOf(const std::vector<CalendarEntry>& entries)
{
    static const QByteArrayList names{
        "set-up", "count", "lure", "strip", "raise", "take down", "closing", "scouting"};
    QByteArrayList lines;
    for (const CalendarEntry& entry : entries) {
        QByteArray line = storyText(entry.first);
        if (entry.last != entry.first) line += "-" + storyText(entry.last);
        line += " " + names.at(static_cast<int>(entry.what));
        if (entry.traps.size() > 1) line += " x" + QByteArray::number(qulonglong{entry.traps.size()});
        if (entry.alarm) line += " @" + QByteArray::number(qlonglong{entry.alarm->count() / 60}) + ":00";
        lines << line;
    }
    return lines;
}

} // namespace

class CalendarOfSeasonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aCountEveryWeekFromSetUpToTakeDown()
    {
        const TrapStory story = completeTrap("set:0604");
        const DueRules rules = rulesOf();
        const std::vector<TrapToPlan> plans{{story.facts(), rules}};
        const QByteArrayList expected{"0609 count @18:00", "0616 count @18:00", "0623 count @18:00",
            "0630 count @18:00", "0707 count @18:00", "0714 count @18:00", "0716 lure", "0721 count @18:00",
            "0728 count @18:00", "0728-0731 take down"};
        QCOMPARE(textOf(calendarOfSeason(plans, dayOf(2026, 6, 4))), expected);
    }

    void trapsOfOneDayShareOneEntryAndOneAlarm()
    {
        const TrapStory one = completeTrap("set:0604 lure:0630 0714=3", 1);
        const TrapStory other = completeTrap("set:0604 lure:0630", 2);
        const DueRules rules = rulesOf();
        DueRules otherPest = rulesOf();
        otherPest.takeDownFrom = dayOf(2026, 7, 18);
        otherPest.takeDownTo = dayOf(2026, 7, 24);
        const std::vector<TrapToPlan> plans{{one.facts(), rules}, {other.facts(), otherPest}};
        const auto entries = calendarOfSeason(plans, dayOf(2026, 7, 14));
        const QByteArrayList expected{"0714 count @18:00", "0721 count x2 @18:00", "0721-0724 take down",
            "0728 count @18:00", "0728-0731 take down"};
        QCOMPARE(textOf(entries), expected);
        QVERIFY((entries.at(1).traps == std::vector{one.trap.id, other.trap.id}));
    }

    void whatIsOverdueIsNotRungForBehind()
    {
        const TrapStory story = completeTrap("set:0604 lure:0701 0707=none,access");
        const DueRules rules = rulesOf();
        const std::vector<TrapToPlan> plans{{story.facts(), rules}};
        const auto entries = calendarOfSeason(plans, dayOf(2026, 7, 22));
        QCOMPARE(textOf(entries), (QByteArrayList{"0728 count @18:00", "0728-0731 take down"}));
    }

    void scoutingLastsForDays()
    {
        const TrapStory story = completeTrap("set:0602 0707=35 0714=70 0721=3 end:0728,season_over");
        const DueRules rules = rulesOf();
        const std::vector<TrapToPlan> plans{{story.facts(), rules}};
        QCOMPARE(textOf(calendarOfSeason(plans, dayOf(2026, 7, 29))), QByteArrayList{"0724-0807 scouting"});
    }

    void withoutADayToTakeDownOnlyTheNextCountIsKnown()
    {
        const TrapStory story = completeTrap("set:0604");
        DueRules rules = rulesOf();
        rules.takeDownFrom.reset();
        rules.takeDownTo.reset();
        rules.lureLife.reset();
        const std::vector<TrapToPlan> plans{{story.facts(), rules}};
        QCOMPARE(textOf(calendarOfSeason(plans, dayOf(2026, 6, 4))), QByteArrayList{"0609 count @18:00"});
    }

    void noTrapsNoEntries() { QVERIFY(calendarOfSeason({}, dayOf(2026, 6, 4)).empty()); }
};

QTEST_APPLESS_MAIN(CalendarOfSeasonTest)
#include "calendar_of_season_test.moc"
