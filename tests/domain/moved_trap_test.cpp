// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/moved_trap.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

class MovedTrapTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Computed with R: sqrt(-2 ln p) standard deviations, 68 % radii.
    void theDistanceThatFixesExceedByChance()
    {
        int rows = 0;
        for (const auto& row : readGolden("rules/qc_checks.csv")) {
            if (row.text("check") != "gps_moved") continue;
            ++rows;
            const Metres far =
                distanceByAccuracy(Metres{row.number("a")}, Metres{row.number("b")}, row.number("c"));
            QVERIFY(std::abs(far.value() - row.number("value1")) < 1e-6);
            // The standard deviation beside it: the distance at the chance exp(-1/2).
            const Metres deviation =
                distanceByAccuracy(Metres{row.number("a")}, Metres{row.number("b")}, std::exp(-0.5));
            QVERIFY(std::abs(deviation.value() - row.number("value2")) < 1e-6);
        }
        QCOMPARE(rows, 8);
    }

    // By its definition: 68 % of the pairs lie within the radius when the other place is exact.
    void aRadiusHolds68Percent()
    {
        QVERIFY(std::abs(distanceByAccuracy(Metres{7.0}, Metres{0.0}, 0.32).value() - 7.0) < 1e-12);
    }

    void goodFixesExplainFiftyMetres()
    {
        QCOMPARE(explainedDistance(Metres{5.0}, Metres{5.0}).value(), 50.0);
        QCOMPARE(explainedDistance(Metres{10.0}, Metres{15.0}).value(), 50.0);
        QCOMPARE(explainedDistance(Metres{0.0}, Metres{0.0}).value(), 50.0);
    }

    void badFixesExplainMore()
    {
        // 30 and 40 m: a radius of 50 m; sqrt(ln 0.001 / ln 0.32) = 2.46220.
        QVERIFY(std::abs(explainedDistance(Metres{30.0}, Metres{40.0}).value() - 123.110) < 0.01);
    }
};

QTEST_APPLESS_MAIN(MovedTrapTest)
#include "moved_trap_test.moc"
