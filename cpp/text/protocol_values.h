// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <chrono>
#include <string>

#include "domain/protocol/protocol.h"

namespace duskrow::text {

// The values of a protocol as people read them, in the reader's locale.

QString valueWords(int count);
QString valueWords(double number);
QString valueWords(const std::string& text);
QString valueWords(std::chrono::days days);
QString valueWords(std::chrono::weeks weeks);
QString valueWords(std::chrono::year year); // "1974"
QString valueWords(std::chrono::month_day day); // "1 June"
QString valueWords(std::chrono::weekday day);
QString valueWords(domain::Millimetres length); // "100 cm"; below 10 cm in millimetres
QString valueWords(domain::Metres distance);
QString valueWords(domain::SquareMetres area);
QString valueWords(domain::Frames frames);
QString valueWords(domain::DegreesCelsius temperature);
QString valueWords(domain::DegreeDays sum);
QString valueWords(domain::Percent share);
QString valueWords(domain::Kilograms mass);
QString valueWords(domain::BbchStage stage);
QString valueWords(domain::Moths moths);
QString valueWords(domain::Nights nights);
QString valueWords(domain::LarvaePerSquareMetre density);
QString valueWords(domain::DollarsPerBushel price);
QString valueWords(domain::DollarsPerAcre cost);
QString valueWords(domain::BushelsPerAcrePerLarva loss);
QString valueWords(domain::Currency currency);
QString valueWords(domain::HeightRule rule);
QString valueWords(domain::CatchOf caught);

} // namespace duskrow::text
