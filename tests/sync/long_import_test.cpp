// SPDX-License-Identifier: MIT
#include <QFile>
#include <QTest>

#include "store/check.h"
#include "store/stream_key.h"
#include "sync/exchange/segments_of_store.h"
#include "sync/import_scene.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

constexpr int manyTraps = 400; // more than one commit of what they come to

// Every own segment opened as another device would: how many changes they hold. -1 when one is not whole, or
// they do not follow each other.
std::int64_t changesInSegments(const ImportScene& scene)
{
    std::int64_t last = 0;
    sync::Hash before{};
    const auto rows = store::segmentRows(*scene.reader);
    for (const store::SegmentRow& row : *rows) {
        const auto bytes = sync::bytesOf(*scene.reader, row.id);
        auto head = sync::readHead(bytes->value());
        if (!head || head->header.first != last + 1 || head->header.previous != before) return -1;
        before = head->id;
        const auto segment = sync::openSegment(std::move(*head));
        if (!segment) return -1;
        last += static_cast<std::int64_t>(segment->lines.size());
        if (segment->head.header.last != last) return -1;
    }
    return last;
}

std::int64_t inTail(const ImportScene& scene)
{
    return static_cast<std::int64_t>(
        store::unsealedTail(*scene.reader, scene.store->stream(), 100'000)->lines.size());
}

std::string recordsOf(const StoreScene& scene)
{
    SQLite::Database database = scene.raw();
    return store::CurrentTables(database).dump();
}

bool isSound(const StoreScene& scene)
{
    const auto report = store::checkStore(scene.path());
    return report && report->isSound();
}

std::int64_t sizeOf(const ImportPlan& plan)
{
    return static_cast<std::int64_t>(plan.size());
}

} // namespace

class LongImportTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void itGoesIntoSegmentsThatOthersCanOpen()
    {
        const ImportScene scene;
        QVERIFY(scene.store->keepNow(batchOf(visitOf(1, 1))).has_value()); // is sealed before it
        const ImportPlan plan = scene.plan(manyTraps);
        QCOMPARE(scene.run(plan).kept, plan.size());
        QCOMPARE(inTail(scene), std::int64_t{0});
        QCOMPARE(changesInSegments(scene), sizeOf(plan) + 1);
        QCOMPARE(scene.changes(), sizeOf(plan) + 1);
        QVERIFY(isSound(scene));
    }

    void whatIsNotLongStaysInTheTail()
    {
        const ImportScene scene;
        const ImportPlan plan = scene.plan(20);
        QVERIFY(sizeOf(plan) < sync::fullTail);
        static_cast<void>(scene.run(plan));
        QCOMPARE(inTail(scene), sizeOf(plan));
    }

    // The records are those that the same edits make one after the other.
    void itComesToTheSameRecords()
    {
        const ImportScene scene;
        const ImportScene other;
        ImportTerms terms{scene.store->programme(), "bertha-armyworm", "3", "green-bucket"};
        const ImportPlan plan = planImport(rowsOf(150), {}, {}, terms);
        static_cast<void>(scene.run(plan));
        std::vector<Edit> edits;
        for (std::size_t at = 0; at < plan.size(); ++at) edits.push_back(plan.edit(at));
        QVERIFY(other.store->keepNow(batchOf(std::move(edits))).has_value());
        QCOMPARE(changesInSegments(scene), sizeOf(plan));
        QCOMPARE(changesInSegments(other), std::int64_t{0});
        QCOMPARE(recordsOf(scene), recordsOf(other));
    }

    // Somebody goes on writing: the numbers that were made ready are taken, and the import makes others.
    void whatIsKeptMeanwhileStands()
    {
        const ImportScene scene;
        const ImportPlan plan = scene.plan(manyTraps);
        std::uint32_t visits = 0;
        static_cast<void>(scene.run(plan, [&](std::int64_t, std::int64_t) {
            ++visits;
            return scene.store->keepNow(batchOf(visitOf(visits, visits))).has_value();
        }));
        QVERIFY(visits > 1);
        QVERIFY(inTail(scene) > visits); // a batch that was overtaken went the ordinary way
        QCOMPARE(scene.changes(), sizeOf(plan) + visits);
        QCOMPARE(scene.visits().size(), std::size_t{10 * manyTraps} + visits);
        QVERIFY(isSound(scene));
        QVERIFY(sync::sealTail(*scene.store, *scene.reader).has_value());
        QCOMPARE(changesInSegments(scene), sizeOf(plan) + visits);
        QVERIFY(isSound(scene));
    }

    // A plan that was made before others brought the same: nothing is made twice.
    void whatCameMeanwhileIsNotMadeTwice()
    {
        const ImportScene scene;
        const ImportPlan before = scene.plan(manyTraps);
        static_cast<void>(scene.run(scene.plan(manyTraps / 2)));
        QCOMPARE(scene.run(before).kept, before.size());
        QCOMPARE(scene.visits().size(), std::size_t{10 * manyTraps});
        QVERIFY(isSound(scene));
        const auto undo = store::planUndo(*scene.reader, noted);
        QCOMPARE(undo->withdrawn.at("visit"), std::size_t{10 * manyTraps});
    }

    void aValueThatMayNotBeKeptIsRefusedAsEver()
    {
        const ImportScene scene;
        ImportPlan plan = scene.plan(manyTraps);
        plan.rows.at(plan.visits.back().row).remark = std::string(50'000, 'x');
        const auto run = sync::runImport(*scene.store, plan, noted, by(), {});
        QVERIFY(!run && run.error().code == ErrorCode::TooLong);
        QVERIFY(scene.changes() > 0 && scene.changes() < sizeOf(plan)); // what was kept before it stays
        QVERIFY(isSound(scene));
    }

    // Put back from before: the numbers of the import may have left the device.
    void whoIsPutBackFromBeforeItBeginsANewStream_data()
    {
        QTest::addColumn<bool>("wasCut");
        QTest::newRow("noted by the import") << false;
        QTest::newRow("noted before an exchange, since the import was cut before that") << true;
    }
    void whoIsPutBackFromBeforeItBeginsANewStream()
    {
        QFETCH(bool, wasCut);
        const StoreScene scene;
        const QString file = QString::fromStdString(scene.path());
        const QString copy = QString::fromStdString(scene.path("copy"));
        QString key;
        {
            const auto store = scene.open();
            key = QString::fromStdString(store::keyFile(scene.path("keys"), store->programme()));
        }
        QVERIFY(QFile::copy(file, copy));
        {
            const auto store = scene.open();
            const auto plan = planOf(*store, **store->reader(), 150);
            QVERIFY(sync::runImport(*store, plan, noted, by(), {}).has_value());
        }
        if (wasCut) QVERIFY(noteNothing(key));
        {
            const auto store = scene.open();
            QVERIFY(!store->hasNewStream());
            if (wasCut) QVERIFY(sync::sealTail(*store, **store->reader()).has_value());
        }
        QVERIFY(QFile::remove(file) && QFile::copy(copy, file));
        QVERIFY(scene.open()->hasNewStream());
    }

private:
    // The third line of a key's file says how far its numbers may have left the device.
    static bool noteNothing(const QString& path)
    {
        QFile key(path);
        if (!key.open(QIODevice::ReadWrite)) return false;
        QList<QByteArray> lines = key.readAll().split('\n');
        if (lines.size() < 3 || lines[2] == "0") return false;
        lines[2] = "0";
        return key.resize(0) && key.seek(0) && key.write(lines.join('\n')) > 0;
    }
};

QTEST_GUILESS_MAIN(LongImportTest)
#include "long_import_test.moc"
