// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>
#include <functional>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/control_timing.h"

using namespace duskrow::domain;
using std::chrono::days;
using Reason = TimingReason;

Q_DECLARE_METATYPE(ControlFacts)

namespace {

const LocalDay today = dayOf(2026, 8, 1);

// A field where everything fits: pods half grown, larvae large, a few pods chewed, cutting far off.
ControlFacts ripe()
{
    return {today, BbchStage{75}, LarvaeBySize{20, 15}, Percent{5.0}, days{21}, dayOf(2026, 9, 1)};
}

ControlFacts with(std::function<void(ControlFacts&)> change)
{
    ControlFacts facts = ripe();
    change(facts);
    return facts;
}

} // namespace

class ControlTimingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY(read.has_value());
        m_protocol = *read;
    }

    // Stage window: common practice. 13 mm: Canola Encyclopedia. Pods: Bracken 1987. The interval counts to
    // cutting: Canola Watch, 8 and 14 August 2013.
    void whenControlMakesSense_data()
    {
        QTest::addColumn<ControlFacts>("facts");
        QTest::addColumn<int>("timing");
        QTest::addColumn<int>("first"); // the reason that stands first
        const auto row = [](const char* claim, const ControlFacts& facts, Timing timing, Reason first) {
            QTest::newRow(claim) << facts << static_cast<int>(timing) << static_cast<int>(first);
        };
        row("everything fits", ripe(), Timing::InWindow, Reason::StageInWindow);
        row("still in flower", with([](auto& f) { f.stage = BbchStage{66}; }), Timing::TooEarly,
            Reason::StageBefore);
        row("the first stage belongs to the window", with([](auto& f) { f.stage = BbchStage{67}; }),
            Timing::InWindow, Reason::StageInWindow);
        row("so does the last", with([](auto& f) { f.stage = BbchStage{83}; }), Timing::InWindow,
            Reason::StageInWindow);
        row("seed too ripe", with([](auto& f) { f.stage = BbchStage{84}; }), Timing::TooLate,
            Reason::StagePast);
        row("larvae mostly small", with([](auto& f) {
            f.larvae = LarvaeBySize{20, 9};
        }),
            Timing::TooEarly, Reason::LarvaeSmall);
        row("half of them large is enough", with([](auto& f) {
            f.larvae = LarvaeBySize{20, 10};
        }),
            Timing::InWindow, Reason::StageInWindow);
        row("looked at the pods and saw nothing", with([](auto& f) { f.podsDamaged = Percent{0.0}; }),
            Timing::TooEarly, Reason::NoPodDamage);
        row("just below a fifth of the pods", with([](auto& f) { f.podsDamaged = Percent{19.9}; }),
            Timing::InWindow, Reason::StageInWindow);
        row("a fifth of the pods", with([](auto& f) { f.podsDamaged = Percent{20.0}; }), Timing::TooLate,
            Reason::PodsPastLimit);
        row("exactly the label's days before cutting",
            with([](auto& f) { f.cuttingDay = dayOf(2026, 8, 22); }), Timing::InWindow,
            Reason::StageInWindow);
        row("one day too few", with([](auto& f) { f.cuttingDay = dayOf(2026, 8, 21); }), Timing::TooLate,
            Reason::IntervalTooShort);
        row("cut already", with([](auto& f) { f.cuttingDay = dayOf(2026, 7, 30); }), Timing::TooLate,
            Reason::IntervalTooShort);
        row("a label without an interval, on the day of cutting", with([](auto& f) {
            f.labelInterval = days{0};
            f.cuttingDay = today;
        }),
            Timing::InWindow, Reason::StageInWindow);
        row("too late outweighs too early", with([](auto& f) {
            f.larvae = LarvaeBySize{20, 0};
            f.cuttingDay = dayOf(2026, 8, 5);
        }),
            Timing::TooLate, Reason::IntervalTooShort);
        row("early for one reason, fit for the rest", with([](auto& f) {
            f.stage = BbchStage{61};
            f.labelInterval.reset();
        }),
            Timing::TooEarly, Reason::StageBefore);
        row("stage not said", with([](auto& f) { f.stage.reset(); }), Timing::NotKnown, Reason::LarvaeLarge);
        row("stage not said, larvae small all the same", with([](auto& f) {
            f.stage.reset();
            f.larvae = LarvaeBySize{5, 0};
        }),
            Timing::TooEarly, Reason::LarvaeSmall);
        row("only the stage is known", ControlFacts{today, BbchStage{75}}, Timing::InWindow,
            Reason::StageInWindow);
        row("nothing is known", ControlFacts{today}, Timing::NotKnown, Reason::StageNotSaid);
        row("no larva to look at", with([](auto& f) {
            f.larvae = LarvaeBySize{0, 0};
        }),
            Timing::InWindow, Reason::StageInWindow);
    }

    void whenControlMakesSense()
    {
        QFETCH(ControlFacts, facts);
        QFETCH(int, timing);
        QFETCH(int, first);
        const ControlTiming found = of(facts);
        QCOMPARE(static_cast<int>(found.timing), timing);
        QCOMPARE(static_cast<int>(found.findings.front().reason), first);
        QCOMPARE(found.findings.size(), std::size_t{4}); // each question is answered, or open
    }

    void reasonsCarryTheirNumbers()
    {
        const ControlTiming late = of(with([](auto& f) {
            f.cuttingDay = dayOf(2026, 8, 10);
            f.larvae = LarvaeBySize{8, 2};
        }));
        QVERIFY(late.findings[0].numbers == (std::vector<double>{9, 21}));
        QVERIFY(late.findings[1].reason == Reason::LarvaeSmall);
        QVERIFY(late.findings[1].numbers == (std::vector<double>{25, 50, 13}));
        const ControlTiming fits = of(ripe());
        const auto interval = std::find_if(fits.findings.begin(), fits.findings.end(),
            [](const TimingFinding& one) { return one.reason == Reason::IntervalAllows; });
        QVERIFY(interval->numbers == (std::vector<double>{11, 21})); // 1 to 11 August
        QVERIFY(fits.lastDay == dayOf(2026, 8, 11));
    }

    void openQuestionsStandLast()
    {
        const ControlTiming timing = of(ControlFacts{today, BbchStage{75}});
        for (std::size_t i = 1; i < timing.findings.size(); ++i)
            QVERIFY(sideOf(timing.findings[i].reason) == TimingSide::Open);
        QVERIFY(!timing.lastDay);
    }

    void aDayToLookAgainIsSuggested_data()
    {
        QTest::addColumn<ControlFacts>("facts");
        QTest::addColumn<QByteArray>("day");
        const auto row = [](const char* claim, const ControlFacts& facts, const char* day) {
            QTest::newRow(claim) << facts << QByteArray(day);
        };
        row("three days on", ripe(), "2026-08-04");
        row("too early", with([](auto& f) { f.stage = BbchStage{65}; }), "2026-08-04");
        row("the last day to spray comes first", with([](auto& f) { f.cuttingDay = dayOf(2026, 8, 23); }),
            "2026-08-02");
        row("today is the last day to act", with([](auto& f) { f.cuttingDay = dayOf(2026, 8, 22); }), "");
        row("too late", with([](auto& f) { f.stage = BbchStage{89}; }), "");
    }

    void aDayToLookAgainIsSuggested()
    {
        QFETCH(ControlFacts, facts);
        QFETCH(QByteArray, day);
        const auto suggested = of(facts).lookAgain;
        QCOMPARE(suggested ? QByteArray::fromStdString(formatDay(*suggested)) : QByteArray(), day);
    }

    void aLongerLabelNeverMakesItEarlier()
    {
        for (int label = 0; label <= 60; ++label) {
            const ControlTiming timing = of(with([&](auto& f) { f.labelInterval = days{label}; }));
            QCOMPARE(timing.timing == Timing::TooLate, label > 31);
        }
    }

    void larvaeAreSortedByTheProtocolsClasses()
    {
        const std::vector<std::int64_t> counts{7, 4, 2};
        const auto larvae = larvaeBySize(*m_protocol.scouting, counts);
        QCOMPARE(larvae->looked, std::int64_t{13});
        QCOMPARE(larvae->largeEnough, std::int64_t{6}); // 13 mm and more
        ScoutingAdvice coarse = *m_protocol.scouting;
        coarse.smallestToControl.value = Millimetres{20};
        QCOMPARE(larvaeBySize(coarse, counts)->largeEnough, std::int64_t{2});
        QVERIFY(!larvaeBySize(coarse, std::vector<std::int64_t>{1, 2}).has_value());
        QVERIFY(!larvaeBySize(coarse, std::vector<std::int64_t>{1, -2, 3}).has_value());
    }

    void whatAProtocolIsSilentOnIsNotAsked()
    {
        ThresholdRule rule = m_protocol.thresholdRules.front();
        rule.control = {};
        const auto timing = controlTiming(rule, nullptr, with([](auto& f) { f.stage = BbchStage{10}; }));
        QCOMPARE(timing->findings.size(), std::size_t{1});
        QVERIFY(timing->timing == Timing::InWindow && !timing->lookAgain);
    }

    void whatMakesNoSenseIsRefused_data()
    {
        QTest::addColumn<ControlFacts>("facts");
        QTest::addColumn<QByteArray>("field");
        const auto row = [](const char* field, const ControlFacts& facts) {
            QTest::newRow(field) << facts << QByteArray(field).split(' ').front();
        };
        row("stage_bbch", with([](auto& f) { f.stage = BbchStage{100}; }));
        row("pods_damaged_percent over", with([](auto& f) { f.podsDamaged = Percent{101.0}; }));
        row("pods_damaged_percent under", with([](auto& f) { f.podsDamaged = Percent{-0.1}; }));
        row("pods_damaged_percent no number", with([](auto& f) { f.podsDamaged = Percent{std::nan("")}; }));
        row("larvae more than looked at", with([](auto& f) { f.larvae = LarvaeBySize{3, 4}; }));
        row("label_interval_days under", with([](auto& f) { f.labelInterval = days{-1}; }));
        row("label_interval_days over", with([](auto& f) { f.labelInterval = days{3660}; }));
    }

    void whatMakesNoSenseIsRefused()
    {
        QFETCH(ControlFacts, facts);
        QFETCH(QByteArray, field);
        const auto timing = controlTiming(m_protocol.thresholdRules.front(), &*m_protocol.scouting, facts);
        QVERIFY(!timing.has_value());
        QCOMPARE(QByteArray::fromStdString(timing.error().args.at(0)), field);
    }

private:
    [[nodiscard]] ControlTiming of(const ControlFacts& facts) const
    {
        const auto timing = controlTiming(m_protocol.thresholdRules.front(), &*m_protocol.scouting, facts);
        if (!timing) qFatal("refused");
        return *timing;
    }

    Protocol m_protocol;
};

QTEST_APPLESS_MAIN(ControlTimingTest)
#include "control_timing_test.moc"
