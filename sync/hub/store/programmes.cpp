// SPDX-License-Identifier: MIT
#include <sodium.h>

#include "sync/hub/store/audit.h"
#include "sync/hub/store/cells.h"
#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

namespace {

Founding foundingOf(const Row& row)
{
    return {arrayOf<32>(row.bytes(0)), row.text(1), domain::instantFromMs(row.number(2)), idOf(row.bytes(3)),
        arrayOf<16>(row.bytes(4))};
}

ProgrammeRow programmeOf(const Row& row)
{
    return {idOf(row.bytes(0)), row.text(1), arrayOf<16>(row.bytes(2)), row.number(3), row.number(4)};
}

constexpr const char* selectFounding =
    "SELECT key, name, until_ms, programme, stream FROM founding WHERE key=$1";
constexpr const char* selectProgramme = "SELECT programme, name, root, epoch, head FROM programme";

} // namespace

Result<Done> HubStore::ping()
{
    return m_engine->read([](Session& session) { session.run("SELECT 1"); });
}

Result<std::string> HubStore::secret()
{
    std::string fresh(32, '\0');
    randombytes_buf(fresh.data(), fresh.size());
    std::string held;
    const auto done = m_engine->write([&](Session& session) {
        session.run("INSERT INTO hub (name, value) VALUES ('secret', $1) ON CONFLICT (name) DO NOTHING",
            {Blob{fresh}});
        for (const Row& row : session.run("SELECT value FROM hub WHERE name='secret'")) held = row.bytes(0);
    });
    if (!done) return done.error();
    return held;
}

Result<Done> HubStore::addFounding(const Founding& founding)
{
    return m_engine->write([&](Session& session) {
        session.run(
            "INSERT INTO founding (key, name, until_ms, programme, stream) VALUES ($1, $2, $3, $4, $5)",
            {cell(founding.key), founding.name, cell(founding.until), Blob{}, Blob{}});
    });
}

Result<std::optional<Founding>> HubStore::founding(const PublicKey& key)
{
    std::optional<Founding> found;
    const auto done = m_engine->read([&](Session& session) {
        for (const Row& row : session.run(selectFounding, {cell(key)})) found = foundingOf(row);
    });
    if (!done) return done.error();
    return found;
}

Result<HubStore::Founded> HubStore::found(const Founding& founding, const PublicKey& streamKey, Instant now)
{
    Founded outcome = Founded::Used;
    const auto done = m_engine->write([&](Session& session) {
        outcome = Founded::Used;
        const Rows rows =
            session.run(std::string(selectFounding) + std::string(session.forUpdate()), {cell(founding.key)});
        if (rows.empty()) return;
        const Founding held = foundingOf(rows.front());
        if (!held.programme.isNil()) {
            const bool isSame = held.programme == founding.programme && held.stream == founding.stream;
            outcome = isSame ? Founded::Again : Founded::Used;
            return;
        }
        const Rows made = session.run("INSERT INTO programme (programme, name, root, epoch, head, made_ms)"
                                      " VALUES ($1, $2, $3, $4, 0, $4) ON CONFLICT (programme) DO NOTHING"
                                      " RETURNING epoch",
            {cell(founding.programme), founding.name, cell(founding.stream), cell(now)});
        outcome = made.empty() ? Founded::Taken : Founded::New;
        if (made.empty()) return;
        session.run("UPDATE founding SET programme=$1, stream=$2 WHERE key=$3",
            {cell(founding.programme), cell(founding.stream), cell(founding.key)});
        session.run("INSERT INTO stream (programme, stream, key, last, forked) VALUES ($1, $2, $3, 0, 0)",
            {cell(founding.programme), cell(founding.stream), cell(streamKey)});
        note(session, founding.programme, founding.stream, "founded", founding.name, now);
    });
    if (!done) return done.error();
    return outcome;
}

Result<std::optional<ProgrammeRow>> HubStore::programme(const Uuid& programme)
{
    std::optional<ProgrammeRow> found;
    const auto done = m_engine->read([&](Session& session) {
        for (const Row& row :
            session.run(std::string(selectProgramme) + " WHERE programme=$1", {cell(programme)}))
            found = programmeOf(row);
    });
    if (!done) return done.error();
    return found;
}

Result<std::vector<ProgrammeRow>> HubStore::programmes()
{
    std::vector<ProgrammeRow> found;
    const auto done = m_engine->read([&](Session& session) {
        found.clear();
        for (const Row& row : session.run(std::string(selectProgramme) + " ORDER BY programme"))
            found.push_back(programmeOf(row));
    });
    if (!done) return done.error();
    return found;
}

Result<std::vector<Uuid>> HubStore::programmesInviting(const PublicKey& key)
{
    std::vector<Uuid> found;
    const auto done = m_engine->read([&](Session& session) {
        found.clear();
        for (const Row& row : session.run(
                 "SELECT programme FROM invitation WHERE key=$1 ORDER BY programme LIMIT 16", {cell(key)}))
            found.push_back(idOf(row.bytes(0)));
    });
    if (!done) return done.error();
    return found;
}

Result<Done> HubStore::audit(const Uuid& programme, const StreamId& who, const std::string& what,
    const std::string& detail, Instant now)
{
    return m_engine->write([&](Session& session) { note(session, programme, who, what, detail, now); });
}

} // namespace duskrow::hub
