// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/random_words.h"
#include "store/segment_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;
using namespace std::string_literals;

namespace {

// Words and work of a district, by many, some of whom may not.
std::vector<Change> randomSeason(unsigned seed, int steps)
{
    std::mt19937 random(seed);
    RosterScene scene;
    scene.root("founder", "root");
    scene.member("founder", "Cora", "coordinator");
    scene.device("founder", "cora", "Cora");
    scene.member("cora", "Gus", "grower");
    scene.device("cora", "gus", "Gus");
    scene.site("gus", "a");
    RandomWords words(scene, random);
    for (int step = 0; step < steps; ++step)
        if (random() % 2 == 0)
            words.say();
        else
            words.work();
    return scene.changes();
}

// All of it as segments of random sizes.
std::vector<IncomingSegment> segmentsOf(const std::vector<Change>& season, std::mt19937& random)
{
    std::map<StreamId, std::vector<Change>> streams;
    for (const Change& change : season) streams[change.ref.stream].push_back(change);
    std::vector<IncomingSegment> all;
    for (const auto& [stream, changes] : streams)
        for (IncomingSegment& segment : chainOf(changes, {1 + random() % 4, 1 + random() % 6, 2}))
            all.push_back(std::move(segment));
    return all;
}

IncomingSegment partOf(const IncomingSegment& whole, std::mt19937& random)
{
    std::vector<std::string> lines;
    for (const auto& line : whole.lines) lines.push_back(line.bytes);
    return segmentOf(whole.row.stream, whole.row.first, lines, whole.row.previous,
        [&](std::size_t) { return random() % 2 == 0; });
}

OpenHow howOf(const StoreScene& scene)
{
    OpenHow how = scene.how();
    how.programme = RosterScene::programme();
    how.founders = {RosterScene::stream("founder")};
    return how;
}

// What a store that got everything says in the end; it is looked at now and then on the way.
QString arrival(const StoreScene& scene, std::vector<IncomingSegment> segments, std::mt19937& random)
{
    std::shuffle(segments.begin(), segments.end(), random);
    const auto opened = Store::open(scene.path(), howOf(scene));
    if (!opened) return QStringLiteral("not opened");
    std::vector<IncomingSegment> queue;
    for (const IncomingSegment& segment : segments) {
        if (random() % 3 == 0) queue.push_back(partOf(segment, random));
        queue.push_back(segment);
    }
    for (std::size_t i = 0; i < queue.size(); ++i) {
        const auto taken = (*opened)->take(queue[i]).get();
        if (!taken) return QStringLiteral("not taken: ") + QString::fromStdString(taken.error().detail);
        if (random() % 25 != 0 && i + 1 != queue.size()) continue;
        const auto report = checkStore(scene.path());
        if (!report || !report->isSound())
            return QStringLiteral("not sound after %1 of %2").arg(i + 1).arg(queue.size());
    }
    return {};
}

} // namespace

class ExchangeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // The first that comes after opening changes the roster: what it concerns is weighed again all the same.
    void aRosterThatChangesRightAfterOpening()
    {
        RosterScene roster;
        roster.member("founder", "Gus", "grower");
        roster.device("founder", "gus", "Gus");
        roster.site("gus", "field");
        roster.says(
            "founder", "device", RosterScene::deviceOf("gus"), "", {{"ended_after", {std::int64_t{0}, {}}}});
        std::vector<Change> founders;
        std::vector<Change> growers;
        for (const Change& change : roster.changes())
            (change.ref.stream == RosterScene::stream("gus") ? growers : founders).push_back(change);
        const auto chain = chainOf(founders, {founders.size() - 1, 1});
        const StoreScene scene;
        OpenHow how = scene.how();
        how.programme = RosterScene::programme();
        how.founders = {RosterScene::stream("founder")};
        for (const IncomingSegment& segment : {chain[0], chainOf(growers, {9})[0], chain[1]}) {
            const auto store = Store::open(scene.path(), how);
            QVERIFY(store.has_value());
            QVERIFY((*store)->take(segment).get()->as == TakenAs::Used);
        }
        const auto report = checkStore(scene.path());
        QVERIFY(report.has_value());
        QVERIFY(report->tablesEqual);
        SQLite::Database database = scene.raw();
        QCOMPARE(database.execAndGet("SELECT count(*) FROM now_aside").getInt(), 1);
    }

    void theSameSetComesToTheSameRecords_data()
    {
        QTest::addColumn<unsigned>("seed");
        const unsigned seeds = qEnvironmentVariableIsSet("DUSKROW_LONG") ? 200 : 8;
        for (unsigned seed = 1; seed <= seeds; ++seed) QTest::addRow("seed %u", seed) << seed;
    }

    void theSameSetComesToTheSameRecords()
    {
        QFETCH(unsigned, seed);
        std::mt19937 random(seed);
        const std::vector<Change> season = randomSeason(seed, 80);
        const auto segments = segmentsOf(season, random);
        std::string first;
        for (int again = 0; again < 3; ++again) {
            const StoreScene scene;
            const QString wrong = arrival(scene, segments, random);
            QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
            const std::string dump = dumpOf(scene);
            if (again == 0) first = dump;
            QVERIFY(dump == first);
            const auto reader = openForReading(scene.path());
            QVERIFY(reader.has_value());
            const auto found = rosterOf(**reader, RosterScene::programme());
            QCOMPARE(shown(*found),
                shown(Roster::from(RosterScene::programme(), {RosterScene::stream("founder")}, season)));
        }
    }

    // A ruling waits for its record, a record for the claim of its author.
    void whatDependsOnOthersFollowsWhenTheyCome()
    {
        RosterScene words;
        words.member("founder", "Cora", "coordinator");
        words.device("founder", "cora", "Cora");
        words.member("founder", "Gus", "grower");
        words.invites("founder", "Gus", "code");
        words.claims("gus", "code");
        words.site("gus", "a");
        const ChangeRef visited =
            words.says("gus", "visit", idOf(1), "a", {{"pest", {std::int64_t{3}, {}}}}).ref;
        words.says("cora", "ruling", rulingId(RosterScene::programme(), idOf(1)), "",
            {{"record", {formatUuid(idOf(1)), {}}}, {"says", {"stands"s, {}}}});
        words.changes().back().saw = {visited};
        words.says("gus", "visit", idOf(1), "a", {{"pest", {std::int64_t{9}, {visited}}}});
        std::map<std::string, IncomingSegment> by;
        for (const char* device : {"founder", "cora", "gus"}) {
            std::vector<Change> own;
            for (const Change& change : words.changes())
                if (change.ref.stream == RosterScene::stream(device)) own.push_back(change);
            by[device] = chainOf(own, {100}).front();
        }
        std::vector<std::string> order{"cora", "founder", "gus"};
        do {
            const StoreScene scene;
            auto opened = Store::open(scene.path(), howOf(scene));
            QVERIFY(opened.has_value());
            const auto& store = *opened;
            for (const std::string& device : order) {
                const auto taken = store->take(by.at(device)).get();
                QVERIFY2(taken.has_value(), taken ? "" : taken.error().detail.c_str());
                const auto report = checkStore(scene.path());
                QVERIFY(report.has_value() && report->isSound());
            }
            const auto reader = store->reader();
            const auto found = visit(**reader, idOf(1));
            QVERIFY(found->has_value());
            QVERIFY((*found)->pest == Moths{3});
            QCOMPARE(staleRulings(**reader)->size(), std::size_t{1});
            const auto aside = asideChanges(**reader);
            QCOMPARE(aside->size(), std::size_t{1});
            QCOMPARE(aside->front().reason, "proposal"s);
        } while (std::next_permutation(order.begin(), order.end()));
    }

    // Whom nobody let in writes nothing; admitted, it counts; taken back, it no longer does.
    void whatIsKeptAsideIsWeighedAgain()
    {
        RosterScene words;
        words.member("founder", "Gus", "grower");
        words.device("founder", "gus", "Gus");
        words.site("gus", "a");
        const ChangeRef strange =
            words.says("stranger", "visit", idOf(1), "a", {{"pest", {std::int64_t{3}, {}}}}).ref;
        const Uuid admission = admissionId(RosterScene::programme(), formatRef(strange));
        words.says("founder", "admission", admission, "", {{"change", {formatRef(strange), {}}}});
        words.withdraws("founder", "admission", admission);
        const StoreScene scene;
        auto opened = Store::open(scene.path(), howOf(scene));
        QVERIFY(opened.has_value());
        const auto& store = *opened;
        std::vector<Change> founders;
        for (const Change& change : words.changes())
            if (change.ref.stream == RosterScene::stream("founder")) founders.push_back(change);
        const auto chain = chainOf(founders, {2, 1, 1});
        QVERIFY(store->take(segmentOf(strange.stream, 1, bytesOf({words.changes()[3]}))).get().has_value());
        const auto reader = store->reader();
        const auto isThere = [&] { return visit(**reader, idOf(1))->has_value(); };
        QVERIFY(!isThere()); // alone or not: nobody knows who that is
        // The first two changes let Gus in, the third admits the stranger's, the fourth takes that back.
        const std::vector<bool> wanted{false, true, false};
        QCOMPARE(chain.size(), wanted.size());
        for (std::size_t i = 0; i < chain.size(); ++i) {
            const bool expected = wanted[i];
            QVERIFY(store->take(chain[i]).get().has_value());
            QCOMPARE(isThere(), expected);
            QCOMPARE(asideChanges(**reader)->size(), std::size_t(expected ? 0 : 1));
            const auto report = checkStore(scene.path());
            QVERIFY(report.has_value() && report->isSound());
        }
    }
};

QTEST_GUILESS_MAIN(ExchangeTest)
#include "exchange_test.moc"
