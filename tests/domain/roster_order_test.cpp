// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/random_words.h"

using namespace duskrow::domain;
using duskrow::tests::RandomWords;
using duskrow::tests::RosterScene;
using duskrow::tests::shown;
using namespace std::string_literals;

namespace {

StreamId stream(const char* device)
{
    return RosterScene::stream(device);
}

// The founder made two other roots and a coordinator; the coordinator let growers in.
RosterScene district()
{
    RosterScene scene;
    for (const char* root : {"root", "root2"}) scene.root("founder", root);
    scene.member("founder", "Cora", "coordinator");
    scene.device("founder", "cora", "Cora");
    for (const char* name : {"Gus", "Hal"}) scene.member("cora", name, "grower");
    scene.device("cora", "gus", "Gus");
    scene.device("cora", "hal", "Hal");
    return scene;
}

} // namespace

class RosterOrderTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void scopeAndRightsChangeWhenTheyShould()
    {
        RosterScene scene = district();
        scene.site("gus", "field");
        scene.site("hal", "hal field");
        struct Step {
            const char* what;
            std::function<void()> act;
            std::set<std::string> rights;
            std::set<std::string> scopes;
        };
        const auto says = [&](const char* by, const char* kind, const Uuid& id, const char* site,
                              const RosterScene::Fields& fields) {
            return [&scene, by, kind, id, site, fields] { scene.says(by, kind, id, site, fields); };
        };
        const std::vector<Step> steps{
            {"a season", says("cora", "season", RosterScene::id("s"), "", {{"year", {std::int64_t{1}, {}}}}),
                {}, {}},
            {"a grower's name",
                says("cora", "member", RosterScene::id("Gus"), "", {{"name", {"August"s, {}}}}), {}, {}},
            {"an assignment", [&] { scene.assigns("cora", "Hal", "field"); }, {"hal"}, {"hal"}},
            {"a loan", [&] { scene.lends("hal", "t", "hal field", "Gus", "2026-06-01", "2026-06-02"); },
                {"gus"}, {"gus"}},
            {"another loan there",
                [&] { scene.lends("hal", "u", "hal field", "Gus", "2026-06-01", "2026-06-02"); }, {"gus"},
                {}},
            {"a second phone", [&] { scene.device("cora", "gus2", "Gus"); }, {"gus2"}, {"gus", "gus2"}},
            {"its end", [&] { scene.ends("cora", "gus2", 3); }, {"gus2"}, {}},
            {"a last day",
                says("cora", "member", RosterScene::id("Hal"), "", {{"until_day", {"2026-08-01"s, {}}}}),
                {"hal"}, {}},
            {"a new site", [&] { scene.site("gus", "new field"); }, {"gus", "gus2"}, {"gus", "gus2"}},
            {"a grower's wish", [&] { scene.assigns("gus", "Gus", "hal field"); }, {}, {}},
            {"a coordinator raised",
                says("root", "member", RosterScene::id("Gus"), "",
                    {{"role", {"coordinator"s, {ChangeRef{stream("cora"), 1}}}}}),
                {}, {}},
            {"his device let in",
                says("root", "device", RosterScene::deviceOf("gus"), "",
                    {{"member", {RosterScene::text("Gus"), {}}}}),
                {"gus", "gus2"}, {"gus"}}, // and his earlier wish came true
        };
        for (const Step& step : steps) {
            const Roster before = scene.roster();
            step.act();
            const Roster after = scene.roster();
            for (const std::string device : {"founder", "root", "cora", "gus", "gus2", "hal", "stranger"}) {
                const StreamId id = RosterScene::stream(device);
                QVERIFY2((before.rightsOf(id) != after.rightsOf(id)) == step.rights.contains(device),
                    qPrintable(QString::fromStdString("rights of " + device + " after " + step.what)));
                QVERIFY2((before.scopeOf(id) != after.scopeOf(id)) == step.scopes.contains(device),
                    qPrintable(QString::fromStdString("scope of " + device + " after " + step.what)));
            }
        }
    }

    // What the store does not weigh again when the roster changes stands as it stood.
    void whatIsNotWeighedAgainStands_data() { orderNeverMatters_data(); }

    void whatIsNotWeighedAgainStands()
    {
        QFETCH(unsigned, seed);
        std::mt19937 random(seed);
        RosterScene scene = district();
        std::size_t left = 0;
        for (int step = 0; step < 60; ++step) {
            const Roster before = scene.roster();
            std::map<Uuid, std::vector<Change>> records;
            for (const Change& change : scene.changes()) records[change.record].push_back(change);
            RandomWords(scene, random).say();
            const Roster after = scene.roster();
            for (const auto& [record, changes] : records) {
                const auto stood = before.weigh(changes);
                bool isWeighed = before.isAlone() != after.isAlone();
                for (std::size_t i = 0; i < changes.size(); ++i) {
                    const StreamId& by = changes[i].ref.stream;
                    const bool mayCount = stood[i] == Standing::SettlingNotYours
                        || (stood[i] != Standing::Counts && before.rightsOf(by) != after.rightsOf(by));
                    isWeighed = isWeighed || mayCount || after.mayCountLess(before, by);
                }
                if (isWeighed) continue;
                ++left;
                QVERIFY(after.weigh(changes) == stood);
            }
        }
        QVERIFY(left > 0);
    }

    // Random words by all on all, in any order, repeated: one roster.
    void orderNeverMatters_data()
    {
        QTest::addColumn<unsigned>("seed");
        for (unsigned seed = 1; seed <= 60; ++seed) QTest::addRow("seed %u", seed) << seed;
    }

    void orderNeverMatters()
    {
        QFETCH(unsigned, seed);
        std::mt19937 random(seed);
        RosterScene scene = district();
        for (int step = 0; step < 60; ++step) RandomWords(scene, random).say();
        // Two contents under one number.
        Change forked = scene.changes()[scene.changes().size() / 2];
        forked.fields["label"] = {"forked"s, {}};
        scene.changes().push_back(forked);
        const Roster roster = scene.roster();
        std::vector<Change> probes = scene.changes();
        for (int again = 0; again < 8; ++again) {
            std::vector<Change> other = scene.changes();
            for (const Change& change : scene.changes())
                if (random() % 3 == 0) other.push_back(change);
            std::shuffle(other.begin(), other.end(), random);
            const Roster found = Roster::from(RosterScene::programme(), {stream("founder")}, other);
            QCOMPARE(shown(found), shown(roster));
            for (const Change& probe : probes) QVERIFY(found.standing(probe) == roster.standing(probe));
        }
    }
};

QTEST_APPLESS_MAIN(RosterOrderTest)
#include "roster_order_test.moc"
