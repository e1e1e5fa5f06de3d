// SPDX-License-Identifier: MIT
#pragma once

#include <CLI/CLI.hpp>
#include <functional>

#include "domain/base/result.h"

namespace duskrow::hub {

// Runs a command; gives its exit code.
using CommandWork = std::function<domain::Result<int>()>;

// Each declares its options and gives what runs once they are read.
CommandWork declareServe(CLI::App& line);
CommandWork declareProgrammeNew(CLI::App& line);
CommandWork declareBackup(CLI::App& line);
CommandWork declareRestore(CLI::App& line);
CommandWork declareCheck(CLI::App& line);

} // namespace duskrow::hub
