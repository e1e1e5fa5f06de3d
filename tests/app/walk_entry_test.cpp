// SPDX-License-Identifier: MIT
#include <QTest>

#include "app/walk/walk_entry.h"

using namespace duskrow::app;

namespace {

FrameEntry withLarvae(std::int64_t small, std::int64_t large)
{
    FrameEntry entry;
    entry.bySize = {small, large};
    return entry;
}

WalkEntry tapped(int taps)
{
    WalkEntry entry(2);
    for (int tap = 1; tap <= taps; ++tap) entry.change(withLarvae(0, tap));
    return entry;
}

int undone(WalkEntry& entry)
{
    int steps = 0;
    for (; entry.canUndo(); ++steps) entry.undo();
    return steps;
}

} // namespace

class WalkEntryTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyTapIsAStep()
    {
        WalkEntry entry = tapped(3);
        entry.undo();
        QCOMPARE(entry.now().larvae(), 2);
        QCOMPARE(undone(entry), 2);
        QVERIFY(entry.isUntouched());
        entry.undo();
        QCOMPARE(entry.now().larvae(), 0);
    }

    // Of a very full frame the first taps can no longer be taken back; the larvae they stand for are not
    // lost.
    void aFrameOfManyTapsStillCountsAsBegun_data()
    {
        QTest::addColumn<int>("taps");
        QTest::addColumn<int>("left");
        QTest::newRow("as many as are remembered") << 60 << 0;
        QTest::newRow("one more") << 61 << 1;
        QTest::newRow("many more") << 100 << 40;
    }

    void aFrameOfManyTapsStillCountsAsBegun()
    {
        QFETCH(int, taps);
        QFETCH(int, left);
        WalkEntry entry = tapped(taps);
        QCOMPARE(undone(entry), 60);
        QCOMPARE(entry.now().larvae(), left);
        QCOMPARE(entry.isUntouched(), left == 0);
        WalkEntry again(2);
        QVERIFY(again.read(entry.written()));
        QCOMPARE(again.now(), entry.now());
        QCOMPARE(again.isUntouched(), left == 0);
    }

    void whatChangesNothingIsNoStep()
    {
        WalkEntry entry(2);
        QVERIFY(!entry.change(withLarvae(0, 0)));
        QVERIFY(!entry.canUndo());
    }

    void whatWasWrittenIsReadWithItsSteps()
    {
        WalkEntry entry(2);
        FrameEntry full = withLarvae(3, 1);
        entry.change(full);
        full.sick = 2;
        full.podsSeen = 50;
        full.podsDamaged = 0;
        full.remark = QStringLiteral("\"slough\"\nwet");
        full.isSameStop = true;
        entry.change(full);
        WalkEntry again(2);
        QVERIFY(again.read(entry.written()));
        QCOMPARE(again.now(), full);
        again.undo();
        QCOMPARE(again.now(), withLarvae(3, 1));
        QVERIFY2(!again.now().podsDamaged, "not looked at is not none");
    }

    void anotherProtocolsSizesAreNotTakenUp()
    {
        WalkEntry three(3);
        QVERIFY(!three.read(tapped(2).written()));
        QVERIFY(three.isUntouched());
    }
};

QTEST_GUILESS_MAIN(WalkEntryTest)
#include "walk_entry_test.moc"
