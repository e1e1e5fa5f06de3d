// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/uuid.h"

namespace duskrow::domain {

// One installation in one programme: the first 16 bytes of the hash of its public key.
using StreamId = std::array<std::uint8_t, 16>;
using PublicKey = std::array<std::uint8_t, 32>; // Ed25519
using Signature = std::array<std::uint8_t, 64>;

// The stream a public key stands for in a programme.
StreamId streamOf(const PublicKey& key, const Uuid& programme);

bool isSignedBy(const PublicKey& key, std::string_view message, const Signature& signature);

// What the holder of an invitation signs with the invitation's key to claim it for a stream.
std::string claimMessage(const Uuid& programme, const StreamId& stream);

} // namespace duskrow::domain
