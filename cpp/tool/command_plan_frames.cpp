// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QLocale>

#include <array>
#include <nlohmann/json.hpp>

#include "domain/rules/stop_table.h"
#include "text/frame_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/frame_arguments.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

// Densities of the table, in thresholds.
constexpr std::array factors{0.2, 0.4, 0.6, 2.0 / 3.0, 0.8, 1.0, 1.2, 1.5, 2.0, 3.0};

std::vector<LarvaePerSquareMetre> densitiesOf(const StopPlan& plan)
{
    std::vector<LarvaePerSquareMetre> densities;
    densities.reserve(factors.size());
    for (const double factor : factors) densities.emplace_back(plan.design.threshold.value() * factor);
    return densities;
}

Json linesJson(const StopPlan& plan)
{
    Json lines = Json::array();
    for (int frames = plan.design.fewest; frames <= plan.design.most; ++frames) {
        const auto below = belowUpTo(plan, frames);
        lines.push_back({{"frames", frames}, {"below_up_to_larvae", below ? Json(below->value()) : Json()},
            {"above_from_larvae", aboveFrom(plan, frames)->value()}});
    }
    return lines;
}

Json operatingJson(const std::vector<OperatingRow>& rows)
{
    Json table = Json::array();
    for (const OperatingRow& row : rows)
        table.push_back({{"density_per_m2", row.density.value()}, {"probability_below", row.below},
            {"probability_undecided", row.undecided()}, {"probability_above", row.above},
            {"mean_frames", row.meanStops}, {"frames_of_nine_walks_in_ten", row.stopsOfNineInTen}});
    return table;
}

Json planJson(const StopPlan& plan, SquareMetres frame, const std::vector<OperatingRow>& rows)
{
    const StopDesign& design = plan.design;
    return {{"threshold_per_m2", design.threshold.value()}, {"frame_m2", frame.value()},
        {"dispersion_k", design.dispersion}, {"ratio", design.ratio}, {"false_above", design.falseAbove},
        {"false_below", design.falseBelow}, {"fewest_frames", design.fewest},
        {"expected_frames", design.expected}, {"most_frames", design.most},
        {"low_mean_per_m2", plan.lowMean / frame.value()},
        {"high_mean_per_m2", plan.highMean / frame.value()}, {"slope_larvae_per_frame", plan.lines.slope},
        {"below_intercept_larvae", plan.lines.below}, {"above_intercept_larvae", plan.lines.above},
        {"lines", linesJson(plan)}, {"operating_table", operatingJson(rows)}};
}

void printLines(const StopPlan& plan)
{
    const QLocale locale;
    std::vector<QStringList> rows;
    for (int frames = plan.design.fewest; frames <= plan.design.most; ++frames) {
        const auto below = belowUpTo(plan, frames);
        rows.push_back({locale.toString(frames),
            below ? locale.toString(static_cast<qlonglong>(below->value())) : QStringLiteral("–"),
            locale.toString(static_cast<qlonglong>(aboveFrom(plan, frames)->value()))});
    }
    printTable({said(QT_TRANSLATE_NOOP("Tool", "frames")), said(QT_TRANSLATE_NOOP("Tool", "below at most")),
                   said(QT_TRANSLATE_NOOP("Tool", "above at least"))},
        rows, {0, 1, 2});
}

void printTableOfErrors(const std::vector<OperatingRow>& rows)
{
    const QLocale locale;
    const auto percent = [&](double share) { return locale.toString(100.0 * share, 'f', 1); };
    std::vector<QStringList> cells;
    cells.reserve(rows.size());
    for (const OperatingRow& row : rows)
        cells.push_back({locale.toString(row.density.value(), 'f', 1), percent(row.below),
            percent(row.undecided()), percent(row.above), locale.toString(row.meanStops, 'f', 1)});
    printTable({said(QT_TRANSLATE_NOOP("Tool", "larvae per m²")), said(QT_TRANSLATE_NOOP("Tool", "below %")),
                   said(QT_TRANSLATE_NOOP("Tool", "open %")), said(QT_TRANSLATE_NOOP("Tool", "above %")),
                   said(QT_TRANSLATE_NOOP("Tool", "frames on average"))},
        cells, {0, 1, 2, 3, 4});
}

// The plan rests on how patchy the larvae are, which nobody has published.
Result<Done> printPatchyCaution(const StopPlan& plan)
{
    const double patchy = std::max(0.2, plan.design.dispersion / 2.0);
    const std::array dense{LarvaePerSquareMetre{1.5 * plan.design.threshold.value()}};
    const auto rows = operatingTable(plan, dense, patchy);
    if (!rows) return rows.error();
    print(
        said(QT_TRANSLATE_NOOP("Tool",
                 "How patchy the larvae of this pest lie nobody has published. In patchier fields (k = %1):"))
            .arg(QLocale().toString(patchy)));
    print(text::operatingSentence(rows->front(), plan.design.threshold));
    return Done{};
}

Result<Done> sayPlan(const StopPlan& plan, const std::vector<OperatingRow>& rows, const Protocol& protocol)
{
    const QLocale locale;
    const StopDesign& design = plan.design;
    print(said(QT_TRANSLATE_NOOP("Tool",
                   "For a threshold of %1 (%2 a frame): count at least %3 frames, expect %4, and stop when "
                   "all larvae "
                   "together are about %5 or more away from %2 times the frames. After %6 frames the field "
                   "is near the "
                   "threshold and stays open."))
              .arg(text::density(design.threshold), locale.toString(plan.thresholdAtAStop, 'g', 3),
                  locale.toString(design.fewest), locale.toString(design.expected),
                  locale.toString(plan.lines.above, 'f', 0), locale.toString(design.most)));
    printLines(plan);
    print(text::precisionSentence(LarvaePerFrame{plan.thresholdAtAStop}, design.dispersion));
    if (const auto printed = printErrorRates(plan); !printed) return printed.error();
    printTableOfErrors(rows);
    if (const auto printed = printPatchyCaution(plan); !printed) return printed.error();
    printDecisionCautions(protocol);
    return Done{};
}

Result<int> sayPlan(const FrameLine& line)
{
    const auto protocol = protocolOf(line.pest, line.protocols);
    if (!protocol) return protocol.error();
    const auto frame = frameOf(line, *protocol);
    if (!frame) return frame.error();
    const auto plan = planOf(line, *protocol, *frame);
    if (!plan) return plan.error();
    const auto rows = operatingTable(*plan, densitiesOf(*plan), plan->design.dispersion);
    if (!rows) return rows.error();
    if (line.asJson) {
        print(QString::fromStdString(planJson(*plan, *frame, *rows).dump(2)));
        return 0;
    }
    if (const auto printed = sayPlan(*plan, *rows, *protocol); !printed) return printed.error();
    return 0;
}

} // namespace

Work declarePlanFrames(CLI::App& line)
{
    const auto typed = std::make_shared<FrameLine>();
    line.add_option("--threshold", typed->threshold, "Your threshold in larvae per square metre")
        ->type_name("PER_M2")
        ->required();
    addFrameOptions(line, *typed);
    return [typed] { return sayPlan(*typed); };
}

} // namespace duskrow::tool
