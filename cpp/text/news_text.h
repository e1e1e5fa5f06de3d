// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include <span>

#include "domain/bulletin/area_news.h"
#include "domain/protocol/pest_rules.h"

namespace duskrow::text {

// "14 of 15 in, median 96 this week, 240 so far", or why nothing is said.
QString newsLine(const domain::AreaNews& area, const QLocale& locale = {});

// "Band of the median: uncertain; highest: moderate. Flight: rising." Empty where nothing is said.
QString newsBands(
    const domain::AreaNews& area, std::span<const domain::Band> bands, const QLocale& locale = {});

// "Week 28 of 2026"
QString newsTitle(const std::string& week);

} // namespace duskrow::text
