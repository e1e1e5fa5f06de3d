// SPDX-License-Identifier: MIT
#include "sync/hub/store/cells.h"
#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

Result<bool> HubStore::putPublication(const Uuid& programme, const Publication& file)
{
    bool hasRoom = false;
    const auto done = m_engine->write([&](Session& session) {
        const Rows held = session.run(
            "SELECT COUNT(*) FROM publication WHERE programme=$1 AND name<>$2", {cell(programme), file.name});
        hasRoom = held.front().number(0) < mostPublications;
        if (!hasRoom) return;
        session.run(
            "INSERT INTO publication (programme, name, hash, put_by, put_ms, bytes)"
            " VALUES ($1, $2, $3, $4, $5, $6) ON CONFLICT (programme, name) DO UPDATE SET"
            " hash=excluded.hash, put_by=excluded.put_by, put_ms=excluded.put_ms, bytes=excluded.bytes",
            {cell(programme), file.name, cell(file.hash), cell(file.putBy), cell(file.put),
                Blob{file.bytes}});
    });
    if (!done) return done.error();
    return hasRoom;
}

Result<std::map<std::string, Hash>> HubStore::publications(const Uuid& programme)
{
    std::map<std::string, Hash> files;
    const auto done = m_engine->read([&](Session& session) {
        files.clear();
        for (const Row& row :
            session.run("SELECT name, hash FROM publication WHERE programme=$1", {cell(programme)}))
            files[row.text(0)] = arrayOf<32>(row.bytes(1));
    });
    if (!done) return done.error();
    return files;
}

Result<std::optional<Publication>> HubStore::publication(const Uuid& programme, const std::string& name)
{
    std::optional<Publication> file;
    const auto done = m_engine->read([&](Session& session) {
        file.reset();
        for (const Row& row : session.run("SELECT hash, put_by, put_ms, bytes FROM publication"
                                          " WHERE programme=$1 AND name=$2",
                 {cell(programme), name}))
            file = Publication{name, arrayOf<32>(row.bytes(0)), arrayOf<16>(row.bytes(1)),
                domain::instantFromMs(row.number(2)), row.bytes(3)};
    });
    if (!done) return done.error();
    return file;
}

Result<std::vector<ProgrammeRow>> HubStore::publishing()
{
    std::vector<ProgrammeRow> programmes;
    const auto done = m_engine->read([&](Session& session) {
        programmes.clear();
        for (const Row& row : session.run("SELECT programme, name FROM programme WHERE programme IN"
                                          " (SELECT programme FROM publication) ORDER BY name"))
            programmes.push_back({idOf(row.bytes(0)), row.text(1), {}, 0, 0});
    });
    if (!done) return done.error();
    return programmes;
}

} // namespace duskrow::hub
