// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/region_result.h"
#include "domain/rules/region_years.h"
#include "domain/rules/trap_season_on.h"
#include "trap_story.h"

using namespace duskrow::domain;

namespace {

Uuid idOf(std::uint8_t number)
{
    Uuid id;
    id.bytes[15] = number;
    return id;
}

SeasonRules rules()
{
    SeasonRules made;
    made.latestSetUp = storyDay("0615");
    made.earliestTakeDown = storyDay("0725");
    made.weekStart = std::chrono::Monday;
    made.today = storyDay("0801");
    return made;
}

TrapOfYear trapOf(
    std::uint8_t district, std::uint8_t keeper, int moths, std::optional<std::size_t> level = {})
{
    return {idOf(district), idOf(keeper), Moths{moths}, true, false, level};
}

std::vector<Band> bands()
{
    std::vector<Band> made(2);
    made[0].id = "few";
    made[1].id = "many";
    made[1].level = 2;
    made[1].from = Moths{20};
    return made;
}

} // namespace

class RegionYearsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSameDay_data()
    {
        QTest::addColumn<QString>("day");
        QTest::addColumn<int>("year");
        QTest::addColumn<QString>("same");
        QTest::newRow("a day of July") << "2026-07-14" << 2019 << "2019-07-14";
        QTest::newRow("29 February, from a leap year") << "2024-02-29" << 2023 << "2023-02-28";
        QTest::newRow("29 February, to a leap year") << "2024-02-29" << 2020 << "2020-02-29";
        QTest::newRow("28 February") << "2023-02-28" << 2024 << "2024-02-28";
    }

    void theSameDay()
    {
        QFETCH(QString, day);
        QFETCH(int, year);
        QFETCH(QString, same);
        const auto from = parseDay(day.toStdString());
        QCOMPARE(QString::fromStdString(formatDay(sameDayIn(*from, year))), same);
    }

    // By hand: district 1 has 10, 30 and a minimum; district 2 has 50, 0, 2 and one that nobody counted.
    void groupsOfAYear()
    {
        std::vector<TrapOfYear> traps{trapOf(1, 7, 10, 0), trapOf(1, 8, 30, 1), trapOf(1, 8, 99),
            trapOf(2, 8, 50, 1), trapOf(2, 7, 0, 0), trapOf(2, 7, 2, 0), trapOf(2, 9, 0)};
        traps[2].isMinimum = true;
        traps[6].isCounted = false;
        const RegionYear year = regionYear(2025, storyDay("0714", 2025), traps, 2);
        QCOMPARE(year.all.catches.traps, std::size_t{5});
        QCOMPARE(year.all.catches.median, 10.0);
        QCOMPARE(year.all.minimum, std::size_t{1});
        QCOMPARE(year.all.uncounted, std::size_t{1});
        QCOMPARE(year.districts.size(), std::size_t{2});
        QCOMPARE(year.districts[0].group, idOf(1));
        QCOMPARE(year.districts[0].catches.median, 20.0);
        QCOMPARE(year.districts[0].minimum, std::size_t{1});
        QCOMPARE(year.districts[1].catches.median, 2.0);
        QCOMPARE(year.districts[1].catches.highest, 50.0);
        QCOMPARE(year.districts[1].uncounted, std::size_t{1});
        QCOMPARE(year.keepers.size(), std::size_t{3});
        QCOMPARE(year.keepers[0].catches.median, 2.0); // 0, 2, 10
        QCOMPARE(year.keepers[1].catches.median, 40.0); // 30, 50; the minimum is left out
        QCOMPARE(year.keepers[2].catches.traps, std::size_t{0}); // not counted is not zero
        QCOMPARE(year.inBand, (std::vector<std::size_t>{3, 2}));
        QCOMPARE(year.bandless, std::size_t{2});
        const RegionYear none = regionYear(2024, storyDay("0714", 2024), {}, 2);
        QCOMPARE(none.all.catches.traps, std::size_t{0});
        QCOMPARE(none.inBand, (std::vector<std::size_t>{0, 0}));
        // A band that is not known here is none.
        QCOMPARE(regionYear(2024, {}, std::span(traps).first(2), 1).bandless, std::size_t{1});
    }

    // What came after a day does not exist for it: neither counts nor the take-down.
    void aSeasonAsItWas()
    {
        const TrapStory story("set:0604 0611=2 0618=6 0702=20 0730=1 end:0730,season_over");
        const TrapSeason then = trapSeasonOn(story.facts(), rules(), storyDay("0620"));
        QCOMPARE(then.total, Moths{8});
        QCOMPARE(then.countedUntil, std::optional(storyDay("0618")));
        QCOMPARE(then.standing, SeasonStanding::SoFar);
        QCOMPARE(
            trapSeasonOn(story.facts(), rules(), storyDay("0702")).total, Moths{28}); // the day itself too
        const TrapSeason whole = trapSeasonOn(story.facts(), rules(), storyDay("0801"));
        QCOMPARE(whole.total, Moths{29});
        QCOMPARE(whole.standing, SeasonStanding::Whole);
        QVERIFY(!trapSeasonOn(story.facts(), rules(), storyDay("0605")).countedUntil);
    }

    void districtsAndTheHighestTrapOfEachWeek()
    {
        const std::vector<TrapStory> stories{TrapStory("set:0604 0608=2 0615=6", 1),
            TrapStory("set:0604 0608=9 0615=1", 2), TrapStory("set:0604 0608=0 0615=40,fallen", 3)};
        std::vector<TrapSeason> seasons;
        for (const TrapStory& story : stories)
            seasons.push_back(trapSeasonOn(story.facts(), rules(), storyDay("0616")));
        std::vector<RegionMember> members;
        for (std::size_t i = 0; i < stories.size(); ++i)
            members.push_back({&stories[i].trap, &seasons[i], nullptr, i == 1 ? idOf(5) : Uuid{}, {}});
        const RegionResult result = regionResult(members, bands());
        QCOMPARE(result.districts.size(), std::size_t{2});
        QVERIFY(result.districts[0].district.isNil());
        QCOMPARE(result.districts[0].traps, (std::vector{&stories[0].trap, &stories[2].trap}));
        QCOMPARE(result.districts[1].highest, &stories[1].trap);
        const auto& weeks = result.whole.season.weeks;
        QVERIFY(weeks.size() >= 2);
        for (const RegionWeek& week : weeks) {
            if (week.catches.traps == 0) continue;
            // Named is the one that caught what is called the highest.
            const TrapSeason& season = seasons[*week.highest];
            const auto caught = std::ranges::find(season.weeks, week.week, &WeekCatch::week);
            QVERIFY(caught != season.weeks.end() && caught->moths && !caught->isAtLeast);
            QCOMPARE(*caught->moths, week.catches.highest);
        }
    }

    // On a plane that is given the surface's cells lie there, and nothing else changes.
    void aSurfaceOnAGivenPlane()
    {
        const TrapStory story("set:0604 0611=2");
        const TrapSeason season = trapSeasonOn(story.facts(), rules(), storyDay("0616"));
        std::vector<RegionMember> members;
        for (int i = 0; i < 21; ++i)
            members.push_back(
                {&story.trap, &season, nullptr, {}, GeoPoint{520'000'000 + i * 100'000, -1'060'000'000}});
        const RegionalPlane given(GeoPoint{500'000'000, -1'060'000'000});
        const SurfaceOfRegion surface = surfaceOfRegion(members, bands(), 50, given);
        QCOMPARE(surface.surface.standing, SurfaceStanding::AllEqual);
        QVERIFY(surface.isSoFar);
        QCOMPARE(surface.edges, std::vector{Moths{20}});
        QCOMPARE(surface.where->plane.middle(), given.middle());
        QVERIFY(surface.where->grid.southWest.northMetres > 200'000);
        QCOMPARE(surfaceOfRegion(std::span(members).first(19), bands(), 50).surface.standing,
            SurfaceStanding::TooFewTraps);
    }
};

QTEST_APPLESS_MAIN(RegionYearsTest)
#include "region_years_test.moc"
