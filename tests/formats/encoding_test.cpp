// SPDX-License-Identifier: MIT
#include <QTest>

#include "formats/encoding.h"

using namespace duskrow::formats;

class EncodingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void encodings_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QByteArray>("code");
        QTest::addColumn<int>("reason");
        QTest::addColumn<int>("line");
        QTest::addColumn<QByteArray>("text");
        const auto row = [](const char* claim, const QByteArray& bytes, const char* code,
                             EncodingReason reason, int line, const char* text) {
            QTest::newRow(claim) << bytes << QByteArray(code) << static_cast<int>(reason) << line
                                 << QByteArray(text);
        };
        using enum EncodingReason;
        row("plain letters", "a,b\n", "utf-8", AllUtf8, 0, "a,b\n");
        row("UTF-8", "caf\xC3\xA9\n", "utf-8", AllUtf8, 0, "café\n");
        row("with a mark", "\xEF\xBB\xBFx\n", "utf-8", Mark, 0, "x\n");
        row("Windows-1252", "a\nb\ncaf\xE9 \x80\n", "windows-1252", NotUtf8, 3, "a\nb\ncafé €\n");
        row("a byte without a meaning", "caf\xE9\x81\n", "windows-1252", NotUtf8, 1, "café\uFFFD\n");
        row("UTF-16, little end first",
            QByteArray("\xFF\xFE"
                       "a\0\xE9\0\n\0",
                8),
            "utf-16le", Mark, 0, "aé\n");
        row("UTF-16, big end first", QByteArray("\xFE\xFF\0a\0\xE9\0\n", 8), "utf-16be", Mark, 0, "aé\n");
        row("a pair of UTF-16", QByteArray("\xFF\xFE\x3E\xD8\x8B\xDD", 6), "utf-16le", Mark, 0, "🦋");
        row("half a pair",
            QByteArray("\xFF\xFE\x3E\xD8"
                       "a\0",
                6),
            "utf-16le", Mark, 0,
            "\uFFFD"
            "a");
        row("half a unit",
            QByteArray("\xFF\xFE"
                       "a\0b",
                5),
            "utf-16le", Mark, 0, "a\uFFFD");
        row("cut within a letter", "x\ncaf\xC3", "utf-8", AllUtf8, 0, "x\ncaf\uFFFD");
        row("a written U+FFFD is UTF-8", "\xEF\xBF\xBD\n", "utf-8", AllUtf8, 0, "\uFFFD\n");
        row("nothing", "", "utf-8", AllUtf8, 0, "");
        row("only a mark", "\xFF\xFE", "utf-16le", Mark, 0, "");
    }

    void encodings()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QByteArray, code);
        QFETCH(int, reason);
        QFETCH(int, line);
        QFETCH(QByteArray, text);
        const auto found = encodingOf(bytes.toStdString());
        QCOMPARE(QByteArray::fromStdString(std::string(codeOf(found.encoding))), code);
        QCOMPARE(static_cast<int>(found.reason), reason);
        QCOMPARE(static_cast<int>(found.line), line);
        QCOMPARE(QByteArray::fromStdString(toUtf8(bytes.toStdString(), found.encoding)), text);
        QCOMPARE(encodingNamed(code.toStdString()), std::optional(found.encoding));
    }
};

QTEST_APPLESS_MAIN(EncodingTest)
#include "encoding_test.moc"
