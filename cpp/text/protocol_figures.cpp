// SPDX-License-Identifier: MIT
#include "text/protocol_figures.h"

#include "text/amounts.h"
#include "text/figure_sheet.h"
#include "text/heat_text.h"
#include "text/protocol_values.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

void addTrap(Sheet& sheet, const Protocol& protocol)
{
    sheet.begin(Figures::tr("The trap"));
    if (protocol.counted) sheet.remark(Figures::tr("What it catches"), sheet.animal().many());
    sheet.add(Figures::tr("Traps in a field"), protocol.trapsPerField);
    if (protocol.lure) {
        sheet.add(Figures::tr("The lure draws"), protocol.lure->catches);
        sheet.add(Figures::tr("Lures in a trap"), protocol.lure->perTrap);
        sheet.add(Figures::tr("A lure lasts"), protocol.lure->life);
        for (const ShelfLife& life : protocol.lure->shelfLife)
            sheet.put(Figures::tr("A sealed lure keeps at up to %1").arg(valueWords(life.atMost)),
                Figures::tr("%1 months").arg(life.keeps.count()), life.source, life.note);
    }
    if (protocol.killingStrip) sheet.add(Figures::tr("A killing strip lasts"), protocol.killingStrip->life);
    if (!protocol.height) return;
    sheet.add(Figures::tr("Height"), protocol.height->rule);
    sheet.add(Figures::tr("Entrance above the ground"), protocol.height->entrance);
    sheet.add(Figures::tr("The stake reaches"), protocol.height->stake);
    sheet.add(Figures::tr("Entrance over the canopy at least"), protocol.height->leastClearance);
}

void addPlace(Sheet& sheet, const Protocol& protocol)
{
    sheet.begin(Figures::tr("Its place"));
    for (const PlacementAdvice& advice : protocol.placement)
        sheet.add(sheet.local(advice.text), advice.distance);
    for (const ProtocolCrop& crop : protocol.crops)
        for (const StageHeight& stage : crop.canopyHeights)
            sheet.add(Figures::tr("%1, %2: height of the canopy")
                          .arg(sheet.local(crop.name), sheet.local(stage.name)),
                stage.height);
}

void addSeason(Sheet& sheet, const SeasonPlan& season)
{
    sheet.begin(Figures::tr("The season"));
    sheet.add(Figures::tr("Begins on or after"), season.startsOnOrAfter);
    sheet.add(Figures::tr("Its weeks begin on"), season.weekStarts);
    sheet.add(Figures::tr("Lasts"), season.weeks);
    sheet.add(Figures::tr("Traps are set up"), season.setUp);
    sheet.add(Figures::tr("Too late for setting up from"), season.tooLateFrom);
    sheet.add(
        Figures::tr("The first %1 come after set-up by").arg(sheet.animal().many()), season.firstMothsAfter);
    sheet.add(Figures::tr("First count"), season.firstCount);
    sheet.add(Figures::tr("From count to count"), season.visitInterval);
    sheet.add(Figures::tr("Usual peak of the flight"), season.usualPeak);
    sheet.add(Figures::tr("Traps come down"), season.takeDown);
}

void addPhenology(Sheet& sheet, const Phenology& phenology)
{
    sheet.begin(Figures::tr("From moth to larva"));
    sheet.add(Figures::tr("Set up when pupae have developed by"), phenology.setUpAtPupalDevelopment);
    sheet.add(Figures::tr("Moths come after that by"), phenology.adultsAfter);
    sheet.add(Figures::tr("Eggs hatch after laying by"), phenology.eggsHatchAfter);
    sheet.add(Figures::tr("Larvae do damage after laying by"), phenology.damagingLarvaeAfter);
}

void addHeat(Sheet& sheet, const HeatModel& heat)
{
    const auto put = [&](const QString& name, const auto& figure, const auto& words) {
        const QString value = figure.value ? words(*figure.value) : QString();
        sheet.put(name, value, figure.source, figure.note);
    };
    const auto degrees = [&](double value) { return temperatureWords(value, heat.unit); };
    sheet.begin(Figures::tr("Flight and warmth"));
    sheet.add(Figures::tr("Degree-days count from"), heat.start);
    put(Figures::tr("Base temperature"), heat.lower, degrees);
    put(Figures::tr("Upper limit"), heat.upper, degrees);
    put(Figures::tr("Method"), heat.method, [](HeatMethod method) { return methodWords(method); });
    put(Figures::tr("Above the upper limit"), heat.cutOff, [](CutOff cutOff) { return cutOffWords(cutOff); });
    for (const HeatSum& sum : heat.sums)
        put(sheet.local(sum.name), sum.degreeDays, [&](double value) { return sumWords(value, heat.unit); });
}

