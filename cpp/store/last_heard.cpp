// SPDX-License-Identifier: MIT
#include "store/last_heard.h"

#include <algorithm>

namespace duskrow::store {

using namespace duskrow::domain;

Result<std::map<StreamId, Instant>> lastHeard(Reader& reader)
{
    std::map<StreamId, Instant> heard;
    const auto done = reader.eachRow(
        "SELECT stream.id, max(json_extract(CAST(header AS TEXT), '$.at_ms[1]')) FROM segment "
        "JOIN stream ON local=stream WHERE waits=0 GROUP BY stream",
        {}, [&](SQLite::Statement& query) {
            const SQLite::Column id = query.getColumn(0);
            StreamId stream{};
            const auto* bytes = static_cast<const std::uint8_t*>(id.getBlob());
            std::copy_n(bytes, std::min<std::size_t>(stream.size(), static_cast<std::size_t>(id.getBytes())),
                stream.begin());
            heard[stream] = instantFromMs(query.getColumn(1).getInt64());
        });
    if (!done) return done.error();
    return heard;
}

} // namespace duskrow::store
