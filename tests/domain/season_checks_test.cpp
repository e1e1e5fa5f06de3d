// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <deque>

#include "domain/rules/local_plane.h"
#include "domain/rules/season_checks.h"

using namespace duskrow::domain;

namespace {

constexpr LocalDay setUp = dayOf(2026, 6, 1); // a Monday
constexpr LocalDay today = dayOf(2026, 9, 1);

Uuid idOf(std::uint8_t kind, std::size_t number)
{
    Uuid id;
    id.bytes[0] = kind;
    id.bytes[14] = static_cast<std::uint8_t>(number / 256);
    id.bytes[15] = static_cast<std::uint8_t>(number % 256);
    return id;
}

const Uuid tom = idOf(9, 1);

// Traps along a road, 5 km apart, each counted on Mondays.
struct Scene {
    std::deque<Trap> traps;
    std::deque<std::vector<Visit>> visits; // by trap
    std::vector<Visit> withoutTrap;
    std::map<Uuid, Uuid> authors;
    std::size_t made = 0;

    Trap& trap()
    {
        Trap& trap = traps.emplace_back();
        visits.emplace_back();
        const auto number = traps.size();
        const GeoPoint place = toGeoPoint(50.0 + static_cast<double>(number) * 5.0 / 111.2, -106.0);
        trap.id = idOf(1, number);
        trap.pest = "moth";
        trap.trapType = "bucket";
        trap.setDay = setUp;
        trap.latE7 = place.latE7;
        trap.lonE7 = place.lonE7;
        return trap;
    }

    Visit& visit(std::size_t trap, int week, std::int64_t moths)
    {
        Visit& visit = visits[trap].emplace_back();
        visit.id = idOf(2, ++made);
        visit.trap = traps[trap].id;
        visit.day = setUp + std::chrono::days{7 * week};
        visit.outcome = Outcome::Counted;
        visit.pest = Moths{moths};
        visit.emptied = true;
        return visit;
    }

    [[nodiscard]] std::vector<Flag> flags() const
    {
        SeasonToCheck season{.withoutTrap = withoutTrap,
            .authors = authors,
            .week = {.weekStart = std::chrono::Sunday, .countDay = std::chrono::Monday}};
        for (std::size_t i = 0; i < traps.size(); ++i) season.traps.push_back({traps[i], visits[i]});
        return seasonFlags(season, today);
    }
};

// Eight traps in four weeks that catch about thirty each.
Scene quietSeason()
{
    Scene season;
    for (int i = 0; i < 8; ++i) season.trap();
    for (std::size_t i = 0; i < 8; ++i)
        for (int week = 1; week <= 4; ++week)
            season.visit(
                i, week, 27 + static_cast<std::int64_t>((i * 3 + static_cast<std::size_t>(week)) % 7));
    return season;
}

std::vector<Check> checksOf(const std::vector<Flag>& flags)
{
    std::vector<Check> checks;
    for (const Flag& flag : flags) checks.push_back(flag.check);
    return checks;
}

using Checks = std::vector<Check>;

} // namespace

class SeasonChecksTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aQuietSeasonHasNoFlag()
    {
        QVERIFY(quietSeason().flags().empty());
        QVERIFY(Scene().flags().empty());
    }

    void aSlipAmongNeighboursIsFlaggedWithTheirCounts()
    {
        Scene season = quietSeason();
        season.visits[3][2].pest = Moths{310};
        const auto flags = season.flags();
        QVERIFY(checksOf(flags) == Checks{Check::FarAboveAround}); // and not by the visit before as well
        const Flag& flag = flags.front();
        QVERIFY(flag.visit == season.visits[3][2].id);
        QVERIFY(flag.trap == season.traps[3].id);
        QVERIFY(flag.day == season.visits[3][2].day);
        QCOMPARE(flag.numbers[0], 310);
        QCOMPARE(flag.numbers[1], 7);
        QCOMPARE(flag.numbers[2], 310);
        QVERIFY(flag.numbers[3] >= 25 && flag.numbers[3] <= 35);
        QCOMPARE(flag.around.size(), 6U);
        QVERIFY(flag.around[0].trap == season.traps[2].id || flag.around[0].trap == season.traps[4].id);
        season.visits[3][2].pest = Moths{0};
        QVERIFY(checksOf(season.flags()) == Checks{Check::FarBelowAround});
    }

    void aTrapAloneIsHeldAgainstTheVisitBefore()
    {
        Scene season;
        season.trap();
        season.visit(0, 1, 2);
        season.visit(0, 2, 60);
        QVERIFY(checksOf(season.flags()) == Checks{Check::FarAboveBefore});
    }

    // Ten times what it caught before, but so did everybody.
    void aRiseOfTheRegionIsNoFlag()
    {
        Scene season = quietSeason();
        for (std::size_t i = 0; i < 8; ++i) season.visit(i, 5, 330);
        QVERIFY(season.flags().empty());
        for (auto& visits : season.visits) visits.erase(visits.begin() + 2, visits.end() - 1);
        QVERIFY(season.flags().empty());
    }

    void otherPestsAndTrapTypesAreNotAround()
    {
        for (const bool byType : {false, true}) {
            Scene season = quietSeason();
            (byType ? season.traps[3].trapType : season.traps[3].pest) = "another";
            for (Visit& visit : season.visits[3]) visit.pest = Moths{visit.pest->value() * 10};
            QVERIFY(season.flags().empty());
        }
    }

    void aReplacedTrapThatIsStillCounted()
    {
        Scene season;
        season.trap();
        Trap& next = season.trap();
        next.replaces = season.traps[0].id;
        next.setDay = setUp + std::chrono::days{14};
        season.visit(0, 1, 5);
        season.visit(0, 2, 6); // on the day of the change
        QVERIFY(season.flags().empty());
        const Visit& late = season.visit(0, 3, 7);
        const auto flags = season.flags();
        QVERIFY(checksOf(flags) == Checks{Check::ReplacedTrapCounted});
        QVERIFY(flags[0].visit == late.id);
        QCOMPARE(flags[0].numbers.front(), 7);
        QVERIFY(flags[0].others == std::vector{next.id});
    }

    void aCountWithoutATrap()
    {
        Scene season;
        Visit lost;
        lost.id = idOf(2, 1);
        lost.trap = idOf(1, 99);
        lost.day = setUp;
        lost.pest = Moths{12};
        season.withoutTrap = {lost, lost};
        season.withoutTrap[1].id = idOf(2, 2);
        season.withoutTrap[1].pest.reset();
        const auto flags = season.flags();
        QVERIFY((checksOf(flags) == Checks{Check::WithoutTrap, Check::WithoutTrap}));
        QCOMPARE(flags[0].numbers.front(), 12);
        QCOMPARE(flags[1].numbers.front(), -1);
        QVERIFY(flags[0].trap == lost.trap);
    }

    void whoDrivesTooFast_data()
    {
        QTest::addColumn<QString>("observer");
        QTest::addColumn<bool>("isAuthorKnown");
        QTest::addColumn<bool>("isFlagged");
        QTest::newRow("by its author") << QString() << true << true;
        QTest::newRow("typed in for another: the time is that of typing") << "Ida" << true << false;
        QTest::newRow("nobody known") << QString() << false << false;
    }

    void whoDrivesTooFast()
    {
        QFETCH(QString, observer);
        QFETCH(bool, isAuthorKnown);
        QFETCH(bool, isFlagged);
        Scene season;
        for (std::size_t i = 0; i < 5; ++i) {
            season.trap();
            Visit& visit = season.visit(i, 1, 5 + static_cast<std::int64_t>(i));
            visit.atMs = 1'780'000'000'000 + static_cast<std::int64_t>(i) * 60'000; // 5 km in a minute
            visit.observer = observer.toStdString();
            if (isAuthorKnown) season.authors[visit.id] = tom;
        }
        const auto flags = season.flags();
        QCOMPARE(flags.size(), isFlagged ? 1U : 0U);
        if (!isFlagged) return;
        QVERIFY(flags[0].check == Check::FasterThanDriving);
        QVERIFY((flags[0].observer == Observer{.member = tom, .typed = {}}));
        QVERIFY(flags[0].visit == season.visits[0][0].id);
        QCOMPARE(flags[0].others.size(), 4U);
        QCOMPARE(flags[0].numbers[0], 5);
        QCOMPARE(flags[0].numbers[1], 4);
        QVERIFY(std::abs(flags[0].numbers[2] - 20'000) < 30);
        QCOMPARE(flags[0].numbers[3], 10); // 9.2 minutes at 130 km/h
    }

    void digitsAreOfOneObserver()
    {
        Scene season = quietSeason();
        for (std::size_t i = 0; i < 8; ++i)
            for (Visit& visit : season.visits[i]) {
                visit.pest = Moths{30};
                if (i < 6) season.authors[visit.id] = tom; // 24 counts
                if (i == 6) visit.observer = "Ida"; // 4 counts
            }
        const auto flags = season.flags();
        QVERIFY(checksOf(flags) == Checks{Check::RoundedCounts});
        QVERIFY((flags[0].observer == Observer{.member = tom, .typed = {}}));
        QVERIFY((flags[0].numbers == std::vector<std::int64_t>{24, 24}));
        QVERIFY(flags[0].visit.isNil() && flags[0].trap.isNil());
        QVERIFY(flags[0].day == setUp + std::chrono::days{28});
        // Estimates of heavy catches are round by themselves.
        for (auto& visits : season.visits)
            for (Visit& visit : visits) visit.countMethod = CountMethod::Volume;
        QVERIFY(season.flags().empty());
    }

    void theLatestDayComesFirst()
    {
        Scene season = quietSeason();
        season.visits[1][0].pest = Moths{400};
        season.visits[2][3].pest = Moths{400};
        season.visits[3][1].pest = Moths{400};
        const auto flags = season.flags();
        QVERIFY(flags.size() >= 3); // a trap that once caught so many is expected to again, for a while
        QVERIFY(flags.front().day > flags.back().day);
        QVERIFY(std::is_sorted(
            flags.begin(), flags.end(), [](const Flag& a, const Flag& b) { return a.day > b.day; }));
    }

    void withdrawnRecordsGiveNone()
    {
        Scene season = quietSeason();
        season.visits[3][2].pest = Moths{400};
        season.visits[3][2].withdrawn = "another trap";
        QVERIFY(season.flags().empty());
    }

    void everyCheckHasANameAndARate()
    {
        for (std::size_t i = 0; i < checkNames.size(); ++i) {
            const FalseAlarms alarms = falseAlarmsOf(static_cast<Check>(i));
            QVERIFY(!checkNames[i].empty());
            QCOMPARE(alarms.oneIn > 0, alarms.which == GoodCounts::OneIn);
        }
        QVERIFY(static_cast<std::size_t>(Check::RoundedCounts) + 1 == checkNames.size());
    }
};

QTEST_APPLESS_MAIN(SeasonChecksTest)
#include "season_checks_test.moc"
