// SPDX-License-Identifier: MIT
#pragma once

#include "sync/hub/http_connection.h"

namespace duskrow::hub {

// What a server needs of a connection, whatever it goes over.
class AnySession {
public:
    AnySession() = default;
    AnySession(const AnySession&) = delete;
    AnySession& operator=(const AnySession&) = delete;
    virtual ~AnySession() = default;
    virtual void closeIfIdle() = 0;
};

Method methodOf(http::verb verb);

// The status for a request that could not be read; 0 when there is nobody to answer to.
int statusOf(const Failure& failure);

Request requestOf(http::request<http::string_body> message, const std::string& address);

// Reads one request after another and has them answered. Only the answering itself leaves the strand.
template <typename Stream>
class HttpSession final : public AnySession, public HttpConnection<Stream> {
    using Base = HttpConnection<Stream>;
    using Base::m_bytes;
    using Base::m_common;
    using Base::m_isHead;
    using Base::m_keepAlive;
    using Base::m_place;
    using Base::m_stream;

public:
    HttpSession(Stream stream, HttpCommon& common, HttpBudget::Place place)
        : Base(std::move(stream), common, std::move(place)),
          m_buffer(std::max(common.options.headerBytes + 1024, mostReadAhead))
    {
    }

    void start()
    {
        this->lowest().expires_after(m_common.options.headerTime);
        if constexpr (std::is_same_v<Stream, TlsStream>) {
            m_stream.async_handshake(asio::ssl::stream_base::server, [self = own()](const Failure& failure) {
                if (!failure) self->readRequest(false);
            });
        } else {
            asio::post(m_stream.get_executor(), [self = own()] { self->readRequest(false); });
        }
    }

    void closeIfIdle() override
    {
        asio::post(m_stream.get_executor(), [self = own()] {
            if (self->m_isIdle) self->close();
        });
    }

private:
    static constexpr std::size_t mostReadAhead = std::size_t{64} * 1024;

    std::shared_ptr<HttpSession> own()
    {
        return std::static_pointer_cast<HttpSession>(this->shared_from_this());
    }
    auto on(void (HttpSession::*next)(const Failure&))
    {
        return [self = own(), next](const Failure& failure, std::size_t) { ((*self).*next)(failure); };
    }

    void readNext() override { readRequest(true); }

    void readRequest(bool isLater)
    {
        m_parser.emplace();
        m_parser->header_limit(static_cast<std::uint32_t>(m_common.options.headerBytes));
        m_parser->body_limit(boost::none); // set when it is known what is asked for
        m_isIdle = true;
        if (m_common.isStopping) return this->close();
        if (isLater && m_buffer.size() == 0) {
            this->lowest().expires_after(m_common.options.idleTime);
            return http::async_read_some(m_stream, m_buffer, *m_parser, on(&HttpSession::readHeader));
        }
        this->lowest().expires_after(m_common.options.headerTime);
        http::async_read_header(m_stream, m_buffer, *m_parser, on(&HttpSession::takeHeader));
    }

    void readHeader(const Failure& failure)
    {
        if (failure || m_parser->is_header_done()) return takeHeader(failure);
        this->lowest().expires_after(m_common.options.headerTime);
        http::async_read_header(m_stream, m_buffer, *m_parser, on(&HttpSession::takeHeader));
    }

    void takeHeader(const Failure& failure)
    {
        m_isIdle = false;
        if (failure) return refuse(failure);
        const auto& head = m_parser->get();
        if (head.count(http::field::content_length) > 0 && head.count(http::field::transfer_encoding) > 0)
            return answerAndClose(400);
        const std::size_t limit =
            m_common.answerer.bodyLimit(methodOf(head.method()), std::string(head.target()));
        const auto length = m_parser->content_length();
        if (length && *length > limit) return answerAndClose(413);
        m_parser->body_limit(limit);
        const std::size_t needed = length ? static_cast<std::size_t>(*length)
            : m_parser->chunked()         ? limit
                                          : 0;
        // Otherwise a body comes in pieces as small as a header.
        const std::size_t ahead = std::min(needed, mostReadAhead);
        m_bytes = m_common.budget.reserve(m_place, needed + ahead);
        if (!m_bytes) return answerAndClose(503);
        m_buffer.reserve(std::max(ahead, m_buffer.size()));
        m_began = Steady::now();
        m_received = 0;
        if (beast::iequals(head[http::field::expect], "100-continue") && !m_parser->is_done()) {
            static constexpr std::string_view goOn = "HTTP/1.1 100 Continue\r\n\r\n";
            this->lowest().expires_after(m_common.options.headerTime);
            return asio::async_write(m_stream, asio::buffer(goOn), on(&HttpSession::readBody));
        }
        readBody({});
    }

    void readBody(const Failure& failure)
    {
        if (failure) return refuse(failure);
        if (m_parser->is_done()) return answer();
        this->allow(m_began, m_received);
        this->acknowledgeAtOnce();
        http::async_read_some(
            m_stream, m_buffer, *m_parser, [self = own()](const Failure& failed, std::size_t bytes) {
                self->m_received += bytes;
                self->readBody(failed);
            });
    }

    void answer()
    {
        this->lowest().expires_never();
        m_keepAlive = m_parser->keep_alive();
        auto message = m_parser->release();
        if (m_buffer.size() == 0) m_buffer.shrink_to_fit();
        m_isHead = message.method() == http::verb::head;
        asio::post(m_common.workers,
            [self = own(), request = requestOf(std::move(message), m_place.address())]() mutable {
                Response response;
                try {
                    response = self->m_common.answerer.answer(request);
                } catch (const std::exception&) { // memory ran out; nothing else throws
                    response = {503, "", "", {{"Retry-After", "5"}}};
                }
                request = {};
                asio::post(self->m_stream.get_executor(),
                    [self, response = std::move(response)]() mutable { self->send(std::move(response)); });
            });
    }

    void refuse(const Failure& failure)
    {
        const int status = statusOf(failure);
        // Who never sent a byte is not told that it was too slow.
        if (status == 0 || (status == 408 && m_parser && !m_parser->got_some())) return this->close();
        answerAndClose(status);
    }

    // After a time-out Beast has closed the connection, and this answer goes nowhere.
    void answerAndClose(int status)
    {
        m_common.answerer.refused(status, m_place.address());
        m_keepAlive = false;
        m_isHead = false;
        Response response;
        response.status = status;
        if (status == 503) response.headers.emplace_back("Retry-After", "5");
        this->send(std::move(response));
    }

    beast::flat_buffer m_buffer;
    std::optional<http::request_parser<http::string_body>> m_parser;
    Steady::time_point m_began;
    std::size_t m_received = 0;
    bool m_isIdle = true;
};

} // namespace duskrow::hub
