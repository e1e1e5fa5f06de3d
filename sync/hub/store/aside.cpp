// SPDX-License-Identifier: MIT
#include "sync/hub/store/audit.h"
#include "sync/hub/store/cells.h"
#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

namespace {

AsideSegment asideOf(const Row& row)
{
    AsideSegment segment;
    segment.file = arrayOf<32>(row.bytes(0));
    segment.stream = arrayOf<16>(row.bytes(1));
    segment.first = row.number(2);
    segment.last = row.number(3);
    segment.id = arrayOf<32>(row.bytes(4));
    segment.reason = row.text(5);
    segment.pushedBy = arrayOf<16>(row.bytes(6));
    segment.received = domain::instantFromMs(row.number(7));
    return segment;
}

constexpr const char* columns = "file, stream, first, last, id, reason, pushed_by, received_ms";

} // namespace

Result<bool> HubStore::putAside(const Uuid& programme, const AsideSegment& segment)
{
    bool isKept = false;
    const auto done = m_engine->write([&](Session& session) {
        isKept = true;
        const Rows held = session.run(
            "SELECT first FROM aside WHERE programme=$1 AND file=$2", {cell(programme), cell(segment.file)});
        if (!held.empty()) return;
        const Rows sum = session.run(
            "SELECT CAST(coalesce(sum(length(bytes)), 0) AS BIGINT) FROM aside WHERE programme=$1",
            {cell(programme)});
        const auto size = static_cast<std::int64_t>(segment.bytes.size());
        isKept = !sum.empty() && sum.front().number(0) + size <= mostAsideBytes;
        if (!isKept) return;
        session.run("INSERT INTO aside (programme, file, stream, first, last, id, reason, pushed_by, "
                    "received_ms, bytes)"
                    " VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)",
            {cell(programme), cell(segment.file), cell(segment.stream), segment.first, segment.last,
                cell(segment.id), segment.reason, cell(segment.pushedBy), cell(segment.received),
                Blob{segment.bytes}});
        note(session, programme, segment.pushedBy, "kept aside",
            segment.reason + " " + domain::formatHex(segment.stream) + " " + std::to_string(segment.first),
            segment.received);
    });
    if (!done) return done.error();
    return isKept;
}

Result<std::vector<AsideSegment>> HubStore::aside(const Uuid& programme)
{
    std::vector<AsideSegment> found;
    const auto done = m_engine->read([&](Session& session) {
        found.clear();
        for (const Row& row : session.run("SELECT " + std::string(columns)
                     + " FROM aside WHERE programme=$1 ORDER BY stream, first, received_ms LIMIT 5000",
                 {cell(programme)}))
            found.push_back(asideOf(row));
    });
    if (!done) return done.error();
    return found;
}

Result<std::optional<AsideSegment>> HubStore::asideWithBytes(const Uuid& programme, const Hash& file)
{
    std::optional<AsideSegment> found;
    const auto done = m_engine->read([&](Session& session) {
        for (const Row& row : session.run(
                 "SELECT " + std::string(columns) + ", bytes FROM aside WHERE programme=$1 AND file=$2",
                 {cell(programme), cell(file)})) {
            found = asideOf(row);
            found->bytes = row.bytes(8);
        }
    });
    if (!done) return done.error();
    return found;
}

Result<Done> HubStore::takeFromAside(const Uuid& programme, const Hash& file)
{
    return m_engine->write([&](Session& session) {
        session.run("DELETE FROM aside WHERE programme=$1 AND file=$2", {cell(programme), cell(file)});
    });
}

} // namespace duskrow::hub
