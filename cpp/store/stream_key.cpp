// SPDX-License-Identifier: MIT
#include "store/stream_key.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sodium.h>

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

std::filesystem::path keyPath(const std::string& folder, const Uuid& programme)
{
    return std::filesystem::path(folder) / (formatUuid(programme) + ".key");
}

StreamKey keyFromSeed(const std::array<std::uint8_t, 32>& seed, std::string token, const Uuid& programme)
{
    std::array<std::uint8_t, 32> publicKey{};
    std::array<std::uint8_t, 64> secret{};
    crypto_sign_seed_keypair(publicKey.data(), secret.data(), seed.data());
    sodium_memzero(secret.data(), secret.size());
    return {streamOf(publicKey, programme), std::move(token), seed};
}

} // namespace

StreamId streamOf(const std::array<std::uint8_t, 32>& publicKey, const Uuid& programme)
{
    std::string text = "stream-v1";
    text.append(reinterpret_cast<const char*>(publicKey.data()), publicKey.size());
    text.append(reinterpret_cast<const char*>(programme.bytes.data()), programme.bytes.size());
    const auto hash = hashOf(text);
    StreamId id;
    std::copy_n(hash.begin(), id.size(), id.begin());
    return id;
}

Result<StreamKey> makeKey(const std::string& folder, const Uuid& programme)
{
    const auto path = keyPath(folder, programme);
    const Error refused{ErrorCode::KeyUnreadable, {path.string()}};
    std::error_code failure;
    std::filesystem::create_directories(folder, failure);
    if (failure || sodium_init() < 0) return refused;

    std::array<std::uint8_t, 32> seed{};
    std::array<std::uint8_t, 16> token{};
    randombytes_buf(seed.data(), seed.size());
    randombytes_buf(token.data(), token.size());

    // Permissions are narrowed while the file is still empty, and the old key stays until the new one is
    // whole.
    const auto fresh = std::filesystem::path(path.string() + ".new");
    std::ofstream file(fresh, std::ios::trunc);
    std::filesystem::permissions(
        fresh, std::filesystem::perms::owner_read | std::filesystem::perms::owner_write, failure);
    if (failure) return refused;
    file << formatHex(seed) << '\n' << formatHex(token) << '\n';
    file.close();
    if (!file) return refused;
    std::filesystem::rename(fresh, path, failure);
    if (failure) return refused;
    return keyFromSeed(seed, formatHex(token), programme);
}

Result<StreamKey> loadOrMakeKey(const std::string& folder, const Uuid& programme)
{
    const auto path = keyPath(folder, programme);
    if (!std::filesystem::exists(path)) return makeKey(folder, programme);
    std::ifstream file(path);
    std::string seedText;
    std::string token;
    std::array<std::uint8_t, 32> seed{};
    if (!std::getline(file, seedText) || !std::getline(file, token) || token.size() != 32
        || !parseHex(seedText, seed))
        return Error{ErrorCode::KeyUnreadable, {path.string()}};
    return keyFromSeed(seed, token, programme);
}

Uuid newId(Instant now)
{
    RandomBytes10 random{};
    randombytes_buf(random.data(), random.size());
    return uuidFromTime(now, random);
}

} // namespace duskrow::store
