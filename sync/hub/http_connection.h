// SPDX-License-Identifier: MIT
#pragma once

#include <atomic>
#include <boost/asio/post.hpp>
#include <boost/asio/ssl.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/asio/strand.hpp>
#include <boost/asio/thread_pool.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>
#include <boost/beast/ssl.hpp>

#include "sync/hub/http_budget.h"
#include "sync/hub/http_server.h"

// Only for http_server.cpp: whoever includes Beast waits for the compiler.
namespace duskrow::hub {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = beast::http;
using tcp = asio::ip::tcp;
using Failure = beast::error_code;
using Steady = std::chrono::steady_clock;
using TlsStream = beast::ssl_stream<beast::tcp_stream>;

// What all connections of a server share.
struct HttpCommon {
    const ListenOptions options;
    Answerer& answerer;
    HttpBudget budget;
    asio::thread_pool workers;
    std::atomic<bool> isStopping{false};

    HttpCommon(const ListenOptions& chosen, Answerer& toAnswer)
        : options(chosen), answerer(toAnswer),
          budget({chosen.connections, chosen.connectionsOfOne, chosen.bytes, chosen.bytesOfOne}),
          workers(chosen.workers)
    {
    }
};

// A connection, and sending over it. Everything happens on its strand.
template <typename Stream>
class HttpConnection : public std::enable_shared_from_this<HttpConnection<Stream>> {
public:
    HttpConnection(Stream stream, HttpCommon& common, HttpBudget::Place place)
        : m_stream(std::move(stream)), m_common(common), m_place(std::move(place))
    {
    }
    HttpConnection(const HttpConnection&) = delete;
    HttpConnection& operator=(const HttpConnection&) = delete;
    virtual ~HttpConnection() = default;

protected:
    // After an answer that leaves the connection open.
    virtual void readNext() = 0;

    beast::tcp_stream& lowest() { return beast::get_lowest_layer(m_stream); }

    void close()
    {
        Failure ignored;
        lowest().socket().shutdown(tcp::socket::shutdown_both, ignored);
        lowest().close();
    }

    // Many systems put an acknowledgement off by 40 ms, and many clients send the last piece of a body only
    // when the one before it is acknowledged.
    void acknowledgeAtOnce()
    {
#ifdef TCP_QUICKACK
        const int on = 1; // where it cannot be had, it is slower
        static_cast<void>(
            ::setsockopt(lowest().socket().native_handle(), IPPROTO_TCP, TCP_QUICKACK, &on, sizeof on));
#endif
    }

    // How long the other side may take for what it has moved so far.
    void allow(Steady::time_point began, std::size_t moved)
    {
        constexpr std::size_t bytesASecond = 4096; // slower than this is cut off after the time allowed
        lowest().expires_at(began + m_common.options.bodyTime + std::chrono::seconds(moved / bytesASecond));
    }

    void send(Response response)
    {
        m_bytes = m_common.budget.reserve(m_place, response.body.size(), HttpBudget::Of::Answer);
        if (!m_bytes) response = {503, "", "", {{"Retry-After", "5"}}};
        auto& message = m_message.emplace();
        message.version(11);
        message.result(static_cast<unsigned>(response.status));
        if (!response.type.empty()) message.set(http::field::content_type, response.type);
        for (const auto& [name, value] : response.headers) message.set(name, value);
        m_keepAlive = m_keepAlive && !m_common.isStopping;
        message.keep_alive(m_keepAlive);
        const std::size_t size = response.body.size();
        if (!m_isHead) message.body() = std::move(response.body);
        if (response.status != 204 && response.status != 304) message.content_length(size);
        m_serializer.emplace(message);
        if (m_isHead) m_serializer->split(true);
        m_began = Steady::now();
        m_written = 0;
        write();
    }

    Stream m_stream;
    HttpCommon& m_common;
    HttpBudget::Place m_place;
    std::optional<HttpBudget::Bytes> m_bytes; // of the body under way, then of the answer
    bool m_keepAlive = false;
    bool m_isHead = false;

private:
    void write()
    {
        allow(m_began, m_written);
        auto next = [self = this->shared_from_this()](const Failure& failure, std::size_t bytes) {
            self->m_written += bytes;
            const bool isDone =
                self->m_isHead ? self->m_serializer->is_header_done() : self->m_serializer->is_done();
            if (failure) return self->close();
            if (isDone) return self->finish();
            self->write();
        };
        if (m_isHead) return http::async_write_header(m_stream, *m_serializer, std::move(next));
        http::async_write_some(m_stream, *m_serializer, std::move(next));
    }

    void finish()
    {
        m_serializer.reset();
        m_message.reset();
        m_bytes.reset();
        if (m_keepAlive) return readNext();
        // What still comes in is read and dropped for a moment, so that the answer is not lost on its way.
        Failure ignored;
        lowest().socket().shutdown(tcp::socket::shutdown_send, ignored);
        lowest().expires_after(std::chrono::seconds(2));
        m_drained = 0;
        drain();
    }

    void drain()
    {
        constexpr std::size_t most = std::size_t{4} << 20;
        lowest().async_read_some(asio::buffer(m_dropped),
            [self = this->shared_from_this()](const Failure& failure, std::size_t bytes) {
                self->m_drained += bytes;
                if (failure || self->m_drained > most) return self->close();
                self->drain();
            });
    }

    std::optional<http::response<http::string_body>> m_message;
    std::optional<http::response_serializer<http::string_body>> m_serializer;
    Steady::time_point m_began;
    std::size_t m_written = 0;
    std::size_t m_drained = 0;
    std::array<char, 4096> m_dropped{};
};

} // namespace duskrow::hub
