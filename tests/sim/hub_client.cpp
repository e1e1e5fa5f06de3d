// SPDX-License-Identifier: MIT
// A small client of the hub's calls, written from sync/FORMAT.md section 7, over a link that may be bad.
#include <nlohmann/json.hpp>

#include "sim/link.h"
#include "store/segments.h"
#include "sync/exchange/intake.h"
#include "sync/exchange/segments_of_store.h"

namespace duskrow::sim {

using namespace duskrow::domain;
using hub::Method;
using hub::Request;
using hub::Response;
using nlohmann::json;

namespace {

constexpr const char* route = "hub:sim";

class Visit {
public:
    Visit(World& world, Phone& phone, bool isLinkGood)
        : m_world(world), m_phone(phone), m_link(world, isLinkGood),
          m_path("/v1/programmes/" + formatUuid(world.programme))
    {
    }

    bool run()
    {
        const auto sealed = sync::sealTail(*m_phone.store, *m_phone.reader);
        if (!sealed) {
            if (!m_world.isFailing) broken("the tail cannot be sealed: " + sealed.error().detail);
            return false;
        }
        try {
            if (m_phone.hub.token.empty() && !getToken()) return false;
            return push(false) && pull();
        } catch (const LinkDown&) {
            return false;
        }
    }

private:
    Response ask(
        Method method, const std::string& target, const std::string& body = {}, const std::string& type = {})
    {
        Request request;
        request.method = method;
        request.target = target;
        request.body = body;
        if (!type.empty()) request.headers["content-type"] = type;
        if (!m_phone.hub.token.empty()) request.headers["authorization"] = "Bearer " + m_phone.hub.token;
        return m_link.ask(request);
    }

    bool getToken()
    {
        if (askToken()) return true;
        // Not known there: the first segment may hold a claim.
        const auto rows = store::segmentRows(*m_phone.reader);
        if (!rows) return false;
        for (const store::SegmentRow& row : *rows) {
            if (row.stream != m_phone.stream() || row.first != 1 || !row.isWhole) continue;
            const auto bytes = sync::bytesOf(*m_phone.reader, row.id);
            if (!bytes || !*bytes) return false;
            const Response joined = ask(Method::Post, m_path + "/join", **bytes, "application/octet-stream");
            return (joined.status == 201 || joined.status == 200) && askToken();
        }
        return false;
    }

    bool askToken()
    {
        const json who{{"stream", formatHex(m_phone.stream())}};
        const Response asked = ask(Method::Post, m_path + "/challenge", who.dump());
        const auto nonce = json::parse(asked.body)["nonce"].get<std::string>();
        std::array<std::uint8_t, 32> bytes{};
        parseHex(nonce, bytes);
        std::string message =
            "duskrow-token-v1" + std::string(m_world.programme.bytes.begin(), m_world.programme.bytes.end());
        message.append(bytes.begin(), bytes.end());
        const json proof{{"nonce", nonce}, {"proof", formatHex(m_phone.store->sign(message))},
            {"stream", formatHex(m_phone.stream())}};
        const Response given = ask(Method::Post, m_path + "/token", proof.dump());
        if (given.status != 201) return false;
        m_phone.hub.token = json::parse(given.body)["token"].get<std::string>();
        return true;
    }

    // Everything that is whole; `all`: also what went before, because the hub was put back.
    bool push(bool all)
    {
        const auto rows = store::segmentRows(*m_phone.reader, all ? "" : route);
        if (!rows) return false;
        std::vector<store::SegmentId> done;
        for (const store::SegmentRow& row : *rows) {
            if (!row.isWhole) continue;
            const auto bytes = sync::bytesOf(*m_phone.reader, row.id);
            if (!bytes || !*bytes) return false;
            const std::string name = formatHex(row.stream) + '/' + std::to_string(row.first) + '-'
                + std::to_string(row.last) + '-' + formatHex(row.id);
            const Response answer =
                ask(Method::Put, m_path + "/segments/" + name, **bytes, "application/octet-stream");
            if (answer.status == 401) {
                m_phone.hub.token.clear();
                return false;
            }
            if (answer.status == 201 || answer.status == 200)
                done.push_back(row.id);
            else if (answer.status == 202)
                m_world.count("kept aside by the hub");
            else if (answer.status == 409)
                m_world.count("gap at the hub");
            else if (answer.status != 422)
                broken("a sound segment is answered " + std::to_string(answer.status) + " " + answer.body);
        }
        return m_phone.store->markPassedOnNow(route, done, m_world.now).has_value();
    }

    bool pull()
    {
        AtHub& hub = m_phone.hub;
        for (int page = 0; page < 1000; ++page) {
            const std::size_t most = m_world.random.percent(50) ? 1 : 1U << 20U;
            const Response answer = ask(Method::Get,
                m_path + "/segments?after=" + std::to_string(hub.after) + "&most=" + std::to_string(most));
            if (answer.status == 401) {
                hub.token.clear();
                return false;
            }
            if (answer.status != 200 && answer.status != 204)
                broken("a page is answered " + std::to_string(answer.status));
            const std::int64_t epoch = std::stoll(headerOf(answer, "Duskrow-Epoch"));
            const bool isRestored = hub.epoch != 0 && epoch != hub.epoch;
            const std::string scope = headerOf(answer, "Duskrow-Scope");
            const bool isOtherScope = !hub.scope.empty() && scope != hub.scope;
            if (isRestored && !push(true)) return false; // remembered only when it is done
            hub.epoch = epoch;
            hub.scope = scope;
            if (isRestored || isOtherScope) {
                hub.after = 0;
                continue;
            }
            if (!take(answer)) return false;
            if (answer.status == 204) return true;
        }
        broken("pages without end");
    }

    bool take(const Response& answer)
    {
        std::size_t taken = 0;
        for (const std::string& item : itemsIn(answer.body)) {
            sync::ExchangeReport report;
            sync::Intake intake(*m_phone.store, m_world.now, report);
            auto in = intake.add(item, route);
            if (in) in = intake.finish();
            if (!in && m_world.isFailing) return false;
            if (!in) broken("a page is not taken in: " + in.error().detail);
            if (report.keptAside + report.unfinished > 0) broken("the hub sent what is not sound");
            m_phone.mayRenew = m_phone.mayRenew || report.metFork;
            taken += 9 + item.size();
        }
        if (taken < answer.body.size()) return false; // cut on its way
        m_phone.hub.after = std::stoll(headerOf(answer, "Duskrow-Next"));
        return true;
    }

    World& m_world;
    Phone& m_phone;
    Link m_link;
    std::string m_path;
};

} // namespace

bool exchangeHub(World& world, Phone& phone, bool isLinkGood)
{
    if (!world.hub->isOpen()) return false;
    return Visit(world, phone, isLinkGood).run();
}

} // namespace duskrow::sim
