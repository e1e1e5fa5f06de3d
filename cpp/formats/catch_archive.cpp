// SPDX-License-Identifier: MIT
#include "formats/catch_archive.h"

#include <array>
#include <cmath>

#include "formats/darwin_archive.h"
#include "formats/svg.h"
#include "formats/zip.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

constexpr std::array eventTerms{"eventID", "parentEventID", "eventType", "eventDate", "samplingProtocol",
    "sampleSizeValue", "sampleSizeUnit", "locality", "decimalLatitude", "decimalLongitude", "geodeticDatum",
    "coordinateUncertaintyInMeters"};
constexpr std::array occurrenceTerms{"eventID", "occurrenceID", "basisOfRecord", "scientificName", "kingdom",
    "lifeStage", "sex", "occurrenceStatus", "individualCount", "occurrenceRemarks"};

std::string degrees(std::int32_t e7)
{
    const std::int64_t size = std::abs(static_cast<std::int64_t>(e7));
    std::string rest = std::to_string(size % 10'000'000);
    rest.insert(0, 7 - rest.size(), '0');
    return (e7 < 0 ? "-" : "") + std::to_string(size / 10'000'000) + "." + rest;
}

Cell orNone(const std::string& text)
{
    return text.empty() ? Cell() : Cell(text);
}

// The same for the same stretch, however often it is exported.
std::string idOf(const ExportedTrap& trap, const ExportedCatch& part)
{
    const std::vector<std::string> parts{formatUuid(trap.id), "catch", formatDay(part.to)};
    return "urn:uuid:" + formatUuid(uuidFromName(parts));
}

void add(Table& events, Table& occurrences, const ExportedTrap& trap, const ExportedCatch& part)
{
    const std::string id = idOf(trap, part);
    const std::string from = part.from ? formatDay(*part.from) + "/" : "";
    const auto nights = part.from ? Cell(std::to_string((part.to - *part.from).count())) : Cell();
    // Darwin Core: of a fix that came without its accuracy nobody knows the uncertainty.
    const auto uncertainty =
        trap.accuracy ? Cell(std::to_string(std::llround(std::ceil(trap.accuracy->value())))) : Cell();
    events.rows.push_back({id, "urn:uuid:" + formatUuid(trap.id), "SiteVisit", from + formatDay(part.to),
        "pheromone trap: " + trap.trapType, nights, part.from ? Cell("night") : Cell(), orNone(trap.district),
        trap.place ? Cell(degrees(trap.place->latE7)) : Cell(),
        trap.place ? Cell(degrees(trap.place->lonE7)) : Cell(), trap.place ? Cell("EPSG:4326") : Cell(),
        trap.place ? uncertainty : Cell()});
    const bool isPresent = part.moths->value() > 0;
    occurrences.rows.push_back({id, id + ":" + trap.pest, "HumanObservation", orNone(trap.latin), "Animalia",
        "adult", "male", isPresent ? "detected" : "notDetected", std::to_string(part.moths->value()),
        part.isAtLeast ? Cell("at least") : Cell()});
}

std::string emlOf(const ExportInput& input)
{
    const std::vector<std::string> parts{input.programmeKey, "catch archive"};
    const std::string who = emlElement("organizationName", input.programme);
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
           "<eml:eml xmlns:eml=\"eml://ecoinformatics.org/eml-2.1.1\" packageId=\""
        + formatUuid(uuidFromName(parts)) + "\" system=\"duskrow\" scope=\"system\">\n<dataset>\n"
        + emlElement("title", "Catches of pheromone traps: " + input.programme) + "\n<creator>" + who
        + "</creator>\n<abstract>"
        + emlElement("para",
            "Every counted stretch of nights of every trap, with exact places. For the keeper of the "
            "records: "
            "not to be published.")
        + "</abstract>\n<contact>" + who + "</contact>\n</dataset>\n</eml:eml>\n";
}

} // namespace

Result<std::vector<ExportedFile>> exportDarwinCore(const ExportInput& input)
{
    Table events;
    events.header = {eventTerms.begin(), eventTerms.end()};
    Table occurrences;
    occurrences.header = {occurrenceTerms.begin(), occurrenceTerms.end()};
    for (const ExportedTrap& trap : input.traps)
        for (const ExportedCatch& part : trap.catches)
            if (part.moths) add(events, occurrences, trap, part);
    const auto files = darwinFiles(events, occurrences, emlOf(input));
    if (!files) return files.error();
    auto archive = writeZip(*files, input.made);
    if (!archive) return archive.error();
    return std::vector<ExportedFile>{{"catches-dwca.zip", std::move(*archive)}};
}

} // namespace duskrow::formats
