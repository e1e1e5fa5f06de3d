// SPDX-License-Identifier: MIT
#pragma once

#include <cstdlib>
#include <nlohmann/json.hpp>
#include <random>
#include <sodium.h>
#include <string>
#include <vector>

#include "sync/segment/segment.h"

// One installation of a made-up programme, its changes and segments; and segments by those who do not keep to
// the rules. Bytes are put together here by hand, from the description alone.
namespace duskrow::test {

inline domain::Uuid uuidOf(std::uint64_t number)
{
    domain::Uuid id;
    id.bytes = {0x01, 0x98, 0x0a, 0x5c, 0x10, 0x00, 0x70, 0x00, 0x80};
    for (std::size_t i = 0; i < 6; ++i) id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
    return id;
}

struct KeyPair {
    sync::PublicKey open{};
    std::array<std::uint8_t, 64> secret{};

    explicit KeyPair(std::uint8_t seed)
    {
        const std::array<std::uint8_t, 32> bytes{seed};
        crypto_sign_seed_keypair(open.data(), secret.data(), bytes.data());
    }
    [[nodiscard]] sync::Signature sign(std::string_view text) const
    {
        sync::Signature signature{};
        crypto_sign_detached(signature.data(), nullptr, reinterpret_cast<const unsigned char*>(text.data()),
            text.size(), secret.data());
        return signature;
    }
    [[nodiscard]] sync::Sign signer() const
    {
        return [this](std::string_view text) { return sign(text); };
    }
};

struct Scene {
    KeyPair keys{7};
    domain::Uuid programme = uuidOf(1);
    domain::StreamId stream = domain::streamOf(keys.open, programme);

    // A visit with ids nobody can guess, some of them citing another stream.
    [[nodiscard]] domain::Change change(std::int64_t number) const
    {
        std::mt19937_64 draw(static_cast<std::uint64_t>(number));
        domain::Change made;
        made.programme = programme;
        made.ref = {stream, number};
        made.author = uuidOf(2);
        made.kind = "visit";
        made.record = uuidOf(draw());
        if (number % 3 != 0) made.site = uuidOf(static_cast<std::uint64_t>(10 + number % 3));
        made.at = domain::instantFromMs(1'783'980'000'000 + 61'000 * number);
        made.offset = std::chrono::minutes{-300};
        made.fields["trap"] = {domain::formatUuid(uuidOf(draw())), {}};
        made.fields["pest"] = {static_cast<std::int64_t>(draw() % 200), {}};
        if (number > 1) made.fields["pest"].base.push_back({stream, number - 1});
        if (number % 5 == 0) made.fields["pest"].base.push_back({{0xAB}, number});
        made.fields["remark"] = {std::string("caf\xC3\xA9, wind \"west\""), {}};
        return made;
    }
    [[nodiscard]] std::vector<std::string> lines(std::int64_t first, std::int64_t last) const
    {
        std::vector<std::string> all;
        for (std::int64_t n = first; n <= last; ++n) all.push_back(domain::canonicalJson(change(n)));
        return all;
    }
    [[nodiscard]] sync::Sealing sealing(std::int64_t first = 1) const
    {
        sync::Sealing how{programme, stream, keys.open, {}, 3};
        if (first > 1) how.previous.fill(0x5E);
        return how;
    }
    [[nodiscard]] sync::SegmentHead sealed(std::int64_t first, std::int64_t last) const
    {
        auto head = sync::seal(sealing(first), lines(first, last), keys.signer());
        if (!head) std::abort();
        return std::move(head.value());
    }
};

inline std::string littleEndian(std::uint64_t number, int width)
{
    std::string bytes;
    for (int i = 0; i < width; ++i) bytes += static_cast<char>(number >> (8 * i));
    return bytes;
}

inline std::string asText(std::span<const std::uint8_t> bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

// Length and hash behind parts, whatever the parts are.
inline std::string closed(std::string parts)
{
    parts += littleEndian(parts.size() + 40, 8);
    return parts + asText(domain::hashOf(parts));
}

inline std::string joined(
    const std::string& header, char form, const std::string& payload, const sync::Signature& signature)
{
    return closed("DSEG1\n" + littleEndian(header.size(), 4) + header + form + payload + asText(signature));
}

// A segment whose author signs anything.
inline std::string forged(
    const KeyPair& keys, const std::string& header, const std::string& payload, char form = 0)
{
    return joined(header, form, payload, keys.sign("DSEG1-signed" + header));
}

// What became of bytes: "ok", or the kind of error and what it names.
inline std::string fate(std::string_view bytes)
{
    const auto named = [](const domain::Error& error) {
        const char* code = error.code == domain::ErrorCode::SegmentUnfinished ? "unfinished"
            : error.code == domain::ErrorCode::SegmentMalformed               ? "malformed"
            : error.code == domain::ErrorCode::SegmentTooLarge                ? "too large"
            : error.code == domain::ErrorCode::SegmentForged                  ? "forged"
            : error.code == domain::ErrorCode::SegmentNewer                   ? "newer"
                                                                              : "?";
        return error.args.empty() ? std::string(code) : std::string(code) + ' ' + error.args.front();
    };
    auto head = sync::readHead(bytes);
    if (!head) return named(head.error());
    const auto segment = sync::openSegment(std::move(head.value()));
    return segment ? "ok" : named(segment.error());
}

} // namespace duskrow::test
