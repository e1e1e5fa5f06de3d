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

} // namespace

class RosterClaimsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void claims_data()
    {
        QTest::addColumn<QByteArray>("what");
        QTest::addColumn<bool>("expected");
        QTest::newRow("a good claim") << QByteArray("good") << true;
        QTest::newRow("the last day") << QByteArray("last day") << true;
        QTest::newRow("the day after") << QByteArray("late") << false;
        QTest::newRow("another code") << QByteArray("code") << false;
        QTest::newRow("a proof for another stream") << QByteArray("stream") << false;
        QTest::newRow("a proof for another programme") << QByteArray("programme") << false;
        QTest::newRow("another key") << QByteArray("key") << false;
        QTest::newRow("no proof") << QByteArray("none") << false;
        QTest::newRow("an invitation taken back") << QByteArray("withdrawn") << false;
        QTest::newRow("an invitation by a grower") << QByteArray("grower") << false;
    }

    void claims()
    {
        QFETCH(QByteArray, what);
        QFETCH(bool, expected);
        RosterScene scene = district();
        scene.invites(
            what == "grower" ? "hal" : "cora", "Gus", "spring", what == "late" ? "2026-06-14" : "2026-06-15");
        if (what == "withdrawn")
            scene.withdraws("cora", "invitation", RosterScene::id("invitation spring"), "");
        const Uuid programme = what == "programme" ? RosterScene::id("another") : RosterScene::programme();
        auto fields =
            RosterScene::claimFields("new", "spring", stream(what == "stream" ? "gus" : "new"), programme);
        if (what == "code") {
            fields = RosterScene::claimFields("new", "autumn", stream("new"), programme);
            fields["invitation"] = {RosterScene::text("invitation spring"), {}};
        }
        if (what == "key") fields["key"] = {formatHex(RosterScene::keyOf("gus").key), {}};
        if (what == "none") fields.erase("proof");
        scene.says("new", "device", RosterScene::deviceOf("new"), "", fields);
        QCOMPARE(scene.roster().isEnrolled(stream("new")), expected);
        QCOMPARE(scene.roster().memberOf(stream("new")), expected ? RosterScene::id("Gus") : Uuid{});
        if (expected) QVERIFY(!scene.roster().devices().at(stream("new")).isConfirmed);
        const Roster roster = scene.roster();
        const auto& invitations = roster.invitations();
        const auto invitation = invitations.find(RosterScene::id("invitation spring"));
        if (invitation != invitations.end()) QCOMPARE(invitation->second.isClaimed, expected);
    }

    // Every claim names the key of its device; that takes nothing from a root.
    void theClaimOfACoordinatorCounts()
    {
        RosterScene scene = district();
        scene.invites("founder", "Cora", "spring");
        scene.claims("new", "spring");
        const Roster roster = scene.roster();
        QVERIFY(roster.isCoordinator(stream("new")));
        bool isFound = false;
        for (const Change& change : scene.changes())
            if (change.ref.stream == stream("new") && change.kind == "device") {
                isFound = true;
                QVERIFY(roster.standing(change) == Standing::Counts);
            }
        QVERIFY(isFound);
    }

    void ofTwoClaimsNoneCountsUntilOneIsConfirmed()
    {
        RosterScene scene = district();
        scene.invites("cora", "Gus", "spring");
        scene.claims("new", "spring");
        scene.claims("new", "spring"); // a repetition is no rival
        QCOMPARE(scene.roster().memberOf(stream("new")), RosterScene::id("Gus"));
        scene.claims("thief", "spring");
        for (const char* device : {"new", "thief"}) {
            QVERIFY(scene.roster().memberOf(stream(device)).isNil());
            QVERIFY(scene.roster().isEnrolled(stream(device))); // what they wrote is taken in, and waits
            QVERIFY(scene.roster().standing(scene.change(device, "visit", RosterScene::id("v"), "", {}))
                == Standing::NotEnrolled);
        }
        scene.says(
            "cora", "device", RosterScene::deviceOf("new"), "", {{"member", {RosterScene::text("Gus"), {}}}});
        QCOMPARE(scene.roster().memberOf(stream("new")), RosterScene::id("Gus"));
        QVERIFY(scene.roster().devices().at(stream("new")).isConfirmed);
        QVERIFY(scene.roster().memberOf(stream("thief")).isNil());
    }

    void ofTwoWhoClaimASiteTheLowerStreamKeepsItUnlessACoordinatorChose_data()
    {
        QTest::addColumn<bool>("isAssigned");
        QTest::addColumn<bool>("isKept");
        QTest::addRow("nobody chose") << false << false;
        QTest::addRow("assigned") << true << false;
        QTest::addRow("keeper") << false << true;
    }

    void ofTwoWhoClaimASiteTheLowerStreamKeepsItUnlessACoordinatorChose()
    {
        QFETCH(bool, isAssigned);
        QFETCH(bool, isKept);
        RosterScene scene = district();
        scene.site("gus", "field");
        scene.site("hal", "field");
        const bool isGusLower = stream("gus") < stream("hal");
        const std::string other = isGusLower ? "Hal" : "Gus";
        if (isAssigned) scene.assigns("cora", other, "field");
        if (isKept)
            scene.says("cora", "site", RosterScene::id("field"), "field",
                {{"keeper", {RosterScene::text(other), {}}}});
        const bool isChosen = isAssigned || isKept;
        const Uuid first = RosterScene::id(isGusLower ? "Gus" : "Hal");
        QCOMPARE(scene.roster().sitesOf(RosterScene::id(other)).contains(RosterScene::id("field")), isChosen);
        const Change ofFirst =
            scene.change(isGusLower ? "gus" : "hal", "visit", RosterScene::id("v"), "field", {});
        QCOMPARE(scene.roster().standing(ofFirst) == Standing::Counts, !isChosen);
        QCOMPARE(scene.roster().memberOf(ofFirst.ref.stream), first);
    }

    // Given to another, the field is his to read; what its maker wrote of it goes on counting.
    void aKeeperSetByACoordinator()
    {
        RosterScene scene = district();
        scene.site("gus", "field");
        const Change old = scene.change("gus", "visit", RosterScene::id("v"), "field", {{"zz", {"1"s, {}}}});
        scene.says(
            "hal", "site", RosterScene::id("field"), "field", {{"keeper", {RosterScene::text("Hal"), {}}}});
        QVERIFY(scene.roster().sitesOf(RosterScene::id("Hal")).empty());
        scene.says(
            "cora", "site", RosterScene::id("field"), "field", {{"keeper", {RosterScene::text("Hal"), {}}}});
        const Roster roster = scene.roster();
        QVERIFY(roster.sitesOf(RosterScene::id("Hal")).contains(RosterScene::id("field")));
        QVERIFY(roster.sitesOf(RosterScene::id("Gus")).empty());
        QVERIFY(roster.standing(old) == Standing::Counts);
        const Change byHal =
            scene.change("hal", "visit", RosterScene::id("w"), "field", {{"zz", {"1"s, {}}}});
        QVERIFY(roster.standing(byHal) == Standing::Counts);
        QVERIFY(roster.mayRead(stream("hal"), old));
        QVERIFY(!roster.mayRead(stream("gus"), byHal));
        QVERIFY(roster.mayRead(stream("gus"), old));
    }

    // Who works at one site lends no trap of another, nor turns another's loan to himself.
    void nobodyLendsWhatIsNotHis()
    {
        RosterScene scene = district();
        scene.site("gus", "gus field");
        scene.site("hal", "hal field");
        const Change wanted = scene.change("gus", "visit", RosterScene::id("v"), "hal field",
            {{"trap", {RosterScene::text("hal trap"), {}}}});
        scene.lends("gus", "hal trap", "hal field", "Gus", "2026-06-01", "2026-06-30");
        QVERIFY(scene.roster().standing(wanted) == Standing::NotYours);
        const ChangeRef loan = scene.lends("hal", "hal trap", "hal field", "Ida", "2026-06-01", "2026-06-30");
        scene.says("gus", "loan", RosterScene::id("loan of hal trap"), "gus field",
            {{"member", {RosterScene::text("Gus"), {loan}}}});
        QVERIFY(scene.roster().standing(wanted) == Standing::NotYours);
        scene.says("hal", "loan", RosterScene::id("loan of hal trap"), "hal field",
            {{"member", {RosterScene::text("Gus"), {loan}}}});
        QVERIFY(scene.roster().standing(wanted) == Standing::Counts);
        scene.withdraws("hal", "loan", RosterScene::id("loan of hal trap"), "hal field");
        QVERIFY(scene.roster().standing(wanted) == Standing::NotYours);
    }
};

QTEST_APPLESS_MAIN(RosterClaimsTest)
#include "roster_claims_test.moc"
