// SPDX-License-Identifier: MIT
#include "app/import/temperatures_work.h"

#include "app/import/import_work.h"
#include "store/queries.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Why it cannot be brought in as it stands, though it can be read.
std::optional<Error> missingOf(const formats::TemperatureReading& reading, const TemperaturesAsk& ask)
{
    const DayOrderFinding& order = reading.dayOrder;
    if (!reading.scale.unit) return Error{ErrorCode::ScaleUnsaid, {}};
    if (order.reason == DayOrderReason::Ambiguous || order.reason == DayOrderReason::Both)
        return Error{ErrorCode::DayOrderUnsaid, {order.example}};
    if (ask.station.name.empty()) return Error{ErrorCode::Empty, {"station"}};
    return std::nullopt;
}

Result<ImportPlan> planOf(
    store::Reader& reader, formats::TemperatureReading& reading, const TemperaturesAsk& ask)
{
    const auto stations = store::stations(reader, true);
    if (!stations) return stations.error();
    const Uuid station = stationNamed(*stations, ask.programme, ask.station.name);
    const auto known = store::temperaturesOf(reader, station, true);
    if (!known) return known.error();
    ImportPlan plan = planTemperatures(reading.rows, *reading.scale.unit, std::move(reading.refused),
        ask.station, *stations, *known, ask.programme);
    plan.repeated = reading.repeated;
    return plan;
}

} // namespace

Result<std::shared_ptr<const TemperaturesSeen>> readTemperaturesFile(
    store::Reader& reader, const TemperaturesAsk& ask)
{
    const auto bytes = importBytes(ask.path);
    if (!bytes) return bytes.error();
    const auto seen = std::make_shared<TemperaturesSeen>();
    seen->import.file = importName(ask.path);
    auto reading = formats::readTemperatures(*bytes, ask.choices);
    if (!reading) {
        const ErrorCode code = reading.error().code;
        if (code != ErrorCode::ColumnMissing && code != ErrorCode::ColumnTwice) return reading.error();
        seen->missing = reading.error();
        const auto table = formats::lookAtTable(*bytes, {});
        if (!table) return table.error();
        for (const MappedColumn& column : table->columns) seen->header.push_back(column.heading);
        return std::shared_ptr<const TemperaturesSeen>(seen);
    }
    seen->import.id = formatUuid(store::importId(ask.programme, reading->hash));
    seen->header = reading->header;
    seen->missing = missingOf(*reading, ask);
    if (!seen->missing) {
        auto plan = planOf(reader, *reading, ask);
        if (!plan) return plan.error();
        seen->plan = std::move(*plan);
    }
    seen->reading = std::move(*reading);
    return std::shared_ptr<const TemperaturesSeen>(seen);
}

} // namespace duskrow::app
