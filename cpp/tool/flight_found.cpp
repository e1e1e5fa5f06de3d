// SPDX-License-Identifier: MIT
#include "tool/flight_found.h"

#include <algorithm>

#include "domain/import/temperature_plan.h"
#include "store/trap_records.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

Result<PriorOfPast> priorFor(store::Reader& reader, const Protocol& protocol, const std::string& trapType,
    std::chrono::year year, LocalDay today)
{
    const auto prior = protocol.flightModel ? priorOf(*protocol.flightModel, year) : std::nullopt;
    if (!prior) return Error{ErrorCode::Empty, {"flight_model"}};
    const auto past = store::pastTrapSeasons(reader, protocol, trapType, static_cast<int>(year), today);
    if (!past) return past.error();
    return withPast(*prior, *past);
}

double lastLook(std::span<const TrapFlight> traps, double otherwise)
{
    std::optional<double> last;
    for (const TrapFlight& trap : traps)
        for (const FlightInterval& interval : trap) last = std::max(last.value_or(interval.to), interval.to);
    return last.value_or(otherwise);
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

Json dayRangeJson(const ChanceRange& range, std::chrono::year year)
{
    const auto day = [&](double number) { return formatDay(dayAt(year, number)); };
    return {{"low", day(range.low)}, {"middle", day(range.middle)}, {"high", day(range.high)},
        {"mean_day_of_year", range.mean}, {"deviation_days", range.deviation}};
}

Json flightJson(const FlightPosterior& flight, std::chrono::year year)
{
    return {{"moths", flight.moths()}, {"is_expectation_only", flight.isPriorOnly()},
        {"phase", codeOf(flight.stage())}, {"first_moths", dayRangeJson(flight.reached(0.05), year)},
        {"median", dayRangeJson(flight.median(), year)}, {"peak", dayRangeJson(flight.peak(), year)},
        {"over", dayRangeJson(flight.reached(0.95), year)}, {"width_days", flight.width().mean},
        {"part_over", {{"low", flight.part().low}, {"high", flight.part().high}, {"chance", 0.9}}}};
}

Result<std::optional<HeatThere>> heatAt(
    store::Reader& reader, const Protocol& protocol, const GeoPoint& place, std::chrono::year year)
{
    const auto& heat = protocol.heat;
    const bool isSaid = heat && heat->method.value && heat->lower.value && heat->start.value;
    if (!isSaid) return std::optional<HeatThere>{};
    const auto stations = store::stations(reader);
    if (!stations) return stations.error();
    const Station* const nearest = nearestStation(*stations, place);
    if (!nearest) return std::optional<HeatThere>{};
    const auto temperatures = store::temperaturesOf(reader, nearest->id);
    if (!temperatures) return temperatures.error();
    if (temperatures->empty()) return std::optional<HeatThere>{};
    const HeatTerms terms{*heat->method.value, *heat->lower.value, heat->upper.value,
        heat->cutOff.value.value_or(CutOff::None)};
    if (const auto checked = checkTerms(terms); !checked) return checked.error();
    const LocalDay from{year / *heat->start.value};
    // Crops are in by then; a station that is read in summer only has its past years up to here.
    const LocalDay to{year / std::chrono::September / 30};
    return std::optional(
        HeatThere{heatCourse(terms, toDays(*temperatures, heat->unit), from, to), nearest->name});
}

} // namespace duskrow::tool
