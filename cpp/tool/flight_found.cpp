// SPDX-License-Identifier: MIT
#include "tool/flight_found.h"

#include <algorithm>
#include <map>

#include "tool/heat_arguments.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

struct FlightOfDistrict {
    std::vector<TrapFlight> traps = {};
    std::vector<TrapInWarmth> warm = {};
    std::vector<std::shared_ptr<const HeatCourse>> courses = {}; // that `warm` looks on
    std::string station = {};
    FlightPrior prior = {};
};

// Goes over the traps of a season once.
class FlightFinder {
public:
    FlightFinder(
        const FlightAsked& asked, store::Reader& reader, const SeasonRecords& records, LocalDay today)
        : m_asked(asked), m_reader(reader), m_records(records), m_today(today)
    {
        m_flights.pest = asked.pest;
        m_flights.axis = asked.axis;
        m_flights.year = std::chrono::year{records.season.year.value_or(yearOf(today))};
    }

    Result<Flights> find()
    {
        ProtocolShelf shelf(m_asked.protocols);
        const auto results = trapResults(m_records, m_today, shelf);
        if (!results) return results.error();
        for (const TrapResult& result : *results)
            if (result.trap->pest == m_asked.pest)
                if (const auto taken = take(result); !taken) return taken.error();
        for (const auto& [name, district] : m_districts)
            if (const auto added = addDistrict(name, district); !added) return added.error();
        return std::move(m_flights);
    }

private:
    Result<const PriorOfPast*> priorOfType(const TrapResult& result)
    {
        auto found = m_priors.find(result.trap->trapType);
        if (found == m_priors.end()) {
            const auto prior = store::flightPrior(
                m_reader, *result.protocol, result.trap->trapType, m_flights.year, m_today);
            if (!prior) return prior.error();
            found = m_priors.emplace(result.trap->trapType, *prior).first;
        }
        m_flights.pastYears = std::max(m_flights.pastYears, found->second.years);
        return static_cast<const PriorOfPast*>(&found->second);
    }

    Result<Done> take(const TrapResult& result)
    {
        const auto prior = priorOfType(result);
        if (!prior) return prior.error();
        const TrapFlight trap = flightOf(result.season);
        const std::string name = m_records.title(*result.trap).toStdString();
        FlightOfDistrict& district = m_districts[m_records.districtOf(*result.trap).toStdString()];
        district.prior = (*prior)->prior;
        if (m_asked.axis == Axis::Warmth) return takeInWarmth(result, trap, name, district);
        auto flight = flightPosterior(
            std::span(&trap, 1), lastLook(std::span(&trap, 1), dayNumber(m_today)), district.prior);
        if (!flight) return flight.error();
        m_flights.traps.push_back({name, std::move(*flight)});
        district.traps.push_back(trap);
        return Done{};
    }

    Result<Done> takeInWarmth(
        const TrapResult& result, const TrapFlight& trap, const std::string& name, FlightOfDistrict& district)
    {
        auto heat = store::heatAt(m_reader, *result.protocol, result.trap->place(), m_flights.year);
        if (!heat) return heat.error();
        if (!heat->get() || !reachesOver(heat->course, district.prior, m_flights.year)) {
            m_flights.withoutWarmth.push_back(name);
            return Done{};
        }
        m_flights.unit = result.protocol->heat->unit;
        const auto course = std::make_shared<const HeatCourse>(std::move(heat->course));
        const TrapInWarmth one{trap, course.get()};
        auto flight = flightOnHeat(std::span(&one, 1), district.prior, *course, m_flights.year, m_today);
        if (!flight) return flight.error();
        m_flights.traps.push_back({name, std::move(*flight), heat->station, course});
        district.warm.push_back(one);
        district.courses.push_back(course);
        district.station = heat->station;
        return Done{};
    }

    Result<Done> addDistrict(const std::string& name, const FlightOfDistrict& district)
    {
        if (m_asked.axis == Axis::Days) {
            auto flight =
                flightPosterior(district.traps, lastLook(district.traps, dayNumber(m_today)), district.prior);
            if (!flight) return flight.error();
            m_flights.districts.push_back({name, std::move(*flight)});
        } else if (!district.warm.empty()) {
            const auto& course = district.courses.back();
            auto flight = flightOnHeat(district.warm, district.prior, *course, m_flights.year, m_today);
            if (!flight) return flight.error();
            m_flights.districts.push_back({name, std::move(*flight), district.station, course});
        }
        return Done{};
    }

