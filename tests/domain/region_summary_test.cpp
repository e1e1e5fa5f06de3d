// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <numeric>

#include "domain/rules/geodesy.h"
#include "domain/rules/region_grid.h"
#include "domain/rules/region_summary.h"
#include "trap_story.h"

using namespace duskrow::domain;

namespace {

SeasonRules rules()
{
    SeasonRules made;
    made.latestSetUp = storyDay("0615");
    made.earliestTakeDown = storyDay("0725");
    made.weekStart = std::chrono::Monday;
    made.today = storyDay("0801");
    return made;
}

TrapSeason seasonOf(const QByteArray& story, std::uint8_t number)
{
    return trapSeason(TrapStory(story, number).facts(), rules());
}

std::vector<Band> bands()
{
    std::vector<Band> made(2);
    made[0].id = "few";
    made[0].below = Moths{20};
    made[1].id = "many";
    made[1].level = 2;
    made[1].from = Moths{20};
    return made;
}

} // namespace

class RegionSummaryTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void spreads_data()
    {
        QTest::addColumn<QList<double>>("catches");
        QTest::addColumn<QList<double>>("expected"); // mean, quartiles, highest, with moths
        // R 4.2: quantile(x, type = 7), recomputed by hand from its definition
        QTest::newRow("one") << QList<double>{7} << QList<double>{7, 7, 7, 7, 7, 1};
        QTest::newRow("two") << QList<double>{10, 0} << QList<double>{5, 2.5, 5, 7.5, 10, 1};
        QTest::newRow("four") << QList<double>{1, 2, 3, 4} << QList<double>{2.5, 1.75, 2.5, 3.25, 4, 4};
        QTest::newRow("five, out of order")
            << QList<double>{40, 0, 12, 3, 0} << QList<double>{11, 0, 3, 12, 40, 3};
    }

    void spreads()
    {
        QFETCH(QList<double>, catches);
        QFETCH(QList<double>, expected);
        const CatchSpread spread = spreadOf({catches.begin(), catches.end()});
        QCOMPARE(spread.traps, static_cast<std::size_t>(catches.size()));
        QCOMPARE(spread.mean, expected[0]);
        QCOMPARE(spread.lowerQuartile, expected[1]);
        QCOMPARE(spread.median, expected[2]);
        QCOMPARE(spread.upperQuartile, expected[3]);
        QCOMPARE(spread.highest, expected[4]);
        QCOMPARE(static_cast<double>(spread.withMoths), expected[5]);
    }

    void noTrapsHaveNoSpread() { QCOMPARE(spreadOf({}).traps, std::size_t{0}); }

    void publishedAverages_data()
    {
        QTest::addColumn<int>("traps");
        QTest::addColumn<int>("moths");
        QTest::addColumn<int>("withMoths");
        QTest::addColumn<QString>("mean");
        // Extension newsletters of trap networks, as printed
        QTest::newRow("North Dakota and Minnesota 2025, bertha armyworm") << 18 << 1584 << 18 << "88";
        QTest::newRow("the same, diamondback moth") << 18 << 19190 << 18 << "1066";
        QTest::newRow("2024, bertha armyworm") << 14 << 256 << 14 << "18";
        QTest::newRow("2024, diamondback moth") << 14 << 1345 << 14 << "96";
        QTest::newRow("2022, share of sites with moths") << 21 << 9 << 9 << "0";
    }

    void publishedAverages()
    {
        QFETCH(int, traps);
        QFETCH(int, moths);
        QFETCH(int, withMoths);
        QFETCH(QString, mean);
        // However they are dealt out.
        std::vector<double> catches(static_cast<std::size_t>(traps), 0);
        for (int i = 0; i < moths; ++i) ++catches[static_cast<std::size_t>(i % withMoths)];
        const CatchSpread spread = spreadOf(catches);
        QCOMPARE(QString::number(spread.mean, 'f', 0), mean);
        QCOMPARE(spread.withMoths, static_cast<std::size_t>(withMoths));
        if (traps == 21) // "43 % positive"
            QCOMPARE(std::lround(100.0 * static_cast<double>(spread.withMoths) / traps), 43L);
    }

    void aDistrict()
    {
        const std::vector<Band> of = bands();
        // counted in full; counted in full; began in the middle; never counted; failed in one week
        const std::vector<TrapSeason> seasons{
            seasonOf(
                "set:0604 0611=2 0618=6 0625=10 0702=4 0709=2 0716=1 0723=0 0730=0 end:0730,season_over", 1),
            seasonOf(
                "set:0604 0611=0 0618=3 0625=5 0702=2 0709=0 0716=0 0723=0 0730=0 end:0730,season_over", 2),
            seasonOf("set:0704 0711=9 0718=4 0725=1 0730=0 end:0730,season_over", 3),
            seasonOf("set:0604", 4)};
        std::vector<RegionTrap> traps;
        for (const TrapSeason& season : seasons)
            traps.push_back({&season, season.takesBand() ? &of[season.total < Moths{20} ? 0 : 1] : nullptr});
        const RegionSeason region = regionSeason(traps, of);
        QCOMPARE(region.catches.traps, std::size_t{2});
        QCOMPARE(region.catches.median, (25.0 + 10.0) / 2);
        QCOMPARE(region.minimum, std::size_t{1});
        QCOMPARE(region.uncounted, std::size_t{1});
        QCOMPARE(*region.highest, std::size_t{0});
        QCOMPARE(region.inBand, (std::vector<std::size_t>{1, 1}));
        // What was counted in the weeks comes to what was counted in the season.
        double sum = 0;
        for (const RegionWeek& week : region.weeks)
            sum += week.catches.mean * static_cast<double>(week.catches.traps);
        QVERIFY2(std::abs(sum - (25 + 10 + 14)) < 1e-6, qPrintable(QString::number(sum)));
        for (std::size_t i = 1; i < region.weeks.size(); ++i)
            QVERIFY(region.weeks[i - 1].week.last < region.weeks[i].week.first);
    }

    void aGridHoldsItsPlaces()
    {
        QVERIFY(!gridAround({}, 100).has_value());
        const std::vector<GeoPoint> places{
            {520'000'000, -1'060'000'000}, {531'000'000, -1'030'000'000}, {515'000'000, -1'045'000'000}};
        const auto region = gridAround(places, 100);
        QVERIFY(region.has_value());
        QCOMPARE(std::max(region->grid.columns, region->grid.rows), std::size_t{100});
        for (const GeoPoint& place : places) {
            const PlaneOffset at = region->plane.offsetOf(place);
            const double column =
                (at.eastMetres - region->grid.southWest.eastMetres) / region->grid.cell.value();
            const double row =
                (at.northMetres - region->grid.southWest.northMetres) / region->grid.cell.value();
            QVERIFY(column > 0 && column < static_cast<double>(region->grid.columns));
            QVERIFY(row > 0 && row < static_cast<double>(region->grid.rows));
        }
        // One place alone, and two on both sides of the antimeridian.
        QCOMPARE(gridAround(std::span(places).first(1), 100)->grid.cell, Metres{500});
        const std::vector<GeoPoint> across{{-170'000'000, 1'799'000'000}, {-170'000'000, -1'799'000'000}};
        QVERIFY(gridAround(across, 100)->grid.cell < Metres{1'000});
    }
};

QTEST_APPLESS_MAIN(RegionSummaryTest)
#include "region_summary_test.moc"
