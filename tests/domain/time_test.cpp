// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/base/time.h"
#include "domain/base/uuid.h"

using namespace duskrow::domain;

class TimeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void days_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<bool>("valid");
        QTest::newRow("a day") << QByteArray("2026-07-14") << true;
        QTest::newRow("leap day") << QByteArray("2024-02-29") << true;
        QTest::newRow("no leap day") << QByteArray("2026-02-29") << false;
        QTest::newRow("month 13") << QByteArray("2026-13-01") << false;
        QTest::newRow("letters") << QByteArray("2026-o7-14") << false;
        QTest::newRow("sign") << QByteArray("2026-+7-14") << false;
        QTest::newRow("other order") << QByteArray("14-07-2026") << false;
        QTest::newRow("empty") << QByteArray("") << false;
    }

    void days()
    {
        QFETCH(QByteArray, text);
        QFETCH(bool, valid);
        const auto day = parseDay(text.toStdString());
        QCOMPARE(day.has_value(), valid);
        if (valid) QCOMPARE(QByteArray::fromStdString(formatDay(*day)), text);
    }

    void theLocalDayFollowsTheOffset()
    {
        const auto utc = std::chrono::sys_days{std::chrono::year{2026} / 7 / 15} + std::chrono::hours{2};
        QCOMPARE(formatDay(dayOf(utc, std::chrono::minutes{-360})), std::string("2026-07-14"));
        QCOMPARE(formatDay(dayOf(utc, std::chrono::minutes{0})), std::string("2026-07-15"));
    }

    // RFC 9562, appendix A.6: the fields of its version 7 example.
    void timeIdsFollowTheStandard()
    {
        const RandomBytes10 random{0x0C, 0xC3, 0x18, 0xC4, 0xDC, 0x0C, 0x0C, 0x07, 0x39, 0x8F};
        const Uuid id = uuidFromTime(instantFromMs(0x017F22E279B0), random);
        QCOMPARE(formatUuid(id), std::string("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"));
        QCOMPARE(*parseUuid(formatUuid(id)) == id, true);
    }

    void namedIdsAreTheSameEverywhereAndPartsDoNotRunTogether()
    {
        const std::vector<std::string> one{"p", "season", "2026"};
        const std::vector<std::string> same{"p", "season", "2026"};
        const std::vector<std::string> other{"p", "seaso", "n2026"};
        QVERIFY(uuidFromName(one) == uuidFromName(same));
        QVERIFY(uuidFromName(one) != uuidFromName(other));
    }
};

QTEST_APPLESS_MAIN(TimeTest)
#include "time_test.moc"
