// SPDX-License-Identifier: MIT
#include <QElapsedTimer>
#include <QTcpServer>
#include <QTest>

#include "sync/client/hub_client.h"
#include "sync/exchange_scene.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

constexpr qint64 soon = 5000; // the client's own patience is 30 seconds

} // namespace

// Something that takes the call and never answers, as the networks of hotels and trains do.
class HubSilentTest : public QObject {
    Q_OBJECT

    QTcpServer m_server;
    QElapsedTimer m_since;

    [[nodiscard]] QUrl url() const
    {
        return QUrl(QStringLiteral("http://127.0.0.1:%1").arg(m_server.serverPort()));
    }

    // Wants to stop once the call was taken.
    [[nodiscard]] sync::Journey shortJourney() const
    {
        return [this](std::int64_t, std::int64_t) { return !m_server.hasPendingConnections(); };
    }

private Q_SLOTS:

    void init()
    {
        QVERIFY(m_server.isListening() || m_server.listen(QHostAddress::LocalHost));
        while (m_server.hasPendingConnections()) delete m_server.nextPendingConnection();
        m_since.start();
    }

    void anExchangeStopsThoughNobodyAnswers()
    {
        ProgrammeScene scene;
        const Person& ada = scene.coordinator();
        m_since.restart();
        const auto report = sync::exchangeByHub(ada.store(), url(), ada.now, shortJourney());
        QVERIFY(report);
        QVERIFY(report->wasStopped);
        QCOMPARE(report->sent, 0);
        QVERIFY2(m_since.elapsed() < soon, qPrintable(QString::number(m_since.elapsed())));
        QVERIFY(m_server.hasPendingConnections()); // it was really called
    }

    void lookingAnInvitationUpStops()
    {
        const auto ticket = sync::ticketAtHub(url(), {}, shortJourney());
        QVERIFY(!ticket);
        QCOMPARE(ticket.error().code, ErrorCode::HubUnreachable);
        QVERIFY(m_since.elapsed() < soon);
    }

    void foundingStops()
    {
        ProgrammeScene scene;
        const auto key = sync::keyOfCode("7K2QDM4XWA");
        QVERIFY(key);
        m_since.restart();
        const auto founded =
            sync::foundAtHub(scene.coordinator().store(), url(), *key, "Elm flats", shortJourney());
        QVERIFY(!founded);
        QVERIFY(m_since.elapsed() < soon);
    }

    // Stopped before it begins, nobody is called.
    void whatIsStoppedAtOnceCallsNobody()
    {
        QTcpServer other;
        QVERIFY(other.listen(QHostAddress::LocalHost));
        ProgrammeScene scene;
        const auto report = sync::exchangeByHub(scene.coordinator().store(),
            QUrl(QStringLiteral("http://127.0.0.1:%1").arg(other.serverPort())), scene.coordinator().now,
            [](std::int64_t, std::int64_t) { return false; });
        QVERIFY(report && report->wasStopped);
        QVERIFY(!other.waitForNewConnection(100));
    }
};

QTEST_GUILESS_MAIN(HubSilentTest)
#include "hub_silent_test.moc"
