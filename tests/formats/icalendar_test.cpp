// SPDX-License-Identifier: MIT
#include <QTest>

#include "formats/icalendar.h"

using namespace duskrow::domain;
using namespace duskrow::formats;
using namespace std::chrono_literals;

namespace {

const Instant stamp = std::chrono::sys_days{std::chrono::year{2026} / 7 / 7} + 5h + 3min + 9s;

CalendarEvent allDay()
{
    return {"count-1", WholeDays{dayOf(2026, 7, 14), dayOf(2026, 7, 14)}, "Count: Slough corner"};
}

QByteArrayList linesOf(const CalendarEvent& event)
{
    const auto bytes = writeCalendar({"", stamp, {event}});
    return bytes ? QByteArray::fromStdString(*bytes).split('\n') : QByteArrayList{};
}

} // namespace

class ICalendarTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void linesOfAnEvent_data()
    {
        QTest::addColumn<QByteArray>("line");
        QTest::newRow("stamp in UTC") << QByteArray("DTSTAMP:20260707T050309Z");
        QTest::newRow("floating start") << QByteArray("DTSTART:20260714T193000");
        QTest::newRow("floating end") << QByteArray("DTEND:20260715T001500");
        QTest::newRow("escaped text") << QByteArray("SUMMARY:a\\;b\\,c\\\\d\\ne");
        QTest::newRow("place") << QByteArray("GEO:49.5000001;-98.0000007");
        QTest::newRow("alarm") << QByteArray("TRIGGER:-PT90M");
        QTest::newRow("what the alarm says") << QByteArray("DESCRIPTION:Look at the trap");
        QTest::newRow("alarm action") << QByteArray("ACTION:DISPLAY");
    }

    void linesOfAnEvent()
    {
        QFETCH(QByteArray, line);
        CalendarEvent event{
            "u", WallSpan{dayOf(2026, 7, 14) + 19h + 30min, dayOf(2026, 7, 15) + 15min}, "a;b,c\\d\ne"};
        event.place = GeoPoint{495000001, -980000007};
        event.alarm = CalendarAlarm{90min, "Look at the trap"};
        QVERIFY2(linesOf(event).contains(line + '\r'), linesOf(event).join('\n').constData());
    }

    void aWholeDayEndsOnTheDayAfter()
    {
        CalendarEvent event = allDay();
        event.when = WholeDays{dayOf(2026, 7, 31), dayOf(2026, 7, 31)};
        QVERIFY(linesOf(event).contains("DTSTART;VALUE=DATE:20260731\r"));
        QVERIFY(linesOf(event).contains("DTEND;VALUE=DATE:20260801\r"));
    }

    // A whole day starts at midnight: its evening is after the start.
    void anAlarmInTheEveningOfAWholeDayRingsAfterItsStart()
    {
        CalendarEvent event = allDay();
        event.alarm = CalendarAlarm{-18h - 30min, ""};
        QVERIFY(linesOf(event).contains("TRIGGER:PT1110M\r"));
        QVERIFY(linesOf(event).contains("DESCRIPTION:Count: Slough corner\r"));
    }

    void aMomentHasNoEnd()
    {
        const auto at = dayOf(2026, 7, 14) + 19h;
        for (const QByteArray& line : linesOf({"u", WallSpan{at, at}, "Report"})) {
            QVERIFY(!line.startsWith("DTEND"));
        }
    }

    void foldsNeverSplitACharacter_data()
    {
        QTest::addColumn<QByteArray>("line");
        QTest::newRow("75 octets fit") << QByteArray(75, 'x');
        QTest::newRow("76 octets do not") << QByteArray(76, 'x');
        QTest::newRow("long") << QByteArray(1000, 'x');
        QTest::newRow("two-byte letters") << QStringLiteral("é").repeated(200).toUtf8();
        QTest::newRow("two-byte letters, shifted")
            << QByteArray("x" + QStringLiteral("é").repeated(200).toUtf8());
        QTest::newRow("ideographs") << QStringLiteral("蛾").repeated(111).toUtf8();
        QTest::newRow("emoji") << QByteArray("SUMMARY:" + QStringLiteral("🦋").repeated(99).toUtf8());
        QTest::newRow("empty") << QByteArray();
    }

    void foldsNeverSplitACharacter()
    {
        QFETCH(QByteArray, line);
        QByteArray folded = QByteArray::fromStdString(foldedLine(line.toStdString()));
        QVERIFY(folded.endsWith("\r\n"));
        folded.chop(2);
        for (const QByteArray& piece : folded.split('\n')) {
            const QByteArray bare = piece.endsWith('\r') ? piece.chopped(1) : piece;
            QVERIFY(bare.size() <= 75);
            QCOMPARE(QString::fromUtf8(bare).toUtf8(), bare);
        }
        QCOMPARE(folded.size() > line.size(), line.size() > 75);
        QCOMPARE(folded.replace("\r\n ", ""), line);
    }

    void textIsEscaped_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("escaped");
        QTest::newRow("backslash first") << QByteArray("\\n") << QByteArray("\\\\n");
        QTest::newRow("line breaks of three kinds")
            << QByteArray("a\nb\r\nc\r4") << QByteArray("a\\nb\\nc\\n4");
        QTest::newRow("colon and quote stay") << QByteArray("a: \"b\"") << QByteArray("a: \"b\"");
        QTest::newRow("control characters go") << QByteArray("a\x01\x7f"
                                                             "b\tc")
                                               << QByteArray("ab\tc");
        QTest::newRow("no property can be smuggled in")
            << QByteArray("x\r\nATTACH:y") << QByteArray("x\\nATTACH:y");
    }

    void textIsEscaped()
    {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, escaped);
        QCOMPARE(QByteArray::fromStdString(escapedCalendarText(text.toStdString())), escaped);
    }

    void faultyEventsAreRefused_data()
    {
        QTest::addColumn<int>("fault");
        QTest::addColumn<int>("code");
        QTest::newRow("no uid") << 0 << static_cast<int>(ErrorCode::Empty);
        QTest::newRow("whole days backwards") << 1 << static_cast<int>(ErrorCode::OutOfRange);
        QTest::newRow("ends before it starts") << 2 << static_cast<int>(ErrorCode::OutOfRange);
        QTest::newRow("year of five digits") << 3 << static_cast<int>(ErrorCode::OutOfRange);
    }

    void faultyEventsAreRefused()
    {
        QFETCH(int, fault);
        QFETCH(int, code);
        CalendarEvent event = allDay();
        if (fault == 0) event.uid.clear();
        if (fault == 1) event.when = WholeDays{dayOf(2026, 7, 14), dayOf(2026, 7, 13)};
        if (fault == 2) event.when = WallSpan{dayOf(2026, 7, 14) + 2h, dayOf(2026, 7, 14) + 1h};
        if (fault == 3) event.when = WholeDays{dayOf(9999, 12, 31), dayOf(9999, 12, 31)};
        const auto written = writeCalendar({"", stamp, {event}});
        QVERIFY(!written);
        QCOMPARE(static_cast<int>(written.error().code), code);
    }
};

QTEST_APPLESS_MAIN(ICalendarTest)
#include "icalendar_test.moc"
