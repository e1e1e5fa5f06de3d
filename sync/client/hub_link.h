// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QNetworkAccessManager>
#include <QUrl>

#include <functional>
#include <memory>
#include <nlohmann/json.hpp>

#include "sync/client/hub_transport.h"

namespace duskrow::sync {

// Requests to one hub, one after another, each awaited. An answer that no hub gives (a log-in page, another
// server) is an error; so is one that is larger than an answer may be.
class HubLink {
public:
    // isWanted  asked again and again while an answer is awaited. Once it says no, the wait and all later
    //           requests end with HubUnreachable
    explicit HubLink(QUrl hub, std::function<bool()> isWanted = {}, HubTransport transport = {});

    void setToken(std::string token) { m_token = std::move(token); }

    // path  after /v1, beginning with a slash
    // Errors  HubUnreachable, HubNotOurs, HubNotTrusted {address}
    domain::Result<HubAnswer> get(const std::string& path);
    domain::Result<HubAnswer> post(const std::string& path, const nlohmann::json& body);
    domain::Result<HubAnswer> send(const char* method, const std::string& path, std::string_view bytes,
        const std::map<std::string, std::string>& headers = {});

    // What a refusal says, as an Error that a person can read.
    [[nodiscard]] domain::Error refusal(const HubAnswer& answer) const;
    [[nodiscard]] std::string address() const { return m_hub.toString().toStdString(); }

private:
    domain::Result<HubAnswer> once(QNetworkRequest request, const char* method, std::string_view bytes);

    [[nodiscard]] bool isStopped();
    void pause(int ms);

    QUrl m_hub;
    std::function<bool()> m_isWanted;
    bool m_isStopped = false;
    HubTransport m_transport;
    std::string m_token;
    std::unique_ptr<QNetworkAccessManager> m_network; // when there is no other transport
};

// The object that an answer holds; nothing when it is none.
std::optional<nlohmann::json> objectIn(const HubAnswer& answer);
std::string textIn(const nlohmann::json& object, const char* key);

} // namespace duskrow::sync
