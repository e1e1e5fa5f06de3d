// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <string_view>

#include "domain/base/result.h"

namespace duskrow::domain {

// A time of day as people type it, in minutes after midnight: "18:00", "18.30", "18h30", "1830", "18",
// "6 pm", "6:30 p.m.".
//
// Errors  NotATime {what was typed}
Result<std::chrono::minutes> parseTimeOfDay(std::string_view typed);

} // namespace duskrow::domain
