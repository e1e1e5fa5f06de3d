// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/driving_check.h"
#include "domain/rules/local_plane.h"

using namespace duskrow::domain;

namespace {

constexpr LocalDay day = dayOf(2026, 7, 14);
constexpr double metresOfADegree = 111'268.0; // of latitude, at 52 degrees north

Uuid idOf(std::uint8_t kind, int number)
{
    Uuid id;
    id.bytes[0] = kind;
    id.bytes[15] = static_cast<std::uint8_t>(number);
    return id;
}

StopMade stop(int number, double kilometres, double minutes, int trap = -1)
{
    return {idOf(1, number), idOf(2, trap < 0 ? number : trap), day,
        Instant{std::chrono::milliseconds{static_cast<std::int64_t>(minutes * 60'000.0)}},
        toGeoPoint(52.0 + kilometres * 1000.0 / metresOfADegree, -106.0)};
}

// So many traps 13 km apart, one after the other.
std::vector<StopMade> row(int traps, double minutesBetween)
{
    std::vector<StopMade> stops;
    for (int i = 0; i < traps; ++i) stops.push_back(stop(i, 13.0 * i, minutesBetween * i));
    return stops;
}

} // namespace

class DrivingCheckTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // 13 km at 130 km/h take six minutes.
    void fasterThanAnybodyDrives_data()
    {
        QTest::addColumn<int>("traps");
        QTest::addColumn<double>("minutes");
        QTest::addColumn<bool>("isAsked");
        QTest::newRow("four traps, a little too fast") << 4 << 5.9 << true;
        QTest::newRow("four traps, as fast as may be") << 4 << 6.1 << false;
        QTest::newRow("three traps are not asked about") << 3 << 1.0 << false;
        QTest::newRow("all in one minute") << 8 << 0.0 << true;
        QTest::newRow("a morning's work") << 8 << 25.0 << false;
        QTest::newRow("nobody went anywhere") << 0 << 0.0 << false;
    }

    void fasterThanAnybodyDrives()
    {
        QFETCH(int, traps);
        QFETCH(double, minutes);
        QFETCH(bool, isAsked);
        const auto runs = hurriedStops(row(traps, minutes));
        QCOMPARE(runs.size(), isAsked ? 1U : 0U);
        if (isAsked) QCOMPARE(runs.front().stops.size(), static_cast<std::size_t>(traps));
    }

    void theNumbers()
    {
        std::vector<StopMade> stops = row(5, 2.5);
        std::reverse(stops.begin(), stops.end()); // in any order
        const auto runs = hurriedStops(stops);
        QCOMPARE(runs.size(), 1U);
        QVERIFY(runs[0].stops.front().visit == idOf(1, 0));
        QVERIFY(std::abs(runs[0].way.value() - 52'000.0) < 10.0);
        QCOMPARE(runs[0].taken.count(), 10);
        QCOMPARE(runs[0].driving.count(), 25); // 24.0003: rounded up
    }

    void onlyTheHurriedPartIsARun()
    {
        std::vector<StopMade> stops = row(4, 1.0);
        for (int i = 4; i < 7; ++i) stops.push_back(stop(i, 13.0 * i, 60.0 * i));
        const auto runs = hurriedStops(stops);
        QCOMPARE(runs.size(), 1U);
        QCOMPARE(runs[0].stops.size(), 4U);
    }

    void trapsBesideOneAnotherAreOneStop()
    {
        // Five traps of one field, and then home.
        std::vector<StopMade> stops;
        for (int i = 0; i < 5; ++i) stops.push_back(stop(i, 0.02 * i, 0.1 * i));
        QVERIFY(hurriedStops(stops).empty());
        // Pairs along a road in no time are hurried all the same.
        stops.clear();
        for (int i = 0; i < 8; ++i) stops.push_back(stop(i, 13.0 * (i / 2) + 0.02 * (i % 2), 0.5 * i));
        const auto runs = hurriedStops(stops);
        QCOMPARE(runs.size(), 1U);
        QCOMPARE(runs[0].stops.size(), 4U);
    }

    void toAndFroBetweenThreeTrapsIsNotFour()
    {
        std::vector<StopMade> stops;
        for (int i = 0; i < 6; ++i) stops.push_back(stop(i, 13.0 * (i % 3), 0.1 * i, i % 3));
        QVERIFY(hurriedStops(stops).empty());
    }
};

QTEST_APPLESS_MAIN(DrivingCheckTest)
#include "driving_check_test.moc"
