// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/bulletin/grid_cell.h"
#include "domain/rules/geodesy.h"

using namespace duskrow::domain;

class GridCellTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aPlaceLiesInItsCell_data()
    {
        QTest::addColumn<int>("latE7");
        QTest::addColumn<int>("lonE7");
        QTest::addColumn<int>("row");
        QTest::addColumn<int>("column");
        QTest::newRow("west of Greenwich goes down, not towards zero")
            << 521'579'000 << -1'066'701'580 << 521 << -1067;
        QTest::newRow("the south-west corner belongs to the cell")
            << 521'000'000 << -1'067'000'000 << 521 << -1067;
        QTest::newRow("the north edge belongs to the next") << 522'000'000 << -1'067'000'000 << 522 << -1067;
        QTest::newRow("just below an edge") << 521'999'999 << -1'066'000'001 << 521 << -1067;
        QTest::newRow("zero") << 0 << 0 << 0 << 0;
        QTest::newRow("just south and west of zero") << -1 << -1 << -1 << -1;
        QTest::newRow("the pole") << 900'000'000 << 0 << 899 << 0;
        QTest::newRow("180 east is 180 west") << 0 << 1'800'000'000 << 0 << -1800;
        QTest::newRow("the south pole") << -900'000'000 << -1'800'000'000 << -900 << -1800;
    }

    void aPlaceLiesInItsCell()
    {
        QFETCH(int, latE7);
        QFETCH(int, lonE7);
        const GridCell cell = cellOf({latE7, lonE7});
        QTEST(cell.row, "row");
        QTEST(cell.column, "column");
        const GeoPoint corner = southWestOf(cell);
        const GeoPoint centre = centreOf(cell);
        QCOMPARE(centre.latE7 - corner.latE7, 500'000);
        QCOMPARE(northEastOf(cell).lonE7 - centre.lonE7, 500'000);
        QCOMPARE(cellOf(centre), cell);
    }

    // The farthest corner of a cell from its centre. 6,656, 6,538 and 6,420 m are the half diagonals at 49,
    // 52 and 55 degrees north, worked out beforehand with the radii of curvature of the ellipsoid at these
    // latitudes; a cell that begins there ends a tenth of a degree further north, so that its middle lies 4 m
    // below the figure.
    void halfDiagonals_data()
    {
        QTest::addColumn<int>("row");
        QTest::addColumn<double>("metres");
        QTest::newRow("49 N") << 490 << 6656.0;
        QTest::newRow("52 N") << 520 << 6538.0;
        QTest::newRow("55 N") << 550 << 6420.0;
    }

    void halfDiagonals()
    {
        QFETCH(int, row);
        QFETCH(double, metres);
        const double found = halfDiagonalOf({row, -1067}).value();
        QVERIFY2(std::abs(found - metres) < 5, qPrintable(QString::number(found)));
    }

    void everyPlaceOfACellLiesWithinItsUncertainty()
    {
        for (const int row : {-900, -521, -1, 0, 490, 521, 899}) {
            const GridCell cell{row, -1067};
            const GeoPoint south = southWestOf(cell);
            for (int i = 0; i <= 10; ++i)
                for (int j = 0; j <= 10; ++j) {
                    const GeoPoint place{south.latE7 + 100'000 * i, south.lonE7 + 100'000 * j};
                    QVERIFY(courseBetween(centreOf(cell), place).distance
                        <= halfDiagonalOf(cell) + Metres{0.001});
                }
        }
    }

    void theWorstFixIsAddedAndHidden()
    {
        const GridCell cell{521, -1067};
        const double bare = halfDiagonalOf(cell).value();
        QVERIFY(bare > 6500 && bare < 6560);
        QCOMPARE(uncertaintyOf(cell, Metres{0}).value(), 6600.0);
        QCOMPARE(uncertaintyOf(cell, Metres{8}).value(), 6600.0); // a good fix leaves no trace
        QCOMPARE(uncertaintyOf(cell, Metres{100}).value(), 6700.0);
        QVERIFY(uncertaintyOf(cell, Metres{2000}).value() >= bare + 2000);
    }
};

QTEST_APPLESS_MAIN(GridCellTest)
#include "grid_cell_test.moc"
