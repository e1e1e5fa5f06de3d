// SPDX-License-Identifier: MIT
#include "sync/hub/http_server.h"

#include <atomic>
#include <boost/asio/post.hpp>
#include <boost/asio/ssl.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/asio/strand.hpp>
#include <boost/asio/thread_pool.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>
#include <boost/beast/ssl.hpp>
#include <condition_variable>
#include <mutex>
#include <thread>
#include <utility> // Asio of Boost 1.81 needs it under C++20 and does not include it

#include "sync/hub/http_budget.h"

namespace duskrow::hub {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = beast::http;
using tcp = asio::ip::tcp;
using Failure = beast::error_code;
using Clock = std::chrono::steady_clock;
using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

constexpr std::size_t bytesASecond = 4096; // slower than this is cut off after the time allowed
constexpr std::size_t mostDrained = std::size_t{4} << 20;

Method methodOf(http::verb verb)
{
    switch (verb) {
    case http::verb::get:
        return Method::Get;
    case http::verb::head:
        return Method::Head;
    case http::verb::put:
        return Method::Put;
    case http::verb::post:
        return Method::Post;
    default:
        return Method::Other;
    }
}

// The status for a request that could not be read; 0 when there is nobody to answer to.
int statusOf(const Failure& failure)
{
    if (failure == http::error::header_limit || failure == http::error::buffer_overflow) return 431;
    if (failure == http::error::body_limit) return 413;
    if (failure == beast::error::timeout) return 408;
    if (failure == http::error::end_of_stream || failure == http::error::partial_message) return 0;
    return failure.category() == http::make_error_code(http::error::bad_method).category() ? 400 : 0;
}

// One address is a whole /64 of IPv6: that is what a single customer gets.
std::string addressOf(const tcp::socket& socket)
{
    Failure failure;
    const auto address = socket.remote_endpoint(failure).address();
    if (failure || address.is_v4()) return failure ? std::string() : address.to_string();
    const auto six = address.to_v6();
    if (six.is_v4_mapped()) return asio::ip::make_address_v4(asio::ip::v4_mapped, six).to_string();
    auto bytes = six.to_bytes();
    std::fill(bytes.begin() + 8, bytes.end(), std::uint8_t{0});
    return asio::ip::make_address_v6(bytes).to_string();
}

struct Common {
    const ListenOptions options;
    Answerer& answerer;
    HttpBudget budget;
    asio::thread_pool workers;
    std::atomic<bool> isStopping{false};

    Common(const ListenOptions& chosen, Answerer& toAnswer)
        : options(chosen), answerer(toAnswer),
          budget(chosen.connections, chosen.connectionsOfOne, chosen.bodyBytes), workers(chosen.workers)
    {
    }
};

class AnySession {
public:
    AnySession() = default;
    AnySession(const AnySession&) = delete;
    AnySession& operator=(const AnySession&) = delete;
    virtual ~AnySession() = default;
    virtual void closeIfIdle() = 0;
};

// One connection. Everything but the answering itself happens on its strand.
template <typename Stream>
class Session final : public AnySession, public std::enable_shared_from_this<Session<Stream>> {
public:
    Session(Stream stream, Common& common, HttpBudget::Place place)
        : m_stream(std::move(stream)), m_common(common), m_place(std::move(place)),
          m_buffer(common.options.headerBytes + 1024)
    {
    }

    void start()
    {
        lowest().expires_after(m_common.options.headerTime);
        if constexpr (std::is_same_v<Stream, beast::ssl_stream<beast::tcp_stream>>) {
            m_stream.async_handshake(
                asio::ssl::stream_base::server, [self = this->shared_from_this()](const Failure& failure) {
                    if (!failure) self->readRequest(false);
                });
        } else {
            asio::post(
                m_stream.get_executor(), [self = this->shared_from_this()] { self->readRequest(false); });
        }
    }

    void closeIfIdle() override
    {
        asio::post(m_stream.get_executor(), [self = this->shared_from_this()] {
            if (self->m_isIdle) self->close();
        });
    }

private:
    beast::tcp_stream& lowest() { return beast::get_lowest_layer(m_stream); }
    auto on(void (Session::*next)(const Failure&))
    {
        return [self = this->shared_from_this(), next](
                   const Failure& failure, std::size_t) { ((*self).*next)(failure); };
    }

    void close()
    {
        Failure ignored;
        lowest().socket().shutdown(tcp::socket::shutdown_both, ignored);
        lowest().close();
    }

    void readRequest(bool isLater)
    {
        m_parser.emplace();
        m_parser->header_limit(static_cast<std::uint32_t>(m_common.options.headerBytes));
        m_parser->body_limit(boost::none); // set when it is known what is asked for
        m_isIdle = true;
        if (m_common.isStopping) return close();
        if (isLater && m_buffer.size() == 0) {
            lowest().expires_after(m_common.options.idleTime);
            return http::async_read_some(m_stream, m_buffer, *m_parser, on(&Session::readHeader));
        }
        lowest().expires_after(m_common.options.headerTime);
        http::async_read_header(m_stream, m_buffer, *m_parser, on(&Session::takeHeader));
    }

