// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <CLI/CLI.hpp>
#include <memory>
#include <optional>
#include <string>

#include "domain/base/result.h"
#include "domain/protocol/protocol.h"
#include "store/reader.h"

namespace duskrow::tool {

// Arguments are read as text, so that what is wrong with one is said in the words that the screens use.

void addStore(CLI::App& line, std::string& store);
void addKeys(CLI::App& line, std::string& folder);
void addProtocols(CLI::App& line, std::string& folder);

// Digits, with a sign at most.
//
// field   its name, for the sentence
// Errors  NotANumber, NotWhole, OutOfRange
domain::Result<std::int64_t> wholeNumber(
    const std::string& text, const char* field, std::int64_t low, std::int64_t high);

// A day as year-month-day, or the day of this machine's clock when nothing was typed.
//
// Errors  NotADay
domain::Result<domain::LocalDay> dayOrToday(const std::string& text);

// The year of a season; nothing when nothing was typed, which means the last one begun.
//
// Errors  those of wholeNumber
domain::Result<std::optional<int>> yearTyped(const std::string& text);

// The folder of this person's keys where none was named.
std::string keyFolder(const std::string& named);

// A protocol from the named folder, else from the one installed beside the program, else as carried inside.
//
// Errors  those of loadProtocol; FileUnreadable when a folder was named and is not there
domain::Result<domain::Protocol> protocolOf(const std::string& pest, const std::string& namedFolder);

// Looks into a store that may be open in another program. A store of an older version is brought up to date
// first, for which nobody else may have it open.
domain::Result<std::unique_ptr<store::Reader>> openToLook(
    const std::string& path, const std::string& namedKeyFolder);

} // namespace duskrow::tool
