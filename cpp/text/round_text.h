// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include <chrono>
#include <optional>

#include "domain/rules/geodesy.h"
#include "domain/rules/visiting_order.h"

namespace duskrow::text {

// The way from the stop before: "3.4 km to the north-east of the stop before."
QString wayOn(const domain::Course& course, const QLocale& locale = {});

// How long a round is, and that it is a suggestion: no road, gate or slough is known.
//
// isWhole  every stop has a place
QString roundLength(
    domain::Metres length, domain::RoundMetric metric, bool isWhole, const QLocale& locale = {});

// What a round asks for, whatever the pest. Common practice, no source.
QStringList roundReminders();
QString coolBoxReminder(std::size_t lures, const QLocale& locale = {}); // empty for none

// A message to somebody who waits.
struct BackBy {
    QString programme;
    std::size_t stops = 0; // still to come
    std::chrono::minutes time{0}; // of day
    QString lastStop = {}; // its title
    std::optional<domain::GeoPoint> lastPlace = {};
};

// "Walking the traps of Willow bend; 7 stops; back by 18:00. If I am not, call me or look here: ..." The
// place stands in decimal degrees with points, as every map takes them.
QString backByMessage(const BackBy& message, const QLocale& locale = {});

} // namespace duskrow::text
