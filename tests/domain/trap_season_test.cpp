// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/trap_season.h"
#include "trap_story.h"

using namespace duskrow::domain;

namespace {

SeasonRules rulesOn(const QByteArray& today)
{
    return {dayOf(2026, 6, 14), dayOf(2026, 7, 25), dayOf(2026, 7, 31), std::chrono::Sunday, storyDay(today)};
}

TrapSeason seasonOf(const TrapStory& story, const QByteArray& today = "0714")
{
    return trapSeason(story.facts(), rulesOn(today));
}

QByteArray markOf(bool isAtLeast, bool isProvisional)
{
    return QByteArray(isAtLeast ? ">=" : "") + QByteArray(isProvisional ? "?" : "");
}

QByteArray numberOf(std::optional<Moths> moths)
{
    return moths ? QByteArray::number(qlonglong{moths->value()}) : QByteArray("none");
}

// "12/5": 12 moths in 5 nights; ">=" at least, "?" a question is open, "+" not emptied since
QByteArray intervalsOf(const TrapSeason& season)
{
    QByteArrayList words;
    for (const CaughtInterval& interval : season.intervals) {
        QByteArray word =
            markOf(interval.isAtLeast, interval.isProvisional) + numberOf(interval.caught) + "/";
        word += interval.nights ? QByteArray::number(qlonglong{interval.nights->value()}) : QByteArray("-");
        words << word + (interval.isOpen ? "+" : "");
    }
    return words.join(' ');
}

QByteArray totalOf(const TrapSeason& season)
{
    return markOf(season.isAtLeast, season.isProvisional) + numberOf(season.total);
}

QByteArray standingOf(const TrapSeason& season)
{
    static const QByteArrayList names{"so far", "whole", "part", "not known"};
    QByteArray text = names.at(static_cast<int>(season.standing));
    if (season.part.cameLate) text += ", late";
    if (season.part.endedEarly) text += ", ended early";
    if (season.part.notCountedToEnd) text += ", not counted to the end";
    return text;
}

// "0607=39.8/7*": week of 7 June, 39.8 moths of 7 nights, derived
QByteArray weeksOf(const TrapSeason& season)
{
    QByteArrayList words;
    for (const WeekCatch& week : season.weeks) {
        QByteArray word = storyText(week.week.first) + "=" + markOf(week.isAtLeast, week.isProvisional);
        word += week.moths ? QByteArray::number(*week.moths, 'g', 6) : QByteArray("none");
        words << word + "/" + QByteArray::number(qlonglong{week.nights.value()})
                + (week.isDerived ? "*" : "");
    }
    return words.join(' ');
}

} // namespace

class TrapSeasonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void catches_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<QByteArray>("intervals");
        QTest::addColumn<QByteArray>("total");
        const auto row = [](const char* claim, const char* story, const char* intervals, const char* total) {
            QTest::newRow(claim) << QByteArray(story) << QByteArray(intervals) << QByteArray(total);
        };
        row("counts of emptied traps add up", "set:0604 0609=12 0616=47 0623=80", "12/5 47/7 80/7", "139");
        row("no visit yet", "set:0604", "", "0");
        row("zero is a count", "set:0604 0609=0", "0/5", "0");
        row("could not count is not zero", "set:0604 0609=none,access", "none/5+", "0");
        row("a missed week makes a longer interval", "set:0604 0609=12 0623=94", "12/5 94/14", "106");
        row("out of reach: the interval goes on", "set:0604 0609=12 0616=none,access 0623=94", "12/5 94/14",
            "106");
        row("a spoiled catch thrown out is lost", "set:0604 0609=12 0616=none,spoiled,emptied 0623=40",
            "12/5 >=none/7 40/7", ">=52");
        row("what was counted before it spoiled stays",
            "set:0604 0609=12,kept 0616=none,spoiled,emptied 0623=40", ">=12/12 40/7", ">=52");
        row("a trap not emptied is counted once", "set:0604 0609=12,kept 0616=47", "47/12", "47");
        row("not emptied twice, then emptied", "set:0604 0609=12,kept 0616=20,kept 0623=47 0630=9",
            "47/19 9/7", "56");
        row("what stands in the bucket counts", "set:0604 0609=12 0616=20,kept", "12/5 20/7+", "32");
        row("emptied or not: never added", "set:0604 0609=12,unknown 0616=47", "?47/12", "?47");
        row("emptied or not: the higher stands", "set:0604 0609=50,unknown 0616=47", "?50/12", "?50");
        row("emptied or not: no question before the next count", "set:0604 0609=12,unknown", "12/5+", "12");
        row("fewer than before, not emptied: the higher stands", "set:0604 0609=50,kept 0616=47", "?50/12",
            "?50");
        row("a fallen trap: at least", "set:0604 0609=12 0616=20,fallen 0623=30", "12/5 >=20/7 30/7", ">=62");
        row("a flooded trap", "set:0604 0609=12,flooded", ">=12/5", ">=12");
        row("a damaged trap", "set:0604 0609=12,damaged", ">=12/5", ">=12");
        row("a trap that was gone and came back", "set:0604 0609=12,missing", ">=12/5", ">=12");
        row("a lost lure", "set:0604 0609=12 0616=20,lure_gone", "12/5 >=20/7", ">=32");
        row("a trap in order", "set:0604 0609=12,fine", "12/5", "12");
        row("at least, said by the counter", "set:0604 0609=12,at_least", ">=12/5", ">=12");
        row("fallen, not counted, not emptied: the whole interval is a minimum",
            "set:0604 0609=none,fallen 0616=20", ">=20/12", ">=20");
        row("spilled when it fell: what was counted stays", "set:0604 0609=40,kept 0616=5,fallen", ">=40/12",
            ">=40");
        row("withdrawn visits are passed over", "set:0604 0609=12 0610=12,withdrawn 0616=47", "12/5 47/7",
            "59");
        row("twice a day", "set:0604 0609=12 0609=1", "12/5 1/0", "13");
        row("a visit before set-up has no nights", "set:0604 0602=3 0609=12", "3/- 12/5", "15");
        row("no day of set-up: the moths count, the nights are not known", "0609=12 0616=47", "12/- 47/7",
            "59");
    }

    void catches()
    {
        QFETCH(QByteArray, story);
        const TrapSeason season = seasonOf(TrapStory(story));
        QTEST(intervalsOf(season), "intervals");
        QTEST(totalOf(season), "total");
    }

    void everyVisitSaysWhatItMeans()
    {
        const TrapStory story("set:0604 0609=12 0616=200 0623=47,kept 0630=90,fallen");
        const TrapSeason season = seasonOf(story);
        const VisitCatch& third = season.visits.at(2);
        QCOMPARE(third.count, std::optional(Moths{47}));
        QCOMPARE(third.nights, std::optional(Nights{7}));
        QCOMPARE(third.rate->value(), 47.0 / 7.0); // 6.7 a night
        QCOMPARE(third.soFar, Moths{259});
        const VisitCatch& fallen = season.visits.at(3);
        QCOMPARE(fallen.since, std::optional(dayOf(2026, 6, 16)));
        QCOMPARE(fallen.nights, std::optional(Nights{14}));
        QVERIFY(!fallen.rate);
        QVERIFY(fallen.isAtLeast);
        QCOMPARE(fallen.soFar, Moths{302});
    }

    void questions_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<int>("visit"); // the one asked about, counted from 1; 0 none
        QTest::addColumn<int>("question");
        const auto row = [](const char* claim, const char* story, int visit, CatchQuestion question) {
            QTest::newRow(claim) << QByteArray(story) << visit << static_cast<int>(question);
        };
        row("the visit of which nobody knows", "set:0604 0609=12,unknown 0616=47", 1,
            CatchQuestion::EmptiedUnknown);
        row("the count that fell", "set:0604 0609=50,kept 0616=47", 2, CatchQuestion::CountFell);
        row("a spilled catch explains itself", "set:0604 0609=50,kept 0616=47,fallen", 0, {});
        row("who could not reach it did not empty it", "set:0604 0609=none,access,unknown 0616=47", 0, {});
        row("spoiled: was it thrown out?", "set:0604 0609=none,spoiled,unknown 0616=47", 1,
            CatchQuestion::EmptiedUnknown);
    }

    void questions()
    {
        QFETCH(QByteArray, story);
        QFETCH(int, visit);
        QFETCH(int, question);
        const TrapStory told(story);
        std::vector<OpenQuestion> expected;
        if (visit > 0)
            expected.push_back({told.visits.at(static_cast<std::size_t>(visit - 1)).id,
                static_cast<CatchQuestion>(question)});
        const TrapSeason season = seasonOf(told);
        QVERIFY(season.questions == expected);
        QCOMPARE(season.isProvisional, visit > 0);
    }

    void aNamedSampleCorrectsTheCountAndTheOriginalStays()
    {
        const TrapStory story("set:0604 0609=12,unsure5 0616=40,unsure2 named:0609,3 kept:0616,2");
        const TrapSeason season = seasonOf(story);
        const VisitCatch& corrected = season.visits.at(0);
        QCOMPARE(corrected.asCounted, std::optional(Moths{12}));
        QCOMPARE(corrected.count, std::optional(Moths{15}));
        QVERIFY(corrected.isCorrected());
        QCOMPARE(corrected.waiting, Moths{2});
        QCOMPARE(season.visits.at(1).count, std::optional(Moths{40}));
        QVERIFY(!season.visits.at(1).isCorrected());
        QCOMPARE(season.total, Moths{55});
        QCOMPARE(season.waiting, Moths{4});
        QVERIFY(season.isCorrected);
    }

    void aHeavyCatchGivesTheTotalARange()
    {
        // 480 from a quarter by volume, 378 to 610; the named moths move both ends.
        const TrapSeason season =
            seasonOf(TrapStory("set:0604 0609=12 0616=480,378..610 0623=8 named:0616,2"));
        QCOMPARE(season.total, Moths{502});
        QCOMPARE(season.range->low, Moths{12 + 380 + 8});
        QCOMPARE(season.range->high, Moths{12 + 612 + 8});
        QVERIFY(!seasonOf(TrapStory("set:0604 0609=12")).range);
    }

    void standing_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<QByteArray>("today");
        QTest::addColumn<QByteArray>("standing");
        QTest::addColumn<QByteArray>("total");
        const auto row = [](const char* claim, const char* story, const char* today, const char* standing,
                             const char* total) {
            QTest::newRow(claim) << QByteArray(story) << QByteArray(today) << QByteArray(standing)
                                 << QByteArray(total);
        };
        row("the flight goes on", "set:0604 0707=100", "0714", "so far", "100");
        row("out on the last day of the season", "set:0604 0728=100", "0731", "so far", "100");
        row("the day after", "set:0604 0728=100", "0801", "whole", "100");
        row("taken down after the last count", "set:0604 0728=100 end:0728,season_over", "0728", "whole",
            "100");
        row("set up on the latest day", "set:0614 0728=100", "0801", "whole", "100");
        row("set up a day later", "set:0615 0728=100", "0801", "part, late", "100");
        row("late, and the flight goes on", "set:0620 0707=140", "0714", "part, late", "140");
        row("lost", "set:0604 0630=140 end:0707,lost", "0714", "part, ended early", ">=140");
        row("lost on the day it was counted: nothing went with it", "set:0604 0707=140 end:0707,lost", "0714",
            "part, ended early", "140");
        row("lost late with its last weeks", "set:0604 0714=140 end:0728,lost", "0801",
            "part, not counted to the end", ">=140");
        row("moved away", "set:0604 0630=140 end:0707,moved", "0714", "part, ended early", "140");
        row("taken down, last count left out", "set:0604 0714=140 end:0729,season_over", "0801",
            "part, not counted to the end", "140");
        row("forgotten in the field", "set:0604 0714=140", "0901", "part, not counted to the end", "140");
        row("late and lost", "set:0620 0630=14 end:0630,lost", "0714", "part, late, ended early", "14");
        row("no day of set-up", "0609=12 0728=100", "0801", "not known", "112");
        row("failed for a week, whole all the same", "set:0604 0714=40,fallen 0728=100", "0801", "whole",
            ">=140");
        row("moved within the field goes on", "set:0604 0707=40 move:0707 0728=100", "0801", "whole", "140");
    }

    void standing()
    {
        QFETCH(QByteArray, story);
        QFETCH(QByteArray, today);
        const TrapSeason season = seasonOf(TrapStory(story), today);
        QTEST(standingOf(season), "standing");
        QTEST(totalOf(season), "total");
        QCOMPARE(season.takesBand(), standingOf(season) == "whole");
    }

    void withoutPublishedDaysNoSeasonIsCalledWhole()
    {
        const TrapStory story("set:0604 0728=100 end:0728,season_over");
        const SeasonRules rules{.today = dayOf(2026, 8, 1)};
        const auto season = trapSeason(story.facts(), rules);
        QVERIFY(season.standing == SeasonStanding::NotKnown);
        QVERIFY(!season.takesBand());
    }

    void weeks_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<QByteArray>("weeks");
        const auto row = [](const char* claim, const char* story, const char* weeks) {
            QTest::newRow(claim) << QByteArray(story) << QByteArray(weeks);
        };
        row("a count over one week is itself", "set:0607 0614=49 0621=0", "0607=49/7 0614=0/7");
        row("a count across weeks is derived", "set:0604 0609=12 0616=49",
            "0531=7.2/3* 0607=39.8/7* 0614=14/2*");
        row("a missed week is spread", "set:0607 0621=98", "0607=49/7* 0614=49/7*");
        row("a lost week is nothing, not zero", "set:0607 0614=49 0621=none,spoiled,emptied 0628=7",
            "0607=49/7 0614=>=none/0 0621=7/7");
        row("a trap that could not be reached fills its week later",
            "set:0607 0614=none,access 0621=98 0628=7", "0607=49/7* 0614=49/7* 0621=7/7");
        row("a trap not emptied has counted weeks", "set:0607 0614=12,kept 0621=47", "0607=12/7 0614=35/7");
        row("a failed trap marks its week", "set:0607 0614=49 0621=7,fallen", "0607=49/7 0614=>=7/7");
        row("an open question marks its weeks", "set:0607 0614=12,unknown 0621=47", "0607=12/7 0614=?35/7");
        row("without set-up the first count stands in its week", "0616=12", "0614=12/0*");
        row("nothing counted", "set:0607", "");
    }

    void weeks()
    {
        QFETCH(QByteArray, story);
        QTEST(weeksOf(seasonOf(TrapStory(story))), "weeks");
    }

    void aRateOfAWeekLeavesFailedNightsOut()
    {
        // Monday to Thursday 8 moths; Thursday to Sunday it lay on the ground with 2 in it.
        const TrapSeason season = seasonOf(TrapStory("set:0607 0611=8 0614=2,fallen"));
        QCOMPARE(season.weeks.at(0).moths, std::optional(10.0));
        QCOMPARE(season.weeks.at(0).rate->value(), 2.0);
        QVERIFY(season.weeks.at(0).isAtLeast);
    }

    void aPairKeepsBothCounts()
    {
        TrapStory one("set:0604 0609=12", 1);
        TrapStory other("set:0604 0609=30,fallen", 2);
        const TrapSeason oneSeason = seasonOf(one);
        const TrapSeason otherSeason = seasonOf(other);
        QVERIFY(!pairView({one.trap, oneSeason}, {other.trap, otherSeason}));
        other.trap.pairedWith = one.trap.id;
        const auto pair = pairView({one.trap, oneSeason}, {other.trap, otherSeason});
        QVERIFY(pair.has_value());
        QCOMPARE((*pair)[0].total, Moths{12});
        QVERIFY(!(*pair)[0].isMinimum);
        QCOMPARE((*pair)[1].total, Moths{30});
        QVERIFY((*pair)[1].isMinimum);
    }

    void movesAreNoted()
    {
        const TrapSeason season = seasonOf(TrapStory("set:0604 move:0707 move:0616 lure:0620 0609=12"));
        QVERIFY((season.moves == std::vector{dayOf(2026, 6, 16), dayOf(2026, 7, 7)}));
    }

    void phases_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<int>("phase");
        const auto row = [](const char* claim, const char* story, FlightPhase phase) {
            QTest::newRow(claim) << QByteArray(story) << static_cast<int>(phase);
        };
        row("nothing counted", "set:0604", FlightPhase::NotKnown);
        row("zeros", "set:0604 0609=0 0616=0", FlightPhase::NoneYet);
        row("rising", "set:0604 0609=2 0616=47", FlightPhase::Rising);
        row("as high as ever", "set:0604 0616=47 0628=47", FlightPhase::Rising);
        row("exactly half the highest", "set:0602 0609=42 0616=21", FlightPhase::NearHighest);
        row("below half", "set:0602 0609=42 0616=20", FlightPhase::PastHighest);
        row("two nights say too little", "set:0602 0609=42 0611=0", FlightPhase::Rising);
        row("a fallen trap says nothing", "set:0602 0609=42 0616=1,fallen", FlightPhase::Rising);
        row("moths in a fallen trap only", "set:0602 0609=42,fallen 0616=0", FlightPhase::NotKnown);
        row("a missed week does not look like a peak", "set:0602 0609=42 0623=44", FlightPhase::NearHighest);
    }

    void phases()
    {
        QFETCH(QByteArray, story);
        QFETCH(int, phase);
        QCOMPARE(static_cast<int>(seasonOf(TrapStory(story)).flight.phase), phase);
    }

    void thePeakIsTheMiddleOfTheHighestCatch()
    {
        const auto flight = seasonOf(TrapStory("set:0602 0609=7 0616=70 0623=14")).flight;
        QCOMPARE(flight.highest->caught, Moths{70});
        QCOMPARE(flight.highest->rate.value(), 10.0);
        QVERIFY(flight.highest->middle() == dayOf(2026, 6, 12));
        QCOMPARE(flight.last->value(), 2.0);
    }
};

QTEST_APPLESS_MAIN(TrapSeasonTest)
#include "trap_season_test.moc"
