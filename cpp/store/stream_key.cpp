// SPDX-License-Identifier: MIT
#include "store/stream_key.h"

#include <filesystem>
#include <fstream>
#include <sodium.h>

#include "store/durable_file.h"

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

Result<StreamKey> makeKey(const std::string& folder, const Uuid& programme)
{
    const auto path = keyPath(folder, programme);
    if (sodium_init() < 0) return Error{ErrorCode::KeyUnreadable, {path.string()}};
    std::array<std::uint8_t, 32> seed{};
    std::array<std::uint8_t, 16> token{};
    randombytes_buf(seed.data(), seed.size());
    randombytes_buf(token.data(), token.size());

    const auto kept = writeDurably(path, formatHex(seed) + '\n' + formatHex(token) + '\n', Access::OwnerOnly);
    if (!kept && kept.error().code == ErrorCode::DiskFull) return kept.error();
    if (!kept) return Error{ErrorCode::KeyUnreadable, {path.string()}, kept.error().detail};
    return keyFromSeed(seed, formatHex(token), programme);
}

Result<std::optional<StreamKey>> loadKey(const std::string& folder, const Uuid& programme)
{
    const auto path = keyPath(folder, programme);
    std::error_code failure;
    if (std::filesystem::status(path, failure).type() == std::filesystem::file_type::not_found)
        return std::optional<StreamKey>{};
    std::ifstream file(path);
    std::string seedText;
    std::string token;
    std::array<std::uint8_t, 32> seed{};
    std::array<std::uint8_t, 16> tokenBytes{};
    if (!std::getline(file, seedText) || !std::getline(file, token) || !parseHex(seedText, seed)
        || !parseHex(token, tokenBytes))
        return Error{ErrorCode::KeyUnreadable, {path.string()}};
    return std::optional<StreamKey>{keyFromSeed(seed, token, programme)};
}

Uuid newId(Instant now)
{
    RandomBytes10 random{};
    randombytes_buf(random.data(), random.size());
    return uuidFromTime(now, random);
}

} // namespace duskrow::store
