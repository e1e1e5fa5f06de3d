// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/log/packing.h"
#include "store/segment_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;
using namespace std::string_literals;

namespace {

const std::vector<std::size_t> threes{3};

// Visits of a neighbour: each record made and corrected.
std::vector<Change> neighbours(std::size_t count, const std::string& device = "hal")
{
    RosterScene scene;
    std::vector<Change> changes;
    for (std::size_t i = 0; i < count; ++i) {
        const Uuid record = idOf(static_cast<std::uint32_t>(100 + i / 2));
        RosterScene::Fields fields{
            {"trap", {formatUuid(idOf(7)), {}}}, {"pest", {static_cast<std::int64_t>(i), {}}}};
        if (i % 2 == 1) fields = {{"pest", {static_cast<std::int64_t>(i), {changes.back().ref}}}};
        changes.push_back(scene.change(device, "visit", record, "field", fields));
    }
    return changes;
}

Taken taken(Store& store, const IncomingSegment& segment)
{
    const auto result = store.take(segment).get();
    if (!result) qFatal("a segment was not taken: %s", result.error().detail.c_str());
    return *result;
}

std::vector<Change> history(Store& store, const Uuid& record)
{
    const auto reader = store.reader();
    return *(*reader)->changesOf(record);
}

StreamState stateOf(Store& store, const StreamId& stream)
{
    const auto reader = store.reader();
    auto states = streamStates(**reader);
    return (*states)[stream];
}

// Seals up to so many of the own changes, as the exchange does.
IncomingSegment sealOwn(Store& store, std::int64_t most = 100)
{
    const auto reader = store.reader();
    const auto tail = unsealedTail(**reader, store.stream(), most);
    IncomingSegment segment = segmentOf(store.stream(), tail->first, tail->lines, tail->previous);
    if (!store.sealNow(segment.row)) qFatal("not sealed");
    return segment;
}

bool isSound(const StoreScene& scene)
{
    const auto report = checkStore(scene.path());
    if (report && !report->isSound())
        qWarning("unreadable %d gaps %d tables %d %s", static_cast<int>(report->unreadable),
            static_cast<int>(report->gaps), static_cast<int>(report->tablesEqual), report->integrity.c_str());
    return report.has_value() && report->isSound();
}

} // namespace

class SegmentsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Whatever the order, the same records; each that waits is used when the gap closes.
    void anyOrderComesToTheSame()
    {
        const auto chain = chainOf(neighbours(14), threes);
        std::vector<std::size_t> order{0, 1, 2, 3, 4};
        std::string wanted;
        do {
            const StoreScene scene;
            const auto store = scene.open();
            std::set<std::size_t> there;
            std::int64_t used = 0;
            for (const std::size_t i : order) {
                const Taken result = taken(*store, chain[i]);
                there.insert(i);
                std::size_t whole = 0;
                while (there.contains(whole)) ++whole;
                QCOMPARE(result.as == TakenAs::Used, i < whole);
                QCOMPARE(result.as == TakenAs::Waits, i >= whole);
                QVERIFY(!result.isFork);
                used += result.changes;
                QCOMPARE(used, static_cast<std::int64_t>(std::min<std::size_t>(14, whole * 3)));
                const StreamState state = stateOf(*store, chain[0].row.stream);
                QCOMPARE(state.used, used);
                QCOMPARE(state.known, chain[*there.rbegin()].row.last);
                QVERIFY(taken(*store, chain[i]).as == TakenAs::Known);
            }
            if (wanted.empty()) wanted = dumpOf(scene);
            QCOMPARE(dumpOf(scene), wanted);
            if (order[0] % 2 == 1) QVERIFY(isSound(scene));
        } while (std::next_permutation(order.begin(), order.end()));
    }

    void aPartialFormIsFilledUp_data()
    {
        QTest::addColumn<bool>("waits");
        QTest::newRow("used") << false;
        QTest::newRow("while it waits") << true;
    }

    void aPartialFormIsFilledUp()
    {
        QFETCH(bool, waits);
        const StoreScene scene;
        const auto store = scene.open();
        const auto reader = store->reader(); // of one who looks all the while
        const auto changes = neighbours(6);
        const auto lines = bytesOf(changes);
        const StreamId stream = changes.front().ref.stream;
        const IncomingSegment first = segmentOf(stream, 1, {lines[0], lines[1]});
        const auto rest = [&](const std::string& hidden) {
            return segmentOf(stream, 3, {lines.begin() + 2, lines.end()}, first.row.id,
                [hidden](std::size_t i) { return hidden.at(i) == '-'; });
        };
        if (!waits) taken(*store, first);
        QVERIFY(taken(*store, rest("+---")).as == (waits ? TakenAs::Waits : TakenAs::Used));
        QCOMPARE((*reader)->changesOf(changes[3].record)->size(), std::size_t(waits ? 0 : 1));
        QVERIFY(taken(*store, rest("+---")).as == TakenAs::Known);
        QVERIFY(taken(*store, rest("----")).as == TakenAs::Known);
        QVERIFY(taken(*store, rest("--+-")).as == TakenAs::Fuller);
        const Taken fuller = taken(*store, rest("-+--"));
        QVERIFY(fuller.as == TakenAs::Fuller);
        QCOMPARE(fuller.changes, std::int64_t(waits ? 0 : 1));
        QCOMPARE((*reader)->changesOf(changes[3].record)->size(), std::size_t(waits ? 0 : 2));
        const auto row = [&] { return **segmentRow(**reader, rest("++++").row.id); };
        QVERIFY(!row().isWhole);
        if (!waits) QVERIFY(isSound(scene));
        QVERIFY(taken(*store, rest("++++")).as == TakenAs::Fuller);
        QVERIFY(row().isWhole);
        QCOMPARE(row().payload, rest("++++").row.payload);
        QVERIFY(taken(*store, rest("+--+")).as == TakenAs::Known);
        if (waits) QCOMPARE(taken(*store, first).changes, std::int64_t{6});
        for (const Change& change : changes)
            QCOMPARE((*reader)->changesOf(change.record)->size(), std::size_t{2});
        QVERIFY(isSound(scene));
    }

    void partialFormsUniteToAWhole()
    {
        const StoreScene scene;
        const auto store = scene.open();
        const auto changes = neighbours(4);
        const auto of = [&](bool odd) {
            return segmentOf(changes[0].ref.stream, 1, bytesOf(changes), {},
                [odd](std::size_t i) { return (i % 2 == 1) == odd; });
        };
        taken(*store, of(true));
        QVERIFY(taken(*store, of(false)).as == TakenAs::Fuller);
        const auto reader = store->reader();
        const auto row = **segmentRow(**reader, of(true).row.id);
        QVERIFY(row.isWhole);
        const auto united = unpack(row.payload, 100'000);
        QVERIFY(united.has_value());
        QCOMPARE(
            *united, *unpack(segmentOf(changes[0].ref.stream, 1, bytesOf(changes)).row.payload, 100'000));
        QVERIFY(isSound(scene));
    }

    void aForkKeepsBoth_data()
    {
        QTest::addColumn<bool>("isLate"); // shown by a fuller form only
        QTest::newRow("at once") << false;
        QTest::newRow("when a form gets fuller") << true;
    }

    void aForkKeepsBoth()
    {
        QFETCH(bool, isLate);
        const StoreScene scene;
        auto changes = neighbours(4);
        const StreamId stream = changes[0].ref.stream;
        scene.letCount(stream);
        const auto store = scene.open();
        taken(*store, segmentOf(stream, 1, bytesOf(changes)));
        auto other = changes;
        other[3].fields["pest"].value = std::int64_t{77};
        if (isLate)
            QVERIFY(!taken(*store, segmentOf(stream, 1, bytesOf(other), {}, [](std::size_t i) {
                return i == 3;
            })).isFork);
        QVERIFY(!stateOf(*store, stream).isForked);
        const Taken result = taken(*store, segmentOf(stream, 1, bytesOf(other)));
        QVERIFY(result.isFork);
        QVERIFY(result.as == (isLate ? TakenAs::Fuller : TakenAs::Used));
        QVERIFY(stateOf(*store, stream).isForked);
        QCOMPARE(history(*store, changes[3].record).size(), std::size_t{3}); // one made, two corrections
        const auto reader = store->reader();
        QCOMPARE(openDifferences(**reader)->size(), std::size_t{1});
        QVERIFY((*visit(**reader, changes[3].record))->pest == Moths{77});
        QVERIFY(isSound(scene));
    }

    void otherBoundariesAreNoFork()
    {
        const StoreScene scene;
        const auto store = scene.open();
        const auto changes = neighbours(10);
        for (const auto& segment : chainOf(changes, {4})) taken(*store, segment);
        const std::string before = dumpOf(scene);
        for (const auto& segment : chainOf(changes, {3})) {
            const Taken result = taken(*store, segment);
            QVERIFY(result.as == TakenAs::Used);
            QVERIFY(!result.isFork);
        }
        QVERIFY(!stateOf(*store, changes[0].ref.stream).isForked);
        QCOMPARE(dumpOf(scene), before);
        for (const Change& change : changes) QCOMPARE(history(*store, change.record).size(), std::size_t{2});
        QVERIFY(isSound(scene));
    }

    void sealingLeavesRecordsAndHistories()
    {
        const StoreScene scene;
        std::string before;
        StreamId own;
        std::vector<std::vector<Change>> histories;
        {
            const auto store = scene.open();
            own = store->stream();
            for (std::uint32_t i = 1; i <= 7; ++i)
                QVERIFY(store->keepNow(batchOf(visitOf(i, i))).has_value());
            Visit other = visitOf(3, 9);
            QVERIFY(
                store->keepNow(batchOf(std::vector{correction(visitOf(3, 3), other, idOf(4))})).has_value());
            before = dumpOf(scene);
            for (std::uint32_t i = 1; i <= 7; ++i) histories.push_back(history(*store, idOf(i)));
            sealOwn(*store, 3);
            sealOwn(*store, 3);
            const auto reader = store->reader();
            QCOMPARE(unsealedTail(**reader, own, 100)->lines.size(), std::size_t{2});
            QCOMPARE(unsealedTail(**reader, own, 100)->first, std::int64_t{7});
            QCOMPARE(*(*reader)->countOfChanges(), std::int64_t{8});
            for (std::uint32_t i = 1; i <= 7; ++i) QVERIFY(history(*store, idOf(i)) == histories[i - 1]);
            QCOMPARE(dumpOf(scene), before);
            QVERIFY(isSound(scene));
        }
        const auto store = scene.open();
        QVERIFY(!store->hasNewStream());
        QVERIFY(store->stream() == own);
        sealOwn(*store);
        const auto kept = store->keepNow(batchOf(visitOf(20, 1)));
        QCOMPARE(kept->changes.front().seq, std::int64_t{9});
        const auto again =
            store->keepNow(batchOf(std::vector{correction(visitOf(2, 2), visitOf(2, 5), idOf(4))}));
        QCOMPARE(again->changes.front().seq, std::int64_t{10});
        QCOMPARE(history(*store, idOf(2)).size(), std::size_t{2});
        QVERIFY(history(*store, idOf(2))[1].fields.at("pest").base == std::vector{histories[1][0].ref});
        QVERIFY(isSound(scene));
    }

    // The own changes come back, e.g. from a folder, while they still stand in the tail; and more of them.
    void theOwnTailComesBack()
    {
        const StoreScene scene;
        const auto store = scene.open();
        for (std::uint32_t i = 1; i <= 4; ++i) QVERIFY(store->keepNow(batchOf(visitOf(i, i))).has_value());
        const std::string before = dumpOf(scene);
        const auto reader = store->reader();
        auto lines = unsealedTail(**reader, store->stream(), 3)->lines;
        const IncomingSegment mine = segmentOf(store->stream(), 1, lines);
        const Taken result = taken(*store, mine);
        QVERIFY(result.as == TakenAs::Used && !result.isFork);
        QCOMPARE(dumpOf(scene), before);
        QCOMPARE(history(*store, idOf(2)).size(), std::size_t{1});
        QVERIFY(isSound(scene));
        Change foreign = neighbours(1)[0];
        foreign.ref = {store->stream(), 4};
        Change next = foreign;
        next.ref.seq = 5;
        QVERIFY(taken(*store, segmentOf(store->stream(), 4, bytesOf({foreign, next}), mine.row.id)).isFork);
        QCOMPARE(store->keepNow(batchOf(visitOf(9, 9)))->changes.front().seq, std::int64_t{6});
    }

    void whatIsNotKnownIsKept()
    {
        const StoreScene scene;
        const auto store = scene.open();
        auto changes = neighbours(2);
        changes[0].kind = "balloon";
        changes[1].fields["zz"] = {RawJson{R"({"kind":"ruling"})"}, {}};
        auto lines = bytesOf(changes);
        lines[1].insert(lines[1].size() - 1, R"(,"zzz":[1])");
        QVERIFY(readChange(lines[1]).has_value());
        const auto segment = segmentOf(changes[0].ref.stream, 1, lines);
        QCOMPARE(taken(*store, segment).changes, std::int64_t{2});
        const auto reader = store->reader();
        QCOMPARE((**segmentRow(**reader, segment.row.id)).payload, segment.row.payload);
        QVERIFY(isSound(scene));
    }

    void howFarTheOwnChangesGot()
    {
        const StoreScene scene;
        const auto store = scene.open();
        for (std::uint32_t i = 1; i <= 9; ++i) QVERIFY(store->keepNow(batchOf(visitOf(i, i))).has_value());
        QVERIFY(store->keepNow(batchOf(std::vector{correction(visitOf(1, 1), visitOf(1, 2), idOf(4))}))
                    .has_value());
        const auto reader = store->reader();
        const auto counts = [&](std::int64_t here, std::int64_t handedOver_, std::int64_t atHub) {
            const auto found = handedOver(**reader, store->stream());
            return found->here == here && found->handedOver == handedOver_ && found->atHub == atHub;
        };
        QVERIFY(counts(10, 0, 0));
        const auto first = sealOwn(*store, 2);
        const auto second = sealOwn(*store, 3);
        sealOwn(*store, 1);
        QVERIFY(counts(10, 0, 0));
        const Instant at = instantFromMs(5);
        QVERIFY(store->markPassedOnNow("folder:/x", {first.row.id, second.row.id}, at).has_value());
        QVERIFY(counts(5, 5, 0));
        QVERIFY(store->markPassedOnNow("hub:https://x", {second.row.id}, at).has_value());
        QVERIFY(store->markPassedOnNow("hub:https://x", {second.row.id}, at).has_value());
        QVERIFY(counts(5, 2, 3));
        QCOMPARE(segmentRows(**reader)->size(), std::size_t{3});
        QCOMPARE(segmentRows(**reader, "hub:https://x")->size(), std::size_t{2});
        QCOMPARE(segmentRows(**reader, "folder:/x")->size(), std::size_t{1});
        const auto one = handedOver(**reader, store->stream(), idOf(1));
        QCOMPARE(one->here, std::int64_t{1});
        QCOMPARE(one->handedOver, std::int64_t{1});
        const auto third = handedOver(**reader, store->stream(), idOf(3));
        QCOMPARE(third->atHub, std::int64_t{1});
    }

    void citedNumbersAreKnown()
    {
        const StoreScene scene;
        const auto store = scene.open();
        auto changes = neighbours(2);
        const StreamId other = RosterScene::stream("gus");
        changes[1].fields["pest"].base.push_back({other, 12});
        taken(*store, segmentOf(changes[0].ref.stream, 1, bytesOf(changes)));
        QCOMPARE(stateOf(*store, other).known, std::int64_t{12});
        QCOMPARE(stateOf(*store, other).used, std::int64_t{0});
        QVERIFY(store->keepNow(batchOf(visitOf(1, 1))).has_value());
        QCOMPARE(stateOf(*store, store->stream()).used, std::int64_t{1});
    }

    void whatIsRefusedIsKeptAside()
    {
        const StoreScene scene;
        const auto store = scene.open();
        const std::string bytes = "not a segment at all";
        const AsideRow row{hashOf(bytes), "a.seg", "segment_damaged\nx", instantFromMs(7)};
        QVERIFY(store->keepAsideNow(row, bytes).has_value());
        QVERIFY(store->keepAsideNow(row, bytes).has_value());
        const auto reader = store->reader();
        const auto rows = asideRows(**reader);
        QCOMPARE(rows->size(), std::size_t{1});
        QCOMPARE(rows->front().reason, row.reason);
        QFile file(QString::fromStdString(scene.path() + ".d/aside/" + formatHex(row.hash)));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray::fromStdString(bytes));
    }

    // A keep that came to nothing leaves nothing behind in what the folding remembers.
    void aFailedKeepIsForgotten()
    {
        const StoreScene scene;
        const auto store = scene.open();
        Member member;
        member.id = idOf(50);
        member.name = "Gus";
        Invitation invitation;
        invitation.id = idOf(51);
        invitation.member = member.id;
        Edit other = creation(visitOf(1, 1), idOf(4));
        QVERIFY(store->keepNow(batchOf(std::vector{other})).has_value());
        other.kind = "service"; // under the id of a visit
        other.fields = {{"remark", "x"s}};
        const auto failed =
            store->keepNow(batchOf(std::vector{creation(member, {}), creation(invitation, {}), other}));
        QVERIFY(!failed.has_value());
        const auto reader = store->reader();
        QCOMPARE(rosterOf(**reader, store->programme())->members().size(), std::size_t{0});
        const auto kept = store->keepNow(batchOf(std::vector{creation(member, {})}));
        QCOMPARE(kept->changes.front().seq, std::int64_t{2});
        QCOMPARE(rosterOf(**reader, store->programme())->members().size(), std::size_t{1});
        QVERIFY(isSound(scene));
    }
};

QTEST_GUILESS_MAIN(SegmentsTest)
#include "segments_test.moc"
