// SPDX-License-Identifier: MIT
#include "formats/bulletin/darwin_core.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "formats/csv.h"
#include "formats/darwin_archive.h"
#include "formats/svg.h"
#include "formats/zip.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

// The first column is the id that both tables share; the others are named after their terms.
constexpr std::array eventTerms{"eventID", "eventType", "eventDate", "samplingProtocol", "sampleSizeValue",
    "sampleSizeUnit", "samplingEffort", "locality", "decimalLatitude", "decimalLongitude", "geodeticDatum",
    "coordinateUncertaintyInMeters", "dataGeneralizations", "informationWithheld"};
constexpr std::array occurrenceTerms{"eventID", "occurrenceID", "basisOfRecord", "scientificName", "kingdom",
    "lifeStage", "sex", "occurrenceStatus", "individualCount", "organismQuantity", "organismQuantityType"};

class Tables {
public:
    explicit Tables(const BulletinDocument& document) : m_document(document), m_bulletin(document.bulletin)
    {
        m_events.header = {eventTerms.begin(), eventTerms.end()};
        m_occurrences.header = {occurrenceTerms.begin(), occurrenceTerms.end()};
        for (const DistrictWeek& district : m_bulletin.districts)
            if (district.figures) addDistrict(district);
        for (const CellWeek& cell : m_bulletin.cells) addCell(cell);
    }

    [[nodiscard]] const Table& events() const { return m_events; }
    [[nodiscard]] const Table& occurrences() const { return m_occurrences; }

private:
    // The same for the same area in the same week, whatever the issue.
    [[nodiscard]] std::string idOf(const std::string& area) const
    {
        const std::vector<std::string> parts{
            m_document.programmeKey, "bulletin event", m_bulletin.pest, weekText(m_bulletin.iso), area};
        return "urn:uuid:" + formatUuid(uuidFromName(parts));
    }

    void addDistrict(const DistrictWeek& district)
    {
        const std::string traps = std::to_string(district.figures->counted);
        add(idOf("district " + district.name), *district.figures, traps + " traps, 7 nights each",
            {Cell(district.name), Cell(), Cell(), Cell(), Cell()});
    }

    void addCell(const CellWeek& cell)
    {
        const GeoPoint centre = centreOf(cell.cell);
        add(idOf("cell " + std::to_string(cell.cell.row) + " " + std::to_string(cell.cell.column)),
            cell.figures, "5 traps or more, 7 nights each",
            {Cell(), Cell(centreText(centre.latE7)), Cell(centreText(centre.lonE7)), Cell("EPSG:4326"),
                Cell(std::to_string(std::llround(cell.uncertainty.value())))});
    }

    void add(const std::string& id, const AreaFigures& figures, const std::string& effort,
        const std::array<Cell, 5>& place)
    {
        std::vector<Cell> event{id, "SiteVisit",
            formatDay(m_bulletin.week.first) + "/" + formatDay(m_bulletin.week.last),
            "pheromone trap, counted about once in seven nights", "7", "night", effort};
        event.insert(event.end(), place.begin(), place.end());
        event.emplace_back(m_document.words.generalization);
        event.emplace_back(m_document.words.withheld);
        m_events.rows.push_back(std::move(event));
        const bool isPresent = figures.caughtAny;
        // A median of zero where some trap caught moths would read as absence.
        const bool hasQuantity = figures.weekMedian > Moths{0};
        m_occurrences.rows.push_back({id, id + ":" + m_bulletin.pest, "HumanObservation",
            m_document.words.latin.empty() ? Cell() : Cell(m_document.words.latin), "Animalia", "adult",
            "male", status(isPresent), isPresent ? Cell() : Cell("0"),
            hasQuantity ? Cell(std::to_string(figures.weekMedian.value())) : Cell(),
            hasQuantity ? Cell("median moths per trap in seven nights, made round") : Cell()});
    }

    [[nodiscard]] std::string status(bool isPresent) const
    {
        if (m_document.terms == OccurrenceTerms::Present) return isPresent ? "present" : "absent";
        return isPresent ? "detected" : "notDetected";
    }

    const BulletinDocument& m_document;
    const Bulletin& m_bulletin;
    Table m_events;
    Table m_occurrences;
};

std::string boundsXml(const Bulletin& bulletin)
{
    if (bulletin.cells.empty()) return {};
    GeoPoint low = southWestOf(bulletin.cells.front().cell);
    GeoPoint high = northEastOf(bulletin.cells.front().cell);
    for (const CellWeek& cell : bulletin.cells) {
        const GeoPoint southWest = southWestOf(cell.cell);
        const GeoPoint northEast = northEastOf(cell.cell);
        low = {std::min(low.latE7, southWest.latE7), std::min(low.lonE7, southWest.lonE7)};
        high = {std::max(high.latE7, northEast.latE7), std::max(high.lonE7, northEast.lonE7)};
    }
    return "<boundingCoordinates>" + emlElement("westBoundingCoordinate", centreText(low.lonE7))
        + emlElement("eastBoundingCoordinate", centreText(high.lonE7))
        + emlElement("northBoundingCoordinate", centreText(high.latE7))
        + emlElement("southBoundingCoordinate", centreText(low.latE7)) + "</boundingCoordinates>";
}

std::string emlXml(const BulletinDocument& document)
{
    const Bulletin& bulletin = document.bulletin;
    const text::BulletinWords& words = document.words;
    const std::vector<std::string> parts{
        document.programmeKey, "bulletin archive", bulletin.pest, weekText(bulletin.iso)};
    const std::string who =
        emlElement("organizationName", bulletin.programme.empty() ? words.title : bulletin.programme);
    std::string about;
    for (const std::string& paragraph : words.paragraphs) about += emlElement("para", paragraph);
    for (const std::string& paragraph : words.privacy) about += emlElement("para", paragraph);
    const std::string bounds = boundsXml(bulletin);
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
           "<eml:eml xmlns:eml=\"eml://ecoinformatics.org/eml-2.1.1\" packageId=\""
        + formatUuid(uuidFromName(parts)) + "/" + std::to_string(bulletin.issue)
        + "\" system=\"duskrow\" scope=\"system\" xml:lang=\"" + escapedXml(words.language)
        + "\">\n<dataset>\n" + emlElement("title", words.title + ", " + words.dates) + "\n<creator>" + who
        + "</creator>\n" + emlElement("pubDate", momentText(document.published).substr(0, 10)) + "\n"
        + emlElement("language", words.language) + "\n<abstract>" + about + "</abstract>\n<coverage>"
        + (bounds.empty() ? ""
                          : "<geographicCoverage>"
                    + emlElement(
                        "geographicDescription", bulletin.region.empty() ? words.programme : bulletin.region)
                    + bounds + "</geographicCoverage>")
        + "<temporalCoverage><rangeOfDates><beginDate>"
        + emlElement("calendarDate", formatDay(bulletin.week.first)) + "</beginDate><endDate>"
        + emlElement("calendarDate", formatDay(bulletin.week.last))
        + "</endDate></rangeOfDates></temporalCoverage></coverage>\n<contact>" + who + "</contact>\n"
        + "</dataset>\n</eml:eml>\n";
}

} // namespace

Result<std::vector<ExportedFile>> darwinCoreFiles(const BulletinDocument& document)
{
    const Tables tables(document);
    return darwinFiles(tables.events(), tables.occurrences(), emlXml(document));
}

Result<std::string> darwinCoreArchive(const BulletinDocument& document)
{
    const auto files = darwinCoreFiles(document);
    if (!files) return files.error();
    return writeZip(*files, document.published);
}

} // namespace duskrow::formats
