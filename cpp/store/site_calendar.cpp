// SPDX-License-Identifier: MIT
#include "store/site_calendar.h"

#include "domain/import/temperature_plan.h"
#include "domain/rules/protocol_rules.h"
#include "store/trap_records.h"

namespace duskrow::store {

using namespace duskrow::domain;

Result<PriorOfPast> flightPrior(Reader& reader, const Protocol& protocol, const std::string& trapType,
    std::chrono::year year, LocalDay today)
{
    const auto prior = protocol.flightModel ? priorOf(*protocol.flightModel, year) : std::nullopt;
    if (!prior) return Error{ErrorCode::Empty, {"flight_model"}};
    const auto past = pastTrapSeasons(reader, protocol, trapType, static_cast<int>(year), today);
    if (!past) return past.error();
    return withPast(*prior, *past);
}

Result<HeatThere> heatAt(
    Reader& reader, const Protocol& protocol, const std::optional<GeoPoint>& place, std::chrono::year year)
{
    const auto& heat = protocol.heat;
    const bool isSaid = heat && heat->method.value && heat->lower.value && heat->start.value;
    if (!isSaid) return HeatThere{HeatStanding::NoTerms};
    if (!place) return HeatThere{HeatStanding::NoPlace};
    const auto known = stations(reader);
    if (!known) return known.error();
    const Station* const nearest = nearestStation(*known, *place);
    if (!nearest) return HeatThere{HeatStanding::NoStation};
    const auto temperatures = temperaturesOf(reader, nearest->id);
    if (!temperatures) return temperatures.error();
    if (temperatures->empty())
        return HeatThere{HeatStanding::NoTemperatures, {}, nearest->name, nearest->dayEndsMinute};
    const HeatTerms terms{*heat->method.value, *heat->lower.value, heat->upper.value,
        heat->cutOff.value.value_or(CutOff::None)};
    if (const auto checked = checkTerms(terms); !checked) return checked.error();
    const LocalDay from{year / *heat->start.value};
    // Crops are in by then; a station that is read in summer only has its past years up to here.
    const LocalDay to{year / std::chrono::September / 30};
    return HeatThere{HeatStanding::There, heatCourse(terms, toDays(*temperatures, heat->unit), from, to),
        nearest->name, nearest->dayEndsMinute};
}

namespace {

class SiteReading {
public:
    SiteReading(Reader& reader, const Season& season, const Site& site, CalendarFacts& facts)
        : m_reader(reader), m_season(season), m_site(site), m_facts(facts)
    {
        m_read.year = facts.year;
    }

    Result<SiteCalendar> made()
    {
        if (const auto taken = takeTraps(); !taken) return taken.error();
        if (const auto taken = takeFlight(); !taken) return taken.error();
        if (const auto taken = takeWalks(); !taken) return taken.error();
        auto heat = heatAt(m_reader, m_facts.protocol, m_place, m_facts.year);
        if (!heat) return heat.error();
        m_read.heat = std::move(*heat);
        m_facts.flight = m_read.flight ? &*m_read.flight : nullptr;
        m_facts.heat = m_read.heat.get();
        m_read.spans = pestCalendar(m_facts);
        m_read.gaps = calendarGaps(m_facts, m_read.heat.standing);
        return std::move(m_read);
    }

private:
    // What the traps of the site tell: set-up, first moth, flight and the place.
    Result<Done> takeTraps()
    {
        const auto weekStart = isoWeekday(m_season.weekStart.value_or(7));
        if (!weekStart) return weekStart.error();
        const SeasonRules rules = seasonRulesOf(m_facts.protocol, m_facts.year, *weekStart, m_facts.today);
        const auto traps = trapsAt(m_reader, m_site.id);
        if (!traps) return traps.error();
        for (const Trap& trap : *traps) {
            if (trap.season != m_season.id || trap.pest != m_facts.protocol.id) continue;
            const auto records = trapRecords(m_reader, trap.id);
            if (!records) return records.error();
            if (*records) takeTrap(trap, trapSeason((*records)->facts(), rules));
        }
        return Done{};
    }

    void takeTrap(const Trap& trap, const TrapSeason& season)
    {
        if (trap.place()) m_place = trap.place();
        if (trap.setDay && (!m_facts.setDay || *trap.setDay < *m_facts.setDay)) m_facts.setDay = trap.setDay;
        for (const CatchStep& step : season.steps) {
            if (!step.caught || step.caught->value() < 1) continue;
            if (!m_facts.firstCatchTo || step.to < *m_facts.firstCatchTo) {
                m_facts.firstCatchTo = step.to;
                m_facts.firstCatchFrom = step.from;
            }
            break;
        }
        m_read.traps.push_back({trap.id, trap.trapType, trap.setDay, flightOf(season)});
    }

    Result<Done> takeFlight()
    {
        const Protocol& protocol = m_facts.protocol;
        if (!protocol.flightModel || !priorOf(*protocol.flightModel, m_facts.year)) return Done{};
        const std::string type =
            m_read.traps.empty() ? protocol.trapTypes.front().id : m_read.traps.back().trapType;
        auto prior = flightPrior(m_reader, protocol, type, m_facts.year, m_facts.today);
        if (!prior) return prior.error();
        std::vector<TrapFlight> flights;
        for (const TrapOfSite& trap : m_read.traps) flights.push_back(trap.flight);
        auto flight = flightPosterior(flights, lastLook(flights, dayNumber(m_facts.today)), prior->prior);
        if (!flight) return flight.error();
        m_read.prior = *prior;
        m_read.flight = std::move(*flight);
        return Done{};
    }

    // What walks and decisions tell of the crop.
    Result<Done> takeWalks()
    {
        const auto walks = walksOf(m_reader, m_season.id);
        if (!walks) return walks.error();
        const auto decisions = decisionsOfSeason(m_reader, m_season.id);
        if (!decisions) return decisions.error();
        for (const Walk& walk : *walks) {
            if (walk.site != m_site.id) continue;
            if (walk.day && walk.stageBbch && *walk.day <= m_facts.today)
                m_facts.stages.push_back({*walk.day, BbchStage{*walk.stageBbch}});
            for (const Decision& decision : *decisions) {
                if (decision.walk != walk.id) continue;
                if (decision.cuttingDay) m_facts.cuttingDay = decision.cuttingDay;
                if (decision.labelDays) m_facts.labelDays = decision.labelDays;
            }
        }
        return Done{};
    }

    Reader& m_reader;
    const Season& m_season;
    const Site& m_site;
    CalendarFacts& m_facts;
    std::optional<GeoPoint> m_place;
    SiteCalendar m_read;
};

} // namespace

Result<SiteCalendar> siteCalendar(
    Reader& reader, const Season& season, const Site& site, const Protocol& protocol, LocalDay today)
{
    CalendarFacts facts{.protocol = protocol,
        .year = std::chrono::year{season.year.value_or(yearOf(today))},
        .today = today,
        .seededDay = site.seededDay};
    for (const ProtocolCrop& crop : protocol.crops)
        if (crop.id == site.crop) facts.crop = crop.id;
    return SiteReading(reader, season, site, facts).made();
}

} // namespace duskrow::store
