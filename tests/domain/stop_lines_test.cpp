// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/sample_size.h"
#include "domain/rules/stop_rule.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

// The usual plan, to whose means the tables were computed.
StopPlan usualPlan()
{
    StopDesign design;
    design.threshold = LarvaePerSquareMetre{20.0};
    const auto plan = planStops(design);
    if (!plan) qFatal("no plan");
    return *plan;
}

StopLines linesOf(double low, double high, double k, double falseAbove, double falseBelow)
{
    const auto lines = stopLines(low, high, k, falseAbove, falseBelow);
    if (!lines) qFatal("no lines");
    return *lines;
}

} // namespace

// The lines and the precision of counts, held against other plans of the literature that are made of the same
// parts.
class StopLinesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Wald's own approximation of what a test without minimum and maximum does, for a dummy h: in a field of
    // the mean where the likelihood ratio to the power h has mean 1, it says "below" with chance L after ASN
    // stops. Slope and intercepts of ours determine all three.
    //
    // Source  from memory: Wald 1947; the values computed by the plain formulas, see the head of the table
    void waldsEquationsHoldForTheLines()
    {
        const StopPlan plan = usualPlan();
        const double k = plan.design.dispersion;
        const StopLines& lines = plan.lines;
        const double aLarva = std::log(9.0) / lines.above; // (1 - 0.1) / 0.1
        int checked = 0;
        for (const auto& row : readGolden("rules/sprt_wald_oc.csv")) {
            ++checked;
            const double h = row.number("h");
            const bool isLevel = std::abs(h) < 1e-12;
            const double mean = isLevel
                ? lines.slope
                : -k * std::expm1(-h * lines.slope * aLarva / k) / std::expm1(h * aLarva);
            const double below = isLevel ? lines.above / (lines.above - lines.below)
                                         : std::expm1(h * lines.above * aLarva)
                    / (std::exp(h * lines.above * aLarva) - std::exp(h * lines.below * aLarva));
            const double variance = mean + mean * mean / k;
            const double stops = isLevel
                ? -lines.below * lines.above / variance
                : (below * lines.below + (1.0 - below) * lines.above) / (mean - lines.slope);
            QVERIFY2(std::abs(mean - row.number("mean")) < 1e-6, qPrintable(QString::number(h)));
            QVERIFY2(
                std::abs(below - row.number("OC_prob_decide_below")) < 1e-6, qPrintable(QString::number(h)));
            QVERIFY2(std::abs(stops - row.number("ASN")) < 2e-6, qPrintable(QString::number(h)));
        }
        QCOMPARE(checked, 12);
    }

    // Two tests at once, each between the threshold and one mean: their outer lines converge. ln(1/0.1) is
    // the intercept of errors 0.095 and 0.05, so that each line is one of ours.
    //
    // Source  from memory: Lorden 1976; the values computed with scipy, see the head of the table
    void convergingLinesAreMadeOfTheSameParts()
    {
        const StopPlan plan = usualPlan();
        const StopLines upper = linesOf(plan.lowMean, 5.0, 1.0, 0.095, 0.05);
        const StopLines lower = linesOf(5.0, plan.highMean, 1.0, 0.05, 0.095);
        int checked = 0;
        for (const auto& row : readGolden("rules/sequential_misc.csv")) {
            if (!row.text("plan").startsWith("two_sprt")) continue;
            ++checked;
            const double stops = row.number("n_frames");
            QVERIFY(std::abs(upper.slope * stops + upper.above - row.number("upper")) < 1e-5);
            QVERIFY(std::abs(lower.slope * stops + lower.below - row.number("lower")) < 1e-5);
        }
        QCOMPARE(checked, 4);
    }

    // A band of t standard errors around threshold times frames: the standard error is our precision.
    //
    // Source  from memory: Iwao 1975; the values computed with scipy, see the head of the table
    void bandsAroundTheThresholdFollowThePrecision()
    {
        int checked = 0;
        for (const auto& row : readGolden("rules/sequential_misc.csv")) {
            if (row.text("plan") != "iwao_nb") continue;
            ++checked;
            const LarvaePerFrame threshold{row.number("ET_per_frame")};
            const auto precision =
                precisionOf(Frames{row.whole("n_frames")}, threshold, Clumped{row.number("k_or_ab")});
            QVERIFY(precision.has_value());
            const double middle = threshold.value() * row.number("n_frames");
            const double half = row.number("param") * *precision * middle;
            QVERIFY(std::abs(middle - half - row.number("lower")) < 1e-6);
            QVERIFY(std::abs(middle + half - row.number("upper")) < 1e-6);
        }
        QCOMPARE(checked, 27);
    }
};

QTEST_APPLESS_MAIN(StopLinesTest)
#include "stop_lines_test.moc"
