// SPDX-License-Identifier: MIT
#include <QTest>

#include <limits>

#include "domain/rules/visit_questions.h"

using namespace duskrow::domain;
using Asked = std::vector<AskedQuestion>;
using Question = VisitQuestion;

namespace {

constexpr LocalDay today = dayOf(2026, 7, 14);
constexpr Instant noon = instantFromMs(1'784'030'400'000);
constexpr qint64 most = std::numeric_limits<qint64>::max();

// A visit that raises no question: a week after the last, in the middle of the season.
VisitToKeep ordinaryVisit()
{
    VisitToKeep visit{today, noon, Moths{47}, {}, {}, {}};
    visit.setUp = today - std::chrono::days{35};
    visit.lastEmptied = today - std::chrono::days{7};
    return visit;
}

OtherVisit other(std::chrono::minutes before, std::optional<Moths> caught, bool wasEmptied = true)
{
    return {noon - before, wasEmptied, caught};
}

const std::chrono::minutes week = std::chrono::hours{168};

} // namespace

class VisitQuestionsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anOrdinaryVisitRaisesNone()
    {
        const std::vector<OtherVisit> others{other(week, Moths{30}), other(2 * week, Moths{0})};
        QVERIFY(questionsFor(ordinaryVisit(), others, today) == Asked{});
        QVERIFY(questionsFor(ordinaryVisit(), {}, today) == Asked{});
    }

    void theDay_data()
    {
        QTest::addColumn<int>("day"); // after today
        QTest::addColumn<int>("question"); // below zero: none
        QTest::addColumn<qint64>("number");
        // Set up on the 35th day before today, last emptied on the 7th, ended in 10 days.
        QTest::newRow("today") << 0 << -1 << 0LL;
        QTest::newRow("yesterday") << -1 << -1 << 0LL;
        QTest::newRow("tomorrow") << 1 << static_cast<int>(Question::InFuture) << 1LL;
        QTest::newRow("next week") << 7 << static_cast<int>(Question::InFuture) << 7LL;
        QTest::newRow("on the day of set-up") << -35 << -1 << 0LL;
        QTest::newRow("before set-up") << -37 << static_cast<int>(Question::BeforeSetUp) << 2LL;
        QTest::newRow("year 1970") << -20'648 << static_cast<int>(Question::BeforeSetUp) << 20'613LL;
    }

    void theDay()
    {
        QFETCH(int, day);
        QFETCH(int, question);
        QFETCH(qint64, number);
        VisitToKeep visit = ordinaryVisit();
        visit.day = today + std::chrono::days{day};
        const Asked asked = questionsFor(visit, {}, today);
        QCOMPARE(asked.size(), std::size_t{question < 0 ? 0U : 1U});
        if (question < 0) return;
        QCOMPARE(static_cast<int>(asked[0].question), question);
        QCOMPARE(asked[0].numbers, std::vector<std::int64_t>{number});
    }

    void afterTheTrapEnded()
    {
        VisitToKeep visit = ordinaryVisit();
        visit.ended = today;
        QVERIFY(questionsFor(visit, {}, today).empty());
        visit.ended = today - std::chrono::days{3};
        QVERIFY(questionsFor(visit, {}, today) == (Asked{{Question::AfterEnd, {3}}}));
    }

    void aSecondVisitWithinADay_data()
    {
        QTest::addColumn<int>("minutesBefore");
        QTest::addColumn<bool>("wasEmptied");
        QTest::addColumn<bool>("asked");
        QTest::newRow("an hour ago") << 60 << true << true;
        QTest::newRow("an hour ago, not emptied") << 60 << false << true;
        QTest::newRow("just within the day") << 1439 << true << true;
        QTest::newRow("exactly a day") << 1440 << true << false;
        QTest::newRow("entered late: the other came after") << -90 << true << true;
        QTest::newRow("the same minute") << 0 << true << true;
    }

    void aSecondVisitWithinADay()
    {
        QFETCH(int, minutesBefore);
        QFETCH(bool, wasEmptied);
        QFETCH(bool, asked);
        const std::vector<OtherVisit> others{
            other(week, Moths{40}), other(std::chrono::minutes{minutesBefore}, Moths{40}, wasEmptied)};
        const Asked found = questionsFor(ordinaryVisit(), others, today);
        const Asked expected{{Question::SecondWithinDay, {qAbs(minutesBefore), wasEmptied ? 1 : 0}}};
        QVERIFY(found == (asked ? expected : Asked{}));
    }

    void theClosestOfSeveralIsAskedAbout()
    {
        const std::vector<OtherVisit> others{other(std::chrono::minutes{600}, Moths{40}, false),
            other(std::chrono::minutes{30}, Moths{40}), other(std::chrono::minutes{900}, Moths{40}, false)};
        QVERIFY(
            questionsFor(ordinaryVisit(), others, today) == (Asked{{Question::SecondWithinDay, {30, 1}}}));
    }

    void longSinceEmptied_data()
    {
        QTest::addColumn<int>("emptied"); // days before; below zero: never
        QTest::addColumn<int>("setUp");
        QTest::addColumn<qint64>("asked"); // days said; 0: none
        QTest::newRow("three weeks") << 21 << 35 << 0LL;
        QTest::newRow("a day more") << 22 << 35 << 22LL;
        QTest::newRow("never emptied: since set-up") << -1 << 35 << 35LL;
        QTest::newRow("never emptied, set up lately") << -1 << 14 << 0LL;
        QTest::newRow("nothing known") << -1 << -1 << 0LL;
    }

    void longSinceEmptied()
    {
        QFETCH(int, emptied);
        QFETCH(int, setUp);
        QFETCH(qint64, asked);
        VisitToKeep visit = ordinaryVisit();
        visit.lastEmptied.reset();
        visit.setUp.reset();
        if (emptied >= 0) visit.lastEmptied = today - std::chrono::days{emptied};
        if (setUp >= 0) visit.setUp = today - std::chrono::days{setUp};
        const Asked expected = asked > 0 ? Asked{{Question::LongSinceEmptied, {asked}}} : Asked{};
        QVERIFY(questionsFor(visit, {}, today) == expected);
    }

    void theCatch_data()
    {
        QTest::addColumn<qint64>("caught"); // below zero: could not count
        QTest::addColumn<qint64>("largestOther"); // below zero: no other count
        QTest::addColumn<bool>("farAbove");
        QTest::addColumn<bool>("unlikely");
        QTest::newRow("four times is not over four times") << 120LL << 30LL << false << false;
        QTest::newRow("over four times") << 121LL << 30LL << true << false;
        QTest::newRow("over four times, but 20 more") << 24LL << 4LL << false << false;
        QTest::newRow("over four times and 21 more") << 25LL << 4LL << true << false;
        QTest::newRow("first moths") << 20LL << 0LL << false << false;
        QTest::newRow("many after none") << 21LL << 0LL << true << false;
        QTest::newRow("zero after many") << 0LL << 900LL << false << false;
        QTest::newRow("no other count to hold it against") << 900LL << -1LL << false << false;
        QTest::newRow("could not count") << -1LL << 30LL << false << false;
        QTest::newRow("five thousand") << 5000LL << 2000LL << false << false;
        QTest::newRow("more than that") << 5001LL << 2000LL << false << true;
        QTest::newRow("a slip of the finger") << 1'000'000'000LL << 40LL << true << true;
        QTest::newRow("the largest numbers") << most << most / 4 + 1 << false << true;
        QTest::newRow("the largest numbers, far above") << most << most / 4 << true << true;
    }

    void theCatch()
    {
        QFETCH(qint64, caught);
        QFETCH(qint64, largestOther);
        QFETCH(bool, farAbove);
        QFETCH(bool, unlikely);
        VisitToKeep visit = ordinaryVisit();
        visit.caught.reset();
        if (caught >= 0) visit.caught = Moths{caught};
        std::vector<OtherVisit> others{other(3 * week, std::nullopt)};
        if (largestOther >= 0) {
            others.push_back(other(2 * week, Moths{largestOther}));
            others.push_back(other(week, Moths{largestOther / 2}));
        }
        Asked expected;
        if (farAbove) expected.push_back({Question::CatchFarAboveOthers, {caught, largestOther}});
        if (unlikely) expected.push_back({Question::CatchUnlikelyLarge, {caught, 5000}});
        QVERIFY(questionsFor(visit, others, today) == expected);
    }

    void allThatAppliesIsAsked()
    {
        VisitToKeep visit = ordinaryVisit();
        visit.day = today + std::chrono::days{30};
        visit.ended = today;
        visit.caught = Moths{6000};
        const std::vector<OtherVisit> others{other(std::chrono::minutes{5}, Moths{10}, false)};
        const Asked expected{{Question::InFuture, {30}}, {Question::AfterEnd, {30}},
            {Question::SecondWithinDay, {5, 0}}, {Question::LongSinceEmptied, {37}},
            {Question::CatchFarAboveOthers, {6000, 10}}, {Question::CatchUnlikelyLarge, {6000, 5000}}};
        QVERIFY(questionsFor(visit, others, today) == expected);
    }

    // A visit among the records of its trap: itself and withdrawn ones are nobody else's.
    void aVisitAmongTheRecordsOfItsTrap()
    {
        const auto made = [](std::uint8_t number, int daysAgo, qint64 moths) {
            Visit visit;
            visit.id.bytes[15] = number;
            visit.day = today - std::chrono::days{daysAgo};
            visit.atMs = toMs(noon) - std::int64_t{daysAgo} * 86'400'000;
            visit.outcome = Outcome::Counted;
            visit.pest = Moths{moths};
            visit.emptied = true;
            return visit;
        };
        Trap trap;
        trap.setDay = today - std::chrono::days{60};
        std::vector<Visit> visits{made(1, 30, 40), made(2, 2, 40), made(3, 0, 500)};
        visits[1].withdrawn = "another trap";
        const Asked expected{{Question::LongSinceEmptied, {30}}, {Question::CatchFarAboveOthers, {500, 40}}};
        QVERIFY(questionsAbout(visits[2], {trap, visits}, today) == expected);
        visits[2].outcome = Outcome::CouldNotCount;
        QVERIFY(
            questionsAbout(visits[2], {trap, visits}, today) == (Asked{{Question::LongSinceEmptied, {30}}}));
        visits[1].withdrawn.clear();
        QVERIFY(questionsAbout(visits[2], {trap, visits}, today) == Asked{});
    }

    void aVisitWithoutATimeWasMadeAtNoon()
    {
        Visit visit;
        visit.day = today;
        QVERIFY(momentOf(visit) == noon);
        visit.atMs = 5;
        QVERIFY(momentOf(visit) == instantFromMs(5));
    }
};

QTEST_APPLESS_MAIN(VisitQuestionsTest)
#include "visit_questions_test.moc"
