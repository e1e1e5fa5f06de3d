// SPDX-License-Identifier: MIT
#pragma once

#include <QTest>

#include <string>

// Texts that are no canonical JSON of the formats, or not in their bounds; for the tests of everything that
// reads JSON of others.
namespace duskrow::test {

inline QByteArray bytesOf(const std::string& text)
{
    return {text.data(), static_cast<qsizetype>(text.size())};
}

// What is hostile wherever a value may stand.
inline void hostileValueRows()
{
    QTest::addColumn<QByteArray>("text");
    const auto row = [](const char* name, const std::string& json) { QTest::newRow(name) << bytesOf(json); };
    row("200,000 deep", std::string(200'000, '[') + std::string(200'000, ']'));
    row("200,000 deep, objects", [] {
        std::string text;
        for (int i = 0; i < 200'000; ++i) text += "{\"a\":";
        return text;
    }());
    row("17 deep, in small", std::string(15, '[') + std::string(15, ']'));
    row("a string of 10 MB", '"' + std::string(10'000'000, 'm') + '"');
    row("a string of 64 KiB", '"' + std::string(65'536, 'm') + '"');
    std::string keys = "{";
    for (int i = 1'000'000; i < 2'000'000; ++i) keys += '"' + std::to_string(i) + "\":0,";
    keys.back() = '}';
    row("a million keys", keys);
    row("a key twice", R"({"a":1,"a":1})");
    row("keys out of order", R"({"b":1,"a":1})");
    row("keys out of order, bytes beyond ASCII", "{\"\xC3\xA9\":1,\"z\":1}");
    row("NaN", "NaN");
    row("Infinity", "-Infinity");
    row("1e400", "1e400");
    row("1e0", "1e0");
    row("1.0", "1.0");
    row("-0", "-0");
    row("+1", "+1");
    row("01", "01");
    row("beyond 64 bits", "9223372036854775808");
    row("a hundred thousand digits", std::string(100'000, '9'));
    row("a lone high surrogate", R"("\ud83c")");
    row("a lone low surrogate", R"("\udf3e")");
    row("a surrogate in UTF-8", "\"\xED\xA0\x80\"");
    row("a pair of surrogates that should be UTF-8", R"("\ud83c\udf3e")");
    row("an escape that should be a letter", R"("\u0061")");
    row("an escape in capitals", R"("\u001F")");
    row("an escaped slash", R"("\/")");
    row("a long escape for a line feed", R"("\u000a")");
    row("invalid UTF-8", "\"\xFF\xFE\"");
    row("overlong UTF-8", "\"\xC0\xAF\"");
    row("NUL", std::string("\"a\0b\"", 5));
    row("NUL escaped", R"("a\u0000b")");
    row("a control character", "\"a\tb\"");
    row("a byte order mark",
        "\xEF\xBB\xBF"
        "1");
    row("a space before", " 1");
    row("a space behind", "1 ");
    row("a space within", R"({"a": 1})");
    row("a carriage return", "1\r");
    row("a comment", "1/**/");
    row("a comma too many", "[1,]");
    row("single quotes", "'a'");
    row("capital TRUE", "TRUE");
    row("nothing", "");
}

// The same where a whole object is due, and things that are no such object.
inline void hostileJsonRows()
{
    hostileValueRows();
    QTest::newRow("an empty object") << QByteArray("{}");
    QTest::newRow("an empty list") << QByteArray("[]");
    QTest::newRow("null") << QByteArray("null");
    QTest::newRow("a string") << QByteArray("\"moths\"");
    QTest::newRow("half an object") << QByteArray("{\"at_ms\":");
}

} // namespace duskrow::test
