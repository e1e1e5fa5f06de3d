// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "domain/base/time.h"

namespace duskrow::domain {

// The identity of a record: 16 bytes, written as text in JSON and CSV.
struct Uuid {
    std::array<std::uint8_t, 16> bytes{};

    auto operator<=>(const Uuid&) const = default;
    [[nodiscard]] bool isNil() const { return *this == Uuid{}; }
};

using RandomBytes10 = std::array<std::uint8_t, 10>;

// A version 7 id (RFC 9562): 48 bits of time, then random bits. The caller hands in both.
Uuid uuidFromTime(Instant at, const RandomBytes10& random);

// A version 8 id for things that have a name in the trade (a season, a protocol in use): the same name
// gives the same id on every phone, so two phones meet in one record.
//
// parts  programme id as text, kind, then the natural key; each part is length-prefixed before hashing
Uuid uuidFromName(std::span<const std::string> parts);

std::string formatUuid(const Uuid& id);
void appendUuid(std::string& text, const Uuid& id);
std::optional<Uuid> parseUuid(std::string_view text);

// Lower-case hexadecimal, two digits a byte.
std::string formatHex(std::span<const std::uint8_t> bytes);
bool parseHex(std::string_view text, std::span<std::uint8_t> out);

// BLAKE2b-256.
std::array<std::uint8_t, 32> hashOf(std::string_view bytes);

} // namespace duskrow::domain
