// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

#include "domain/rules/geodesy.h"
#include "domain/rules/local_plane.h"
#include "domain/rules/nearest_trap.h"

using namespace duskrow::domain;

namespace {

const GeoPoint here = toGeoPoint(52.0, -106.0);

Uuid idOf(int number)
{
    Uuid id;
    id.bytes[14] = static_cast<std::uint8_t>(number / 256);
    id.bytes[15] = static_cast<std::uint8_t>(number % 256);
    return id;
}

// So many metres north of here (a degree of latitude is 111,268 m there).
TrapPlace northOfHere(int number, double metres, double accuracy = 0.0)
{
    return {idOf(number), toGeoPoint(52.0 + metres / 111'268.0, -106.0), Metres{accuracy}};
}

} // namespace

class NearestTrapTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theNearestComesFirst()
    {
        const std::vector<TrapPlace> traps{
            northOfHere(1, 900.0), northOfHere(2, 40.0), northOfHere(3, -300.0)};
        const NearestTraps nearest = nearestTraps(traps, here, Metres{5.0});
        QCOMPARE(nearest.byDistance.size(), std::size_t{3});
        QCOMPARE(nearest.byDistance[0].id, idOf(2));
        QCOMPARE(nearest.byDistance[1].id, idOf(3));
        QCOMPARE(nearest.byDistance[2].id, idOf(1));
        QVERIFY(std::abs(nearest.byDistance[0].distance.value() - 40.0) < 0.1);
        QVERIFY(std::abs(nearest.byDistance[0].bearing->value() - 0.0) < 1e-6);
        QVERIFY(std::abs(nearest.byDistance[1].bearing->value() - 180.0) < 1e-6);
        QVERIFY(!nearest.isAmbiguous());
    }

    void askedWhenNotToldApart_data()
    {
        QTest::addColumn<double>("first");
        QTest::addColumn<double>("second");
        QTest::addColumn<double>("fixAccuracy");
        QTest::addColumn<double>("trapAccuracy");
        QTest::addColumn<bool>("ambiguous");
        QTest::newRow("well apart") << 1.0 << 60.0 << 5.0 << 4.0 << false;
        QTest::newRow("within the fix's error") << 1.0 << 5.5 << 5.0 << 0.0 << true;
        QTest::newRow("just beyond it") << 1.0 << 6.5 << 5.0 << 0.0 << false;
        // sqrt(5^2 + 4^2 + 4^2) = 7.55
        QTest::newRow("within all errors together") << 1.0 << 8.3 << 5.0 << 4.0 << true;
        QTest::newRow("beyond all errors together") << 1.0 << 9.0 << 5.0 << 4.0 << false;
        QTest::newRow("on either side") << 20.0 << -22.0 << 5.0 << 0.0 << true;
        QTest::newRow("errors not known count as none")
            << 1.0 << 6.5 << 5.0 << std::numeric_limits<double>::quiet_NaN() << false;
    }

    void askedWhenNotToldApart()
    {
        QFETCH(double, first);
        QFETCH(double, second);
        QFETCH(double, fixAccuracy);
        QFETCH(double, trapAccuracy);
        QFETCH(bool, ambiguous);
        const std::vector<TrapPlace> traps{
            northOfHere(1, first, trapAccuracy), northOfHere(2, second, trapAccuracy)};
        const NearestTraps nearest = nearestTraps(traps, here, Metres{fixAccuracy}, 1);
        QCOMPARE(nearest.byDistance.size(), std::size_t{1});
        QCOMPARE(nearest.byDistance.front().id, idOf(1));
        QCOMPARE(nearest.isAmbiguous(), ambiguous);
    }

    void aCoarsePlaceFurtherOffMayBeTheOne()
    {
        std::vector<TrapPlace> traps{northOfHere(1, 2.0), northOfHere(2, 50.0), northOfHere(3, 80.0, 200.0)};
        for (int i = 4; i < 40; ++i) traps.push_back(northOfHere(i, 30.0 + i));
        QCOMPARE(nearestTraps(traps, here, Metres{5.0}, 1).notToldApart, std::size_t{2});
    }

    void noBearingCloseBy()
    {
        const std::vector<TrapPlace> traps{northOfHere(1, 9.9), northOfHere(2, 10.1)};
        const NearestTraps nearest = nearestTraps(traps, here, Metres{5.0});
        QVERIFY(!nearest.byDistance[0].bearing.has_value());
        QVERIFY(nearest.byDistance[1].bearing.has_value());
    }

    void nothingAround()
    {
        QVERIFY(nearestTraps({}, here, Metres{5.0}).byDistance.empty());
        QVERIFY(!nearestTraps({}, here, Metres{5.0}).isAmbiguous());
        const std::vector<TrapPlace> traps{northOfHere(1, 9.9)};
        QVERIFY(nearestTraps(traps, here, Metres{5.0}, 0).byDistance.empty());
    }

    void acrossTheAntimeridian()
    {
        const std::vector<TrapPlace> traps{{idOf(1), toGeoPoint(0.0, 179.9), Metres{}},
            {idOf(2), toGeoPoint(0.0, -179.9999), Metres{}}, {idOf(3), toGeoPoint(0.0, 0.0), Metres{}}};
        const auto nearest = nearestTraps(traps, toGeoPoint(0.0, 179.9999), Metres{3.0}, 1);
        QCOMPARE(nearest.byDistance.front().id, idOf(2));
        QVERIFY(std::abs(nearest.byDistance.front().distance.value() - 22.264) < 0.01);
    }

    // Measured against every distance over the ellipsoid: the short cut never changes the order.
    void amongFiveThousandTheOrderIsExact_data()
    {
        QTest::addColumn<double>("span");
        QTest::newRow("a region") << 4.0;
        QTest::newRow("a hemisphere") << 80.0;
        QTest::newRow("one field") << 0.01;
    }

    void amongFiveThousandTheOrderIsExact()
    {
        QFETCH(double, span);
        std::mt19937 random(20260714); // NOLINT: the same traps every time
        std::uniform_real_distribution<double> within(-span, span);
        std::vector<TrapPlace> traps;
        for (int i = 0; i < 5000; ++i)
            traps.push_back({idOf(i), toGeoPoint(within(random), -106.0 + within(random)), Metres{4.0}});
        const GeoPoint centre = toGeoPoint(span / 10.0, -106.0);
        const NearestTraps nearest = nearestTraps(traps, centre, Metres{5.0}, 50);
        std::vector<double> all;
        for (const TrapPlace& trap : traps) all.push_back(courseBetween(centre, trap.place).distance.value());
        std::sort(all.begin(), all.end());
        QCOMPARE(nearest.byDistance.size(), std::size_t{50});
        for (std::size_t i = 0; i < 50; ++i) QCOMPARE(nearest.byDistance[i].distance.value(), all[i]);
        const double error = std::sqrt(5.0 * 5.0 + 2.0 * 4.0 * 4.0);
        const auto alike = std::count_if(
            all.begin(), all.end(), [&](double distance) { return distance - all.front() <= error; });
        QCOMPARE(nearest.notToldApart, static_cast<std::size_t>(alike));
    }
};

QTEST_APPLESS_MAIN(NearestTrapTest)
#include "nearest_trap_test.moc"
