// SPDX-License-Identifier: MIT
#include <QTest>

#include "exchange_tool.h"
#include "sync/roster/invitation_code.h"

using namespace duskrow::domain;
using namespace duskrow::tests;

class ExchangeRefusalsTest : public QObject {
    Q_OBJECT

private:
    ExchangeTool m_tool;
    QString m_code; // of Tom, who is in
    QString m_open; // not used
    QString m_past;

    QStringList joining(const QString& code) const
    {
        return {QStringLiteral("programme"), QStringLiteral("join"), QStringLiteral("@new"),
            QStringLiteral("--code"), code, QStringLiteral("--folder"), QStringLiteral("@shared")};
    }

private Q_SLOTS:
    void initTestCase()
    {
        QCOMPARE(m_tool.run("desk", "programme new @desk --name Valley --me Ida").exit, 0);
        m_code = m_tool.run("desk", "programme invite @desk --name Tom --role grower --json").at("code");
        m_open = m_tool.run("desk", "programme invite @desk --name Ann --role agronomist --json").at("code");
        {
            const auto desk = m_tool.scene.open("desk");
            m_past = QString::fromStdString(
                JoiningScene::invited(*desk, "Late", Role::Grower, dayOf(2020, 1, 1)).code);
        }
        QCOMPARE(m_tool.run("desk", "exchange @desk --folder @shared").exit, 0);
        const Ran joined = m_tool.run(QStringLiteral("tom"),
            {QStringLiteral("programme"), QStringLiteral("join"), QStringLiteral("@tom"),
                QStringLiteral("--code"), m_code, QStringLiteral("--folder"), QStringLiteral("@shared")});
        QCOMPARE(joined.err, QString());
        QVERIFY2(joined.out.contains(QStringLiteral("You are in Valley")), qPrintable(joined.out));
        const Ran let = m_tool.run("desk", "exchange @desk --folder @shared");
        QVERIFY2(let.out.contains(QStringLiteral("Devices that were let in: 1.")), qPrintable(let.out));
        QCOMPARE(m_tool.run("tom", "exchange @tom --folder @shared").exit, 0);
    }

    void codesThatDoNotOpen()
    {
        const auto said = [&](const QString& code, const char* words) {
            const Ran ran = m_tool.run(QStringLiteral("new"), joining(code));
            return ran.isRefusal(words) && !QFileInfo::exists(m_tool.path(QStringLiteral("new")));
        };
        QVERIFY(said(QStringLiteral("0000000000"), "Nobody knows this code here"));
        QVERIFY(said(QStringLiteral("7K3QM"), "is no invitation"));
        QVERIFY(said(m_code, "A device has come in with this code already"));
        QVERIFY(said(m_past, "This invitation was good until 2020-01-01"));
        // On a device that is in already.
        const Ran again = m_tool.run(QStringLiteral("tom"), joining(m_open));
        QVERIFY2(again.isRefusal("This device is in that programme already"), qPrintable(again.err));
    }

