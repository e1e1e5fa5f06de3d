// SPDX-License-Identifier: MIT
#include "sync/hub/store/audit.h"

#include <sodium.h>

#include "sync/hub/store/cells.h"

namespace duskrow::hub {

void note(Session& session, const Uuid& programme, const StreamId& who, const std::string& what,
    const std::string& detail, Instant now)
{
    std::array<std::uint8_t, 16> id{};
    randombytes_buf(id.data(), id.size());
    session.run(
        "INSERT INTO audit (programme, at_ms, id, stream, what, detail) VALUES ($1, $2, $3, $4, $5, $6)",
        {cell(programme), cell(now), cell(id), cell(who), what, detail});
}

} // namespace duskrow::hub
