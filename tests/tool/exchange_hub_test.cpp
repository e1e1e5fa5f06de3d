// SPDX-License-Identifier: MIT
#include <QTest>

#include "exchange_tool.h"
#include "sync/hub_here.h"

using namespace duskrow::domain;
using namespace duskrow::tests;

// A programme that lives at a hub, by the command line.
class ExchangeHubTest : public QObject {
    Q_OBJECT

private:
    ExchangeTool m_tool;
    HubHere m_hub;

    Ran run(const char* device, const QString& line) const
    {
        return m_tool.run(device, line.arg(m_hub.url().toString()).toUtf8().constData());
    }

private Q_SLOTS:
    void foundedInvitedAndJoined()
    {
        const QString code = QString::fromStdString(m_hub.foundingCode);
        const Ran wrong =
            run("desk", QStringLiteral("programme new @other --name Valley --hub %1 --code 0000000000"));
        QVERIFY2(wrong.isRefusal("Nobody knows this code here"), qPrintable(wrong.err));
        const Ran made =
            run("desk", QStringLiteral("programme new @desk --name Valley --me Ida --hub %1 --code ") + code);
        QCOMPARE(made.err, QString());
        QCOMPARE(made.exit, 0);
        const Ran invited = run("desk",
            QStringLiteral(
                "programme invite @desk --name Tom --role grower --until 2099-12-31 --hub %1 --json"));
        QCOMPARE(invited.exit, 0);
        QCOMPARE(run("desk", QStringLiteral("exchange @desk --hub %1")).exit, 0);
        const Ran joined = m_tool.run(QStringLiteral("tom"),
            {QStringLiteral("programme"), QStringLiteral("join"), QStringLiteral("@tom"),
                QStringLiteral("--code"), invited.at("link"), QStringLiteral("--json")});
        QCOMPARE(joined.err, QString());
        QCOMPARE(joined.exit, 0);
        QCOMPARE(joined.at("member"), invited.at("member"));
        QCOMPARE(joined.at("name"), QStringLiteral("Valley"));
        const Ran let = run("desk", QStringLiteral("exchange @desk --hub %1 --json"));
        QCOMPARE(let.exit, 0);
        QCOMPARE(let.numberAt("devices_confirmed"), 1);
        const Ran again = m_tool.run(QStringLiteral("eva"),
            {QStringLiteral("programme"), QStringLiteral("join"), QStringLiteral("@eva"),
                QStringLiteral("--code"), invited.at("link")});
        QVERIFY2(again.isRefusal("Nobody knows this code here"), qPrintable(again.err));
    }

    void recordsCross()
    {
        const Site site = siteNamed("Slough corner");
        const Trap trap = trapAt(site, "1");
        const Visit visit = visitTo(trap, 12);
        keep(*m_tool.scene.open("tom"),
            {creation(site, site.id), creation(trap, site.id), creation(visit, site.id)});
        QCOMPARE(run("tom", QStringLiteral("exchange @tom --hub %1")).exit, 0);
        QCOMPARE(run("desk", QStringLiteral("exchange @desk --hub %1")).exit, 0);
        QCOMPARE(countedIn(*m_tool.scene.open("desk"), visit.id), std::int64_t{12});
        const auto tom = m_tool.scene.open("tom");
        QVERIFY(rosterIn(*tom).devices().at(tom->stream()).isConfirmed);
        const auto reader = got(tom->reader());
        QVERIFY(got(duskrow::store::asideChanges(*reader)).empty());
    }

    void aHubThatIsNotThere()
    {
        const Ran ran = m_tool.run("desk", "exchange @desk --hub http://127.0.0.1:9");
        QVERIFY2(ran.isRefusal("does not answer"), qPrintable(ran.err));
    }
};

QTEST_GUILESS_MAIN(ExchangeHubTest)
#include "exchange_hub_test.moc"