    const FlightAsked& m_asked;
    store::Reader& m_reader;
    const SeasonRecords& m_records;
    LocalDay m_today;
    Flights m_flights;
    std::map<std::string, PriorOfPast> m_priors; // by trap type
    std::map<std::string, FlightOfDistrict> m_districts;
};

Json dayRangeJson(const ChanceRange& range, std::chrono::year year)
{
    const auto day = [&](double number) { return formatDay(dayAt(year, number)); };
    return {{"low", day(range.low)}, {"middle", day(range.middle)}, {"high", day(range.high)},
        {"mean_day_of_year", range.mean}, {"deviation_days", range.deviation}};
}

// In degree-days, with the day on which the middle course reaches each; null after its end.
Json warmthRangeJson(const ChanceRange& range, const HeatCourse& course)
{
    const auto day = [&](double sum) {
        const auto reached = course.reaching(std::max(0.0, sum)).middle;
        return reached ? Json(formatDay(*reached)) : Json();
    };
    return {{"low", range.low}, {"middle", range.middle}, {"high", range.high}, {"mean", range.mean},
        {"deviation", range.deviation},
        {"day", {{"low", day(range.low)}, {"middle", day(range.middle)}, {"high", day(range.high)}}}};
}

Json flightJson(const OneFlight& one, const Flights& flights)
{
    const FlightPosterior& flight = one.flight;
    const bool isByDays = flights.axis == Axis::Days;
    const auto range = [&](const ChanceRange& chances) {
        return isByDays ? dayRangeJson(chances, flights.year) : warmthRangeJson(chances, *one.course);
    };
    Json json{{"moths", flight.moths()}, {"is_expectation_only", flight.isPriorOnly()},
        {"phase", codeOf(flight.stage())}, {"first_moths", range(flight.reached(0.05))},
        {"median", range(flight.median())}, {"peak", range(flight.peak())},
        {"over", range(flight.reached(0.95))},
        {isByDays ? "width_days" : "width_degree_days", flight.width().mean},
        {"part_over", {{"low", flight.part().low}, {"high", flight.part().high}, {"chance", 0.9}}}};
    if (!isByDays) json["station"] = one.station;
    return json;
}

Json listJson(const std::vector<OneFlight>& all, const Flights& flights, const char* key)
{
    Json list = Json::array();
    for (const OneFlight& one : all) {
        Json json = flightJson(one, flights);
        json[key] = one.name;
        list.push_back(std::move(json));
    }
    return list;
}

} // namespace

Result<Flights> flightsOfStore(const FlightAsked& asked)
{
    const auto seen = lookAt(asked.season);
    if (!seen) return seen.error();
    auto records = namedRecords(*seen->reader, seen->season, store::VisitsFor::Catch);
    if (!records) return records.error();
    if (!asked.trap.empty()) {
        const auto trap = trapNamed(*records, asked.trap);
        if (!trap) return trap.error();
        records->traps = {*trap};
    }
    return FlightFinder(asked, *seen->reader, *records, seen->today).find();
}

const char* codeOf(FlightStage stage)
{
    switch (stage) {
    case FlightStage::CannotTell:
        return "cannot_tell";
    case FlightStage::Early:
        return "early";
    case FlightStage::AroundPeak:
        return "around_peak";
    case FlightStage::PastPeak:
        return "past_peak";
    }
    return "";
}

Json flightsJson(const Flights& flights)
{
    Json json{{"pest", flights.pest}, {"year", static_cast<int>(flights.year)},
        {"axis", flights.axis == Axis::Days ? "day" : "degree-days"}, {"past_years", flights.pastYears}};
    if (flights.axis == Axis::Warmth) {
        json["unit"] = codeOf(flights.unit);
        json["without_warmth"] = flights.withoutWarmth;
    }
    json["traps"] = listJson(flights.traps, flights, "trap");
    json["districts"] = listJson(flights.districts, flights, "district");
    return json;
}

} // namespace duskrow::tool
