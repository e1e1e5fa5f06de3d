// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/walk_result.h"

using namespace duskrow::domain;

namespace {

// The golden walk of ten frames (nb_interval.csv): 55 larvae, 3.2153 to 10.9137 a frame.
const std::vector<int> tenFrames{4, 9, 2, 15, 0, 6, 3, 8, 1, 7};

std::vector<Frame> framesOf(const std::vector<int>& counts)
{
    std::vector<Frame> frames;
    for (const int count : counts) {
        Frame frame;
        frame.stop = static_cast<int>(frames.size()) + 1;
        frame.larvae = Larvae{count};
        frames.push_back(frame);
    }
    return frames;
}

Decision money(const char* cost, const char* price)
{
    Decision decision;
    decision.costSum = cost;
    decision.costUnit = "CAD/ac";
    decision.price = price;
    decision.priceUnit = "CAD/bu";
    return decision;
}

} // namespace

class WalkResultTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY2(read.has_value(),
            read ? ""
                 : (read.error().detail + " " + (read.error().args.empty() ? "" : read.error().args.back()))
                       .c_str());
        m_protocol = *read;
        m_rule = m_protocol.thresholdRules.front();
        m_walk.frameCm2 = 2500;
    }

    void withoutMoneyThereIsADensityAndNoVerdict()
    {
        const auto result = resultOf(framesOf(tenFrames), nullptr);
        QVERIFY(result.has_value());
        QCOMPARE(result->estimate.mean->value(), 22.0);
        QVERIFY(std::abs(result->estimate.range->low.value() - 4 * 3.2153) < 1e-3);
        QVERIFY(std::abs(result->estimate.range->high.value() - 4 * 10.9137) < 1e-3);
        QVERIFY(!result->decision);
        QVERIFY(!result->plan);
        QVERIFY(!result->estimate.probabilityAbove);
    }

    void theWholeStory_data()
    {
        QTest::addColumn<QString>("counts");
        QTest::addColumn<QString>("cost");
        QTest::addColumn<QString>("price");
        QTest::addColumn<int>("verdict");
        QTest::addColumn<int>("next");
        const auto row = [](const char* tag, const char* counts, const char* cost, const char* price,
                             ControlVerdict verdict, NextStep next) {
            QTest::newRow(tag) << counts << cost << price << static_cast<int>(verdict)
                               << static_cast<int>(next);
        };
        // 12 CAD/ac and 10 CAD/bu: 20.69 per square metre, 5.17 a frame.
        row("near the threshold", "4 9 2 15 0 6 3 8 1 7", "12", "10", ControlVerdict::TooCloseToCall,
            NextStep::SearchMoreFrames);
        row("none found", "0 0 0 0 0 0 0 0 0 0", "12", "10", ControlVerdict::Below, NextStep::LeaveAlone);
        row("far above, stage not said", "14 19 12 15 10 16 13 18 11 17", "12", "10", ControlVerdict::Above,
            NextStep::SayTiming);
        row("three frames decide nothing", "14 19 12", "12", "10", ControlVerdict::TooCloseToCall,
            NextStep::SearchMoreFrames);
        // The same larvae, with money that moves the threshold past them.
        row("cheap harvest", "4 9 2 15 0 6 3 8 1 7", "40", "6", ControlVerdict::Below, NextStep::LeaveAlone);
    }

    void theWholeStory()
    {
        QFETCH(QString, counts);
        QFETCH(QString, cost);
        QFETCH(QString, price);
        std::vector<int> numbers;
        for (const QString& count : counts.split(QLatin1Char(' '))) numbers.push_back(count.toInt());
        const Decision decision = money(qPrintable(cost), qPrintable(price));
        const auto result = resultOf(framesOf(numbers), &decision);
        QVERIFY(result.has_value());
        QVERIFY(result->decision);
        QTEST(static_cast<int>(result->decision->verdict), "verdict");
        QTEST(static_cast<int>(result->decision->next), "next");
    }

    void framesOfOneStopAreOneUnit()
    {
        auto frames = framesOf({4, 6, 5});
        frames[1].stop = 1;
        const auto stops = frameStops(frames);
        QCOMPARE(stops.size(), std::size_t{2});
        QCOMPARE(stops[0].larvae, Larvae{10});
        QCOMPARE(stops[0].frames, Frames{2});
        QCOMPARE(nextStop(frames, false), 4);
        QCOMPARE(nextStop(frames, true), 3);
        QCOMPARE(nextStop({}, true), 1);
        frames[2].larvae.reset();
        QCOMPARE(frameStops(frames).size(), std::size_t{1});
    }

    void walksAddUp()
    {
        auto all = framesOf(tenFrames);
        const std::vector<Frame> first(all.begin(), all.begin() + 4);
        std::vector<Frame> second(all.begin() + 4, all.end());
        second.insert(second.end(), first.begin(), first.end());
        const Decision decision = money("12", "10");
        const auto one = resultOf(all, &decision);
        const auto other = resultOf(second, &decision);
        QCOMPARE(one->estimate.range->low.value(), other->estimate.range->low.value());
        QCOMPARE(*one->estimate.probabilityAbove, *other->estimate.probabilityAbove);
    }

    void sizesAreKeptAndReadBack()
    {
        const ScoutingAdvice& scouting = *m_protocol.scouting;
        const std::vector<std::int64_t> counts{2, 0, 13};
        const std::string text = writeSizes(scouting, counts);
        QCOMPARE(text, std::string("small:2 medium:0 large:13"));
        QVERIFY(readSizes(scouting, text) == counts);
        QVERIFY(!readSizes(scouting, ""));
        // A class this protocol does not know is passed over, one that is not named holds none.
        QVERIFY((readSizes(scouting, "huge:9 large:1") == std::vector<std::int64_t>{0, 0, 1}));
        Frame frame;
        frame.bySize = text;
        QVERIFY(
            (sizesOf(scouting, std::vector{frame, frame, Frame{}}) == std::vector<std::int64_t>{4, 0, 26}));
    }

    void podsAreAShareOfThoseLookedAt()
    {
        std::vector<Frame> frames(3);
        QVERIFY(!podsDamagedOf(frames));
        frames[0].podsSeen = 20;
        frames[1].podsSeen = 30;
        frames[1].podsDamaged = 10;
        QCOMPARE(podsDamagedOf(frames)->value(), 20.0);
    }

    void timeFollowsFromWhatWasSeen()
    {
        Walk walk = m_walk;
        walk.stageBbch = 75;
        auto frames = framesOf({14, 19, 12, 15, 10, 16, 13, 18, 11, 17});
        for (Frame& frame : frames) {
            frame.bySize = "small:1 medium:4 large:9";
            frame.podsSeen = 20;
            frame.podsDamaged = 1;
        }
        Decision decision = money("12", "10");
        decision.labelDays = 7;
        decision.cuttingDay = dayOf(2026, 8, 20);
        const auto result = walkResult(
            m_protocol, m_rule, walk, frames, &decision, thresholdFor(decision), dayOf(2026, 8, 3));
        QVERIFY(result.has_value());
        QCOMPARE(result->timing.timing, Timing::InWindow);
        QCOMPARE(result->timing.lastDay, std::optional(dayOf(2026, 8, 13)));
        QCOMPARE(result->decision->next, NextStep::ControlPays);
        const auto late = walkResult(
            m_protocol, m_rule, walk, frames, &decision, thresholdFor(decision), dayOf(2026, 8, 14));
        QCOMPARE(late->timing.timing, Timing::TooLate);
        QCOMPARE(late->decision->next, NextStep::TooLate);
    }

    void theTableHoldsTheWalksOwnVerdictAndFollowsMoney()
    {
        const Decision decision = money("12", "10");
        const auto result = resultOf(framesOf({14, 19, 12, 15, 10, 16, 13, 18, 11, 17}), &decision);
        const ThresholdTable table = thresholdTable(m_rule, *result->threshold);
        const auto verdicts = verdictsOver(table, m_protocol, *result);
        QCOMPARE(verdicts.size(), table.costs.size());
        QCOMPARE(verdicts[table.ownCost][table.ownPrice], result->verdict);
        const auto rank = [](FrameVerdict verdict) {
            return verdict == FrameVerdict::Below ? 0 : verdict == FrameVerdict::TooCloseToCall ? 1 : 2;
        };
        for (std::size_t i = 0; i < verdicts.size(); ++i) {
            QCOMPARE(verdicts[i].size(), table.prices.size());
            for (std::size_t k = 0; k < verdicts[i].size(); ++k) {
                // Dearer control or a cheaper harvest never makes a field more worth treating.
                if (i > 0) QVERIFY(rank(verdicts[i][k]) <= rank(verdicts[i - 1][k]));
                if (k > 0) QVERIFY(rank(verdicts[i][k]) >= rank(verdicts[i][k - 1]));
            }
        }
    }

    void howManyMoreFrames()
    {
        const Decision decision = money("12", "10");
        // Every added frame with the same mean brings the end nearer.
        const auto plan = *resultOf(framesOf(tenFrames), &decision)->plan;
        QCOMPARE(stopsToGo(plan, 0, Larvae{0}), std::optional(plan.design.most));
        const auto high = stopsToGo(plan, 6, Larvae{60});
        const auto near = stopsToGo(plan, 6, Larvae{32});
        QVERIFY(high && near && *high < *near);
        QCOMPARE(stopsToGo(plan, plan.design.most, Larvae{100}), std::optional<int>());
    }

    void aFrameOfAnotherSize()
    {
        Walk walk = m_walk;
        walk.frameCm2 = 10000;
        const Decision decision = money("12", "10");
        const ThresholdInput input = thresholdInput(decision, walk, &*m_protocol.scouting);
        QCOMPARE(input.frameM2, std::string("1.0000"));
        QCOMPARE(thresholdInput(decision, m_walk, &*m_protocol.scouting).frameM2, std::string());
    }

private:
    [[nodiscard]] std::optional<Threshold> thresholdFor(const Decision& decision) const
    {
        const auto threshold =
            thresholdOf(m_protocol, m_rule, thresholdInput(decision, m_walk, &*m_protocol.scouting));
        return threshold ? std::optional(*threshold) : std::nullopt;
    }

    [[nodiscard]] Result<WalkResult> resultOf(
        const std::vector<Frame>& frames, const Decision* decision) const
    {
        return walkResult(m_protocol, m_rule, m_walk, frames, decision,
            decision ? thresholdFor(*decision) : std::nullopt, dayOf(2026, 8, 3));
    }

    Protocol m_protocol;
    ThresholdRule m_rule;
    Walk m_walk;
};

QTEST_APPLESS_MAIN(WalkResultTest)
#include "walk_result_test.moc"
