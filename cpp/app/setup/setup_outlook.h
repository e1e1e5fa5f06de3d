// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>
#include <QStringList>

#include <optional>

#include "domain/protocol/protocol.h"
#include "domain/rules/due.h"

namespace duskrow::app {

// What comes after setting up a trap on a day, in words: each label with its value.
struct SetupOutlook {
    QStringList labels;
    QStringList values;
};

// season  the year of the season that the trap belongs to
// week    nothing: the programme does not say when counts are made
SetupOutlook outlookAfter(const domain::Protocol& protocol, std::string_view trapType,
    domain::LocalDay setDay, const std::optional<domain::SeasonWeek>& week);

// What a season can still show of the flight with a trap set up on this day; empty when all of it.
QString lateness(const domain::Protocol& protocol, domain::LocalDay setDay, int season);

// The steps that a trap still wants, as one sentence; empty when it wants none.
QString openSteps(const domain::Trap& trap, const domain::DueRules& rules, domain::LocalDay today);

} // namespace duskrow::app
