// SPDX-License-Identifier: MIT
#include <sodium.h>

#include "domain/base/signing.h"
#include "sync/hub/call.h"
#include "sync/hub/token_hash.h"

// A token against a signature. A nonce holds its time and is sealed with the hubs' secret: asking for one
// stores nothing, and any hub over the same store knows it again.
namespace duskrow::hub {

namespace {

constexpr std::int64_t nonceMs = 60'000;

std::string textOf(std::int64_t number)
{
    std::string bytes(8, '\0');
    for (std::size_t i = 0; i < 8; ++i)
        bytes[i] = static_cast<char>(static_cast<std::uint64_t>(number) >> (8 * i));
    return bytes;
}

std::int64_t numberIn(const std::string& bytes)
{
    std::uint64_t number = 0;
    for (std::size_t i = 8; i-- > 0;) number = number << 8 | static_cast<std::uint8_t>(bytes[i]);
    return static_cast<std::int64_t>(number);
}

template <std::size_t size>
std::string bytesOf(const std::array<std::uint8_t, size>& bytes)
{
    return {bytes.begin(), bytes.end()};
}

// 16 bytes that only the hubs can make.
std::string sealOf(const Hub& hub, const Bearer& bearer, const std::string& open)
{
    const std::string text =
        "duskrow-hub-nonce" + bytesOf(bearer.programme.bytes) + bytesOf(bearer.stream) + open;
    std::string seal(16, '\0');
    crypto_generichash(reinterpret_cast<unsigned char*>(seal.data()), seal.size(),
        reinterpret_cast<const unsigned char*>(text.data()), text.size(),
        reinterpret_cast<const unsigned char*>(hub.secret.data()), hub.secret.size());
    return seal;
}

bool isOurs(const Hub& hub, const Bearer& bearer, const std::string& nonce)
{
    const std::string open = nonce.substr(0, 16);
    const std::string seal = sealOf(hub, bearer, open);
    if (sodium_memcmp(seal.data(), nonce.data() + 16, 16) != 0) return false;
    // Hubs over one store may differ by a little in their clocks.
    const std::int64_t age = domain::toMs(hub.now()) - numberIn(open);
    return age < nonceMs && age > -nonceMs;
}

std::string hexText(const std::string& bytes)
{
    return domain::formatHex({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()});
}

} // namespace

Response challenge(Hub& hub, Call& call)
{
    const auto texts = textsOf(call.request.body, {"stream"});
    const auto stream = texts ? hexOf<16>(texts->at("stream")) : std::nullopt;
    if (!stream) return refusal(400, "body", "The body is not what this call takes.");
    std::string open = textOf(domain::toMs(hub.now())) + std::string(8, '\0');
    randombytes_buf(open.data() + 8, 8);
    return jsonAnswer(200, {{"nonce", hexText(open + sealOf(hub, {call.programme, *stream}, open))}});
}

Response token(Hub& hub, Call& call)
{
    const auto texts = textsOf(call.request.body, {"nonce", "proof", "stream"});
    const auto nonce = texts ? hexOf<32>(texts->at("nonce")) : std::nullopt;
    const auto proof = texts ? hexOf<64>(texts->at("proof")) : std::nullopt;
    const auto stream = texts ? hexOf<16>(texts->at("stream")) : std::nullopt;
    if (!nonce || !proof || !stream) return refusal(400, "body", "The body is not what this call takes.");
    call.stream = *stream;
    const Bearer bearer{call.programme, *stream};
    if (!isOurs(hub, bearer, bytesOf(*nonce))) return refusal(403, "nonce", "Ask for another nonce.");
    const auto key = hub.store.keyOf(call.programme, *stream);
    if (!key) return storeFailed(key.error());
    const std::string message = "duskrow-token-v1" + bytesOf(call.programme.bytes) + bytesOf(*nonce);
    if (!*key || !domain::isSignedBy(**key, message, *proof))
        return refusal(403, "proof", "The proof does not belong to this stream.");
    if (!isActive(*call.known.roster, *stream, hub.now()))
        return refusal(403, "ended", "This device takes no part in the programme, or no more.");
    std::array<std::uint8_t, 32> fresh{};
    randombytes_buf(fresh.data(), fresh.size());
    const auto kept = hub.store.putToken(bearer, tokenHash(fresh), bytesOf(*nonce), hub.now());
    if (!kept) return storeFailed(kept.error());
    if (!*kept) return refusal(403, "nonce", "Ask for another nonce.");
    return jsonAnswer(201, {{"token", domain::formatHex(fresh)}});
}

} // namespace duskrow::hub
