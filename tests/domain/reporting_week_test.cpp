// SPDX-License-Identifier: MIT
#include <QDate>
#include <QTest>

#include "domain/rules/reporting_week.h"

using namespace duskrow::domain;
using std::chrono::days;

namespace {

LocalDay dayFrom(const QByteArray& text)
{
    const auto read = parseDay(text.toStdString());
    if (!read) qFatal("%s is no day", text.constData());
    return *read;
}

QByteArray written(LocalDay value)
{
    return QByteArray::fromStdString(formatDay(value));
}

} // namespace

class ReportingWeekTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // The official trapping seasons of the Manitoba bertha armyworm forecasts.
    void officialSeasonsAreEightSundayWeeks_data()
    {
        QTest::addColumn<QByteArray>("first");
        QTest::addColumn<QByteArray>("last");
        QTest::newRow("2017") << QByteArray("2017-06-04") << QByteArray("2017-07-29");
        QTest::newRow("2018") << QByteArray("2018-06-03") << QByteArray("2018-07-28");
        QTest::newRow("2021") << QByteArray("2021-06-06") << QByteArray("2021-07-31");
        QTest::newRow("2022") << QByteArray("2022-06-05") << QByteArray("2022-07-30");
    }

    void officialSeasonsAreEightSundayWeeks()
    {
        QFETCH(QByteArray, first);
        QFETCH(QByteArray, last);
        QCOMPARE((dayFrom(last) - dayFrom(first)).count() + 1, 56);
        const auto weeks = weeksBetween(dayFrom(first), dayFrom(last), *isoWeekday(7));
        QCOMPARE(weeks.size(), std::size_t{8});
        QCOMPARE(weeks.front().first, dayFrom(first));
        QCOMPARE(weeks.back().last, dayFrom(last));
        QCOMPARE(weeksBetween(dayFrom(first), dayFrom(last), *isoWeekday(1)).size(), std::size_t{9});
    }

    void everyDayLiesInOneWeek()
    {
        for (int start = 1; start <= 7; ++start) {
            for (LocalDay at = dayOf(2023, 12, 1); at < dayOf(2024, 3, 15); at += days{1}) {
                const ReportingWeek week = weekOf(at, *isoWeekday(start));
                QVERIFY(week.holds(at));
                QCOMPARE((week.last - week.first).count(), 6);
                QCOMPARE(std::chrono::weekday{week.first}.iso_encoding(), static_cast<unsigned>(start));
                QCOMPARE(weekOf(week.last, *isoWeekday(start)), week);
            }
        }
    }

    void weekdaysAreNumberedFromMonday()
    {
        QVERIFY(*isoWeekday(1) == std::chrono::Monday);
        QVERIFY(*isoWeekday(7) == std::chrono::Sunday);
        QCOMPARE(isoWeekday(0).error().code, ErrorCode::OutOfRange);
        QCOMPARE(isoWeekday(8).error().code, ErrorCode::OutOfRange);
    }

    void noWeeksBackwards()
    {
        QVERIFY(weeksBetween(dayOf(2026, 7, 2), dayOf(2026, 7, 1), *isoWeekday(7)).empty());
        QCOMPARE(weeksBetween(dayOf(2026, 7, 1), dayOf(2026, 7, 1), *isoWeekday(7)).size(), std::size_t{1});
    }

    void countAndReport_data()
    {
        QTest::addColumn<int>("countDay");
        QTest::addColumn<int>("reportDay");
        QTest::addColumn<QByteArray>("count");
        QTest::addColumn<QByteArray>("latest");
        QTest::addColumn<QByteArray>("report");
        // The week of Sunday 5 to Saturday 11 July 2026, one day of grace.
        QTest::newRow("first day of the week")
            << 7 << 2 << QByteArray("2026-07-05") << QByteArray("2026-07-06") << QByteArray("2026-07-07");
        QTest::newRow("last day, reported the next week")
            << 6 << 2 << QByteArray("2026-07-11") << QByteArray("2026-07-12") << QByteArray("2026-07-14");
        QTest::newRow("reported on the count day")
            << 3 << 3 << QByteArray("2026-07-08") << QByteArray("2026-07-09") << QByteArray("2026-07-08");
    }

    void countAndReport()
    {
        QFETCH(int, countDay);
        QFETCH(int, reportDay);
        QFETCH(QByteArray, count);
        QFETCH(QByteArray, latest);
        QFETCH(QByteArray, report);
        const ReportingWeek week = weekOf(dayOf(2026, 7, 9), *isoWeekday(7));
        QCOMPARE(written(countDayOf(week, *isoWeekday(countDay))), count);
        QCOMPARE(written(lastCountDay(week, *isoWeekday(countDay), days{1})), latest);
        QCOMPARE(written(reportBy(week, *isoWeekday(countDay), *isoWeekday(reportDay))), report);
    }

    void aLateCountIsForTheWeekBefore_data()
    {
        QTest::addColumn<int>("countDay");
        QTest::addColumn<int>("grace");
        QTest::addColumn<QByteArray>("day");
        QTest::addColumn<QByteArray>("first");
        const QByteArray before("2026-07-05");
        const QByteArray own("2026-07-12");
        QTest::newRow("on the count day") << 6 << 1 << QByteArray("2026-07-11") << before;
        QTest::newRow("a day late") << 6 << 1 << QByteArray("2026-07-12") << before;
        QTest::newRow("two days late") << 6 << 1 << QByteArray("2026-07-13") << own;
        QTest::newRow("no grace") << 6 << 0 << QByteArray("2026-07-12") << own;
        QTest::newRow("late within the week") << 7 << 1 << QByteArray("2026-07-13") << own;
    }

    void aLateCountIsForTheWeekBefore()
    {
        QFETCH(int, countDay);
        QFETCH(int, grace);
        QFETCH(QByteArray, day);
        QFETCH(QByteArray, first);
        const auto week =
            weekCountedFor(dayFrom(day), *isoWeekday(7), *isoWeekday(countDay), std::chrono::days{grace});
        QCOMPARE(written(week.first), first);
    }

    // ISO 8601.
    void isoWeeks_data()
    {
        QTest::addColumn<QByteArray>("date");
        QTest::addColumn<int>("year");
        QTest::addColumn<int>("week");
        QTest::newRow("last day of a long year") << QByteArray("2020-12-31") << 2020 << 53;
        QTest::newRow("Sunday after it") << QByteArray("2021-01-03") << 2020 << 53;
        QTest::newRow("Monday after that") << QByteArray("2021-01-04") << 2021 << 1;
        QTest::newRow("Thursday, 1 January") << QByteArray("2026-01-01") << 2026 << 1;
        QTest::newRow("December of the year before") << QByteArray("2024-12-30") << 2025 << 1;
    }

    void isoWeeks()
    {
        QFETCH(QByteArray, date);
        QFETCH(int, year);
        QFETCH(int, week);
        QCOMPARE(isoWeekOf(dayFrom(date)).year, year);
        QCOMPARE(isoWeekOf(dayFrom(date)).week, week);
    }

    void isoWeeksAgreeWithQtOnEveryDay()
    {
        QDate qtDay(2000, 1, 1);
        for (LocalDay at = dayOf(2000, 1, 1); at <= dayOf(2040, 12, 31); at += days{1}) {
            int year = 0;
            const int week = qtDay.weekNumber(&year);
            const IsoWeek found = isoWeekOf(at);
            if (found.year != year || found.week != week) QFAIL(written(at));
            // And back: the Monday-to-Sunday week of that number holds the day.
            const auto back = weekFromIso(found, *isoWeekday(1));
            if (!back || !back->holds(at)) QFAIL(written(at));
            qtDay = qtDay.addDays(1);
        }
        QCOMPARE(qtDay, QDate(2041, 1, 1));
    }

    void anIsoWeekIsTheReportingWeekOfItsThursday_data()
    {
        QTest::addColumn<int>("start");
        QTest::addColumn<QByteArray>("first");
        // Thursday of 2026-W28 is 9 July.
        QTest::newRow("Monday") << 1 << QByteArray("2026-07-06");
        QTest::newRow("Thursday") << 4 << QByteArray("2026-07-09");
        QTest::newRow("Friday") << 5 << QByteArray("2026-07-03");
        QTest::newRow("Sunday") << 7 << QByteArray("2026-07-05");
    }

    void anIsoWeekIsTheReportingWeekOfItsThursday()
    {
        QFETCH(int, start);
        QFETCH(QByteArray, first);
        const auto week = weekFromIso({2026, 28}, *isoWeekday(start));
        QCOMPARE(written(week->first), first);
        QVERIFY(week->holds(dayOf(2026, 7, 9)));
    }

    void weeksThatAreNotThereAreRefused()
    {
        const auto sunday = *isoWeekday(7);
        QVERIFY(weekFromIso({2020, 53}, sunday).has_value());
        QCOMPARE(weekFromIso({2021, 53}, sunday).error().args.back(), std::string("52"));
        QCOMPARE(weekFromIso({2020, 0}, sunday).error().code, ErrorCode::OutOfRange);
        QCOMPARE(weekFromIso({2020, 54}, sunday).error().code, ErrorCode::OutOfRange);
        QCOMPARE(weekFromIso({0, 1}, sunday).error().args.front(), std::string("year"));
        QCOMPARE(weekFromIso({1'000'000, 1}, sunday).error().code, ErrorCode::OutOfRange);
    }
};

QTEST_APPLESS_MAIN(ReportingWeekTest)
#include "reporting_week_test.moc"
