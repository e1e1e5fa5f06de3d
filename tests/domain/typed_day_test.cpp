// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/typed_day.h"

using namespace duskrow::domain;

class TypedDayTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void days_data()
    {
        QTest::addColumn<QByteArray>("typed");
        QTest::addColumn<QByteArray>("order"); // d, m or nothing
        QTest::addColumn<int>("year"); // of the table; 0 for none
        QTest::addColumn<QByteArray>("read"); // a day, or the code of the refusal
        const auto row = [](const char* claim, const char* typed, const char* order, int year,
                             const char* read) {
            QTest::newRow(claim) << QByteArray(typed) << QByteArray(order) << year << QByteArray(read);
        };
        row("ISO 8601", "2026-07-14", "", 0, "2026-07-14");
        row("with slashes, year first", "2026/7/4", "", 0, "2026-07-04");
        row("a run of digits", "20260714", "", 0, "2026-07-14");
        row("blanks around", "  2026-07-14 ", "", 0, "2026-07-14");
        row("a midnight behind", "2026-07-14 00:00:00", "", 0, "2026-07-14");
        row("a time that is none", "2026-07-14 09:30", "", 0, "NotADay");
        row("day first", "14/07/2026", "d", 0, "2026-07-14");
        row("month first", "07/14/2026", "m", 0, "2026-07-14");
        row("points", "4.7.2026", "d", 0, "2026-07-04");
        row("dashes, year behind", "04-07-2026", "m", 0, "2026-04-07");
        row("an order that is not said is never guessed", "04/07/2026", "", 0, "DayOrderUnsaid");
        row("not even where only one can be", "14/07/2026", "", 0, "DayOrderUnsaid");
        row("the same both ways", "05/05/2026", "", 0, "2026-05-05");
        row("does not fit the order", "14/07/2026", "m", 0, "NotADay");
        row("a word for the month", "14 Jul 2026", "", 0, "2026-07-14");
        row("in French", "14 juillet 2026", "", 0, "2026-07-14");
        row("with an accent", "1 août 2026", "", 0, "2026-08-01");
        row("month before", "July 14, 2026", "", 0, "2026-07-14");
        row("dashes", "14-Jul-2026", "", 0, "2026-07-14");
        row("two months begin so", "14 jui 2026", "", 0, "NotADay");
        row("no month", "14 Brumaire 2026", "", 0, "NotADay");
        row("two digits and no year", "14-Jul-26", "", 0, "YearOfTwoDigits");
        row("two digits of the year of the table", "14-Jul-26", "", 2026, "2026-07-14");
        row("two digits of another", "14-Jul-25", "", 2026, "YearOfTwoDigits");
        row("no year", "14-Jul", "", 2026, "2026-07-14");
        row("no year, with a blank", "14 juillet", "", 2026, "2026-07-14");
        row("no year, month before", "July 14", "", 2026, "2026-07-14");
        row("no year, and none of the table", "14-Jul", "", 0, "YearUnsaid");
        row("no year, and no such day in it", "29 Feb", "", 2026, "NotADay");
        row("a month and a year", "Jul-14", "", 2026, "NotADay");
        row("a month and a whole year", "2026 Jul", "", 2026, "NotADay");
        row("two numbers", "14/07", "d", 2026, "NotADay");
        row("two words", "July fourteen", "", 2026, "NotADay");
        row("no such day", "2026-02-30", "", 0, "NotADay");
        row("no such month", "2026-13-01", "", 0, "NotADay");
        row("the day of a spreadsheet's own reckoning", "46217", "", 0, "NotADay");
        row("nothing", "", "", 0, "NotADay");
        row("a formula", "=TODAY()", "", 0, "NotADay");
        row("a text", "last week", "", 0, "NotADay");
        row("two days", "2026-07-14-2026-07-15", "", 0, "NotADay");
        row("very long", "2026-07-14                                               ", "", 0, "2026-07-14");
        row("very long and no day", "999999999999999999999999999999999999999999999999-1-1", "", 0, "NotADay");
    }

    void days()
    {
        QFETCH(QByteArray, typed);
        QFETCH(QByteArray, order);
        QFETCH(int, year);
        QFETCH(QByteArray, read);
        std::optional<DayOrder> said;
        if (!order.isEmpty()) said = order == "d" ? DayOrder::DayFirst : DayOrder::MonthFirst;
        const auto day =
            parseTypedDay(typed.toStdString(), said, year == 0 ? std::nullopt : std::optional(year));
        QByteArray found;
        if (day)
            found = QByteArray::fromStdString(formatDay(*day));
        else
            found = day.error().code == ErrorCode::DayOrderUnsaid ? "DayOrderUnsaid"
                : day.error().code == ErrorCode::YearOfTwoDigits  ? "YearOfTwoDigits"
                : day.error().code == ErrorCode::YearUnsaid       ? "YearUnsaid"
                                                                  : "NotADay";
        QCOMPARE(found, read);
    }

    void orders_data()
    {
        QTest::addColumn<QByteArrayList>("days");
        QTest::addColumn<int>("reason");
        QTest::addColumn<QByteArray>("order");
        const auto row = [](const char* claim, QByteArrayList days, DayOrderReason reason,
                             const char* order) {
            QTest::newRow(claim) << days << static_cast<int>(reason) << QByteArray(order);
        };
        using enum DayOrderReason;
        row("year first", {"2026-07-04", "2026-08-05"}, NotNeeded, "");
        row("one day says it for all", {"04/07/2026", "14/07/2026"}, Shown, "d");
        row("the other way", {"04/07/2026", "07/14/2026"}, Shown, "m");
        row("all can be both", {"04/07/2026", "05/08/2026"}, Ambiguous, "");
        row("they say different things", {"14/07/2026", "07/14/2026"}, Both, "");
        row("what is no day says nothing", {"40/07/2026", "x", "04/07/2026"}, Ambiguous, "");
        row("the same both ways says nothing", {"05/05/2026"}, NotNeeded, "");
    }

    void orders()
    {
        QFETCH(QByteArrayList, days);
        QFETCH(int, reason);
        QFETCH(QByteArray, order);
        DayOrderSurvey survey;
        for (const QByteArray& day : days) survey.take(day.toStdString());
        const DayOrderFinding finding = survey.finding();
        QCOMPARE(static_cast<int>(finding.reason), reason);
        QCOMPARE(finding.order.has_value(), !order.isEmpty());
        if (finding.order) QCOMPARE(*finding.order == DayOrder::DayFirst, order == "d");
    }
};

QTEST_APPLESS_MAIN(TypedDayTest)
#include "typed_day_test.moc"
