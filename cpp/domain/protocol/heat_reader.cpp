// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/protocol/section_readers.h"

namespace duskrow::domain {

namespace {

// Of each of them the model makes a scale: nothing could be said with a scale of 0.
void checkScale(Reading& reading, const LocatedJson& node, std::string_view key, const Figure<double>& figure)
{
    if (figure.value && !(*figure.value > 0)) reading.refuse(node, key, "this must be above 0");
}

HeatModel readModel(Reading& reading, const LocatedJson& node)
{
    HeatModel heat;
    heat.unit = reading.value<HeatUnit>(node, "unit");
    heat.method = reading.figure<HeatMethod>(node, "method");
    heat.lower = reading.figure<double>(node, "lower");
    heat.upper = reading.figure<double>(node, "upper");
    heat.cutOff = reading.figure<CutOff>(node, "cut_off");
    heat.start = reading.figure<std::chrono::month_day>(node, "start_month_day");
    for (const LocatedJson& sum : reading.identifiedIfAny(node, "sums"))
        heat.sums.push_back({reading.id(sum), reading.localText(sum, "name"),
            reading.value<SumAfter>(sum, "after"), reading.figure<double>(sum, "degree_days")});
    const bool isCutOff = heat.cutOff.value && *heat.cutOff.value != CutOff::None;
    if (isCutOff && !heat.upper.value) reading.refuse(node, "cut_off", "a cut-off needs an upper limit");
    if (heat.upper.value && heat.lower.value && *heat.upper.value <= *heat.lower.value)
        reading.refuse(node, "upper", "the upper limit is above the lower one");
    const bool isHard = heat.cutOff.value == CutOff::Intermediate || heat.cutOff.value == CutOff::Vertical;
    if (isHard && heat.method.value == HeatMethod::AverageClamped)
        reading.refuse(node, "cut_off", "a clamped average takes \"none\" or \"horizontal\"");
    return heat;
}

FlightModel readFlightModel(Reading& reading, const LocatedJson& node)
{
    FlightModel flight;
    flight.median = reading.figure<std::chrono::month_day>(node, "median_month_day");
    flight.medianSpreadDays = reading.figure<double>(node, "median_spread_days");
    flight.widthDays = reading.figure<double>(node, "width_days");
    flight.widthLogSpread = reading.figure<double>(node, "width_log_spread");
    flight.dispersion = reading.figure<double>(node, "dispersion");
    flight.dispersionLogSpread = reading.figure<double>(node, "dispersion_log_spread");
    checkScale(reading, node, "median_spread_days", flight.medianSpreadDays);
    checkScale(reading, node, "width_days", flight.widthDays);
    checkScale(reading, node, "width_log_spread", flight.widthLogSpread);
    checkScale(reading, node, "dispersion", flight.dispersion);
    checkScale(reading, node, "dispersion_log_spread", flight.dispersionLogSpread);
    return flight;
}

// After readTrapping: the crops and their stages are known.
CropDays readCropDays(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    CropDays days{reading.id(node), reading.text(node, "crop"),
        reading.range<std::chrono::days>(node, "after_seeding_days")};
    const auto crop = std::find_if(protocol.crops.begin(), protocol.crops.end(),
        [&](const ProtocolCrop& one) { return one.id == days.crop; });
    if (crop == protocol.crops.end())
        reading.refuse(node, "crop", "\"" + days.crop + "\" is no crop of this protocol");
    else if (days.id != cuttingOfCrop
        && std::none_of(crop->growthStages.begin(), crop->growthStages.end(),
            [&](const GrowthStage& stage) { return stage.id == days.id; }))
        reading.refuse(node, "id", "\"" + days.id + "\" is no stage of its crop, and not \"cutting\"");
    return days;
}

} // namespace

void readHeat(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    if (file.find("heat")) protocol.heat = readModel(reading, reading.object(file, "heat"));
    if (file.find("flight_model"))
        protocol.flightModel = readFlightModel(reading, reading.object(file, "flight_model"));
    for (const LocatedJson& node : reading.identifiedIfAny(file, "crop_calendar"))
        protocol.cropCalendar.push_back(readCropDays(reading, node, protocol));
}

} // namespace duskrow::domain