    void refusedInOneSentence_data()
    {
        QTest::addColumn<QByteArray>("device");
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<QByteArray>("said");
        const auto row = [](const char* device, const char* line, const char* said) {
            QTest::newRow(line) << QByteArray(device) << QByteArray(line) << QByteArray(said);
        };
        row("desk", "exchange @desk", "See duskrow-tool exchange --help");
        row("desk", "exchange @desk --folder @shared --read @x", "See duskrow-tool exchange --help");
        row("desk", "exchange @desk --folder @shared --for Tom", "See duskrow-tool exchange --help");
        row("desk", "exchange @gone --folder @shared", "There is no store at");
        row("desk", "exchange @desk --folder @gone", "is not there");
        row("desk", "exchange @desk --read @gone", "cannot be read");
        row("desk", "exchange @desk --read @desk", "is not a file that Duskrow wrote");
        row("desk", "exchange @desk --write @desk/a.dusk", "cannot be written");
        row("desk", "exchange @desk --write @a.dusk --for Nobody", "There is no member called “Nobody”");
        row("desk", "exchange @desk --hub here", "The hub at here does not answer");
        row("desk", "programme", "See duskrow-tool programme --help");
        row("desk", "programme new @desk --name Again", "There is already a file at");
        row("desk", "programme new @x --name \" \"", "is empty");
        row("desk", "programme new @x", "See duskrow-tool programme new --help");
        row("desk", "programme new @x --name N --code 7K3QM-2XV9A", "See duskrow-tool programme new --help");
        row("desk", "programme invite @desk --name X --role king", "The role cannot be “king”");
        row("desk", "programme invite @desk --name X", "See duskrow-tool programme invite --help");
        row("desk", "programme invite @desk", "See duskrow-tool programme invite --help");
        row("desk", "programme invite @desk --again Nobody", "There is no member called “Nobody”");
        row("desk", "programme invite @desk --name X --role grower --until soon", "is not a day");
        row("desk", "programme invite @desk --name X --role grower --until 2020-01-01", "was good until");
        row("tom", "programme invite @tom --name X --role grower", "Only a coordinator");
        row("tom", "programme end @tom --device 00", "Only a coordinator");
        row("desk", "programme end @desk --device 00", "There is no device called “00”");
        row("new", "programme join @new --code 7K3QM-2XV9A", "See duskrow-tool programme join --help");
        row("new", "programme join @new --code 7K3QM-2XV9A --folder @gone", "is not there");
        row("new", "programme join @new --code 7K3QM-2XV9A --folder @shared --bring @gone",
            "There is no store at");
        row("tom", "settle @tom --record x --field pest --value 1", "Only a coordinator");
        row("desk", "settle @desk --record x --field pest --value 1",
            "There is no difference called “x pest”");
        row("desk", "settle @desk --record x --field pest", "See duskrow-tool settle --help");
        row("desk", "differences @gone", "There is no store at");
        row("desk", "programme members @gone", "There is no store at");
    }

    void refusedInOneSentence()
    {
        QFETCH(QByteArray, device);
        QFETCH(QByteArray, line);
        QFETCH(QByteArray, said);
        const Ran ran = m_tool.run(device.constData(), line.constData());
        QVERIFY2(ran.isRefusal(said.constData()), qPrintable(ran.out + ran.err));
    }

    void everySubcommandHasHelp()
    {
        for (const char* command : {"new", "found", "invite", "join", "members", "end"}) {
            const Ran ran = m_tool.run("desk", (std::string("programme ") + command + " --help").c_str());
            QCOMPARE(ran.exit, 0);
            QVERIFY2(ran.out.contains(QStringLiteral("STORE")), command);
        }
        for (const char* command : {"exchange", "differences", "settle"}) {
            const Ran ran = m_tool.run("desk", (std::string(command) + " --help").c_str());
            QCOMPARE(ran.exit, 0);
            QVERIFY2(ran.out.contains(QStringLiteral("--json")), command);
        }
    }

    // Whoever only looks need not close the app first; whoever writes must.
    void theAppMayHaveTheStoreOpen()
    {
        const auto app = m_tool.scene.open("desk");
        for (const char* line : {"differences @desk", "differences @desk --json", "programme members @desk"})
            QCOMPARE(m_tool.run("desk", line).exit, 0);
        QVERIFY(m_tool.run("desk", "programme invite @desk --again Tom")
                    .isRefusal("Another program has the store"));
    }

    void whatPeopleReadInTheLists()
    {
        const Ran members = m_tool.run("desk", "programme members @desk");
        QCOMPARE(members.exit, 0);
        for (const char* words : {"Ida", "founding", "Tom", "grower", "An invitation for Ann is open until"})
            QVERIFY2(members.out.contains(QString::fromUtf8(words)), qPrintable(members.out));
        QCOMPARE(m_tool.run("desk", "differences @desk").out, QStringLiteral("Nothing differs.\n"));
        const Ran invited =
            m_tool.run("desk", "programme invite @desk --again Tom --hub https://hub.example");
        QVERIFY2(
            invited.out.contains(QStringLiteral("&hub=https%3a%2f%2fhub.example")), qPrintable(invited.out));
    }
};

QTEST_GUILESS_MAIN(ExchangeRefusalsTest)
#include "exchange_refusals_test.moc"
