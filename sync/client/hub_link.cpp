// SPDX-License-Identifier: MIT
#include "sync/client/hub_link.h"

#include <QEventLoop>
#include <QNetworkReply>
#include <QTimer>

#include <algorithm>
#include <charconv>

#include "domain/log/bounded_json.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

constexpr qint64 mostAnswerBytes = qint64{20} << 20; // a photograph, or a page of segments
constexpr int idleMs = 30'000;
constexpr int mostTries = 4;
constexpr int longestPauseMs = 30'000;
constexpr int askEveryMs = 100; // whether the answer is still wanted

// What a busy hub asks for, in milliseconds.
int pauseAskedFor(const HubAnswer& answer)
{
    const std::string text = answer.header("retry-after");
    int seconds = 1;
    std::from_chars(text.data(), text.data() + text.size(), seconds);
    return std::clamp(seconds, 1, longestPauseMs / 1000) * 1000;
}

} // namespace

std::string HubAnswer::header(const std::string& name) const
{
    const auto found = headers.find(name);
    return found == headers.end() ? std::string() : found->second;
}

HubLink::HubLink(QUrl hub, std::function<bool()> isWanted, HubTransport transport)
    : m_hub(std::move(hub)), m_isWanted(std::move(isWanted)), m_transport(std::move(transport))
{
    if (m_transport) return;
    m_network = std::make_unique<QNetworkAccessManager>();
    m_network->setRedirectPolicy(QNetworkRequest::ManualRedirectPolicy);
    m_network->setTransferTimeout(idleMs);
}

bool HubLink::isStopped()
{
    if (m_isWanted && !m_isWanted()) m_isStopped = true;
    return m_isStopped;
}

void HubLink::pause(int ms)
{
    QEventLoop loop;
    QTimer asking;
    QObject::connect(&asking, &QTimer::timeout, &loop, [&] {
        if (isStopped()) loop.quit();
    });
    asking.start(askEveryMs);
    QTimer::singleShot(ms, &loop, &QEventLoop::quit);
    loop.exec();
}

Result<HubAnswer> HubLink::get(const std::string& path)
{
    return send("GET", path, {});
}

Result<HubAnswer> HubLink::post(const std::string& path, const nlohmann::json& body)
{
    return send("POST", path, body.dump(), {{"Content-Type", "application/json"}});
}

Result<HubAnswer> HubLink::send(const char* method, const std::string& path, std::string_view bytes,
    const std::map<std::string, std::string>& headers)
{
    if (m_transport) {
        HubQuestion question{method, "/v1" + path, bytes, headers};
        if (!m_token.empty()) question.headers["Authorization"] = "Bearer " + m_token;
        return m_transport(question);
    }
    QUrl url = m_hub;
    const auto question = path.find('?');
    QString base = url.path();
    while (base.endsWith(QLatin1Char('/'))) base.chop(1);
    url.setPath(base + QStringLiteral("/v1") + QString::fromStdString(path.substr(0, question)));
    if (question != std::string::npos) url.setQuery(QString::fromStdString(path.substr(question + 1)));
    QNetworkRequest request(url);
    for (const auto& [name, value] : headers)
        request.setRawHeader(QByteArray::fromStdString(name), QByteArray::fromStdString(value));
    if (!m_token.empty())
        request.setRawHeader("Authorization", "Bearer " + QByteArray::fromStdString(m_token));
    for (int attempt = 1;; ++attempt) {
        auto answer = once(request, method, bytes);
        const bool isBusy = answer && (answer->status == 429 || answer->status == 503);
        if (!isBusy || attempt == mostTries) return answer;
        pause(pauseAskedFor(*answer));
    }
}

Result<HubAnswer> HubLink::once(QNetworkRequest request, const char* method, std::string_view bytes)
{
    const Error stopped{ErrorCode::HubUnreachable, {address()}, "stopped"};
    if (isStopped()) return stopped;
    const QByteArray body(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QNetworkReply* reply = m_network->sendCustomRequest(request, method, body);
    QEventLoop loop;
    QObject::connect(reply, &QNetworkReply::finished, &loop, &QEventLoop::quit);
    QObject::connect(reply, &QNetworkReply::downloadProgress, reply, [reply](qint64 got, qint64) {
        if (got > mostAnswerBytes) reply->abort();
    });
    QTimer asking;
    QObject::connect(&asking, &QTimer::timeout, reply, [this, reply] {
        if (isStopped()) reply->abort();
    });
    asking.start(askEveryMs);
    if (!reply->isFinished()) loop.exec();
    reply->deleteLater();
    if (m_isStopped) return stopped;

    HubAnswer answer;
    if (reply->error() == QNetworkReply::SslHandshakeFailedError)
        return Error{ErrorCode::HubNotTrusted, {address()}, reply->errorString().toStdString()};
    answer.status = reply->attribute(QNetworkRequest::HttpStatusCodeAttribute).toInt();
    if (answer.status == 0)
        return Error{ErrorCode::HubUnreachable, {address()}, reply->errorString().toStdString()};
    answer.body = reply->readAll().toStdString();
    for (const auto& [name, value] : reply->rawHeaderPairs())
        answer.headers[name.toLower().toStdString()] = value.toStdString();
    // Networks that ask for a log-in answer everything with a page or send elsewhere.
    const bool isElsewhere = answer.status >= 300 && answer.status < 400 && answer.status != 304;
    const std::string type = answer.header("content-type");
    const bool isPage = !answer.body.empty() && !type.starts_with("application/");
    if (isElsewhere || isPage || reply->error() == QNetworkReply::OperationCanceledError)
        return Error{ErrorCode::HubNotOurs, {address()}, type};
    return answer;
}

Error HubLink::refusal(const HubAnswer& answer) const
{
    const auto object = objectIn(answer);
    std::string said = object ? textIn(*object, "message") : std::string();
    if (said.empty()) said = std::to_string(answer.status);
    while (said.ends_with('.')) said.pop_back();
    return Error{ErrorCode::HubRefused, {address(), said}};
}

std::optional<nlohmann::json> objectIn(const HubAnswer& answer)
{
    auto object = parseBounded(answer.body, 8, Numbers::WholeOnly);
    if (!object || !object->is_object()) return std::nullopt;
    return object;
}

std::string textIn(const nlohmann::json& object, const char* key)
{
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

} // namespace duskrow::sync
