// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <limits>

#include "domain/rules/fix_average.h"
#include "domain/rules/local_plane.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

Fix fixAt(double latitude, double longitude, double accuracy, int second = 0)
{
    return {toGeoPoint(latitude, longitude), Metres{accuracy}, instantFromMs(1000LL * second)};
}

std::vector<Fix> steadyFixes(int count, int secondsApart, double accuracy)
{
    std::vector<Fix> fixes;
    for (int i = 0; i < count; ++i) fixes.push_back(fixAt(52.1, -106.6, accuracy, i * secondsApart));
    return fixes;
}

} // namespace

class FixAverageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theMeanIsWeightedAndLeavesOutTheWorst()
    {
        std::vector<Fix> fixes;
        std::optional<duskrow::tests::GoldenRow> expected;
        for (const auto& row : readGolden("rules/gps_average.csv")) {
            if (row.text("kind") == "fix")
                fixes.push_back(fixAt(row.number("lat"), row.number("lon"), row.number("acc_m")));
            if (row.text("kind") == "weighted_first4") expected = row;
        }
        QCOMPARE(fixes.size(), std::size_t{5});
        QVERIFY(expected.has_value());
        const auto average = averageFixes(fixes);
        QVERIFY(average.has_value());
        // The table holds nine decimals.
        QVERIFY(std::abs(average->latitude - expected->number("lat")) < 1e-9);
        QVERIFY(std::abs(average->longitude - expected->number("lon")) < 1e-9);
        QCOMPARE(average->place.latE7, 521579059);
        QCOMPARE(average->place.lonE7, -1066701498);
        QCOMPARE(average->used, std::size_t{4});
        QCOMPARE(average->leftOut, std::size_t{1});
        // The formal error of these weights is 2.83 m; what is kept is never below half the best of 4 m.
        QVERIFY(average->accuracy >= Metres{2.0});
        QCOMPARE(average->accuracy, std::max(Metres{2.0}, average->spread));
    }

    void theRadiiAreThoseOfTheEllipsoid()
    {
        for (const auto& row : readGolden("rules/gps_average.csv")) {
            if (row.text("kind") != "radii_M_N_at_fix1") continue;
            const EarthRadii radii = earthRadii(52.157902);
            QVERIFY(std::abs(radii.northward.value() - row.number("lat")) < 1e-5);
            QVERIFY(std::abs(radii.eastward.value() - row.number("lon")) < 1e-5);
            return;
        }
        QFAIL("the golden table has no radii");
    }

    void theSpreadIsTheDistanceFromTheMean()
    {
        // Two fixes 0.0002 degrees of latitude apart: each 0.0001 degrees, 11.12 m, from their mean.
        const std::vector<Fix> fixes{fixAt(52.1, -106.6, 5.0), fixAt(52.1002, -106.6, 5.0)};
        const auto average = averageFixes(fixes);
        QVERIFY(std::abs(average->spread.value() - 11.127) < 0.01);
        QCOMPARE(average->accuracy, average->spread);
    }

    void oneFixKeepsItsOwnAccuracy()
    {
        const std::vector<Fix> fixes{fixAt(52.1, -106.6, 7.0)};
        const auto average = averageFixes(fixes);
        QCOMPARE(average->accuracy, Metres{7.0});
        QCOMPARE(average->place, toGeoPoint(52.1, -106.6));
        QVERIFY(!isSettled(*average));
    }

    void fixesWithoutAccuracyAreNotUsed()
    {
        const double unknown = std::numeric_limits<double>::quiet_NaN();
        const double infinite = std::numeric_limits<double>::infinity();
        const std::vector<Fix> blind{
            fixAt(1.0, 1.0, unknown), fixAt(2.0, 2.0, 0.0), fixAt(3.0, 3.0, -4.0), fixAt(4.0, 4.0, infinite)};
        QVERIFY(!averageFixes(blind).has_value());
        QVERIFY(!averageFixes({}).has_value());

        std::vector<Fix> mixed = blind;
        mixed.push_back(fixAt(52.1, -106.6, 5.0));
        const auto average = averageFixes(mixed);
        QCOMPARE(average->place, toGeoPoint(52.1, -106.6));
        QCOMPARE(average->leftOut, std::size_t{4});
    }

    void anAccuracyOfAlmostNothingIsNotBelieved()
    {
        const std::vector<Fix> fixes(2, fixAt(52.1, -106.6, 1e-200));
        const auto average = averageFixes(fixes);
        QCOMPARE(average->place, toGeoPoint(52.1, -106.6));
        QVERIFY(std::isfinite(average->accuracy.value()));
    }

    void theAntimeridianIsALineLikeAnyOther_data()
    {
        QTest::addColumn<double>("one");
        QTest::addColumn<double>("other");
        QTest::addColumn<double>("mean");
        QTest::newRow("from the east") << 179.9999 << -179.9997 << -179.9999;
        QTest::newRow("from the west") << -179.9997 << 179.9999 << -179.9999;
        QTest::newRow("mean on the other side") << -179.9999 << 179.9997 << 179.9999;
        QTest::newRow("Greenwich") << -0.0001 << 0.0003 << 0.0001;
    }

    void theAntimeridianIsALineLikeAnyOther()
    {
        QFETCH(double, one);
        QFETCH(double, other);
        QFETCH(double, mean);
        const std::vector<Fix> fixes{fixAt(-17.0, one, 5.0), fixAt(-17.0, other, 5.0)};
        const auto average = averageFixes(fixes);
        QVERIFY(std::abs(average->longitude - mean) < 1e-9);
        QVERIFY(average->spread < Metres{25.0});
    }

    void settled_data()
    {
        QTest::addColumn<int>("count");
        QTest::addColumn<int>("secondsApart");
        QTest::addColumn<double>("accuracy");
        QTest::addColumn<bool>("settled");
        QTest::newRow("eleven fixes, 30 s") << 11 << 3 << 8.0 << true;
        QTest::newRow("nine fixes") << 9 << 10 << 8.0 << false;
        QTest::newRow("ten fixes in 27 s") << 10 << 3 << 8.0 << false;
        QTest::newRow("coarse") << 20 << 3 << 30.0 << false;
    }

    void settled()
    {
        QFETCH(int, count);
        QFETCH(int, secondsApart);
        QFETCH(double, accuracy);
        QFETCH(bool, settled);
        const auto average = averageFixes(steadyFixes(count, secondsApart, accuracy));
        QCOMPARE(isSettled(*average), settled);
    }

    void aWideSpreadIsNotSettled()
    {
        std::vector<Fix> fixes = steadyFixes(12, 5, 4.0);
        for (std::size_t i = 0; i < fixes.size(); i += 2) fixes[i].place = toGeoPoint(52.1002, -106.6);
        QVERIFY(!isSettled(*averageFixes(fixes)));
    }
};

QTEST_APPLESS_MAIN(FixAverageTest)
#include "fix_average_test.moc"
