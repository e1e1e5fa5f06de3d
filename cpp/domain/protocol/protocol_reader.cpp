// SPDX-License-Identifier: MIT
#include "domain/protocol/protocol_reader.h"

#include <algorithm>
#include <array>

#include "domain/protocol/section_readers.h"
#include "domain/protocol/source_check.h"

namespace duskrow::domain {

namespace {

using Kind = LocatedJson::Kind;

constexpr std::string_view form = "1";

// Only these are checked for sources; what a newer program adds is its own concern.
constexpr std::array<std::string_view, 19> knownSections{"crops", "other_hosts", "trap_types",
    "traps_per_field", "lure", "killing_strip", "height", "placement", "season", "phenology", "heat",
    "flight_model", "crop_calendar", "season_bands", "rules", "scouting", "marks", "look_alikes", "cautions"};

bool isVersion(std::string_view text)
{
    const auto digits = [](std::string_view part) {
        return !part.empty()
            && std::all_of(part.begin(), part.end(), [](char c) { return c >= '0' && c <= '9'; });
    };
    return text.size() > 5 && text.size() <= 16 && text[4] == '-' && digits(text.substr(0, 4))
        && digits(text.substr(5));
}

void readHead(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    if (reading.text(file, "form") != form)
        reading.refuse(file, "form", "this form of protocol is for another version of the program");
    protocol.id = reading.id(file);
    protocol.version = reading.text(file, "version");
    if (!isVersion(protocol.version))
        reading.refuse(file, "version", "a version is a year and a number, such as \"2026-1\"");
    protocol.name = reading.localText(file, "name");
    protocol.latin = reading.text(reading.object(file, "name"), "latin");
    if (!file.find("counted")) return;
    const LocatedJson& counted = reading.object(file, "counted");
    protocol.counted = {reading.localText(counted, "one"), reading.localText(counted, "many")};
}

void readSources(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    const LocatedJson& sources = reading.object(file, "sources");
    for (std::size_t i = 0; i < sources.items.size(); ++i) {
        const std::string& id = sources.keys[i];
        if (id == commonPractice || id == notPublished)
            reading.refuse(sources.items[i], "\"" + id + "\" is a reserved word and cannot name a source");
        protocol.sources.push_back({id, reading.text(sources, id)});
    }
    for (const std::string_view section : knownSections)
        if (const LocatedJson* node = file.find(section)) checkSources(reading, *node, sources);
}

void readCautions(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    for (const LocatedJson& node : reading.identifiedIfAny(file, "cautions")) {
        Caution caution{reading.statement(node), {}};
        for (const LocatedJson& place : reading.list(node, "shown").items) {
            const auto shown = FileValue<CautionPlace>::read(place);
            if (shown)
                caution.shown.push_back(*shown);
            else
                reading.refuse(place, "a caution is shown at " + FileValue<CautionPlace>::form());
        }
        protocol.cautions.push_back(std::move(caution));
    }
}

} // namespace

Result<Protocol> readProtocol(std::string_view text, const std::string& fileName)
{
    const auto file = readLocatedJson(text, fileName);
    if (!file) return file.error();
    Reading reading(fileName, *file);
    if (file->kind != Kind::Object) reading.refuse(*file, "a protocol file is one group in { }");
    Protocol protocol;
    readHead(reading, *file, protocol);
    readSources(reading, *file, protocol);
    readTrapping(reading, *file, protocol);
    readFlight(reading, *file, protocol);
    readHeat(reading, *file, protocol);
    readRules(reading, *file, protocol);
    readScouting(reading, *file, protocol);
    readCautions(reading, *file, protocol);
    if (reading.mistake()) return *reading.mistake();
    return protocol;
}

} // namespace duskrow::domain
