// SPDX-License-Identifier: MIT
#include "store/stream_key.h"

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <fstream>
#include <sodium.h>
#include <utility>

#include "store/durable_file.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

std::filesystem::path retiredPath(const std::string& folder, const Uuid& programme, const StreamId& stream)
{
    return std::filesystem::path(folder) / (formatUuid(programme) + '-' + formatHex(stream) + ".key");
}

StreamKey keyFromSeed(const std::array<std::uint8_t, 32>& seed, std::string token, const Uuid& programme)
{
    std::array<std::uint8_t, 32> publicKey{};
    std::array<std::uint8_t, 64> secret{};
    crypto_sign_seed_keypair(publicKey.data(), secret.data(), seed.data());
    sodium_memzero(secret.data(), secret.size());
    return {streamOf(publicKey, programme), std::move(token), seed, publicKey, 0};
}

Result<Done> writeKey(const std::filesystem::path& path, const StreamKey& key)
{
    const std::string text =
        formatHex(key.seed) + '\n' + key.installToken + '\n' + std::to_string(key.handedOver) + '\n';
    const auto kept = writeDurably(path, text, Access::OwnerOnly);
    if (!kept && kept.error().code == ErrorCode::DiskFull) return kept.error();
    if (!kept) return Error{ErrorCode::KeyUnreadable, {path.string()}, kept.error().detail};
    return Done{};
}

} // namespace

std::string keyFile(const std::string& folder, const Uuid& programme)
{
    return (std::filesystem::path(folder) / (formatUuid(programme) + ".key")).string();
}

Result<StreamKey> makeKey(const std::string& folder, const Uuid& programme)
{
    const std::filesystem::path path = keyFile(folder, programme);
    if (sodium_init() < 0) return Error{ErrorCode::KeyUnreadable, {path.string()}};
    std::array<std::uint8_t, 32> seed{};
    std::array<std::uint8_t, 16> token{};
    randombytes_buf(seed.data(), seed.size());
    randombytes_buf(token.data(), token.size());
    StreamKey key = keyFromSeed(seed, formatHex(token), programme);
    if (const auto written = writeKey(path, key); !written) return written.error();
    return key;
}

Result<Done> noteHandingOver(
    const std::string& folder, const Uuid& programme, StreamKey& key, std::int64_t last)
{
    if (last <= key.handedOver) return Done{};
    const std::int64_t before = std::exchange(key.handedOver, last);
    auto written = writeKey(keyFile(folder, programme), key);
    if (!written) key.handedOver = before;
    return written;
}

Signature signWith(const StreamKey& key, std::string_view message)
{
    PublicKey publicKey{};
    std::array<std::uint8_t, 64> secret{};
    crypto_sign_seed_keypair(publicKey.data(), secret.data(), key.seed.data());
    Signature signature{};
    crypto_sign_detached(signature.data(), nullptr, reinterpret_cast<const unsigned char*>(message.data()),
        message.size(), secret.data());
    sodium_memzero(secret.data(), secret.size());
    return signature;
}

namespace {

Result<std::optional<StreamKey>> readKey(const std::filesystem::path& path, const Uuid& programme)
{
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
    StreamKey key = keyFromSeed(seed, token, programme);
    std::string handedOver;
    if (std::getline(file, handedOver)) {
        const char* end = handedOver.data() + handedOver.size();
        const auto [at, failed] = std::from_chars(handedOver.data(), end, key.handedOver);
        if (failed != std::errc{} || at != end || key.handedOver < 0)
            return Error{ErrorCode::KeyUnreadable, {path.string()}};
    }
    return std::optional<StreamKey>{std::move(key)};
}

} // namespace

Result<std::optional<StreamKey>> loadKey(const std::string& folder, const Uuid& programme)
{
    return readKey(keyFile(folder, programme), programme);
}

Result<Done> retireKey(const std::string& folder, const Uuid& programme, const StreamKey& key)
{
    return writeKey(retiredPath(folder, programme, key.stream), key);
}

std::vector<StreamKey> retiredKeys(const std::string& folder, const Uuid& programme)
{
    std::vector<StreamKey> keys;
    std::error_code failure;
    const std::string begin = formatUuid(programme) + '-';
    for (std::filesystem::directory_iterator entry(folder, failure);
         !failure && entry != std::filesystem::directory_iterator(); entry.increment(failure)) {
        const std::filesystem::path& path = entry->path();
        if (path.extension() != ".key" || !path.filename().string().starts_with(begin)) continue;
        if (auto key = readKey(path, programme); key && *key) keys.push_back(std::move(**key));
    }
    std::sort(
        keys.begin(), keys.end(), [](const StreamKey& a, const StreamKey& b) { return a.stream < b.stream; });
    return keys;
}

Uuid newId(Instant now)
{
    RandomBytes10 random{};
    randombytes_buf(random.data(), random.size());
    return uuidFromTime(now, random);
}

} // namespace duskrow::store
