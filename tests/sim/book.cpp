// SPDX-License-Identifier: MIT
#include "sim/book.h"

#include "domain/log/packing.h"
#include "sim/random.h"
#include "store/reader.h"
#include "sync/segment/segment.h"

namespace duskrow::sim {

using namespace duskrow::domain;

int Book::write(const std::string& bytes)
{
    const auto found = m_known.find(bytes);
    if (found != m_known.end()) return found->second;
    auto change = readCanonicalChange(bytes);
    if (!change) broken("a change was written that cannot be read: " + bytes);
    m_changes.push_back(std::move(*change));
    m_known.emplace(bytes, size() - 1);
    m_under[m_changes.back().ref].push_back(size() - 1);
    return size() - 1;
}

std::optional<int> Book::find(const std::string& bytes) const
{
    const auto found = m_known.find(bytes);
    return found == m_known.end() ? std::nullopt : std::optional(found->second);
}

const std::vector<int>& Book::under(const ChangeRef& ref) const
{
    static const std::vector<int> none;
    const auto found = m_under.find(ref);
    return found == m_under.end() ? none : found->second;
}

Changes Book::changes(const Lines& lines) const
{
    Changes all;
    for (const int line : lines) all.push_back(&at(line));
    return all;
}

namespace {

std::string blob(const SQLite::Column& column)
{
    return {static_cast<const char*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())};
}

int known(Book& book, const std::string& bytes, const std::set<StreamId>& own, bool mayBeNew)
{
    if (const auto line = book.find(bytes)) return *line;
    const auto change = readCanonicalChange(bytes);
    // A restored phone says by itself whom it goes on from, when it is opened.
    const bool isGoingOn = change && change->kind == "device" && change->fields.contains("follows_key");
    if (isGoingOn || (mayBeNew && change && own.contains(change->ref.stream))) return book.write(bytes);
    broken("a change is in a log that nobody wrote: " + bytes);
}

std::vector<int> payloadLines(
    Book& book, const std::string& payload, const std::set<StreamId>& own, bool mayBeNew)
{
    const auto text = unpack(payload, std::size_t{9} << 20);
    if (!text) broken("a segment in a log does not unpack");
    std::vector<int> lines;
    std::size_t from = 0;
    while (from < text->size()) {
        const std::size_t to = std::min(text->find('\n', from), text->size());
        if ((*text)[from] == '{') lines.push_back(known(book, text->substr(from, to - from), own, mayBeNew));
        from = to + 1;
    }
    return lines;
}

} // namespace

Held heldBy(store::Reader& reader, Book& book, const std::set<StreamId>& own, bool mayBeNew)
{
    struct Found {
        std::int64_t id;
        std::string hash;
        bool isWhole;
        bool waits;
    };
    Held held;
    std::vector<Found> segments;
    const auto each = [&](const std::string& sql, const std::vector<Value>& binds,
                          const std::function<void(SQLite::Statement&)>& take) {
        const auto done = reader.eachRow(sql, binds, take);
        if (!done) broken("a log cannot be read: " + done.error().detail);
    };
    each("SELECT id, hash, whole, waits FROM segment", {}, [&](SQLite::Statement& q) {
        segments.push_back({q.getColumn(0).getInt64(), blob(q.getColumn(1)), q.getColumn(2).getInt() != 0,
            q.getColumn(3).getInt() != 0});
    });
    for (const Found& segment : segments) {
        held.segments.insert(segment.hash);
        if (book.unread.contains(segment.hash)) continue;
        const auto cached = segment.isWhole ? book.inSegment.find(segment.hash) : book.inSegment.end();
        std::vector<int> lines;
        if (cached != book.inSegment.end())
            lines = cached->second;
        else {
            each("SELECT payload FROM segment WHERE id=?", {segment.id}, [&](SQLite::Statement& q) {
                lines = payloadLines(book, blob(q.getColumn(0)), own, mayBeNew);
            });
            if (segment.isWhole) book.inSegment[segment.hash] = lines;
        }
        (segment.waits ? held.waiting : held.used).insert(lines.begin(), lines.end());
        if (segment.isWhole) held.whole.insert(lines.begin(), lines.end());
    }
    each("SELECT body FROM change", {}, [&](SQLite::Statement& q) {
        const int line = known(book, q.getColumn(0).getString(), own, mayBeNew);
        held.used.insert(line);
        held.whole.insert(line);
    });
    each("SELECT hash FROM kept_aside", {},
        [&](SQLite::Statement& q) { held.aside.insert(blob(q.getColumn(0))); });
    return held;
}

std::vector<int> linesIn(const std::string& bytes, const Book& book, bool* isAllKnown)
{
    if (isAllKnown != nullptr) *isAllKnown = true;
    if (const auto seen = book.inBytes.find(bytes); seen != book.inBytes.end()) return seen->second;
    auto head = sync::readHead(bytes);
    if (!head) return {};
    const auto segment = sync::openSegment(std::move(*head));
    if (!segment) return {};
    std::vector<int> lines;
    bool isKnown = true;
    for (const sync::SegmentLine& line : segment->lines) {
        const auto found = line.bytes.empty() ? std::nullopt : book.find(line.bytes);
        if (found) lines.push_back(*found);
        isKnown = isKnown && (found || line.bytes.empty());
    }
    if (isKnown) book.inBytes.emplace(bytes, lines);
    if (isAllKnown != nullptr) *isAllKnown = isKnown;
    return lines;
}

} // namespace duskrow::sim
