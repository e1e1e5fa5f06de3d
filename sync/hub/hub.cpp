// SPDX-License-Identifier: MIT
#include "sync/hub/hub.h"

#include <chrono>
#include <sodium.h>

#include "domain/log/value_json.h"
#include "sync/hub/call.h"
#include "sync/hub/token_hash.h"

namespace duskrow::hub {

namespace {

using Steady = std::chrono::steady_clock;

std::string pathOf(const std::string& target)
{
    return target.substr(0, target.find('?'));
}

std::map<std::string, std::string> queryOf(const std::string& target)
{
    std::map<std::string, std::string> query;
    const auto mark = target.find('?');
    std::string_view rest =
        mark == std::string::npos ? std::string_view() : std::string_view(target).substr(mark + 1);
    while (!rest.empty()) {
        const auto end = std::min(rest.find('&'), rest.size());
        const std::string_view pair = rest.substr(0, end);
        const auto equals = std::min(pair.find('='), pair.size());
        query[std::string(pair.substr(0, equals))] = pair.substr(std::min(equals + 1, pair.size()));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return query;
}

std::string addressOf(const Request& request, bool isBehindProxy)
{
    const std::string list = isBehindProxy ? request.header("x-forwarded-for") : std::string();
    if (list.empty()) return request.address;
    const auto comma = list.rfind(',');
    const auto begin = list.find_first_not_of(' ', comma == std::string::npos ? 0 : comma + 1);
    return begin == std::string::npos ? request.address : list.substr(begin, 45);
}

Response tooMany(std::int64_t seconds)
{
    return later(429, "too-many", "Too many requests. Ask again later.", seconds);
}

// Whose token it is, and whether it may be used for this programme.
std::optional<Response> authorise(Hub& hub, Call& call)
{
    // Guessing costs what asking without a token costs.
    const auto unknown = [&] {
        const auto wait = hub.ofAddress.secondsToWait(call.address, hub.now());
        return wait > 0 ? tooMany(wait) : refusal(401, "token", "The token is not valid, or not any more.");
    };
    const std::string sent = call.request.header("authorization");
    const auto token =
        sent.starts_with("Bearer ") ? hexOf<32>(std::string_view(sent).substr(7)) : std::nullopt;
    if (!token) return unknown();
    const auto bearer = hub.store.bearerOf(tokenHash(*token));
    if (!bearer) return storeFailed(bearer.error());
    if (!*bearer) return unknown();
    call.stream = (*bearer)->stream;
    if (const auto wait = hub.ofToken.secondsToWait(domain::formatHex(call.stream), hub.now()); wait > 0)
        return tooMany(wait);
    if ((*bearer)->programme != call.programme)
        return refusal(403, "programme", "The token belongs to another programme.");
    return std::nullopt;
}

std::optional<Response> prepare(Hub& hub, Call& call, const CallRow& row)
{
    if (row.needs != Needs::Token) {
        if (const auto wait = hub.ofAddress.secondsToWait(call.address, hub.now()); wait > 0)
            return tooMany(wait);
        if (row.needs == Needs::Nothing) return std::nullopt;
    }
    const auto programme = call.parts.empty() ? std::nullopt : domain::parseUuid(call.parts.front());
    if (!programme) return refusal(404, "unknown", "There is no such programme here.");
    call.programme = *programme;
    if (row.needs == Needs::Token)
        if (auto refused = authorise(hub, call)) return refused;
    auto known = hub.rosters.of(*programme);
    if (!known) return storeFailed(known.error());
    if (!*known) return refusal(404, "unknown", "There is no such programme here.");
    call.known = **known;
    if (row.needs == Needs::Token && !isActive(*call.known.roster, call.stream, hub.now()))
        return refusal(401, "ended", "This device takes part no more.");
    return std::nullopt;
}

Response answerCall(Hub& hub, Call& call, const Found& found)
{
    if (found.row == nullptr) {
        if (found.isOtherMethod) return refusal(405, "method", "This path knows other methods.");
        return refusal(404, "unknown", "There is nothing here.");
    }
    if (auto refused = prepare(hub, call, *found.row)) return *refused;
    return found.row->answer(hub, call);
}

} // namespace

Hub::Hub(HubStore& toUse, const HubOptions& chosen, Clock clock, LogLine log, std::string held)
    : store(toUse), options(chosen), now(std::move(clock)), rosters(toUse), ofToken(chosen.token),
      ofAddress(chosen.address), wrongOfAddress(chosen.wrongOfAddress), wrongOfAll(chosen.wrongOfAll),
      secret(std::move(held)), m_log(std::move(log))
{
}

Result<std::unique_ptr<Hub>> Hub::open(HubStore& store, const HubOptions& options, Clock clock, LogLine log)
{
    if (sodium_init() < 0) return domain::Error{domain::ErrorCode::KeyUnreadable, {"random"}};
    auto secret = store.secret();
    if (!secret) return secret.error();
    return std::unique_ptr<Hub>(
        new Hub(store, options, std::move(clock), std::move(log), std::move(*secret)));
}

Response Hub::answer(const Request& request)
{
    const auto began = Steady::now();
    Found found = findCall(request.method, pathOf(request.target));
    Call call{request, addressOf(request, options.isBehindProxy), std::move(found.parts),
        queryOf(request.target), {}, {}, {}, {}};
    const Response response = answerCall(*this, call, found);
    const double seconds = std::chrono::duration<double>(Steady::now() - began).count();
    const std::string name = found.row == nullptr ? "none" : std::string(found.row->name);
    metrics.countRequest(name, response.status, seconds);

    nlohmann::json line{{"address", call.address}, {"at_ms", domain::toMs(now())}, {"call", name},
        {"status", response.status}, {"us", static_cast<std::int64_t>(seconds * 1e6)}};
    if (!call.programme.isNil()) line["programme"] = domain::formatUuid(call.programme);
    if (call.stream != StreamId{}) line["stream"] = domain::formatHex(call.stream);
    if (!call.remark.empty()) line["remark"] = call.remark;
    m_log(domain::canonicalText(line));
    return response;
}

std::size_t Hub::bodyLimit(Method method, const std::string& target) const
{
    const Found found = findCall(method, pathOf(target));
    return found.row == nullptr ? 0 : found.row->mostBytes;
}

void Hub::refused(int status, const std::string& address)
{
    metrics.countRequest("none", status, 0);
    m_log(domain::canonicalText(
        {{"address", address}, {"at_ms", domain::toMs(now())}, {"call", "none"}, {"status", status}}));
}

} // namespace duskrow::hub
