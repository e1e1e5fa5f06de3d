// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/flight_prior.h"
#include "domain/rules/heat_course.h"

using namespace duskrow::domain;
using std::chrono::days;

namespace {

const HeatTerms average{HeatMethod::Average, 10};

// Every day of May of a year as warm as `mean` on average.
void addMay(std::vector<DayTemperature>& all, int year, double mean, unsigned last = 31)
{
    for (unsigned day = 1; day <= last; ++day) all.push_back({dayOf(year, 5, day), mean - 5, mean + 5});
}

} // namespace

class HeatCourseTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void twoDaysAreBridgedAndThreeAreNot()
    {
        const std::vector<DayTemperature> measured{
            {dayOf(2026, 5, 1), 10, 20}, {dayOf(2026, 5, 4), 16, 26}, {dayOf(2026, 5, 8), 10, 20}};
        const BridgedDays series = bridged(measured);
        QCOMPARE(series.days.size(), std::size_t{5});
        QVERIFY((series.interpolated == std::vector{dayOf(2026, 5, 2), dayOf(2026, 5, 3)}));
        QCOMPARE(series.days[1].minimum, 12.0);
        QCOMPARE(series.days[2].maximum, 24.0);
        QCOMPARE(series.gaps.size(), std::size_t{1});
        QCOMPARE(series.gaps.front().first, dayOf(2026, 5, 5));
        QCOMPARE(series.gaps.front().length(), 3L);
    }

    void withoutPastYearsItEndsWhereMeasuringEnds()
    {
        std::vector<DayTemperature> station;
        addMay(station, 2026, 15, 10);
        const HeatCourse course = heatCourse(average, station, dayOf(2026, 5, 1), dayOf(2026, 5, 31));
        QCOMPARE(course.points.size(), std::size_t{10});
        QCOMPARE(course.points.back().total, 50.0);
        QCOMPARE(course.points.back().low, 50.0);
        QVERIFY(!course.isAtLeast && course.gaps.empty() && course.pastYears == 0);
        QVERIFY(!course.reaching(60).middle);
        QCOMPARE(*course.reaching(50).middle, dayOf(2026, 5, 10));
        QVERIFY(course.reaching(50).isMeasured);
    }

    void aLongGapIsToldAndNeverZero()
    {
        std::vector<DayTemperature> station;
        addMay(station, 2026, 15, 20);
        station.erase(station.begin() + 5, station.begin() + 10);
        const HeatCourse course = heatCourse(average, station, dayOf(2026, 5, 1), dayOf(2026, 5, 31));
        QVERIFY(course.isAtLeast);
        QCOMPARE(course.gaps.size(), std::size_t{1});
        QCOMPARE(course.gaps.front().length(), 5L);
        QCOMPARE(course.points.back().total, 75.0);
        // Past years stand in for it, and say so.
        addMay(station, 2025, 17);
        std::rotate(station.begin(), station.begin() + 15, station.end());
        const HeatCourse filled = heatCourse(average, station, dayOf(2026, 5, 1), dayOf(2026, 5, 20));
        QVERIFY(!filled.isAtLeast);
        QCOMPARE(filled.gaps.size(), std::size_t{1});
        QCOMPARE(filled.points[6].source, HeatSource::Expected);
        QCOMPARE(filled.points.back().total, 75.0 + 5 * 7);
    }

    void theRestOfTheYearIsTheMeanOfPastYearsWithTheirBand()
    {
        std::vector<DayTemperature> station;
        addMay(station, 2023, 14);
        addMay(station, 2024, 16);
        addMay(station, 2025, 18);
        addMay(station, 2026, 20, 10);
        const HeatCourse course = heatCourse(average, station, dayOf(2026, 5, 1), dayOf(2026, 5, 31));
        QCOMPARE(course.pastYears, std::size_t{3});
        QCOMPARE(course.points.size(), std::size_t{31});
        const HeatPoint& last = course.points.back();
        QVERIFY(std::abs(last.total - (100 + 21 * 6)) < 1e-9);
        QVERIFY(std::abs(last.low - (100 + 21 * 4)) < 1e-9);
        QVERIFY(std::abs(last.high - (100 + 21 * 8)) < 1e-9);
        QCOMPARE(last.source, HeatSource::Expected);
        QCOMPARE(course.points[9].source, HeatSource::Measured);
        const auto reached = course.reaching(160);
        QCOMPARE(*reached.middle, dayOf(2026, 5, 20));
        QCOMPARE(*reached.earliest, dayOf(2026, 5, 18));
        QCOMPARE(*reached.latest, dayOf(2026, 5, 25));
        QVERIFY(!reached.isMeasured);
        QCOMPARE(course.totalBy(dayOf(2026, 4, 1)), 0.0);
        QCOMPARE(course.totalBy(dayOf(2026, 5, 3)), 30.0);
    }

    // A year that lacks a day of those to be filled is no year to learn from.
    void aPastYearWithHolesIsLeftOut()
    {
        std::vector<DayTemperature> station;
        addMay(station, 2024, 16);
        addMay(station, 2025, 18);
        station.erase(station.begin() + 31 + 20, station.begin() + 31 + 25);
        addMay(station, 2026, 20, 10);
        const HeatCourse course = heatCourse(average, station, dayOf(2026, 5, 1), dayOf(2026, 5, 31));
        QCOMPARE(course.pastYears, std::size_t{1});
        QVERIFY(std::abs(course.points.back().total - (100 + 21 * 6)) < 1e-9);
    }

    void aPriorLearnsFromPastSeasons()
    {
        const FlightPrior before{196, 10, std::log(10.0), 0.35, std::log(5.0), 0.7};
        QCOMPARE(withPast(before, {}).prior.centre, 196.0);
        std::vector<PastTrapSeason> past;
        for (int year = 2018; year < 2026; ++year) {
            PastTrapSeason season;
            for (int week = 0; week <= 8; ++week) {
                const double part = 0.5 * std::erfc(-(week * 7 - 30.0) / 7.0 / std::sqrt(2.0));
                season.points.push_back(
                    {dayOf(year, 6, 10) + days{week * 7}, Moths{std::lround(400 * part)}});
            }
            past.push_back(season);
        }
        const auto after = withPast(before, past);
        QCOMPARE(after.years, std::size_t{8});
        // Half was in 30 days after 10 June, which is day 161 or 162 of the year.
        QVERIFY(std::abs(after.prior.centre - (191.4 * 8 + 196) / 9) < 0.6);
        QVERIFY(after.prior.centreSpread < 5 && after.prior.centreSpread >= 3);
        QVERIFY(after.prior.logWidth < before.logWidth);
    }

    void aFlightIsReadFromCountsAndLeavesMinimaOut()
    {
        TrapSeason season;
        season.steps = {{dayOf(2026, 6, 1), dayOf(2026, 6, 8), Moths{3}, false, false},
            {dayOf(2026, 6, 8), dayOf(2026, 6, 15), std::nullopt, false, false},
            {dayOf(2026, 6, 15), dayOf(2026, 6, 22), Moths{30}, true, false},
            {std::nullopt, dayOf(2026, 6, 29), Moths{7}, false, false},
            {dayOf(2026, 6, 29), dayOf(2026, 7, 6), Moths{40}, false, false}};
        const TrapFlight trap = flightOf(season);
        QCOMPARE(trap.size(), std::size_t{2});
        QCOMPARE(trap[0].from, 152.0);
        QCOMPARE(trap[1].to, 187.0);
        QCOMPARE(trap[1].moths, std::int64_t{40});
        QCOMPARE(dayAt(std::chrono::year{2026}, 187.4), dayOf(2026, 7, 6));
    }

    // The flight of a May in which each day brings ten degree-days: the axis is ten times as long.
    void aFlightOnTheAxisOfWarmth()
    {
        std::vector<DayTemperature> station;
        addMay(station, 2026, 20);
        const HeatCourse course = heatCourse(average, station, dayOf(2026, 5, 1), dayOf(2026, 5, 31));
        const std::chrono::year year{2026};
        const TrapFlight trap = onHeat(TrapFlight{{125, 130, 8}, {130, 131, 0}}, course, year);
        QCOMPARE(trap.size(), std::size_t{2});
        QVERIFY(std::abs(trap[0].to - trap[0].from - 50) < 1e-9);
        const FlightPrior warm = onHeat(FlightPrior{135, 3, std::log(4.0), 0.35}, course, year);
        QVERIFY(std::abs(warm.centre - 150) < 1e-9);
        QVERIFY(std::abs(warm.centreSpread - 30) < 1e-9);
        QVERIFY(std::abs(std::exp(warm.logWidth) - 40) < 1e-9);
    }
};

QTEST_APPLESS_MAIN(HeatCourseTest)
#include "heat_course_test.moc"
