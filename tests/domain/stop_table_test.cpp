// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <limits>
#include <random>

#include "domain/rules/stop_table.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

StopPlan planOf(double threshold, double dispersion, int fewest = 5, int most = 20)
{
    StopDesign design;
    design.threshold = LarvaePerSquareMetre{threshold};
    design.dispersion = dispersion;
    design.fewest = fewest;
    design.expected = std::max(fewest, std::min(10, most));
    design.most = most;
    const auto plan = planStops(design);
    if (!plan) qFatal("no plan");
    return *plan;
}

OperatingRow rowOf(const StopPlan& plan, double density, double dispersion)
{
    const std::array densities{LarvaePerSquareMetre{density}};
    const auto rows = operatingTable(plan, densities, dispersion);
    if (!rows) qFatal("no table");
    return rows->front();
}

} // namespace

class StopTableTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Computed with numpy by convolution, see the head of the table.
    void rowsFollowTheGoldens()
    {
        for (const auto& golden : readGolden("rules/sprt_oc_asn.csv")) {
            const QByteArray plan = golden.text("plan");
            const int most = plan.mid(plan.lastIndexOf('-') + 1).toInt();
            double mean = golden.number("mean_per_frame");
            // Two means are printed with four decimals; they are ends of the plan.
            if (mean == 3.3333) mean = 10.0 / 3.0;
            if (mean == 7.8065) mean = planOf(20, 1).highMean;
            const auto row = rowOf(planOf(20, 1, 5, most), 4 * mean, golden.number("k_true"));
            const auto isNear = [&](double found, const char* column) {
                return std::abs(found - golden.number(column)) < 1.5e-6;
            };
            QVERIFY2(isNear(row.below, "p_below"), plan.constData());
            QVERIFY(isNear(row.above, "p_above"));
            QVERIFY(isNear(row.undecidedBelow, "p_cap_mean_lt_ET"));
            QVERIFY(isNear(row.undecidedAbove, "p_cap_mean_ge_ET"));
            QVERIFY(std::abs(row.meanStops - golden.number("asn")) < 1e-4);
            QCOMPARE(row.stopsOfNineInTen, golden.whole("n_p90"));
        }
    }

    void sharesAddUpToOne()
    {
        for (const double threshold : {1.0, 8.0, 20.0, 60.0, 200.0})
            for (const double k : {0.2, 0.5, 1.0, 3.0, std::numeric_limits<double>::infinity()})
                for (const double factor : {0.0, 0.01, 0.5, 1.0, 2.0, 20.0}) {
                    if (threshold * k < 5.0) continue; // long tables; covered below
                    const auto row = rowOf(planOf(threshold, k), threshold * factor, k);
                    QVERIFY(std::abs(row.below + row.undecided() + row.above - 1.0) < 1e-9);
                    QVERIFY(row.below >= 0 && row.undecidedBelow >= 0 && row.undecidedAbove >= 0
                        && row.above >= 0);
                    QVERIFY(row.meanStops > 4.999 && row.meanStops < 20.001);
                    QVERIFY(row.stopsOfNineInTen >= 5 && row.stopsOfNineInTen <= 20);
                }
        const auto patchy = rowOf(planOf(20, 0.2), 20, 0.2);
        QVERIFY(std::abs(patchy.below + patchy.undecided() + patchy.above - 1.0) < 1e-9);
    }

    void anEmptyFieldIsBelowAtOnce()
    {
        const auto row = rowOf(planOf(20, 1), 0, 1);
        QCOMPARE(row.below, 1.0);
        QCOMPARE(row.meanStops, 5.0);
    }

    void denserFieldsAreCalledBelowLessOften()
    {
        const StopPlan plan = planOf(20, 1);
        double below = 1.1;
        double above = -0.1;
        for (double density = 0; density <= 100; density += 2) {
            const auto row = rowOf(plan, density, 1);
            QVERIFY(row.below < below || row.below == 1.0);
            QVERIFY(row.above >= above);
            below = row.below;
            above = row.above;
        }
    }

    // Without a cap and a minimum the exact errors keep what Wald proved of every such test, and the values
    // at the threshold are those of an own computation: his approximation says .500 and 8.0 stops there.
    void withoutACapTheErrorsAreKept()
    {
        const StopPlan open = planOf(20, 1, 1, 200);
        const auto low = rowOf(open, 4 * open.lowMean, 1);
        const auto high = rowOf(open, 4 * open.highMean, 1);
        QVERIFY(low.above <= 0.1 / 0.9);
        QVERIFY(high.below <= 0.1 / 0.9);
        QVERIFY(low.above + high.below <= 0.2);
        const auto middle = rowOf(open, 20, 1);
        QVERIFY(middle.undecided() < 1e-6);
        QVERIFY(std::abs(middle.below - 0.548) < 0.0005);
        QVERIFY(std::abs(middle.meanStops - 12.6) < 0.05);
    }

    void simulatedWalksAgree()
    {
        constexpr int walks = 20'000;
        constexpr unsigned seed = 4711;
        const StopPlan plan = planOf(20, 1);
        std::mt19937 dice(seed);
        for (const auto& [density, k] : {std::pair{16.0, 1.0}, {24.0, 2.0}, {13.0, 0.5}}) {
            int below = 0;
            int above = 0;
            std::gamma_distribution<double> patch(k, density / 4 / k);
            for (int walk = 0; walk < walks; ++walk) {
                Larvae total{0};
                StopState state = StopState::GoOn;
                for (int stop = 1; state == StopState::GoOn; ++stop) {
                    total += Larvae{std::poisson_distribution<int>(patch(dice))(dice)};
                    state = stopAfter(plan, stop, total).state;
                }
                below += state == StopState::Below ? 1 : 0;
                above += state == StopState::Above ? 1 : 0;
            }
            const auto row = rowOf(plan, density, k);
            // Four standard errors.
            const auto isNear = [&](int found, double chance) {
                return std::abs(found - walks * chance) <= 4 * std::sqrt(walks * chance * (1 - chance)) + 1;
            };
            QVERIFY2(isNear(below, row.below), qPrintable(QStringLiteral("seed %1").arg(seed)));
            QVERIFY2(isNear(above, row.above), qPrintable(QStringLiteral("seed %1").arg(seed)));
        }
    }

    void patchierFieldsAreMissedMoreOften()
    {
        const StopPlan plan = planOf(20, 1);
        QVERIFY(rowOf(plan, 30, 0.5).below > 2 * rowOf(plan, 30, 1).below);
    }

    void refusals()
    {
        const StopPlan plan = planOf(20, 1);
        const double nan = std::nan("");
        for (const double density : {-1.0, 1e9, nan}) {
            const std::array densities{LarvaePerSquareMetre{density}};
            QCOMPARE(operatingTable(plan, densities, 1.0).error().code, ErrorCode::OutOfRange);
        }
        const std::array densities{LarvaePerSquareMetre{20.0}};
        for (const double k : {0.0, -1.0, nan})
            QCOMPARE(operatingTable(plan, densities, k).error().code, ErrorCode::OutOfRange);
        QVERIFY(operatingTable(plan, {}, 1.0)->empty());
    }
};

QTEST_APPLESS_MAIN(StopTableTest)
#include "stop_table_test.moc"
