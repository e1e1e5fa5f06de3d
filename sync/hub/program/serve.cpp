// SPDX-License-Identifier: MIT
#include <chrono>
#include <csignal>
#include <iostream>
#include <mutex>
#include <sys/resource.h>

#include "sync/hub/http_server.h"
#include "sync/hub/hub.h"
#include "sync/hub/program/commands.h"

namespace duskrow::hub {

namespace {

struct ServeOptions {
    std::string store;
    std::string listen = "127.0.0.1:8460";
    ListenOptions network;
    HubOptions hub;
    double perMinute = 0;
};

Instant clockNow()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

void writeLog(const std::string& line)
{
    static std::mutex mutex;
    const std::lock_guard guard(mutex);
    std::cerr << line + '\n';
}

// As many files as the system lets us have: each connection is one.
void raiseFileLimit()
{
    rlimit limit{};
    if (getrlimit(RLIMIT_NOFILE, &limit) != 0) return;
    limit.rlim_cur = limit.rlim_max;
    setrlimit(RLIMIT_NOFILE, &limit);
}

// "127.0.0.1:8460", "[::1]:8460"
domain::Result<domain::Done> readAddress(const std::string& text, ListenOptions& network)
{
    const auto colon = text.rfind(':');
    const std::string port = colon == std::string::npos ? "" : text.substr(colon + 1);
    std::string address = text.substr(0, colon);
    if (address.size() > 2 && address.front() == '[' && address.back() == ']')
        address = address.substr(1, address.size() - 2);
    const bool isNumber =
        !port.empty() && port.size() <= 5 && port.find_first_not_of("0123456789") == std::string::npos;
    const int number = isNumber ? std::stoi(port) : -1;
    if (number < 0 || number > 65535) return domain::Error{domain::ErrorCode::NetworkUnusable, {text}};
    network.address = address;
    network.port = static_cast<std::uint16_t>(number);
    return domain::Done{};
}

domain::Result<int> serve(ServeOptions options)
{
    const auto read = readAddress(options.listen, options.network);
    if (!read) return read.error();
    if (options.perMinute > 0)
        options.hub.token = options.hub.address = {std::max(1.0, options.perMinute / 2), options.perMinute};
    if (options.hub.isBehindProxy) {
        // All connections are the proxy's.
        options.network.connectionsOfOne = options.network.connections;
        options.network.bytesOfOne = options.network.bytes;
    }
    raiseFileLimit();
    auto engine = openEngine(options.store, Opening::Serve);
    if (!engine) return engine.error();
    HubStore store(std::move(*engine));
    const auto hub = Hub::open(store, options.hub, clockNow, writeLog);
    if (!hub) return hub.error();
    const auto server = HttpServer::start(options.network, **hub);
    if (!server) return server.error();
    std::cout << "Serving at http" << (options.network.certificate.empty() ? "" : "s") << "://"
              << options.network.address << ':' << (*server)->port() << std::endl;

    sigset_t ends;
    sigemptyset(&ends);
    sigaddset(&ends, SIGTERM);
    sigaddset(&ends, SIGINT);
    int signal = 0;
    sigwait(&ends, &signal);
    (*server)->stop();
    return 0;
}

} // namespace

CommandWork declareServe(CLI::App& line)
{
    const auto options = std::make_shared<ServeOptions>();
    line.add_option("--store", options->store, "A file, or postgresql://...")->required();
    line.add_option("--listen", options->listen, "Address and port")->capture_default_str();
    auto* certificate =
        line.add_option("--tls-cert", options->network.certificate, "PEM file: certificate and its chain");
    auto* key = line.add_option("--tls-key", options->network.key, "PEM file: its private key");
    certificate->needs(key);
    key->needs(certificate);
    line.add_flag(
        "--behind-proxy", options->hub.isBehindProxy, "Believe the last address of X-Forwarded-For");
    line.add_flag(
        "--open-metrics", options->hub.hasOpenMetrics, "Metrics for everybody, not for this machine only");
    line.add_option(
        "--requests-per-minute", options->perMinute, "For each token and each address; half of it at once");
    return [options] { return serve(*options); };
}

} // namespace duskrow::hub
