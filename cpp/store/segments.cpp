// SPDX-License-Identifier: MIT
#include "store/segments.h"

#include <algorithm>

#include "domain/records/roster.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

RawJson bytesOf(const auto& bytes)
{
    return {{reinterpret_cast<const char*>(bytes.data()), bytes.size()}};
}

std::string blobIn(const SQLite::Column& column)
{
    return {static_cast<const char*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())};
}

template <std::size_t N>
std::array<std::uint8_t, N> arrayIn(const SQLite::Column& column)
{
    std::array<std::uint8_t, N> bytes{};
    const std::string blob = blobIn(column);
    if (blob.size() == N) std::copy(blob.begin(), blob.end(), bytes.begin());
    return bytes;
}

constexpr const char* rowColumns = "stream.id, first, last, hash, previous, whole";

SegmentRow rowIn(SQLite::Statement& query)
{
    return {arrayIn<16>(query.getColumn(0)), query.getColumn(1).getInt64(), query.getColumn(2).getInt64(),
        arrayIn<32>(query.getColumn(3)), arrayIn<32>(query.getColumn(4)), query.getColumn(5).getInt() != 0,
        {}, {}, {}};
}

template <typename T>
Result<std::vector<T>> rows(Reader& reader, const std::string& sql, const std::vector<Value>& binds,
    const std::function<T(SQLite::Statement&)>& make)
{
    std::vector<T> all;
    const auto done =
        reader.eachRow(sql, binds, [&](SQLite::Statement& query) { all.push_back(make(query)); });
    if (!done) return done.error();
    return all;
}

OpenDifference questionIn(SQLite::Statement& query)
{
    return {uuidOf(query.getColumn(0)), query.getColumn(1).getString(), query.getColumn(2).getString()};
}

} // namespace

Result<std::map<StreamId, StreamState>> streamStates(Reader& reader)
{
    std::map<StreamId, StreamState> states;
    const auto segments =
        reader.eachRow("SELECT stream.id, max(CASE waits WHEN 0 THEN last ELSE 0 END), max(last), "
                       "EXISTS (SELECT 1 FROM setting WHERE key = 'forked/' || lower(hex(stream.id))) "
                       "FROM segment JOIN stream ON local=stream GROUP BY stream",
            {}, [&](SQLite::Statement& query) {
                states[arrayIn<16>(query.getColumn(0))] = {query.getColumn(1).getInt64(),
                    query.getColumn(2).getInt64(), query.getColumn(3).getInt() != 0};
            });
    if (!segments) return segments.error();
    const auto widen = [&](const std::string& sql, bool isUsed) {
        return reader.eachRow(sql, {}, [&](SQLite::Statement& query) {
            StreamState& state = states[arrayIn<16>(query.getColumn(0))];
            const std::int64_t seq = query.getColumn(1).getInt64();
            state.known = std::max(state.known, seq);
            if (isUsed) state.used = std::max(state.used, seq);
        });
    };
    const auto own =
        widen("SELECT stream.id, max(seq) FROM change JOIN stream ON local=stream GROUP BY stream", true);
    if (!own) return own.error();
    if (const auto cited = widen("SELECT stream, seq FROM cited", false); !cited) return cited.error();
    return states;
}

Result<std::vector<SegmentRow>> segmentRows(Reader& reader, const std::string& withoutRoute)
{
    const std::string sql = std::string("SELECT ") + rowColumns
        + ", length(header) + length(payload) FROM segment JOIN stream ON local=stream WHERE ?1='' OR NOT "
          "EXISTS (SELECT 1 FROM passed_on "
          "WHERE "
          "segment=segment.id AND route=?1) ORDER BY segment.id";
    return rows<SegmentRow>(reader, sql, {withoutRoute}, [](SQLite::Statement& query) {
        SegmentRow row = rowIn(query);
        row.size = query.getColumn(6).getInt64();
        return row;
    });
}

Result<std::optional<SegmentRow>> segmentRow(Reader& reader, const SegmentId& id)
{
    const std::string sql = std::string("SELECT ") + rowColumns
        + ", signature, header, payload FROM segment JOIN stream ON local=stream WHERE hash=?";
    const auto found = rows<SegmentRow>(reader, sql, {bytesOf(id)}, [](SQLite::Statement& query) {
        SegmentRow row = rowIn(query);
        row.signature = blobIn(query.getColumn(6));
        row.header = blobIn(query.getColumn(7));
        row.payload = blobIn(query.getColumn(8));
        return row;
    });
    if (!found) return found.error();
    return found->empty() ? std::optional<SegmentRow>{} : std::optional(found->front());
}

