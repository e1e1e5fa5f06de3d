// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <limits>

#include "domain/rules/frame_verdict.h"
#include "domain/rules/stop_rule.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

constexpr double byChance = std::numeric_limits<double>::infinity();

StopDesign usualDesign(double threshold = 20.0, double dispersion = 1.0)
{
    StopDesign design;
    design.threshold = LarvaePerSquareMetre{threshold};
    design.dispersion = dispersion;
    return design;
}

StopPlan usualPlan(double threshold = 20.0, double dispersion = 1.0)
{
    const auto plan = planStops(usualDesign(threshold, dispersion));
    if (!plan) qFatal("no plan");
    return *plan;
}

qint64 orNothing(std::optional<Larvae> larvae)
{
    return larvae ? larvae->value() : -1;
}

} // namespace

class StopRuleTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Computed with scipy, see the head of the table.
    void linesFollowTheGoldens()
    {
        for (const auto& row : readGolden("rules/sprt.csv")) {
            QCOMPARE(row.whole("center"), 1);
            StopDesign design =
                usualDesign(row.number("ET_per_m2"), row.isBlank("k") ? byChance : row.number("k"));
            design.ratio = row.number("ratio_r");
            design.falseAbove = row.number("alpha");
            design.falseBelow = row.number("beta");
            const auto plan = planStops(design);
            QVERIFY(plan.has_value());
            QVERIFY(std::abs(plan->lowMean - row.number("m0")) < 1e-8);
            QVERIFY(std::abs(plan->highMean - row.number("m1")) < 1e-7);
            QVERIFY(std::abs(plan->lines.slope - row.number("slope_s")) < 1e-8);
            QVERIFY(std::abs(plan->lines.below - row.number("intercept_h0")) < 2e-7);
            QVERIFY(std::abs(plan->lines.above - row.number("intercept_h1")) < 2e-7);
            QCOMPARE(plan->lines.firstBelow, row.whole("first_n_lower_possible"));
        }
    }

    // The ratio of the two intercepts depends on the errors alone: 0.7786 and 0.7787 in two published plans
    // for corn rootworm adults with errors of 0.10 and 0.05 (McAuslane, Ellis & Allen, Canadian
    // Entomologist).
    void theErrorsGiveTheRatioOfTheLines()
    {
        const auto lines = stopLines(0.8, 1.2, 2.0, 0.10, 0.05);
        QVERIFY(std::abs(std::abs(lines->above / lines->below) - 0.7787) < 5e-4);
    }

    void theCardOfTwentyASquareMetre_data()
    {
        QTest::addColumn<int>("stops");
        QTest::addColumn<qint64>("below");
        QTest::addColumn<qint64>("above");
        QTest::newRow("four frames decide nothing") << 4 << qint64{-1} << qint64{-1};
        QTest::newRow("5 frames") << 5 << qint64{9} << qint64{41};
        QTest::newRow("8 frames") << 8 << qint64{24} << qint64{56};
        QTest::newRow("10 frames") << 10 << qint64{34} << qint64{66};
        QTest::newRow("15 frames") << 15 << qint64{59} << qint64{91};
        QTest::newRow("20 frames") << 20 << qint64{84} << qint64{116};
    }

    void theCardOfTwentyASquareMetre()
    {
        QFETCH(int, stops);
        QFETCH(qint64, below);
        QFETCH(qint64, above);
        const StopPlan plan = usualPlan();
        QCOMPARE(orNothing(belowUpTo(plan, stops)), below);
        QCOMPARE(orNothing(aboveFrom(plan, stops)), above);
    }

    void aPatchyPlanCannotSayBelowAtFirst()
    {
        const StopPlan plan = usualPlan(20.0, 0.5);
        QCOMPARE(plan.lines.firstBelow, 6);
        QCOMPARE(orNothing(belowUpTo(plan, 5)), qint64{-1});
        QCOMPARE(orNothing(belowUpTo(plan, 6)), qint64{1});
        QCOMPARE(stopAfter(plan, 5, Larvae{0}).state, StopState::GoOn);
    }

    void state_data()
    {
        QTest::addColumn<int>("stops");
        QTest::addColumn<qint64>("total");
        QTest::addColumn<double>("dispersion"); // 0 for not known
        QTest::addColumn<StopState>("state");
        QTest::addColumn<bool>("isHeld");
        const auto row = [](const char* claim, int stops, qint64 total, double k, StopState state,
                             bool held) { QTest::newRow(claim) << stops << total << k << state << held; };
        row("nothing yet", 0, 0, 0, StopState::GoOn, false);
        row("far above, but too few frames", 4, 400, 0, StopState::GoOn, false);
        row("nothing found in five", 5, 0, 0, StopState::Below, false);
        row("on the lower line", 10, 34, 1.0, StopState::Below, false);
        row("just above it", 10, 35, 1.0, StopState::GoOn, false);
        row("just below the upper line", 10, 65, 1.0, StopState::GoOn, false);
        row("on the upper line", 10, 66, 1.0, StopState::Above, false);
        row("patchy and early", 10, 34, 0.49, StopState::GoOn, true);
        row("patchy, before the eighth frame", 7, 10, 0.3, StopState::Below, false);
        row("patchy at the eighth", 8, 24, 0.3, StopState::GoOn, true);
        row("patchy never holds an above", 10, 66, 0.3, StopState::Above, false);
        row("patchy at the last frame", 20, 84, 0.3, StopState::Below, false);
        row("half the dispersion is enough", 10, 34, 0.5, StopState::Below, false);
        row("in between at the last frame", 20, 100, 1.0, StopState::Undecided, false);
        row("more frames than planned", 24, 120, 1.0, StopState::Undecided, false);
        row("more frames than planned, and below", 24, 104, 1.0, StopState::Below, false);
    }

    void state()
    {
        QFETCH(int, stops);
        QFETCH(qint64, total);
        QFETCH(double, dispersion);
        QFETCH(StopState, state);
        QFETCH(bool, isHeld);
        const StopReport report = stopAfter(
            usualPlan(), stops, Larvae{total}, dispersion > 0 ? std::optional(dispersion) : std::nullopt);
        QCOMPARE(report.state, state);
        QCOMPARE(report.isHeldByPatchiness, isHeld);
    }

    // Several frames at a stop are a stop of a larger area.
    void stopsOfTwoFramesHaveTheirOwnLines()
    {
        StopDesign design = usualDesign();
        design.areaOfAStop = SquareMetres{0.5};
        const auto plan = planStops(design);
        QCOMPARE(plan->lines.slope, 10.0);
        QVERIFY(std::abs(plan->lines.above - 28.06340213) < 1e-7); // as for 40 per square metre in one frame
    }

    void clumpedLinesPassOverIntoChance()
    {
        const StopPlan chance = usualPlan(20.0, byChance);
        const StopPlan almost = usualPlan(20.0, 1e7);
        QVERIFY(std::abs(chance.lines.above - almost.lines.above) < 1e-4);
        QVERIFY(std::abs(chance.highMean - almost.highMean) < 1e-4);
    }

    void refusals_data()
    {
        QTest::addColumn<StopDesign>("design");
        QTest::addColumn<QString>("field");
        const auto row = [](const char* claim, const char* field, auto change) {
            StopDesign design = usualDesign();
            change(design);
            QTest::newRow(claim) << design << QString::fromUtf8(field);
        };
        const double nan = std::nan("");
        using Density = LarvaePerSquareMetre;
        row("no threshold", "threshold_per_m2", [](auto& d) { d.threshold = Density{0.0}; });
        row("negative threshold", "threshold_per_m2", [](auto& d) { d.threshold = Density{-20.0}; });
        row("absurd threshold", "threshold_per_m2", [](auto& d) { d.threshold = Density{401.0}; });
        row("threshold not a number", "threshold_per_m2", [=](auto& d) { d.threshold = Density{nan}; });
        row("no area", "frame_m2", [](auto& d) { d.areaOfAStop = SquareMetres{0.0}; });
        row("no dispersion", "dispersion", [](auto& d) { d.dispersion = 0.0; });
        row("dispersion not a number", "dispersion", [=](auto& d) { d.dispersion = nan; });
        row("ratio of one", "ratio", [](auto& d) { d.ratio = 1.0; });
        row("errors too small", "error", [](auto& d) { d.falseAbove = 0.01; });
        row("errors that leave nothing", "error", [](auto& d) { d.falseBelow = 0.6; });
        row("no stops", "stops", [](auto& d) { d.fewest = 0; });
        row("stops do not ascend", "stops", [](auto& d) { d.most = 4; });
        row("a thousand stops", "stops", [](auto& d) { d.most = 1000; });
    }

    void refusals()
    {
        QFETCH(StopDesign, design);
        QFETCH(QString, field);
        const auto plan = planStops(design);
        QVERIFY(!plan.has_value());
        QCOMPARE(plan.error().code, ErrorCode::OutOfRange);
        QCOMPARE(QString::fromStdString(plan.error().args.front()), field);
    }

    void linesNeedTwoMeans()
    {
        QCOMPARE(stopLines(5.0, 5.0, 1.0, 0.1, 0.1).error().code, ErrorCode::OutOfRange);
        QCOMPARE(stopLines(0.0, 5.0, 1.0, 0.1, 0.1).error().code, ErrorCode::OutOfRange);
        QCOMPARE(stopLines(3.0, byChance, 1.0, 0.1, 0.1).error().code, ErrorCode::OutOfRange);
        QCOMPARE(stopLines(3.0, 5.0, -1.0, 0.1, 0.1).error().code, ErrorCode::OutOfRange);
    }

    void verdict_data()
    {
        QTest::addColumn<StopState>("state");
        QTest::addColumn<double>("above"); // below 0 for not known
        QTest::addColumn<int>("fullest"); // of 100 larvae
        QTest::addColumn<FrameVerdict>("verdict");
        const auto row = [](const char* claim, StopState state, double above, int fullest,
                             FrameVerdict verdict) {
            QTest::newRow(claim) << state << above << fullest << verdict;
        };
        const auto open = FrameVerdict::TooCloseToCall;
        row("below, and likely so", StopState::Below, 0.02, 30, FrameVerdict::Below);
        row("below, all at one stop", StopState::Below, 0.1, 100, FrameVerdict::Below);
        row("below, by two in three", StopState::Below, 0.333, 30, FrameVerdict::Below);
        row("below, but hardly", StopState::Below, 0.334, 30, open);
        row("above, and likely so", StopState::Above, 0.90, 30, FrameVerdict::Above);
        row("above, three quarters at one stop", StopState::Above, 0.96, 75, open);
        row("above, a little less at one stop", StopState::Above, 0.96, 74, FrameVerdict::Above);
        row("above, but hardly", StopState::Above, 0.66, 30, open);
        row("likely, but not looked long enough", StopState::GoOn, 0.99, 30, open);
        row("undecided at the last frame", StopState::Undecided, 0.72, 30, open);
        row("no chance known", StopState::Below, -1.0, 30, open);
    }

    void verdict()
    {
        QFETCH(StopState, state);
        QFETCH(double, above);
        QFETCH(int, fullest);
        QFETCH(FrameVerdict, verdict);
        FrameEstimate estimate;
        estimate.larvae = Larvae{100};
        estimate.fullest = Larvae{fullest};
        if (above >= 0) estimate.probabilityAbove = above;
        QCOMPARE(verdictOf(state, estimate), verdict);
    }

    // The claims of frame_verdict.h, on whole walks.
    void wholeWalks_data()
    {
        QTest::addColumn<QList<int>>("larvae");
        QTest::addColumn<StopState>("state");
        QTest::addColumn<FrameVerdict>("verdict");
        QTest::newRow("one full frame calls nothing")
            << QList<int>{0, 0, 0, 0, 90} << StopState::Above << FrameVerdict::TooCloseToCall;
        QTest::newRow("two full frames of five")
            << QList<int>{0, 41, 1, 0, 48} << StopState::Above << FrameVerdict::Above;
        QTest::newRow("full everywhere")
            << QList<int>{14, 9, 22, 11, 17} << StopState::Above << FrameVerdict::Above;
        QTest::newRow("next to nothing")
            << QList<int>{1, 0, 2, 0, 0} << StopState::Below << FrameVerdict::Below;
        QTest::newRow("nothing") << QList<int>{0, 0, 0, 0, 0} << StopState::Below << FrameVerdict::Below;
        QTest::newRow("near it") << QList<int>{4, 9, 2, 15, 0, 6, 3, 8, 1, 7} << StopState::GoOn
                                 << FrameVerdict::TooCloseToCall;
        // As patchy as planned, and just on the line.
        QTest::newRow("just met at the last frame") << QList<int>{0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 6, 7, 8,
            9, 11, 13, 16, 21} << StopState::Above << FrameVerdict::Above;
    }

    void wholeWalks()
    {
        QFETCH(QList<int>, larvae);
        QFETCH(StopState, state);
        QFETCH(FrameVerdict, verdict);
        std::vector<FrameStop> stops;
        for (const int count : larvae) stops.push_back({Larvae{count}});
        const auto estimate = estimateFrames(stops, SquareMetres{0.25}, LarvaePerSquareMetre{20.0});
        const StopReport report =
            stopAfter(usualPlan(), estimate->stops, estimate->larvae, estimate->dispersion);
        QCOMPARE(report.state, state);
        QCOMPARE(verdictOf(report.state, *estimate), verdict);
    }

    void theProtocolGivesFrameAndNumbers()
    {
        Protocol protocol;
        const StopDesign usual = stopDesignOf(protocol, LarvaePerSquareMetre{17.0});
        QCOMPARE(usual.threshold.value(), 17.0);
        QCOMPARE(usual.areaOfAStop.value(), 0.25);
        protocol.scouting.emplace();
        protocol.scouting->frame.value = SquareMetres{1.0};
        protocol.scouting->framesFewest.value = Frames{3};
        protocol.scouting->framesExpected.value = Frames{12};
        const StopDesign own = stopDesignOf(protocol, LarvaePerSquareMetre{17.0});
        QCOMPARE(own.areaOfAStop.value(), 1.0);
        QCOMPARE(own.fewest, 3);
        QCOMPARE(own.expected, 12);
        QCOMPARE(own.most, 20);
    }
};

QTEST_APPLESS_MAIN(StopRuleTest)
#include "stop_rule_test.moc"
