// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/roster_scene.h"

using namespace duskrow::domain;
using duskrow::tests::RosterScene;
using namespace std::string_literals;

namespace {

const std::map<char, Standing> standings{{'+', Standing::Counts}, {'?', Standing::NotEnrolled},
    {'E', Standing::Ended}, {'M', Standing::MemberEnded}, {'N', Standing::NotYours},
    {'O', Standing::OtherSite}, {'C', Standing::CoordinatorOnly}, {'R', Standing::RootOnly},
    {'S', Standing::SettlingNotYours}};

// A district in June. Gus has two phones and a third that he lost, Hal lends Gus one of two traps, Ada looks
// after Gus's field, Pat left at the end of May, Kim came by invitation.
RosterScene district()
{
    RosterScene scene;
    scene.root("founder", "root");
    scene.member("founder", "Cora", "coordinator");
    scene.device("root", "cora", "Cora");
    scene.member("founder", "Carl", "coordinator");
    scene.device("founder", "carl", "Carl");
    for (const char* name : {"Gus", "Hal", "Kim"}) scene.member("cora", name, "grower");
    scene.member("cora", "Ada", "agronomist");
    scene.says("cora", "member", RosterScene::id("Pat"), "",
        {{"name", {"Pat"s, {}}}, {"role", {"grower"s, {}}}, {"until_day", {"2026-05-31"s, {}}}});
    scene.device("cora", "gus", "Gus");
    scene.device("cora", "gus2", "Gus");
    scene.device("cora", "lost", "Gus");
    scene.ends("cora", "lost", 0);
    scene.device("cora", "hal", "Hal");
    scene.device("cora", "ada", "Ada");
    scene.device("cora", "pat", "Pat");
    scene.invites("cora", "Kim", "spring");
    scene.claims("kim", "spring");
    scene.site("gus", "gus field");
    scene.site("hal", "hal field");
    scene.site("pat", "pat field");
    scene.site("kim", "kim field");
    scene.assigns("cora", "Ada", "gus field");
    scene.lends("hal", "hal trap", "hal field", "Gus", "2026-06-10", "2026-06-20");
    return scene;
}

RosterScene::Fields visit(const std::string& trap, const std::string& day)
{
    return {{"trap", {RosterScene::text(trap), {}}}, {"day", {day, {}}}, {"pest", {std::int64_t{3}, {}}}};
}

struct Act {
    std::string kind;
    std::string site;
    RosterScene::Fields fields;
    Uuid record = RosterScene::id("a new record");
};

// Kinds of change that people try.
std::map<std::string, Act> acts()
{
    const auto hex = [](const char* device) { return formatHex(RosterScene::stream(device)); };
    const std::vector cited{ChangeRef{RosterScene::stream("hal"), 50}};
    return {
        {"visit at Gus's", {"visit", "gus field", visit("gus trap", "2026-06-15")}},
        {"visit at Hal's, lent trap, in its days", {"visit", "hal field", visit("hal trap", "2026-06-10")}},
        {"visit at Hal's, lent trap, last day", {"visit", "hal field", visit("hal trap", "2026-06-20")}},
        {"visit at Hal's, lent trap, day before", {"visit", "hal field", visit("hal trap", "2026-06-09")}},
        {"visit at Hal's, lent trap, day after", {"visit", "hal field", visit("hal trap", "2026-06-21")}},
        {"visit at Hal's, other trap", {"visit", "hal field", visit("other trap", "2026-06-15")}},
        {"service of the lent trap", {"service", "hal field", visit("hal trap", "2026-06-15")}},
        {"sample of the lent trap", {"sample", "hal field", visit("hal trap", "2026-06-15")}},
        {"walk at Hal's", {"walk", "hal field", {{"site", {RosterScene::text("hal field"), {}}}}}},
        {"trap at Hal's", {"trap", "hal field", {{"tag", {"7"s, {}}}}}},
        {"loan at Hal's", {"loan", "hal field", {{"trap", {RosterScene::text("x"), {}}}}}},
        {"loan at Gus's", {"loan", "gus field", {{"trap", {RosterScene::text("x"), {}}}}}},
        {"visit without site", {"visit", "", visit("gus trap", "2026-06-15")}},
        {"unknown kind at Gus's", {"balloon", "gus field", {{"zz", {"1"s, {}}}}}},
        {"unknown kind without site", {"balloon", "", {{"zz", {"1"s, {}}}}}},
        {"Gus's site", {"site", "gus field", {{"name", {"north"s, {}}}}, RosterScene::id("gus field")}},
        {"Hal's site", {"site", "hal field", {{"gate", {"open"s, {}}}}, RosterScene::id("hal field")}},
        {"Hal's site, as if Gus's",
            {"site", "gus field", {{"gate", {"open"s, {}}}}, RosterScene::id("hal field")}},
        {"programme", {"programme", "", {{"name", {"mine"s, {}}}}, RosterScene::programme()}},
        {"season", {"season", "", {{"year", {std::int64_t{2026}, {}}}}}},
        {"district", {"district", "", {{"name", {"West"s, {}}}}}},
        {"protocol_use", {"protocol_use", "", {{"pest", {"b"s, {}}}}}},
        {"station", {"station", "", {{"name", {"Airport"s, {}}}}}},
        {"temperature", {"temperature", "", {{"minimum_mc", {std::int64_t{7000}, {}}}}}},
        {"temperature at Gus's", {"temperature", "gus field", {{"minimum_mc", {std::int64_t{7000}, {}}}}}},
        {"new member", {"member", "", {{"name", {"Zed"s, {}}}, {"role", {"grower"s, {}}}}}},
        {"new coordinator", {"member", "", {{"role", {"coordinator"s, {}}}}}},
        {"Gus a coordinator", {"member", "", {{"role", {"coordinator"s, {}}}}, RosterScene::id("Gus")}},
        {"Gus leaves", {"member", "", {{"until_day", {"2026-06-01"s, {}}}}, RosterScene::id("Gus")}},
        {"Carl leaves", {"member", "", {{"until_day", {"2026-06-01"s, {}}}}, RosterScene::id("Carl")}},
        {"Carl a grower", {"member", "", {{"role", {"grower"s, {}}}}, RosterScene::id("Carl")}},
        {"Carl's name", {"member", "", {{"name", {"Carlo"s, {}}}}, RosterScene::id("Carl")}},
        {"Hal's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{0}, {}}}}, RosterScene::deviceOf("hal")}},
        {"Carl's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{0}, {}}}}, RosterScene::deviceOf("carl")}},
        {"Carl's phone is Gus's",
            {"device", "", {{"member", {RosterScene::text("Gus"), {}}}}, RosterScene::deviceOf("carl")}},
        {"a root's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{99}, {}}}}, RosterScene::deviceOf("root")}},
        {"the founder's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{99}, {}}}}, RosterScene::deviceOf("founder")}},
        {"Hal's phone a root", {"device", "", {{"root", {true, {}}}}, RosterScene::deviceOf("hal")}},
        {"Gus's phone a root",
            {"device", "", {{"stream", {hex("gus"), {}}}, {"root", {true, {}}}},
                RosterScene::deviceOf("gus")}},
        {"Gus's phone's label",
            {"device", "", {{"label", {"the red one"s, {}}}}, RosterScene::deviceOf("gus")}},
        {"Gus's stream in Hal's device",
            {"device", "", {{"stream", {hex("gus"), {}}}}, RosterScene::deviceOf("hal")}},
        {"invitation", {"invitation", "", {{"member", {RosterScene::text("Gus"), {}}}}}},
        {"assignment", {"assignment", "hal field", {{"site", {RosterScene::text("hal field"), {}}}}}},
        {"ruling at Gus's", {"ruling", "gus field", {{"says", {"stands"s, {}}}}}},
        {"bulletin", {"bulletin", "", {{"text", {"All is well."s, {}}}}}},
        {"bulletin at Gus's", {"bulletin", "gus field", {{"text", {"All is well."s, {}}}}}},
        {"question at Gus's", {"question", "gus field", {{"words", {"47?"s, {}}}}}},
        {"question settled at Gus's", {"question", "gus field", {{"settled", {true, {}}}}}},
        {"answer at Gus's", {"answer", "gus field", visit("gus trap", "2026-06-15")}},
        {"answer of the lent trap, in its days", {"answer", "hal field", visit("hal trap", "2026-06-15")}},
        {"answer of the lent trap, day after", {"answer", "hal field", visit("hal trap", "2026-06-21")}},
        {"answer at Hal's, other trap", {"answer", "hal field", visit("other trap", "2026-06-15")}},
        {"admission at Gus's", {"admission", "gus field", {{"change", {formatRef(cited.front()), {}}}}}},
    };
}

} // namespace

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
