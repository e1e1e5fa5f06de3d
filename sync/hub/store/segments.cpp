// SPDX-License-Identifier: MIT
#include "sync/hub/store/audit.h"
#include "sync/hub/store/cells.h"
#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

namespace {

constexpr std::int64_t mostInPage = 500;

std::optional<Receipt> receiptOf(Session& session, const Uuid& programme, const Arrival& arrival)
{
    const auto& header = arrival.header;
    const Rows rows = session.run("SELECT at, received_ms FROM segment"
                                  " WHERE programme=$1 AND stream=$2 AND first=$3 AND id=$4",
        {cell(programme), cell(header.stream), header.first, cell(arrival.id)});
    if (rows.empty()) return std::nullopt;
    return Receipt{rows.front().number(0), arrival.id, header.last, header.stream,
        domain::instantFromMs(rows.front().number(1))};
}

void insert(Session& session, const Uuid& programme, const Arrival& arrival, std::int64_t at)
{
    const auto& header = arrival.header;
    session.run("INSERT INTO segment (programme, at, stream, first, last, id, pushed_by, received_ms, bytes)"
                " VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)",
        {cell(programme), at, cell(header.stream), header.first, header.last, cell(arrival.id),
            cell(arrival.pushedBy), cell(arrival.now), Blob{arrival.bytes}});
    for (const auto& [n, line] : arrival.facts)
        session.run("INSERT INTO fact (programme, at, n, line) VALUES ($1, $2, $3, $4)",
            {cell(programme), at, n, Blob{line}});
    for (const PublicKey& key : arrival.invitations)
        session.run(
            "INSERT INTO invitation (key, programme) VALUES ($1, $2) ON CONFLICT (key, programme) DO NOTHING",
            {cell(key), cell(programme)});
    session.run("INSERT INTO stream (programme, stream, key, last, forked) VALUES ($1, $2, $3, $4, $5)"
                " ON CONFLICT (programme, stream) DO UPDATE SET last=$4, forked=$5",
        {cell(programme), cell(header.stream), cell(header.key), header.last, std::int64_t{0}});
}

} // namespace

Result<Placed> HubStore::place(const Uuid& programme, const Arrival& arrival)
{
    Placed placed;
    const auto& header = arrival.header;
    const std::string group(programme.bytes.begin(), programme.bytes.end());
    const auto done = m_engine->write(
        [&](Session& session) {
            placed = {};
            // Taking the programme's row first lets one segment after another in, whichever hub they came to.
            const Rows head = session.run(
                "SELECT head FROM programme WHERE programme=$1" + std::string(session.forUpdate()),
                {cell(programme)});
            if (head.empty()) return;
            if (auto receipt = receiptOf(session, programme, arrival)) {
                placed = {Outcome::Had, *receipt, 0};
                return;
            }
            const Rows stream =
                session.run("SELECT last, forked FROM stream WHERE programme=$1 AND stream=$2",
                    {cell(programme), cell(header.stream)});
            const std::int64_t last = stream.empty() ? 0 : stream.front().number(0);
            placed.next = last + 1;
            if (header.first > last + 1) return;
            const bool comesTwice = header.first <= last;
            if (comesTwice && arrival.comparedAt != last) {
                placed.outcome = Outcome::Compare;
                return;
            }
            const std::int64_t at = head.front().number(0) + 1;
            insert(session, programme, arrival, at);
            const bool isForked = arrival.isFork || (!stream.empty() && stream.front().number(1) != 0);
            session.run("UPDATE stream SET last=$1, forked=$2 WHERE programme=$3 AND stream=$4",
                {std::max(last, header.last), std::int64_t{isForked}, cell(programme), cell(header.stream)});
            session.run("UPDATE programme SET head=$1 WHERE programme=$2", {at, cell(programme)});
            if (arrival.isFork)
                note(session, programme, arrival.pushedBy, "fork", domain::formatHex(header.stream),
                    arrival.now);
            placed = {Outcome::Stored, {at, arrival.id, header.last, header.stream, arrival.now}, 0};
        },
        group);
    if (!done) return done.error();
    return placed;
}

Result<std::vector<StoredSegment>> HubStore::page(
    const Uuid& programme, std::int64_t after, std::int64_t most)
{
    std::vector<StoredSegment> page;
    const auto done = m_engine->read([&](Session& session) {
        page.clear();
        std::int64_t bytes = 0;
        for (const Row& size : session.run(
                 "SELECT at, length(bytes) FROM segment WHERE programme=$1 AND at>$2 ORDER BY at LIMIT $3",
                 {cell(programme), after, mostInPage})) {
            bytes += size.number(1);
            if (!page.empty() && bytes > most) break;
            const Rows found = session.run(
                "SELECT bytes FROM segment WHERE programme=$1 AND at=$2", {cell(programme), size.number(0)});
            if (found.empty()) break;
            page.push_back({size.number(0), found.front().bytes(0)});
        }
    });
    if (!done) return done.error();
    return page;
}

Result<std::vector<StoredSegment>> HubStore::overlapping(
    const Uuid& programme, const StreamId& stream, std::int64_t first, std::int64_t last)
{
    std::vector<StoredSegment> found;
    const auto done = m_engine->read([&](Session& session) {
        found.clear();
        for (const Row& row : session.run("SELECT at, bytes FROM segment WHERE programme=$1 AND stream=$2"
                                          " AND first<=$3 AND last>=$4 ORDER BY at",
                 {cell(programme), cell(stream), last, first}))
            found.push_back({row.number(0), row.bytes(1)});
    });
    if (!done) return done.error();
    return found;
}

Result<std::map<StreamId, std::int64_t>> HubStore::lastNumbers(const Uuid& programme)
{
    std::map<StreamId, std::int64_t> last;
    const auto done = m_engine->read([&](Session& session) {
        last.clear();
        for (const Row& row :
            session.run("SELECT stream, last FROM stream WHERE programme=$1", {cell(programme)}))
            last.emplace(arrayOf<16>(row.bytes(0)), row.number(1));
    });
    if (!done) return done.error();
    return last;
}

Result<Facts> HubStore::factsAfter(const Uuid& programme, std::int64_t at)
{
    Facts facts;
    const auto done = m_engine->read([&](Session& session) {
        facts = {};
        const Rows head = session.run("SELECT head FROM programme WHERE programme=$1", {cell(programme)});
        if (!head.empty()) facts.head = head.front().number(0);
        for (const Row& row : session.run(
                 "SELECT line FROM fact WHERE programme=$1 AND at>$2 ORDER BY at, n", {cell(programme), at}))
            facts.lines.push_back(row.bytes(0));
    });
    if (!done) return done.error();
    return facts;
}

} // namespace duskrow::hub
