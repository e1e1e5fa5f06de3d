// SPDX-License-Identifier: MIT
#include <QTest>

#include "app/round/round_gpx.h"
#include "app/round/round_order.h"

using namespace duskrow::app;
using namespace duskrow::domain;

namespace {

constexpr GeoPoint here{499000000, -972000000};

// A stop so many thousandths of a degree north of here; nowhere for a negative number.
RoundPlace stopAt(const char* name, int north, bool isInfested = false)
{
    RoundPlace stop{.key = QString::fromLatin1(name),
        .site = QString::fromLatin1(name),
        .title = QString::fromLatin1(name),
        .line = QStringLiteral("count due"),
        .route = QStringLiteral("visit"),
        .subject = QString::fromLatin1(name)};
    if (north >= 0) stop.place = GeoPoint{here.latE7 + north * 10'000, here.lonE7};
    stop.isFoundInfested = isInfested;
    return stop;
}

QString namesOf(const std::vector<RoundPlace>& stops)
{
    QStringList names;
    for (const RoundPlace& stop : stops) names << stop.key;
    return names.join(QLatin1Char(' '));
}

} // namespace

class RoundOrderTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ordered_data()
    {
        QTest::addColumn<bool>("hasPosition");
        QTest::addColumn<bool>("infestedLast");
        QTest::addColumn<QString>("marked");
        QTest::addColumn<QString>("expected");
        // Birch lies near, cedar farther and infested, alder farthest, dogwood nowhere.
        QTest::newRow("from here, infested last") << true << true << ""
                                                  << "birch alder cedar dogwood";
        QTest::newRow("from here, infested not weighed") << true << false << ""
                                                         << "birch cedar alder dogwood";
        QTest::newRow("without a position by name") << false << false << ""
                                                    << "alder birch cedar dogwood";
        QTest::newRow("by name, infested last") << false << true << ""
                                                << "alder birch dogwood cedar";
        QTest::newRow("a mark by hand") << true << true << "birch=1"
                                        << "alder cedar birch dogwood";
        QTest::newRow("a mark by hand against the walk") << true << true << "cedar=0"
                                                         << "birch cedar alder dogwood";
    }

    void ordered()
    {
        QFETCH(bool, hasPosition);
        QFETCH(bool, infestedLast);
        QFETCH(QString, marked);
        QFETCH(QString, expected);
        RoundAsk ask{.day = {}, .here = {}, .infestedLast = infestedLast, .marks = {}};
        if (hasPosition) ask.here = here;
        if (!marked.isEmpty()) ask.marks.insert(marked.section(u'=', 0, 0), marked.endsWith(u'1'));
        RoundFound found;
        found.stops = {
            stopAt("cedar", 20, true), stopAt("dogwood", -1), stopAt("alder", 30), stopAt("birch", 10)};
        suggestOrder(found, ask);
        QVERIFY(!found.trouble);
        QCOMPARE(found.isFromHere, hasPosition);
        QCOMPARE(namesOf(found.stops), expected);
    }

    void tooManyStopsStandByNameAndSaySo()
    {
        RoundAsk ask{.day = {}, .here = here, .marks = {}};
        RoundFound found;
        for (std::size_t i = 0; i <= mostRoundStops; ++i)
            found.stops.push_back(stopAt("many", static_cast<int>(i)));
        suggestOrder(found, ask);
        QVERIFY(found.trouble);
        QCOMPARE(found.trouble->code, ErrorCode::OutOfRange);
        QCOMPARE(found.stops.size(), mostRoundStops + 1);
    }

    void waysAreToldFromTheStopBefore()
    {
        const std::vector stops{stopAt("a", 10), stopAt("b", 30), stopAt("nowhere", -1), stopAt("c", 40)};
        const auto ways = waysAlong(stops, here, RoundMetric::StraightLine);
        QCOMPARE(ways.size(), std::size_t{4});
        QVERIFY(ways[0].isFromHere);
        QVERIFY(!ways[1].isFromHere);
        // A degree of latitude is 111.2 km there, by GeographicLib.
        QVERIFY(std::abs(ways[0].course->distance.value() - 1112) < 2);
        QVERIFY(std::abs(ways[1].course->distance.value() - 2224) < 3);
        QVERIFY(ways[1].course->bearing->value() < 1e-6);
        QVERIFY(!ways[2].course);
        QVERIFY2(!ways[3].course, "the stop before is nowhere");
    }

    void withoutAPositionTheFirstHasNoWay()
    {
        const std::vector stops{stopAt("a", 10), stopAt("b", 30)};
        const auto ways = waysAlong(stops, std::nullopt, RoundMetric::StraightLine);
        QVERIFY(!ways[0].course);
        QVERIFY(ways[1].course && !ways[1].isFromHere);
    }

    void theFileHoldsTheOrderAndLeavesOutWhatHasNoPlace()
    {
        const auto gpx = roundGpx({stopAt("b", 30), stopAt("nowhere", -1), stopAt("a", 10)},
            {.day = dayOf(2026, 7, 14), .at = instantFromMs(0)});
        QCOMPARE(gpx.routes.size(), std::size_t{1});
        QCOMPARE(gpx.routes.front().points.size(), std::size_t{2});
        QCOMPARE(gpx.routes.front().points[0].name, std::string("b"));
        QCOMPARE(gpx.routes.front().points[1].description, std::string("count due"));
        QCOMPARE(gpx.waypoints.size(), std::size_t{2});
    }
};

QTEST_GUILESS_MAIN(RoundOrderTest)
#include "round_order_test.moc"
