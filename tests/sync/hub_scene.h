// SPDX-License-Identifier: MIT
#pragma once

#include <mutex>
#include <nlohmann/json.hpp>

#include "sync/hub/hub.h"
#include "sync/hub_phone.h"
#include "sync/hub_store_place.h"

// A hub without sockets over a store of its own, and a programme founded in it.
namespace duskrow::tests {

using namespace duskrow::hub;
using duskrow::hub::Request;
using duskrow::hub::Response;
using nlohmann::json;

inline QByteArray shown(const json& value)
{
    return QByteArray::fromStdString(value.dump());
}

inline std::string segmentPath(const sync::SegmentHead& head)
{
    return "/v1/programmes/" + formatUuid(head.header.programme) + "/segments/"
        + formatHex(head.header.stream) + '/' + std::to_string(head.header.first) + '-'
        + std::to_string(head.header.last) + '-' + formatHex(head.id);
}

class HubScene {
public:
    explicit HubScene(const HubOptions& options = {}) : store(openStore(place.where())), m_options(options)
    {
        begin();
        const auto added =
            store->addFounding({foundingCode.key, "District", now + std::chrono::hours(24), {}, {}});
        if (!added) qFatal("no founding code");
    }

    // As after the process ended and began again.
    void restart()
    {
        hub.reset();
        store.reset();
        store = openStore(place.where());
        begin();
    }

    Response ask(Method method, const std::string& target, const std::string& body = {},
        const std::string& token = {}, std::map<std::string, std::string> headers = {}) const
    {
        Request request;
        request.method = method;
        request.target = target;
        request.address = "192.0.2.7";
        request.body = body;
        request.headers = std::move(headers);
        if (!token.empty()) request.headers["authorization"] = "Bearer " + token;
        return hub->answer(request);
    }
    Response askJson(const std::string& target, const json& body) const
    {
        return ask(Method::Post, target, body.dump());
    }
    Response push(const sync::SegmentHead& head, const std::string& token) const
    {
        return ask(Method::Put, segmentPath(head), sync::segmentBytes(head), token,
            {{"content-type", "application/octet-stream"}});
    }
    Response join(const sync::SegmentHead& head) const
    {
        return ask(Method::Post, path() + "/join", sync::segmentBytes(head), {},
            {{"content-type", "application/octet-stream"}});
    }
    [[nodiscard]] std::string path() const { return "/v1/programmes/" + formatUuid(programme); }

    json foundingBody(const Phone& phone) const
    {
        const Signature proof = foundingCode.sign(claimMessage(programme, phone.stream));
        return {{"invitation", formatHex(foundingCode.key)}, {"key", formatHex(phone.keys.key)},
            {"name", "District"}, {"programme", formatUuid(programme)}, {"proof", formatHex(proof)},
            {"stream", formatHex(phone.stream)}};
    }
    Response askToken(const Phone& phone) const
    {
        const Response asked = askJson(path() + "/challenge", {{"stream", formatHex(phone.stream)}});
        return askToken(phone, json::parse(asked.body)["nonce"].get<std::string>());
    }
    Response askToken(const Phone& phone, const std::string& nonce) const
    {
        std::string message =
            "duskrow-token-v1" + std::string(programme.bytes.begin(), programme.bytes.end());
        std::array<std::uint8_t, 32> bytes{};
        parseHex(nonce, bytes);
        message.append(bytes.begin(), bytes.end());
        return askJson(path() + "/token",
            {{"nonce", nonce}, {"proof", formatHex(phone.keys.sign(message))},
                {"stream", formatHex(phone.stream)}});
    }
    void getToken(Phone& phone) const
    {
        const Response response = askToken(phone);
        if (response.status != 201) qFatal("no token: %d %s", response.status, response.body.c_str());
        phone.token = json::parse(response.body)["token"].get<std::string>();
    }

    // The founder has pushed the roster's beginning and holds a token.
    Phone founded() const
    {
        Phone founder(programme, 1);
        if (askJson("/v1/programmes", foundingBody(founder)).status != 201) qFatal("not founded");
        getToken(founder);
        founder.writeFounding();
        if (push(founder.seal(), founder.token).status != 201) qFatal("founder refused");
        return founder;
    }
    // Invited by the founder, joined, with a token. `number` tells phones apart.
    Phone joined(Phone& founder, std::uint32_t number, const std::string& role) const
    {
        Phone phone(programme, number);
        const Keys code(number + 100'000);
        founder.writeMember(phone.member, role);
        founder.writeInvitation(uuidOf(2, number), phone.member, code.key, "2026-12-31");
        if (push(founder.seal(), founder.token).status != 201) qFatal("invitation refused");
        phone.writeClaim(uuidOf(2, number), code);
        if (const Response response = join(phone.seal()); response.status != 201)
            qFatal("not joined: %d %s", response.status, response.body.c_str());
        getToken(phone);
        return phone;
    }

    StorePlace place;
    Uuid programme = uuidOf(7, 1);
    Keys foundingCode{99};
    Instant now = instantFromMs(1'783'100'000'000);
    std::unique_ptr<HubStore> store;
    std::unique_ptr<Hub> hub;
    std::vector<std::string> log;
    std::mutex logMutex;

private:
    void begin()
    {
        auto opened = Hub::open(
            *store, m_options, [this] { return now; },
            [this](const std::string& line) {
                const std::lock_guard guard(logMutex);
                log.push_back(line);
            });
        if (!opened) qFatal("no hub");
        hub = std::move(*opened);
    }

    HubOptions m_options;
};

// Gives the segments of a page.
inline std::vector<std::string> segmentsIn(const std::string& page)
{
    std::vector<std::string> segments;
    for (std::size_t at = 0; at + 9 <= page.size();) {
        std::uint64_t size = 0;
        for (unsigned i = 0; i < 8; ++i)
            size |= std::uint64_t{static_cast<std::uint8_t>(page[at + 1 + i])} << (8 * i);
        if (page[at] != 's' || page.size() - at - 9 < size) qFatal("no page");
        segments.push_back(page.substr(at + 9, size));
        at += 9 + size;
    }
    return segments;
}

inline std::string headerIn(const Response& response, const std::string& name)
{
    for (const auto& [key, value] : response.headers)
        if (key == name) return value;
    return {};
}

} // namespace duskrow::tests
