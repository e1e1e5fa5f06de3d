// SPDX-License-Identifier: MIT
#include <QTest>

#include <set>

#include "domain/log/fold.h"
#include "domain/random_words.h"

using namespace duskrow::domain;
using duskrow::tests::RandomWords;
using duskrow::tests::RosterScene;
using namespace std::string_literals;

namespace {

RosterScene district()
{
    RosterScene scene;
    scene.member("founder", "Cora", "coordinator");
    scene.device("founder", "cora", "Cora");
    scene.member("cora", "Gus", "grower");
    scene.device("cora", "gus", "Gus");
    scene.device("cora", "gus2", "Gus");
    scene.site("gus", "a");
    return scene;
}

// One record at Gus's, and what is said of it.
class Talk {
public:
    Change pest(const std::string& who, std::int64_t moths, std::vector<ChangeRef> base = {})
    {
        changes.push_back(
            m_scene.change(who, "visit", RosterScene::id("v"), "a", {{"pest", {moths, std::move(base)}}}));
        return changes.back();
    }
    [[nodiscard]] Folded folded(const std::optional<RulingSeen>& ruling = {}) const
    {
        return fold(changes, {&m_roster, ruling ? &*ruling : nullptr});
    }

    std::vector<Change> changes;

private:
    RosterScene m_scene = district();
    Roster m_roster = m_scene.roster();
};

std::int64_t pestIn(const Folded& folded)
{
    const auto found = folded.values.find("pest");
    return found == folded.values.end() ? -1 : std::get<std::int64_t>(found->second);
}

std::string shown(const Value& value)
{
    if (const auto* number = std::get_if<std::int64_t>(&value)) return std::to_string(*number);
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    return "nothing";
}

// Everything that context decides, as text.
std::string shown(const Folded& folded)
{
    std::string all = folded.isThere ? "there " : "not there ";
    all += folded.kind + (folded.isRulingStale ? " stale" : "") + (folded.broughtBack ? " brought back" : "")
        + '\n';
    if (folded.isThere) all += formatUuid(folded.site) + '\n';
    for (const auto& [ref, standing] : folded.aside)
        all += "aside " + formatRef(ref) + ' ' + std::to_string(static_cast<int>(standing)) + '\n';
    for (const ChangeRef& ref : folded.proposals) all += "proposal " + formatRef(ref) + '\n';
    for (const auto& [field, heads] : folded.heads) {
        std::multiset<std::string> standing;
        for (const Head& head : heads) standing.insert(formatRef(head.ref) + '=' + shown(head.value));
        for (const std::string& head : standing) all += field + ' ' + head + '\n';
    }
    return all;
}

// The same by brute force: who counts is asked change by change, what is replaced is looked for in all
// others.
std::string oracle(std::vector<Change> changes, const Roster& roster, const RulingSeen* ruling)
{
    std::vector<Change> distinct;
    for (const Change& change : changes)
        if (std::find(distinct.begin(), distinct.end(), change) == distinct.end()) distinct.push_back(change);
    std::sort(distinct.begin(), distinct.end(), [](const Change& a, const Change& b) {
        return std::pair(a.ref, canonicalJson(a)) < std::pair(b.ref, canonicalJson(b));
    });
    Folded folded;
    folded.kind = distinct.front().kind;
    std::vector<Change> counting;
    const std::vector<Standing> standings = roster.weigh(distinct);
    for (std::size_t i = 0; i < distinct.size(); ++i)
        if (roster.isAlone() || standings[i] == Standing::Counts)
            counting.push_back(distinct[i]);
        else
            folded.aside.emplace_back(distinct[i].ref, standings[i]);
    std::vector<Change> taken;
    for (const Change& change : counting) {
        bool isTaken = !ruling || roster.isCoordinator(change.ref.stream);
        if (ruling && ruling->saw.count(change.ref) == 0) folded.isRulingStale = true;
        if (ruling && ruling->saw.count(change.ref) != 0) isTaken = true;
        for (const Change& other : counting)
            for (const auto& [field, set] : other.fields)
                if (roster.isCoordinator(other.ref.stream)
                    && std::count(set.base.begin(), set.base.end(), change.ref) > 0)
                    isTaken = true;
        if (isTaken)
            taken.push_back(change);
        else
            folded.proposals.push_back(change.ref);
    }
    folded.isThere = !taken.empty();
    if (folded.isThere) folded.kind = taken.front().kind;
    std::set<ChangeRef> seen;
    for (const Change& change : taken) {
        if (folded.site.isNil()) folded.site = change.site;
        for (const auto& [field, set] : change.fields) {
            bool isReplaced = false;
            for (const Change& other : taken)
                if (const auto found = other.fields.find(field); found != other.fields.end())
                    isReplaced = isReplaced
                        || std::count(found->second.base.begin(), found->second.base.end(), change.ref) > 0;
            if (isReplaced) continue;
            folded.heads[field].push_back({change.ref, set.value});
            if (field != "withdrawn") continue;
            seen.insert(change.ref);
            for (const Change& same : taken)
                if (same.ref == change.ref && same.fields.contains(field))
                    seen.insert(same.saw.begin(), same.saw.end());
        }
    }
    // Withdrawn with a reason, and something stands that no standing withdrawal saw.
    bool isWithdrawn = false;
    for (const Head& head : folded.heads["withdrawn"])
        isWithdrawn = isWithdrawn || shown(head.value).size() > 0;
    if (folded.heads["withdrawn"].empty()) folded.heads.erase("withdrawn");
    for (const auto& [field, heads] : folded.heads)
        for (const Head& head : heads)
            if (isWithdrawn && !seen.contains(head.ref)) folded.broughtBack = true;
    return shown(folded);
}

} // namespace

class FoldContextTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsKeptAsideIsLeftOut()
    {
        Talk talk;
        const Change strange = talk.pest("stranger", 3);
        QVERIFY(!talk.folded().isThere);
        QCOMPARE(talk.folded().kind, "visit"s);
        QCOMPARE(talk.folded().aside.size(), std::size_t{1});
        talk.pest("gus", 5);
        QVERIFY(talk.folded().isThere);
        QCOMPARE(pestIn(talk.folded()), std::int64_t{5});
        QVERIFY((talk.folded().aside.front() == std::pair(strange.ref, Standing::NotEnrolled)));
        QVERIFY(fold(talk.changes).aside.empty());
    }

    // Whom nobody let in replaces nothing.
    void whatIsKeptAsideReplacesNothing()
    {
        Talk talk;
        const Change mine = talk.pest("gus", 5);
        talk.pest("stranger", 3, {mine.ref});
        QCOMPARE(pestIn(talk.folded()), std::int64_t{5});
        QVERIFY(talk.folded().differences.empty());
    }

    void editsOfARecordThatStandsAreProposals()
    {
        Talk talk;
        const Change made = talk.pest("gus", 5);
        const RulingSeen ruling{{made.ref}};
        QVERIFY(!talk.folded(ruling).isRulingStale);
        const Change edit = talk.pest("gus", 9, {made.ref});
        Folded folded = talk.folded(ruling);
        QCOMPARE(pestIn(folded), std::int64_t{5});
        QVERIFY(folded.proposals == std::vector{edit.ref});
        QVERIFY(folded.isRulingStale);

        // A newer ruling that saw it takes it.
        folded = talk.folded(RulingSeen{{made.ref, edit.ref}});
        QCOMPARE(pestIn(folded), std::int64_t{9});
        QVERIFY(folded.proposals.empty() && !folded.isRulingStale);

        // So does a coordinator's change that cites it, whatever it sets; the ruling is stale by that change.
        talk.pest("cora", 7, {made.ref, edit.ref});
        folded = talk.folded(ruling);
        QCOMPARE(pestIn(folded), std::int64_t{7});
        QVERIFY(folded.proposals.empty() && folded.isRulingStale && folded.differences.empty());
    }

    void aProposalCitedByAnotherProposalIsNotTaken()
    {
        Talk talk;
        const Change made = talk.pest("gus", 5);
        const Change first = talk.pest("gus", 6, {made.ref});
        const Change second = talk.pest("gus2", 7, {first.ref});
        const Folded folded = talk.folded(RulingSeen{{made.ref}});
        QCOMPARE(folded.proposals.size(), std::size_t{2});
        QCOMPARE(pestIn(folded), std::int64_t{5});
        QVERIFY(folded.proposals.front() == std::min(first.ref, second.ref));
    }

    void aRulingThatCameBeforeItsRecordHidesIt()
    {
        Talk talk;
        talk.pest("gus", 5);
        const Folded folded = talk.folded(RulingSeen{});
        QVERIFY(!folded.isThere);
        QCOMPARE(folded.proposals.size(), std::size_t{1});
        talk.pest("cora", 4);
        QVERIFY(talk.folded(RulingSeen{}).isThere);
        QCOMPARE(pestIn(talk.folded(RulingSeen{})), std::int64_t{4});
    }

    // One reference, two contents: both stand; who cites it answers both.
    void bothContentsOfAForkCount()
    {
        Talk talk;
        Change one = talk.pest("gus", 5);
        Change other = one;
        other.fields["pest"].value = std::int64_t{8};
        for (const bool swapped : {false, true}) {
            talk.changes = swapped ? std::vector{other, one, other} : std::vector{one, other};
            const Folded folded = talk.folded();
            QCOMPARE(folded.heads.at("pest").size(), std::size_t{2});
            QCOMPARE(folded.differences.size(), std::size_t{1});
            QCOMPARE(pestIn(folded), std::int64_t{8});
            QCOMPARE(shown(folded), oracle(talk.changes, district().roster(), nullptr));
        }
        talk.pest("cora", 6, {one.ref});
        QCOMPARE(pestIn(talk.folded()), std::int64_t{6});
        QVERIFY(talk.folded().differences.empty());
    }

    void equalsTheOracleInAnyOrder_data()
    {
        QTest::addColumn<unsigned>("seed");
        for (unsigned seed = 1; seed <= 60; ++seed) QTest::addRow("seed %u", seed) << seed;
    }

    void equalsTheOracleInAnyOrder()
    {
        QFETCH(unsigned, seed);
        std::mt19937 random(seed);
        RosterScene scene = district();
        RandomWords words(scene, random);
        for (int step = 0; step < 90; ++step)
            if (random() % 4 == 0)
                words.say();
            else
                words.work();
        const Roster roster = scene.roster();
        std::map<Uuid, std::vector<Change>> records;
        for (const Change& change : scene.changes()) records[change.record].push_back(change);
        int rulings = 0;
        for (auto& [record, changes] : records) {
            if (random() % 3 == 0) { // a fork
                Change forked = changes[random() % changes.size()];
                forked.fields["bees"] = {std::int64_t{1}, {}};
                changes.push_back(forked);
            }
            std::optional<RulingSeen> ruling;
            if (random() % 2 == 0) ruling.emplace();
            for (const Change& change : changes)
                if (ruling && random() % 2 == 0) ruling->saw.insert(change.ref);
            rulings += ruling ? 1 : 0;
            const RulingSeen* seen = ruling ? &*ruling : nullptr;
            const std::string wanted = oracle(changes, roster, seen);
            for (int again = 0; again < 5; ++again) {
                std::vector<Change> other = changes;
                for (const Change& change : changes)
                    if (random() % 3 == 0) other.push_back(change);
                std::shuffle(other.begin(), other.end(), random);
                QCOMPARE(shown(fold(other, {&roster, seen})), wanted);
            }
        }
        QVERIFY(rulings > 0);
    }
};

QTEST_APPLESS_MAIN(FoldContextTest)
#include "fold_context_test.moc"
