// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/degree_days.h"
#include "formats/temperature_reading.h"
#include "tool/arguments.h"

namespace duskrow::tool {

// What the commands that read temperatures take of a file's form.
struct TemperatureFileLine {
    std::string file;
    std::string dayOrder;
    std::string decimalMark;
    std::string unit;
    std::vector<std::string> columns;
};

void addTemperatureFile(CLI::App& line, TemperatureFileLine& typed);

// Errors  FileUnreadable, FileTooLarge; those of readTemperatures; UnknownCode where a choice is none
domain::Result<formats::TemperatureReading> readTemperatureFile(const TemperatureFileLine& typed);

// What a method, a cut-off and their words on the command line are: "single-sine", "horizontal".
const char* codeOf(domain::HeatMethod method);
const char* codeOf(domain::CutOff cutOff);
const char* codeOf(domain::HeatUnit unit); // "C", "F"
const char* codeOf(domain::ScaleReason reason);

struct HeatTermsLine {
    std::string method = "single-sine";
    std::string lower;
    std::string upper;
    std::string cutOff;
};

void addHeatTerms(CLI::App& line, HeatTermsLine& typed);

// Errors  UnknownCode, NotANumber; those of checkTerms
domain::Result<domain::HeatTerms> heatTermsOf(const HeatTermsLine& typed);

} // namespace duskrow::tool
