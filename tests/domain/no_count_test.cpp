// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/no_count.h"

using namespace duskrow::domain;

// What a reason lets one expect of the trap: common practice, no source.
class NoCountTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aReasonSaysWhatToExpect_data()
    {
        QTest::addColumn<NoCountReason>("reason");
        QTest::addColumn<bool>("emptied");
        QTest::addColumn<std::optional<TrapState>>("state");
        QTest::addColumn<std::optional<bool>>("atLeast");
        const auto row = [](const char* claim, NoCountReason reason, bool emptied,
                             std::optional<TrapState> state, std::optional<bool> atLeast) {
            QTest::newRow(claim) << reason << emptied << state << atLeast;
        };
        row("a fallen trap lost its catch", NoCountReason::Fallen, true, TrapState::Fallen, true);
        row("a missing trap was not emptied", NoCountReason::Missing, false, TrapState::Missing, true);
        row("a flooded bucket is tipped out", NoCountReason::Flooded, true, TrapState::Flooded, true);
        row("a spoiled catch is thrown out of a sound trap", NoCountReason::Spoiled, true, TrapState::Fine,
            std::nullopt);
        row("a trap nobody got to goes on catching, its state unknown", NoCountReason::Access, false,
            std::nullopt, std::nullopt);
        row("another reason says nothing against the trap", NoCountReason::Other, false, TrapState::Fine,
            std::nullopt);
    }

    void aReasonSaysWhatToExpect()
    {
        QFETCH(const NoCountReason, reason);
        Visit visit;
        visit.outcome = Outcome::Counted;
        visit.pest = Moths{40};
        visit.notIt = Moths{2};
        visit.unsure = Moths{1};
        visit.bees = Bees{3};
        visit.countMethod = CountMethod::Volume;
        visit.partCounts = "20";
        visit.partAmounts = "50000";
        visit.wholeAmount = 100'000;
        visit.pestLow = Moths{30};
        visit.pestHigh = Moths{50};
        visit.remark = "rain";
        sayCouldNotCount(visit, reason);
        QCOMPARE(visit.outcome, std::optional(Outcome::CouldNotCount));
        QCOMPARE(visit.reason, std::optional(reason));
        QVERIFY(!visit.pest && !visit.notIt && !visit.unsure && !visit.bees);
        QVERIFY(!visit.countMethod && !visit.wholeAmount && !visit.pestLow && !visit.pestHigh);
        QVERIFY(visit.partCounts.empty() && visit.partAmounts.empty());
        QVERIFY(visit.emptied);
        QTEST(*visit.emptied, "emptied");
        QTEST(visit.state, "state");
        QTEST(visit.atLeast, "atLeast");
        QCOMPARE(visit.remark, std::string("rain"));
    }
};

QTEST_APPLESS_MAIN(NoCountTest)
#include "no_count_test.moc"
