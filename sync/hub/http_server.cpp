// SPDX-License-Identifier: MIT
#include "sync/hub/http_server.h"

#include <mutex>
#include <thread>

#include "sync/hub/http_session.h"

namespace duskrow::hub {

using domain::Error;
using domain::ErrorCode;
using domain::Result;

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

int statusOf(const Failure& failure)
{
    if (failure == http::error::header_limit || failure == http::error::buffer_overflow) return 431;
    if (failure == http::error::body_limit) return 413;
    if (failure == beast::error::timeout) return 408;
    if (failure == http::error::end_of_stream || failure == http::error::partial_message) return 0;
    return failure.category() == http::make_error_code(http::error::bad_method).category() ? 400 : 0;
}

Request requestOf(http::request<http::string_body> message, const std::string& address)
{
    Request request;
    request.method = methodOf(message.method());
    request.target = std::string(message.target());
    request.address = address;
    for (const auto& field : message) {
        std::string name(field.name_string());
        for (char& letter : name) letter = beast::detail::ascii_tolower(letter);
        request.headers[std::move(name)] = std::string(field.value());
    }
    request.body = std::move(message.body());
    return request;
}

namespace {

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
            begin(TlsStream(beast::tcp_stream(std::move(socket)), *m_tls), *place);
        else
            begin(beast::tcp_stream(std::move(socket)), *place);
    }

    template <typename Stream>
    void begin(Stream stream, HttpBudget::Place& place)
    {
        auto session = std::make_shared<HttpSession<Stream>>(std::move(stream), m_common, std::move(place));
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
        m_io.stop();
        for (std::thread& thread : m_threads) thread.join();
        m_common.workers.join();
    }

    HttpCommon m_common; // before m_io, which takes the last connections with it
    asio::io_context m_io;
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
