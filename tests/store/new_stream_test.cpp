// SPDX-License-Identifier: MIT
#include <QTest>

#include "store/stream_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

// What else changes when a device begins a new stream, and when it must.
class NewStreamTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // The own stream counts here before anybody has let it in: when it is another, so are the tables.
    void whoBeginsANewStreamFoldsAgain()
    {
        const StoreScene scene;
        OpenHow how = scene.how();
        how.founders = {RosterScene::stream("founder")};
        how.programme = RosterScene::programme();
        {
            const auto store = Store::open(scene.path(), how);
            QVERIFY(store.has_value());
            Change letIn; // somebody else, so that nobody is alone any more
            letIn.programme = RosterScene::programme();
            letIn.ref = {RosterScene::stream("founder"), 1};
            letIn.kind = "device";
            letIn.record = deviceId(letIn.programme, RosterScene::stream("gus"));
            letIn.fields["stream"].value = formatHex(RosterScene::stream("gus"));
            letIn.fields["member"].value = formatUuid(idOf(60));
            QVERIFY((*store)->take(segmentOf(letIn.ref.stream, 1, bytesOf({letIn}))).get().has_value());
            keepOne(**store, 1);
            sealOwn(**store);
            QVERIFY(visit(**(*store)->reader(), idOf(1))->has_value());
        }
        how.keyFolder = scene.path("other keys");
        const auto store = Store::open(scene.path(), how);
        QVERIFY(store.has_value());
        QVERIFY((*store)->hasNewStream());
        const auto reader = (*store)->reader();
        QVERIFY(!visit(**reader, idOf(1))->has_value());
        QCOMPARE(asideChanges(**reader)->size(), std::size_t{1});
        QVERIFY(isSound(scene));
    }

    // Put back from when he was alone, and others had come in since by the word of the old stream: they know
    // nothing of a second founder, and what he shows must be what they show.
    void whoWasNotAloneAfterAllIsNoFounder_data()
    {
        QTest::addColumn<bool>("hasKey");
        QTest::newRow("without the old key") << false;
        QTest::newRow("with the old key") << true;
    }
    void whoWasNotAloneAfterAllIsNoFounder()
    {
        QFETCH(bool, hasKey);
        const StoreScene scene;
        StreamId first;
        IncomingSegment earlier;
        {
            const auto store = scene.open();
            first = store->stream();
            keepOne(*store, 1);
            earlier.row = sealOwn(*store);
        }
        copyFile(scene.path(), scene.path("backup"));
        IncomingSegment later;
        {
            const auto store = scene.open();
            letIn(*store);
            const auto reader = store->reader();
            later = segmentOf(first, 2, unsealedTail(**reader, first, 100)->lines, earlier.row.id);
            QVERIFY(store->sealNow(later.row).has_value());
        }
        copyFile(scene.path("backup"), scene.path());
        OpenHow how = scene.how();
        if (!hasKey) how.keyFolder = scene.path("other keys");
        const auto store = Store::open(scene.path(), how);
        QVERIFY(store.has_value());
        const StreamId own = (*store)->stream();
        QVERIFY((foundersOf(scene) == std::set{first, own}));
        keepOne(**store, 2);
        QVERIFY((*store)->take(later).get()->as == TakenAs::Used);
        QVERIFY(foundersOf(scene) == std::set{first});
        const auto reader = (*store)->reader();
        const auto roster = rosterOf(**reader, (*store)->programme());
        QCOMPARE(roster->isRoot(own), hasKey); // the old one vouched for it
        QVERIFY(roster->isEnrolled(RosterScene::stream("gus")));
        QVERIFY(visit(**reader, idOf(2))->has_value()); // nobody loses sight of what he entered
        QVERIFY(isSound(scene));
    }

    // Put back with the key of then, and only the last of what it had handed over came back: the tail follows
    // on that, or nothing could be handed over any more; and the next opening begins a new stream.
    void aTailAfterNumbersThatWait()
    {
        const StoreScene scene;
        StreamId first;
        {
            const auto store = scene.open();
            first = store->stream();
            keepOne(*store, 1);
            Change later = *readChange(unsealedTail(**store->reader(), first, 1)->lines.front());
            sealOwn(*store);
            later.ref.seq = 5;
            later.record = idOf(5);
            const IncomingSegment back = segmentOf(first, 5, bytesOf({later}), SegmentId{7});
            QVERIFY(store->take(back).get()->as == TakenAs::Waits);
            keepOne(*store, 6);
            const auto reader = store->reader();
            const auto tail = unsealedTail(**reader, first, 100);
            QCOMPARE(tail->first, std::int64_t{6});
            QVERIFY(tail->previous == back.row.id);
        }
        const auto store = scene.open();
        QVERIFY(store->hasNewStream());
        QVERIFY(isSound(scene));
    }
};

QTEST_GUILESS_MAIN(NewStreamTest)
#include "new_stream_test.moc"
