// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/result.h"
#include "domain/base/signing.h"

// The ten characters that let somebody in, and the key pair they stand for. FORMAT.md section 5.
namespace duskrow::sync {

// 50 random bits as ten characters, without hyphen.
std::string codeFrom(const std::array<std::uint8_t, 7>& random);
std::string freshCode();

// "XXXXX-XXXXX"
std::string shownCode(const std::string& code);

// What a person typed: case, hyphens and spaces do not matter, I and L are 1, O is 0.
//
// Errors  CodeUnreadable {what was typed}
domain::Result<std::string> readCode(std::string_view typed);

struct InvitationKey {
    domain::PublicKey key{};
    std::array<std::uint8_t, 64> secret{};

    [[nodiscard]] domain::Signature sign(std::string_view message) const;
};

// Takes 64 MiB and some tenths of a second, on purpose: that is what a guess costs.
//
// code    as readCode gives it
// Errors  NotEnoughMemory {}
domain::Result<InvitationKey> keyOfCode(const std::string& code);

} // namespace duskrow::sync
