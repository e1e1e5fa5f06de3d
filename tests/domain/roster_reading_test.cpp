// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/roster_scene.h"

using namespace duskrow::domain;
using duskrow::tests::RosterScene;
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

Change probe(RosterScene& scene, const char* device)
{
    return scene.change(
        device, "season", RosterScene::id("season"), "", {{"year", {std::int64_t{2026}, {}}}});
}

bool counts(RosterScene& scene, const char* device)
{
    return scene.roster().standing(probe(scene, device)) == Standing::Counts;
}

} // namespace

class RosterReadingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void oneIsAloneUntilAnotherDeviceCame()
    {
        RosterScene scene;
        QVERIFY(scene.roster().isAlone());
        QVERIFY(scene.roster().isRoot(stream("founder")));
        scene.member("founder", "Gus", "grower");
        scene.invites("founder", "Gus", "spring");
        QVERIFY(scene.roster().isAlone());
        QCOMPARE(scene.roster().memberOf(stream("founder")), RosterScene::id("author of founder"));
        scene.claims("gus", "spring");
        QVERIFY(!scene.roster().isAlone());
        QCOMPARE(scene.roster().changes(), std::int64_t{3});
    }

    void onlyTheFounderMakesRoots()
    {
        RosterScene scene = district();
        QVERIFY(scene.roster().isRoot(stream("root")));
        for (const char* by : {"root", "cora", "gus"})
            scene.says(by, "device", RosterScene::deviceOf("hal"), "", {{"root", {true, {}}}});
        QVERIFY(!scene.roster().isRoot(stream("hal")));
        scene.says("founder", "device", RosterScene::deviceOf("root"), "",
            {{"root", {false, {ChangeRef{stream("founder"), 1}}}}});
        QVERIFY(!scene.roster().isRoot(stream("root")));
    }

    void onlyRootsGiveAndTakeTheRole()
    {
        RosterScene scene = district();
        QVERIFY(scene.roster().isCoordinator(stream("cora")));
        scene.member("cora", "Gus", "coordinator");
        scene.member("gus", "Gus", "coordinator");
        QVERIFY(!scene.roster().isCoordinator(stream("gus")));
        scene.member("hal", "Cora", "grower");
        QVERIFY(scene.roster().isCoordinator(stream("cora")));
        scene.says("root", "member", RosterScene::id("Cora"), "",
            {{"role", {"grower"s, {ChangeRef{stream("founder"), 3}}}}});
        QVERIFY(!scene.roster().isCoordinator(stream("cora")));
        QVERIFY(!scene.roster().isEnrolled(stream("gus"))); // whom she had let in
    }

    // Raised, he keeps his devices; they coordinate when a root lets them.
    void whoIsRaisedKeepsHisDevices()
    {
        RosterScene scene = district();
        scene.invites("cora", "Gus", "second phone");
        scene.claims("gus2", "second phone");
        scene.says("root", "member", RosterScene::id("Gus"), "",
            {{"role", {"coordinator"s, {ChangeRef{stream("cora"), 1}}}}});
        QCOMPARE(scene.roster().members().at(RosterScene::id("Gus")).name, "Gus"s);
        for (const char* phone : {"gus", "gus2"}) {
            QCOMPARE(scene.roster().memberOf(stream(phone)), RosterScene::id("Gus"));
            QVERIFY(!scene.roster().isCoordinator(stream(phone)));
            scene.says("root", "device", RosterScene::deviceOf(phone), "",
                {{"member", {RosterScene::text("Gus"), {}}}});
            QVERIFY(scene.roster().isCoordinator(stream(phone)));
        }
    }

    // Ways in which a coordinator might make another: none works.
    void aCoordinatorMakesNoCoordinator_data()
    {
        QTest::addColumn<int>("way");
        QTest::newRow("another key in a coordinator's invitation") << 0;
        QTest::newRow("another device of a coordinator") << 1;
        QTest::newRow("an invitation for a coordinator") << 2;
        QTest::newRow("another member in an invitation of a root's") << 3;
    }

    void aCoordinatorMakesNoCoordinator()
    {
        QFETCH(int, way);
        RosterScene scene = district();
        scene.member("founder", "Carl", "coordinator");
        scene.invites("founder", "Carl", "for carl");
        scene.invites("founder", "Hal", "for hal");
        if (way == 0)
            scene.says("cora", "invitation", RosterScene::id("invitation for carl"), "",
                {{"key", {formatHex(RosterScene::keyOf("zzz").key), {}}}});
        if (way == 0)
            scene.says("gus2", "device", RosterScene::deviceOf("gus2"), "", [] {
                auto fields =
                    RosterScene::claimFields("gus2", "zzz", stream("gus2"), RosterScene::programme());
                fields["invitation"] = {RosterScene::text("invitation for carl"), {}};
                return fields;
            }());
        if (way == 1) scene.device("cora", "gus2", "Carl");
        if (way == 2) {
            scene.invites("cora", "Carl", "again");
            scene.claims("gus2", "again");
        }
        if (way == 3) {
            scene.says("cora", "invitation", RosterScene::id("invitation for hal"), "",
                {{"member", {RosterScene::text("Carl"), {}}}});
            scene.claims("gus2", "for hal");
        }
        QVERIFY(!scene.roster().isCoordinator(stream("gus2")));
        scene.claims("carl", "for carl");
        QVERIFY(scene.roster().isCoordinator(stream("carl")));
    }

    void aCoordinatorEndsNoCoordinatorAndNoRoot_data()
    {
        QTest::addColumn<QByteArray>("target");
        QTest::addColumn<QByteArray>("record");
        for (const char* target : {"founder", "root", "carl", "claire"})
            for (const char* record : {"its own", "another"})
                QTest::addRow("%s, record of %s id", target, record)
                    << QByteArray(target) << QByteArray(record);
    }

    void aCoordinatorEndsNoCoordinatorAndNoRoot()
    {
        QFETCH(QByteArray, target);
        QFETCH(QByteArray, record);
        RosterScene scene = district();
        const std::string device = target.toStdString();
        for (const char* name : {"Carl", "Claire"}) scene.member("founder", name, "coordinator");
        scene.device("founder", "carl", "Carl");
        scene.invites("root", "Claire", "code");
        scene.claims("claire", "code");
        const std::string before = scene.roster().rightsOf(RosterScene::stream(device));
        QVERIFY(counts(scene, device.c_str()));
        const Uuid id = record == "another" ? RosterScene::id("forged") : RosterScene::deviceOf(device);
        scene.says("cora", "device", id, "",
            {{"stream", {formatHex(RosterScene::stream(device)), {}}},
                {"ended_after", {std::int64_t{0}, {}}}});
        scene.withdraws("cora", "device", id, "");
        scene.says("cora", "device", id, "", {{"member", {RosterScene::text("Hal"), {}}}});
        scene.says("cora", "device", id, "", {{"stream", {"00"s, {}}}});
        for (const char* name : {"Carl", "Claire"})
            scene.says("cora", "member", RosterScene::id(name), "",
                {{"until_day", {"2026-01-01"s, {}}}, {"withdrawn", {"x"s, {}}}});
        scene.withdraws("cora", "invitation", RosterScene::id("invitation code"), "");
        QCOMPARE(scene.roster().rightsOf(RosterScene::stream(device)), before);
        QVERIFY(counts(scene, device.c_str()));
        scene.ends("root2", device, 1);
        QVERIFY(!counts(scene, device.c_str()));
    }

    void aCoordinatorEndsAGrowersDeviceWithOneField()
    {
        RosterScene scene = district();
        scene.ends("cora", "gus", 7);
        QCOMPARE(scene.roster().devices().at(stream("gus")).endedAfter, std::optional<std::int64_t>{7});
        scene.invites("cora", "Hal", "code");
        scene.claims("hal2", "code");
        scene.ends("cora", "hal2", 0);
        QCOMPARE(scene.roster().devices().at(stream("hal2")).endedAfter, std::optional<std::int64_t>{0});
        scene.ends("hal", "gus", 1); // no word of his
        QCOMPARE(scene.roster().devices().at(stream("gus")).endedAfter, std::optional<std::int64_t>{7});
    }

    void aDeviceTakenBackIsOut()
    {
        RosterScene scene = district();
        scene.invites("cora", "Hal", "code");
        scene.claims("hal2", "code");
        for (const char* device : {"gus", "hal2"}) {
            QVERIFY(scene.roster().isEnrolled(stream(device)));
            scene.withdraws("cora", "device", RosterScene::deviceOf(device), "");
            QVERIFY(!scene.roster().isEnrolled(stream(device)));
        }
    }

    // What a coordinator said before he was ended, or before his last day, goes on counting.
    void wordsBeforeTheEndCount()
    {
        RosterScene scene = district();
        scene.ends("root", "cora", 4);
        QVERIFY(scene.roster().isEnrolled(stream("hal")));
        scene.member("cora", "Late", "grower");
        QVERIFY(!scene.roster().members().contains(RosterScene::id("Late")));

        RosterScene other = district();
        other.says("founder", "member", RosterScene::id("Cora"), "", {{"until_day", {"2026-06-14"s, {}}}});
        QVERIFY(!other.roster().isEnrolled(stream("hal"))); // said on the 15th
    }

    void rootsEndRootsAndTheFounderWhomHeDidNotEnd_data()
    {
        QTest::addColumn<QByteArrayList>("ends"); // by, device
        QTest::addColumn<QByteArrayList>("out");
        const auto row = [](const char* claim, const QByteArrayList& ends, const QByteArrayList& out) {
            QTest::newRow(claim) << ends << out;
        };
        const QByteArray founder = QByteArray("founder");
        const QByteArray root = QByteArray("root");
        const QByteArray root2 = QByteArray("root2");
        row("a root ends the founder", {root, founder}, {founder});
        row("the founder ends a root", {founder, root}, {root});
        row("each ends the other", {root, founder, founder, root}, {root});
        row("the other way round", {founder, root, root, founder}, {root});
        row("one root the other", {root, root2}, {root2});
        row("roots each other", {root, root2, root2, root}, {root, root2});
        row("an unended root ends the founder who ended another", {founder, root, root2, founder},
            {founder, root});
        row("one himself", {root, root}, {root});
    }

    void rootsEndRootsAndTheFounderWhomHeDidNotEnd()
    {
        QFETCH(QByteArrayList, ends);
        QFETCH(QByteArrayList, out);
        for (const std::int64_t after : {0, 50}) {
            RosterScene scene = district();
            for (qsizetype i = 0; i < ends.size(); i += 2)
                scene.ends(
                    ends[i].toStdString(), ends[i + 1].toStdString(), ends[i + 1] == "founder" ? 50 : after);
            for (const char* device : {"founder", "root", "root2"}) {
                const auto ended = scene.roster().devices().at(stream(device)).endedAfter;
                QVERIFY2(ended.has_value() == out.contains(QByteArray(device)), device);
            }
        }
    }
};

QTEST_APPLESS_MAIN(RosterReadingTest)
#include "roster_reading_test.moc"
