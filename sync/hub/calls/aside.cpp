// SPDX-License-Identifier: MIT
#include "sync/hub/call.h"

// What the hub keeps aside, for coordinators to look at.
namespace duskrow::hub {

namespace {

Response coordinatorsOnly()
{
    return refusal(403, "role", "Only coordinators see what is kept aside.");
}

} // namespace

Response listAside(Hub& hub, Call& call)
{
    if (!call.known.roster->isCoordinator(call.stream)) return coordinatorsOnly();
    const auto list = hub.store.aside(call.programme);
    if (!list) return storeFailed(list.error());
    nlohmann::json rows = nlohmann::json::array();
    for (const AsideSegment& segment : *list)
        rows.push_back({{"file", domain::formatHex(segment.file)}, {"first", segment.first},
            {"id", domain::formatHex(segment.id)}, {"last", segment.last},
            {"pushed_by", domain::formatHex(segment.pushedBy)}, {"reason", segment.reason},
            {"stream", domain::formatHex(segment.stream)}, {"time", domain::toMs(segment.received)}});
    return jsonAnswer(200, rows);
}

Response getAside(Hub& hub, Call& call)
{
    if (!call.known.roster->isCoordinator(call.stream)) return coordinatorsOnly();
    const auto file = hexOf<32>(call.parts[1]);
    const auto segment = file ? hub.store.asideWithBytes(call.programme, *file)
                              : Result<std::optional<AsideSegment>>(std::nullopt);
    if (!segment) return storeFailed(segment.error());
    if (!*segment) return refusal(404, "unknown", "Nothing of that name is kept aside.");
    return {200, "application/octet-stream", (*segment)->bytes, {}};
}

} // namespace duskrow::hub
