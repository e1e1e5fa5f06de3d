// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "domain/rules/protocol_rules.h"
#include "domain/rules/trap_place.h"
#include "formats/formats.h"
#include "publish/season_events.h"
#include "text/amounts.h"
#include "text/season_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/output.h"
#include "tool/record_tables.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct ExportLine {
    std::string store;
    std::string format;
    std::string out;
    std::string on;
    std::string keys;
    std::string protocols;
};

formats::Cell dayCell(const std::optional<LocalDay>& day)
{
    if (!day) return std::nullopt;
    return formatDay(*day);
}

std::vector<formats::Cell> totalRow(const SeasonRecords& records, const TrapResult& result)
{
    const Trap& trap = *result.trap;
    const Site* site = records.siteOf(trap);
    const auto& season = result.season;
    const auto band = result.band ? formats::Cell(result.band->name.en) : std::nullopt;
    const auto moths =
        season.countedUntil ? formats::Cell(std::to_string(season.total.value())) : std::nullopt;
    return {std::to_string(records.season.year.value_or(0)), records.districtOf(trap).toStdString(),
        site ? formats::Cell(site->name) : std::nullopt, trap.tag, trap.pest, trap.trapType,
        dayCell(trap.setDay), dayCell(trap.endDay), dayCell(season.countedUntil), moths,
        season.isMinimum() ? "yes" : "no",
        text::seasonCaption(season, text::animalOf(result.protocol, QLocale().name().toStdString()))
            .toStdString(),
        band, result.protocol->version, formatUuid(trap.id)};
}

formats::ExportedTrap exportedTrap(const SeasonRecords& records, const TrapResult& result, LocalDay today)
{
    const Trap& trap = *result.trap;
    const Site* site = records.siteOf(trap);
    const TrapSeason& season = result.season;
    formats::ExportedTrap made{trap.id, records.season.year.value_or(0),
        records.districtOf(trap).toStdString(), site ? site->name : std::string(), trap.tag, trap.pest,
        result.protocol->latin, trap.trapType};
    if (const auto spot = spotOn(records.facts(trap), today)) {
        made.place = spot->place;
        if (spot->accuracy) made.accuracy = Metres{static_cast<double>(spot->accuracy->value()) / 1000};
    }
    if (season.countedUntil) made.total = season.total;
    made.isAtLeast = season.isMinimum();
    if (result.band) made.band = result.band->id;
    for (const CaughtInterval& one : season.intervals)
        made.catches.push_back({one.from, one.to, one.caught, one.isAtLeast});
    return made;
}

// One line a trap and season, in plain words, for those who do not want to put records together; and the
// traps themselves.
Result<Done> addSeasons(
    store::Reader& reader, LocalDay today, ProtocolShelf& shelf, formats::ExportInput& input)
{
    formats::Table table;
    table.name = "season-totals";
    table.header = {"season", "district", "site", "trap", "pest", "trap type", "set up", "taken down",
        "counted to", "moths", "at least", "of what", "band", "protocol version", "trap id"};
    const auto known = store::seasons(reader);
    if (!known) return known.error();
    for (const Season& season : *known) {
        const auto records = namedRecords(reader, season, store::VisitsFor::Catch);
        if (!records) return records.error();
        const auto results = trapResults(*records, today, shelf);
        if (!results) return results.error();
        for (const TrapResult& result : *results) {
            table.rows.push_back(totalRow(*records, result));
            input.traps.push_back(exportedTrap(*records, result, today));
        }
    }
    input.tables.push_back(std::move(table));
    return Done{};
}

