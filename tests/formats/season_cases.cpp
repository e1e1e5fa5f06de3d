// SPDX-License-Identifier: MIT
#include "formats/season_cases.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

// Edges as in the Manitoba bertha risk forecasts 2015-2022: 300, 900, 1,200 moths per trap and season.
std::vector<SeasonBand> manitobaBands()
{
    return {{Moths{0}, "low", 1}, {Moths{300}, "uncertain", 2}, {Moths{900}, "moderate", 3},
        {Moths{1200}, "high", 4}};
}

SeasonInterval week(unsigned month, unsigned day, int caught)
{
    const LocalDay to = dayOf(2026, month, day);
    return {to - std::chrono::days{7}, to, Moths{caught}};
}

SeasonChartInput plain()
{
    SeasonChartInput input;
    input.firstDay = dayOf(2026, 6, 2);
    input.lastDay = dayOf(2026, 7, 31);
    input.bands = manitobaBands();
    input.today = dayOf(2026, 7, 8);
    input.todayLabel = "today";
    input.ticks = {{dayOf(2026, 6, 2), "2 Jun"}, {dayOf(2026, 6, 16), "16"}, {dayOf(2026, 6, 30), "30"},
        {dayOf(2026, 7, 14), "14 Jul"}, {dayOf(2026, 7, 28), "28"}};
    input.title = "Season of a trap";
    input.description = "259 moths so far";
    input.number = [](Moths moths) {
        std::string text = std::to_string(moths.value());
        if (text.size() > 3) text.insert(text.size() - 3, ",");
        return text;
    };
    return input;
}

SeasonChartInput normal()
{
    SeasonChartInput input = plain();
    input.intervals = {week(6, 9, 3), week(6, 16, 14), week(6, 23, 45), week(6, 30, 101), week(7, 7, 96)};
    input.fan = SeasonFan{Moths{330}, Moths{640}, "season likely 330 to 640"};
    input.totalLabel = "259";
    return input;
}

SeasonChartInput missedWeek()
{
    SeasonChartInput input = normal();
    input.intervals = {week(6, 9, 3), week(6, 16, 24),
        {dayOf(2026, 6, 16), dayOf(2026, 6, 30), Moths{150}, true, false, "one count over 14 nights"},
        week(7, 7, 82)};
    return input;
}

SeasonChartInput failedTrap()
{
    SeasonChartInput input = plain();
    input.intervals = {week(6, 9, 3), week(6, 16, 14), week(6, 23, 45), week(6, 30, 150), week(7, 7, 90)};
    input.intervals[3].isAtLeast = true;
    input.intervals[3].note = "at least 150, the trap had fallen";
    input.totalLabel = "at least 302";
    input.fan = SeasonFan{Moths{380}, Moths{980}, "season likely 380 to 980 or more"};
    return input;
}

SeasonChartInput partOfFlight()
{
    SeasonChartInput input = plain();
    input.bands.clear();
    input.unknown = {{dayOf(2026, 6, 2), dayOf(2026, 6, 23), "no trap here yet"}};
    input.intervals = {week(6, 30, 45), week(7, 7, 95)};
    input.totalLabel = "part of the flight only, at least 140";
    return input;
}

SeasonChartInput early()
{
    SeasonChartInput input = plain();
    input.today = dayOf(2026, 6, 17);
    input.intervals = {week(6, 9, 0), week(6, 16, 4)};
    input.totalLabel = "4";
    return input;
}

SeasonChartInput over(int scale)
{
    SeasonChartInput input = plain();
    input.today.reset();
    input.intervals = {week(6, 9, 1 * scale), week(6, 16, 6 * scale), week(6, 23, 12 * scale),
        week(6, 30, 24 * scale), week(7, 7, 31 * scale), week(7, 14, 15 * scale), week(7, 21, 8 * scale),
        week(7, 28, 3 * scale)};
    input.totalLabel = input.number(Moths{100 * scale});
    return input;
}

SeasonChartInput daily()
{
    SeasonChartInput input = plain();
    for (int i = 0; i < 40; ++i) {
        const LocalDay from = dayOf(2026, 6, 2) + std::chrono::days{i};
        input.intervals.push_back({from, from + std::chrono::days{1}, Moths{i * 2}});
    }
    input.today.reset();
    input.totalLabel = "1,560";
    return input;
}

SeasonChartInput longWords()
{
    SeasonChartInput input = missedWeek();
    input.bands = {{Moths{0}, "geringes Risiko für die Gegend", 1},
        {Moths{300}, "Ausgang ungewiss, Felder ansehen", 2}, {Moths{900}, "mäßiges Risiko", 3},
        {Moths{1200}, "hohes Risiko", 4}};
    input.fan->label = "Saison wird voraussichtlich 330 bis 640 erreichen";
    input.todayLabel = "heutiger Tag";
    input.intervals[2].note = "eine einzige Zählung über vierzehn Nächte";
    input.totalLabel = "bisher 259";
    for (SeasonTick& tick : input.ticks) tick.label += ". Juni 2026";
    return input;
}

} // namespace

std::vector<SeasonCase> seasonCases()
{
    SeasonChartInput empty = plain();
    empty.emptyLabel = "No counts yet";
    SeasonChartInput emptyWithoutBands = empty;
    emptyWithoutBands.bands.clear();
    SeasonChartInput gap = normal();
    gap.intervals.erase(gap.intervals.begin() + 2);
    gap.unknown = {{dayOf(2026, 6, 16), dayOf(2026, 6, 23), "no trap"}};
    SeasonChartInput oneDay = early();
    oneDay.lastDay = oneDay.firstDay;
    return {{"normal", normal()}, {"missed week", missedWeek()}, {"at least", failedTrap()},
        {"part of the flight", partOfFlight()}, {"early", early()}, {"empty", empty},
        {"empty without bands", emptyWithoutBands}, {"whole low season", over(1)},
        {"whole high season", over(15)}, {"9,000 moths", over(90)}, {"daily counts", daily()},
        {"long words", longWords()}, {"nights without trap", gap}, {"a season of one day", oneDay}};
}