    void readHeader(const Failure& failure)
    {
        if (failure || m_parser->is_header_done()) return takeHeader(failure);
        lowest().expires_after(m_common.options.headerTime);
        http::async_read_header(m_stream, m_buffer, *m_parser, on(&Session::takeHeader));
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
        m_body = m_common.budget.reserve(m_place, needed);
        if (!m_body) return answerAndClose(503);
        m_began = Clock::now();
        m_received = 0;
        if (beast::iequals(head[http::field::expect], "100-continue") && !m_parser->is_done()) {
            static constexpr std::string_view goOn = "HTTP/1.1 100 Continue\r\n\r\n";
            lowest().expires_after(m_common.options.headerTime);
            return asio::async_write(m_stream, asio::buffer(goOn), on(&Session::readBody));
        }
        readBody({});
    }

    // How long the other side may take for what it has moved so far.
    void allow(std::size_t moved)
    {
        lowest().expires_at(m_began + m_common.options.bodyTime + std::chrono::seconds(moved / bytesASecond));
    }

    void readBody(const Failure& failure)
    {
        if (failure) return refuse(failure);
        if (m_parser->is_done()) return answer();
        allow(m_received);
        http::async_read_some(m_stream, m_buffer, *m_parser,
            [self = this->shared_from_this()](const Failure& failed, std::size_t bytes) {
                self->m_received += bytes;
                self->readBody(failed);
            });
    }

