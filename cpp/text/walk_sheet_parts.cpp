// SPDX-License-Identifier: MIT
#include "text/walk_sheet_parts.h"

#include <algorithm>
#include <cmath>

#include "text/amounts.h"
#include "text/frame_text.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

const QString notKnown = QStringLiteral("\u2013");

const ScoutingAdvice* scoutingOf(const WalkSheetInput& input)
{
    return input.protocol.scouting ? &*input.protocol.scouting : nullptr;
}

std::size_t classesOf(const WalkSheetInput& input)
{
    return scoutingOf(input) ? scoutingOf(input)->sizeClasses.size() : 0;
}

QString podsWords(std::int64_t damaged, std::int64_t seen, const QLocale& locale)
{
    //: pods damaged, of those looked at
    return WalkSheetWords::tr("%1 of %2").arg(number(damaged, locale), number(seen, locale));
}

// What the frames come to in all, column by column.
struct Sums {
    std::vector<std::int64_t> bySize;
    std::int64_t larvae = 0;
    std::int64_t sick = 0;
    std::int64_t podsSeen = 0;
    std::int64_t podsDamaged = 0;
    bool hasSizes = false;
    bool hasSick = false;
};

QStringList rowOf(const WalkSheetInput& input, std::size_t index, Sums& sums, const QLocale& locale)
{
    const Frame& frame = input.frames[index];
    QStringList row{number(static_cast<std::int64_t>(index + 1), locale),
        frame.stop ? number(*frame.stop, locale) : notKnown};
    const auto sizes = scoutingOf(input) ? readSizes(*scoutingOf(input), frame.bySize) : std::nullopt;
    for (std::size_t i = 0; i < classesOf(input); ++i) {
        row << (sizes ? number((*sizes)[i], locale) : notKnown);
        if (sizes) sums.bySize[i] += (*sizes)[i];
    }
    sums.hasSizes = sums.hasSizes || sizes.has_value();
    row << (frame.larvae ? number(frame.larvae->value(), locale) : notKnown);
    row << (frame.sick ? number(frame.sick->value(), locale) : notKnown);
    sums.larvae += frame.larvae ? frame.larvae->value() : 0;
    sums.sick += frame.sick ? frame.sick->value() : 0;
    sums.hasSick = sums.hasSick || frame.sick.has_value();
    const bool hasPods = frame.podsSeen.value_or(0) > 0;
    row << (hasPods ? podsWords(frame.podsDamaged.value_or(0), *frame.podsSeen, locale) : notKnown);
    if (hasPods) {
        sums.podsSeen += *frame.podsSeen;
        sums.podsDamaged += frame.podsDamaged.value_or(0);
    }
    return row;
}

QStringList rowOf(const Sums& sums, const QLocale& locale)
{
    QStringList row{WalkSheetWords::tr("All"), QString()};
    for (const std::int64_t count : sums.bySize) row << (sums.hasSizes ? number(count, locale) : notKnown);
    row << number(sums.larvae, locale) << (sums.hasSick ? number(sums.sick, locale) : notKnown);
    return row << (sums.podsSeen > 0 ? podsWords(sums.podsDamaged, sums.podsSeen, locale) : notKnown);
}

QString spanOf(const SizeClass& size, const std::string& language, const QLocale& locale)
{
    const QString name = written(size.name.in(language));
    const auto from = size.from.value();
    //: a size class and its edges: "Small: under 13 mm"
    if (!size.below) return WalkSheetWords::tr("%1: over %2 mm").arg(name, number(from - 1, locale));
    const auto below = size.below->value();
    if (from == 0) return WalkSheetWords::tr("%1: under %2 mm").arg(name, number(below, locale));
    return WalkSheetWords::tr("%1: %2 to %3 mm").arg(name, number(from, locale), number(below - 1, locale));
}

QString stageWords(const WalkSheetInput& input)
{
    if (!input.walk.stageBbch) return WalkSheetWords::tr("not said");
    const int code = *input.walk.stageBbch;
    const ProtocolCrop* crop = input.protocol.crops.empty() ? nullptr : &input.protocol.crops.front();
    for (const ProtocolCrop& one : input.protocol.crops)
        if (one.id == input.crop && !one.growthStages.empty()) crop = &one;
    QString words = QString::number(code);
    if (!crop) return words;
    for (const GrowthStage& stage : crop->growthStages)
        if (stage.code.value() == code)
            words += QStringLiteral(" · ") + written(stage.name.in(input.language));
    const QString scale = written(crop->growthScale.in(input.language));
    //: a crop stage and the scale it is told on
    return scale.isEmpty() ? words : WalkSheetWords::tr("%1 (%2)").arg(words, scale);
}

