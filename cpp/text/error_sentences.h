// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>

#include "domain/base/result.h"

namespace duskrow::text {

// What a sentence needs to know of an argument before it can show it.
enum class Shows : std::uint8_t { Value, Field, Bound, Kind };

struct Sentence {
    const char* words = "";
    std::array<Shows, 3> shows{Shows::Value, Shows::Value, Shows::Value};
};

// The sentence for an error, to be translated in the context ErrorText; its arguments are %1 to %3.
Sentence sentenceOf(const domain::Error& error);

} // namespace duskrow::text
