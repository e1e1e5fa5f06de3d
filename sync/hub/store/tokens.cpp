// SPDX-License-Identifier: MIT
#include <sodium.h>

#include "sync/hub/store/audit.h"
#include "sync/hub/store/cells.h"
#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

namespace {

constexpr std::int64_t keepNonceMs = 10 * 60 * 1000; // longer than any is good for

Cell handleOf(const Hash& token)
{
    return Blob{std::string(token.begin(), token.begin() + 8)};
}

} // namespace

Result<std::optional<PublicKey>> HubStore::keyOf(const Uuid& programme, const StreamId& stream)
{
    std::optional<PublicKey> key;
    const auto done = m_engine->read([&](Session& session) {
        for (const Row& row : session.run(
                 "SELECT key FROM stream WHERE programme=$1 AND stream=$2", {cell(programme), cell(stream)}))
            key = arrayOf<32>(row.bytes(0));
    });
    if (!done) return done.error();
    return key;
}

Result<bool> HubStore::putToken(
    const Bearer& bearer, const Hash& token, const std::string& nonce, Instant now)
{
    bool isFresh = false;
    const auto done = m_engine->write([&](Session& session) {
        session.run("DELETE FROM nonce WHERE until_ms<$1", {cell(now)});
        isFresh = !session
                       .run("INSERT INTO nonce (nonce, until_ms) VALUES ($1, $2)"
                            " ON CONFLICT (nonce) DO NOTHING RETURNING until_ms",
                           {Blob{nonce}, domain::toMs(now) + keepNonceMs})
                       .empty();
        if (!isFresh) return;
        session.run("INSERT INTO token (programme, stream, handle, hash, made_ms) VALUES ($1, $2, $3, $4, $5)"
                    " ON CONFLICT (programme, stream) DO UPDATE SET handle=$3, hash=$4, made_ms=$5",
            {cell(bearer.programme), cell(bearer.stream), handleOf(token), cell(token), cell(now)});
        note(session, bearer.programme, bearer.stream, "token", "", now);
    });
    if (!done) return done.error();
    return isFresh;
}

Result<std::optional<Bearer>> HubStore::bearerOf(const Hash& token)
{
    std::optional<Bearer> bearer;
    const auto done = m_engine->read([&](Session& session) {
        bearer.reset();
        // The index tells no more than 8 bytes of a hash; the rest is compared in constant time.
        for (const Row& row :
            session.run("SELECT programme, stream, hash FROM token WHERE handle=$1", {handleOf(token)})) {
            const Hash held = arrayOf<32>(row.bytes(2));
            if (sodium_memcmp(held.data(), token.data(), held.size()) == 0)
                bearer = Bearer{idOf(row.bytes(0)), arrayOf<16>(row.bytes(1))};
        }
    });
    if (!done) return done.error();
    return bearer;
}

} // namespace duskrow::hub
