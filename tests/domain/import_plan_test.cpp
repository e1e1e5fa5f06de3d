// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/import/import_plan.h"

using namespace duskrow::domain;

namespace {

Uuid idOf(std::uint8_t number)
{
    Uuid id;
    id.bytes[15] = number;
    return id;
}

const ImportTerms terms{idOf(1), "bertha-armyworm", "3", "green-bucket"};

CountRow rowOf(std::size_t line, const char* site, const char* tag, LocalDay day, std::int64_t moths)
{
    CountRow row;
    row.line = line;
    row.year = yearOf(day);
    row.day = day;
    row.pest = Moths{moths};
    row.district = "North";
    row.site = site;
    row.tag = tag;
    return row;
}

const LocalDay june8 = dayOf(2019, 6, 8);
const LocalDay june15 = dayOf(2019, 6, 15);

std::vector<CountRow> twoTraps()
{
    return {rowOf(2, "Slough corner", "1", june8, 4), rowOf(3, "Slough corner", "1", june15, 11),
        rowOf(4, "Slough corner", "2", june8, 0)};
}

template <typename R>
std::vector<R> recordsOf(const ImportPlan& plan)
{
    std::vector<R> records;
    for (const Edit& edit : plan.places) {
        if (edit.kind != kindOf<R>().name) continue;
        R record;
        record.id = edit.record;
        for (const auto& [name, value] : edit.fields) assign(kindOf<R>(), record, name, value);
        records.push_back(record);
    }
    return records;
}

KnownRecords knownAfter(const ImportPlan& plan)
{
    KnownRecords known;
    known.seasons = recordsOf<Season>(plan);
    known.districts = recordsOf<District>(plan);
    known.uses = recordsOf<ProtocolUse>(plan);
    known.sites = recordsOf<Site>(plan);
    known.traps = recordsOf<Trap>(plan);
    for (const PlannedVisit& visit : plan.visits) {
        const CountRow& row = plan.rows[visit.row];
        known.visits.push_back(
            {visit.id, plan.traps[visit.trap].id, row.day, Outcome::Counted, row.pest, {}});
    }
    return known;
}

std::size_t madeOf(const ImportPlan& plan, const char* kind)
{
    const auto found = plan.made.find(kind);
    return found == plan.made.end() ? 0 : found->second;
}

} // namespace

class ImportPlanTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everythingIsMadeOnce()
    {
        const ImportPlan plan = planImport(twoTraps(), {}, {}, terms);
        QCOMPARE(madeOf(plan, "season"), std::size_t{1});
        QCOMPARE(madeOf(plan, "protocol_use"), std::size_t{1});
        QCOMPARE(madeOf(plan, "district"), std::size_t{1});
        QCOMPARE(madeOf(plan, "site"), std::size_t{1});
        QCOMPARE(madeOf(plan, "trap"), std::size_t{2});
        QCOMPARE(madeOf(plan, "visit"), std::size_t{3});
        QCOMPARE(plan.size(), std::size_t{9});
        QCOMPARE(plan.refused.rows, std::size_t{0});
        QCOMPARE(plan.trapsWithoutSetDay, std::size_t{2});
        for (std::size_t i = 0; i < plan.size(); ++i) QVERIFY(checkEdit(plan.edit(i)).has_value());
        QCOMPARE(recordsOf<Season>(plan).front().id, seasonId(terms.programme, 2019));
        QCOMPARE(recordsOf<Trap>(plan).front().pest, std::string("bertha-armyworm"));
    }

    // A count of nothing is a count.
    void zeroIsKeptAsZero()
    {
        const ImportPlan plan = planImport(twoTraps(), {}, {}, terms);
        int zeros = 0;
        for (std::size_t i = plan.places.size(); i < plan.size(); ++i) {
            const Edit edit = plan.edit(i);
            if (edit.fields.at("pest") == Value{std::int64_t{0}}) ++zeros;
            QCOMPARE(edit.fields.at("outcome"), Value{std::string("counted")});
        }
        QCOMPARE(zeros, 1);
    }

    // Counts add up only where the trap was emptied: a row says it, or the terms for all that do not.
    void whetherTheTrapWasEmptied_data()
    {
        QTest::addColumn<std::optional<bool>>("ofTheRow");
        QTest::addColumn<std::optional<bool>>("ofTheTable");
        QTest::addColumn<std::optional<bool>>("made");
        const auto row = [](const char* claim, std::optional<bool> ofTheRow, std::optional<bool> ofTheTable,
                             std::optional<bool> made) {
            QTest::newRow(claim) << ofTheRow << ofTheTable << made;
        };
        row("as protocols ask, where nobody says", {}, ImportTerms{}.emptied, true);
        row("the table says no", {}, false, false);
        row("nobody knows", {}, {}, {});
        row("the row says no", false, true, false);
        row("the row alone says yes", true, {}, true);
    }

    void whetherTheTrapWasEmptied()
    {
        QFETCH(const std::optional<bool>, ofTheRow);
        QFETCH(const std::optional<bool>, ofTheTable);
        QFETCH(const std::optional<bool>, made);
        CountRow row = rowOf(2, "Slough corner", "1", june8, 4);
        row.emptied = ofTheRow;
        ImportTerms asked = terms;
        asked.emptied = ofTheTable;
        const ImportPlan plan = planImport({row}, {}, {}, asked);
        const Edit edit = plan.edit(plan.size() - 1);
        QVERIFY(checkEdit(edit));
        const auto found = edit.fields.find("emptied");
        QCOMPARE(
            found == edit.fields.end() ? std::nullopt : std::optional(std::get<bool>(found->second)), made);
    }

    void theSameAgainMakesNothing()
    {
        const ImportPlan first = planImport(twoTraps(), {}, {}, terms);
        const ImportPlan second = planImport(twoTraps(), {}, knownAfter(first), terms);
        QCOMPARE(second.size(), std::size_t{0});
        QCOMPARE(second.alreadyThere, std::size_t{3});
        QCOMPARE(second.refused.rows, std::size_t{0});
    }

    void otherSpellingsMeetInTheSameRecords()
    {
        const ImportPlan first = planImport(twoTraps(), {}, {}, terms);
        auto rows = twoTraps();
        for (CountRow& row : rows) {
            row.site = "  SLOUGH   Corner";
            row.district = "north";
        }
        QCOMPARE(planImport(rows, {}, knownAfter(first), terms).size(), std::size_t{0});
        const ImportPlan alone = planImport(rows, {}, {}, terms);
        QCOMPARE(recordsOf<Site>(alone).front().id, recordsOf<Site>(first).front().id);
        QCOMPARE(alone.visits.front().id, first.visits.front().id);
    }

    void whatTheStoreHasIsMetThere()
    {
        KnownRecords known;
        Season season;
        season.id = idOf(20);
        season.year = 2019;
        season.countDay = 1;
        Site site;
        site.id = idOf(21);
        site.season = season.id;
        site.name = "Slough Corner";
        Trap trap;
        trap.id = idOf(22);
        trap.site = site.id;
        trap.season = season.id;
        trap.pest = terms.pest;
        trap.tag = "1";
        known.seasons = {season};
        known.sites = {site};
        known.traps = {trap};
        known.visits = {{idOf(23), trap.id, june8, Outcome::Counted, Moths{4}, {}}};
        const ImportPlan plan = planImport(twoTraps(), {}, known, terms);
        QCOMPARE(madeOf(plan, "season"), std::size_t{0});
        QCOMPARE(madeOf(plan, "site"), std::size_t{0});
        QCOMPARE(madeOf(plan, "trap"), std::size_t{1}); // tag 2
        QCOMPARE(madeOf(plan, "visit"), std::size_t{2});
        QCOMPARE(plan.alreadyThere, std::size_t{1});
    }

    void refusals_data()
    {
        QTest::addColumn<int>("code");
        QTest::addColumn<int>("line");
        QTest::addColumn<int>("story");
        const auto row = [](const char* claim, ErrorCode code, int line, int story) {
            QTest::newRow(claim) << static_cast<int>(code) << line << story;
        };
        row("two counts of one trap and day", ErrorCode::CountKept, 5, 0);
        row("another count than the store's", ErrorCode::CountDiffers, 2, 1);
        row("a visit that could not count", ErrorCode::CountDiffers, 2, 2);
        row("a visit somebody took back", ErrorCode::RecordWithdrawn, 2, 3);
        row("a site somebody took back", ErrorCode::RecordWithdrawn, 2, 4);
        row("a trap somebody took back", ErrorCode::RecordWithdrawn, 2, 5);
        row("no tag where two traps stand", ErrorCode::NameAmbiguous, 5, 6);
    }

    void refusals()
    {
        QFETCH(int, code);
        QFETCH(int, line);
        QFETCH(int, story);
        auto rows = twoTraps();
        KnownRecords known = knownAfter(planImport(rows, {}, {}, terms));
        const Uuid visit =
            visitId(terms.programme, trapId(terms.programme, known.sites.front().id, terms.pest, "1"), june8);
        for (KnownVisit& one : known.visits) {
            if (one.id != visit) continue;
            if (story == 1) one.pest = Moths{5};
            if (story == 2) one.pest.reset(), one.outcome = Outcome::CouldNotCount;
            if (story == 3) one.withdrawn = "counted twice";
        }
        if (story == 0) known = {}, rows.push_back(rowOf(5, "Slough corner", "1", june8, 7));
        if (story == 4)
            known.sites.front().withdrawn = "never a site", known.traps.clear(), known.visits.clear();
        if (story == 5) known.traps.front().withdrawn = "never a trap", known.visits.clear();
        if (story == 6) rows.push_back(rowOf(5, "Slough corner", "", june15, 7));
        const ImportPlan plan = planImport(rows, {}, known, terms);
        QVERIFY(plan.refused.rows >= 1);
        QCOMPARE(static_cast<int>(plan.refused.words.front().error.code), code);
        QCOMPARE(static_cast<int>(plan.refused.words.front().line), line);
    }

    void aRowSaidTwiceIsMadeOnce()
    {
        auto rows = twoTraps();
        rows.push_back(rowOf(5, "Slough corner", "1", june8, 4));
        const ImportPlan plan = planImport(rows, {}, {}, terms);
        QCOMPARE(plan.repeated, std::size_t{1});
        QCOMPARE(madeOf(plan, "visit"), std::size_t{3});
    }

    // What an undoing took back stands again; with the same content.
    void whatWasUndoneStandsAgain()
    {
        KnownRecords known = knownAfter(planImport(twoTraps(), {}, {}, terms));
        const std::string reason = std::string(undoneReason) + "counts.csv";
        for (auto& one : known.seasons) one.withdrawn = reason;
        for (auto& one : known.sites) one.withdrawn = reason;
        for (auto& one : known.traps) one.withdrawn = reason;
        for (auto& one : known.visits) one.withdrawn = reason;
        const ImportPlan plan = planImport(twoTraps(), {}, known, terms);
        QCOMPARE(madeOf(plan, "season"), std::size_t{1});
        QCOMPARE(madeOf(plan, "trap"), std::size_t{2});
        QCOMPARE(madeOf(plan, "visit"), std::size_t{3});
        for (std::size_t i = 0; i < plan.size(); ++i) QVERIFY(isEmpty(plan.edit(i).fields.at("withdrawn")));
    }

    void nightsAndDays()
    {
        auto rows = twoTraps();
        rows[0].fromDay = june8 - std::chrono::days{7};
        rows[1].fromDay = june15 - std::chrono::days{5}; // two nights are missing
        const ImportPlan plan = planImport(rows, {}, {}, terms);
        QCOMPARE(*recordsOf<Trap>(plan).front().setDay, june8 - std::chrono::days{7});
        QCOMPARE(plan.trapsWithoutSetDay, std::size_t{1});
        QCOMPARE(plan.notes.rows, std::size_t{1});
        QCOMPARE(plan.notes.words.front().line, std::size_t{3});
        QCOMPARE(plan.notes.words.front().error.args, (std::vector<std::string>{"5", "7"}));
    }

    void placesThatDiffer()
    {
        auto rows = twoTraps();
        rows[0].place = GeoPoint{500'000'000, -1'060'000'000};
        rows[1].place = GeoPoint{500'000'010, -1'060'000'000};
        const ImportPlan plan = planImport(rows, {}, {}, terms);
        QCOMPARE(recordsOf<Trap>(plan).front().place(), rows[0].place);
        QCOMPARE(plan.notes.words.front().error.code, ErrorCode::PlaceDiffers);
        QCOMPARE(plan.notes.words.front().error.args.front(), std::string("2"));
    }
};

QTEST_APPLESS_MAIN(ImportPlanTest)
#include "import_plan_test.moc"
