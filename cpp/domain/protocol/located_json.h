// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"

namespace duskrow::domain {

// A JSON value that remembers the line it stands on, so that a mistake in a file can be pointed at.
struct LocatedJson {
    enum class Kind { Null, Boolean, Whole, Real, Text, List, Object };

    Kind kind = Kind::Null;
    int line = 1; // first line is 1; for a list or object, the line of its opening bracket
    bool boolean = false;
    std::int64_t whole = 0;
    double real = 0; // also set for a whole number
    std::string text = {};
    std::vector<std::string> keys = {}; // of an object, in the order of the file
    std::vector<LocatedJson> items = {}; // of a list or object

    [[nodiscard]] bool isNumber() const { return kind == Kind::Whole || kind == Kind::Real; }

    // The value under a key, or null when there is none.
    [[nodiscard]] const LocatedJson* find(std::string_view key) const;
};

constexpr std::size_t mostProtocolBytes = std::size_t{1} << 20;
constexpr int deepestProtocolNesting = 32;

// Reads one JSON text.
//
// text      UTF-8, at most mostProtocolBytes, nested at most deepestProtocolNesting deep
// fileName  for the error only
// Errors    ProtocolSyntax {file, line, what} when it is not JSON, ends early, repeats a key, is too long or
//           too deep
Result<LocatedJson> readLocatedJson(std::string_view text, const std::string& fileName);

} // namespace duskrow::domain
