// SPDX-License-Identifier: MIT
#include "sync/segment/hashes.h"

#include <sodium.h>

namespace duskrow::sync {

namespace {

// In pieces, so that nothing is copied to be hashed.
class Hasher {
public:
    explicit Hasher(std::string_view purpose)
    {
        crypto_generichash_init(&m_state, nullptr, 0, Hash{}.size());
        add(purpose);
    }
    void add(std::string_view bytes)
    {
        crypto_generichash_update(
            &m_state, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    }
    void add(const Hash& hash) { crypto_generichash_update(&m_state, hash.data(), hash.size()); }
    Hash result()
    {
        Hash hash{};
        crypto_generichash_final(&m_state, hash.data(), hash.size());
        return hash;
    }

private:
    crypto_generichash_state m_state{};
};

} // namespace

Hash leafHash(std::string_view line)
{
    Hasher hasher("DSEG1-leaf");
    hasher.add(line);
    return hasher.result();
}

Hash rootHash(std::span<const Hash> leaves)
{
    Hasher hasher("DSEG1-root");
    for (const Hash& leaf : leaves) hasher.add(leaf);
    return hasher.result();
}

Hash segmentId(std::string_view headerBytes)
{
    Hasher hasher("DSEG1-id");
    hasher.add(headerBytes);
    return hasher.result();
}

std::string signedText(std::string_view headerBytes)
{
    return std::string("DSEG1-signed").append(headerBytes);
}

} // namespace duskrow::sync
