// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/base/heat_method.h"

namespace duskrow::text {

QString methodWords(domain::HeatMethod method); // "single sine"
QString cutOffWords(domain::CutOff cutOff);
QString temperatureWords(double degrees, domain::HeatUnit unit); // "7 °C"
QString sumWords(double degreeDays, domain::HeatUnit unit); // "312 degree-days (°C)"

} // namespace duskrow::text
