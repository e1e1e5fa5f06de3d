// SPDX-License-Identifier: MIT
#pragma once

#include <QUrl>

#include "sync/hub/http_server.h"
#include "sync/hub/hub.h"
#include "sync/hub/store/copy.h"
#include "sync/hub_store_place.h"
#include "sync/roster/invitation_code.h"

namespace duskrow::tests {

// A hub on a free port of this machine, with a founding invitation.
class HubHere {
public:
    // certificate, key  PEM files; empty for plain HTTP
    explicit HubHere(std::string certificate = {}, std::string key = {})
        : m_certificate(std::move(certificate)), m_key(std::move(key))
    {
        founding = *sync::keyOfCode(foundingCode);
        m_store = openStore(m_place.where());
        [[maybe_unused]] const auto added =
            m_store->addFounding({founding.key, "Invented district", m_now + std::chrono::hours(24), {}, {}});
        start(0);
    }
    void start(std::uint16_t port)
    {
        auto opened = hub::Hub::open(
            *m_store, {}, [this] { return m_now; }, [](const std::string&) {});
        if (!opened) qFatal("no hub");
        m_hub = std::move(*opened);
        hub::ListenOptions options;
        options.port = port;
        options.certificate = m_certificate;
        options.key = m_key;
        auto server = hub::HttpServer::start(options, *m_hub);
        if (!server) qFatal("no server: %s", server.error().detail.c_str());
        m_server = std::move(*server);
    }
    [[nodiscard]] QUrl url() const
    {
        return QUrl(QStringLiteral("%1://127.0.0.1:%2")
                        .arg(m_certificate.empty() ? QStringLiteral("http") : QStringLiteral("https"))
                        .arg(m_server->port()));
    }
    void stop() { m_server.reset(); }
    // Copies everything, as a backup does; puts it in the place of what is there, as a restore does.
    void copy()
    {
        m_copyPlace = std::make_unique<StorePlace>();
        m_copy = openStore(m_copyPlace->where());
        if (!hub::copyStore(m_store->engine(), m_copy->engine())) qFatal("not copied");
    }
    void putBack()
    {
        const std::uint16_t port = m_server->port();
        stop();
        m_hub.reset();
        m_store = std::move(m_copy);
        if (!hub::renewEpochs(m_store->engine(), m_now)) qFatal("no new epochs");
        start(port);
    }
    [[nodiscard]] hub::HubStore& store() const { return *m_store; }
    hub::Response answer(const hub::Request& request) { return m_hub->answer(request); }

    const std::string foundingCode = sync::freshCode();
    sync::InvitationKey founding;

private:
    StorePlace m_place;
    std::string m_certificate;
    std::string m_key;
    std::unique_ptr<StorePlace> m_copyPlace;
    std::unique_ptr<hub::HubStore> m_copy;
    domain::Instant m_now = domain::instantFromMs(1'783'980'000'000);
    std::unique_ptr<hub::HubStore> m_store;
    std::unique_ptr<hub::Hub> m_hub;
    std::unique_ptr<hub::HttpServer> m_server;
};

} // namespace duskrow::tests
