// SPDX-License-Identifier: MIT
#include "sync/hub/store/cells.h"
#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

namespace {

std::optional<PhotographState> stateOf(
    Session& session, const Uuid& programme, const Hash& photograph, bool lock)
{
    std::string sql = "SELECT size, held, whole FROM photograph WHERE programme=$1 AND photograph=$2";
    if (lock) sql += session.forUpdate();
    const Rows rows = session.run(sql, {cell(programme), cell(photograph)});
    if (rows.empty()) return std::nullopt;
    return PhotographState{rows.front().number(0), rows.front().number(1), rows.front().number(2) != 0};
}

} // namespace

Result<PhotographState> HubStore::photograph(const Uuid& programme, const Hash& photograph)
{
    PhotographState state;
    const auto done = m_engine->read([&](Session& session) {
        state = stateOf(session, programme, photograph, false).value_or(PhotographState{});
    });
    if (!done) return done.error();
    return state;
}

Result<PhotographState> HubStore::putPart(const Uuid& programme, const Hash& photograph, std::int64_t start,
    std::int64_t size, const std::string& bytes, Instant now)
{
    PhotographState state;
    const auto done = m_engine->write([&](Session& session) {
        session.run("INSERT INTO photograph (programme, photograph, size, held, whole, made_ms)"
                    " VALUES ($1, $2, $3, 0, 0, $4) ON CONFLICT (programme, photograph) DO NOTHING",
            {cell(programme), cell(photograph), size, cell(now)});
        state = stateOf(session, programme, photograph, true).value_or(PhotographState{});
        if (state.isWhole || state.held != start || state.size != size) return;
        session.run(
            "INSERT INTO photograph_part (programme, photograph, start, bytes) VALUES ($1, $2, $3, $4)",
            {cell(programme), cell(photograph), start, Blob{bytes}});
        state.held += static_cast<std::int64_t>(bytes.size());
        session.run("UPDATE photograph SET held=$1 WHERE programme=$2 AND photograph=$3",
            {state.held, cell(programme), cell(photograph)});
    });
    if (!done) return done.error();
    return state;
}

Result<std::string> HubStore::photographBytes(const Uuid& programme, const Hash& photograph)
{
    std::string bytes;
    const auto done = m_engine->read([&](Session& session) {
        bytes.clear();
        for (const Row& row :
            session.run("SELECT bytes FROM photograph_part WHERE programme=$1 AND photograph=$2"
                        " ORDER BY start",
                {cell(programme), cell(photograph)}))
            bytes += row.bytes(0);
    });
    if (!done) return done.error();
    return bytes;
}

Result<Done> HubStore::finishPhotograph(const Uuid& programme, const Hash& photograph)
{
    return m_engine->write([&](Session& session) {
        session.run("UPDATE photograph SET whole=1 WHERE programme=$1 AND photograph=$2",
            {cell(programme), cell(photograph)});
    });
}

Result<Done> HubStore::forgetPhotograph(const Uuid& programme, const Hash& photograph)
{
    return m_engine->write([&](Session& session) {
        const auto state = stateOf(session, programme, photograph, true);
        if (!state || state->isWhole) return;
        session.run("DELETE FROM photograph_part WHERE programme=$1 AND photograph=$2",
            {cell(programme), cell(photograph)});
        session.run("DELETE FROM photograph WHERE programme=$1 AND photograph=$2",
            {cell(programme), cell(photograph)});
    });
}

} // namespace duskrow::hub
