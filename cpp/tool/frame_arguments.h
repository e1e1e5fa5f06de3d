// SPDX-License-Identifier: MIT
#pragma once

#include <CLI/CLI.hpp>
#include <string>
#include <vector>

#include "domain/protocol/protocol.h"
#include "domain/rules/stop_rule.h"
#include "domain/rules/stop_table.h"

namespace duskrow::tool {

// What the commands on scouting walks have in common, as it was typed.
struct FrameLine {
    std::string threshold; // larvae per square metre
    std::string frame; // square metres
    std::string dispersion;
    std::string pest = "bertha-armyworm";
    std::string protocols;
    bool asJson = false;
};

void addFrameOptions(CLI::App& line, FrameLine& typed);

// A number with a point or a comma at most, above zero.
//
// field   its name, for the sentence
// Errors  NotANumber; OutOfRange when it is not above zero, with the bounds given
domain::Result<double> positiveNumber(
    const std::string& text, const char* field, const char* low, const char* high);

// The frame that was typed, else the protocol's.
domain::Result<domain::SquareMetres> frameOf(const FrameLine& typed, const domain::Protocol& protocol);

// How unevenly larvae lie, as it was typed, else the usual plan's.
domain::Result<double> dispersionOf(const FrameLine& typed);

// The plan for the threshold and dispersion that were typed.
//
// areaOfAStop  frame area times the frames at a stop
domain::Result<domain::StopPlan> planOf(
    const FrameLine& typed, const domain::Protocol& protocol, domain::SquareMetres areaOfAStop);

// One count or one stop a row: a column "larvae", and "frames" where a stop has several. Without names the
// columns are these two in this order. Rows with the same number in a column "stop" are one stop; a row
// without one is a stop of its own. Empty rows are passed over.
//
// Errors  those of rowsOfFile; TableEmpty, TableNoColumn, TableRow (of a count, or {..., "stop"})
domain::Result<std::vector<domain::FrameStop>> stopsIn(const std::string& path);

// Prints how often the plan errs a third below, at, and half as much again above the threshold.
domain::Result<domain::Done> printErrorRates(const domain::StopPlan& plan);
// Prints what a protocol has to say where something is decided.
void printDecisionCautions(const domain::Protocol& protocol);

} // namespace duskrow::tool
