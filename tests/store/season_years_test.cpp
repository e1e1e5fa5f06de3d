// SPDX-License-Identifier: MIT
#include <QTest>

#include "store/season_records.h"
#include "store/season_years.h"
#include "store/store_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

namespace {

const TrapKind kind{"bertha-armyworm", "bucket"};

Protocol protocolWithBands()
{
    Protocol protocol;
    protocol.id = kind.pest;
    CatchRule rule;
    rule.trapTypes = {kind.trapType};
    rule.bands.resize(2);
    rule.bands[0].id = "low";
    rule.bands[0].below = Moths{300};
    rule.bands[1].id = "high";
    rule.bands[1].level = 2;
    rule.bands[1].from = Moths{300};
    protocol.catchRules.push_back(rule);
    TrapType type;
    type.id = kind.trapType;
    protocol.trapTypes.push_back(type);
    return protocol;
}

Season seasonOf(int year)
{
    Season season;
    season.id = idOf(static_cast<std::uint32_t>(year));
    season.year = year;
    return season;
}

void keep(Store& store, std::vector<Edit> edits)
{
    QVERIFY(store.keepNow(batchOf(std::move(edits))).has_value());
}

// A trap of one year, counted on these days of July; its number is that of trap and site.
void addTrap(Store& store, int year, std::uint32_t number, const Uuid& district, const std::string& type,
    const std::vector<std::pair<unsigned, int>>& counts)
{
    Site site;
    site.id = idOf(1'000'000 + number);
    site.season = seasonOf(year).id;
    site.district = district;
    site.keeper = idOf(2);
    Trap trap;
    trap.id = idOf(2'000'000 + number);
    trap.site = site.id;
    trap.season = site.season;
    trap.pest = kind.pest;
    trap.trapType = type;
    trap.setDay = dayOf(year, 6, 10);
    std::vector<Edit> edits{creation(site, site.id), creation(trap, site.id)};
    for (const auto& [day, moths] : counts) {
        Visit visit = visitOf(3'000'000 + number * 40 + day, moths);
        visit.trap = trap.id;
        visit.day = dayOf(year, 7, day);
        edits.push_back(creation(visit, site.id));
    }
    keep(store, std::move(edits));
}

} // namespace

class SeasonYearsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Each year up to 14 July; other trap types, later counts and years to come are not in it.
    void yearsAtTheSameDate()
    {
        const StoreScene scene;
        const auto store = scene.open();
        for (const int year : {2024, 2025, 2026, 2027}) keep(*store, {creation(seasonOf(year), {})});
        addTrap(*store, 2024, 1, {}, "sticky", {{1, 9}});
        addTrap(*store, 2025, 2, idOf(70), "bucket", {{1, 10}, {14, 30}, {15, 500}});
        addTrap(*store, 2025, 3, idOf(71), "bucket", {{7, 4}});
        addTrap(*store, 2026, 4, idOf(70), "bucket", {{7, 350}});
        addTrap(*store, 2026, 5, idOf(70), "bucket", {});
        addTrap(*store, 2027, 6, idOf(70), "bucket", {});
        const auto reader = store->reader();
        std::vector<int> told;
        const auto years =
            regionYears(**reader, protocolWithBands(), kind, dayOf(2026, 7, 14), [&told](int year) {
                told.push_back(year);
                return true;
            });
        QVERIFY(years.has_value());
        QCOMPARE(told, (std::vector{2026, 2025, 2024}));
        QCOMPARE(years->size(), std::size_t{2}); // of 2024 there is no such trap
        const RegionYear& now = years->at(0);
        QCOMPARE(now.year, 2026);
        QCOMPARE(now.on, dayOf(2026, 7, 14));
        QCOMPARE(now.all.catches.median, 350.0);
        QCOMPARE(now.all.uncounted, std::size_t{1});
        QVERIFY(now.isSoFar); // nothing is whole yet: bands of the catch so far
        QCOMPARE(now.inBand, (std::vector<std::size_t>{0, 1}));
        const RegionYear& before = years->at(1);
        QCOMPARE(before.on, dayOf(2025, 7, 14));
        QCOMPARE(before.all.catches.highest, 40.0);
        QCOMPARE(before.districts.size(), std::size_t{2});
        QCOMPARE(before.districts[0].catches.median, 40.0);
        QCOMPARE(before.districts[1].catches.median, 4.0);
        QVERIFY(!before.isSoFar);
    }

    void readingStopsWhenAsked()
    {
        const StoreScene scene;
        const auto store = scene.open();
        for (const int year : {2025, 2026}) {
            keep(*store, {creation(seasonOf(year), {})});
            addTrap(*store, year, static_cast<std::uint32_t>(year), {}, "bucket", {{1, 1}});
        }
        const auto reader = store->reader();
        const auto years = regionYears(
            **reader, protocolWithBands(), kind, dayOf(2026, 7, 14), [](int year) { return year == 2026; });
        QCOMPARE(years->size(), std::size_t{1});
    }

    // Every trap with its own records, and with what is left out.
    void recordsOfASeason()
    {
        const StoreScene scene;
        const auto store = scene.open();
        keep(*store, {creation(seasonOf(2026), {})});
        addTrap(*store, 2026, 1, idOf(70), "bucket", {{1, 5}, {8, 7}});
        addTrap(*store, 2026, 2, {}, "bucket", {{2, 11}});
        Ruling ruling;
        ruling.id = idOf(90);
        ruling.subject = idOf(3'000'000 + 40 + 8);
        ruling.leftOut = "typed at the wrong trap";
        keep(*store, {creation(ruling, {})});
        const auto reader = store->reader();
        const auto records = seasonRecords(**reader, seasonOf(2026), VisitsFor::Catch);
        QVERIFY(records.has_value());
        QCOMPARE(records->traps.size(), std::size_t{2});
        for (const Trap& trap : records->traps) {
            const TrapFacts facts = records->facts(trap);
            QCOMPARE(facts.visits.size(), trap.id == idOf(2'000'001) ? std::size_t{2} : std::size_t{1});
            for (const Visit& visit : facts.visits) QCOMPARE(visit.trap, trap.id);
            QCOMPARE(records->siteOf(trap)->id, trap.site);
            QCOMPARE(facts.leftOut.size(), std::size_t{1});
        }
        const auto names = seasonRecords(**reader, seasonOf(2026), VisitsFor::Nothing);
        QVERIFY(names->visits.empty() && names->sites.size() == 2);
        // What is left out is in no week and no sum.
        const auto region =
            regionOfSeason(**reader, seasonOf(2026), protocolWithBands(), kind, dayOf(2026, 7, 14));
        QVERIFY(region.has_value());
        QCOMPARE(
            region->result.whole.season.catches.traps + region->result.whole.season.minimum, std::size_t{2});
        QCOMPARE(region->result.districts.size(), std::size_t{2});
        QCOMPARE(region->seasons.size(), std::size_t{2});
        QCOMPARE(region->result.whole.highest, &region->records.traps[1]);
    }
};

QTEST_GUILESS_MAIN(SeasonYearsTest)
#include "season_years_test.moc"
