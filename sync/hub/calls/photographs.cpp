// SPDX-License-Identifier: MIT
#include "sync/hub/call.h"

// Photographs, named by the hash of their content; who knows the name has read the record that shows it.
namespace duskrow::hub {

namespace {

constexpr std::int64_t mostPhotographBytes = std::int64_t{16} << 20;

struct Range {
    std::int64_t first = 0;
    std::int64_t size = 0; // of the whole
};

// "bytes a-b/n", or nothing at all for the whole.
std::optional<Range> rangeOf(const Request& request)
{
    const auto size = static_cast<std::int64_t>(request.body.size());
    const std::string text = request.header("content-range");
    if (text.empty()) return Range{0, size};
    const auto dash = text.find('-');
    const auto slash = text.find('/');
    if (!text.starts_with("bytes ") || dash == std::string::npos || slash == std::string::npos
        || slash < dash)
        return std::nullopt;
    const std::string_view view(text);
    const auto first = numberOf(view.substr(6, dash - 6));
    const auto last = numberOf(view.substr(dash + 1, slash - dash - 1));
    const auto whole = numberOf(view.substr(slash + 1));
    if (!first || !last || !whole || *last - *first + 1 != size || *last >= *whole) return std::nullopt;
    return Range{*first, *whole};
}

Response held(int status, const PhotographState& state)
{
    Response response;
    response.status = status;
    response.headers = {{"Duskrow-Held", std::to_string(state.held)}};
    return response;
}

Response noSuchPhotograph()
{
    return refusal(404, "unknown", "There is no such photograph here.");
}

} // namespace

Response headPhotograph(Hub& hub, Call& call)
{
    const auto name = hexOf<32>(call.parts[1]);
    if (!name) return noSuchPhotograph();
    const auto state = hub.store.photograph(call.programme, *name);
    if (!state) return storeFailed(state.error());
    return held(state->isWhole ? 200 : 404, *state);
}

Response getPhotograph(Hub& hub, Call& call)
{
    const auto name = hexOf<32>(call.parts[1]);
    if (!name) return noSuchPhotograph();
    const auto state = hub.store.photograph(call.programme, *name);
    if (!state) return storeFailed(state.error());
    if (!state->isWhole) return noSuchPhotograph();
    auto bytes = hub.store.photographBytes(call.programme, *name);
    if (!bytes) return storeFailed(bytes.error());
    return {200, "application/octet-stream", std::move(*bytes), {{"Cache-Control", "private, immutable"}}};
}

Response putPhotograph(Hub& hub, Call& call)
{
    const auto name = hexOf<32>(call.parts[1]);
    const auto range = rangeOf(call.request);
    if (!name || !range || call.request.body.empty())
        return refusal(400, "range", "Name, Content-Range and body do not agree.");
    if (range->size > mostPhotographBytes)
        return refusal(413, "too-large", "A photograph has at most 16 MiB.");
    const auto state =
        hub.store.putPart(call.programme, *name, range->first, range->size, call.request.body, hub.now());
    if (!state) return storeFailed(state.error());
    if (state->isWhole) return held(200, *state);
    if (state->size != range->size) return refusal(422, "size", "It was begun with another size.");
    if (state->held < state->size) return held(202, *state);
    const auto bytes = hub.store.photographBytes(call.programme, *name);
    if (!bytes) return storeFailed(bytes.error());
    if (domain::hashOf(*bytes) != *name) {
        const auto forgotten = hub.store.forgetPhotograph(call.programme, *name);
        if (!forgotten) return storeFailed(forgotten.error());
        return refusal(422, "hash", "The content is not what its name says. All of it was forgotten.");
    }
    const auto finished = hub.store.finishPhotograph(call.programme, *name);
    if (!finished) return storeFailed(finished.error());
    return held(201, *state);
}

} // namespace duskrow::hub