// A walk may go on over several days.
QString daysWords(const WalkSheetInput& input, const QLocale& locale)
{
    std::optional<LocalDay> first = input.walk.day;
    std::optional<LocalDay> last = first;
    for (const Frame& frame : input.frames) {
        if (!frame.day) continue;
        first = first ? std::min(*first, *frame.day) : *frame.day;
        last = last ? std::max(*last, *frame.day) : *frame.day;
    }
    if (!first) return WalkSheetWords::tr("not said");
    if (*first == *last) return dayAndYear(*first, locale);
    return WalkSheetWords::tr("%1 to %2").arg(shortDay(*first, locale), dayAndYear(*last, locale));
}

QString frameWords(const WalkSheetInput& input, const QLocale& locale)
{
    const double area = input.result.frame.value();
    const double side = 100.0 * std::sqrt(area);
    const QString size = locale.toString(area, 'g', 4);
    if (std::abs(side - std::round(side)) > 0.01) return WalkSheetWords::tr("%1 m²").arg(size);
    return WalkSheetWords::tr("%1 m² (%2 × %2 cm)").arg(size, locale.toString(side, 'f', 0));
}

} // namespace

QString written(const std::string& text)
{
    return QString::fromStdString(text).simplified();
}

QStringList statementsOf(const std::vector<Statement>& statements, const std::string& language)
{
    QStringList all;
    for (const Statement& statement : statements) all << written(statement.text.in(language));
    return all;
}

SheetBlock framesBlock(const WalkSheetInput& input, const QLocale& locale)
{
    SheetBlock block{.part = SheetPart::Frames, .heading = WalkSheetWords::tr("Frames")};
    if (input.frames.empty()) {
        block.lines << WalkSheetWords::tr("No frame was searched.");
        return block;
    }
    block.table.heads << WalkSheetWords::tr("Frame") << WalkSheetWords::tr("Stop");
    if (scoutingOf(input))
        for (const SizeClass& size : scoutingOf(input)->sizeClasses)
            block.table.heads << written(size.name.in(input.language));
    //: heads of columns: larvae of all sizes, sick ones, pods damaged
    block.table.heads << WalkSheetWords::tr("Larvae") << WalkSheetWords::tr("Sick")
                      << WalkSheetWords::tr("Pods");
    Sums sums;
    sums.bySize.resize(classesOf(input));
    for (std::size_t i = 0; i < input.frames.size(); ++i)
        block.table.rows.push_back(rowOf(input, i, sums, locale));
    block.table.sums = rowOf(sums, locale);
    QStringList spans;
    if (scoutingOf(input))
        for (const SizeClass& size : scoutingOf(input)->sizeClasses)
            spans << spanOf(size, input.language, locale);
    if (!spans.isEmpty()) block.lines << WalkSheetWords::tr("%1.").arg(spans.join(QStringLiteral("; ")));
    block.lines << WalkSheetWords::tr(
        "Larvae: alive and feeding, all sizes. Sick: parasitised or diseased, not among "
        "them. Pods: damaged, of those looked at. A dash: not looked at.");
    for (std::size_t i = 0; i < input.frames.size(); ++i)
        if (const QString remark = written(input.frames[i].remark); !remark.isEmpty())
            block.lines << WalkSheetWords::tr("Frame %1: %2")
                               .arg(number(static_cast<std::int64_t>(i + 1), locale), remark);
    return block;
}

SheetBlock mapBlock(const WalkSheetInput& input, const QLocale& locale)
{
    SheetBlock block{.part = SheetPart::Map, .heading = WalkSheetWords::tr("Where the frames were")};
    QStringList missing;
    for (std::size_t i = 0; i < input.frames.size(); ++i)
        if (!input.frames[i].latE7 || !input.frames[i].lonE7)
            missing << number(static_cast<std::int64_t>(i + 1), locale);
    const auto all = static_cast<qsizetype>(input.frames.size());
    if (all == 0 || missing.size() == all)
        block.lines << WalkSheetWords::tr("No frame knows its place, so there is no sketch.");
    else if (!missing.isEmpty())
        block.lines << WalkSheetWords::tr("Not on the sketch, for they do not know their place: frame %1.")
                           .arg(missing.join(QStringLiteral(", ")));
    return block;
}

std::vector<SheetFact> walkFacts(const WalkSheetInput& input, const QLocale& locale)
{
    const QString who = written(input.who);
    std::vector<SheetFact> facts{{WalkSheetWords::tr("Day"), daysWords(input, locale)},
        {WalkSheetWords::tr("Walked by"), who.isEmpty() ? WalkSheetWords::tr("not known") : who},
        {WalkSheetWords::tr("Pest"), written(input.protocol.name.in(input.language))},
        {WalkSheetWords::tr("Crop stage"), stageWords(input)},
        {WalkSheetWords::tr("Frame"), frameWords(input, locale)}};
    if (input.walk.drySeason.value_or(false))
        facts.push_back({WalkSheetWords::tr("Season"), WalkSheetWords::tr("very dry, noted on the walk")});
    if (const QString remark = written(input.walk.remark); !remark.isEmpty())
        facts.push_back({WalkSheetWords::tr("Remark"), remark});
    return facts;
}

} // namespace duskrow::text