Result<std::optional<SegmentRow>> lastSegment(Reader& reader, const StreamId& stream)
{
    std::optional<SegmentRow> last;
    const auto found = reader.eachRow("SELECT first, last, hash, previous FROM segment JOIN stream ON "
                                      "local=stream WHERE stream.id=? AND waits=0 ORDER BY last DESC LIMIT 1",
        {bytesOf(stream)}, [&](SQLite::Statement& query) {
            last.emplace();
            last->stream = stream;
            last->first = query.getColumn(0).getInt64();
            last->last = query.getColumn(1).getInt64();
            last->id = arrayIn<32>(query.getColumn(2));
            last->previous = arrayIn<32>(query.getColumn(3));
        });
    if (!found) return found.error();
    return last;
}

Result<Tail> unsealedTail(Reader& reader, const StreamId& own, std::int64_t most)
{
    Tail tail;
    const auto lines = reader.eachRow(
        "SELECT seq, body FROM change JOIN stream ON local=stream WHERE stream.id=? ORDER BY seq LIMIT "
            + std::to_string(most),
        {bytesOf(own)}, [&](SQLite::Statement& query) {
            const std::int64_t seq = query.getColumn(0).getInt64();
            if (tail.lines.empty()) tail.first = seq;
            // Numbers that came from elsewhere are no gap: the rest is the next tail.
            if (seq == tail.first + static_cast<std::int64_t>(tail.lines.size()))
                tail.lines.push_back(query.getColumn(1).getString());
        });
    if (!lines) return lines.error();
    // It may still wait itself, when own changes came back from elsewhere and those before them have not.
    const auto before =
        reader.eachRow("SELECT hash FROM segment JOIN stream ON local=stream WHERE stream.id=? AND "
                       "last=?2 - 1 ORDER BY waits, segment.id DESC LIMIT 1",
            {bytesOf(own), tail.first},
            [&](SQLite::Statement& query) { tail.previous = arrayIn<32>(query.getColumn(0)); });
    if (!before) return before.error();
    return tail;
}

Result<bool> isTailAsLong(Reader& reader, const StreamId& own, std::int64_t changes)
{
    // By the first and the last number: counting thousands of rows after each keep would be felt.
    bool isAsLong = false;
    const auto found = reader.eachRow(
        "SELECT (SELECT max(seq) FROM change WHERE stream=local) - (SELECT min(seq) FROM change WHERE "
        "stream=local) + 1 >= ?2 FROM stream WHERE id=?1",
        {bytesOf(own), changes},
        [&](SQLite::Statement& query) { isAsLong = query.getColumn(0).getInt() != 0; });
    if (!found) return found.error();
    return isAsLong;
}

Result<std::vector<AsideRow>> asideRows(Reader& reader)
{
    return rows<AsideRow>(reader, "SELECT hash, origin, reason, at_ms FROM kept_aside ORDER BY at_ms, hash",
        {}, [](SQLite::Statement& query) {
            return AsideRow{arrayIn<32>(query.getColumn(0)), query.getColumn(1).getString(),
                query.getColumn(2).getString(), instantFromMs(query.getColumn(3).getInt64())};
        });
}

Result<std::vector<AsideChange>> asideChanges(Reader& reader)
{
    return rows<AsideChange>(reader,
        "SELECT record, kind, change, reason FROM now_aside ORDER BY record, change", {},
        [](SQLite::Statement& query) {
            return AsideChange{uuidOf(query.getColumn(0)), query.getColumn(1).getString(),
                parseRef(query.getColumn(2).getString()).value_or(ChangeRef{}),
                query.getColumn(3).getString()};
        });
}

Result<std::vector<OpenDifference>> openDifferences(Reader& reader)
{
    return rows<OpenDifference>(
        reader, "SELECT record, kind, field FROM now_difference ORDER BY record, field", {}, questionIn);
}

Result<std::vector<OpenDifference>> staleRulings(Reader& reader)
{
    return rows<OpenDifference>(
        reader, "SELECT record, kind, '' FROM now_stale ORDER BY record", {}, questionIn);
}

