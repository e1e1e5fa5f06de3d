// SPDX-License-Identifier: MIT
// Requests as they come over a socket, to a real server with a hub and a store behind it.
#include <arpa/inet.h>
#include <sys/socket.h>
#include <unistd.h>

#include "fuzz/fuzz.h"
#include "sync/hub/http_server.h"
#include "sync/hub_scene.h"

using namespace duskrow::hub;
using namespace duskrow::tests;

namespace {

constexpr double noLimit = 1e12;

HubOptions options()
{
    HubOptions made;
    made.token = made.address = made.wrongOfAddress = made.wrongOfAll = {noLimit, noLimit};
    return made;
}

// One hub for all inputs: what one leaves behind, the next one meets.
struct Place {
    HubScene scene{options()};
    Phone founder = scene.founded();
    std::unique_ptr<HttpServer> server;

    Place()
    {
        ListenOptions listen;
        listen.port = 0;
        listen.headerTime = listen.idleTime = listen.bodyTime = std::chrono::milliseconds(2000);
        auto started = HttpServer::start(listen, *scene.hub);
        if (!started) std::abort();
        server = std::move(*started);
    }
};

// Without these nothing but "who are you" would be reached: a programme, a token and a stream that are known
// here.
std::string filledIn(std::string text, const Place& place)
{
    const std::pair<std::string_view, std::string> words[] = {{"@P", formatUuid(place.scene.programme)},
        {"@T", place.founder.token}, {"@S", formatHex(place.founder.stream)}};
    for (const auto& [word, value] : words)
        for (std::size_t at = 0; (at = text.find(word, at)) != std::string::npos; at += value.size())
            text.replace(at, word.size(), value);
    return text;
}

std::string answerTo(std::uint16_t port, std::string_view bytes)
{
    const int line = socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(port);
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    fuzz::demand(connect(line, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0);
    while (!bytes.empty()) {
        const ssize_t sent = send(line, bytes.data(), bytes.size(), MSG_NOSIGNAL);
        if (sent <= 0) break; // cut off: allowed
        bytes.remove_prefix(static_cast<std::size_t>(sent));
    }
    shutdown(line, SHUT_WR);
    std::string answer;
    std::array<char, 4096> some{};
    for (ssize_t got = 0; (got = recv(line, some.data(), some.size(), 0)) > 0;)
        answer.append(some.data(), static_cast<std::size_t>(got));
    close(line);
    return answer;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static Place place;
    place.scene.log.clear();
    const std::string bytes = filledIn({reinterpret_cast<const char*>(data), size}, place);
    const std::string answer = answerTo(place.server->port(), bytes);
    // Either nothing, or answers; never that the hub failed.
    fuzz::demand(answer.empty() || answer.starts_with("HTTP/1.1 "));
    fuzz::demand(!answer.starts_with("HTTP/1.1 5"));
    static int count = 0;
    if (++count % 256 == 0)
        fuzz::demand(
            answerTo(place.server->port(), "GET /v1/health HTTP/1.1\r\nHost: h\r\nConnection: close\r\n\r\n")
                .starts_with("HTTP/1.1 200"));
    return 0;
}
