// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/season_outlook.h"
#include "trap_story.h"

using namespace duskrow::domain;

namespace {

// Nothing by 4 June, `caught` by 14 July, 100 in the end.
PastTrapSeason pastOf(int year, std::int64_t caught, std::int64_t total = 100)
{
    return {{{dayOf(year, 6, 4), Moths{0}}, {dayOf(year, 7, 14), Moths{caught}},
        {dayOf(year, 7, 28), Moths{total}}}};
}

// By 14 July: 20, 30, 40, 50 and 60 % of the flight. Ten and ninety percent of these five lie at 24 and 56.
std::vector<PastTrapSeason> fivePast()
{
    return {pastOf(2024, 40), pastOf(2023, 20), pastOf(2025, 60), pastOf(2023, 50), pastOf(2025, 30)};
}

const LocalDay asked = dayOf(2026, 7, 14);

} // namespace

class SeasonOutlookTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void fractions_data()
    {
        QTest::addColumn<QByteArray>("day");
        QTest::addColumn<double>("fraction");
        QTest::newRow("before set-up") << QByteArray("0601") << 0.0;
        QTest::newRow("on the day of set-up") << QByteArray("0604") << 0.0;
        QTest::newRow("half-way between two counts") << QByteArray("0624") << 0.2;
        QTest::newRow("on the day of a count") << QByteArray("0714") << 0.4;
        QTest::newRow("between the last counts") << QByteArray("0721") << 0.7;
        QTest::newRow("on the last day") << QByteArray("0728") << 1.0;
        QTest::newRow("afterwards") << QByteArray("0815") << 1.0;
    }

    void fractions()
    {
        QFETCH(QByteArray, day);
        QFETCH(double, fraction);
        const std::chrono::year_month_day date{storyDay(day)};
        const auto found = fractionCaughtBy(pastOf(2025, 40), date.month() / date.day());
        QVERIFY(found.has_value());
        QVERIFY(qAbs(*found - fraction) < 1e-12);
    }

    void aSeasonOfFewMothsTeachesNothing()
    {
        QVERIFY(!fractionCaughtBy(pastOf(2025, 4, 9), std::chrono::July / 14));
        QVERIFY(fractionCaughtBy(pastOf(2025, 4, 10), std::chrono::July / 14).has_value());
        auto past = fivePast();
        past.back() = pastOf(2025, 4, 9);
        QVERIFY(!seasonOutlook(Moths{112}, asked, past));
    }

    void theRangeIsTheCatchOverThePartThatIsUsuallyIn()
    {
        const auto outlook = seasonOutlook(Moths{112}, asked, fivePast());
        QVERIFY(outlook.has_value());
        QVERIFY(qAbs(outlook->fractionLow - 0.24) < 1e-12);
        QVERIFY(qAbs(outlook->fractionHigh - 0.56) < 1e-12);
        QCOMPARE(outlook->totalLow, std::optional(Moths{200})); // 112 / 0.56, down
        QCOMPARE(outlook->totalHigh, std::optional(Moths{467})); // 112 / 0.24 = 466.7, up
        QCOMPARE(outlook->seasons, std::size_t{5});
        QCOMPARE(outlook->years, std::size_t{3});
    }

    void fewerThanFiveSeasonsSayNothing()
    {
        auto past = fivePast();
        past.pop_back();
        QVERIFY(!seasonOutlook(Moths{112}, asked, past));
        QVERIFY(!seasonOutlook(Moths{112}, asked, {}));
    }

    void fewerThanTenMothsGiveNoTotal()
    {
        const auto outlook = seasonOutlook(Moths{9}, asked, fivePast());
        QVERIFY(outlook.has_value());
        QVERIFY(!outlook->totalLow);
        QVERIFY(!outlook->totalHigh);
        QVERIFY(seasonOutlook(Moths{10}, asked, fivePast())->totalLow.has_value());
    }

    void aFlightHardlyBegunGivesNoTotal()
    {
        const std::vector<PastTrapSeason> past(5, pastOf(2025, 2));
        const auto outlook = seasonOutlook(Moths{50}, asked, past);
        QVERIFY(outlook.has_value());
        QVERIFY(!outlook->totalHigh);
    }

    void aFlightThatIsOverAddsNothing()
    {
        const auto outlook = seasonOutlook(Moths{50}, dayOf(2026, 7, 31), fivePast());
        QCOMPARE(outlook->totalLow, std::optional(Moths{50}));
        QCOMPARE(outlook->totalHigh, std::optional(Moths{50}));
    }

    void theLastDayOfFebruaryStandsForALeapDay()
    {
        const PastTrapSeason south{{{dayOf(2023, 2, 18), Moths{0}}, {dayOf(2023, 2, 28), Moths{20}},
            {dayOf(2023, 3, 10), Moths{40}}}};
        QCOMPARE(fractionCaughtBy(south, std::chrono::February / 29), std::optional(0.5));
    }

    void pastSeasons_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<bool>("teaches");
        const auto row = [](const char* claim, const char* story, bool teaches) {
            QTest::newRow(claim) << QByteArray(story) << teaches;
        };
        row("whole", "set:0604 0714=40 0728=60", true);
        row("part of the flight", "set:0704 0714=40 0728=60", false);
        row("failed", "set:0604 0714=40,fallen 0728=60", false);
        row("a question open", "set:0604 0714=40,unknown 0728=60", false);
    }

    void pastSeasons()
    {
        QFETCH(QByteArray, story);
        const TrapStory told(story);
        const SeasonRules rules{dayOf(2026, 6, 14), dayOf(2026, 7, 25), dayOf(2026, 7, 31),
            std::chrono::Sunday, dayOf(2027, 1, 1)};
        const auto past = pastSeasonOf(told.trap, trapSeason(told.facts(), rules));
        QTEST(past.has_value(), "teaches");
    }

    void aTrapNotEmptiedIsAPointOfTheCurve()
    {
        const TrapStory told("set:0604 0707=10,kept 0714=40 0714=1 0728=59");
        const SeasonRules rules{dayOf(2026, 6, 14), dayOf(2026, 7, 25), dayOf(2026, 7, 31),
            std::chrono::Sunday, dayOf(2027, 1, 1)};
        const auto past = pastSeasonOf(told.trap, trapSeason(told.facts(), rules));
        QCOMPARE(past->points.size(), std::size_t{4});
        QCOMPARE(past->points.at(1).soFar, Moths{10});
        QCOMPARE(past->points.at(2).soFar, Moths{41});
        QCOMPARE(past->points.at(3).soFar, Moths{100});
    }
};

QTEST_APPLESS_MAIN(SeasonOutlookTest)
#include "season_outlook_test.moc"
