// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>

#include "domain/rules/due.h"
#include "trap_story.h"

using namespace duskrow::domain;
using std::chrono::days;

namespace {

// Counts on Tuesday with a day's grace; traps come down from Saturday 25 to Friday 31 July.
DueRules rulesOf()
{
    DueRules rules;
    rules.week = {std::chrono::Sunday, std::chrono::Tuesday, days{1}, {}, {}};
    rules.lureLife = days{42};
    rules.hasStrip = true;
    rules.stripLife = days{49};
    rules.stake = {Millimetres{600}, Millimetres{1500}};
    rules.takeDownFrom = dayOf(2026, 7, 25);
    rules.takeDownTo = dayOf(2026, 7, 31);
    rules.scoutingAfterPeak = days{14};
    return rules;
}

// A trap set up in full, so that only what the story tells is due.
TrapStory completeTrap(const QByteArray& text)
{
    TrapStory story(text);
    story.trap.latE7 = 520'000'000;
    story.trap.lonE7 = -1'060'000'000;
    story.trap.lureIn = story.trap.stripIn = true;
    if (!story.trap.entrance) story.trap.entrance = Millimetres{1000};
    return story;
}

// "0616! 0 7": due on 16 June, overdue, numbers; empty when not due
QByteArray itemText(const TrapStory& story, DueWhat what, const QByteArray& today, const DueRules& rules)
{
    const auto items = dueOf(story.facts(), rules, storyDay(today));
    const auto found =
        std::find_if(items.begin(), items.end(), [&](const DueItem& item) { return item.what == what; });
    if (found == items.end()) return {};
    QByteArray text = storyText(found->day) + (found->isOverdue ? "!" : "");
    for (const std::int64_t number : found->numbers) text += " " + QByteArray::number(qlonglong{number});
    return text;
}

DueReason reasonOf(const TrapStory& story, DueWhat what, const QByteArray& today)
{
    const auto items = dueOf(story.facts(), rulesOf(), storyDay(today));
    const auto found =
        std::find_if(items.begin(), items.end(), [&](const DueItem& item) { return item.what == what; });
    return found == items.end() ? DueReason::WeeklyCount : found->why;
}

void addColumns()
{
    QTest::addColumn<QByteArray>("story");
    QTest::addColumn<QByteArray>("today");
    QTest::addColumn<QByteArray>("due");
}

void row(const char* claim, const char* story, const char* today, const char* due)
{
    QTest::newRow(claim) << QByteArray(story) << QByteArray(today) << QByteArray(due);
}

void checkRow(DueWhat what)
{
    QFETCH(QByteArray, story);
    QFETCH(QByteArray, today);
    QTEST(itemText(completeTrap(story), what, today, rulesOf()), "due");
}

} // namespace

class DueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void counts_data()
    {
        addColumns();
        row("first count day after set-up", "set:0604", "0605", "0609 0 5");
        row("on the count day", "set:0604", "0609", "0609 0 5");
        row("within the day of grace", "set:0604", "0610", "0609 0 6");
        row("overdue after it", "set:0604", "0611", "0609! 0 7");
        row("still due a week later, one count day gone by", "set:0604", "0616", "0609! 1 12");
        row("the grace before the next count day", "set:0604", "0615", "0609! 1 11");
        row("counted", "set:0604 0609=12", "0609", "0616 0 7");
        row("counted a day early", "set:0604 0608=12", "0609", "0616 0 8");
        row("counted two days early does not answer the count day", "set:0604 0607=12", "0608", "0609 0 2");
        row("not emptied: the nights go back further", "set:0604 0609=12,kept", "0616", "0616 0 12");
        row("could not count answers the day", "set:0604 0609=none,access", "0610", "0616 0 12");
        row("visits of later days are not looked at", "set:0604 0609=12 0616=7", "0610", "0616 0 7");
        row("withdrawn visits are not looked at", "set:0604 0609=12,withdrawn", "0609", "0609 0 5");
        row("the last count is that of the day traps come down", "set:0604 0721=3", "0722", "0728 0 7");
        row("none after it", "set:0604 0728=3", "0728", "");
        row("none after the last day, taking down says it all", "set:0604 0714=3", "0801", "");
        row("an ended trap is not counted", "set:0604 0707=3 end:0707,lost", "0714", "");
        row("an end that lies ahead has not come", "set:0604 0707=3 end:0721,moved", "0714", "0714 0 7");
        row("not set up yet", "set:0604", "0603", "");
    }
    void counts() { checkRow(DueWhat::Count); }

    void intervals_data()
    {
        QTest::addColumn<int>("interval");
        QTest::addColumn<QByteArray>("next");
        QTest::newRow("weekly") << 7 << QByteArray("0616");
        QTest::newRow("every second week") << 14 << QByteArray("0623");
        QTest::newRow("ten days are a week and a bit") << 10 << QByteArray("0616");
        QTest::newRow("every third day") << 3 << QByteArray("0612");
    }

    void intervals()
    {
        QFETCH(int, interval);
        DueRules rules = rulesOf();
        rules.visitInterval = days{interval};
        QTEST(storyText(countAfter(dayOf(2026, 6, 9), rules)), "next");
    }

    void lures_data()
    {
        addColumns();
        row("42 days after set-up", "set:0604", "0609", "0716 42 42");
        row("older than that", "set:0604", "0718", "0716! 44 42");
        row("changed", "set:0604 lure:0623", "0716", "");
        row("changed on a later day than asked", "set:0604 lure:0623", "0616", "0716 42 42");
        row("the date on its packet comes first", "set:0604 lure:0605,0612", "0609", "0613 1");
        row("gone at a visit", "set:0604 0609=12,lure_gone", "0611", "0609! 2");
        row("gone, and put in the same day", "set:0604 0609=12,lure_gone lure:0609", "0611", "0721 42 42");
        row("gone, put in, gone again", "set:0604 0609=1,lure_gone lure:0609 0616=1,lure_gone", "0616",
            "0616 0");
        row("gone, and there after all", "set:0604 0609=1,lure_gone 0616=1,lure_there", "0616", "0716 42 42");
        row("not in the days in which traps come down", "set:0604 lure:0613", "0616", "");
        row("the day before them", "set:0604 lure:0612", "0616", "0724 42 42");
    }
    void lures() { checkRow(DueWhat::LureChange); }

    void strips_data()
    {
        addColumns();
        row("49 days after set-up", "set:0604", "0609", "0723 49 49");
        row("moths alive in the bucket: now", "set:0604 0616=12,alive", "0616", "0616 0");
        row("moths alive last week", "set:0604 0616=12,alive", "0623", "0616! 7");
        row("moths alive, changed since", "set:0604 0616=12,alive strip:0617", "0623", "");
        row("gone", "set:0604 0616=12,no_strip", "0616", "0616 0");
    }
    void strips() { checkRow(DueWhat::StripChange); }

    void reasons()
    {
        const auto reason = [](const char* story, DueWhat what) {
            return static_cast<int>(reasonOf(completeTrap(story), what, "0709"));
        };
        const auto number = [](DueReason why) { return static_cast<int>(why); };
        QCOMPARE(reason("set:0604", DueWhat::LureChange), number(DueReason::LureOld));
        QCOMPARE(reason("set:0604 lure:0605,0612", DueWhat::LureChange), number(DueReason::LureExpired));
        QCOMPARE(reason("set:0604 0609=1,lure_gone", DueWhat::LureChange), number(DueReason::LureGone));
        QCOMPARE(reason("set:0604", DueWhat::StripChange), number(DueReason::StripOld));
        QCOMPARE(reason("set:0604 0609=1,alive", DueWhat::StripChange), number(DueReason::MothsAlive));
        QCOMPARE(reason("set:0604 0609=1,no_strip", DueWhat::StripChange), number(DueReason::StripGone));
    }

    void withoutAPublishedLifeNothingGrowsOld()
    {
        DueRules rules = rulesOf();
        rules.lureLife.reset();
        rules.stripLife.reset();
        const TrapStory story = completeTrap("set:0604");
        QCOMPARE(itemText(story, DueWhat::LureChange, "0720", rules), QByteArray());
        QCOMPARE(itemText(story, DueWhat::StripChange, "0720", rules), QByteArray());
        rules.hasStrip = false;
        const TrapStory alive = completeTrap("set:0604 0616=12,alive");
        QCOMPARE(itemText(alive, DueWhat::StripChange, "0616", rules), QByteArray());
    }

    void raises_data()
    {
        addColumns();
        // 300 mm on 2 June and 650 on 16 June: 25 mm a day, at 1000 mm 14 days later, on 30 June.
        row("the crop will reach it between the next two visits", "set:0602,1000,300 0616=1,canopy650",
            "0617", "0623 1000 650 13");
        row("not yet the visit before", "set:0602,1000,300 0609=1,canopy475", "0609", "");
        row("at the canopy", "set:0602,1000,300 0616=1,canopy1000", "0616", "0616 1000 1000 1350");
        row("below the canopy", "set:0602,1000,300 0616=1,canopy1100", "0618", "0616! 1000 1100 1500");
        row("raised since", "set:0602,1000,800 0616=1,canopy1000 raise:0616,1500", "0616", "");
        // 50 mm a day reach 1500 mm on the 26th, and the stake ends there.
        row("raised, but the crop follows fast", "set:0602,1000,300 0616=1,canopy1000 raise:0616,1500",
            "0616", "0623 1500 1000 10");
        row("not after flowering", "set:0602,1000,300 0616=1,canopy1000,flowered", "0616", "");
        row("nothing measured", "set:0602,1000", "0616", "");
        row("the crop has likely reached it", "set:0602,1000,300 0616=1,canopy650", "0702",
            "0630! 1000 650 -2");
    }
    void raises() { checkRow(DueWhat::RaiseStake); }

    void aFixedHeightIsNeverRaised()
    {
        TrapStory story = completeTrap("set:0602,1000,300 0616=1,canopy1100");
        DueRules rules = rulesOf();
        rules.heightRule = HeightRule::Fixed;
        QCOMPARE(itemText(story, DueWhat::RaiseStake, "0616", rules), QByteArray());
        story.trap.heightRule = HeightRule::FollowCanopy; // the trap's own word comes first
        QVERIFY(!itemText(story, DueWhat::RaiseStake, "0616", rules).isEmpty());
    }

    void takeDowns_data()
    {
        addColumns();
        row("on the count day within the protocol's days", "set:0604", "0714", "0728 0");
        row("on that day", "set:0604 0728=3", "0728", "0728 0");
        row("a day later, within the days", "set:0604", "0730", "0728 2");
        row("overdue after the last of them", "set:0604", "0802", "0728! 5");
        row("taken down", "set:0604 end:0728,season_over", "0728", "");
    }
    void takeDowns() { checkRow(DueWhat::TakeDown); }

    void closingSteps()
    {
        TrapStory story = completeTrap("set:0604 end:0728,season_over");
        QCOMPARE(itemText(story, DueWhat::TakeDownUnfinished, "0728", rulesOf()), QByteArray("0728 0 1 2"));
        story.trap.lureOut = story.trap.stripOut = true;
        QCOMPARE(itemText(story, DueWhat::TakeDownUnfinished, "0729", rulesOf()), QByteArray("0728! 2"));
        story.trap.washed = true;
        QCOMPARE(itemText(story, DueWhat::TakeDownUnfinished, "0729", rulesOf()), QByteArray());
        const TrapStory lost = completeTrap("set:0604 end:0707,lost");
        QCOMPARE(itemText(lost, DueWhat::TakeDownUnfinished, "0714", rulesOf()), QByteArray());
    }

    void setUpSteps()
    {
        TrapStory story("set:0604");
        QCOMPARE(itemText(story, DueWhat::SetUpUnfinished, "0604", rulesOf()), QByteArray("0604 1 2 3 4"));
        story.trap.lureIn = true;
        story.trap.entrance = Millimetres{1000};
        QCOMPARE(itemText(story, DueWhat::SetUpUnfinished, "0605", rulesOf()), QByteArray("0604! 1 3"));
        QCOMPARE(itemText(TrapStory("strip:0604 lure:0604 raise:0604,900"), DueWhat::SetUpUnfinished, "0605",
                     rulesOf()),
            QByteArray("0605 0 1"));
        QCOMPARE(
            itemText(completeTrap("set:0604"), DueWhat::SetUpUnfinished, "0605", rulesOf()), QByteArray());
    }

    void scouting_data()
    {
        addColumns();
        // Highest from 7 to 14 July, 70 in 7 nights, its middle the 10th; two weeks on is the 24th.
        row("the rate fell below half", "set:0602 0707=35 0714=70 0721=34", "0721", "0724 70 7 14");
        row("not while it is half", "set:0602 0707=35 0714=70 0721=35", "0721", "");
        row("not while it rises", "set:0602 0707=35 0714=70", "0714", "");
        row("within the window", "set:0602 0714=70 0721=1", "0721", "0707 70 42 14");
        row("on its last day, the trap taken down", "set:0602 0707=35 0714=70 0721=3 end:0728,season_over",
            "0807", "0724 70 7 14");
        row("over", "set:0602 0707=35 0714=70 0721=3", "0808", "");
        row("nine moths make no peak", "set:0602 0707=0 0714=9 0721=0", "0721", "");
    }
    void scouting()
    {
        QFETCH(QByteArray, story);
        QFETCH(QByteArray, today);
        QTEST(itemText(completeTrap(story), DueWhat::ScoutingWindow, today, rulesOf()), "due");
    }

    void theSoonestComesFirst()
    {
        const TrapStory story = completeTrap("set:0604,1000,900 0609=12,alive,canopy1000");
        const auto items = dueOf(story.facts(), rulesOf(), dayOf(2026, 6, 9));
        QVERIFY(std::is_sorted(
            items.begin(), items.end(), [](const DueItem& a, const DueItem& b) { return a.day < b.day; }));
        QCOMPARE(items.size(), std::size_t{5}); // strip, raise, count, lure, take down
        QVERIFY(items.at(0).what == DueWhat::StripChange);
        QVERIFY(items.back().what == DueWhat::TakeDown);
    }

    void aWithdrawnTrapIsNobodysWork()
    {
        TrapStory story = completeTrap("set:0604");
        story.trap.withdrawn = "typed twice";
        QVERIFY(dueOf(story.facts(), rulesOf(), dayOf(2026, 6, 9)).empty());
    }
};

QTEST_APPLESS_MAIN(DueTest)
#include "due_test.moc"
