// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/log/change.h"

namespace duskrow::store {

// Who writes: the key of one installation in one programme. It lives outside the database, so that a copied
// or restored store is noticed: its install token then differs from the key file's and a new stream is
// started.
struct StreamKey {
    domain::StreamId stream{};
    std::string installToken; // 32 hexadecimal digits
    std::array<std::uint8_t, 32> seed{}; // of the Ed25519 key pair
    domain::PublicKey publicKey{};
    std::int64_t handedOver = 0; // the highest number that may have left this device
};

// The file that holds the key of a programme.
std::string keyFile(const std::string& folder, const domain::Uuid& programme);

// Reads the key of a programme from its file in `folder`; nothing when there is none yet.
//
// Errors  KeyUnreadable {path} when the file is there and cannot be read, or is damaged
domain::Result<std::optional<StreamKey>> loadKey(const std::string& folder, const domain::Uuid& programme);

// Makes a key (mode 0600), in the place of one that was there: the store is new, or was copied or restored
// from elsewhere.
//
// Errors  KeyUnreadable {path} when it cannot be written; DiskFull
domain::Result<StreamKey> makeKey(const std::string& folder, const domain::Uuid& programme);

// Puts the key of a stream that goes on no more beside the new one: what it wrote and did not hand over yet
// still needs its signature.
//
// Errors  KeyUnreadable {path} when it cannot be written; DiskFull
domain::Result<domain::Done> retireKey(
    const std::string& folder, const domain::Uuid& programme, const StreamKey& key);
// Those keys, as far as they can be read.
std::vector<StreamKey> retiredKeys(const std::string& folder, const domain::Uuid& programme);

// Notes in the key's file, before it happens, that numbers up to this one may leave the device. A store that
// was put back from a backup then shows: it ends before that number.
//
// Errors  KeyUnreadable {path} when it cannot be written; DiskFull
domain::Result<domain::Done> noteHandingOver(
    const std::string& folder, const domain::Uuid& programme, StreamKey& key, std::int64_t last);

domain::Signature signWith(const StreamKey& key, std::string_view message);

// Fresh ids and tokens come from the system's random source.
domain::Uuid newId(domain::Instant now);

} // namespace duskrow::store