namespace {

// `records` narrows what is counted to some changes; it may use ?2.
Result<HandedOver> countHandedOver(Reader& reader, const StreamId& own, const std::vector<Value>& more,
    const std::string& inTail, const std::string& inSegment)
{
    HandedOver counts;
    std::vector<Value> binds{bytesOf(own)};
    binds.insert(binds.end(), more.begin(), more.end());
    const auto tail = reader.eachRow(
        "SELECT count(*) FROM change JOIN stream ON local=stream WHERE stream.id=?1 AND " + inTail, binds,
        [&](SQLite::Statement& query) { counts.here = query.getColumn(0).getInt64(); });
    if (!tail) return tail.error();
    const auto sealed = reader.eachRow("SELECT " + inSegment
            + ", EXISTS (SELECT 1 FROM passed_on WHERE segment=segment.id), EXISTS (SELECT 1 FROM passed_on "
              "WHERE "
              "segment=segment.id AND route LIKE 'hub:%') FROM segment JOIN stream ON local=stream WHERE "
              "stream.id=?1",
        binds, [&](SQLite::Statement& query) {
            const std::int64_t changes = query.getColumn(0).getInt64();
            const bool isAtHub = query.getColumn(2).getInt() != 0;
            const bool isHandedOver = query.getColumn(1).getInt() != 0;
            (isAtHub ? counts.atHub : isHandedOver ? counts.handedOver : counts.here) += changes;
        });
    if (!sealed) return sealed.error();
    return counts;
}

} // namespace

Result<HandedOver> handedOver(Reader& reader, const StreamId& own)
{
    return countHandedOver(reader, own, {}, "1", "last - first + 1");
}

Result<HandedOver> handedOver(Reader& reader, const StreamId& own, const Uuid& record)
{
    return countHandedOver(reader, own, {formatUuid(record)}, "record=?2",
        "(SELECT count(*) FROM sealed WHERE record=?2 AND sealed.segment=segment.id)");
}

Result<std::vector<std::string>> photosNamed(Reader& reader)
{
    return rows<std::string>(reader,
        "SELECT photo FROM now_trap WHERE photo IS NOT NULL UNION SELECT photo FROM now_visit WHERE photo IS "
        "NOT NULL",
        {}, [](SQLite::Statement& query) { return query.getColumn(0).getString(); });
}

Result<Uuid> programmeOf(Reader& reader)
{
    std::optional<Uuid> programme;
    const auto found = reader.eachRow("SELECT value FROM setting WHERE key='programme'", {},
        [&](SQLite::Statement& query) { programme = parseUuid(query.getColumn(0).getString()); });
    if (!found) return found.error();
    if (!programme) return Error{ErrorCode::StoreDamaged, {reader.path()}, "programme id"};
    return *programme;
}

Result<Roster> rosterOf(Reader& reader, const Uuid& programme)
{
    std::set<StreamId> founders;
    const auto setting = reader.eachRow("SELECT value FROM setting WHERE key='founders'", {},
        [&](SQLite::Statement& query) { founders = streamsIn(query.getColumn(0).getString()); });
    if (!setting) return setting.error();
    const auto records = rows<Uuid>(reader, "SELECT record FROM now_roster", {},
        [](SQLite::Statement& query) { return uuidOf(query.getColumn(0)); });
    if (!records) return records.error();
    std::vector<Change> changes;
    for (const Uuid& record : *records) {
        auto found = reader.changesOf(record);
        if (!found) return found.error();
        changes.insert(changes.end(), std::move_iterator(found->begin()), std::move_iterator(found->end()));
    }
    return Roster::from(programme, founders, changes);
}

Result<std::optional<Folded>> foldedRecord(
    Reader& reader, const Roster& roster, const Uuid& programme, const Uuid& record)
{
    const auto changes = reader.changesOf(record);
    if (!changes) return changes.error();
    if (changes->empty()) return std::optional<Folded>{};
    const auto word = reader.changesOf(rulingId(programme, record));
    if (!word) return word.error();
    const auto ruling = rulingIn(*word, roster);
    return std::optional(fold(*changes, {&roster, ruling ? &*ruling : nullptr}));
}

std::set<StreamId> streamsIn(std::string_view text)
{
    std::set<StreamId> found;
    StreamId stream{};
    for (std::size_t at = 0; at + 32 <= text.size(); at += 33)
        if (parseHex(text.substr(at, 32), stream)) found.insert(stream);
    return found;
}

std::string textOf(const std::set<StreamId>& streams)
{
    std::string text;
    for (const StreamId& stream : streams) text += (text.empty() ? "" : " ") + formatHex(stream);
    return text;
}

} // namespace duskrow::store
