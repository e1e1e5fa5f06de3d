// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/interval_spread.h"

using namespace duskrow::domain;

namespace {

constexpr std::chrono::weekday sunday = std::chrono::Sunday;
// A Sunday.
constexpr LocalDay july5 = dayOf(2026, 7, 5);

CatchInterval interval(int from, int to, std::int64_t moths)
{
    return {july5 + std::chrono::days{from}, july5 + std::chrono::days{to}, Moths{moths}};
}

} // namespace

class IntervalSpreadTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void shares_data()
    {
        QTest::addColumn<int>("from");
        QTest::addColumn<int>("to");
        QTest::addColumn<qint64>("caught");
        QTest::addColumn<int>("firstWeek"); // days after Sunday 5 July 2026
        QTest::addColumn<QList<int>>("nights");
        QTest::addColumn<QList<double>>("moths");
        QTest::newRow("one week, nothing derived")
            << 0 << 7 << 47LL << 0 << QList<int>{7} << QList<double>{47.0};
        QTest::newRow("within a week") << 1 << 4 << 9LL << 0 << QList<int>{3} << QList<double>{9.0};
        QTest::newRow("counted on the last day: its night is not in it")
            << 0 << 6 << 12LL << 0 << QList<int>{6} << QList<double>{12.0};
        QTest::newRow("Wednesday to Wednesday")
            << 3 << 10 << 70LL << 0 << QList<int>{4, 3} << QList<double>{40.0, 30.0};
        QTest::newRow("a missed week")
            << 0 << 14 << 47LL << 0 << QList<int>{7, 7} << QList<double>{23.5, 23.5};
        QTest::newRow("three weeks") << -2 << 8 << 20LL << -7 << QList<int>{2, 7, 1}
                                     << QList<double>{4.0, 14.0, 2.0};
        QTest::newRow("none caught") << 3 << 10 << 0LL << 0 << QList<int>{4, 3} << QList<double>{0.0, 0.0};
        QTest::newRow("emptied and counted the same day")
            << 2 << 2 << 5LL << 0 << QList<int>{0} << QList<double>{5.0};
        QTest::newRow("days the wrong way round keep the catch")
            << 9 << 2 << 5LL << 0 << QList<int>{0} << QList<double>{5.0};
    }

    void shares()
    {
        QFETCH(int, from);
        QFETCH(int, to);
        QFETCH(qint64, caught);
        QFETCH(int, firstWeek);
        QFETCH(QList<int>, nights);
        QFETCH(QList<double>, moths);
        const auto spread = spreadOverWeeks(interval(from, to, caught), sunday);
        QCOMPARE(spread.size(), static_cast<std::size_t>(nights.size()));
        LocalDay first = july5 + std::chrono::days{firstWeek};
        for (std::size_t i = 0; i < spread.size(); ++i) {
            const auto at = static_cast<qsizetype>(i);
            QCOMPARE(spread[i].week, weekOf(first, sunday));
            QCOMPARE(spread[i].nights.value(), nights[at]);
            QVERIFY(qAbs(spread[i].moths - moths[at]) < 1e-12);
            QCOMPARE(spread[i].isDerived, spread.size() > 1);
            first += std::chrono::days{7};
        }
    }

    // Not nearly: exactly, added from either end.
    void sharesAddUpToTheCatch()
    {
        for (const std::int64_t caught : {1LL, 3LL, 47LL, 997LL, 99'991LL, 999'999'937LL, 1'000'000'000LL}) {
            for (int length = 1; length <= 100; ++length) {
                const auto spread =
                    spreadOverWeeks(interval(length % 7, length % 7 + length, caught), sunday);
                double forwards = 0.0;
                double backwards = 0.0;
                std::int64_t nights = 0;
                for (std::size_t i = 0; i < spread.size(); ++i) {
                    forwards += spread[i].moths;
                    backwards += spread[spread.size() - 1 - i].moths;
                    nights += spread[i].nights.value();
                    QVERIFY(spread[i].moths >= 0.0);
                    const double fair =
                        static_cast<double>(caught) * static_cast<double>(spread[i].nights.value()) / length;
                    QVERIFY(qAbs(spread[i].moths - fair) <= fair * 1e-12);
                }
                QVERIFY(forwards == static_cast<double>(caught));
                QVERIFY(backwards == static_cast<double>(caught));
                QCOMPARE(nights, length);
            }
        }
    }
};

QTEST_APPLESS_MAIN(IntervalSpreadTest)
#include "interval_spread_test.moc"
