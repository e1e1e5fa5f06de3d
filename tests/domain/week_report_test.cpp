// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/bulletin/week_report.h"
#include "trap_story.h"

using namespace duskrow::domain;

namespace {

// Sunday to Saturday, counted on Tuesday, two days of grace.
SeasonWeek rhythm(int grace = 2)
{
    SeasonWeek week;
    week.grace = std::chrono::days{grace};
    return week;
}

SeasonRules rules()
{
    SeasonRules made;
    made.latestSetUp = storyDay("0615");
    made.earliestTakeDown = storyDay("0725");
    made.lastDay = storyDay("0731");
    made.today = storyDay("0901");
    return made;
}

ReportingWeek week28()
{
    return *weekFromIso({2026, 28}, std::chrono::Sunday);
}

WeekReport reportOf(const QByteArray& story)
{
    const TrapStory told(story);
    return weekReport(told.facts(), week28(), rhythm(), rules(), Uuid{}, 3);
}

} // namespace

class WeekReportTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void daysOfAWeek_data()
    {
        QTest::addColumn<int>("grace");
        QTest::addColumn<QByteArray>("first");
        QTest::addColumn<QByteArray>("last");
        // ISO week 28 of 2026 has its Thursday on 9 July; the reporting week around it is 5 to 11 July.
        QTest::newRow("grace within the week") << 2 << QByteArray("0705") << QByteArray("0711");
        QTest::newRow("grace into the next week") << 6 << QByteArray("0707") << QByteArray("0713");
    }

    void daysOfAWeek()
    {
        QFETCH(int, grace);
        const ReportingWeek days = countsOf(week28(), rhythm(grace));
        QTEST(storyText(days.first), "first");
        QTEST(storyText(days.last), "last");
    }

    void everyDayIsOfOneWeek()
    {
        for (const int grace : {0, 2, 6}) {
            LocalDay next = countsOf(*weekFromIso({2026, 20}, std::chrono::Sunday), rhythm(grace)).first;
            for (int week = 20; week < 40; ++week) {
                const ReportingWeek days =
                    countsOf(*weekFromIso({2026, week}, std::chrono::Sunday), rhythm(grace));
                QCOMPARE(days.first, next);
                next = days.last + std::chrono::days{1};
            }
        }
    }

    void whatATrapSays_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<double>("moths"); // -1: none in full
        QTest::addColumn<int>("soFar");
        QTest::addColumn<bool>("isCounted");
        QTest::addColumn<bool>("isExpected");
        const auto row = [](const char* claim, const char* story, double moths, int soFar, bool counted,
                             bool expected) {
            QTest::newRow(claim) << QByteArray(story) << moths << soFar << counted << expected;
        };
        row("a week as it should be", "set:0604 0630=20 0707=35", 35, 55, true, true);
        row("zero is a count", "set:0604 0630=0 0707=0", 0, 0, true, true);
        row("later counts do not exist yet", "set:0604 0630=20 0707=35 0714=900", 35, 55, true, true);
        row("eight nights are brought to seven", "set:0604 0629=20 0707=16", 14, 36, true, true);
        row("two counts of one week are one", "set:0604 0630=20 0706=12 0710=8", 14, 40, true, true);
        row("not counted is not zero", "set:0604 0630=20", -1, 20, false, true);
        row("could not count is not zero", "set:0604 0630=20 0707=none", -1, 20, false, true);
        row("two weeks in one count are of neither", "set:0604 0623=20 0707=30", -1, 50, true, true);
        row("a failed trap is a minimum", "set:0604 0630=20 0707=35,fallen", -1, 55, true, true);
        row("so is one set up late", "set:0622 0630=20 0707=35", -1, 55, true, true);
        row("taken down before", "set:0604 0630=20 end:0630,season_over", -1, 20, false, false);
        row("taken down later it still stood", "set:0604 0630=20 0707=35 end:0720,season_over", 35, 55, true,
            true);
        row("set up later it does not stand yet", "set:0720", -1, 0, false, false);
    }

    void whatATrapSays()
    {
        QFETCH(QByteArray, story);
        const WeekReport report = reportOf(story);
        QTEST(report.moths.value_or(-1), "moths");
        QTEST(static_cast<int>(report.soFar.value()), "soFar");
        QTEST(report.isCounted, "isCounted");
        QTEST(report.isExpected, "isExpected");
        QCOMPARE(report.reporter.district, std::optional<std::size_t>(3));
        QVERIFY(!report.reporter.cell);
    }

    void thePlaceIsACell()
    {
        TrapStory told("set:0604 0707=3");
        told.trap.latE7 = 521'579'000;
        told.trap.lonE7 = -1'066'701'580;
        auto report = weekReport(told.facts(), week28(), rhythm(), rules(), Uuid{}, std::nullopt);
        QCOMPARE(report.reporter.cell, std::optional(GridCell{521, -1067}));
        QCOMPARE(report.fix.value(), unknownFix.value());
        told.trap.accuracy = Millimetres{4500};
        report = weekReport(told.facts(), week28(), rhythm(), rules(), Uuid{}, std::nullopt);
        QCOMPARE(report.fix.value(), 4.5);
    }
};

QTEST_APPLESS_MAIN(WeekReportTest)
#include "week_report_test.moc"
