// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/pest_files.h"

using namespace duskrow::domain;
using duskrow::tests::GoldenRow;
using duskrow::tests::readGolden;

// The rules for traps with the numbers of the protocol file that uses them.
class PestRulesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void sprayIntervals_data() { rowsOf("protocols/corn-earworm-intervals.csv"); }

    void sprayIntervals()
    {
        QFETCH(int, row);
        const GoldenRow golden = readGolden("protocols/corn-earworm-intervals.csv").at(row);
        const Protocol protocol = protocolNamed("corn-earworm");
        const auto& rule = trapRule<RateRule>(protocol, "maryland-intervals");
        QVERIFY(rule.per.value == Nights{1});
        const RuleStep& step =
            stepOf(rule.steps, std::round(golden.number("moths") * 10) / (golden.number("nights") * 10));
        QCOMPARE(step.betweenSprays.value_or(std::chrono::days{0}).count(), golden.whole("days"));
    }

    void intenseCaptures_data() { rowsOf("protocols/black-cutworm-captures.csv"); }

    void intenseCaptures()
    {
        QFETCH(int, row);
        const GoldenRow golden = readGolden("protocols/black-cutworm-captures.csv").at(row);
        const Protocol protocol = protocolNamed("black-cutworm");
        const auto& rule = trapRule<MothsInNightsRule>(protocol, "intense-capture");
        const auto result = mothsInNights(
            stepsOf(golden.text("story").replace(';', ',')), *rule.moths.value, *rule.nights.value);
        QCOMPARE(static_cast<int>(result.state), static_cast<int>(golden.whole("state")));
        QCOMPARE(dayText(result.span, false), golden.text("from"));
        QCOMPARE(dayText(result.span, true), golden.text("to"));
    }

    void noSpreadEscapesWhatIsCertain()
    {
        for (int span = 1; span <= 6; ++span)
            for (int moths = 0; moths <= 9; ++moths) {
                const int least = leastHighestWindow(span, moths, 2);
                for (int asked = 1; asked <= 9; ++asked) {
                    const CatchStep step{
                        dayOf(2026, 5, 1), dayOf(2026, 5, 1) + std::chrono::days{span}, Moths{moths}};
                    const auto state = mothsInNights(std::array{step}, Moths{asked}, Nights{2}).state;
                    QCOMPARE(state >= WindowState::ReachedWithin, least >= asked);
                    QCOMPARE(state == WindowState::NotReached, moths < asked);
                }
            }
    }

    void warmthAfterIt_data()
    {
        QTest::addColumn<double>("fahrenheit");
        QTest::addColumn<QByteArray>("last");
        QTest::addColumn<QByteArray>("next");
        const auto row = [](double sum, const char* last, const char* next) {
            QTest::newRow(qPrintable(QString::number(sum))) << sum << QByteArray(last) << QByteArray(next);
        };
        row(0, "", "hatch");
        row(89.9, "", "hatch");
        row(90, "hatch", "first-cutting");
        row(300, "first-cutting", "fourth-instar");
        row(311.9, "first-cutting", "fourth-instar");
        row(312, "fourth-instar", "fifth-instar");
        row(364, "fourth-instar", "fifth-instar");
        row(430, "fifth-instar", "sixth-instar");
        row(640, "sixth-instar", "pupa");
        row(700, "pupa", "");
    }

    void warmthAfterIt()
    {
        QFETCH(double, fahrenheit);
        const Protocol protocol = protocolNamed("black-cutworm");
        const auto& rule = trapRule<MothsInNightsRule>(protocol, "intense-capture");
        const auto reached = heatReached(rule.then, DegreeDays{fahrenheit * 5 / 9});
        QTEST(QByteArray::fromStdString(reached.last ? reached.last->id : ""), "last");
        QTEST(QByteArray::fromStdString(reached.next ? reached.next->id : ""), "next");
        if (reached.next)
            QVERIFY(qAbs(reached.toNext.value() * 9 / 5 + fahrenheit - *reached.next->sum.value) < 1e-9);
    }

    void warmthOfWheatMidge_data() { rowsOf("protocols/wheat-midge-sums.csv"); }

    void warmthOfWheatMidge()
    {
        QFETCH(int, row);
        const GoldenRow golden = readGolden("protocols/wheat-midge-sums.csv").at(row);
        const Protocol protocol = protocolNamed("wheat-midge");
        QVERIFY(protocol.heat && protocol.heat->unit == HeatUnit::Fahrenheit);
        QVERIFY(protocol.heat->lower.value == 40.0);
        std::vector<HeatStep> steps;
        for (const HeatSum& sum : protocol.heat->sums)
            steps.push_back({sum.id, sum.name, sum.degreeDays, true});
        const auto reached = heatReached(steps, DegreeDays{golden.number("sum") * 5 / 9});
        QVERIFY(reached.last);
        QCOMPARE(QByteArray::fromStdString(reached.last->id), golden.text("passed"));
    }

    void twoTrapTypesTwoNumbers_data()
    {
        QTest::addColumn<QByteArray>("trap");
        QTest::addColumn<double>("moths");
        QTest::addColumn<QByteArray>("step");
        const auto row = [](const char* trap, double moths, const char* step) {
            QTest::newRow(qPrintable(QStringLiteral("%1 %2").arg(QLatin1String(trap)).arg(moths)))
                << QByteArray(trap) << moths << QByteArray(step);
        };
        row("green-bucket", 1199, "low");
        row("green-bucket", 1200, "moderate");
        row("green-bucket", 1700, "moderate");
        row("green-bucket", 1701, "high");
        row("milk-jug", 699, "low");
        row("milk-jug", 700, "moderate");
        row("milk-jug", 1000, "moderate");
        row("milk-jug", 1001, "high");
    }

    void twoTrapTypesTwoNumbers()
    {
        QFETCH(QByteArray, trap);
        QFETCH(double, moths);
        const Protocol protocol = protocolNamed("western-bean-cutworm");
        const MilestoneRule* rule = nullptr;
        for (const TrapRule* each : trapRulesFor(protocol, trap.toStdString()))
            if (const auto* found = std::get_if<MilestoneRule>(each)) rule = found;
        QVERIFY(rule);
        QVERIFY(rule->milestone.value == (trap == "milk-jug" ? Milestone::Peak : Milestone::HalfOfFlight));
        QTEST(QByteArray::fromStdString(stepOf(rule->steps, moths).id), "step");
    }

    void aSumUpToADayKnowsWhatRunsOverIt()
    {
        const auto steps = stepsOf("set:0701 0708=100 0715=200 0722=50");
        const auto sum = sumUpTo(steps, storyDay("0718"));
        QVERIFY(sum.least == Moths{300} && sum.most == Moths{350});
        const auto onADay = sumUpTo(steps, storyDay("0715"));
        QVERIFY(onADay.least == Moths{300} && onADay.most == Moths{300});
    }

    void stepsByTheirNumber_data()
    {
        QTest::addColumn<QByteArray>("pest");
        QTest::addColumn<QByteArray>("rule");
        QTest::addColumn<double>("moths");
        QTest::addColumn<QByteArray>("step");
        const auto row = [](const char* pest, const char* rule, double moths, const char* step) {
            QTest::newRow(
                qPrintable(QStringLiteral("%1 %2 %3")
                               .arg(QLatin1String(pest), QLatin1String(rule), QString::number(moths))))
                << QByteArray(pest) << QByteArray(rule) << moths << QByteArray(step);
        };
        row("diamondback-moth", "week-north-dakota", 100, "low");
        row("diamondback-moth", "week-north-dakota", 100.5, "scout");
        row("wheat-midge", "north-dakota", 10, "few");
        row("wheat-midge", "north-dakota", 11, "scout");
        row("wheat-midge", "united-kingdom", 30, "few");
        row("wheat-midge", "united-kingdom", 31, "daily");
        row("wheat-midge", "united-kingdom", 120, "daily");
        row("wheat-midge", "united-kingdom", 121, "upper");
        row("sunflower-moth", "north-dakota", 27.9, "few");
        row("sunflower-moth", "north-dakota", 28, "scout");
        row("european-corn-borer", "potatoes-maine", 59, "few");
        row("european-corn-borer", "potatoes-maine", 60, "look");
        row("western-bean-cutworm", "beans-michigan", 49, "few");
        row("western-bean-cutworm", "beans-michigan", 50, "scout");
        row("western-bean-cutworm", "beans-michigan", 151, "advice");
        row("corn-earworm", "indiana", 0.99, "none");
        row("corn-earworm", "indiana", 10, "ten");
    }

    void stepsByTheirNumber()
    {
        QFETCH(QByteArray, pest);
        QFETCH(QByteArray, rule);
        QFETCH(double, moths);
        const Protocol protocol = protocolNamed(pest.constData());
        for (const TrapRule& each : protocol.trapRules) {
            if (headOf(each).id != rule.toStdString()) continue;
            const auto* steps = std::visit(
                [](const auto& one) -> const RuleSteps* {
                    if constexpr (requires { one.steps; }) return &one.steps;
                    return nullptr;
                },
                each);
            QVERIFY(steps);
            QTEST(QByteArray::fromStdString(stepOf(*steps, moths).id), "step");
            return;
        }
        QFAIL("no such rule");
    }

    void rates_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<int>("per");
        QTest::addColumn<double>("last"); // below 0: none
        QTest::addColumn<double>("highest");
        const auto row = [](const char* name, const char* story, int per, double last, double highest) {
            QTest::newRow(name) << QByteArray(story) << per << last << highest;
        };
        row("a week's count is a week's catch", "set:0701 0708=50", 7, 50, 50);
        row("two weeks are halved", "set:0701 0715=50", 7, 25, 25);
        row("days add up to a week", "set:0701 0702=3 0705=4 0708=7", 7, 14, 21);
        row("the last falls, the highest stays", "set:0701 0708=60 0715=10", 7, 10, 60);
        row("one night by itself", "set:0701 0702=9 0703=7", 1, 7, 9);
        row("a failed trap gives no rate", "set:0701 0708=50,fallen", 7, -1, -1);
        row("lost nights break the week", "set:0701 0704=6 0705=none,emptied 0706=2", 7, 14, 14);
        row("no count, no rate", "set:0701", 7, -1, -1);
    }

    void rates()
    {
        QFETCH(QByteArray, story);
        QFETCH(int, per);
        const auto rates = catchRates(stepsOf(story), Nights{per});
        QTEST(rates.last ? rates.last->catchPer : -1.0, "last");
        QTEST(rates.highest ? rates.highest->catchPer : -1.0, "highest");
    }

    void checksInARow_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<QByteArray>("from"); // empty: not reached
        QTest::addColumn<QByteArray>("to");
        QTest::addColumn<int>("atEnd");
        QTest::addColumn<bool>("isOverMore");
        const auto row = [](const char* name, const char* story, const char* from, const char* to, int atEnd,
                             bool isOverMore) {
            QTest::newRow(name) << QByteArray(story) << QByteArray(from) << QByteArray(to) << atEnd
                                << isOverMore;
        };
        row("ten and ten", "set:0601 0603=10 0605=10", "0601", "0605", 2, false);
        row("ten and nine", "set:0601 0603=10 0605=9", "", "", 0, false);
        row("one so far", "set:0601 0603=3 0605=12", "", "", 1, false);
        row("not in a row", "set:0601 0603=12 0605=3 0607=12", "", "", 1, false);
        row("the first run stands", "set:0601 0603=12 0605=11 0607=0", "0601", "0605", 0, false);
        row("three in a row", "set:0601 0603=12 0605=11 0607=30", "0601", "0605", 3, false);
        row("a check that was lost between", "set:0601 0603=12 0605=none,emptied 0607=12", "", "", 1, false);
        row("weeks are more than two nights", "set:0601 0608=12 0615=14", "0601", "0615", 2, true);
        row("nothing counted", "set:0601", "", "", 0, false);
    }

    void checksInARow()
    {
        QFETCH(QByteArray, story);
        const Protocol protocol = protocolNamed("pea-moth");
        const auto& rule = trapRule<VisitsInARowRule>(protocol, "two-checks");
        const auto run =
            visitsInARow(stepsOf(story), *rule.moths.value, *rule.visits.value, rule.apart.value);
        QTEST(dayText(run.reached, false), "from");
        QTEST(dayText(run.reached, true), "to");
        QTEST(run.atEnd, "atEnd");
        QTEST(run.isOverMoreNights, "isOverMore");
    }

private:
    // The lowest that the highest window can be, over all ways to spread the moths: every one is tried.
    static int leastHighestWindow(int nights, int moths, int window)
    {
        std::vector<int> spread(static_cast<std::size_t>(nights), 0);
        int least = moths;
        const auto highest = [&] {
            int most = 0;
            for (int first = 0; first < nights; ++first) {
                int sum = 0;
                for (int i = first; i < std::min(first + window, nights); ++i)
                    sum += spread[static_cast<std::size_t>(i)];
                most = std::max(most, sum);
            }
            return most;
        };
        const auto place = [&](auto&& self, int night, int left) -> void {
            if (night == nights - 1) {
                spread[static_cast<std::size_t>(night)] = left;
                least = std::min(least, highest());
                return;
            }
            for (int here = 0; here <= left; ++here) {
                spread[static_cast<std::size_t>(night)] = here;
                self(self, night + 1, left - here);
            }
        };
        place(place, 0, moths);
        return least;
    }
};

QTEST_APPLESS_MAIN(PestRulesTest)
#include "pest_rules_test.moc"
