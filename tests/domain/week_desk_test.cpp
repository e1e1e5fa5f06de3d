// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/week_desk.h"

using namespace duskrow::domain;

namespace {

// Weeks from Sunday, counts on Tuesday with a day's grace. The week of 12 July 2026 is counted on the 14th
// and open until the 15th.
const SeasonWeek rhythm{std::chrono::Sunday, std::chrono::Tuesday, std::chrono::days{1}, {}, {}};
const ReportingWeek julyWeek{dayOf(2026, 7, 12), dayOf(2026, 7, 18)};

Uuid idOf(std::uint8_t number)
{
    Uuid id;
    id.bytes[15] = number;
    return id;
}

TrapOfDesk trapOf(std::uint8_t number, std::optional<LocalDay> set = dayOf(2026, 6, 1),
    std::optional<LocalDay> end = {}, std::uint8_t district = 0)
{
    return {idOf(number), district ? idOf(district) : Uuid{}, set, end};
}

VisitOfDesk visitOf(std::uint8_t trap, LocalDay day, std::optional<std::int64_t> moths)
{
    VisitOfDesk visit{idOf(100), idOf(trap), day, {}, {}};
    if (moths) visit.pest = Moths{*moths};
    return visit;
}

} // namespace

class WeekDeskTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theWeekADeskOpensOn_data()
    {
        QTest::addColumn<int>("day");
        QTest::addColumn<int>("first");
        QTest::newRow("on the count day, its own week") << 14 << 12;
        QTest::newRow("the day before, the week that can be settled") << 13 << 5;
        QTest::newRow("at the end of the week, still its own") << 18 << 12;
        QTest::newRow("on the next Sunday, the week that has gone by") << 19 << 12;
    }

    void theWeekADeskOpensOn()
    {
        QFETCH(int, day);
        QFETCH(int, first);
        const ReportingWeek week = weekToSettle(dayOf(2026, 7, static_cast<unsigned>(day)), rhythm);
        QVERIFY(week.first == dayOf(2026, 7, static_cast<unsigned>(first)));
    }

    // One trap, one visit: what the week says of it. By hand from the calendar of July 2026.
    void oneTrap_data()
    {
        QTest::addColumn<int>("set"); // day of July; 0 none, -1 not known
        QTest::addColumn<int>("end");
        QTest::addColumn<int>("visit"); // day of July, 0 none
        QTest::addColumn<bool>("counted");
        QTest::addColumn<int>("today");
        QTest::addColumn<QString>("wanted");
        QTest::newRow("counted on the count day") << 1 << 0 << 14 << true << 14 << "counted";
        QTest::newRow("zero counts, which is not nothing") << 1 << 0 << 13 << true << 14 << "counted";
        QTest::newRow("there, and could not be counted") << 1 << 0 << 14 << false << 20 << "not counted";
        QTest::newRow("within the grace nobody is late") << 1 << 0 << 0 << true << 15 << "awaited";
        QTest::newRow("the day after the grace") << 1 << 0 << 0 << true << 16 << "late";
        QTest::newRow("a count in the week before is not for this one")
            << 1 << 0 << 7 << true << 16 << "late";
        QTest::newRow("nor one on the count day after") << 1 << 0 << 21 << true << 22 << "late";
        QTest::newRow("the week's days before the count day are its own")
            << 1 << 0 << 12 << true << 16 << "counted";
        QTest::newRow("no day of set-up: it stood") << -1 << 0 << 0 << true << 16 << "late";
        QTest::newRow("set up after the count day") << 16 << 0 << 0 << true << 20 << "not asked";
        QTest::newRow("set up on the count day, which answers it")
            << 14 << 0 << 0 << true << 20 << "not asked";
        QTest::newRow("set up within the grace before it") << 13 << 0 << 0 << true << 20 << "not asked";
        QTest::newRow("set up before that") << 12 << 0 << 0 << true << 20 << "late";
        QTest::newRow("taken down before the count day") << 1 << 13 << 0 << true << 20 << "not asked";
        QTest::newRow("taken down, and counted for it anyway") << 1 << 13 << 13 << true << 20 << "counted";
        QTest::newRow("taken down on the count day") << 1 << 14 << 0 << true << 20 << "late";
    }

    void oneTrap()
    {
        QFETCH(int, set);
        QFETCH(int, end);
        QFETCH(int, visit);
        QFETCH(bool, counted);
        QFETCH(int, today);
        QFETCH(QString, wanted);
        const auto july = [](int day) { return dayOf(2026, 7, static_cast<unsigned>(day)); };
        const std::vector traps{trapOf(1, set > 0 ? std::optional(july(set)) : std::nullopt,
            end > 0 ? std::optional(july(end)) : std::nullopt)};
        std::vector<VisitOfDesk> visits;
        if (visit > 0)
            visits.push_back(
                visitOf(1, july(visit), counted ? std::optional<std::int64_t>(0) : std::nullopt));
        const WeekDesk desk = weekDesk(traps, visits, rhythm, julyWeek, july(today));
        QString found = QStringLiteral("not asked");
        if (!desk.traps.empty())
            found = std::array{QStringLiteral("counted"), QStringLiteral("not counted"),
                QStringLiteral("awaited"),
                QStringLiteral("late")}[static_cast<std::size_t>(desk.traps.front().standing)];
        QCOMPARE(found, wanted);
    }

    // Seven traps in two districts and one of none, added up by hand.
    void districtsAndTotal()
    {
        const std::vector traps{trapOf(1, dayOf(2026, 6, 1), {}, 50), trapOf(2, dayOf(2026, 6, 1), {}, 50),
            trapOf(3, dayOf(2026, 6, 1), {}, 50), trapOf(4, dayOf(2026, 6, 1), {}, 60),
            trapOf(5, dayOf(2026, 6, 1), {}, 60), trapOf(6, dayOf(2026, 7, 16), {}, 60), trapOf(7)};
        const std::vector visits{visitOf(1, dayOf(2026, 7, 7), 3), visitOf(1, dayOf(2026, 7, 14), 12),
            visitOf(2, dayOf(2026, 7, 14), std::nullopt), visitOf(4, dayOf(2026, 7, 15), 0),
            visitOf(7, dayOf(2026, 7, 13), 5), visitOf(9, dayOf(2026, 7, 14), 99)};
        const WeekDesk desk = weekDesk(traps, visits, rhythm, julyWeek, dayOf(2026, 7, 20));
        QVERIFY((desk.total == Reported{6, 4, 1, 2}));
        QCOMPARE(desk.districts.size(), std::size_t{3});
        QVERIFY(desk.districts[0].district.isNil());
        QVERIFY((desk.districts[0].sum == Reported{1, 1, 0, 0}));
        QVERIFY((desk.districts[1].sum == Reported{3, 2, 1, 1}));
        QVERIFY((desk.districts[2].sum == Reported{2, 1, 0, 1}));
        QCOMPARE(desk.traps.size(), std::size_t{6});
        QCOMPARE(*desk.traps.front().visit, std::size_t{1});
    }

    // Whoever could not count and came again has counted; of two counts the later one is shown.
    void severalVisitsOfAWeek()
    {
        const std::vector traps{trapOf(1)};
        std::vector visits{visitOf(1, dayOf(2026, 7, 13), std::nullopt), visitOf(1, dayOf(2026, 7, 14), 8),
            visitOf(1, dayOf(2026, 7, 15), std::nullopt)};
        WeekDesk desk = weekDesk(traps, visits, rhythm, julyWeek, dayOf(2026, 7, 16));
        QVERIFY(desk.traps.front().standing == WeekStanding::Counted);
        QCOMPARE(*desk.traps.front().visit, std::size_t{1});
        QCOMPARE(desk.traps.front().visits, std::size_t{3});
        visits.push_back(visitOf(1, dayOf(2026, 7, 16), 2));
        desk = weekDesk(traps, visits, rhythm, julyWeek, dayOf(2026, 7, 16));
        QCOMPARE(*desk.traps.front().visit, std::size_t{3});
        QVERIFY((desk.total == Reported{1, 1, 0, 0}));
    }

    void nothingAtAll()
    {
        const WeekDesk desk = weekDesk({}, {}, rhythm, julyWeek, dayOf(2026, 7, 20));
        QVERIFY(desk.traps.empty() && desk.districts.empty());
        QVERIFY(desk.total == Reported{});
    }
};

QTEST_APPLESS_MAIN(WeekDeskTest)
#include "week_desk_test.moc"
