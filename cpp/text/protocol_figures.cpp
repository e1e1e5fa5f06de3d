// SPDX-License-Identifier: MIT
#include "text/protocol_figures.h"

#include <QCoreApplication>

#include "text/amounts.h"
#include "text/protocol_values.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

QString said(const char* words)
{
    return QCoreApplication::translate("Figure", words);
}

class Sheet {
public:
    Sheet(const Protocol& protocol, const std::string& language) : m_protocol(protocol), m_language(language)
    {
    }

    void begin(const QString& section) { m_section = section; }

    template <typename T>
    void add(const QString& name, const Figure<T>& figure)
    {
        put(name, figure.value ? valueWords(*figure.value) : QString(), figure.source, figure.note);
    }

    template <typename T>
    void add(const QString& name, const Range<T>& range)
    {
        QString value;
        if (range.from && range.to && *range.from == *range.to)
            value = valueWords(*range.from);
        else if (range.from && range.to)
            value = said("%1 to %2").arg(valueWords(*range.from), valueWords(*range.to));
        put(name, value, range.source, range.note);
    }

    // A protocol that is silent has no source either.
    void put(const QString& name, const QString& value, const std::string& source, const LocalText& note)
    {
        if (source.empty()) return;
        m_figures.push_back({m_section, name, value, sourceWords(m_protocol, source), local(note)});
    }

    [[nodiscard]] QString local(const LocalText& text) const
    {
        return QString::fromStdString(text.in(m_language));
    }

    std::vector<FigureWords> finish() { return std::move(m_figures); }

private:
    const Protocol& m_protocol;
    const std::string& m_language;
    QString m_section;
    std::vector<FigureWords> m_figures;
};

void addTrap(Sheet& sheet, const Protocol& protocol)
{
    sheet.begin(said("The trap"));
    sheet.add(said("Traps in a field"), protocol.trapsPerField);
    if (protocol.lure) {
        sheet.add(said("The lure draws"), protocol.lure->catches);
        sheet.add(said("Lures in a trap"), protocol.lure->perTrap);
        sheet.add(said("A lure lasts"), protocol.lure->life);
        for (const ShelfLife& life : protocol.lure->shelfLife)
            sheet.put(said("A sealed lure keeps at up to %1").arg(valueWords(life.atMost)),
                said("%1 months").arg(life.keeps.count()), life.source, life.note);
    }
    if (protocol.killingStrip) sheet.add(said("A killing strip lasts"), protocol.killingStrip->life);
    if (!protocol.height) return;
    sheet.add(said("Height"), protocol.height->rule);
    sheet.add(said("Entrance above the ground"), protocol.height->entrance);
    sheet.add(said("The stake reaches"), protocol.height->stake);
    sheet.add(said("Entrance over the canopy at least"), protocol.height->leastClearance);
}

void addPlace(Sheet& sheet, const Protocol& protocol)
{
    sheet.begin(said("Its place"));
    for (const PlacementAdvice& advice : protocol.placement)
        sheet.add(sheet.local(advice.text), advice.distance);
    for (const ProtocolCrop& crop : protocol.crops)
        for (const StageHeight& stage : crop.canopyHeights)
            sheet.add(
                said("%1, %2: height of the canopy").arg(sheet.local(crop.name), sheet.local(stage.name)),
                stage.height);
}

void addSeason(Sheet& sheet, const SeasonPlan& season)
{
    sheet.begin(said("The season"));
    sheet.add(said("Begins on or after"), season.startsOnOrAfter);
    sheet.add(said("Its weeks begin on"), season.weekStarts);
    sheet.add(said("Lasts"), season.weeks);
    sheet.add(said("Traps are set up"), season.setUp);
    sheet.add(said("Too late for setting up from"), season.tooLateFrom);
    sheet.add(said("First moths come after set-up by"), season.firstMothsAfter);
    sheet.add(said("First count"), season.firstCount);
    sheet.add(said("From count to count"), season.visitInterval);
    sheet.add(said("Usual peak of the flight"), season.usualPeak);
    sheet.add(said("Traps come down"), season.takeDown);
}

