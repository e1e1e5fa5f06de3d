// SPDX-License-Identifier: MIT
#include "text/walk_sheet.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "text/amounts.h"
#include "text/code_names.h"
#include "text/decision_text.h"
#include "text/frame_text.h"
#include "text/threshold_text.h"
#include "text/unbroken.h"
#include "text/walk_sheet_parts.h"
#include "text/walk_text.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

// The mean as arithmetic that a person can follow with a pencil.
QString meanByHand(const WalkResult& result, const QLocale& locale)
{
    const FrameEstimate& estimate = result.estimate;
    return unbroken(WalkSheetWords::tr("%1 ÷ %2 ÷ %3 m² a frame = %4 larvae/m²")
                        .arg(larvae(estimate.larvae, locale), frames(estimate.frames, locale),
                            locale.toString(result.frame.value(), 'g', 4),
                            locale.toString(estimate.mean->value(), 'g', 4)));
}

SheetBlock densityBlock(const WalkSheetInput& input, const QLocale& locale)
{
    const FrameEstimate& estimate = input.result.estimate;
    SheetBlock block{.part = SheetPart::Density,
        .heading = WalkSheetWords::tr("Density"),
        .lines = estimateSentences(estimate, locale)};
    if (estimate.mean)
        block.facts.push_back({WalkSheetWords::tr("By hand"), meanByHand(input.result, locale)});
    if (!input.result.threshold) return block;
    const QString chance = chanceSentence(estimate, input.result.threshold->larvae, locale);
    if (!chance.isEmpty()) block.lines << chance;
    return block;
}

// Both lines in whole larvae, at a few stops: whoever has the total can look for himself.
QString linesByHand(const StopPlan& plan, const QLocale& locale)
{
    constexpr int step = 5;
    QStringList stops;
    QStringList below;
    QStringList above;
    const auto add = [&](int stop) {
        const auto fewer = belowUpTo(plan, stop);
        const auto more = aboveFrom(plan, stop);
        stops << locale.toString(stop);
        below << (fewer ? number(fewer->value(), locale) : QStringLiteral("\u2013"));
        above << (more ? number(more->value(), locale) : QStringLiteral("\u2013"));
    };
    add(plan.design.fewest);
    for (int stop = plan.design.fewest / step * step + step; stop < plan.design.most; stop += step) add(stop);
    if (plan.design.most > plan.design.fewest) add(plan.design.most);
    const QString comma = QStringLiteral(", ");
    //: lists of the same length: stops, larvae, larvae; then the fewest and the most stops
    return WalkSheetWords::tr("After %1 stops: below at %2 larvae in all or fewer, above at %3 or more. "
                              "Not before %4 stops; still between after %5, it stays open.")
        .arg(stops.join(comma), below.join(comma), above.join(comma), locale.toString(plan.design.fewest),
            locale.toString(plan.design.most));
}

SheetBlock linesBlock(const WalkSheetInput& input, const QLocale& locale)
{
    const WalkResult& result = input.result;
    SheetBlock block{.part = SheetPart::Lines, .heading = WalkSheetWords::tr("When to stop")};
    if (!result.threshold)
        block.lines << WalkSheetWords::tr("Without a threshold there is no line to stop at.");
    else if (!result.plan)
        block.lines << WalkSheetWords::tr("No stop rule can be drawn for this threshold.");
    else
        block.lines << stopSentence(*result.plan, result.report, result.estimate, locale)
                    << linesByHand(*result.plan, locale);
    return block;
}

