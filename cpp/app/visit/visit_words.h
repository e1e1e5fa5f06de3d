// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>

#include "app/visit/visit_entry.h"
#include "domain/rules/flight_phase.h"
#include "domain/rules/geodesy.h"
#include "domain/rules/heavy_catch.h"
#include "domain/rules/stake.h"
#include "domain/rules/visit_questions.h"
#include "place/position_source.h"
#include "text/animal.h"

namespace duskrow::app {

// The sentences of a visit, made from its numbers.

// "8 m away", "340 m to the north-west"; the direction only where the fix is sharp enough for one.
QString whereFromHere(const place::Reading& here, const domain::Trap& trap);
QString distanceAndBearing(domain::Metres distance, std::optional<domain::Degrees> bearing);

// "last emptied 7 nights ago", or since set-up.
QString lastEmptiedWords(const VisitEntry& entry);

// "One count over 14 nights; the total stands." Empty after a usual week.
QString longIntervalWords(const std::optional<domain::VisitCatch>& caught);

QString flightWords(const VisitEntry& entry);
QString questionWords(const domain::AskedQuestion& asked, const text::Animal& animal);
// Something to tell two questions apart by, for the draft.
QString questionKey(const domain::AskedQuestion& asked);

QString heavyCatchWords(
    const domain::HeavyCatch& estimate, const text::Animal& animal); // "about 982 moths, likely 711 to 1,253"
QString heavyCatchWhy(
    const domain::HeavyCatch& estimate, const text::Animal& animal); // where the range comes from

// When people may go in again. Empty when the label's hours or the day are not known.
QString reentryWords(const domain::Visit& visit, const domain::Moment& now);

// What a sample becomes: "1 moth kept as Elm 1-3, not yet sent".
QString sampleWords(const domain::Sample& sample, const text::Animal& animal);

} // namespace duskrow::app
