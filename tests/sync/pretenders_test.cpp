// SPDX-License-Identifier: MIT
#include <QProcess>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTest>

#include "sync/client/hub_client.h"
#include "sync/exchange_scene.h"
#include "sync/hub_here.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

using Answers = std::function<QByteArray(const QByteArray& firstLine)>;

QByteArray http(const char* status, const char* type, const QByteArray& body, const char* more = "")
{
    return QByteArray("HTTP/1.1 ") + status + "\r\nContent-Type: " + type + "\r\n" + more
        + "Content-Length: " + QByteArray::number(body.size()) + "\r\nConnection: close\r\n\r\n" + body;
}

// Answers every request with bytes of its own, and closes.
class Pretender {
public:
    explicit Pretender(Answers answers) : m_answers(std::move(answers))
    {
        QObject::connect(&m_server, &QTcpServer::newConnection, [this] {
            QTcpSocket* line = m_server.nextPendingConnection();
            QObject::connect(line, &QTcpSocket::readyRead, line, [this, line] {
                const QByteArray request = line->readAll();
                if (!request.contains("HTTP/1.1")) return; // the rest of a body
                ++asked;
                line->write(m_answers(request.left(request.indexOf("\r\n"))));
                line->disconnectFromHost();
            });
            QObject::connect(line, &QTcpSocket::disconnected, line, &QObject::deleteLater);
        });
        m_server.listen(QHostAddress::LocalHost);
    }
    [[nodiscard]] QUrl url() const
    {
        return QUrl(QStringLiteral("http://127.0.0.1:%1").arg(m_server.serverPort()));
    }

    int asked = 0;

private:
    QTcpServer m_server;
    Answers m_answers;
};

const QByteArray json = "application/json";

// Knows every call and agrees to everything, without keeping any of it.
QByteArray yesMan(const QByteArray& line)
{
    if (line.contains("/challenge"))
        return http("200 OK", json, "{\"nonce\":\"" + QByteArray(64, '0') + "\"}");
    if (line.contains("/token"))
        return http("201 Created", json, "{\"token\":\"" + QByteArray(64, '0') + "\"}");
    if (line.contains("/state")) return http("200 OK", json, R"({"epoch":1,"head":0,"next":1,"time":1})");
    return http("201 Created", json, "{}");
}

} // namespace

// Whatever stands where the hub should be: nothing counts as handed over, nothing is lost, and the person is
// told what to do.
class PretendersTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingIsHandedOver_data()
    {
        QTest::addColumn<int>("kind");
        QTest::addColumn<int>("code");
        const auto row = [](const char* name, int kind, ErrorCode code) {
            QTest::newRow(name) << kind << static_cast<int>(code);
        };
        row("a log-in page", 0, ErrorCode::HubNotOurs);
        row("sent elsewhere", 1, ErrorCode::HubNotOurs);
        row("another program's answer", 2, ErrorCode::HubNotOurs);
        row("says yes to everything", 3, ErrorCode::HubNotOurs);
        row("speaks something else", 4, ErrorCode::HubUnreachable);
        row("hangs up", 5, ErrorCode::HubUnreachable);
        row("a page without end", 6, ErrorCode::HubNotOurs);
    }
    void nothingIsHandedOver()
    {
        QFETCH(const int, kind);
        QFETCH(const int, code);
        Pretender pretender([kind](const QByteArray& line) -> QByteArray {
            switch (kind) {
            case 0:
                return http("200 OK", "text/html", "<html>Welcome, please log in</html>");
            case 1:
                return http("302 Found", "text/html", "", "Location: http://127.0.0.1:9/login\r\n");
            case 2:
                return http("200 OK", json, R"({"hello":"world"})");
            case 3:
                return yesMan(line);
            case 4:
                return "SSH-2.0-something\r\n";
            case 6:
                return "HTTP/1.1 200 OK\r\nContent-Type: application/json\r\n\r\n"
                    + QByteArray(24 << 20, ' ');
            default:
                return {};
            }
        });
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto report = sync::exchangeByHub(ada.store(), pretender.url(), ada.now);
        QVERIFY(!report);
        QCOMPARE(static_cast<int>(report.error().code), code);
        QVERIFY(pretender.asked > 0);
        const auto handed = store::handedOver(*ada.reader(), ada.store().stream());
        QCOMPARE(handed->here, 3);
        QCOMPARE(handed->atHub, 0);
        QVERIFY(ada.isSound());
    }

    // The certificate is not one that this device trusts: not even the token leaves it.
    void aCertificateThatProvesNothing()
    {
        const QTemporaryDir folder;
        const QString certificate = folder.filePath(QStringLiteral("cert.pem"));
        const QString key = folder.filePath(QStringLiteral("key.pem"));
        const QStringList make{QStringLiteral("req"), QStringLiteral("-x509"), QStringLiteral("-newkey"),
            QStringLiteral("rsa:2048"), QStringLiteral("-nodes"), QStringLiteral("-subj"),
            QStringLiteral("/CN=localhost"), QStringLiteral("-days"), QStringLiteral("2"),
            QStringLiteral("-keyout"), key, QStringLiteral("-out"), certificate};
        QCOMPARE(QProcess::execute(QStringLiteral("openssl"), make), 0);
        const HubHere hub(certificate.toStdString(), key.toStdString());
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto report = sync::exchangeByHub(ada.store(), hub.url(), ada.now);
        QVERIFY(!report);
        QCOMPARE(report.error().code, ErrorCode::HubNotTrusted);
        QCOMPARE(store::handedOver(*ada.reader(), ada.store().stream())->here, 3);
    }
};

QTEST_GUILESS_MAIN(PretendersTest)
#include "pretenders_test.moc"