SheetBlock thresholdBlock(const WalkSheetInput& input, const QLocale& locale)
{
    SheetBlock block{
        .part = SheetPart::Threshold, .heading = WalkSheetWords::tr("Economic threshold, step by step")};
    if (!input.result.threshold) {
        block.lines << WalkSheetWords::tr("Not worked out: cost and price have not been said.");
        return block;
    }
    const Threshold& threshold = *input.result.threshold;
    for (const WorkingStep& step : threshold.working)
        block.facts.push_back({workingName(step.what), workingLine(step, threshold, locale)});
    block.lines << thresholdSentence(threshold, locale);
    for (const ThresholdNote note : threshold.notes)
        block.lines << noteSentence(note, threshold, input.rule, locale);
    if (!input.decision)
        block.lines << WalkSheetWords::tr(
            "Cost and price are those of the walk before: nothing was kept for this one.");
    return block;
}

SheetBlock timingBlock(const WalkSheetInput& input, const QLocale& locale)
{
    const ControlTiming& timing = input.result.timing;
    SheetBlock block{.part = SheetPart::Timing,
        //: "Timing on 14 Jul: too early"
        .heading =
            WalkSheetWords::tr("Timing on %1: %2").arg(shortDay(input.day, locale), name(timing.timing))};
    for (const TimingFinding& finding : timing.findings) block.lines << timingReason(finding, locale);
    for (const QString& sentence : {lastDaySentence(timing, locale), lookAgainSentence(timing, locale)})
        if (!sentence.isEmpty()) block.lines << sentence;
    return block;
}

SheetBlock reasonsBlock(const WalkSheetInput& input, const QLocale& locale)
{
    SheetBlock block{.part = SheetPart::Reasons, .heading = WalkSheetWords::tr("Why")};
    if (input.result.decision)
        for (const DecisionFinding& finding : input.result.decision->reasons)
            block.lines << decisionReason(finding, locale);
    return block;
}

SheetBlock changesBlock(const WalkSheetInput& input, const QLocale& locale)
{
    SheetBlock block{.part = SheetPart::Changes, .heading = WalkSheetWords::tr("What would change it")};
    if (input.result.decision)
        for (const DecisionChange& change : input.result.decision->changes)
            block.lines << changeSentence(change, *input.result.threshold, locale);
    return block;
}

SheetBlock decidedBlock(const WalkSheetInput& input, const QLocale& locale)
{
    SheetBlock block{.part = SheetPart::Decided, .heading = WalkSheetWords::tr("What was decided")};
    const Decision* decision = input.decision;
    if (!decision || !decision->decided) {
        block.lines << WalkSheetWords::tr("Nothing was decided yet.");
        return block;
    }
    QString words = name(*decision->decided);
    words[0] = words[0].toUpper();
    if (decision->day)
        //: what was decided, and the day
        words = WalkSheetWords::tr("%1; decided on %2").arg(words, dayAndYear(*decision->day, locale));
    block.lines << WalkSheetWords::tr("%1.").arg(words);
    if (*decision->decided == Decided::LookAgain && decision->lookAgainDay)
        block.lines
            << WalkSheetWords::tr("A good day to look again: %1.").arg(day(*decision->lookAgainDay, locale));
    if (const QString remark = written(decision->remark); !remark.isEmpty()) block.lines << remark;
    return block;
}

SheetBlock sourcesBlock(const WalkSheetInput& input, const QLocale& locale)
{
    SheetBlock block{.part = SheetPart::Sources, .heading = WalkSheetWords::tr("Sources")};
    for (const std::string& id : {input.rule.lossPerLarva.source, input.rule.publishedPrice.source,
             input.rule.drySeasonDivisor.source})
        if (const std::string* citation = input.protocol.citation(id)) block.lines << written(*citation);
    block.lines.removeDuplicates();
    block.lines << WalkSheetWords::tr("Worked out for %1 by protocol %2, version %3.")
                       .arg(dayAndYear(input.day, locale), written(input.protocol.id),
                           written(input.protocol.version));
    if (!input.walk.protocolVersion.empty() && input.walk.protocolVersion != input.protocol.version)
        block.lines << WalkSheetWords::tr("The walk began under version %1.")
                           .arg(written(input.walk.protocolVersion));
    return block;
}

} // namespace