void addFlightModel(Sheet& sheet, const FlightModel& flight)
{
    const auto days = [&](const QString& name, const Figure<double>& figure) {
        const QString value =
            figure.value ? Figures::tr("%1 days").arg(valueWords(*figure.value)) : QString();
        sheet.put(name, value, figure.source, figure.note);
    };
    sheet.begin(Figures::tr("What is expected of a flight"));
    sheet.add(Figures::tr("Half of it is over on"), flight.median);
    days(Figures::tr("That day differs by about"), flight.medianSpreadDays);
    days(Figures::tr("It is as wide as"), flight.widthDays);
}

void addBands(Sheet& sheet, const Protocol& protocol)
{
    sheet.begin(Figures::tr("Bands of a whole season's catch"));
    if (protocol.noBands) sheet.put(Figures::tr("Bands"), QString(), notPublished, *protocol.noBands);
    const Animal& animal = sheet.animal();
    for (const CatchRule& rule : protocol.catchRules) {
        for (const Band& band : rule.bands)
            sheet.put(sheet.local(band.name),
                band.below
                    ? Figures::tr("%1 to under %2").arg(number(band.from.value()), animal.amount(*band.below))
                    : Figures::tr("%1 or more").arg(animal.amount(band.from)),
                band.source, band.meaning.text);
        sheet.put(Figures::tr("A catch on an edge"), Figures::tr("belongs to the higher band"),
            rule.edgeSource, rule.edgeNote);
    }
}

void addScouting(Sheet& sheet, const ScoutingAdvice& scouting)
{
    sheet.begin(Figures::tr("Looking for larvae"));
    sheet.add(Figures::tr("Begins after the peak catch by"), scouting.startsAfterPeak);
    sheet.add(Figures::tr("Crop stage"), scouting.stage);
    sheet.add(Figures::tr("Frame"), scouting.frame);
    sheet.add(Figures::tr("Frames expected"), scouting.framesExpected);
    sheet.add(Figures::tr("Frames at least"), scouting.framesFewest);
    sheet.add(Figures::tr("Between stops"), scouting.spacing);
    for (const SizeClass& size : scouting.sizeClasses)
        sheet.put(Figures::tr("Larva: %1").arg(sheet.local(size.name)),
            size.below ? Figures::tr("%1 to under %2").arg(valueWords(size.from), valueWords(*size.below))
                       : Figures::tr("%1 or more").arg(valueWords(size.from)),
            size.source, size.note);
    sheet.add(Figures::tr("A larva just hatched"), scouting.hatchling);
    sheet.add(Figures::tr("A larva full grown"), scouting.fullGrown);
    sheet.add(Figures::tr("Smallest larva worth controlling"), scouting.smallestToControl);
}

void addThreshold(Sheet& sheet, const ThresholdRule& rule)
{
    sheet.begin(Figures::tr("The economic threshold"));
    sheet.add(Figures::tr("Yield lost for a larva on a square metre"), rule.lossPerLarva);
    sheet.add(Figures::tr("A bushel weighs"), rule.bushel);
    sheet.add(Figures::tr("In a dry season the threshold is divided by"), rule.drySeasonDivisor);
    sheet.add(Figures::tr("Prices it was published for"), rule.publishedPrice);
    sheet.add(Figures::tr("Costs it was published for"), rule.publishedCost);
    sheet.add(Figures::tr("Thresholds it was published for"), rule.publishedLarvae);
    sheet.add(Figures::tr("In the money of"), rule.publishedCurrency);
    sheet.add(Figures::tr("Never below"), rule.floor);
    sheet.add(Figures::tr("Years of the trials"), rule.trialYears);
    sheet.add(Figures::tr("Varieties in the trials"), rule.trialVarieties);
    for (const Statement& finding : rule.evidence)
        sheet.put(Figures::tr("A finding"), sheet.local(finding.text), finding.source, finding.note);
    sheet.add(Figures::tr("Crop stage for control"), rule.control.stage);
    sheet.add(Figures::tr("Larvae of the size to control, at least"), rule.control.largeLarvae);
    sheet.add(Figures::tr("Be ready for larvae of"), rule.control.beReady);
    sheet.add(
        Figures::tr("Decide before this share of the pods is damaged"), rule.control.decideBeforePodDamage);
    sheet.add(
        Figures::tr("Grade was lost from a share of damaged pods of"), rule.control.gradeLossFromPodDamage);
    sheet.add(Figures::tr("Look again after"), rule.control.lookAgain);
}

} // namespace

QString sourceWords(const Protocol& protocol, const std::string& source)
{
    if (source == commonPractice) return Figures::tr("common practice, no source");
    if (source == notPublished) return Figures::tr("nobody has published it");
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
    if (protocol.heat) addHeat(sheet, *protocol.heat);
    if (protocol.flightModel) addFlightModel(sheet, *protocol.flightModel);
    addBands(sheet, protocol);
    addRules(sheet, protocol);
    if (protocol.scouting) addScouting(sheet, *protocol.scouting);
    for (const ThresholdRule& rule : protocol.thresholdRules) addThreshold(sheet, rule);
    return sheet.finish();
}

} // namespace duskrow::text
