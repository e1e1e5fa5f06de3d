// SPDX-License-Identifier: MIT
#pragma once

#include <atomic>
#include <cstdint>

namespace duskrow::sim {

// What the clock of the machine says to the code under test, in milliseconds since 1970.
extern std::atomic<std::int64_t> machineClock;

} // namespace duskrow::sim
