// SPDX-License-Identifier: MIT
#include <QTest>

#include <set>
#include <sstream>

#include "domain/log/fold.h"
#include "domain/random_log.h"
#include "domain/records/visit.h"

using namespace duskrow::domain;
using duskrow::tests::RandomLog;
using namespace std::string_literals;

namespace {

std::string shown(const Value& value)
{
    if (const auto* flag = std::get_if<bool>(&value)) return *flag ? "yes" : "no";
    if (const auto* number = std::get_if<std::int64_t>(&value)) return std::to_string(*number);
    if (const auto* text = std::get_if<std::string>(&value)) return '"' + *text + '"';
    if (const auto* raw = std::get_if<RawJson>(&value)) return "raw " + raw->text;
    return "nothing";
}

// Everything a fold says, as text, so that two folds can be compared and a difference read.
std::string shown(const Folded& folded)
{
    std::ostringstream out;
    out << folded.kind << ' ' << formatUuid(folded.record) << ' ' << formatUuid(folded.site) << '\n';
    for (const auto& [field, heads] : folded.heads) {
        out << field << " = " << shown(folded.values.at(field)) << " of";
        for (const Head& head : heads) out << ' ' << formatRef(head.ref) << ':' << shown(head.value);
        out << '\n';
    }
    for (const Difference& difference : folded.differences) {
        out << "differs: " << difference.field;
        for (const Head& head : difference.heads)
            out << ' ' << formatRef(head.ref) << ':' << shown(head.value);
        out << '\n';
    }
    return out.str() + (folded.broughtBack ? "brought back" : "");
}

bool isLower(const Value& a, const Value& b)
{
    if (a.index() != b.index()) return a.index() < b.index();
    if (const auto* number = std::get_if<std::int64_t>(&a)) return *number < std::get<std::int64_t>(b);
    return shown(a) < shown(b);
}

// The rules of the fold by brute force: what stands is found pair by pair, values by looking through them.
Folded oracle(std::vector<Change> changes)
{
    std::sort(changes.begin(), changes.end(), [](const Change& a, const Change& b) { return a.ref < b.ref; });
    Folded folded;
    folded.kind = changes.front().kind;
    folded.record = changes.front().record;
    for (auto change = changes.rbegin(); change != changes.rend(); ++change) {
        if (!change->site.isNil()) folded.site = change->site;
        for (const auto& [field, set] : change->fields)
            if (RandomLog::stands(changes, *change, field))
                folded.heads[field].insert(folded.heads[field].begin(), {change->ref, set.value});
    }
    const std::set<std::string> measured =
        folded.kind == "visit" ? std::set<std::string>{"emptied", "pest"} : std::set<std::string>{};
    for (const auto& [field, heads] : folded.heads) {
        Value picked = heads.front().value;
        bool differs = false;
        std::string remarks;
        for (const Head& head : heads) {
            differs = differs || head.value != picked;
            if (isLower(picked, head.value)) picked = head.value;
        }
        if (differs && field == "remark" && folded.kind == "visit") {
            for (const std::string letter : {"a", "b", "c", "d"})
                for (const Head& head : heads)
                    if (head.value == Value{letter} && remarks.find(letter) == std::string::npos)
                        remarks += (remarks.empty() ? "" : "\n") + letter;
            picked = remarks;
        }
        folded.values[field] = picked;
        if (differs && measured.contains(field)) folded.differences.push_back({field, heads});
    }
    if (!folded.heads.contains("withdrawn") || isEmpty(folded.values["withdrawn"])) return folded;
    for (const auto& [field, heads] : folded.heads)
        for (const Head& head : heads) {
            bool seen = false;
            for (const Change& change : changes)
                if (change.fields.contains("withdrawn") && RandomLog::stands(changes, change, "withdrawn"))
                    seen = seen || change.ref == head.ref
                        || std::count(change.saw.begin(), change.saw.end(), head.ref) > 0;
            folded.broughtBack = folded.broughtBack || !seen;
        }
    if (folded.broughtBack) folded.values["withdrawn"] = {};
    return folded;
}

// One change of a visit, by stream and number.
struct Act {
    std::uint8_t stream;
    std::int64_t seq;
    ByName<FieldSet> fields;
    std::vector<ChangeRef> saw = {};
};

ChangeRef ref(std::uint8_t stream, std::int64_t seq)
{
    ChangeRef made{{}, seq};
    made.stream.back() = stream;
    return made;
}

Folded foldActs(const std::vector<Act>& acts, const std::string& kind = "visit")
{
    std::vector<Change> changes;
    for (const Act& act : acts) {
        Change& change = changes.emplace_back();
        change.kind = kind;
        change.record.bytes.back() = 1;
        change.ref = ref(act.stream, act.seq);
        change.fields = act.fields;
        change.saw = act.saw;
    }
    return fold(changes);
}

Value moths(std::int64_t count)
{
    return count;
}

} // namespace

class FoldTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void equalsTheOracleInAnyOrder_data()
    {
        QTest::addColumn<unsigned>("seed");
        QTest::addColumn<QByteArray>("kind");
        for (unsigned seed = 1; seed <= 150; ++seed)
            QTest::addRow("seed %u", seed) << seed << QByteArray(seed % 5 == 0 ? "balloon" : "visit");
    }

    void equalsTheOracleInAnyOrder()
    {
        QFETCH(unsigned, seed);
        QFETCH(QByteArray, kind);
        RandomLog log(seed, kind.toStdString());
        std::vector<Change> changes = log.grow(1 + static_cast<int>(seed % 5), 40);
        const std::string wanted = shown(oracle(changes));
        QCOMPARE(shown(fold(changes)), wanted);
        for (int again = 0; again < 10; ++again) {
            std::vector<Change> other = changes;
            for (const Change& change : changes)
                if (log.below(3) == 0) other.push_back(change);
            std::shuffle(other.begin(), other.end(), log.random());
            QCOMPARE(shown(fold(other)), wanted);
        }
    }

    // Batches that overlap, in any order, folded as they come: the end is the same.
    void batchesDoNotMatter()
    {
        for (unsigned seed = 1000; seed < 1030; ++seed) {
            RandomLog log(seed, "visit");
            const std::vector<Change> changes = log.grow(4, 40);
            std::vector<std::vector<Change>> batches(5);
            for (const Change& change : changes) {
                batches[log.below(5)].push_back(change);
                batches[log.below(5)].push_back(change);
            }
            std::shuffle(batches.begin(), batches.end(), log.random());
            std::vector<Change> held;
            std::string last;
            for (const auto& batch : batches) {
                held.insert(held.end(), batch.begin(), batch.end());
                if (!held.empty()) last = shown(fold(held));
            }
            QCOMPARE(last, shown(oracle(changes)));
        }
    }

    // What is alone is folded in a shorter way: to the same.
    void theOnlyChangeFoldsToItsValues()
    {
        RandomLog log(7, "visit");
        std::vector<Change> changes = log.grow(4, 200);
        Change emptied = changes.front();
        emptied.fields["withdrawn"] = {""s, {}};
        changes.push_back(emptied);
        emptied.fields["withdrawn"] = {"wrong trap"s, {}};
        changes.push_back(emptied);
        for (const Change& change : changes) {
            const Folded whole = fold(std::span(&change, 1));
            QCOMPARE(whole.values.size(), change.fields.size());
            for (const auto& [field, set] : change.fields)
                QVERIFY(onlyValue(field, set) == whole.values.at(field));
            QVERIFY(whole.isThere && !whole.broughtBack && whole.differences.empty());
        }
    }

    void laterReplacesWhatItCites()
    {
        const auto folded =
            foldActs({{1, 1, {{"pest", {moths(9), {}}}}}, {1, 2, {{"pest", {moths(4), {ref(1, 1)}}}}}});
        QVERIFY(folded.values.at("pest") == moths(4));
        QVERIFY(folded.differences.empty());
        QVERIFY(baseOf(folded, "pest") == std::vector{ref(1, 2)});
        QVERIFY(baseOf(folded, "bees").empty());
    }

    void measuredDifferenceKeepsBothAndDrawsTheHighest()
    {
        const std::vector<Act> acts{{1, 1, {{"pest", {moths(9), {}}}}},
            {1, 2, {{"pest", {moths(12), {ref(1, 1)}}}}}, {2, 1, {{"pest", {moths(100), {ref(1, 1)}}}}}};
        const auto folded = foldActs(acts);
        QVERIFY(folded.values.at("pest") == moths(100));
        QCOMPARE(folded.differences.size(), std::size_t{1});
        QCOMPARE(folded.differences.front().field, "pest"s);
        QCOMPARE(folded.differences.front().heads.size(), std::size_t{2});

        auto settled = acts;
        settled.push_back({3, 1, {{"pest", {moths(12), {ref(1, 2), ref(2, 1)}}}}});
        QVERIFY(foldActs(settled).values.at("pest") == moths(12));
        QVERIFY(foldActs(settled).differences.empty());
    }

    void sameValueTwiceIsNoDifference()
    {
        const auto folded =
            foldActs({{1, 1, {{"pest", {moths(9), {}}}}}, {2, 1, {{"pest", {moths(9), {}}}}}});
        QVERIFY(folded.differences.empty());
        QCOMPARE(baseOf(folded, "pest").size(), std::size_t{2});
    }

    void clearingAgainstACountIsADifferenceAndTheCountIsDrawn()
    {
        const auto folded = foldActs({{1, 1, {{"pest", {moths(0), {}}}}},
            {1, 2, {{"pest", {Value{}, {ref(1, 1)}}}}}, {2, 1, {{"pest", {moths(3), {ref(1, 1)}}}}}});
        QVERIFY(folded.values.at("pest") == moths(3));
        QCOMPARE(folded.differences.size(), std::size_t{1});
    }

    void bothRemarksAreKept()
    {
        const auto folded = foldActs({{2, 1, {{"remark", {"hail on Monday"s, {}}}}},
            {1, 1, {{"remark", {"gate was open"s, {}}}}}, {3, 1, {{"remark", {Value{}, {}}}}}});
        QVERIFY(folded.values.at("remark") == Value{"gate was open\nhail on Monday"s});
        QVERIFY(folded.differences.empty());
    }

    void aLabelIsPickedTheSameEverywhere()
    {
        const Act one{1, 1, {{"observer", {"Tom"s, {}}}}};
        const Act other{2, 1, {{"observer", {"Ida"s, {}}}}};
        QVERIFY(foldActs({one, other}).values.at("observer") == Value{"Tom"s});
        QVERIFY(foldActs({other, one}).values.at("observer") == Value{"Tom"s});
        QVERIFY(foldActs({one, other}).differences.empty());
    }

    // Withdrawn once more by somebody whose stream stands before the first one's, and who saw less.
    void whatAnEarlierWithdrawalSawIsNotSeenByTheNext_data()
    {
        QTest::addColumn<int>("next");
        QTest::newRow("a stream before") << 2;
        QTest::newRow("a stream after") << 4;
    }
    void whatAnEarlierWithdrawalSawIsNotSeenByTheNext()
    {
        QFETCH(int, next);
        const auto stream = static_cast<std::uint8_t>(next);
        const auto folded = foldActs({{1, 1, {{"pest", {moths(9), {}}}}}, {1, 2, {{"remark", {"rain"s, {}}}}},
            {3, 1, {{"withdrawn", {"twice"s, {}}}}, {ref(1, 1), ref(1, 2)}},
            {stream, 1, {{"withdrawn", {"twice"s, {ref(3, 1)}}}}, {ref(1, 1), ref(3, 1)}}});
        QVERIFY(folded.broughtBack);
        QVERIFY(isEmpty(folded.values.at("withdrawn")));
    }

    void withdrawnRecordsStayWithdrawnWhenEverythingWasSeen()
    {
        const auto folded = foldActs(
            {{1, 1, {{"pest", {moths(9), {}}}}}, {2, 1, {{"withdrawn", {"wrong trap"s, {}}}}, {ref(1, 1)}}});
        QVERIFY(!folded.broughtBack);
        QCOMPARE(toRecord<Visit>(folded).withdrawn, "wrong trap"s);
        QVERIFY(toRecord<Visit>(folded).pest == Moths{9});
    }

    void anEditTheWithdrawalDidNotSeeBringsTheRecordBack()
    {
        const auto folded = foldActs({{1, 1, {{"pest", {moths(9), {}}}}},
            {2, 1, {{"withdrawn", {"wrong trap"s, {}}}}, {ref(1, 1)}}, {3, 1, {{"bees", {moths(1), {}}}}}});
        QVERIFY(folded.broughtBack);
        QCOMPARE(toRecord<Visit>(folded).withdrawn, ""s);
    }

    void anEditAfterTheWithdrawalBringsItBackAndASecondWithdrawalHolds()
    {
        std::vector<Act> acts{{1, 1, {{"pest", {moths(9), {}}}}},
            {1, 2, {{"withdrawn", {"wrong trap"s, {}}}}, {ref(1, 1)}},
            {1, 3, {{"pest", {moths(8), {ref(1, 1)}}}}}};
        QVERIFY(foldActs(acts).broughtBack);
        acts.push_back({1, 4, {{"withdrawn", {"really"s, {ref(1, 2)}}}}, {ref(1, 2), ref(1, 3)}});
        QVERIFY(!foldActs(acts).broughtBack);
        QVERIFY(foldActs(acts).values.at("withdrawn") == Value{"really"s});
        acts.push_back({1, 5, {{"withdrawn", {Value{}, {ref(1, 4)}}}}, {ref(1, 3), ref(1, 4)}});
        QVERIFY(!foldActs(acts).broughtBack);
        QVERIFY(isEmpty(foldActs(acts).values.at("withdrawn")));
    }

    void twoWithdrawalsSeeEachOther()
    {
        const auto folded =
            foldActs({{1, 1, {{"pest", {moths(9), {}}}}}, {1, 2, {{"withdrawn", {"b"s, {}}}}, {ref(1, 1)}},
                {2, 1, {{"withdrawn", {"a"s, {}}}}, {ref(1, 1)}}});
        QVERIFY(!folded.broughtBack);
        QVERIFY(folded.values.at("withdrawn") == Value{"b"s});
    }

    void aWithdrawalWithoutReasonIsNone()
    {
        const auto folded = foldActs({{1, 1, {{"withdrawn", {""s, {}}}}}});
        QVERIFY(isEmpty(folded.values.at("withdrawn")));
    }

    void unknownFieldsAndKindsFoldLikeLabels()
    {
        const auto folded =
            foldActs({{1, 1, {{"zz", {"a"s, {}}}}}, {2, 1, {{"zz", {RawJson{"[]"}, {}}}}}}, "balloon");
        QVERIFY(folded.values.at("zz") == Value{RawJson{"[]"}});
        QVERIFY(folded.differences.empty());
        const auto visit = foldActs({{1, 1, {{"zz", {moths(3), {}}}, {"pest", {"many"s, {}}}}}});
        const auto record = toRecord<Visit>(visit);
        QVERIFY(!record.pest);
        QVERIFY(record.fromNewer.at("zz") == moths(3));
        QVERIFY(record.fromNewer.at("pest") == Value{"many"s});
    }

    void whatANewBaseCitesIsEverythingThatStands()
    {
        const auto folded = foldActs({{1, 1, {{"pest", {moths(9), {}}}, {"bees", {moths(0), {}}}}},
            {2, 1, {{"pest", {moths(8), {}}}}}, {2, 2, {{"bees", {moths(1), {ref(1, 1)}}}}}});
        QVERIFY(allSeen(folded) == (std::vector{ref(1, 1), ref(2, 1), ref(2, 2)}));
    }
};

QTEST_APPLESS_MAIN(FoldTest)
#include "fold_test.moc"