const SheetBlock* WalkSheet::block(SheetPart part) const
{
    const auto found = std::find_if(
        blocks.begin(), blocks.end(), [part](const SheetBlock& one) { return one.part == part; });
    return found == blocks.end() ? nullptr : &*found;
}

WalkSheet walkSheet(const WalkSheetInput& input, const QLocale& locale)
{
    const WalkResult& result = input.result;
    WalkSheet sheet{.kind = WalkSheetWords::tr("Scouting walk"),
        .title = written(input.field),
        .programme = written(input.programme),
        .invented = input.isInvented ? WalkSheetWords::tr("Invented: made up for showing") : QString(),
        .facts = walkFacts(input, locale),
        .mean = shortDensity(result.estimate, locale),
        .range = shortRange(result, locale)};
    if (sheet.title.isEmpty()) sheet.title = WalkSheetWords::tr("A field without a name");
    if (result.decision) {
        sheet.verdict = name(result.decision->verdict);
        sheet.verdictSign = result.decision->verdict;
        sheet.next = nextStep(result.decision->next);
    } else {
        sheet.next = WalkSheetWords::tr("Say what control costs and what the harvest brings.");
    }
    sheet.isDecided = input.decision && input.decision->decided;
    for (const SheetBlock& block : {reasonsBlock(input, locale), changesBlock(input, locale),
             mapBlock(input, locale), framesBlock(input, locale), densityBlock(input, locale),
             linesBlock(input, locale), thresholdBlock(input, locale), timingBlock(input, locale)})
        if (block.part == SheetPart::Map || !block.lines.isEmpty()) sheet.blocks.push_back(block);
    sheet.blocks.push_back({.part = SheetPart::Cautions,
        .heading = WalkSheetWords::tr("Cautions"),
        .lines = statementsOf(input.protocol.cautionsAt(CautionPlace::Decision), input.language)});
    sheet.blocks.push_back(decidedBlock(input, locale));
    sheet.blocks.push_back(sourcesBlock(input, locale));
    return sheet;
}

QStringList choicesToTick()
{
    return {name(Decided::Control), name(Decided::NoControl), name(Decided::LookAgain)};
}

namespace {

QString factAsText(const SheetFact& fact)
{
    //: a name and its value
    return WalkSheetWords::tr("%1: %2").arg(fact.name, fact.value);
}

QString rowAsText(const SheetTable& table, const QStringList& row)
{
    QStringList cells;
    for (qsizetype i = 0; i < row.size(); ++i) {
        const bool namesItself = i == 0 && &row == &table.sums;
        if (namesItself)
            cells << row[i];
        else if (!row[i].isEmpty())
            cells << QStringLiteral("%1 %2").arg(table.heads[i], row[i]);
    }
    return cells.join(QStringLiteral(", "));
}

} // namespace

QStringList linesOf(const SheetBlock& block)
{
    QStringList lines;
    for (const QStringList& row : block.table.rows) lines << rowAsText(block.table, row);
    if (!block.table.sums.isEmpty()) lines << rowAsText(block.table, block.table.sums);
    for (const SheetFact& fact : block.facts) lines << factAsText(fact);
    return lines + block.lines;
}

QString asText(const WalkSheet& sheet)
{
    const auto joined = [](const QStringList& parts) {
        QStringList said;
        for (const QString& part : parts)
            if (!part.isEmpty()) said << part;
        return said.join(QStringLiteral(" · "));
    };
    QStringList lines{joined({sheet.kind, sheet.programme, sheet.invented}), sheet.title};
    for (const SheetFact& fact : sheet.facts) lines << factAsText(fact);
    lines << QString() << joined({sheet.verdict, sheet.mean, sheet.range}) << sheet.next;
    for (const SheetBlock& block : sheet.blocks) {
        const QStringList said = linesOf(block);
        if (!said.isEmpty()) lines << QString() << block.heading.toUpper() << said;
    }
    return withoutJoiners(lines.join(u'\n') + u'\n');
}

} // namespace duskrow::text
