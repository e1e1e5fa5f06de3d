// SPDX-License-Identifier: MIT
#include <QTest>

#include "store/fault_disk.h"
#include "store/import_ledger.h"
#include "store/stream_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

namespace {

// New visits under the numbers from `first` on, sealed.
SealedBatch::Part partOf(
    const Store& store, std::int64_t first, std::span<const Visit> visits, const SegmentId& before)
{
    SealedBatch::Part part;
    std::vector<std::string> lines;
    for (const Visit& visit : visits) {
        Edit edit = creation(visit, idOf(4));
        Change change{.programme = store.programme(),
            .ref = {store.stream(), first + static_cast<std::int64_t>(lines.size())},
            .author = idOf(2),
            .kind = edit.kind,
            .record = edit.record,
            .site = edit.site,
            .at = instantFromMs(1'783'980'000'000),
            .offset = {},
            .fields = {},
            .saw = {}};
        for (const auto& [field, value] : edit.fields) change.fields[field] = {value, {}};
        lines.push_back(canonicalJson(change));
        part.changes.push_back(std::move(change));
    }
    part.row = segmentOf(store.stream(), first, lines, before).row;
    return part;
}

std::vector<Visit> visitsFrom(std::uint32_t number, std::uint32_t count)
{
    std::vector<Visit> visits;
    for (std::uint32_t i = 0; i < count; ++i) visits.push_back(visitOf(number + i, i));
    return visits;
}

} // namespace

// What is sealed: rows of the tail, once, and new records before they were rows.
class SealedBatchTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Two threads may see the same tail: who comes second does nothing.
    void whatIsSealedAlreadyIsNotSealedAgain()
    {
        const StoreScene scene;
        const auto store = scene.open();
        for (const std::uint32_t number : {1U, 2U, 3U})
            QVERIFY(store->keepNow(batchOf(visitOf(number, number))).has_value());
        const auto reader = store->reader();
        const auto tail = unsealedTail(**reader, store->stream(), 100);
        const IncomingSegment all = segmentOf(store->stream(), 1, tail->lines, {});
        const IncomingSegment part =
            segmentOf(store->stream(), 1, {tail->lines.begin(), tail->lines.begin() + 2}, {});
        for (const IncomingSegment* one : {&all, &all, &part}) QVERIFY(store->sealNow(one->row).has_value());
        QCOMPARE(segmentRows(**reader)->size(), std::size_t{1});
        QCOMPARE(*(*reader)->countOfChanges(), std::int64_t{3});
        QVERIFY(isSound(scene));
    }

    void onlyNewRecordsAreKeptSealed_data()
    {
        QTest::addColumn<std::int64_t>("first");
        QTest::addColumn<std::uint32_t>("number");
        QTest::addColumn<bool>("isTwice");
        QTest::addColumn<int>("as");
        const auto row = [](const char* name, std::int64_t first, std::uint32_t number, bool isTwice,
                             SealedAs as) {
            QTest::newRow(name) << first << number << isTwice << static_cast<int>(as);
        };
        row("new", 2, 5, false, SealedAs::Kept);
        row("a number that is taken", 1, 5, false, SealedAs::Overtaken);
        row("a number too far", 3, 5, false, SealedAs::Overtaken);
        row("a record that is there", 2, 1, false, SealedAs::NotNew);
        row("one record twice", 2, 5, true, SealedAs::NotNew);
    }
    void onlyNewRecordsAreKeptSealed()
    {
        QFETCH(std::int64_t, first);
        QFETCH(std::uint32_t, number);
        QFETCH(bool, isTwice);
        QFETCH(int, as);
        const StoreScene scene;
        const auto store = scene.open();
        QVERIFY(store->keepNow(batchOf(visitOf(1, 1))).has_value());
        const SegmentRow before = sealOwn(*store);
        std::vector<Visit> visits = visitsFrom(number, 2);
        if (isTwice) visits.back().id = visits.front().id;
        const auto batch = std::make_shared<SealedBatch>();
        batch->parts.push_back(partOf(*store, first, visits, before.id));
        const auto kept = store->keepSealed(batch).get();
        QCOMPARE(static_cast<int>(kept.value()), as);
        const bool isKept = *kept == SealedAs::Kept;
        QCOMPARE(*(*store->reader())->countOfChanges(), isKept ? std::int64_t{3} : std::int64_t{1});
        QVERIFY(store->keepNow(batchOf(visitOf(20, 2))).has_value());
        QCOMPARE((*store->reader())->changesOf(idOf(20))->front().ref.seq,
            isKept ? std::int64_t{4} : std::int64_t{2});
        QVERIFY(isSound(scene));
    }

    void allOfABatchOrNothing_data()
    {
        QTest::addColumn<int>("fault");
        QTest::newRow("disk fails once") << static_cast<int>(Fault::Once);
        QTest::newRow("disk fails for good") << static_cast<int>(Fault::ForGood);
        QTest::newRow("power is cut") << static_cast<int>(Fault::PowerCut);
    }
    // Operation after operation on the disk fails, until the batch is kept without a fault.
    void allOfABatchOrNothing()
    {
        QFETCH(int, fault);
        bool passed = false;
        long at = 0;
        for (; !passed && !QTest::currentTestFailed(); ++at)
            passed = !failsAndRecovers(at, static_cast<Fault>(fault));
        if (QTest::currentTestFailed()) qWarning("at operation %ld", at - 1);
        QVERIFY(at > 8);
    }

private:
    // Returns whether a fault came.
    static bool failsAndRecovers(long failAt, Fault fault)
    {
        constexpr std::uint32_t many = 40; // in each of two parts: some pages of every table
        const StoreScene scene;
        FaultDisk& disk = FaultDisk::instance();
        scene.open().reset();
        OpenHow how = scene.how();
        how.vfs = FaultDisk::name;
        bool isKept = false;
        {
            const auto store = Store::open(scene.path(), how);
            if (!store) qFatal("the store does not open");
            const auto batch = std::make_shared<SealedBatch>();
            batch->import = "an import";
            batch->parts.push_back(partOf(**store, 1, visitsFrom(1, many), {}));
            batch->parts.push_back(
                partOf(**store, many + 1, visitsFrom(many + 1, many), batch->parts.front().row.id));
            disk.arm(failAt, fault);
            const auto kept = (*store)->keepSealed(batch).get();
            isKept = kept && *kept == SealedAs::Kept;
            if (!disk.hasFailed() && !isKept) qWarning("no fault came, and yet it was not kept");
        }
        const bool failed = disk.disarm();
        std::mt19937 random(static_cast<unsigned>(failAt));
        if (fault == Fault::PowerCut) disk.losePower(random);
        recovers(scene, isKept, 2 * many);
        return failed;
    }

    static void recovers(const StoreScene& scene, bool wasKept, std::int64_t all)
    {
        const auto store = scene.open();
        QVERIFY(!store->hasNewStream());
        const auto reader = store->reader();
        const std::int64_t there = *(*reader)->countOfChanges();
        QVERIFY(there == all || (there == 0 && !wasKept));
        QCOMPARE((*reader)->select<Visit>({})->size(), static_cast<std::size_t>(there));
        QCOMPARE(rangesOfImport(**reader, "an import")->size(), there == 0 ? std::size_t{0} : std::size_t{1});
        QVERIFY(store->keepNow(batchOf(visitOf(500, 1))).has_value());
        QVERIFY(isSound(scene));
    }
};

QTEST_GUILESS_MAIN(SealedBatchTest)
#include "sealed_batch_test.moc"
