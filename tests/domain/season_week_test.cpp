// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/season_week.h"
#include "trap_story.h"

using namespace duskrow::domain;

namespace {

// Weeks from Sunday, counts on Tuesday with a day's grace, in by Thursday at five.
const SeasonWeek week{std::chrono::Sunday, std::chrono::Tuesday, std::chrono::days{1}, std::chrono::Thursday,
    std::chrono::minutes{17 * 60}};

} // namespace

class SeasonWeekTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aSeasonGivesItsRhythm()
    {
        Season season;
        QVERIFY(!seasonWeekOf(season));
        season.weekStart = 7;
        season.countDay = 2;
        QVERIFY(seasonWeekOf(season)->weekStart == std::chrono::Sunday);
        QVERIFY(seasonWeekOf(season)->countDay == std::chrono::Tuesday);
        QCOMPARE(seasonWeekOf(season)->grace.count(), 0);
        QVERIFY(!seasonWeekOf(season)->reportDay);
        season.graceDays = 1;
        season.reportDay = 4;
        season.reportMinute = 1020;
        QCOMPARE(seasonWeekOf(season)->grace.count(), 1);
        QVERIFY(seasonWeekOf(season)->reportDay == std::chrono::Thursday);
        QCOMPARE(seasonWeekOf(season)->reportTime->count(), 1020);
        season.countDay = 8;
        QVERIFY(!seasonWeekOf(season));
    }

    void countDays_data()
    {
        QTest::addColumn<QByteArray>("day");
        QTest::addColumn<QByteArray>("next"); // the next count day
        QTest::addColumn<QByteArray>("after"); // the count day that a visit on this day leaves open
        const auto row = [](const char* claim, const char* day, const char* next, const char* after) {
            QTest::newRow(claim) << QByteArray(day) << QByteArray(next) << QByteArray(after);
        };
        row("the count day itself", "0616", "0616", "0623");
        row("the day before: within grace", "0615", "0616", "0623");
        row("two days before", "0614", "0616", "0616");
        row("the day after", "0617", "0623", "0623");
        row("four days late: the next one comes soon", "0620", "0623", "0623");
    }

    void countDays()
    {
        QFETCH(QByteArray, day);
        QTEST(storyText(nextCountDay(storyDay(day), week)), "next");
        QTEST(storyText(countDayAfter(storyDay(day), week)), "after");
    }

    void reports_data()
    {
        QTest::addColumn<QByteArray>("today");
        QTest::addColumn<QByteArray>("countDay");
        QTest::addColumn<QByteArray>("day");
        const auto row = [](const char* claim, const char* today, const char* countDay, const char* day) {
            QTest::newRow(claim) << QByteArray(today) << QByteArray(countDay) << QByteArray(day);
        };
        row("on the count day", "0616", "0616", "0618");
        row("on the day of report", "0618", "0616", "0618");
        row("the day after: the next counts", "0619", "0623", "0625");
    }

    void reports()
    {
        QFETCH(QByteArray, today);
        const auto due = reportDue(storyDay(today), week);
        QTEST(storyText(due->countDay), "countDay");
        QTEST(storyText(due->day), "day");
        QCOMPARE(due->time->count(), 1020);
        QVERIFY(reportBy(weekOf(due->countDay, week.weekStart), week.countDay, *week.reportDay) == due->day);
    }

    void withoutADayOfReportNothingIsDue()
    {
        SeasonWeek quiet = week;
        quiet.reportDay.reset();
        QVERIFY(!reportDue(dayOf(2026, 6, 16), quiet));
    }
};

QTEST_APPLESS_MAIN(SeasonWeekTest)
#include "season_week_test.moc"
