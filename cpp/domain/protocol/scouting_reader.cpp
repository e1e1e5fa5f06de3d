// SPDX-License-Identifier: MIT
#include "domain/protocol/section_readers.h"

namespace duskrow::domain {

namespace {

ScoutingAdvice readAdvice(Reading& reading, const LocatedJson& node)
{
    ScoutingAdvice scouting;
    scouting.startsAfterPeak = reading.figure<std::chrono::days>(node, "starts_after_peak_days");
    scouting.stage = reading.rangeIfAny<BbchStage>(node, "stage_bbch");
    scouting.frame = reading.figure<SquareMetres>(node, "frame_m2");
    scouting.framesExpected = reading.figure<Frames>(node, "frames_expected");
    scouting.framesFewest = reading.figure<Frames>(node, "frames_fewest");
    scouting.spacing = reading.figure<Metres>(node, "spacing_m");
    scouting.where = reading.statementsIfAny(node, "where");
    const auto& classes = reading.identified(node, "size_classes");
    for (const LocatedJson& one : classes)
        scouting.sizeClasses.push_back({reading.id(one), reading.localText(one, "name"),
            reading.value<Millimetres>(one, "from_mm"), reading.optionalValue<Millimetres>(one, "below_mm"),
            reading.sourceOf(one), reading.noteOf(one)});
    checkSteps(reading, classes, "from_mm", "below_mm");
    scouting.hatchling = reading.figureIfAny<Millimetres>(node, "hatchling_mm");
    scouting.fullGrown = reading.rangeIfAny<Millimetres>(node, "full_grown_mm");
    scouting.smallestToControl = reading.figureIfAny<Millimetres>(node, "smallest_to_control_mm");
    if (scouting.frame.value && scouting.frame.value->value() <= 0)
        reading.refuse(node, "frame_m2", "the area of a frame must be more than 0");
    if (scouting.framesFewest.value > scouting.framesExpected.value)
        reading.refuse(node, "frames_fewest", "the fewest frames cannot be more than those expected");
    return scouting;
}

Marks readMarks(Reading& reading, const LocatedJson& node)
{
    return {reading.statementsIfAny(node, "moth"), reading.statementsIfAny(node, "larva")};
}

} // namespace

void readScouting(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    if (file.find("scouting")) protocol.scouting = readAdvice(reading, reading.object(file, "scouting"));
    if (file.find("marks")) protocol.marks = readMarks(reading, reading.object(file, "marks"));
    for (const LocatedJson& node : reading.identifiedIfAny(file, "look_alikes")) {
        const LocatedJson& name = reading.object(node, "name");
        protocol.lookAlikes.push_back({reading.id(node), reading.localText(node, "name"),
            name.find("latin") ? reading.text(name, "latin") : std::string{},
            reading.remarkIfAny(node, "remark"), readMarks(reading, node)});
    }
}

} // namespace duskrow::domain
