// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>
#include <random>

#include "domain/rules/geodesy.h"
#include "domain/rules/local_plane.h"
#include "domain/rules/neighbours.h"
#include "domain/rules/sphere.h"

using namespace duskrow::domain;

namespace {

using Places = std::vector<GeoPoint>;

// Each place against each other, as anybody would do it without thinking of time.
std::vector<std::size_t> slowly(const Places& places, std::size_t here, std::size_t atMost, Metres within)
{
    std::vector<std::pair<double, std::size_t>> found;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const double squared = chordSquared(directionOf(places[here]), directionOf(places[i]));
        if (i != here && distanceOverChord(std::sqrt(squared)) <= within) found.emplace_back(squared, i);
    }
    std::sort(found.begin(), found.end());
    found.resize(std::min(found.size(), atMost));
    std::vector<std::size_t> numbers;
    for (const auto& [squared, number] : found) numbers.push_back(number);
    return numbers;
}

std::vector<std::size_t> numbersOf(const std::vector<Neighbour>& neighbours)
{
    std::vector<std::size_t> numbers;
    for (const Neighbour& neighbour : neighbours) numbers.push_back(neighbour.at);
    return numbers;
}

Places scattered(std::size_t count, double latitude, double longitude, double north, double east)
{
    std::mt19937 dice(7);
    std::uniform_real_distribution<double> chance(-1.0, 1.0);
    Places places;
    for (std::size_t i = 0; i < count; ++i)
        places.push_back(toGeoPoint(latitude + north * chance(dice), longitude + east * chance(dice)));
    return places;
}

} // namespace

class NeighboursTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSameAsEachAgainstEach_data()
    {
        QTest::addColumn<double>("latitude");
        QTest::addColumn<double>("longitude");
        QTest::addColumn<double>("north");
        QTest::addColumn<double>("east");
        QTest::newRow("a prairie") << 52.0 << -106.0 << 1.5 << 3.0;
        QTest::newRow("a tall strip") << 52.0 << -106.0 << 3.0 << 0.01;
        QTest::newRow("along a line of latitude") << 52.0 << -106.0 << 0.0 << 3.0;
        QTest::newRow("along a meridian") << 10.0 << 0.0 << 5.0 << 0.0;
        QTest::newRow("across the antimeridian") << -17.0 << 180.0 << 1.0 << 1.0;
        QTest::newRow("about the pole") << 89.5 << 0.0 << 0.5 << 180.0;
        QTest::newRow("about the equator") << 0.0 << 0.0 << 1.0 << 1.0;
        QTest::newRow("all at one place") << 52.0 << -106.0 << 0.0 << 0.0;
    }

    void theSameAsEachAgainstEach()
    {
        QFETCH(double, latitude);
        QFETCH(double, longitude);
        QFETCH(double, north);
        QFETCH(double, east);
        const Places places = scattered(150, latitude, longitude, north, east);
        for (const Metres within : {Metres{80'000.0}, Metres{5'000.0}}) {
            const auto neighbours = neighboursOf(places, 6, within);
            QCOMPARE(neighbours.size(), places.size());
            for (std::size_t i = 0; i < places.size(); ++i)
                QVERIFY2(numbersOf(neighbours[i]) == slowly(places, i, 6, within), std::to_string(i).c_str());
        }
    }

    void distancesAreThoseOverGround()
    {
        const Places places{toGeoPoint(52.1332, -106.67), toGeoPoint(50.4452, -104.6189)};
        const auto neighbours = neighboursOf(places, 6, Metres{500'000.0});
        QCOMPARE(neighbours[0].size(), 1U);
        const double exact = courseBetween(places[0], places[1]).distance.value();
        QVERIFY(std::abs(neighbours[0][0].distance.value() - exact) < 0.0056 * exact);
        QCOMPARE(neighbours[1][0].distance, neighbours[0][0].distance);
    }

    void fewAndNone()
    {
        QVERIFY(neighboursOf({}, 6, Metres{1.0}).empty());
        const Places one{toGeoPoint(52.0, -106.0)};
        QVERIFY(neighboursOf(one, 6, Metres{80'000.0}).front().empty());
        const Places two{one[0], one[0]};
        QVERIFY(neighboursOf(two, 0, Metres{80'000.0}).front().empty());
        QCOMPARE(neighboursOf(two, 6, Metres{0.0}).front().size(), 1U);
    }
};

QTEST_APPLESS_MAIN(NeighboursTest)
#include "neighbours_test.moc"
