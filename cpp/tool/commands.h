// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <CLI/CLI.hpp>
#include <functional>
#include <span>

#include "domain/base/result.h"

namespace duskrow::tool {

// What a program can do once its command line is read: the exit code, or what a person has to be told.
using Work = std::function<domain::Result<int>()>;

// One command. `declare` adds its arguments to a command line of its own; they live as long as the work.
struct Command {
    const char* name;
    const char* summary;
    Work (*declare)(CLI::App& line);
};

// Every command, in the order of the help.
std::span<const Command> commands();

Work declareDemo(CLI::App& line);
Work declareSeason(CLI::App& line);
Work declareDue(CLI::App& line);
Work declareRegion(CLI::App& line);
Work declareFlags(CLI::App& line);
Work declareProtocol(CLI::App& line);
Work declareRound(CLI::App& line);
Work declareDegreeDays(CLI::App& line);
Work declareTemperatures(CLI::App& line);
Work declareFlight(CLI::App& line);
Work declareCalendar(CLI::App& line);
Work declareThreshold(CLI::App& line);
Work declareBand(CLI::App& line);
Work declareBulletin(CLI::App& line);
Work declareFrames(CLI::App& line);
Work declarePlanFrames(CLI::App& line);
Work declareExport(CLI::App& line);
Work declareImport(CLI::App& line);
Work declareCheck(CLI::App& line);
Work declareProgramme(CLI::App& line);
Work declareExchange(CLI::App& line);
Work declareDifferences(CLI::App& line);
Work declareSettle(CLI::App& line);

} // namespace duskrow::tool
