// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/local_plane.h"
#include "domain/rules/regional_residual.h"

using namespace duskrow::domain;

namespace {

constexpr LocalDay firstWeek = dayOf(2026, 6, 7);

Uuid idOf(std::uint8_t kind, int number)
{
    Uuid id;
    id.bytes[0] = kind;
    id.bytes[14] = static_cast<std::uint8_t>(number / 256);
    id.bytes[15] = static_cast<std::uint8_t>(number % 256);
    return id;
}

// Traps stand along a road, so many kilometres apart.
struct Road {
    double kilometresApart = 5.0;
    std::vector<RegionalCount> counts;

    void count(int trap, int week, double moths, std::int64_t nights = 7)
    {
        counts.push_back({idOf(1, trap), idOf(2, static_cast<int>(counts.size())),
            firstWeek + std::chrono::days{7 * week},
            toGeoPoint(50.0 + trap * kilometresApart / 111.2, -106.0), MothsPerWeek{moths}, Nights{nights}});
    }
    // A week of all traps from the first on.
    void week(int number, std::initializer_list<double> moths)
    {
        int trap = 0;
        for (const double count : moths) this->count(trap++, number, count);
    }
    // Weeks in which every trap catches 30, give or take a little, that make a spread of S about 0.2.
    void fillWith(int weeks)
    {
        for (int number = 100; number < 100 + weeks; ++number) week(number, {28, 30, 32, 29, 31, 30, 33, 27});
    }
};

const RegionalResidual* of(const std::vector<RegionalResidual>& all, std::size_t count)
{
    for (const RegionalResidual& residual : all)
        if (residual.count == count) return &residual;
    return nullptr;
}

bool isNear(double found, double expected)
{
    return std::abs(found - expected) < 1e-9;
}

} // namespace

class RegionalResidualTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // By hand: the median of ln(1 + moths) of the neighbours, at first without an offset.
    void expectedIsTheMedianAround()
    {
        Road road;
        road.week(0, {9, 30, 12, 20, 14});
        const auto all = regionalResiduals(road.counts);
        QCOMPARE(all.size(), 5U);
        const RegionalResidual* first = of(all, 0);
        // Around the first: 30, 12, 20, 14; the median of the logarithms lies between 14 and 20.
        const double median = (std::log(15.0) + std::log(21.0)) / 2.0;
        QVERIFY(isNear(first->expected.value(), std::exp(median) - 1.0));
        QVERIFY(isNear(first->residual, std::log(10.0) - median));
        QCOMPARE(first->around.size(), 4U);
        QVERIFY(first->around[0].trap == idOf(1, 1)); // nearest first
        QCOMPARE(first->around[0].rate.value(), 30.0);
        QVERIFY(std::abs(first->around[0].distance.value() - 5'000.0) < 10.0);
        QVERIFY(!first->score);
        QVERIFY(!first->isFarAbove() && !first->isFarBelow());
    }

    // The mean of earlier differences, times v/(v + 2).
    void whatATrapDifferedByIsLearned()
    {
        Road road;
        for (int week = 0; week < 3; ++week) road.week(week, {39, 19, 19, 19});
        const auto all = regionalResiduals(road.counts);
        const double difference = std::log(40.0) - std::log(20.0);
        QVERIFY(isNear(of(all, 0)->residual, difference));
        QVERIFY(isNear(of(all, 4)->residual, difference * (1.0 - 1.0 / 3.0)));
        QVERIFY(isNear(of(all, 8)->residual, difference * (1.0 - 2.0 / 4.0)));
        QVERIFY(isNear(of(all, 8)->expected.value(), 20.0 * std::sqrt(2.0) - 1.0));
    }

    void whoIsAround_data()
    {
        QTest::addColumn<int>("traps");
        QTest::addColumn<double>("apart");
        QTest::addColumn<int>("aroundTheFirst"); // 0: not compared
        QTest::newRow("two others are too few") << 3 << 5.0 << 0;
        QTest::newRow("three others") << 4 << 5.0 << 3;
        QTest::newRow("the six nearest of many") << 20 << 5.0 << 6;
        QTest::newRow("four within 80 km") << 20 << 19.9 << 4;
        QTest::newRow("two within 80 km") << 20 << 39.9 << 0;
        QTest::newRow("everybody beyond") << 20 << 81.0 << 0;
    }

    void whoIsAround()
    {
        QFETCH(int, traps);
        QFETCH(double, apart);
        QFETCH(int, aroundTheFirst);
        Road road{.kilometresApart = apart, .counts = {}};
        for (int trap = 0; trap < traps; ++trap) road.count(trap, 0, 20);
        const auto all = regionalResiduals(road.counts);
        const RegionalResidual* first = of(all, 0);
        QCOMPARE(first ? static_cast<int>(first->around.size()) : 0, aroundTheFirst);
    }

    void otherWeeksAndLongCountsAreNotAround()
    {
        Road road;
        road.week(0, {20, 20, 20});
        road.count(3, 1, 20); // in another week
        road.count(4, 0, 20, 22); // of more than three weeks
        QVERIFY(regionalResiduals(road.counts).empty());
        road.count(5, 0, 20, 21);
        const auto all = regionalResiduals(road.counts);
        QCOMPARE(all.size(), 4U);
        QVERIFY(!of(all, 4));
    }

    void theLastCountOfAWeekStandsForIt()
    {
        Road road;
        road.week(0, {20, 20, 20, 900});
        road.count(3, 0, 20, 3); // counted again
        const auto all = regionalResiduals(road.counts);
        QCOMPARE(all.size(), 5U);
        QVERIFY(isNear(of(all, 0)->residual, 0.0));
        QVERIFY(std::none_of(of(all, 0)->around.begin(), of(all, 0)->around.end(),
            [](const CountNearby& count) { return count.rate.value() > 20.0; }));
        // Both of its own are held against the others.
        QVERIFY(isNear(of(all, 3)->residual, std::log(901.0) - std::log(21.0)));
    }

    void theScore_data()
    {
        QTest::addColumn<double>("moths"); // where about 30 are expected
        QTest::addColumn<bool>("above");
        QTest::addColumn<bool>("below");
        QTest::newRow("as expected") << 30.0 << false << false;
        QTest::newRow("half as many again") << 45.0 << false << false;
        QTest::newRow("ten times as many") << 300.0 << true << false;
        QTest::newRow("a tenth") << 3.0 << false << true;
        QTest::newRow("none") << 0.0 << false << true;
    }

    void theScore()
    {
        QFETCH(double, moths);
        QFETCH(bool, above);
        QFETCH(bool, below);
        Road road;
        road.fillWith(4);
        road.week(105, {30, 30, 30, 30, 30, 30, 30, moths});
        const auto all = regionalResiduals(road.counts);
        const RegionalResidual* last = of(all, road.counts.size() - 1);
        QCOMPARE(last->isFarAbove(), above);
        QCOMPARE(last->isFarBelow(), below);
        const auto flagged = std::count_if(all.begin(), all.end(),
            [](const RegionalResidual& one) { return one.isFarAbove() || one.isFarBelow(); });
        QCOMPARE(flagged, above || below ? 1 : 0); // and nobody beside it
        // By hand with the floor of S, as the weeks before differ by less: r / sqrt(0.2^2 + 1/(E + 1)).
        const double expected = last->expected.value();
        const double score = last->residual / std::sqrt(0.04 + 1.0 / (expected + 1.0));
        QVERIFY(std::abs(*last->score - score) < 0.1);
    }

    void fewNightsCountForLess()
    {
        Road road;
        road.fillWith(4);
        road.week(105, {30, 30, 30, 30, 30, 30, 30});
        road.count(7, 105, 0, 7);
        const auto whole = regionalResiduals(road.counts);
        road.counts.back().nights = Nights{1};
        const auto night = regionalResiduals(road.counts);
        QCOMPARE(whole.back().residual, night.back().residual);
        QVERIFY(whole.back().isFarBelow());
        QVERIFY(std::abs(*night.back().score) < std::abs(*whole.back().score));
    }

    void aScoreNeedsTwentyResiduals()
    {
        Road road;
        road.week(0, {30, 30, 30, 30, 30});
        road.week(1, {30, 30, 30, 30, 30});
        road.week(2, {30, 30, 30, 30, 30});
        road.week(3, {30, 30, 30, 3000});
        QCOMPARE(regionalResiduals(road.counts).size(), 19U);
        QVERIFY(!regionalResiduals(road.counts).back().score);
        road.count(4, 3, 30);
        const auto all = regionalResiduals(road.counts);
        QVERIFY(of(all, 18)->isFarAbove());
    }

    // In weeks without moths every residual is zero; these must not make a spread of nothing.
    void weeksWithoutMothsDoNotNarrowTheSpread()
    {
        Road road;
        for (int week = 0; week < 10; ++week) road.week(week, {0, 0, 0, 0, 0, 0, 0, 0});
        for (int week = 10; week < 14; ++week) road.week(week, {5, 80, 20, 40, 10, 60, 15, 30});
        const auto all = regionalResiduals(road.counts);
        QVERIFY(std::none_of(all.begin(), all.end(),
            [](const RegionalResidual& one) { return one.isFarAbove() || one.isFarBelow(); }));
    }

    void nothingGivesNothing() { QVERIFY(regionalResiduals({}).empty()); }
};

QTEST_APPLESS_MAIN(RegionalResidualTest)
#include "regional_residual_test.moc"
