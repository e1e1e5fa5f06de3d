// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/roster_acts.h"

using namespace duskrow::domain;
using namespace duskrow::tests;
using namespace std::string_literals;

class RosterStandingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whoMayWhat_data()
    {
        QTest::addColumn<QByteArray>("act");
        QTest::addColumn<QByteArray>("who");
        QTest::addColumn<char>("expected");
        const std::vector<std::string> people{
            "founder", "root", "cora", "gus", "gus2", "hal", "ada", "lost", "pat", "kim", "stranger"};
        //                                        founder root cora gus gus2 hal ada lost pat kim stranger
        const std::map<std::string, std::string> table{
            {"visit at Gus's", "+ + + + + N + E M N ?"},
            {"visit at Hal's, lent trap, in its days", "+ + + + + + N E M N ?"},
            {"visit at Hal's, lent trap, last day", "+ + + + + + N E M N ?"},
            {"visit at Hal's, lent trap, day before", "+ + + N N + N E M N ?"},
            {"visit at Hal's, lent trap, day after", "+ + + N N + N E M N ?"},
            {"visit at Hal's, other trap", "+ + + N N + N E M N ?"},
            {"service of the lent trap", "+ + + + + + N E M N ?"},
            {"sample of the lent trap", "+ + + + + + N E M N ?"},
            {"walk at Hal's", "+ + + N N + N E M N ?"},
            {"trap at Hal's", "+ + + N N + N E M N ?"},
            {"loan at Hal's", "+ + + N N + N E M N ?"},
            {"loan at Gus's", "+ + + + + N + E M N ?"},
            {"visit without site", "+ + + C C C C E M C ?"},
            {"unknown kind at Gus's", "+ + + + + N + E M N ?"},
            {"unknown kind without site", "+ + + C C C C E M C ?"},
            {"Gus's site", "+ + + + + N + E M N ?"},
            {"Hal's site", "+ + + N N + N E M N ?"},
            {"Hal's site, as if Gus's", "+ + + N N + N E M N ?"},
            {"programme", "+ + + C C C C E M C ?"},
            {"season", "+ + + C C C C E M C ?"},
            {"district", "+ + + C C C C E M C ?"},
            {"protocol_use", "+ + + C C C C E M C ?"},
            {"station", "+ + + C C C C E M C ?"},
            {"temperature", "+ + + C C C C E M C ?"},
            {"temperature at Gus's", "+ + + C C C C E M C ?"},
            {"new member", "+ + + C C C C E M C ?"},
            {"new coordinator", "+ + R C C C C E M C ?"},
            {"Gus a coordinator", "+ + R C C C C E M C ?"},
            {"Gus leaves", "+ + + M M C C E M C ?"},
            {"Carl leaves", "+ + R C C C C E M C ?"},
            {"Carl a grower", "+ + R C C C C E M C ?"},
            {"Carl's name", "+ + + C C C C E M C ?"},
            {"Hal's phone ends", "+ + + C C C C E M C ?"},
            {"Carl's phone ends", "+ + R C C C C E M C ?"},
            {"Carl's phone is Gus's", "+ + R C C C C E M C ?"},
            {"a root's phone ends", "+ + R C C C C E M C ?"},
            {"the founder's phone ends", "+ + R C C C C E M C ?"},
            {"Hal's phone a root", "+ + R C C C C E M C ?"},
            {"Gus's phone a root", "+ + R C C C C E M C ?"},
            {"Gus's phone's label", "+ + + + C C C E M C ?"},
            {"Gus's stream in Hal's device", "+ + + C C C C E M C ?"},
            {"invitation", "+ + + C C C C E M C ?"},
            {"assignment", "+ + + C C C C E M C ?"},
            {"ruling at Gus's", "+ + + C C C C E M C ?"},
            {"bulletin", "+ + + C C C C E M C ?"},
            {"bulletin at Gus's", "+ + + C C C C E M C ?"},
            {"question at Gus's", "+ + + C C C C E M C ?"},
            {"question settled at Gus's", "+ + + C C C C E M C ?"},
            {"answer at Gus's", "+ + + + + N + E M N ?"},
            {"answer of the lent trap, in its days", "+ + + + + + N E M N ?"},
            {"answer of the lent trap, day after", "+ + + N N + N E M N ?"},
            {"answer at Hal's, other trap", "+ + + N N + N E M N ?"},
            {"admission at Gus's", "+ + + C C C C E M C ?"},
        };
        QCOMPARE(table.size(), acts().size());
        for (const auto& [act, row] : table)
            for (std::size_t i = 0; i < people.size(); ++i)
                QTest::addRow("%s: %s", people[i].c_str(), act.c_str()) << QByteArray::fromStdString(
                    act) << QByteArray::fromStdString(people[i]) << row.at(2 * i);
    }

    // Each act is done for real: words on the roster may change the roster that judges them.
    void whoMayWhat()
    {
        QFETCH(QByteArray, act);
        QFETCH(QByteArray, who);
        QFETCH(char, expected);
        RosterScene scene = district();
        const Act done = acts().at(act.toStdString());
        const Change change = scene.says(who.toStdString(), done.kind, done.record, done.site, done.fields);
        const Standing found = scene.roster().standing(change);
        const bool leftByThat = act == "Gus leaves" && expected == 'M' && found == Standing::CoordinatorOnly;
        QVERIFY2(found == standings.at(expected) || leftByThat,
            qPrintable(QString::number(static_cast<int>(found))));
    }

    void aRecordStaysAtItsSite()
    {
        RosterScene scene = district();
        const Uuid record = RosterScene::id("a visit");
        const Change made =
            scene.change("hal", "visit", record, "hal field", visit("hal trap", "2026-06-15"));
        const Change moved =
            scene.change("gus", "visit", record, "gus field", {{"pest", {std::int64_t{9}, {made.ref}}}});
        const Change byCora = scene.change("cora", "visit", record, "gus field", {{"remark", {"x"s, {}}}});
        const auto found = scene.roster().weigh(std::vector{made, moved, byCora});
        QVERIFY((found == std::vector{Standing::Counts, Standing::OtherSite, Standing::Counts}));
    }

    void aBorrowerCorrectsHisWorkLaterButNotOnOtherTraps()
    {
        RosterScene scene = district();
        const Uuid record = RosterScene::id("a visit");
        const Change made =
            scene.change("gus", "visit", record, "hal field", visit("hal trap", "2026-06-15"));
        Change later =
            scene.change("gus", "visit", record, "hal field", {{"pest", {std::int64_t{4}, {made.ref}}}});
        later.at += std::chrono::days{60};
        const Change toOther = scene.change(
            "gus", "visit", record, "hal field", {{"trap", {RosterScene::text("other trap"), {made.ref}}}});
        const auto found = scene.roster().weigh(std::vector{made, later, toOther});
        QVERIFY((found == std::vector{Standing::Counts, Standing::Counts, Standing::NotYours}));

        const Uuid halRecord = RosterScene::id("another visit");
        const Change other =
            scene.change("hal", "visit", halRecord, "hal field", visit("other trap", "2026-06-15"));
        const Change onOther =
            scene.change("gus", "visit", halRecord, "hal field", {{"bees", {std::int64_t{1}, {}}}});
        QVERIFY((scene.roster().weigh(std::vector{other, onOther})
            == std::vector{Standing::Counts, Standing::NotYours}));
    }

    // Two loans of two traps with different days: the days of one open nothing at the other.
    void theDaysOfOneLoanAreNotThoseOfAnother()
    {
        RosterScene scene = district();
        scene.lends("hal", "other trap", "hal field", "Gus", "2026-07-01", "2026-07-10");
        const Uuid record = RosterScene::id("a visit");
        const Change made =
            scene.change("hal", "visit", record, "hal field", visit("hal trap", "2026-07-05"));
        const Change byGus = scene.change("gus", "visit", record, "hal field",
            {{"day", {"2026-07-05"s, {made.ref}}}, {"pest", {std::int64_t{4}, {made.ref}}}});
        QVERIFY((scene.roster().weigh(std::vector{made, byGus})
            == std::vector{Standing::Counts, Standing::NotYours}));
    }

    // Whoever's stream is lowest: filling in what nobody had filled makes no record.
    void fillingInAnEmptyFieldMakesNothing_data()
    {
        QTest::addColumn<QByteArray>("maker");
        QTest::addColumn<QByteArray>("filler");
        for (const char* maker : {"gus", "hal", "kim"})
            for (const char* filler : {"cora", "carl", "root", "ada"})
                QTest::addRow("%s's, filled by %s", maker, filler) << QByteArray(maker) << QByteArray(filler);
    }

    void fillingInAnEmptyFieldMakesNothing()
    {
        QFETCH(QByteArray, maker);
        QFETCH(QByteArray, filler);
        RosterScene scene = district();
        const std::string field = maker.toStdString() + " field";
        scene.says(filler.toStdString(), "site", RosterScene::id(field), field, {{"gate", {"chain"s, {}}}});
        const Roster roster = scene.roster();
        const Uuid member = roster.memberOf(RosterScene::stream(maker.toStdString()));
        QVERIFY(roster.sitesOf(member).contains(RosterScene::id(field)));
        const Uuid record = RosterScene::id("a visit");
        const Change made =
            scene.change(maker.toStdString(), "visit", record, field, visit("t", "2026-06-15"));
        const Change filled = scene.change("cora", "visit", record, field, {{"remark", {"late"s, {}}}});
        for (const Standing found : roster.weigh(std::vector{made, filled}))
            QVERIFY(found == Standing::Counts);
    }

    void settling_data()
    {
        QTest::addColumn<QByteArray>("who");
        QTest::addColumn<QByteArrayList>("heads");
        QTest::addColumn<QByteArray>("field");
        QTest::addColumn<char>("expected");
        const auto row = [](const char* who, const QByteArrayList& heads, const char* field, char expected) {
            QTest::addRow("%s settles %s of %s", who, field, heads.join(" and ").constData())
                << QByteArray(who) << heads << QByteArray(field) << expected;
        };
        row("gus", {"gus", "gus2"}, "pest", '+');
        row("gus", {"gus", "ada"}, "pest", 'S');
        row("gus", {"ada", "hal"}, "pest", 'S');
        row("gus", {"gus", "stranger"}, "pest", 'S');
        row("gus", {"stranger", "nobody"}, "pest", 'S');
        row("ada", {"gus", "gus2"}, "pest", '+');
        row("gus", {"ada"}, "pest", '+');
        row("gus", {"gus", "ada"}, "remark", '+');
        row("gus", {"gus", "ada"}, "zz", '+');
        row("cora", {"gus", "ada"}, "pest", '+');
        row("root", {"gus", "ada"}, "pest", '+');
    }

    void settling()
    {
        QFETCH(QByteArray, who);
        QFETCH(QByteArrayList, heads);
        QFETCH(QByteArray, field);
        QFETCH(char, expected);
        RosterScene scene = district();
        std::vector<ChangeRef> base;
        for (const QByteArray& head : heads) base.push_back({RosterScene::stream(head.toStdString()), 40});
        const Change change = scene.change(who.toStdString(), "visit", RosterScene::id("a visit"),
            "gus field", {{field.toStdString(), {std::int64_t{3}, base}}});
        QVERIFY(scene.roster().standing(change) == standings.at(expected));
    }

    void anAdmissionLetsInAndCanBeTakenBack()
    {
        RosterScene scene = district();
        const Change strange =
            scene.change("stranger", "visit", RosterScene::id("v"), "gus field", visit("t", "2026-06-15"));
        const Uuid admission = admissionId(RosterScene::programme(), formatRef(strange.ref));
        const std::string before = scene.roster().rightsOf(strange.ref.stream);
        scene.says("gus", "admission", admission, "gus field", {{"change", {formatRef(strange.ref), {}}}});
        QVERIFY(scene.roster().standing(strange) == Standing::NotEnrolled);
        const Change lets =
            scene.says("cora", "admission", admission, "", {{"change", {formatRef(strange.ref), {}}}});
        QVERIFY(scene.roster().standing(strange) == Standing::Counts);
        QVERIFY(scene.roster().rightsOf(strange.ref.stream) != before);
        scene.withdraws("cora", "admission", admission, "");
        QVERIFY(scene.roster().standing(strange) == Standing::NotEnrolled);
        QCOMPARE(scene.roster().rightsOf(strange.ref.stream), before);
    }

    void whoMayRead_data()
    {
        QTest::addColumn<QByteArray>("what");
        QTest::addColumn<QByteArray>("who");
        QTest::addColumn<bool>("expected");
        const std::vector<std::string> people{
            "founder", "root", "cora", "gus", "gus2", "hal", "ada", "pat", "kim", "stranger"};
        //                            founder root cora gus gus2 hal ada pat kim stranger
        const std::map<std::string, std::string> table{
            {"gus: visit at gus field", "+ + + + + - + - - -"},
            {"gus: visit at hal field", "+ + + + + + - - - -"},
            {"hal: visit at hal field", "+ + + + + + - - - -"},
            {"hal: visit at gus field", "+ + + + + + + - - -"},
            {"cora: visit at kim field", "+ + + - - - - - + -"},
            {"cora: member at ", "+ + + + + + + + + +"},
            {"cora: invitation at ", "+ + + + + + + + + +"},
            {"stranger: visit at gus field", "+ + + + + - + - - +"},
        };
        for (const auto& [what, row] : table)
            for (std::size_t i = 0; i < people.size(); ++i)
                QTest::addRow("%s reads %s", people[i].c_str(), what.c_str()) << QByteArray::fromStdString(
                    what) << QByteArray::fromStdString(people[i]) << (row.at(2 * i) == '+');
    }

    void whoMayRead()
    {
        QFETCH(QByteArray, what);
        QFETCH(QByteArray, who);
        QFETCH(bool, expected);
        RosterScene scene = district();
        const qsizetype colon = what.indexOf(':');
        const qsizetype at = what.indexOf(" at ");
        const Change change =
            scene.change(what.left(colon).toStdString(), what.mid(colon + 2, at - colon - 2).toStdString(),
                RosterScene::id("r"), what.mid(at + 4).toStdString(), {{"zz", {"1"s, {}}}});
        QCOMPARE(scene.roster().mayRead(RosterScene::stream(who.toStdString()), change), expected);
    }

    // A site's own record is read like what happens there, even when its change forgot to name it.
    void aForeignSiteIsNotRead()
    {
        RosterScene scene = district();
        const Change change =
            scene.change("hal", "site", RosterScene::id("hal field"), "", {{"gate", {"x"s, {}}}});
        QVERIFY(!scene.roster().mayRead(RosterScene::stream("kim"), change));
        QVERIFY(scene.roster().mayRead(RosterScene::stream("cora"), change));
    }
};

QTEST_APPLESS_MAIN(RosterStandingTest)
#include "roster_standing_test.moc"
