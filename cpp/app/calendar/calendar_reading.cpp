// SPDX-License-Identifier: MIT
#include "app/calendar/calendar_reading.h"

#include <algorithm>
#include <map>

#include "domain/rules/protocol_rules.h"
#include "store/season_records.h"
#include "store/trap_records.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr int fanPoints = 64;

// The counts of several traps as one row of bars: those over the same nights are added up.
TrapFlight together(std::span<const TrapFlight> traps)
{
    std::map<std::pair<double, double>, std::int64_t> moths;
    for (const TrapFlight& trap : traps)
        for (const FlightInterval& interval : trap) moths[{interval.from, interval.to}] += interval.moths;
    TrapFlight all;
    for (const auto& [ends, caught] : moths) all.push_back({ends.first, ends.second, caught});
    return all;
}

class FlightReading {
public:
    FlightReading(const CalendarBook& book, const FlightPrior& prior, std::vector<TrapFlight> traps)
        : m_book(book), m_prior(prior), m_traps(std::move(traps))
    {
    }

    Result<FlightRead> byDays() const
    {
        const double until = lastLook(m_traps, dayNumber(m_book.today));
        auto posterior = flightPosterior(m_traps, until, m_prior);
        if (!posterior) return posterior.error();
        return made(std::move(*posterior), FlightAxis::Days, m_traps);
    }

    Result<std::optional<FlightRead>> byWarmth() const
    {
        const HeatCourse* const course = m_book.calendar.heat.get();
        const auto year = m_book.calendar.year;
        if (!course || !reachesOver(*course, m_prior, year)) return std::optional<FlightRead>{};
        std::vector<TrapInWarmth> inWarmth;
        std::vector<TrapFlight> warm;
        for (const TrapFlight& trap : m_traps) {
            inWarmth.push_back({trap, course});
            warm.push_back(onHeat(trap, *course, year));
        }
        auto posterior = flightOnHeat(inWarmth, m_prior, *course, year, m_book.today);
        if (!posterior) return posterior.error();
        return std::optional(made(std::move(*posterior), FlightAxis::Warmth, warm));
    }

private:
    FlightRead made(FlightPosterior posterior, FlightAxis axis, const std::vector<TrapFlight>& traps) const
    {
        FlightRead read{.posterior = std::move(posterior), .axis = axis};
        read.first = read.posterior.reached(0.05);
        read.last = read.posterior.reached(0.95);
        read.counts = together(traps);
        read.traps = traps.size();
        for (const TrapFlight& trap : traps) read.intervals += trap.size();
        read.isCounted = read.intervals > 0;
        // The outermost chances would draw a long empty tail.
        read.from = read.first.middle - (read.first.middle - read.first.low) / 2;
        read.to = read.last.middle + (read.last.high - read.last.middle) / 2;
        for (const FlightInterval& count : read.counts) {
            read.from = std::min(read.from, count.from);
            read.to = std::max(read.to, count.to);
        }
        read.to = std::max(read.to, read.from + 1);
        std::vector<double> points;
        for (int i = 0; i < fanPoints; ++i)
            points.push_back(read.from + (read.to - read.from) * i / (fanPoints - 1));
        read.fan = read.posterior.fan(points);
        return read;
    }

    const CalendarBook& m_book;
    const FlightPrior& m_prior;
    std::vector<TrapFlight> m_traps;
};

Result<Done> readFlights(const CalendarBook& book, const FlightPrior& prior, std::vector<TrapFlight> traps,
    std::optional<FlightRead>& byDays, std::optional<FlightRead>& byWarmth)
{
    const FlightReading reading(book, prior, std::move(traps));
    auto days = reading.byDays();
    if (!days) return days.error();
    byDays = std::move(*days);
    auto warmth = reading.byWarmth();
    if (!warmth) return warmth.error();
    byWarmth = std::move(*warmth);
    return Done{};
}

} // namespace

Result<std::shared_ptr<const CalendarBook>> CalendarBook::read(
    store::Reader& reader, const Uuid& trap, const Protocol& protocol, LocalDay today)
{
    const auto records = store::trapRecords(reader, trap);
    if (!records) return records.error();
    if (!*records) return Error{ErrorCode::RecordMissing, {"trap"}};
    auto book = std::make_shared<CalendarBook>(
        CalendarBook{protocol, today, (*records)->trap, (*records)->site, {}, {}});
    const auto districts = store::districts(reader);
    if (!districts) return districts.error();
    for (const District& district : *districts)
        if (district.id == book->site.district && !book->site.district.isNil())
            book->district = QString::fromStdString(district.name);
    auto calendar = store::siteCalendar(reader, (*records)->season, book->site, protocol, today);
    if (!calendar) return calendar.error();
    book->calendar = std::move(*calendar);
    if (!book->calendar.prior) return std::shared_ptr<const CalendarBook>(std::move(book));
    TrapFlight own;
    for (const store::TrapOfSite& one : book->calendar.traps)
        if (one.trap == trap) own = one.flight;
    const auto done =
        readFlights(*book, book->calendar.prior->prior, {std::move(own)}, book->byDays, book->byWarmth);
    if (!done) return done.error();
    return std::shared_ptr<const CalendarBook>(std::move(book));
}

Result<std::shared_ptr<const DistrictFlight>> districtFlight(store::Reader& reader, const CalendarBook& book)
{
    auto found = std::make_shared<DistrictFlight>();
    if (!book.calendar.prior) return std::shared_ptr<const DistrictFlight>(std::move(found));
    const auto season = store::seasonOfYear(reader, static_cast<int>(book.calendar.year));
    if (!season) return season.error();
    if (!*season) return Error{ErrorCode::RecordMissing, {"season"}};
    const auto records = store::seasonRecords(reader, **season, store::VisitsFor::Catch);
    if (!records) return records.error();
    const auto weekStart = isoWeekday((*season)->weekStart.value_or(7));
    if (!weekStart) return weekStart.error();
    const SeasonRules rules = seasonRulesOf(book.protocol, book.calendar.year, *weekStart, book.today);
    std::vector<TrapFlight> traps;
    for (const Trap& trap : records->traps) {
        const Site* const site = records->siteOf(trap);
        if (!site || site->district != book.site.district || trap.pest != book.protocol.id) continue;
        traps.push_back(flightOf(trapSeason(records->facts(trap), rules)));
    }
    const auto done =
        readFlights(book, book.calendar.prior->prior, std::move(traps), found->byDays, found->byWarmth);
    if (!done) return done.error();
    return std::shared_ptr<const DistrictFlight>(std::move(found));
}

} // namespace duskrow::app
