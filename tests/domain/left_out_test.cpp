// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/season_checks.h"
#include "domain/rules/trap_season.h"
#include "trap_story.h"

using namespace duskrow::domain;

// A count that a coordinator left out of the picture: its moths are in no sum, and what they were nobody
// knows.
class LeftOutTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void sums_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<QByteArray>("day"); // of the visit that is left out
        QTest::addColumn<int>("total");
        QTest::addColumn<bool>("atLeast");
        QTest::newRow("its nights are lost: the rest is a minimum")
            << QByteArray("set:0601 0609=12 0616=400 0623=9") << QByteArray("0616") << 21 << true;
        QTest::newRow("where it did not empty the trap, the next count holds its moths")
            << QByteArray("set:0601 0609=12 0616=400,kept 0623=9") << QByteArray("0616") << 21 << false;
        QTest::newRow("before set-up nothing can be lost")
            << QByteArray("set:0610 0609=12 0616=5") << QByteArray("0609") << 5 << false;
        QTest::newRow("nor after take-down") << QByteArray("set:0601 0609=12 0630=7 end:0620,season_over")
                                             << QByteArray("0630") << 12 << false;
        QTest::newRow("the only one") << QByteArray("set:0601 0609=12") << QByteArray("0609") << 0 << true;
    }

    void sums()
    {
        QFETCH(QByteArray, story);
        QFETCH(QByteArray, day);
        QFETCH(int, total);
        QFETCH(bool, atLeast);
        const TrapStory told(story);
        std::vector<Uuid> leftOut;
        for (const Visit& visit : told.visits)
            if (visit.day == storyDay(day)) leftOut.push_back(visit.id);
        QCOMPARE(leftOut.size(), std::size_t{1});
        TrapFacts facts = told.facts();
        facts.leftOut = leftOut;
        const TrapSeason season = trapSeason(facts, {.today = storyDay("0801")});
        QCOMPARE(season.total.value(), std::int64_t{total});
        QCOMPARE(season.isAtLeast, atLeast);
        QVERIFY(trapSeason(told.facts(), {.today = storyDay("0801")}).total.value() > total);
    }

    // Of a count that was entered twice the other one stands for the day, and nothing is lost.
    void theSecondOfADay()
    {
        TrapStory told("set:0601 0609=12 0616=30 0616=30");
        told.visits[1].id.bytes[14] = 1;
        const std::vector<Uuid> leftOut{told.visits[2].id};
        TrapFacts facts = told.facts();
        facts.leftOut = leftOut;
        const TrapSeason season = trapSeason(facts, {.today = storyDay("0801")});
        QCOMPARE(season.total.value(), std::int64_t{42});
        QVERIFY(!season.isAtLeast);
    }

    // Ten stops within ten minutes: asked about when they were made there, never when they were typed at a
    // desk.
    void typingAtADeskIsNoDriving_data()
    {
        QTest::addColumn<bool>("typed");
        QTest::newRow("made there") << false;
        QTest::newRow("typed at the desk") << true;
    }

    void typingAtADeskIsNoDriving()
    {
        QFETCH(bool, typed);
        std::vector<TrapStory> told;
        for (std::uint8_t i = 0; i < 10; ++i) {
            told.emplace_back("set:0601 0609=12", static_cast<std::uint8_t>(i + 1));
            TrapStory& story = told.back();
            story.trap.latE7 = 520'000'000 + i * 1'000'000;
            story.trap.lonE7 = -1'060'000'000;
            Visit& visit = story.visits.front();
            visit.id.bytes[1] = i;
            visit.atMs = 1'781'000'000'000 + 60'000 * i;
            if (typed) visit.reportedHow = ReportedHow::Phone;
        }
        SeasonToCheck season;
        Uuid ida;
        ida.bytes[0] = 200;
        for (const TrapStory& story : told) {
            season.traps.push_back(story.facts());
            season.authors[story.visits.front().id] = ida;
        }
        const auto flags = seasonFlags(season, storyDay("0620"));
        const auto driven = std::ranges::count(flags, Check::FasterThanDriving, &Flag::check);
        QCOMPARE(driven, typed ? 0 : 1);
    }
};

QTEST_APPLESS_MAIN(LeftOutTest)
#include "left_out_test.moc"
