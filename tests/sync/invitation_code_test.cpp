// SPDX-License-Identifier: MIT
#include <QTest>

#include <sodium.h>

#include "sync/roster/invitation_code.h"

using namespace duskrow::sync;
using duskrow::domain::formatHex;

class InvitationCodeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    void read_data()
    {
        QTest::addColumn<QByteArray>("typed");
        QTest::addColumn<QByteArray>("code");
        QTest::newRow("as shown") << QByteArray("7K3QM-2XV9A") << QByteArray("7K3QM2XV9A");
        QTest::newRow("small") << QByteArray("7k3qm-2xv9a") << QByteArray("7K3QM2XV9A");
        QTest::newRow("hyphens anywhere") << QByteArray("--7K3-QM2 XV9A-") << QByteArray("7K3QM2XV9A");
        QTest::newRow("letters like digits") << QByteArray("IiLlO-oZZZZ") << QByteArray("111100ZZZZ");
        QTest::newRow("U is no letter of it") << QByteArray("7K3QM-2XV9U") << QByteArray();
        QTest::newRow("short") << QByteArray("7K3QM-2XV9") << QByteArray();
        QTest::newRow("long") << QByteArray("7K3QM-2XV9AA") << QByteArray();
        QTest::newRow("nothing") << QByteArray("") << QByteArray();
        QTest::newRow("no ASCII") << QByteArray("7K3QM-2XV9\xc3\x84") << QByteArray();
    }
    void read()
    {
        QFETCH(QByteArray, typed);
        QFETCH(QByteArray, code);
        const auto result = readCode(typed.toStdString());
        QCOMPARE(result.has_value(), !code.isEmpty());
        if (result)
            QCOMPARE(*result, code.toStdString());
        else
            QCOMPARE(result.error().code, duskrow::domain::ErrorCode::CodeUnreadable);
    }

    void codesUseAllFiftyBits()
    {
        QCOMPARE(codeFrom({0, 0, 0, 0, 0, 0, 0}), std::string("0000000000"));
        QCOMPARE(codeFrom({255, 255, 255, 255, 255, 255, 255}), std::string("ZZZZZZZZZZ"));
        QCOMPARE(codeFrom({0, 0, 0, 0, 0, 0, 33}), std::string("1100000000"));
        QCOMPARE(shownCode("7K3QM2XV9A"), std::string("7K3QM-2XV9A"));
        QVERIFY(freshCode() != freshCode());
        QVERIFY(readCode(freshCode()).has_value());
    }

    // Computed with the Argon2id of PyNaCl 1.5.0 and its Ed25519, from FORMAT.md section 5 alone.
    void keys_data()
    {
        QTest::addColumn<QByteArray>("code");
        QTest::addColumn<QByteArray>("key");
        QTest::newRow("7K3QM2XV9A") << QByteArray(
            "7K3QM2XV9A") << QByteArray("b57235001273d47915b756f668696970f44798634dfb28b1a45294dd704b81c4");
        QTest::newRow("0000000000") << QByteArray(
            "0000000000") << QByteArray("1a5b6c724d083b47a64c23d470d73435539062ff3a4b9dd0d674fb175e883d44");
        QTest::newRow("ZZZZZZZZZZ") << QByteArray(
            "ZZZZZZZZZZ") << QByteArray("5f30d6df427ab19901d15925f871ee0b24778713f9ed4873acb9661bed760e37");
    }
    void keys()
    {
        QFETCH(QByteArray, code);
        QFETCH(QByteArray, key);
        const auto pair = keyOfCode(code.toStdString());
        QVERIFY(pair.has_value());
        QCOMPARE(formatHex(pair->key), key.toStdString());
        QVERIFY(duskrow::domain::isSignedBy(pair->key, "text", pair->sign("text")));
    }
};

QTEST_APPLESS_MAIN(InvitationCodeTest)
#include "invitation_code_test.moc"
