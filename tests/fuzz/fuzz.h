// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdlib>

// One target for each reader of what others wrote. Each is built twice: with libFuzzer, and with replay.cpp.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace fuzz {

// What must hold whatever the bytes are; ends the program otherwise, in every kind of build.
inline void demand(bool holds)
{
    if (!holds) std::abort();
}

} // namespace fuzz
