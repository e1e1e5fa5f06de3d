// SPDX-License-Identifier: MIT
#include "app/exchange/exchanger.h"

#include <QGuiApplication>
#include <QNetworkInformation>
#include <QPointer>
#include <QUrl>

#include <algorithm>
#include <utility>

#include "app/exchange/exchange_words.h"
#include "sync/client/hub_client.h"
#include "sync/exchange/segments_of_store.h"
#include "sync/folder/folder_route.h"
#include "sync/roster/roster_edits.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;
using sync::ExchangeReport;

namespace {

constexpr std::chrono::seconds watchEvery{30};

Result<ExchangeReport> exchangeOnce(
    const QString& way, store::Store& store, Instant now, const sync::Journey& journey)
{
    const QString where = way.section(QLatin1Char(':'), 1);
    if (way.startsWith(QLatin1String("hub:"))) return sync::exchangeByHub(store, QUrl(where), now, journey);
    return sync::exchangeByFolder(store, where.toStdString(), now, journey);
}

// On a coordinator's device newcomers are confirmed at once, and the word goes out with them.
Result<ExchangeReport> exchangeAndConfirm(
    const QString& way, store::Store& store, const Moment& now, const sync::Journey& journey)
{
    auto report = exchangeOnce(way, store, now.at, journey);
    if (!report || report->wasStopped) return report;
    const auto confirmed = sync::confirmClaims(store, now);
    if (!confirmed) report->troubles.push_back(confirmed.error());
    if (!confirmed || *confirmed == 0) return report;
    const auto again = exchangeOnce(way, store, now.at, journey);
    if (!again) return again.error();
    report->sent += again->sent;
    report->received += again->received;
    report->changes += again->changes + *confirmed;
    report->troubles.insert(report->troubles.end(), again->troubles.begin(), again->troubles.end());
    return report;
}

} // namespace

Exchanger::Exchanger(Session& session, QObject* parent) : QObject(parent), m_session(session)
{
    m_thread.setMaxThreadCount(1);
    m_watching.setInterval(watchEvery);
    connect(&m_watching, &QTimer::timeout, this, &Exchanger::exchange);
    connect(&m_session, &Session::changed, this, &Exchanger::sealWhenFull);
    listen();
    QTimer::singleShot(0, this, &Exchanger::exchange);
}

Exchanger::~Exchanger()
{
    m_isStopped = true;
    m_thread.waitForDone();
}

void Exchanger::listen()
{
    const auto* application = qobject_cast<QGuiApplication*>(QCoreApplication::instance());
    if (!application) return;
    connect(application, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive) exchange();
    });
}

// Nobody waits for this, and nobody is told but when it fails.
void Exchanger::sealWhenFull()
{
    const auto isFull = sync::isTailFull(m_session.store(), m_session.reader());
    if (!isFull) return Q_EMIT m_session.troubled(isFull.error());
    if (!*isFull) return;
    m_thread.start([this] {
        const auto reader = m_session.store().reader();
        const auto sealed = reader ? sync::sealFullTail(m_session.store(), **reader) : reader.error();
        if (sealed) return;
        QMetaObject::invokeMethod(this, [this, error = sealed.error()] { Q_EMIT m_session.troubled(error); });
    });
}

// Only where there is a hub to be reached: without one nobody asks after the network.
void Exchanger::listenToNetwork()
{
    if (m_hearsNetwork) return;
    m_hearsNetwork = true;
    if (!QNetworkInformation::loadBackendByFeatures(QNetworkInformation::Feature::Reachability)) return;
    connect(QNetworkInformation::instance(), &QNetworkInformation::reachabilityChanged, this,
        [this](QNetworkInformation::Reachability reachability) {
            if (reachability != QNetworkInformation::Reachability::Online) return;
            const auto ways = waysOf(m_session.reader());
            if (ways && !ways->hub.isEmpty()) exchangeBy(QStringLiteral("hub:") + ways->hub);
        });
}

void Exchanger::watch(bool isWatching)
{
    m_watchers += isWatching ? 1 : -1;
    if (m_watchers > 0)
        m_watching.start();
    else
        m_watching.stop();
}

bool Exchanger::isAskedFor(const QString& way) const
{
    if (m_isRunning && m_way == way) return true;
    return std::any_of(m_waiting.begin(), m_waiting.end(), [&](const Job& job) { return job.way == way; });
}

void Exchanger::exchange()
{
    const auto ways = waysOf(m_session.reader());
    if (!ways) return Q_EMIT m_session.troubled(ways.error());
    for (const QString& way : ways->keys()) exchangeBy(way);
}

void Exchanger::exchangeBy(const QString& way)
{
    if (isAskedFor(way)) return;
    if (way.startsWith(QLatin1String("hub:"))) listenToNetwork();
    m_waiting.push_back({way, wayName(way),
        [way](store::Store& store, const Moment& now, const sync::Journey& journey) {
            return exchangeAndConfirm(way, store, now, journey);
        },
        {}});
    begin();
}

void Exchanger::run(const QString& doing, Work work, QObject* context, Answer answer)
{
    m_waiting.push_back({{}, doing, std::move(work),
        [listener = QPointer<QObject>(context), answer = std::move(answer)](
            const Result<ExchangeReport>& outcome) {
            if (listener) answer(outcome);
        }});
    begin();
}

void Exchanger::stop()
{
    m_isStopped = true;
    ExchangeReport stopped;
    stopped.wasStopped = true;
    const auto forgotten = std::exchange(m_waiting, {});
    for (const Job& job : forgotten)
        if (job.answer) job.answer(stopped);
}

void Exchanger::begin()
{
    if (m_isRunning || m_waiting.empty()) return;
    m_isRunning = true;
    m_isStopped = false;
    Job job = std::move(m_waiting.front());
    m_waiting.pop_front();
    m_way = job.way;
    m_doing = job.doing;
    m_part = -1;
    Q_EMIT progressed();
    m_thread.start([this, job = std::move(job), now = m_session.clock().now()] {
        const auto journey = [this](std::int64_t done, std::int64_t all) {
            const double part = all > 0 ? static_cast<double>(done) / static_cast<double>(all) : -1;
            QMetaObject::invokeMethod(this, [this, part] {
                m_part = part;
                Q_EMIT progressed();
            });
            return !m_isStopped;
        };
        const auto outcome = job.work(m_session.store(), now, journey);
        QMetaObject::invokeMethod(this, [this, job, outcome] { finish(job, outcome); });
    });
}

void Exchanger::finish(const Job& job, const Result<ExchangeReport>& outcome)
{
    m_isRunning = false;
    m_way.clear();
    if (!job.way.isEmpty()) {
        m_said = outcome ? saidOf(*outcome) : QString();
        m_trouble = outcome ? troubleOf(*outcome) : text::sentence(outcome.error());
        remember(job.way, outcome);
    }
    // What was handed over shows too: how far each record got.
    if (outcome && (outcome->changes > 0 || outcome->photosReceived > 0 || outcome->sent > 0)) {
        m_session.refresh();
        Q_EMIT m_session.changed();
    }
    if (job.answer) job.answer(outcome);
    Q_EMIT progressed();
    Q_EMIT finished();
    begin();
}

void Exchanger::remember(const QString& way, const Result<ExchangeReport>& outcome)
{
    const auto saved = saveLastTime(m_session.store(), way, {m_session.clock().now().at, m_said, m_trouble});
    if (!saved) Q_EMIT m_session.troubled(saved.error());
    if (!outcome) qInfo("exchange: %s", outcome.error().detail.c_str());
}

} // namespace duskrow::app
