// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/rates.h"

using namespace duskrow::domain;

class RatesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // The edges of the corn earworm spray table of the University of Maryland extension, which prints
    // the same catch per day, per five days and per week.
    void theSameCatchInThreeWords_data()
    {
        QTest::addColumn<double>("night");
        QTest::addColumn<double>("fiveNights");
        QTest::addColumn<double>("week");
        QTest::newRow("0.2") << 0.2 << 1.0 << 1.4;
        QTest::newRow("0.5") << 0.5 << 2.5 << 3.5;
        QTest::newRow("1") << 1.0 << 5.0 << 7.0;
        QTest::newRow("13") << 13.0 << 65.0 << 91.0;
    }

    void theSameCatchInThreeWords()
    {
        QFETCH(double, night);
        QFETCH(double, fiveNights);
        QFETCH(double, week);
        // As far as a double goes: 7 times 0.2 is 1.4 only to the last bit.
        QVERIFY(std::abs(perFiveNights(MothsPerNight{night}).value() - fiveNights) < 1e-14);
        QVERIFY(std::abs(perWeek(MothsPerNight{night}).value() - week) < 1e-14);
        QCOMPARE(perNight(MothsPerFiveNights{fiveNights}).value(), night);
        QCOMPARE(perNight(MothsPerWeek{week}).value(), night);
    }

    void perNightOfACatch_data()
    {
        QTest::addColumn<qint64>("caught");
        QTest::addColumn<qint64>("nights");
        QTest::addColumn<double>("rate"); // below zero: none
        QTest::newRow("a week") << 47LL << 7LL << 47.0 / 7.0;
        QTest::newRow("none caught") << 0LL << 7LL << 0.0;
        QTest::newRow("a missed week") << 70LL << 14LL << 5.0;
        QTest::newRow("no night") << 12LL << 0LL << -1.0;
        QTest::newRow("nights backwards") << 12LL << -3LL << -1.0;
        QTest::newRow("a thousand million") << 1'000'000'000LL << 1LL << 1e9;
    }

    void perNightOfACatch()
    {
        QFETCH(qint64, caught);
        QFETCH(qint64, nights);
        QFETCH(double, rate);
        const auto found = ratePerNight(Moths{caught}, Nights{nights});
        QCOMPARE(found.has_value(), rate >= 0.0);
        if (found) QCOMPARE(found->value(), rate);
    }
};

QTEST_APPLESS_MAIN(RatesTest)
#include "rates_test.moc"
