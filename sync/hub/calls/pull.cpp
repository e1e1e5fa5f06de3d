// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>
#include <sstream>

#include "sync/hub/call.h"

namespace duskrow::hub {

namespace {

constexpr std::int64_t usualPage = std::int64_t{1} << 20;
constexpr std::int64_t largestPage = std::int64_t{4} << 20;

void append(std::string& page, const std::string& segment)
{
    page += 's';
    const std::uint64_t size = segment.size();
    for (unsigned i = 0; i < 8; ++i) page += static_cast<char>(size >> (8 * i));
    page += segment;
}

std::string scopeOf(const Known& known, const StreamId& reader)
{
    const auto hash = domain::hashOf("duskrow-scope-v1" + known.roster->scopeOf(reader));
    return domain::formatHex(std::span(hash).first(16));
}

} // namespace

Response state(Hub& hub, Call& call)
{
    const auto last = hub.store.lastNumbers(call.programme);
    if (!last) return storeFailed(last.error());
    const auto own = last->find(call.stream);
    return jsonAnswer(200,
        {{"epoch", call.known.row.epoch}, {"head", call.known.row.head},
            {"next", (own == last->end() ? 0 : own->second) + 1}, {"time", domain::toMs(hub.now())}});
}

Response vectorOf(Hub& hub, Call& call)
{
    const auto last = hub.store.lastNumbers(call.programme);
    if (!last) return storeFailed(last.error());
    nlohmann::json vector = nlohmann::json::object();
    for (const auto& [stream, number] : *last)
        if (number > 0) vector[domain::formatHex(stream)] = number;
    return jsonAnswer(200, vector);
}

// Places that the asking device has from handing them over; nothing when it is no list of numbers.
std::optional<std::set<std::int64_t>> placesHad(const Call& call)
{
    std::set<std::int64_t> had;
    const auto found = call.query.find("had");
    if (found == call.query.end()) return had;
    std::istringstream list(found->second);
    for (std::string number; std::getline(list, number, '-');) {
        const auto at = numberOf(number);
        if (!at) return std::nullopt;
        had.insert(*at);
    }
    return had;
}

Response pull(Hub& hub, Call& call)
{
    const auto valueOf = [&](const std::string& name, std::int64_t otherwise) -> std::optional<std::int64_t> {
        const auto found = call.query.find(name);
        return found == call.query.end() ? std::optional(otherwise) : numberOf(found->second);
    };
    const auto after = valueOf("after", 0);
    const auto most = valueOf("most", usualPage);
    const auto had = placesHad(call);
    if (!after || !most || !had) return refusal(400, "query", "after, most and had are whole numbers.");
    const auto stored =
        hub.store.page(call.programme, *after, std::clamp(*most, std::int64_t{1}, largestPage));
    if (!stored) return storeFailed(stored.error());

    Response response;
    const bool readsAll = call.known.roster->isCoordinator(call.stream);
    std::int64_t next = *after;
    for (const StoredSegment& segment : *stored) {
        next = segment.at;
        if (had->contains(segment.at)) continue;
        const auto form = readsAll ? Result<std::string>(segment.bytes)
                                   : hub.forms.of(call.known, call.stream, segment.bytes);
        // A segment that was good when it came and is not now: the store is damaged. Nothing unsound is sent.
        if (!form) return storeFailed(form.error());
        if (!form->empty()) append(response.body, *form);
    }
    // Whoever stored since then stored more than this page; asking again finds it.
    const std::int64_t head = std::max(call.known.row.head, next);
    response.headers = {{"Cache-Control", "private, no-cache"}, {"Duskrow-Next", std::to_string(next)},
        {"Duskrow-Head", std::to_string(std::max(head, std::int64_t{0}))},
        {"Duskrow-Epoch", std::to_string(call.known.row.epoch)},
        {"Duskrow-Scope", scopeOf(call.known, call.stream)}};
    if (stored->empty()) {
        response.status = 204;
        return response;
    }
    const auto hash = domain::hashOf(response.body);
    const std::string tag = '"' + domain::formatHex(std::span(hash).first(16)) + '"';
    response.headers.emplace_back("ETag", tag);
    if (call.request.header("if-none-match") == tag) {
        response.status = 304;
        response.body.clear();
        return response;
    }
    response.type = "application/octet-stream";
    hub.metrics.countSent(static_cast<std::int64_t>(response.body.size()));
    return response;
}

} // namespace duskrow::hub
