// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include <memory>

#include "domain/import/temperature_plan.h"
#include "formats/temperature_reading.h"
#include "store/import_ledger.h"
#include "store/reader.h"

namespace duskrow::app {

// A table of temperatures, and what a person said of it.
struct TemperaturesAsk {
    std::string path;
    formats::TemperatureChoices choices = {};
    domain::StationTold station = {};
    domain::Uuid programme = {};
};

// What was found in it. Without a plan while it cannot be read as it stands: `missing` says why.
struct TemperaturesSeen {
    store::ImportNoted import = {};
    std::optional<formats::TemperatureReading> reading = {}; // nothing where the columns are not known
    std::vector<std::string> header = {};
    std::optional<domain::ImportPlan> plan = {};
    std::optional<domain::Error> missing = {};
};

// Reads a file and holds it against the store. Takes its time: not for the thread of the screens.
//
// Errors  FileUnreadable, FileTooLarge, those of readTemperatures that no choice mends, as in queries.h
domain::Result<std::shared_ptr<const TemperaturesSeen>> readTemperaturesFile(
    store::Reader& reader, const TemperaturesAsk& ask);

} // namespace duskrow::app
