// SPDX-License-Identifier: MIT
#include <QTest>

#include "store/stream_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;
using namespace std::string_literals;

namespace {

QString keyFile(const StoreScene& scene, const Uuid& programme)
{
    return QString::fromStdString(scene.path("keys") + "/" + formatUuid(programme) + ".key");
}

QByteArrayList linesOf(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    return file.readAll().trimmed().split('\n');
}

} // namespace

class StreamsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whoMakesAProgrammeIsItsFounder()
    {
        const StoreScene scene;
        const auto store = scene.open();
        QVERIFY(!store->hasNewStream());
        QVERIFY(foundersOf(scene) == std::set{store->stream()});
        const auto reader = store->reader();
        QVERIFY(rosterOf(**reader, store->programme())->isRoot(store->stream()));
    }

    void whoJoinsIsNoFounderHoweverOftenHeOpens()
    {
        const StoreScene scene;
        OpenHow how = scene.how();
        how.founders = {RosterScene::stream("founder")};
        how.programme = RosterScene::programme();
        for (int again = 0; again < 3; ++again) {
            const auto store = Store::open(scene.path(), again == 0 ? how : scene.how());
            QVERIFY(store.has_value());
            keepOne(**store, static_cast<std::uint32_t>(again + 1));
            QVERIFY(foundersOf(scene) == how.founders);
            // A stream begun anew before the others' changes came is none either.
            if (again == 1) QVERIFY(QFile::remove(keyFile(scene, (*store)->programme())));
        }
        QVERIFY(isSound(scene));
    }

    // Put back from a backup: what was handed over since is not written again under other content.
    void aStorePutBackBeginsANewStream_data()
    {
        QTest::addColumn<bool>("wasHandedOver");
        QTest::addColumn<bool>("isAlone");
        QTest::newRow("handed over, alone") << true << true;
        QTest::newRow("handed over, with others") << true << false;
        QTest::newRow("nothing handed over") << false << true;
    }

    void aStorePutBackBeginsANewStream()
    {
        QFETCH(bool, wasHandedOver);
        QFETCH(bool, isAlone);
        const StoreScene scene;
        StreamId first;
        {
            const auto store = scene.open();
            first = store->stream();
            keepOne(*store, 1);
            if (!isAlone) letIn(*store);
        }
        copyFile(scene.path(), scene.path("backup"));
        IncomingSegment later;
        {
            const auto store = scene.open();
            keepOne(*store, 2);
            const auto reader = store->reader();
            const auto tail = unsealedTail(**reader, first, 100);
            later = segmentOf(first, 1, tail->lines);
            if (wasHandedOver) QVERIFY(store->sealNow(later.row).has_value());
        }
        copyFile(scene.path("backup"), scene.path());
        const auto store = scene.open();
        QCOMPARE(store->hasNewStream(), wasHandedOver);
        QCOMPARE(store->stream() == first, !wasHandedOver);
        if (!wasHandedOver) return;
        QCOMPARE(foundersOf(scene).contains(store->stream()), isAlone);
        const auto kept = store->keepNow(batchOf(visitOf(3, 3)));
        // The first change says that it goes on from the old stream.
        QVERIFY(kept->changes.front() == (ChangeRef{store->stream(), 2}));
        // And what had left comes back.
        QVERIFY(store->take(later).get().has_value());
        const auto reader = store->reader();
        QVERIFY(visit(**reader, idOf(2))->has_value());
        QVERIFY(visit(**reader, idOf(3))->has_value()); // the old key vouches for the new stream
        QVERIFY(isSound(scene));
    }

    void aCopyOnAnotherDeviceBeginsANewStream()
    {
        const StoreScene scene;
        StreamId first;
        {
            const auto store = scene.open();
            first = store->stream();
            keepOne(*store, 1);
        }
        OpenHow how = scene.how();
        how.keyFolder = scene.path("other keys");
        const auto store = Store::open(scene.path(), how);
        QVERIFY(store.has_value());
        QVERIFY((*store)->hasNewStream());
        QVERIFY((*store)->stream() != first);
        QVERIFY((foundersOf(scene) == std::set{first, (*store)->stream()}));
        keepOne(**store, 2);
        QVERIFY(isSound(scene));
    }

    // Without its key nobody could sign what stands in no segment: the new stream writes it again.
    void whatNobodyCanSignIsWrittenAgain()
    {
        const StoreScene scene;
        StreamId first;
        {
            const auto store = scene.open();
            first = store->stream();
            keepOne(*store, 1);
            sealOwn(*store);
            keepOne(*store, 2);
            Visit after = visitOf(2, 2);
            after.pest = Moths{7};
            const auto edit = correction(visitOf(2, 2), after, idOf(4));
            QVERIFY(store->keepNow(batchOf(std::vector{edit})).has_value());
        }
        OpenHow how = scene.how();
        how.keyFolder = scene.path("other keys");
        const auto store = Store::open(scene.path(), how);
        QVERIFY(store.has_value());
        const auto reader = (*store)->reader();
        QVERIFY(unsealedTail(**reader, first, 100)->lines.empty());
        const auto tail = unsealedTail(**reader, (*store)->stream(), 100);
        QCOMPARE(tail->first, std::int64_t{1});
        QCOMPARE(tail->lines.size(), std::size_t{2});
        const Change correction = *readCanonicalChange(tail->lines.back());
        const ChangeRef made{(*store)->stream(), 1};
        QVERIFY(correction.fields.at("pest").base == std::vector{made});
        QCOMPARE((*reader)->changesOf(idOf(1))->front().ref.stream == first, true); // sealed: as it was
        SQLite::Database database = scene.raw();
        QCOMPARE(database.execAndGet("SELECT max(pest) FROM now_visit").getInt(), 7);
        QVERIFY(isSound(scene));
    }

    // What needs an ability that this version lacks is passed on and not used: neither when it comes, nor
    // when its turn comes, nor when the tables are made anew.
    void whatNeedsMoreIsNotUsed()
    {
        const StoreScene scene;
        const StreamId other = RosterScene::stream("gus");
        scene.letCount(other);
        const auto store = scene.open();
        std::vector<Change> changes;
        for (std::int64_t number = 1; number <= 4; ++number) {
            Change change;
            change.programme = store->programme();
            change.ref = {other, number};
            change.kind = "visit";
            change.record = idOf(static_cast<std::uint32_t>(700 + number));
            change.fields["pest"].value = number;
            changes.push_back(change);
        }
        std::vector<IncomingSegment> chain = chainOf(changes, {2});
        chain[1].row.header = R"({"needs":["holograms"]})";
        for (IncomingSegment::Line& line : chain[1].lines) line = {};
        QVERIFY(store->take(chain[1]).get()->as == TakenAs::Waits);
        QVERIFY(store->take(chain[0]).get()->as == TakenAs::Used);
        SQLite::Database database = scene.raw();
        QCOMPARE(database.execAndGet("SELECT count(*) FROM now_visit").getInt(), 2);
        const auto report = checkStore(scene.path());
        QVERIFY(report.has_value());
        QVERIFY(report->tablesEqual);
    }

    // Two copies with one key wrote under one stream: who notices begins anew.
    void whoMetItsDoubleBeginsANewStream()
    {
        const StoreScene scene;
        StreamId first;
        {
            const auto store = scene.open();
            first = store->stream();
            keepOne(*store, 1);
            const auto reader = store->reader();
            Change other = *readChange(unsealedTail(**reader, first, 1)->lines.front());
            other.fields["remark"].value = "the double's"s;
            const auto taken = store->take(segmentOf(first, 1, bytesOf({other}))).get();
            QVERIFY(taken.has_value() && taken->isFork);
            QVERIFY(store->stream() == first);
        }
        const auto store = scene.open();
        QVERIFY(store->hasNewStream());
        QVERIFY(store->stream() != first);
        QVERIFY(foundersOf(scene).contains(store->stream()));
        QVERIFY(isSound(scene));
        // What the old stream had not handed over is still to be signed with its key.
        const auto former = store->formerKeys();
        QCOMPARE(former.size(), std::size_t{1});
        QVERIFY(former.front().stream == first);
        const auto reader = store->reader();
        QCOMPARE(unsealedTail(**reader, first, 100)->lines.size(), std::size_t{1});
        const Signature signature = signWith(former.front(), "tail");
        QVERIFY(isSignedBy(former.front().publicKey, "tail", signature));
    }

    // Numbers that came from elsewhere are left out of the next tail, and are no hole in it.
    void aTailAroundNumbersFromElsewhere()
    {
        const StoreScene scene;
        const auto store = scene.open();
        keepOne(*store, 1);
        const auto reader = store->reader();
        Change other = *readChange(unsealedTail(**reader, store->stream(), 1)->lines.front());
        other.fields["remark"].value = "the double's"s;
        Change next = other;
        next.ref.seq = 2;
        QVERIFY(store->take(segmentOf(store->stream(), 1, bytesOf({other, next}))).get().has_value());
        keepOne(*store, 2);
        const auto tail = unsealedTail(**reader, store->stream(), 100);
        QCOMPARE(tail->first, std::int64_t{1});
        QCOMPARE(tail->lines.size(), std::size_t{1});
        sealOwn(*store);
        const auto rest = unsealedTail(**reader, store->stream(), 100);
        QCOMPARE(rest->first, std::int64_t{3});
        QCOMPARE(rest->lines.size(), std::size_t{1});
    }

    void theKeyFileNotesWhatMayHaveLeft()
    {
        const StoreScene scene;
        Uuid programme;
        StreamId first;
        {
            const auto store = scene.open();
            programme = store->programme();
            first = store->stream();
            QCOMPARE(linesOf(keyFile(scene, programme)).value(2), QByteArray("0"));
            keepOne(*store, 1);
            keepOne(*store, 2);
            sealOwn(*store);
        }
        auto lines = linesOf(keyFile(scene, programme));
        QCOMPARE(lines.value(2), QByteArray("2"));
        QVERIFY(!scene.open()->hasNewStream());
        const auto write = [&](const QByteArray& text) {
            QFile file(keyFile(scene, programme));
            QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
            file.write(text);
        };
        write(lines[0] + '\n' + lines[1] + '\n'); // of an older version
        QVERIFY(scene.open()->stream() == first);
        for (const char* bad : {"x", "-1", "2 ", "99999999999999999999"}) {
            write(lines[0] + '\n' + lines[1] + '\n' + bad + '\n');
            const auto opened = Store::open(scene.path(), scene.how());
            QVERIFY2(!opened.has_value() && opened.error().code == ErrorCode::KeyUnreadable, bad);
        }
    }

    // A store of the first version, with a stream before the present one: all who wrote in it founded it.
    void aStoreOfTheFirstVersion()
    {
        const StoreScene scene;
        StreamId own;
        {
            const auto store = scene.open();
            own = store->stream();
            for (std::uint32_t i = 1; i <= 3; ++i) keepOne(*store, i);
        }
        StreamId older{};
        older.front() = 9;
        {
            SQLite::Database raw = scene.raw();
            backToTheFirstVersion(raw);
            SQLite::Statement stream(raw, "INSERT INTO stream (id) VALUES (?)");
            stream.bind(1, older.data(), 16);
            stream.exec();
            Change change = *readChange(raw.execAndGet("SELECT body FROM change WHERE seq=1").getString());
            change.ref = {older, 1};
            change.record = idOf(40);
            SQLite::Statement insert(raw, "INSERT INTO change SELECT local, 1, ?, ? FROM stream WHERE id=?");
            insert.bind(1, change.record.bytes.data(), 16);
            insert.bind(2, canonicalJson(change));
            insert.bind(3, older.data(), 16);
            insert.exec();
            raw.exec("PRAGMA wal_checkpoint(TRUNCATE)");
        }
        const auto before = checkStore(scene.path());
        QVERIFY2(before.has_value(), before ? "" : before.error().detail.c_str());
        QVERIFY(before->isSound());
        QCOMPARE(before->changes, std::int64_t{4});
        const auto store = scene.open();
        QVERIFY(store->stream() == own);
        QVERIFY((foundersOf(scene) == std::set{older, own}));
        const auto reader = store->reader();
        for (const std::uint32_t number : {1U, 2U, 3U, 40U})
            QVERIFY(visit(**reader, idOf(number))->has_value());
        keepOne(*store, 5);
        sealOwn(*store);
        letIn(*store);
        for (const std::uint32_t number : {1U, 5U, 40U}) QVERIFY(visit(**reader, idOf(number))->has_value());
        QVERIFY(isSound(scene));
    }
};

QTEST_GUILESS_MAIN(StreamsTest)
#include "streams_test.moc"
