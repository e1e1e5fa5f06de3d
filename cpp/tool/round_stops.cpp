// SPDX-License-Identifier: MIT
#include "tool/round_stops.h"

#include <QLocale>

#include <algorithm>

#include "domain/rules/typed_place.h"
#include "text/due_text.h"
#include "tool/arguments.h"
#include "tool/csv_file.h"
#include "tool/due_stops.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using formats::CsvRow;

namespace {

struct StopColumns {
    std::size_t name = 0;
    std::size_t lat = 0;
    std::size_t lon = 0;
    std::optional<std::size_t> infested = {};
};

Result<StopColumns> stopColumnsOf(const CsvRow& header)
{
    const auto name = columnOf(header, {"name"});
    const auto lat = columnOf(header, {"lat", "latitude"});
    const auto lon = columnOf(header, {"lon", "longitude"});
    if (!name) return Error{ErrorCode::ColumnMissing, {"name"}};
    if (!lat) return Error{ErrorCode::ColumnMissing, {"lat"}};
    if (!lon) return Error{ErrorCode::ColumnMissing, {"lon"}};
    return StopColumns{*name, *lat, *lon, columnOf(header, {"infested"})};
}

std::optional<bool> yesOrNo(const std::string& cell)
{
    const QString typed = QString::fromStdString(cell).trimmed().toLower();
    for (const char* yes : {"yes", "true", "1"})
        if (typed == QLatin1String(yes)) return true;
    for (const char* no : {"no", "false", "0", ""})
        if (typed == QLatin1String(no)) return false;
    return std::nullopt;
}

Result<NamedStop> stopOf(const CsvRow& row, const StopColumns& columns, const std::string& path)
{
    const std::string line = std::to_string(row.line);
    const std::size_t last =
        std::max({columns.name, columns.lat, columns.lon, columns.infested.value_or(std::size_t{0})});
    if (row.cells.size() <= last) return Error{ErrorCode::TableUnreadable, {line}};
    const std::string& lat = row.cells[columns.lat];
    const std::string& lon = row.cells[columns.lon];
    const auto place = parsePlace(lat, lon);
    if (!place) return Error{ErrorCode::TableRow, {path, line, lat + ", " + lon, "place"}};
    const std::string typed = columns.infested ? row.cells[*columns.infested] : std::string();
    const auto infested = yesOrNo(typed);
    if (!infested) return Error{ErrorCode::TableRow, {path, line, typed, "infested"}};
    return NamedStop{QString::fromStdString(row.cells[columns.name]).simplified(), *place, *infested};
}

} // namespace

Result<NamedStops> stopsOfStore(
    const std::string& store, const std::string& keys, const std::string& protocols, LocalDay today)
{
    auto reader = openToLook(store, keys);
    if (!reader) return reader.error();
    const auto season = seasonWanted(**reader, {}, today);
    if (!season) return season.error();
    const auto records = namedRecords(**reader, *season, store::VisitsFor::Due);
    if (!records) return records.error();
    ProtocolShelf shelf(protocols);
    const auto due =
        dueStops(*records, seasonWeekOf(*season).value_or(SeasonWeek{}), today, std::chrono::days{0}, shelf);
    if (!due) return due.error();
    NamedStops found;
    for (const DueStop& stop : *due) {
        const QString title = records->title(*stop.trap);
        if (const auto place = stop.trap->place())
            found.stops.push_back({title, *place, false, text::dueLine(stop.items, today)});
        else
            found.withoutPlace << title;
        const auto protocol = shelf.of(stop.trap->pest);
        if (!protocol) return protocol.error();
        for (const Statement& caution : (*protocol)->cautionsAt(CautionPlace::Round)) {
            const QString words = QString::fromStdString(caution.text.in(QLocale().name().toStdString()));
            if (!found.cautions.contains(words)) found.cautions << words;
        }
    }
    return found;
}

Result<NamedStops> stopsOfTable(const std::string& path)
{
    const auto rows = rowsOfFile(path);
    if (!rows) return rows.error();
    const auto columns = stopColumnsOf(rows->empty() ? CsvRow{} : rows->front());
    if (!columns) return columns.error();
    NamedStops found;
    for (std::size_t i = 1; i < rows->size(); ++i) {
        auto stop = stopOf((*rows)[i], *columns, path);
        if (!stop) return stop.error();
        found.stops.push_back(std::move(*stop));
    }
    return found;
}

Result<GeoPoint> placeFrom(std::string_view typed)
{
    // With decimal commas there are three: the one in the middle parts the halves.
    const auto commas = std::count(typed.begin(), typed.end(), ',');
    std::size_t at = typed.find(',');
    if (commas == 3) at = typed.find(',', at + 1);
    if (commas != 1 && commas != 3) return Error{ErrorCode::NotAPlace, {std::string(typed)}};
    return parsePlace(typed.substr(0, at), typed.substr(at + 1));
}

} // namespace duskrow::tool
