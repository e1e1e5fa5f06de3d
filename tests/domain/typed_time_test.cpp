// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/typed_time.h"

using namespace duskrow::domain;

class TypedTimeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void accepted_data()
    {
        QTest::addColumn<QByteArray>("typed");
        QTest::addColumn<int>("minutes");
        const auto row = [](const char* name, const char* typed, int hour, int minute) {
            QTest::newRow(name) << QByteArray(typed) << hour * 60 + minute;
        };
        row("with a colon", "18:00", 18, 0);
        row("one digit of hours", "7:05", 7, 5);
        row("with a point", "18.30", 18, 30);
        row("as in French", "18 h 30", 18, 30);
        row("an hour as in French", "18h", 18, 0);
        row("four digits", "1830", 18, 30);
        row("three digits", "730", 7, 30);
        row("an hour", "18", 18, 0);
        row("blanks around", "  18:00 ", 18, 0);
        row("the afternoon", "6 pm", 18, 0);
        row("with points and capitals", "6:30 P.M.", 18, 30);
        row("as printed, a narrow blank between", "6:30\u202Fp.m.", 18, 30);
        row("the morning", "6:30 am", 6, 30);
        row("noon", "12 pm", 12, 0);
        row("midnight", "12 am", 0, 0);
        row("the first minute of the day", "0:00", 0, 0);
        row("the last minute of the day", "23:59", 23, 59);
    }

    void accepted()
    {
        QFETCH(QByteArray, typed);
        QFETCH(int, minutes);
        const auto time = parseTimeOfDay(typed.toStdString());
        QVERIFY(time.has_value());
        QCOMPARE(static_cast<int>(time->count()), minutes);
    }

    void refused_data()
    {
        QTest::addColumn<QByteArray>("typed");
        for (const char* typed : {"", " ", "soon", "24:00", "18:60", "18:", "18:0", "18:5x", "-1:00", ":30",
                 "18:00:00", "13 pm", "0 am", "pm", "18;00", "99999", "1８:00", "h", "18.5",
                 "18:00                                        "})
            QTest::addRow("“%s”", typed) << QByteArray(typed);
    }

    void refused()
    {
        QFETCH(QByteArray, typed);
        const auto time = parseTimeOfDay(typed.toStdString());
        QVERIFY(!time);
        QCOMPARE(time.error().code, ErrorCode::NotATime);
        QCOMPARE(time.error().args, std::vector{typed.toStdString()});
    }
};

QTEST_APPLESS_MAIN(TypedTimeTest)
#include "typed_time_test.moc"
