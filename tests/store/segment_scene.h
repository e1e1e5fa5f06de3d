// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <zstd.h>

#include "domain/roster_scene.h"
#include "store/check.h"
#include "store/segments.h"
#include "store/store_scene.h"

namespace duskrow::tests {

inline std::string packed(const std::string& text)
{
    std::string bytes(ZSTD_compressBound(text.size()), '\0');
    bytes.resize(ZSTD_compress(bytes.data(), bytes.size(), text.data(), text.size(), 1));
    return bytes;
}

// A segment as it comes out of the codec, made of the bytes of changes; signature and header are made up.
// With `hidden` some lines are left out of it: its id stays the same.
inline store::IncomingSegment segmentOf(const domain::StreamId& stream, std::int64_t first,
    const std::vector<std::string>& lines, const store::SegmentId& previous = {},
    const std::function<bool(std::size_t)>& hidden = {})
{
    store::IncomingSegment segment;
    std::string text;
    std::string shown;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        text += lines[i] + '\n';
        const bool isHidden = hidden && hidden(i);
        auto change = domain::readChange(lines[i]);
        segment.lines.push_back({isHidden ? '-' + domain::formatHex(domain::hashOf(lines[i])) : lines[i],
            isHidden || !change ? std::optional<domain::Change>{} : std::optional(*change)});
        shown += segment.lines.back().bytes + '\n';
        segment.row.isWhole = segment.row.isWhole && !isHidden;
        if (!change) continue;
        for (const auto& [field, set] : change->fields)
            for (const domain::ChangeRef& ref : set.base)
                if (ref.stream != stream)
                    segment.cites[ref.stream] = std::max(segment.cites[ref.stream], ref.seq);
    }
    segment.row.stream = stream;
    segment.row.first = first;
    segment.row.last = first + static_cast<std::int64_t>(lines.size()) - 1;
    segment.row.previous = previous;
    segment.row.header = "made up";
    segment.row.signature = std::string(64, 's');
    segment.row.payload = packed(shown);
    segment.row.id = domain::hashOf(text + domain::formatHex(previous) + std::to_string(first));
    return segment;
}

inline std::vector<std::string> bytesOf(const std::vector<domain::Change>& changes)
{
    std::vector<std::string> lines;
    for (const domain::Change& change : changes) lines.push_back(domain::canonicalJson(change));
    return lines;
}

// The changes of one stream, cut into segments of these sizes, each citing the one before it.
inline std::vector<store::IncomingSegment> chainOf(
    const std::vector<domain::Change>& changes, const std::vector<std::size_t>& sizes)
{
    std::vector<store::IncomingSegment> chain;
    store::SegmentId previous{};
    std::size_t at = 0;
    for (std::size_t i = 0; at < changes.size(); ++i) {
        const std::size_t end = std::min(changes.size(), at + sizes[i % sizes.size()]);
        const std::vector<domain::Change> part(changes.begin() + static_cast<std::ptrdiff_t>(at),
            changes.begin() + static_cast<std::ptrdiff_t>(end));
        chain.push_back(segmentOf(part.front().ref.stream, part.front().ref.seq, bytesOf(part), previous));
        previous = chain.back().row.id;
        at = end;
    }
    return chain;
}

// Every current table of a store, as text.
inline std::string dumpOf(const StoreScene& scene)
{
    SQLite::Database database = scene.raw();
    return store::CurrentTables(database).dump();
}

} // namespace duskrow::tests
