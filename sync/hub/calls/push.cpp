// SPDX-License-Identifier: MIT
#include "sync/hub/ingest.h"

namespace duskrow::hub {

namespace {

struct Name {
    StreamId stream{};
    std::int64_t first = 0;
    std::int64_t last = 0;
    Hash id{};
};

// "<stream>" and "<first>-<last>-<id>"
std::optional<Name> nameOf(const std::string& stream, const std::string& rest)
{
    const auto one = rest.find('-');
    const auto two = one == std::string::npos ? one : rest.find('-', one + 1);
    if (two == std::string::npos) return std::nullopt;
    const std::string_view text(rest);
    const auto known = hexOf<16>(stream);
    const auto first = numberOf(text.substr(0, one));
    const auto last = numberOf(text.substr(one + 1, two - one - 1));
    const auto id = hexOf<32>(text.substr(two + 1));
    if (!known || !first || !last || !id) return std::nullopt;
    return Name{*known, *first, *last, *id};
}

Response outcome(Hub& hub, Call& call, const Taken& taken)
{
    call.remark = taken.reason;
    const bool isRosterNew = taken.how == Taken::How::Stored && taken.roster > 0;
    if (isRosterNew) weighAgain(hub, call.programme);
    return answerOf(taken);
}

} // namespace

Response push(Hub& hub, Call& call)
{
    if (call.request.header("content-type") != "application/octet-stream")
        return refusal(415, "type", "A segment is application/octet-stream.");
    const auto name = nameOf(call.parts[1], call.parts[2]);
    if (!name) return refusal(400, "name", "The path names no segment.");
    auto head = sync::readHead(call.request.body);
    if (!head) return refusalOf(head.error());
    const auto& header = head->header;
    if (header.programme != call.programme || header.stream != name->stream || header.first != name->first
        || header.last != name->last || head->id != name->id)
        return refusal(400, "name", "The segment is another one than the path names.");
    if (head->form != sync::Form::Whole) return refusal(422, "partial", "Only whole segments are taken in.");
    return outcome(hub, call, ingest(hub, call.known, std::move(*head), call.stream));
}

Response join(Hub& hub, Call& call)
{
    if (const auto refused = tooManyWrong(hub, call)) return *refused;
    if (call.request.header("content-type") != "application/octet-stream")
        return refusal(415, "type", "A segment is application/octet-stream.");
    auto head = sync::readHead(call.request.body);
    if (!head) return refusalOf(head.error());
    if (head->header.programme != call.programme)
        return refusal(400, "programme", "The segment belongs to another programme.");
    if (head->form != sync::Form::Whole || head->header.first != 1)
        return refusal(422, "claim", "A claim is the first change of its stream.");
    call.stream = head->header.stream;
    const Taken taken = ingestClaim(hub, call.known, std::move(*head));
    if (taken.how == Taken::How::Refused && taken.refusal.status == 403) {
        countWrong(hub, call);
        call.remark = taken.reason;
        const auto noted =
            hub.store.audit(call.programme, call.stream, "claim refused", taken.reason, hub.now());
        if (!noted) return storeFailed(noted.error());
    }
    return outcome(hub, call, taken);
}

} // namespace duskrow::hub
