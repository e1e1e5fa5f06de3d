// SPDX-License-Identifier: MIT
#include "tool/season_asked.h"

#include <QCoreApplication>

#include "text/amounts.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

void addSeason(CLI::App& line, SeasonAsked& asked)
{
    addStore(line, asked.store);
    line.add_option("--year", asked.year, "The year of the season (the last one begun if left out)")
        ->type_name("YEAR");
    line.add_option("--on", asked.on, "The day to look from, such as 2026-07-14 (today if left out)")
        ->type_name("DAY");
    addKeys(line, asked.keys);
}

Result<SeasonSeen> lookAt(const SeasonAsked& asked)
{
    const auto today = dayOrToday(asked.on);
    if (!today) return today.error();
    const auto year = yearTyped(asked.year);
    if (!year) return year.error();
    auto reader = openToLook(asked.store, asked.keys);
    if (!reader) return reader.error();
    auto season = seasonWanted(**reader, *year, *today);
    if (!season) return season.error();
    return SeasonSeen{std::move(*reader), std::move(*season), *today};
}

QString seasonHead(const Season& season, LocalDay today)
{
    return said(QT_TRANSLATE_NOOP("Tool", "Season %1, as on %2"))
        .arg(QString::number(season.year.value_or(yearOf(today))), text::dayAndYear(today));
}

} // namespace duskrow::tool
