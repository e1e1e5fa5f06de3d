// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/supplies.h"

using namespace duskrow::domain;
using std::chrono::days;

class SuppliesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void timesPutIn_data()
    {
        QTest::addColumn<int>("life"); // -1: not known
        QTest::addColumn<int>("season");
        QTest::addColumn<int>("times");
        QTest::newRow("one serves exactly as long") << 56 << 56 << 1;
        QTest::newRow("one day short is one more") << 55 << 56 << 2;
        QTest::newRow("six weeks in eight") << 42 << 56 << 2;
        QTest::newRow("four weeks in eight") << 28 << 56 << 2;
        QTest::newRow("a week") << 7 << 56 << 8;
        QTest::newRow("longer than the season") << 90 << 56 << 1;
        QTest::newRow("nobody knows the life") << -1 << 56 << -1;
        QTest::newRow("nobody knows the season") << 42 << -1 << -1;
        QTest::newRow("no life at all is none") << 0 << 56 << -1;
    }
    void timesPutIn()
    {
        QFETCH(int, life);
        QFETCH(int, season);
        QFETCH(int, times);
        const auto known = [](int count) { return count < 0 ? std::nullopt : std::optional(days{count}); };
        QCOMPARE(duskrow::domain::timesPutIn(known(life), known(season)).value_or(-1), times);
    }

    void forManyTraps()
    {
        const SupplyRules rules{2, days{42}, days{28}, true, days{56}};
        const Supplies supplies = suppliesFor(6, rules);
        QCOMPARE(supplies.lures.value(), std::int64_t{24});
        QCOMPARE(supplies.strips.value(), std::int64_t{12});
        QCOMPARE(suppliesFor(0, rules).lures.value(), std::int64_t{0});
    }

    void whatNobodySaidIsNotOrdered()
    {
        QVERIFY(!suppliesFor(6, {}).lures);
        QVERIFY(!suppliesFor(6, {1, days{42}, days{28}, false, days{56}}).strips);
        QVERIFY(!suppliesFor(6, {std::nullopt, days{42}, {}, false, days{56}}).lures);
    }
};

QTEST_APPLESS_MAIN(SuppliesTest)
#include "supplies_test.moc"