void addPhenology(Sheet& sheet, const Phenology& phenology)
{
    sheet.begin(said("Flight and warmth"));
    sheet.add(said("Degree-days count from"), phenology.start);
    sheet.add(said("Base temperature"), phenology.base);
    sheet.add(said("Upper limit"), phenology.upper);
    sheet.add(said("Method"), phenology.method);
    sheet.add(said("Set up when pupae have developed by"), phenology.setUpAtPupalDevelopment);
    sheet.add(said("Moths come after that by"), phenology.adultsAfter);
    for (const FlightEvent& event : phenology.events) sheet.add(sheet.local(event.name), event.degreeDays);
    sheet.add(said("Eggs hatch after laying by"), phenology.eggsHatchAfter);
    sheet.add(said("Larvae do damage after laying by"), phenology.damagingLarvaeAfter);
}

void addBands(Sheet& sheet, const Protocol& protocol)
{
    sheet.begin(said("Bands of a whole season's catch"));
    for (const CatchRule& rule : protocol.catchRules) {
        for (const Band& band : rule.bands)
            sheet.put(sheet.local(band.name),
                band.below ? said("%1 to under %2").arg(number(band.from.value()), moths(*band.below))
                           : said("%1 or more").arg(valueWords(band.from)),
                band.source, band.meaning.text);
        sheet.put(
            said("A catch on an edge"), said("belongs to the higher band"), rule.edgeSource, rule.edgeNote);
    }
}

void addScouting(Sheet& sheet, const ScoutingAdvice& scouting)
{
    sheet.begin(said("Looking for larvae"));
    sheet.add(said("Begins after the peak catch by"), scouting.startsAfterPeak);
    sheet.add(said("Crop stage"), scouting.stage);
    sheet.add(said("Frame"), scouting.frame);
    sheet.add(said("Frames expected"), scouting.framesExpected);
    sheet.add(said("Frames at least"), scouting.framesFewest);
    sheet.add(said("Between stops"), scouting.spacing);
    for (const SizeClass& size : scouting.sizeClasses)
        sheet.put(said("Larva: %1").arg(sheet.local(size.name)),
            size.below ? said("%1 to under %2").arg(valueWords(size.from), valueWords(*size.below))
                       : said("%1 or more").arg(valueWords(size.from)),
            size.source, size.note);
    sheet.add(said("A larva just hatched"), scouting.hatchling);
    sheet.add(said("A larva full grown"), scouting.fullGrown);
    sheet.add(said("Smallest larva worth controlling"), scouting.smallestToControl);
}

void addThreshold(Sheet& sheet, const ThresholdRule& rule)
{
    sheet.begin(said("The economic threshold"));
    sheet.add(said("Yield lost for a larva on a square metre"), rule.lossPerLarva);
    sheet.add(said("A bushel weighs"), rule.bushel);
    sheet.add(said("In a dry season the threshold is divided by"), rule.drySeasonDivisor);
    sheet.add(said("Prices it was published for"), rule.publishedPrice);
    sheet.add(said("Costs it was published for"), rule.publishedCost);
    sheet.add(said("Never below"), rule.floor);
}

} // namespace

QString sourceWords(const Protocol& protocol, const std::string& source)
{
    if (source == commonPractice) return said("common practice, no source");
    if (source == notPublished) return said("nobody has published it");
    const std::string* citation = protocol.citation(source);
    return QString::fromStdString(citation ? *citation : source);
}

std::vector<FigureWords> figuresOf(const Protocol& protocol, const std::string& language)
{
    Sheet sheet(protocol, language);
    addTrap(sheet, protocol);
    addPlace(sheet, protocol);
    addSeason(sheet, protocol.season);
    if (protocol.phenology) addPhenology(sheet, *protocol.phenology);
    addBands(sheet, protocol);
    if (protocol.scouting) addScouting(sheet, *protocol.scouting);
    for (const ThresholdRule& rule : protocol.thresholdRules) addThreshold(sheet, rule);
    return sheet.finish();
}

} // namespace duskrow::text
