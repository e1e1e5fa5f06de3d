// SPDX-License-Identifier: MIT
#pragma once

#include <QTcpSocket>

#include <nlohmann/json.hpp>

#include "domain/base/signing.h"
#include "sync/hub_phone.h"

// One connection to a hub, kept open; each request waits for its answer.
namespace duskrow::bench {

struct Answer {
    int status = 0;
    std::string head; // status line and headers
    std::string body;

    // The number of a header; -1 when there is none.
    [[nodiscard]] std::int64_t number(const std::string& name) const
    {
        const std::size_t at = head.find("\r\n" + name + ": ");
        return at == std::string::npos ? -1 : std::strtoll(head.c_str() + at + name.size() + 4, nullptr, 10);
    }
};

class HubLink {
public:
    explicit HubLink(quint16 port)
    {
        m_socket.connectToHost(QStringLiteral("127.0.0.1"), port);
        if (!m_socket.waitForConnected()) qFatal("no connection");
        m_socket.setSocketOption(QAbstractSocket::LowDelayOption, 1);
    }

    Answer ask(const std::string& method, const std::string& path, const std::string& body = {},
        const std::string& token = {}, const std::string& type = "application/octet-stream")
    {
        std::string request = method + " /v1" + path + " HTTP/1.1\r\nHost: hub\r\n";
        if (!token.empty()) request += "Authorization: Bearer " + token + "\r\n";
        if (method != "GET")
            request +=
                "Content-Type: " + type + "\r\nContent-Length: " + std::to_string(body.size()) + "\r\n";
        request += "\r\n" + body;
        m_socket.write(request.data(), static_cast<qint64>(request.size()));
        return answer();
    }
    Answer post(const std::string& path, const nlohmann::json& body)
    {
        return ask("POST", path, body.dump(), {}, "application/json");
    }

    // A token for a device that the roster knows.
    void enter(tests::Phone& phone)
    {
        const std::string home = "/programmes/" + formatUuid(phone.programme);
        const std::string stream = domain::formatHex(phone.stream);
        const auto asked = nlohmann::json::parse(post(home + "/challenge", {{"stream", stream}}).body);
        const std::string nonce = asked.at("nonce");
        std::array<std::uint8_t, 32> bytes{};
        domain::parseHex(nonce, bytes);
        std::string message = "duskrow-token-v1";
        message.append(phone.programme.bytes.begin(), phone.programme.bytes.end());
        message.append(bytes.begin(), bytes.end());
        const Answer given = post(home + "/token",
            {{"nonce", nonce}, {"proof", domain::formatHex(phone.keys.sign(message))}, {"stream", stream}});
        if (given.status != 201) qFatal("no token: %s", given.body.c_str());
        phone.token = nlohmann::json::parse(given.body).at("token");
    }

private:
    Answer answer()
    {
        Answer answer;
        std::string bytes;
        std::size_t end = std::string::npos;
        while ((end = bytes.find("\r\n\r\n")) == std::string::npos) bytes += more();
        answer.head = bytes.substr(0, end);
        answer.status = std::atoi(answer.head.c_str() + 9);
        answer.body = bytes.substr(end + 4);
        const auto length =
            static_cast<std::size_t>(std::max<std::int64_t>(answer.number("Content-Length"), 0));
        while (answer.body.size() < length) answer.body += more();
        return answer;
    }

    std::string more()
    {
        if (m_socket.bytesAvailable() == 0 && !m_socket.waitForReadyRead(60'000))
            qFatal("no answer: %s", qPrintable(m_socket.errorString()));
        return m_socket.readAll().toStdString();
    }

    QTcpSocket m_socket;
};

} // namespace duskrow::bench
