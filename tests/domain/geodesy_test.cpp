// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/geodesy.h"
#include "domain/rules/local_plane.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

class GeodesyTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void distanceAndBearingFollowTheEllipsoid()
    {
        for (const auto& row : readGolden("rules/geodesic.csv")) {
            const GeoPoint from = toGeoPoint(row.number("lat1"), row.number("lon1"));
            const GeoPoint to = toGeoPoint(row.number("lat2"), row.number("lon2"));
            const Course course = courseBetween(from, to);
            QVERIFY2(std::abs(course.distance.value() - row.number("dist_m")) < 1e-6, row.text("name"));
            QVERIFY2(std::abs(course.bearing->value() - row.number("azi1")) < 1e-9, row.text("name"));
        }
    }

    void aDegreeOfTheEquator()
    {
        // WGS84: the equatorial radius times pi / 180.
        const Course course = courseBetween(toGeoPoint(0.0, 0.0), toGeoPoint(0.0, 1.0));
        QVERIFY(std::abs(course.distance.value() - 111'319.4908) < 1e-4);
        QVERIFY(std::abs(course.bearing->value() - 90.0) < 1e-9);
    }

    void theAntimeridianIsCrossedTheShortWay()
    {
        const Course course = courseBetween(toGeoPoint(0.0, -179.99), toGeoPoint(0.0, 179.99));
        QVERIFY(std::abs(course.distance.value() - 0.02 * 111'319.4908) < 1e-3);
        QVERIFY(std::abs(course.bearing->value() - 270.0) < 1e-9);
    }

    void theSamePlaceHasNoBearing()
    {
        const GeoPoint place = toGeoPoint(52.1, -106.6);
        QCOMPARE(courseBetween(place, place).distance, Metres{0.0});
        QVERIFY(!courseBetween(place, place).bearing.has_value());
    }

    void compassPoints_data()
    {
        QTest::addColumn<double>("bearing");
        QTest::addColumn<int>("point");
        const auto row = [](const char* name, double bearing, CompassPoint point) {
            QTest::newRow(name) << bearing << static_cast<int>(point);
        };
        row("north", 0.0, CompassPoint::North);
        row("nearly north-east", 22.4, CompassPoint::North);
        row("halfway goes clockwise", 22.5, CompassPoint::NorthEast);
        row("east", 90.0, CompassPoint::East);
        row("south-east", 135.0, CompassPoint::SouthEast);
        row("south", 180.0, CompassPoint::South);
        row("south-west", 225.0, CompassPoint::SouthWest);
        row("west", 271.0, CompassPoint::West);
        row("north-west", 337.4, CompassPoint::NorthWest);
        row("north again", 337.5, CompassPoint::North);
        row("full turn", 360.0, CompassPoint::North);
        row("below zero", -90.0, CompassPoint::West);
        row("a hair below zero", -1e-20, CompassPoint::North);
        row("more than a turn", 450.0, CompassPoint::East);
    }

    void compassPoints()
    {
        QFETCH(double, bearing);
        QFETCH(int, point);
        QCOMPARE(static_cast<int>(compassPoint(Degrees{bearing})), point);
    }
};

QTEST_APPLESS_MAIN(GeodesyTest)
#include "geodesy_test.moc"
