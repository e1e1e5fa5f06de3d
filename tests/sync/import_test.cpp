// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/import_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

class ImportTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everythingStandsInTheStore()
    {
        const ImportScene scene;
        const ImportPlan plan = scene.plan(30);
        QCOMPARE(scene.run(plan).kept, plan.size());
        QCOMPARE(scene.visits().size(), std::size_t{300});
        const auto season = seasonOfYear(*scene.reader, 2019);
        QCOMPARE(trapsOf(*scene.reader, (*season)->id)->size(), std::size_t{30});
        QCOMPARE(protocolsInUse(*scene.reader, (*season)->id)->front().pest, std::string("bertha-armyworm"));
        QCOMPARE(scene.changes(), static_cast<std::int64_t>(plan.size()));
        QCOMPARE(importsNoted(*scene.reader)->front().file, std::string("counts.csv"));
    }

    void theSameTwiceAddsNothing()
    {
        const ImportScene scene;
        static_cast<void>(scene.run(scene.plan(30)));
        const auto before = scene.changes();
        const ImportPlan again = scene.plan(30);
        QCOMPARE(again.size(), std::size_t{0});
        QCOMPARE(again.alreadyThere, std::size_t{300});
        static_cast<void>(scene.run(again));
        QCOMPARE(scene.changes(), before);
    }

    // Two who take the same table in make the same records: nothing differs when they meet.
    void twoPeopleMeetInTheSameRecords()
    {
        const ImportScene one;
        const ImportScene other;
        const KnownRecords nothing;
        const ImportTerms terms{one.store->programme(), "bertha-armyworm", "3", "green-bucket"};
        const ImportPlan first = planImport(rowsOf(3), {}, nothing, terms);
        const ImportPlan second = planImport(rowsOf(3), {}, nothing, terms);
        QCOMPARE(first.size(), second.size());
        for (std::size_t i = 0; i < first.size(); ++i) {
            QCOMPARE(first.edit(i).record, second.edit(i).record);
            QVERIFY(first.edit(i).fields == second.edit(i).fields);
        }
    }

    void aStopLeavesWhatWasKeptAndTheNextRunAddsTheRest()
    {
        const ImportScene scene;
        const ImportPlan plan = scene.plan(400);
        std::int64_t told = 0;
        const ImportRun run = scene.run(plan, [&](std::int64_t done, std::int64_t all) {
            told = done;
            return all < 0;
        });
        QVERIFY(run.isStopped);
        QCOMPARE(static_cast<std::int64_t>(run.kept), told);
        QVERIFY(run.kept > 0 && run.kept < plan.size());
        QCOMPARE(scene.changes(), told);
        const ImportPlan rest = scene.plan(400);
        QCOMPARE(rest.size(), plan.size() - run.kept);
        QVERIFY(!scene.run(rest).isStopped);
        QCOMPARE(scene.plan(400).size(), std::size_t{0});
        QCOMPARE(scene.visits().size(), std::size_t{4'000});
    }

    void undoingTakesBackAllOfIt_data()
    {
        QTest::addColumn<int>("traps");
        QTest::newRow("from rows") << 20;
        QTest::newRow("from segments") << 150;
    }
    void undoingTakesBackAllOfIt()
    {
        QFETCH(int, traps);
        const ImportScene scene;
        static_cast<void>(scene.run(scene.plan(traps)));
        const auto before = scene.changes();
        const auto undo = planUndo(*scene.reader, noted);
        QVERIFY(undo.has_value());
        QVERIFY(undo->staying.empty());
        QCOMPARE(undo->withdrawn.at("visit"), static_cast<std::size_t>(10 * traps));
        QVERIFY(runUndo(*scene.store, *undo, noted, by(), {}).has_value());
        QVERIFY(scene.visits().empty());
        QVERIFY(seasons(*scene.reader)->empty());
        QVERIFY(districts(*scene.reader)->empty());
        QCOMPARE(scene.changes(), 2 * before); // all stays in the log
        QVERIFY(planUndo(*scene.reader, noted)->edits.empty()); // a second undoing has nothing to do
    }

    void whatWasUndoneComesBackWithTheSameFile_data() { undoingTakesBackAllOfIt_data(); }
    void whatWasUndoneComesBackWithTheSameFile()
    {
        QFETCH(int, traps);
        const auto counts = static_cast<std::size_t>(10 * traps);
        const ImportScene scene;
        static_cast<void>(scene.run(scene.plan(traps)));
        QVERIFY(runUndo(*scene.store, *planUndo(*scene.reader, noted), noted, by(), {}).has_value());
        static_cast<void>(scene.run(scene.plan(traps)));
        QCOMPARE(scene.visits().size(), counts);
        QCOMPARE(scene.plan(traps).size(), std::size_t{0});
        QCOMPARE(planUndo(*scene.reader, noted)->withdrawn.at("visit"), counts);
    }

    // What somebody edited or added to meanwhile stays, and is named.
    void whatWasChangedSinceStays()
    {
        const ImportScene scene;
        static_cast<void>(scene.run(scene.plan(3)));
        const Visit before = scene.visits().front();
        Visit after = before;
        after.pest = Moths{99};
        QVERIFY(scene.store->keepNow(batchOf(std::vector{correction(before, after, idOf(4))})).has_value());
        const auto season = seasonOfYear(*scene.reader, 2019);
        const auto traps = trapsOf(*scene.reader, (*season)->id);
        const Trap other = traps->at(0).id == before.trap ? traps->at(1) : traps->at(0);
        Visit own = visitOf(77, 5);
        own.trap = other.id;
        QVERIFY(scene.store->keepNow(batchOf(std::vector{creation(own, other.site)})).has_value());

        const auto undo = planUndo(*scene.reader, noted);
        std::map<Uuid, StayReason> staying;
        for (const StayingRecord& one : undo->staying) staying[one.record] = one.reason;
        QCOMPARE(undo->withdrawn.at("visit"), std::size_t{29});
        QCOMPARE(undo->withdrawn.at("trap"), std::size_t{1});
        QVERIFY(staying.at(before.id) == StayReason::Changed);
        QVERIFY(staying.at(before.trap) == StayReason::InUse);
        QVERIFY(staying.at(other.id) == StayReason::InUse);
        QVERIFY(staying.at((*season)->id) == StayReason::InUse);
        QVERIFY(runUndo(*scene.store, *undo, noted, by(), {}).has_value());
        QCOMPARE(scene.visits().size(), std::size_t{2});
    }

    void anUnknownImportIsSaid()
    {
        const ImportScene scene;
        const auto undo = planUndo(*scene.reader, noted);
        QVERIFY(!undo && undo.error().code == ErrorCode::NothingToUndo);
    }
};

QTEST_GUILESS_MAIN(ImportTest)
#include "import_test.moc"