// Of the season of the day looked from, where there is one.
Result<Done> addEvents(
    store::Reader& reader, LocalDay today, ProtocolShelf& shelf, formats::ExportInput& input)
{
    const auto season = store::seasonOfYear(reader, yearOf(today));
    if (!season) return season.error();
    if (!*season) return Done{};
    const auto records = namedRecords(reader, **season, store::VisitsFor::Due);
    if (!records) return records.error();
    const SeasonWeek week = seasonWeekOf(**season).value_or(SeasonWeek{});
    const std::chrono::year year{yearOf(today)};
    std::map<std::pair<std::string, std::string>, DueRules>
        rules; // by pest and trap type; they stay where they are
    publish::TrapsToPlan plan;
    for (const Trap& trap : records->traps) {
        const auto protocol = shelf.of(trap.pest);
        if (!protocol) return protocol.error();
        const auto [ofTrap, isNew] = rules.try_emplace({trap.pest, trap.trapType});
        if (isNew) ofTrap->second = dueRulesOf(**protocol, trap.trapType, year, week);
        plan.traps.push_back({records->facts(trap), ofTrap->second});
        plan.titles[trap.id] = records->title(trap);
    }
    input.events = publish::seasonEvents(plan, today);
    return Done{};
}

Result<Done> writeFiles(const QDir& folder, const std::vector<formats::ExportedFile>& files)
{
    // All names are looked at before the first file is written.
    for (const formats::ExportedFile& file : files) {
        const QString path = folder.filePath(QString::fromStdString(file.name));
        if (QFileInfo::exists(path)) return Error{ErrorCode::StoreExists, {path.toStdString()}};
    }
    if (!folder.mkpath(QStringLiteral(".")))
        return Error{ErrorCode::FileUnwritable, {folder.path().toStdString()}};
    for (const formats::ExportedFile& file : files) {
        const QString path = folder.filePath(QString::fromStdString(file.name));
        QFile written(path);
        const Error refused{ErrorCode::FileUnwritable, {path.toStdString()}};
        if (!written.open(QIODevice::WriteOnly | QIODevice::NewOnly)) return refused;
        const auto size = static_cast<qint64>(file.bytes.size());
        if (written.write(file.bytes.data(), size) != size || !written.flush()) return refused;
    }
    return Done{};
}

Result<int> exportStore(const ExportLine& line)
{
    const auto format = formats::formatOf(line.format);
    if (!format) return format.error();
    const auto today = dayOrToday(line.on);
    if (!today) return today.error();
    auto reader = openToLook(line.store, line.keys);
    if (!reader) return reader.error();
    auto tables = recordTables(**reader);
    if (!tables) return tables.error();
    ProtocolShelf shelf(line.protocols);
    const auto programmes = (*reader)->select<Programme>({});
    if (!programmes) return programmes.error();
    formats::ExportInput input{.tables = std::move(*tables)};
    input.made = Instant{today->time_since_epoch() + std::chrono::hours{12}};
    if (!programmes->empty()) {
        input.programme = programmes->front().name;
        input.programmeKey = formatUuid(programmes->front().id);
    }
    if (const auto added = addSeasons(**reader, *today, shelf, input); !added) return added.error();
    if (const auto added = addEvents(**reader, *today, shelf, input); !added) return added.error();
    const auto files = format->write(input);
    if (!files) return files.error();
    const QDir folder(QString::fromStdString(line.out));
    if (const auto written = writeFiles(folder, *files); !written) return written.error();
    for (const formats::ExportedFile& file : *files)
        print(folder.filePath(QString::fromStdString(file.name)));
    return 0;
}

std::string knownFormats()
{
    std::string ids;
    for (const formats::Format& format : formats::formats())
        ids += (ids.empty() ? "" : ", ") + std::string(format.id);
    return ids;
}

} // namespace

Work declareExport(CLI::App& line)
{
    const auto typed = std::make_shared<ExportLine>();
    addStore(line, typed->store);
    line.add_option("OUT", typed->out, "Folder for the files, made if need be; no file in it is overwritten")
        ->required();
    line.add_option("--as", typed->format, "The format: " + knownFormats())->required()->type_name("FORMAT");
    line.add_option("--on", typed->on, "The day to look from, such as 2026-07-14 (today if left out)")
        ->type_name("DAY");
    addKeys(line, typed->keys);
    addProtocols(line, typed->protocols);
    return [typed] { return exportStore(*typed); };
}

} // namespace duskrow::tool
