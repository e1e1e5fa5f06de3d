// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/flight_fit.h"
#include "domain/rules/flight_posterior.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

constexpr double visitDays[]{155, 161, 168, 176, 182, 189, 197, 203, 210, 218, 224, 231};
constexpr std::int64_t counts[]{2, 9, 41, 88, 121, 96, 45, 24, 9, 2, 1};

// The worked data up to a day of the year.
TrapFlight workedUntil(double day)
{
    TrapFlight trap;
    for (std::size_t i = 0; i < std::size(counts) && visitDays[i + 1] <= day; ++i)
        trap.push_back({visitDays[i], visitDays[i + 1], counts[i]});
    return trap;
}

FlightPrior priorOf(double centre, double spread, double widthSpread)
{
    return {centre, spread, std::log(10.0), widthSpread, std::log(5.0), 0.7};
}
const FlightPrior usual = priorOf(190, 10, 0.35);

FlightPosterior posteriorOf(const TrapFlight& trap, double until, const FlightPrior& prior = usual)
{
    const auto found = flightPosterior(std::span(&trap, 1), until, prior);
    if (!found) qFatal("no posterior");
    return *found;
}

double dayOfCase(const QByteArray& name)
{
    return name.mid(name.lastIndexOf('_') + 1).toDouble();
}

double found(const FlightPosterior& posterior, const QByteArray& quantity)
{
    if (quantity == "median_mean") return posterior.median().mean;
    if (quantity == "median_sd") return posterior.median().deviation;
    if (quantity == "peak_mean") return posterior.peak().mean;
    if (quantity == "peak_sd") return posterior.peak().deviation;
    if (quantity == "pct_mean") return posterior.part().mean;
    if (quantity == "pct_sd") return posterior.part().deviation;
    if (quantity == "w_normal") return posterior.weights()[0];
    if (quantity == "w_logistic") return posterior.weights()[1];
    if (quantity == "w_g16") return posterior.weights()[2];
    if (quantity == "w_g4") return posterior.weights()[3];
    return std::nan("");
}

double found(const FlightFit& fit, const QByteArray& quantity)
{
    if (quantity == "mu") return fit.centre;
    if (quantity == "sd") return fit.scale;
    if (quantity == "N") return fit.size;
    if (quantity == "ll") return fit.logLikelihood;
    if (quantity == "se_mu") return fit.centreError;
    if (quantity == "se_logs") return fit.logScaleError;
    if (quantity == "X2") return fit.misfit;
    if (quantity == "phi") return fit.overdispersion;
    if (quantity == "pct") return fit.part;
    return std::nan("");
}

} // namespace

class FlightPosteriorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theGridIsAsComputed()
    {
        std::map<QByteArray, FlightPosterior> done;
        int rows = 0;
        for (const auto& row : readGolden("rules/phenology_grid.csv")) {
            const QByteArray name = row.text("case");
            if (!name.startsWith("visits_to_day_")) continue;
            const double day = dayOfCase(name);
            if (!done.contains(name)) done.emplace(name, posteriorOf(workedUntil(day), day));
            const double value = found(done.at(name), row.text("quantity"));
            if (std::isnan(value)) continue;
            QVERIFY2(std::abs(value - row.number("value")) < 1e-3, name + ' ' + row.text("quantity"));
            ++rows;
        }
        QVERIFY(rows >= 50);
    }

    // The fits of highest likelihood; of a flat top (before the peak) the digits hang on where a program
    // stops.
    void theFitsAreAsComputed()
    {
        int rows = 0;
        for (const auto& row : readGolden("rules/phenology_fit.csv")) {
            const QByteArray name = row.text("case");
            const double day = dayOfCase(name);
            const bool isExpected = name.startsWith("prior_");
            // The prior of these rows is not that of the grid: N(190, 7) and ln sd about ln 10 by 0.25.
            const FlightPrior expected = priorOf(190, 7, 0.25);
            const auto shape = row.text("dist") == "logistic" ? FlightShape::Logistic : FlightShape::Normal;
            const auto fit = fitFlight(shape, workedUntil(day), isExpected ? &expected : nullptr);
            if (!fit) {
                QVERIFY2(workedUntil(day).size() < 3, name);
                continue;
            }
            const double value = found(*fit, row.text("quantity"));
            if (std::isnan(value)) continue; // limits by profile: not asked
            if (row.text("value") == "Inf") continue; // no degree of freedom is left
            const double wanted = row.number("value");
            const double allowed = day == 176 ? 1e-3 : 1e-4; // as many unknowns as intervals: a ridge
            QVERIFY2(std::abs(value - wanted) < allowed * std::max(1.0, std::abs(wanted)),
                name + ' ' + row.text("quantity") + ' ' + QByteArray::number(value, 'g', 10));
            ++rows;
        }
        QVERIFY(rows > 95);
    }

    void beforeAnythingIsCaughtItIsWhatWasExpected()
    {
        for (const TrapFlight& trap :
            {TrapFlight{}, TrapFlight{{155, 161, 500}}, TrapFlight{{155, 161, 4}, {161, 168, 5}}}) {
            const auto posterior = posteriorOf(trap, 168);
            QVERIFY(posterior.isPriorOnly());
            QVERIFY(std::abs(posterior.median().middle - 190) < 1.0);
            QVERIFY(std::abs(posterior.median().deviation - 10) < 0.5);
            QVERIFY(posterior.stage() == FlightStage::CannotTell);
        }
        QVERIFY(!posteriorOf({{155, 161, 5}, {161, 168, 5}}, 168).isPriorOnly());
    }

    void aMissedWeekIsALongerInterval()
    {
        TrapFlight trap = workedUntil(231);
        trap[4].from = trap[3].from; // nobody looked on day 176
        trap[4].moths += trap[3].moths;
        trap.erase(trap.begin() + 3);
        const auto whole = posteriorOf(workedUntil(231), 231);
        const auto missed = posteriorOf(trap, 231);
        QVERIFY(std::abs(whole.median().mean - missed.median().mean) < 1.5);
        // The same moths over one long and two short intervals say no more about the flight than they did.
        QVERIFY(missed.median().deviation > 0.9 * whole.median().deviation);
    }

    // A count that is only a minimum is left out: the nights are lost, and not taken for nights without
    // moths.
    void aLostIntervalIsNotZero()
    {
        TrapFlight lost = workedUntil(231);
        lost.erase(lost.begin() + 4);
        TrapFlight zero = workedUntil(231);
        zero[4].moths = 0;
        const auto whole = posteriorOf(workedUntil(231), 231);
        const double byLost = std::abs(posteriorOf(lost, 231).median().mean - whole.median().mean);
        QVERIFY(byLost < 1.5);
        QVERIFY(posteriorOf(lost, 231).median().deviation > whole.median().deviation);
        QVERIFY(posteriorOf(zero, 231).median().deviation > whole.median().deviation);
    }

    void theStageOfOneTrap()
    {
        QVERIFY(posteriorOf(workedUntil(182), 182).stage() == FlightStage::Early);
        QVERIFY(posteriorOf(workedUntil(189), 189).stage() != FlightStage::PastPeak);
        QVERIFY(posteriorOf(workedUntil(210), 210).stage() == FlightStage::PastPeak);
    }

    void theRangeOfThePartOverIsWideBeforeThePeakAndNarrowAfterIt()
    {
        const auto before = posteriorOf(workedUntil(189), 189).part();
        const auto after = posteriorOf(workedUntil(231), 231).part();
        QVERIFY(before.low < before.middle && before.middle < before.high);
        QVERIFY(before.high - before.low > 0.4);
        QVERIFY(after.low > 0.99 && after.high <= 1.0);
    }

    void theFanRisesAndItsRangesLieInEachOther()
    {
        const auto posterior = posteriorOf(workedUntil(189), 189);
        std::vector<double> points;
        for (double at = 140; at <= 250; at += 5) points.push_back(at);
        const auto fan = posterior.fan(points);
        QCOMPARE(fan.size(), points.size());
        for (std::size_t i = 0; i < fan.size(); ++i) {
            const FanPoint& p = fan[i];
            QVERIFY(0 <= p.low && p.low <= p.quarter && p.quarter <= p.middle);
            QVERIFY(p.middle <= p.threeQuarters && p.threeQuarters <= p.high && p.high <= 1);
            if (i > 0) QVERIFY(p.low >= fan[i - 1].low && p.high >= fan[i - 1].high);
        }
        // Where the fan's middle crosses one half lies the middle of the day by which half is over.
        QVERIFY(std::abs(posterior.reached(0.5).mean - posterior.median().mean) < 1e-9);
    }

    // The same flight seen on another axis, and at another place of it.
    void theAxisMayBeAnything()
    {
        const double scale = 7.5, shift = -900;
        TrapFlight trap = workedUntil(197);
        for (FlightInterval& interval : trap) {
            interval.from = interval.from * scale + shift;
            interval.to = interval.to * scale + shift;
        }
        FlightPrior prior = priorOf(190 * scale + shift, 10 * scale, 0.35);
        prior.logWidth = std::log(10.0 * scale);
        const auto days = posteriorOf(workedUntil(197), 197);
        const auto other = posteriorOf(trap, 197 * scale + shift, prior);
        QVERIFY(std::abs(other.median().mean - (days.median().mean * scale + shift)) < 1e-3);
        QVERIFY(std::abs(other.part().mean - days.part().mean) < 1e-6);
    }

    void trapsOfADistrictTellMoreTogether()
    {
        const std::vector<TrapFlight> three(3, workedUntil(197));
        const auto pooled = flightPosterior(three, 197, usual);
        QVERIFY(pooled.has_value());
        QVERIFY(pooled->median().deviation < posteriorOf(workedUntil(197), 197).median().deviation);
        QCOMPARE(pooled->moths(), 3 * posteriorOf(workedUntil(197), 197).moths());
        // One without any moth changes nothing.
        std::vector<TrapFlight> withEmpty{workedUntil(197), {{155, 161, 0}, {161, 168, 0}}};
        const auto same = flightPosterior(withEmpty, 197, usual);
        QCOMPARE(same->median().mean, posteriorOf(workedUntil(197), 197).median().mean);
    }

    void daysThatCannotBe_data()
    {
        QTest::addColumn<double>("from");
        QTest::addColumn<double>("to");
        QTest::addColumn<int>("moths");
        QTest::addColumn<bool>("isRead");
        QTest::newRow("twice on one day, with moths") << 168.0 << 168.0 << 3 << false;
        QTest::newRow("twice on one day, without") << 168.0 << 168.0 << 0 << true;
        QTest::newRow("backwards") << 169.0 << 168.0 << 3 << false;
        QTest::newRow("no number") << 168.0 << std::nan("") << 3 << false;
        QTest::newRow("fewer than none") << 168.0 << 175.0 << -1 << false;
    }

    void daysThatCannotBe()
    {
        QFETCH(double, from);
        QFETCH(double, to);
        QFETCH(int, moths);
        QFETCH(bool, isRead);
        TrapFlight trap = workedUntil(168);
        trap.push_back({from, to, moths});
        const auto posterior = flightPosterior(std::span(&trap, 1), 176, usual);
        QCOMPARE(posterior.has_value(), isRead);
        if (!isRead) QVERIFY(posterior.error().code == ErrorCode::NotADay);
    }

    // Counts that fit nothing still have an answer, and the same one each time.
    void anythingHasAnAnswer()
    {
        const TrapFlight wild{{10, 11, 1}, {11, 12, 999'999}, {200, 201, 0}, {340, 364, 999'999}};
        const auto posterior = posteriorOf(wild, 364);
        for (const double value :
            {posterior.median().mean, posterior.part().low, posterior.peak().high, posterior.width().mean})
            QVERIFY(std::isfinite(value));
        QCOMPARE(posteriorOf(wild, 364).median().mean, posterior.median().mean);
        QVERIFY(!fitFlight(FlightShape::Normal, TrapFlight{{1, 2, 3}, {2, 3, 0}, {3, 4, 0}}).has_value());
    }
};

QTEST_APPLESS_MAIN(FlightPosteriorTest)
#include "flight_posterior_test.moc"