    void answer()
    {
        lowest().expires_never();
        m_keepAlive = m_parser->keep_alive();
        auto message = m_parser->release();
        m_isHead = message.method() == http::verb::head;
        Request request;
        request.method = methodOf(message.method());
        request.target = std::string(message.target());
        request.address = m_place.address();
        for (const auto& field : message) {
            std::string name(field.name_string());
            for (char& letter : name) letter = beast::detail::ascii_tolower(letter);
            request.headers[std::move(name)] = std::string(field.value());
        }
        request.body = std::move(message.body());
        asio::post(
            m_common.workers, [self = this->shared_from_this(), request = std::move(request)]() mutable {
                Response response;
                try {
                    response = self->m_common.answerer.answer(request);
                } catch (const std::exception&) { // memory ran out; nothing else throws
                    response.status = 503;
                    response.headers.emplace_back("Retry-After", "5");
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
        if (status == 0 || (status == 408 && m_parser && !m_parser->got_some())) return close();
        answerAndClose(status);
    }

    void answerAndClose(int status)
    {
        m_common.answerer.refused(status, m_place.address());
        m_keepAlive = false;
        m_isHead = false;
        Response response;
        response.status = status;
        if (status == 503) response.headers.emplace_back("Retry-After", "5");
        // Beast closes a connection that timed out; then this answer goes nowhere.
        send(std::move(response));
    }

    void send(Response response)
    {
        m_body = m_common.budget.reserve(m_place, response.body.size(), HttpBudget::Of::Answer);
        if (!m_body) {
            response = {503, "", "", {{"Retry-After", "5"}}};
            m_body = m_common.budget.reserve(m_place, 0);
        }
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
        m_began = Clock::now();
        m_written = 0;
        write();
    }

    void write()
    {
        allow(m_written);
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
        m_body.reset();
        if (m_keepAlive) return readRequest(true);
        // What still comes in is read and dropped for a moment, so that the answer is not lost on its way.
        Failure ignored;
        lowest().socket().shutdown(tcp::socket::shutdown_send, ignored);
        lowest().expires_after(std::chrono::seconds(2));
        m_received = 0;
        drain();
    }

    void drain()
    {
        lowest().async_read_some(asio::buffer(m_dropped),
            [self = this->shared_from_this()](const Failure& failure, std::size_t bytes) {
                self->m_received += bytes;
                if (failure || self->m_received > mostDrained) return self->close();
                self->drain();
            });
    }

    Stream m_stream;
    Common& m_common;
    HttpBudget::Place m_place;
    beast::flat_buffer m_buffer;
    std::optional<http::request_parser<http::string_body>> m_parser;
    std::optional<http::response<http::string_body>> m_message;
    std::optional<http::response_serializer<http::string_body>> m_serializer;
    std::optional<HttpBudget::Bytes> m_body;
    Clock::time_point m_began;
    std::size_t m_received = 0;
    std::size_t m_written = 0;
    std::array<char, 4096> m_dropped{};
    bool m_isIdle = true;
    bool m_keepAlive = false;
    bool m_isHead = false;
};

} // namespace

class HttpServer::Inside {
public:
    Inside(const ListenOptions& options, Answerer& answerer)
        : m_common(options, answerer), m_acceptor(asio::make_strand(m_io)), m_pause(m_acceptor.get_executor())
    {
    }

    Result<domain::Done> listen()
    {
        const auto& options = m_common.options;
        if (!options.certificate.empty()) {
            auto& context = m_tls.emplace(asio::ssl::context::tls_server);
            context.set_options(asio::ssl::context::default_workarounds | asio::ssl::context::no_sslv2
                | asio::ssl::context::no_sslv3 | asio::ssl::context::no_tlsv1
                | asio::ssl::context::no_tlsv1_1);
            Failure failure;
            context.use_certificate_chain_file(options.certificate, failure);
            if (failure) return Error{ErrorCode::FileUnreadable, {options.certificate}, failure.message()};
            context.use_private_key_file(options.key, asio::ssl::context::pem, failure);
            if (failure) return Error{ErrorCode::FileUnreadable, {options.key}, failure.message()};
        }
        Failure failure;
        const auto address = asio::ip::make_address(options.address, failure);
        const tcp::endpoint endpoint(address, options.port);
        if (!failure) m_acceptor.open(endpoint.protocol(), failure);
        if (!failure) m_acceptor.set_option(asio::socket_base::reuse_address(true), failure);
        if (!failure) m_acceptor.bind(endpoint, failure);
        if (!failure) m_acceptor.listen(512, failure);
        if (failure) return Error{ErrorCode::NetworkUnusable, {options.address}, failure.message()};
        m_port = m_acceptor.local_endpoint().port();
        accept();
        m_threads.emplace_back([this] { m_io.run(); });
        m_threads.emplace_back([this] { m_io.run(); });
        return domain::Done{};
    }

    void accept()
    {
        m_acceptor.async_accept(asio::make_strand(m_io), [this](const Failure& failure, tcp::socket socket) {
            if (m_common.isStopping) return;
            if (!failure) {
                take(std::move(socket));
                return accept();
            }
            m_pause.expires_after(std::chrono::milliseconds(100)); // out of file descriptors, most likely
            m_pause.async_wait([this](const Failure&) { accept(); });
        });
    }

    void take(tcp::socket socket)
    {
        auto place = m_common.budget.enter(addressOf(socket));
        if (!place) return; // closed
        Failure ignored;
        socket.set_option(tcp::no_delay(true), ignored);
        if (m_tls)
            begin(beast::ssl_stream<beast::tcp_stream>(beast::tcp_stream(std::move(socket)), *m_tls), *place);
        else
            begin(beast::tcp_stream(std::move(socket)), *place);
    }

    template <typename Stream>
    void begin(Stream stream, HttpBudget::Place& place)
    {
        auto session = std::make_shared<Session<Stream>>(std::move(stream), m_common, std::move(place));
        const std::lock_guard guard(m_mutex);
        std::erase_if(m_sessions, [](const auto& known) { return known.expired(); });
        m_sessions.push_back(session);
        session->start();
    }

    void stop(std::chrono::milliseconds patience)
    {
        if (m_common.isStopping.exchange(true)) return;
        asio::post(m_acceptor.get_executor(), [this] {
            Failure ignored;
            m_acceptor.close(ignored);
            m_pause.cancel();
        });
        {
            const std::lock_guard guard(m_mutex);
            for (const auto& known : m_sessions)
                if (const auto session = known.lock()) session->closeIfIdle();
        }
        m_common.budget.waitUntilEmpty(patience);
        m_common.workers.join();
        m_io.stop();
        for (std::thread& thread : m_threads) thread.join();
    }

    asio::io_context m_io;
    Common m_common;
    std::optional<asio::ssl::context> m_tls;
    tcp::acceptor m_acceptor;
    asio::steady_timer m_pause;
    std::vector<std::thread> m_threads;
    std::mutex m_mutex;
    std::vector<std::weak_ptr<AnySession>> m_sessions;
    std::uint16_t m_port = 0;
};

HttpServer::HttpServer(std::unique_ptr<Inside> inside) : m_inside(std::move(inside))
{
}

HttpServer::~HttpServer()
{
    stop();
}

Result<std::unique_ptr<HttpServer>> HttpServer::start(const ListenOptions& options, Answerer& answerer)
{
    auto inside = std::make_unique<Inside>(options, answerer);
    const auto listening = inside->listen();
    if (!listening) return listening.error();
    return std::unique_ptr<HttpServer>(new HttpServer(std::move(inside)));
}

std::uint16_t HttpServer::port() const
{
    return m_inside->m_port;
}

std::size_t HttpServer::connections() const
{
    return m_inside->m_common.budget.connections();
}

void HttpServer::stop(std::chrono::milliseconds patience)
{
    m_inside->stop(patience);
}

} // namespace duskrow::hub
