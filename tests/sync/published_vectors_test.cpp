// SPDX-License-Identifier: MIT
#include <QTest>

#include <sodium.h>
#include <vector>

#include "domain/base/uuid.h"

using namespace duskrow::domain;
using namespace std::string_literals;

namespace {

std::vector<std::uint8_t> bytesOf(const QByteArray& hex)
{
    std::vector<std::uint8_t> bytes(static_cast<std::size_t>(hex.size() / 2));
    if (!parseHex(hex.toStdString(), bytes)) qFatal("no hex");
    return bytes;
}

} // namespace

// Hash and signature are those that the description names, by what their authors published.
class PublishedVectorsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // RFC 7693, appendix A: BLAKE2b with 64 bytes of "abc".
    void blake2bOfTheRfc()
    {
        std::array<std::uint8_t, 64> hash{};
        crypto_generichash(
            hash.data(), hash.size(), reinterpret_cast<const unsigned char*>("abc"), 3, nullptr, 0);
        QCOMPARE(formatHex(hash),
            "ba80a53f981c4d0d6a2797b69f12f6e94c212f14685ac4b74b12bb6fdbffa2d1"
            "7d87c5392aab792dc252d5de4533cc9518d38aa8dbf1925ab92386edd4009923"s);
    }

    // RFC 7693, appendix E: the hash of the hashes of many lengths with and without keys, for 32 bytes of
    // output too. `grand` is its blake2b_res.
    void blake2bOfTheSelfTestOfTheRfc()
    {
        const auto sequence = [](std::size_t length, std::uint32_t seed) {
            std::vector<std::uint8_t> bytes(length);
            std::uint32_t a = 0xDEAD4BAD * seed;
            std::uint32_t b = 1;
            for (std::uint8_t& byte : bytes) {
                const std::uint32_t next = a + b;
                a = b;
                b = next;
                byte = static_cast<std::uint8_t>(next >> 24);
            }
            return bytes;
        };
        std::vector<std::uint8_t> all;
        for (const std::size_t size : {20U, 32U, 48U, 64U})
            for (const std::size_t length : {0U, 3U, 128U, 129U, 255U, 1024U}) {
                const auto in = sequence(length, static_cast<std::uint32_t>(length));
                const auto key = sequence(size, static_cast<std::uint32_t>(size));
                std::vector<std::uint8_t> hash(size);
                crypto_generichash(hash.data(), size, in.data(), length, nullptr, 0);
                all.insert(all.end(), hash.begin(), hash.end());
                crypto_generichash(hash.data(), size, in.data(), length, key.data(), size);
                all.insert(all.end(), hash.begin(), hash.end());
            }
        const auto grand = hashOf({reinterpret_cast<const char*>(all.data()), all.size()});
        QCOMPARE(formatHex(grand), "c23a7800d98123bd10f506c61e29da5603d763b8bbad2e737f5e765a7bccd475"s);
    }

    // RFC 8032, section 7.1: secret key, public key, message, signature.
    void ed25519OfTheRfc_data();
    void ed25519OfTheRfc()
    {
        QFETCH(QByteArray, seed);
        QFETCH(QByteArray, open);
        QFETCH(QByteArray, message);
        QFETCH(QByteArray, signature);
        std::array<std::uint8_t, 32> publicKey{};
        std::array<std::uint8_t, 64> secret{};
        crypto_sign_seed_keypair(publicKey.data(), secret.data(), bytesOf(seed).data());
        QCOMPARE(formatHex(publicKey), open.toStdString());
        const auto text = bytesOf(message);
        std::array<std::uint8_t, 64> made{};
        crypto_sign_detached(made.data(), nullptr, text.data(), text.size(), secret.data());
        QCOMPARE(formatHex(made), signature.toStdString());
        QCOMPARE(crypto_sign_verify_detached(made.data(), text.data(), text.size(), publicKey.data()), 0);
        made[3] ^= 1;
        QVERIFY(crypto_sign_verify_detached(made.data(), text.data(), text.size(), publicKey.data()) != 0);
    }
};

void PublishedVectorsTest::ed25519OfTheRfc_data()
{
    QTest::addColumn<QByteArray>("seed");
    QTest::addColumn<QByteArray>("open");
    QTest::addColumn<QByteArray>("message");
    QTest::addColumn<QByteArray>("signature");
    QTest::newRow("TEST 1") << QByteArray("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
                            << QByteArray("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a")
                            << QByteArray("")
                            << QByteArray("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
                                          "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b");
    QTest::newRow("TEST 2") << QByteArray("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
                            << QByteArray("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
                            << QByteArray("72")
                            << QByteArray("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                                          "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
    QTest::newRow("TEST 3") << QByteArray("c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7")
                            << QByteArray("fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025")
                            << QByteArray("af82")
                            << QByteArray("6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
                                          "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a");
}

QTEST_APPLESS_MAIN(PublishedVectorsTest)
#include "published_vectors_test.moc"
