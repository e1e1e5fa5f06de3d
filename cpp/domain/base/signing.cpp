// SPDX-License-Identifier: MIT
#include "domain/base/signing.h"

#include <algorithm>
#include <mutex>
#include <set>
#include <sodium.h>

namespace duskrow::domain {

namespace {

void append(std::string& text, std::span<const std::uint8_t> bytes)
{
    text.append(reinterpret_cast<const char*>(bytes.data()), bytes.size());
}

// Signatures that were found good, by the hash of key, signature and message. The same few are asked about at
// every reading of a roster and at every page of a hub, and each answer costs as much as reading fifty
// changes.
class FoundGood {
public:
    using Hash = std::array<std::uint8_t, 32>;

    bool holds(const Hash& hash)
    {
        const std::lock_guard guard(m_mutex);
        return m_hashes.contains(hash);
    }
    void add(const Hash& hash)
    {
        constexpr std::size_t most = 8192;
        const std::lock_guard guard(m_mutex);
        if (m_hashes.size() == most) m_hashes.clear();
        m_hashes.insert(hash);
    }

private:
    std::mutex m_mutex;
    std::set<Hash> m_hashes;
};

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
    static FoundGood known;
    std::string all;
    append(all, key);
    append(all, signature);
    all += message;
    const auto hash = hashOf(all);
    if (known.holds(hash)) return true;
    const auto* bytes = reinterpret_cast<const unsigned char*>(message.data());
    if (crypto_sign_verify_detached(signature.data(), bytes, message.size(), key.data()) != 0) return false;
    known.add(hash);
    return true;
}

std::string claimMessage(const Uuid& programme, const StreamId& stream)
{
    std::string text = "duskrow-join-v1";
    append(text, programme.bytes);
    append(text, stream);
    return text;
}

} // namespace duskrow::domain
