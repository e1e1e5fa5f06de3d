// SPDX-License-Identifier: MIT
#include <QTest>

#include <future>
#include <random>

#include "domain/random_log.h"
#include "store/check.h"
#include "store/store_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;
using namespace std::string_literals;

namespace {

// Holds the writer's thread back until released, so that what is asked meanwhile waits.
class Hold {
public:
    explicit Hold(Store& store)
    {
        auto released = std::make_shared<std::shared_future<void>>(m_release.get_future().share());
        store.keep(batchOf(std::vector<Edit>{}), [released](const Result<Kept>&) { released->wait(); });
    }
    void release() { m_release.set_value(); }

private:
    std::promise<void> m_release;
};

Visit visitAt(Store& store, std::uint32_t number)
{
    const auto reader = store.reader();
    if (!reader) return {};
    const auto found = visit(**reader, idOf(number));
    return found && *found ? **found : Visit{};
}

std::optional<std::string> draftAt(Store& store, const std::string& key)
{
    const auto reader = store.reader();
    if (!reader) return {};
    const auto found = (*reader)->draft(key);
    return found ? *found : std::nullopt;
}

std::vector<Change> historyOf(Store& store, std::uint32_t number)
{
    const auto reader = store.reader();
    if (!reader) return {};
    auto found = (*reader)->changesOf(idOf(number));
    return found ? std::move(*found) : std::vector<Change>{};
}

void insertForeign(SQLite::Database& database, const Change& change)
{
    SQLite::Statement stream(database, "INSERT OR IGNORE INTO stream (id) VALUES (?)");
    stream.bind(1, change.ref.stream.data(), 16);
    stream.exec();
    SQLite::Statement insert(database, "INSERT INTO change SELECT local, ?, ?, ? FROM stream WHERE id=?");
    insert.bind(1, change.ref.seq);
    insert.bind(2, change.record.bytes.data(), 16);
    insert.bind(3, canonicalJson(change));
    insert.bind(4, change.ref.stream.data(), 16);
    insert.exec();
}

} // namespace

class KeepTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsKeptIsThereAfterOpeningAgain()
    {
        const StoreScene scene;
        const Visit kept = visitOf(1, 37);
        {
            const auto store = scene.open();
            const auto answer = store->keepNow(batchOf(kept));
            QVERIFY(answer.has_value());
            QCOMPARE(answer->changes.size(), std::size_t{1});
            QVERIFY(answer->changes.front() == (ChangeRef{store->stream(), 1}));
        }
        const auto store = scene.open();
        const Visit found = visitAt(*store, 1);
        QVERIFY(correction(kept, found, {}).fields.empty());
        QCOMPARE(found.id, kept.id);
        const auto next = store->keepNow(batchOf(visitOf(2, 0)));
        QVERIFY(next->changes.front() == (ChangeRef{store->stream(), 2}));
    }

    // A trigger fails the last statement of the commit: change, tables and draft must all be as before.
    void oneTransactionHoldsChangeTablesAndDraft()
    {
        const StoreScene scene;
        const auto store = scene.open();
        store->saveDraft("visit/7", "half");
        store->flush();
        auto raw = scene.raw();
        raw.exec("CREATE TRIGGER no BEFORE DELETE ON draft BEGIN SELECT raise(ABORT, 'no'); END");
        Batch batch = batchOf(visitOf(1, 37));
        batch.draftDone = "visit/7";
        QVERIFY(!store->keepNow(batch).has_value());
        QVERIFY(visitAt(*store, 1).id.isNil());
        QVERIFY(historyOf(*store, 1).empty());
        QCOMPARE(raw.execAndGet("SELECT count(*) FROM change").getInt(), 0);
        QCOMPARE(raw.execAndGet("SELECT count(*) FROM stream").getInt(), 0);
        QVERIFY(draftAt(*store, "visit/7") == "half"s);

        raw.exec("DROP TRIGGER no");
        const auto kept = store->keepNow(batch);
        QVERIFY2(kept.has_value(), kept ? "" : kept.error().detail.c_str());
        QCOMPARE(kept->changes.front().seq, std::int64_t{1});
        QCOMPARE(visitAt(*store, 1).pest->value(), std::int64_t{37});
        QVERIFY(!draftAt(*store, "visit/7"));
    }

    void oneBadEditKeepsNothingOfTheBatch()
    {
        const StoreScene scene;
        const auto store = scene.open();
        Batch batch = batchOf(visitOf(1, 37));
        batch.edits.push_back(creation(visitOf(2, 1'000'000'000), idOf(4)));
        const auto kept = store->keepNow(batch);
        QVERIFY(!kept.has_value());
        QCOMPARE(kept.error().code, ErrorCode::OutOfRange);
        QCOMPARE(kept.error().args.front(), "pest"s);
        QVERIFY(visitAt(*store, 1).id.isNil());
    }

    // Letters that JSON writes with six bytes could make a change that is never read again.
    void aChangeTooLargeToBeReadIsRefused()
    {
        const StoreScene scene;
        const auto store = scene.open();
        Visit visit = visitOf(1, 37);
        visit.remark = std::string(40'000, '\x01');
        const auto kept = store->keepNow(batchOf(visit));
        QVERIFY(!kept.has_value());
        QCOMPARE(kept.error().code, ErrorCode::TooLong);
        QCOMPARE(kept.error().args.front(), "remark"s);
        QVERIFY(historyOf(*store, 1).empty());
        visit.remark = std::string(40'000, 'm');
        QVERIFY(store->keepNow(batchOf(visit)).has_value());
        QCOMPARE(visitAt(*store, 1).remark.size(), std::size_t{40'000});
    }

    void anIdOfAnotherKindIsRefused()
    {
        const StoreScene scene;
        const auto store = scene.open();
        QVERIFY(store->keepNow(batchOf(visitOf(1, 37))).has_value());
        Trap trap;
        trap.id = idOf(1);
        trap.tag = "12";
        const auto kept = store->keepNow(batchOf(std::vector{creation(trap, idOf(4))}));
        QCOMPARE(kept.error().code, ErrorCode::RecordMissing);
    }

    void aCorrectionCitesWhatItSaw()
    {
        const StoreScene scene;
        const auto store = scene.open();
        const Visit before = visitOf(1, 37);
        QVERIFY(store->keepNow(batchOf(before)).has_value());
        Visit after = before;
        after.pest = Moths{73};
        QVERIFY(store->keepNow(batchOf(std::vector{correction(before, after, idOf(4))})).has_value());
        QVERIFY(store->keepNow(batchOf(std::vector{withdrawal(after, idOf(4), "twice")})).has_value());

        const auto history = historyOf(*store, 1);
        QCOMPARE(history.size(), std::size_t{3});
        QVERIFY(history[0].fields.at("pest").base.empty());
        QCOMPARE(history[1].fields.size(), std::size_t{1});
        QVERIFY(history[1].fields.at("pest").base == std::vector{history[0].ref});
        QVERIFY(history[2].saw == (std::vector{history[0].ref, history[1].ref}));
        QCOMPARE(history[1].author, idOf(2));
        QCOMPARE(history[1].site, idOf(4));

        const auto reader = store->reader();
        QVERIFY(visitsOf(**reader, idOf(7))->empty());
        QCOMPARE(visitsOf(**reader, idOf(7), true)->size(), std::size_t{1});
        QCOMPARE(visitAt(*store, 1).withdrawn, "twice"s);
        QCOMPARE(visitAt(*store, 1).pest->value(), std::int64_t{73});
    }

    void editsOfOneRecordInOneBatchFollowEachOther()
    {
        const StoreScene scene;
        const auto store = scene.open();
        const Visit before = visitOf(1, 37);
        Visit after = before;
        after.pest = Moths{36};
        QVERIFY(store->keepNow(batchOf({creation(before, {}), correction(before, after, {})})).has_value());
        const auto history = historyOf(*store, 1);
        QVERIFY(history[1].fields.at("pest").base == std::vector{history[0].ref});
        QCOMPARE(visitAt(*store, 1).pest->value(), std::int64_t{36});
    }

    void anEditOfNothingIsNoChange()
    {
        const StoreScene scene;
        const auto store = scene.open();
        const Visit visit = visitOf(1, 37);
        const auto kept = store->keepNow(batchOf(std::vector{correction(visit, visit, {})}));
        QVERIFY(kept.has_value());
        QVERIFY(kept->changes.empty());
    }

    void foldingAgainGivesTheSameTables_data()
    {
        QTest::addColumn<unsigned>("seed");
        for (unsigned seed = 1; seed <= 8; ++seed) QTest::addRow("seed %u", seed) << seed;
    }

    // Random edits by this installation on top of what others wrote at the same time.
    void foldingAgainGivesTheSameTables()
    {
        QFETCH(unsigned, seed);
        const StoreScene scene;
        std::mt19937 random(seed);
        {
            const auto store = scene.open();
            auto raw = scene.raw();
            for (std::uint32_t number = 1; number <= 12; ++number) {
                RandomLog log(seed * 100 + number, number % 4 == 0 ? "balloon" : "visit");
                for (Change& change : log.grow(3, 12)) {
                    change.record = idOf(number);
                    change.ref.stream.front() = static_cast<std::uint8_t>(number);
                    for (auto& [name, set] : change.fields)
                        for (ChangeRef& ref : set.base) ref.stream.front() = change.ref.stream.front();
                    for (ChangeRef& ref : change.saw) ref.stream.front() = change.ref.stream.front();
                    insertForeign(raw, change);
                }
            }
            raw.exec("UPDATE setting SET value='old' WHERE key='declaration'");
        }
        const auto store = scene.open();
        for (int step = 0; step < 60; ++step) {
            const auto number = static_cast<std::uint32_t>(1 + random() % 20);
            if (number <= 12 && number % 4 == 0) continue;
            const Visit before = visitAt(*store, number);
            Visit after = visitOf(number, static_cast<std::int64_t>(random() % 50));
            if (random() % 3 == 0) after.remark.clear();
            Edit edit = before.id.isNil() ? creation(after, idOf(4)) : correction(before, after, idOf(4));
            if (random() % 6 == 0) edit = withdrawal(after, idOf(4), random() % 2 == 0 ? "slip" : "");
            QVERIFY(store->keepNow(batchOf(std::vector{edit})).has_value());
        }
        const auto report = checkStore(scene.path());
        QVERIFY(report.has_value());
        QVERIFY(report->tablesEqual);
        QVERIFY(report->isSound());
        QVERIFY(report->changes > 60);
    }

    void whatIsNewerIsKeptAndPassedOn()
    {
        const StoreScene scene;
        Change balloon;
        balloon.kind = "balloon";
        balloon.record = idOf(9);
        balloon.ref = {{3}, 1};
        balloon.fields["height_mm"] = {RawJson{"[1,2]"}, {}};
        Change visit = balloon;
        visit.kind = "visit";
        visit.record = idOf(1);
        visit.ref.seq = 2;
        visit.fields = {{"state", {"singed"s, {}}}, {"zz", {true, {}}}, {"pest", {std::int64_t{5}, {}}}};
        {
            const auto store = scene.open();
            auto raw = scene.raw();
            insertForeign(raw, balloon);
            insertForeign(raw, visit);
            raw.exec("UPDATE setting SET value='old' WHERE key='declaration'");
        }
        const auto store = scene.open();
        const Change balloonNow = historyOf(*store, 9).front();
        QCOMPARE(balloonNow.kind, balloon.kind);
        QVERIFY(balloonNow.fields == balloon.fields);
        const ChangeRef before = historyOf(*store, 1).front().ref;
        const Visit found = visitAt(*store, 1);
        QCOMPARE(found.pest->value(), std::int64_t{5});
        QVERIFY(!found.state);
        QVERIFY(found.fromNewer.at("state") == Value{"singed"s});
        QVERIFY(found.fromNewer.at("zz") == Value{true});

        // Correcting another field leaves them standing; settling the unknown code cites it.
        Visit after = found;
        after.pest = Moths{6};
        after.state = TrapState::Fine;
        QVERIFY(store->keepNow(batchOf(std::vector{correction(found, after, {})})).has_value());
        QVERIFY(historyOf(*store, 1).back().fields.at("state").base == std::vector{before});
        QVERIFY(visitAt(*store, 1).fromNewer.at("zz") == Value{true});
        QVERIFY(visitAt(*store, 1).state == TrapState::Fine);
        QVERIFY(checkStore(scene.path())->isSound());
    }

    void draftsThatWaitAreWrittenOnceAndTheLastStands()
    {
        const StoreScene scene;
        const auto store = scene.open();
        auto raw = scene.raw();
        raw.exec("INSERT INTO setting VALUES ('writes', '0')");
        raw.exec("CREATE TRIGGER count AFTER INSERT ON draft BEGIN "
                 "UPDATE setting SET value=value+1 WHERE key='writes'; END");
        Hold hold(*store);
        std::atomic<int> answered = 0;
        const auto count = [&](const Result<Done>& saved) { answered += saved.has_value() ? 1 : 0; };
        for (const char* body : {"a", "b", "c"}) store->saveDraft("visit/7", body, count);
        store->saveDraft("set-up", "x", count);
        hold.release();
        store->flush();
        QCOMPARE(answered.load(), 4);
        QVERIFY(draftAt(*store, "visit/7") == "c"s);
        QCOMPARE(raw.execAndGet("SELECT value FROM setting WHERE key='writes'").getString(), "2"s);
        const auto reader = store->reader();
        QVERIFY(*(*reader)->draftKeys() == (std::vector{"set-up"s, "visit/7"s}));
    }

    void aDraftBegunAfterKeepingOutlivesTheKeep()
    {
        const StoreScene scene;
        {
            const auto store = scene.open();
            Hold hold(*store);
            store->saveDraft("visit/7", "first visit");
            Batch batch = batchOf(visitOf(1, 37));
            batch.draftDone = "visit/7";
            std::atomic<bool> kept = false;
            store->keep(batch, [&](const Result<Kept>& answer) { kept = answer.has_value(); });
            store->saveDraft("visit/7", "second visit");
            hold.release();
            store->flush();
            QVERIFY(kept);
            QVERIFY(draftAt(*store, "visit/7") == "second visit"s);
            store->saveDraft("set-up", "begun");
            store->dropDraft("set-up");
        } // all that was asked is done before the store closes
        const auto store = scene.open();
        QVERIFY(draftAt(*store, "visit/7") == "second visit"s);
        QVERIFY(!draftAt(*store, "set-up"));
    }

    void readersSeeOnlyWhatIsCommittedAndCannotWrite()
    {
        const StoreScene scene;
        const auto store = scene.open();
        const auto reader = store->reader();
        QCOMPARE(*(*reader)->countOfChanges(), std::int64_t{0});
        QVERIFY(store->keepNow(batchOf(visitOf(1, 37))).has_value());
        QCOMPARE(*(*reader)->countOfChanges(), std::int64_t{1});
        const auto database = openReader(scene.path(), {});
        const auto written = guarded<Done>(scene.path(), [&] {
            (*database)->exec("DELETE FROM change");
            return Done{};
        });
        QCOMPARE(written.error().code, ErrorCode::StoreReadOnly);
        QCOMPARE(*(*reader)->countOfChanges(), std::int64_t{1});
    }
};

QTEST_APPLESS_MAIN(KeepTest)
#include "keep_test.moc"
