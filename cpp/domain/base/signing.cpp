// SPDX-License-Identifier: MIT
#include "domain/base/signing.h"

#include <algorithm>
#include <sodium.h>

namespace duskrow::domain {

namespace {

void append(std::string& text, std::span<const std::uint8_t> bytes)
{
    text.append(reinterpret_cast<const char*>(bytes.data()), bytes.size());
}

} // namespace

StreamId streamOf(const PublicKey& key, const Uuid& programme)
{
    std::string text = "stream-v1";
    append(text, key);
    append(text, programme.bytes);
    const auto hash = hashOf(text);
    StreamId id{};
    std::copy_n(hash.begin(), id.size(), id.begin());
    return id;
}

bool isSignedBy(const PublicKey& key, std::string_view message, const Signature& signature)
{
    const auto* bytes = reinterpret_cast<const unsigned char*>(message.data());
    return crypto_sign_verify_detached(signature.data(), bytes, message.size(), key.data()) == 0;
}

std::string claimMessage(const Uuid& programme, const StreamId& stream)
{
    std::string text = "duskrow-join-v1";
    append(text, programme.bytes);
    append(text, stream);
    return text;
}

} // namespace duskrow::domain
