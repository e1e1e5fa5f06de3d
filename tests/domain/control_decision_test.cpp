// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/control_decision.h"

using namespace duskrow::domain;

namespace {

using Density = LarvaePerSquareMetre;

FramesFinding found(FramesVerdict verdict, double mean, double low, double high)
{
    return {verdict, Frames{10}, Density{mean}, Density{low}, Density{high}, 0.5, std::nullopt};
}

ControlTiming at(Timing timing)
{
    ControlTiming result;
    result.timing = timing;
    if (timing != Timing::TooLate) result.lookAgain = dayOf(2026, 8, 4);
    return result;
}

const DecisionChange* changeOf(const ControlDecision& decision, ChangeWhat what)
{
    const auto one = std::find_if(decision.changes.begin(), decision.changes.end(),
        [what](const DecisionChange& change) { return change.what == what; });
    return one == decision.changes.end() ? nullptr : &*one;
}

bool has(const ControlDecision& decision, DecisionReason reason)
{
    return std::any_of(decision.reasons.begin(), decision.reasons.end(),
        [reason](const DecisionFinding& finding) { return finding.reason == reason; });
}

} // namespace

class ControlDecisionTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY(read.has_value());
        m_protocol = *read;
        m_rule = m_protocol.thresholdRules.front();
    }

    void larvaeAndTimeTogether_data()
    {
        QTest::addColumn<int>("frames");
        QTest::addColumn<int>("timing");
        QTest::addColumn<int>("more"); // frames asked for; -1 for none
        QTest::addColumn<int>("verdict");
        QTest::addColumn<int>("next");
        const auto row = [](const char* claim, FramesVerdict frames, Timing timing, int more,
                             ControlVerdict verdict, NextStep next) {
            QTest::newRow(claim) << static_cast<int>(frames) << static_cast<int>(timing) << more
                                 << static_cast<int>(verdict) << static_cast<int>(next);
        };
        using F = FramesVerdict;
        using V = ControlVerdict;
        row("below stays below at any time", F::Below, Timing::InWindow, -1, V::Below, NextStep::LeaveAlone);
        row("below and early", F::Below, Timing::TooEarly, -1, V::Below, NextStep::LeaveAlone);
        row("below and late", F::Below, Timing::TooLate, -1, V::Below, NextStep::LeaveAlone);
        row("above and in time", F::Above, Timing::InWindow, -1, V::Above, NextStep::ControlPays);
        row("above, but too early", F::Above, Timing::TooEarly, -1, V::Above, NextStep::LookAgain);
        row("above, but too late", F::Above, Timing::TooLate, -1, V::Above, NextStep::TooLate);
        row("above, the rest not said", F::Above, Timing::NotKnown, -1, V::Above, NextStep::SayTiming);
        row("too close, frames left", F::TooCloseToCall, Timing::InWindow, 4, V::TooCloseToCall,
            NextStep::SearchMoreFrames);
        row("too close, all frames searched", F::TooCloseToCall, Timing::InWindow, -1, V::TooCloseToCall,
            NextStep::LookAgain);
        row("too close and too late", F::TooCloseToCall, Timing::TooLate, 4, V::TooCloseToCall,
            NextStep::TooLate);
        row("too few frames to say", F::NotEnoughFrames, Timing::InWindow, -1, V::TooCloseToCall,
            NextStep::SearchMoreFrames);
        row("too few frames, but too late anyway", F::NotEnoughFrames, Timing::TooLate, 3, V::TooCloseToCall,
            NextStep::TooLate);
    }

    void larvaeAndTimeTogether()
    {
        QFETCH(int, frames);
        QFETCH(int, timing);
        QFETCH(int, more);
        QFETCH(int, verdict);
        QFETCH(int, next);
        FramesFinding finding = found(static_cast<FramesVerdict>(frames), 20, 15, 25);
        if (more >= 0) finding.moreFrames = Frames{more};
        const ControlDecision decision =
            controlDecision(m_rule, of("12", "10"), finding, at(static_cast<Timing>(timing)));
        QCOMPARE(static_cast<int>(decision.verdict), verdict);
        QCOMPARE(static_cast<int>(decision.next), next);
        const DecisionChange* frameChange = changeOf(decision, ChangeWhat::MoreFrames);
        QCOMPARE(frameChange != nullptr, more > 0 && decision.next == NextStep::SearchMoreFrames);
        if (frameChange) QCOMPARE(frameChange->numbers.at(0), more);
        const bool isAgain =
            decision.next != NextStep::ControlPays && static_cast<Timing>(timing) != Timing::TooLate;
        QCOMPARE(changeOf(decision, ChangeWhat::LookingAgain) != nullptr, isAgain);
    }

    // By hand: 12 / (0.058 x 12.931) = 16.
    void thePriceThatWouldChangeIt()
    {
        const ControlDecision below = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::Below, 12.931034, 8, 17), at(Timing::InWindow));
        QVERIFY(std::abs(changeOf(below, ChangeWhat::PriceAbove)->numbers.at(0) - 16.0) < 1e-6);
        QVERIFY(std::abs(changeOf(below, ChangeWhat::CostBelow)->numbers.at(0) - 7.5) < 1e-6);
        QVERIFY(!changeOf(below, ChangeWhat::PriceBelow) && !changeOf(below, ChangeWhat::CostAbove));
        const ControlDecision above = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::Above, 41.37931, 30, 60), at(Timing::InWindow));
        QVERIFY(std::abs(changeOf(above, ChangeWhat::PriceBelow)->numbers.at(0) - 5.0) < 1e-6);
        QVERIFY(std::abs(changeOf(above, ChangeWhat::CostAbove)->numbers.at(0) - 24.0) < 1e-6);
    }

    // Put in as the user's own, such a price or cost brings the threshold to where it was said to be.
    void aChangeDoesWhatItSays()
    {
        for (const char* unit : {"CAD/bu", "CAD/t"})
            for (const double mean : {9.3, 14.0, 19.9}) {
                ThresholdInput input = inputOf("29.6", unit == std::string("CAD/t") ? "441" : "10");
                input.costUnit = "CAD/ha";
                input.priceUnit = unit;
                input.drySeasonDivisor = "1.2";
                const Threshold threshold = of(input);
                const ControlDecision decision = controlDecision(
                    m_rule, threshold, found(FramesVerdict::Below, mean, 1, 30), at(Timing::InWindow));
                ThresholdInput dearer = input;
                dearer.price =
                    QByteArray::number(changeOf(decision, ChangeWhat::PriceAbove)->numbers.at(0), 'g', 15)
                        .toStdString();
                QVERIFY(std::abs(of(dearer).larvae.value() - mean) < 1e-9);
                ThresholdInput cheaper = input;
                cheaper.cost.sum =
                    QByteArray::number(changeOf(decision, ChangeWhat::CostBelow)->numbers.at(0), 'g', 15)
                        .toStdString();
                QVERIFY(std::abs(of(cheaper).larvae.value() - mean) < 1e-9);
            }
    }

    void tooCloseToCallChangesBothWays()
    {
        const ControlDecision decision = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::TooCloseToCall, 20, 15, 26), at(Timing::InWindow));
        QVERIFY(
            std::abs(changeOf(decision, ChangeWhat::PriceAbove)->numbers.at(0) - 12 / (0.058 * 15)) < 1e-9);
        QVERIFY(
            std::abs(changeOf(decision, ChangeWhat::PriceBelow)->numbers.at(0) - 12 / (0.058 * 26)) < 1e-9);
        QVERIFY(has(decision, DecisionReason::RangeHoldsThreshold));
    }

    void aPriceNobodyWouldTypeIsLeftOut()
    {
        const ControlDecision none = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::Below, 0.0, 0.0, 1.6), at(Timing::InWindow));
        QVERIFY(!changeOf(none, ChangeWhat::PriceAbove) && !changeOf(none, ChangeWhat::CostBelow));
        const ControlDecision few = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::Below, 0.5, 0.1, 2), at(Timing::InWindow));
        QVERIFY(!changeOf(few, ChangeWhat::PriceAbove)); // 414 dollars a bushel
        ThresholdRule rule = m_rule;
        rule.floor.value = Density{10.0};
        const ControlDecision floored = controlDecision(
            rule, of("12", "10"), found(FramesVerdict::Below, 9.9, 7, 12), at(Timing::InWindow));
        QVERIFY(
            !changeOf(floored, ChangeWhat::PriceAbove) && !changeOf(floored, ChangeWhat::DrySeasonChosen));
    }

    // 12 / 0.58 / 1.48 = 13.98.
    void theSeasonCanDecide()
    {
        const ControlDecision below = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::Below, 14, 10, 18), at(Timing::InWindow));
        QCOMPARE(changeOf(below, ChangeWhat::DrySeasonChosen)->numbers.at(0), 1.48);
        QVERIFY(!has(below, DecisionReason::DrySeason));
        const ControlDecision far = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::Below, 13.9, 10, 18), at(Timing::InWindow));
        QVERIFY(!changeOf(far, ChangeWhat::DrySeasonChosen));
        ThresholdInput dry = inputOf("12", "10");
        dry.drySeasonDivisor = "1.48";
        const ControlDecision above =
            controlDecision(m_rule, of(dry), found(FramesVerdict::Above, 20, 16, 25), at(Timing::InWindow));
        QVERIFY(has(above, DecisionReason::DrySeason));
        QVERIFY(std::abs(changeOf(above, ChangeWhat::DrySeasonDropped)->numbers.at(0) - 12 / 0.58) < 1e-9);
    }

    void thinGroundIsAReason()
    {
        const auto far = controlDecision(
            m_rule, of("20", "16"), found(FramesVerdict::Above, 40, 30, 55), at(Timing::InWindow));
        QVERIFY(has(far, DecisionReason::OutsidePublished));
        const auto near = controlDecision(
            m_rule, of("12", "10"), found(FramesVerdict::Above, 40, 30, 55), at(Timing::InWindow));
        QVERIFY(!has(near, DecisionReason::OutsidePublished));
        QVERIFY(near.reasons.front().reason == DecisionReason::MeanAbove);
    }

    void aWalkWithoutFramesIsTooCloseToCall()
    {
        const auto decision = controlDecision(m_rule, of("12", "10"), {}, at(Timing::NotKnown));
        QVERIFY(decision.verdict == ControlVerdict::TooCloseToCall);
        QVERIFY(decision.reasons.front().reason == DecisionReason::FewFrames);
        QVERIFY(!changeOf(decision, ChangeWhat::PriceAbove));
    }

private:
    [[nodiscard]] static ThresholdInput inputOf(const char* cost, const char* price)
    {
        ThresholdInput input;
        input.cost.sum = cost;
        input.costUnit = "CAD/ac";
        input.price = price;
        input.priceUnit = "CAD/bu";
        return input;
    }
    [[nodiscard]] Threshold of(const ThresholdInput& input) const
    {
        auto threshold = thresholdOf(m_protocol, m_rule, input);
        if (!threshold) qFatal("refused: %s", threshold.error().args.at(0).c_str());
        return std::move(*threshold);
    }
    [[nodiscard]] Threshold of(const char* cost, const char* price) const { return of(inputOf(cost, price)); }

    Protocol m_protocol;
    ThresholdRule m_rule;
};

QTEST_APPLESS_MAIN(ControlDecisionTest)
#include "control_decision_test.moc"
