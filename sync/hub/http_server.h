// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <memory>

#include "domain/base/result.h"
#include "sync/hub/http.h"

namespace duskrow::hub {

struct ListenOptions {
    std::string address = "127.0.0.1";
    std::uint16_t port = 8460; // 0: one that is free
    std::string certificate; // PEM files; both empty for plain HTTP
    std::string key;
    std::size_t headerBytes = std::size_t{16} << 10;
    std::chrono::milliseconds headerTime{10'000}; // for the handshake, and for each header
    std::chrono::milliseconds idleTime{60'000}; // between two requests
    std::chrono::milliseconds bodyTime{60'000}; // and as long as 4 KiB a second arrive
    std::size_t connections = 1024;
    std::size_t connectionsOfOne = 64; // of one address
    std::size_t bytes = std::size_t{128} << 20; // all bodies under way together, and all answers
    std::size_t bytesOfOne = std::size_t{32} << 20;
    unsigned workers = 4; // threads that answer
};

// HTTP/1.1 over TCP or TLS. Nothing that a client does makes it use more memory than the options allow.
class HttpServer {
public:
    // Listens at once.
    //
    // Errors  NetworkUnusable {address} when it cannot listen there; FileUnreadable {path} for certificate or
    // key
    static domain::Result<std::unique_ptr<HttpServer>> start(
        const ListenOptions& options, Answerer& answerer);

    HttpServer(const HttpServer&) = delete;
    HttpServer& operator=(const HttpServer&) = delete;
    // As stop().
    ~HttpServer();

    [[nodiscard]] std::uint16_t port() const;
    [[nodiscard]] std::size_t connections() const;

    // Takes no more connections and requests, finishes what is under way (at most `patience`), and returns.
    void stop(std::chrono::milliseconds patience = std::chrono::seconds(30));

private:
    class Inside;
    explicit HttpServer(std::unique_ptr<Inside> inside);

    std::unique_ptr<Inside> m_inside;
};

} // namespace duskrow::hub
