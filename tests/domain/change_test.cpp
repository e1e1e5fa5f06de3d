// SPDX-License-Identifier: MIT
#include <QTest>

#include <nlohmann/json.hpp>

#include "domain/base/utf8.h"
#include "domain/log/bounded_json.h"
#include "domain/log/change.h"

using namespace duskrow::domain;
using namespace std::string_literals;

namespace {

Uuid idOf(std::uint8_t last)
{
    Uuid id;
    id.bytes = {0x01, 0x98, 0x0a, 0x5c, 0x10, 0x00, 0x70, 0x00, 0x80, 0, 0, 0, 0, 0, 0, last};
    return id;
}

StreamId streamOf(std::uint8_t last)
{
    StreamId stream{};
    stream.back() = last;
    return stream;
}

Change sampleChange()
{
    Change change;
    change.programme = idOf(1);
    change.ref = {streamOf(7), 42};
    change.author = idOf(2);
    change.kind = "visit";
    change.record = idOf(3);
    change.site = idOf(4);
    change.at = instantFromMs(1'783'980'000'000);
    change.offset = std::chrono::minutes{-300};
    change.fields["pest"] = {std::int64_t{37}, {{streamOf(7), 41}, {streamOf(9), 2}}};
    change.fields["emptied"] = {true, {}};
    change.fields["remark"] = {"caf\xC3\xA9 \xF0\x9F\x8C\xBE \"q\"\n"s, {}};
    change.fields["state"] = {Value{}, {{streamOf(7), 41}}};
    change.fields["zz_newer"] = {RawJson{R"({"a":[1,2],"b":null})"}, {}};
    change.saw = {{streamOf(9), 2}};
    return change;
}

// Built by hand from the description of the format, not by the code under test.
const std::string sampleBytes = R"({"at_ms":1783980000000,"author":"01980a5c-1000-7000-8000-000000000002",)"
                                R"("f":{"emptied":{"v":true},)"
                                R"("pest":{"b":["00000000000000000000000000000007.41",)"
                                R"("00000000000000000000000000000009.2"],"v":37},)"
                                "\"remark\":{\"v\":\"caf\xC3\xA9 \xF0\x9F\x8C\xBE \\\"q\\\"\\n\"},"
                                R"("state":{"b":["00000000000000000000000000000007.41"],"v":null},)"
                                R"("zz_newer":{"v":{"a":[1,2],"b":null}}},)"
                                R"("format":1,"id":"01980a5c-1000-7000-8000-000000000003","kind":"visit",)"
                                R"("offset_min":-300,"programme":"01980a5c-1000-7000-8000-000000000001",)"
                                R"("saw":["00000000000000000000000000000009.2"],"seq":42,)"
                                R"("site":"01980a5c-1000-7000-8000-000000000004",)"
                                R"("stream":"00000000000000000000000000000007"})";

std::string with(const std::string& from, const std::string& to)
{
    std::string bytes = sampleBytes;
    const auto at = bytes.find(from);
    Q_ASSERT(at != std::string::npos);
    return bytes.replace(at, from.size(), to);
}

std::string valued(const std::string& value)
{
    return with("37", value);
}

std::string nested(std::size_t depth)
{
    return std::string(depth, '[') + std::string(depth, ']');
}

QByteArray asBytes(const std::string& text)
{
    return QByteArray(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

class ChangeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void writesTheBytesOfTheFormat() { QCOMPARE(canonicalJson(sampleChange()), sampleBytes); }

    void comesBackWhole()
    {
        const auto read = readChange(sampleBytes);
        QVERIFY(read.has_value());
        const Change wanted = sampleChange();
        QCOMPARE(read->programme, wanted.programme);
        QCOMPARE(read->author, wanted.author);
        QCOMPARE(read->record, wanted.record);
        QCOMPARE(read->site, wanted.site);
        QCOMPARE(read->kind, wanted.kind);
        QVERIFY(read->ref == wanted.ref);
        QCOMPARE(toMs(read->at), toMs(wanted.at));
        QCOMPARE(read->offset.count(), wanted.offset.count());
        QVERIFY(read->saw == wanted.saw);
        QCOMPARE(read->fields.size(), wanted.fields.size());
        for (const auto& [name, set] : wanted.fields) {
            QVERIFY2(read->fields.at(name).value == set.value, name.c_str());
            QVERIFY2(read->fields.at(name).base == set.base, name.c_str());
        }
        QCOMPARE(canonicalJson(*read), sampleBytes);
    }

    void refusesWhatIsMalformed_data();
    void refusesWhatIsMalformed()
    {
        QFETCH(QByteArray, bytes);
        const auto read = readChange(std::string_view(bytes.data(), static_cast<std::size_t>(bytes.size())));
        QVERIFY(!read.has_value());
        QCOMPARE(read.error().code, ErrorCode::ChangeMalformed);
        QCOMPARE(read.error().args.size(), std::size_t{1});
    }

    void toleratesWhatIsNewer_data();
    void toleratesWhatIsNewer()
    {
        QFETCH(QByteArray, bytes);
        QVERIFY(readChange(bytes.toStdString()).has_value());
    }

    // What comes from others must be in the one form; what is our own is read in any.
    void onlyOneFormIsCanonical_data();
    void onlyOneFormIsCanonical()
    {
        QFETCH(QByteArray, bytes);
        const auto text = bytes.toStdString();
        QVERIFY(readChange(text).has_value());
        const auto read = readCanonicalChange(text);
        QVERIFY(!read.has_value());
        QCOMPARE(read.error().code, ErrorCode::ChangeMalformed);
        QCOMPARE(read.error().args.front(), "form"s);
    }

    void theCanonicalFormIsRead()
    {
        const auto read = readCanonicalChange(sampleBytes);
        QVERIFY(read.has_value());
        QCOMPARE(canonicalJson(*read), sampleBytes);
        for (const std::string& value : {R"("\\\"\b\f\n\r\t\u0001\u001f/")"s, "\"\x7F\xF0\x9F\x8C\xBE\""s,
                 R"({"":[],"\u0001":0,"a":{}})"s, "-9223372036854775808"s})
            QVERIFY2(readCanonicalChange(valued(value)).has_value(), value.c_str());
    }

    void keepsUnknownFieldsAndKinds()
    {
        const auto read = readChange(with(R"("kind":"visit")", R"("kind":"balloon")"));
        QVERIFY(read.has_value());
        QCOMPARE(read->kind, "balloon"s);
        QVERIFY(read->fields.at("zz_newer").value == Value(RawJson{R"({"a":[1,2],"b":null})"}));
    }

    void cutAnywhereIsRefused()
    {
        for (std::size_t length = 0; length < sampleBytes.size(); ++length)
            QVERIFY2(!readChange(std::string_view(sampleBytes).substr(0, length)).has_value(),
                std::to_string(length).c_str());
    }

    void anyOneByteChangedNeverCrashes()
    {
        for (std::size_t at = 0; at < sampleBytes.size(); ++at)
            for (const char byte : {'\0', '"', '{', ']', '9', '\\', '\xFF'}) {
                std::string bytes = sampleBytes;
                bytes[at] = byte;
                // What is read all the same must be writable and readable again.
                if (const auto read = readChange(bytes))
                    QVERIFY2(readChange(canonicalJson(*read)).has_value(), bytes.c_str());
            }
    }

    void depthIsRefusedBeforeMemoryIsSpent()
    {
        QVERIFY(parseBounded(nested(16), 16).has_value());
        QVERIFY(!parseBounded(nested(17), 16).has_value());
        QVERIFY(!parseBounded(std::string(200'000, '['), 16).has_value());
        QVERIFY(!parseBounded(nested(200'000), 16).has_value());
    }

    void readableTextIsTold_data();
    void readableTextIsTold()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(bool, readable);
        QCOMPARE(isReadableText({bytes.data(), static_cast<std::size_t>(bytes.size())}), readable);
    }

    void referencesComeBack()
    {
        const ChangeRef ref{streamOf(0xAB), 9'007'199'254'740'993};
        QCOMPARE(formatRef(ref), "000000000000000000000000000000ab.9007199254740993"s);
        QVERIFY(parseRef(formatRef(ref)) == std::optional(ref));
    }
};

void ChangeTest::refusesWhatIsMalformed_data()
{
    QTest::addColumn<QByteArray>("bytes");
    const auto row = [](const char* name, const std::string& bytes) {
        QTest::newRow(name) << asBytes(bytes);
    };
    row("nothing", "");
    row("not JSON", "moths");
    row("a list", "[]");
    row("two values", sampleBytes + "{}");
    row("a float", valued("37.0"));
    row("a float with an exponent", valued("37e0"));
    row("1e400", valued("1e400"));
    row("beyond 64 bits", valued("9223372036854775808"));
    row("beyond 64 bits, unsigned", valued("18446744073709551616"));
    row("below 64 bits", valued("-9223372036854775809"));
    row("a float in a list", valued("[1.5]"));
    row("a float under an unknown key", with(R"("format":1)", R"("format":1,"g":0.5)"));
    row("not a number", valued("NaN"));
    row("deeper than 16", valued(nested(14)));
    row("depth 200,000", valued(nested(200'000)));
    row("a key twice", with(R"("seq":42)", R"("seq":42,"seq":42)"));
    row("a field twice", with(R"("emptied":{"v":true})", R"("emptied":{"v":true},"emptied":{"v":false})"));
    row("a key twice, deep down", valued(R"({"a":1,"a":2})"));
    row("larger than 64 KiB", valued('"' + std::string(65'536, 'm') + '"'));
    row("a lone high surrogate", valued(R"("\ud83c")"));
    row("a lone low surrogate", valued(R"("\udf3e")"));
    row("a surrogate in UTF-8", valued("\"\xED\xA0\x80\""));
    row("Latin-1", valued("\"caf\xE9\""));
    row("overlong", valued("\"\xC0\xAF\""));
    row("NUL escaped", valued(R"("a\u0000b")"));
    row("NUL escaped in a name", with("emptied", R"(e\u0000d)"));
    row("NUL", valued("\"a\0b\""s));
    row("a control character", valued("\"a\nb\""));
    row("a comment", valued("37/* */"));
    row("id with capitals", with("000000000003", "00000000000A"));
    row("id too short", with("000000000003", "00000000003"));
    row("id without hyphens",
        with("01980a5c-1000-7000-8000-000000000003", "01980a5c100070008000000000000003"));
    row("id of nobody", with("01980a5c-1000-7000-8000-000000000003", "00000000-0000-0000-0000-000000000000"));
    row("id a number", with(R"("01980a5c-1000-7000-8000-000000000003")", "3"));
    row("programme missing", with(R"("programme":"01980a5c-1000-7000-8000-000000000001",)", ""));
    row("author wrong", with("000000000002", "00000000000x"));
    row("site wrong", with("000000000004", ""));
    row("stream too short", with(R"(:"00000000000000000000000000000007"})", R"(:"07"})"));
    row("seq zero", with(R"("seq":42)", R"("seq":0)"));
    row("seq negative", with(R"("seq":42)", R"("seq":-42)"));
    row("seq a text", with(R"("seq":42)", R"("seq":"42")"));
    row("seq missing", with(R"("seq":42,)", ""));
    row("moment a text", with("1783980000000", R"("now")"));
    row("moment out of reach", with("1783980000000", "9223372036854775807"));
    row("offset of two days", with("-300", "-2880"));
    row("format of another kind", with(R"("format":1)", R"("format":2)"));
    row("format missing", with(R"("format":1,)", ""));
    row("kind a number", with(R"("kind":"visit")", R"("kind":5)"));
    row("fields a list", with(R"("f":{"emptied":{"v":true})", R"("f":[],"g":{"emptied":{"v":true})"));
    row("a field without value", with(R"({"v":true})", "{}"));
    row("a field that is a value", with(R"({"v":true})", "true"));
    row("base not a list", with(R"("b":["00000000000000000000000000000007.41"])", R"("b":"7.41")"));
    row("base a number", with(R"("b":["00000000000000000000000000000007.41"])", R"("b":[41])"));
    row("base zero", with("7.41", "7.0"));
    row("base with zeros before", with("7.41", "7.041"));
    row("base with more behind", with("7.41", "7.41 "));
    row("base cites itself", with("7.41", "7.42"));
    row("base cites what comes after", with("7.41", "7.43"));
    row("saw wrong", with(R"("saw":["00000000000000000000000000000009.2"])", R"("saw":[null])"));
}

void ChangeTest::toleratesWhatIsNewer_data()
{
    QTest::addColumn<QByteArray>("bytes");
    const auto row = [](const char* name, const std::string& bytes) {
        QTest::newRow(name) << asBytes(bytes);
    };
    row("an unknown key", with(R"("format":1)", R"("format":1,"future":{"x":[true,null,"y",-1]})"));
    row("an unknown key in a field", with(R"({"v":true})", R"({"unit":"mm","v":true})"));
    row("spaces and another order", " { \"seq\" : 42, " + with(R"("seq":42,)", "").substr(1) + "\n");
    row("depth 16", valued(nested(13)));
    row("exactly 64 KiB", valued('"' + std::string(65'536 - sampleBytes.size(), 'm') + '"'));
    row("the largest number", valued("9223372036854775807"));
    row("the smallest number", valued("-9223372036854775808"));
    row("no site", with(R"("site":"01980a5c-1000-7000-8000-000000000004",)", ""));
    row("a paired surrogate", valued(R"("\ud83c\udf3e")"));
    row("before 1970", with("1783980000000", "-1"));
}

void ChangeTest::onlyOneFormIsCanonical_data()
{
    QTest::addColumn<QByteArray>("bytes");
    const auto row = [](const char* name, const std::string& bytes) {
        QTest::newRow(name) << asBytes(bytes);
    };
    row("a space before", ' ' + sampleBytes);
    row("a line feed behind", sampleBytes + '\n');
    row("a space within", with(R"("seq":42)", R"("seq": 42)"));
    row("a space in a list", valued("[1, 2]"));
    row("keys in another order", with(R"("kind":"visit",)", "").replace(0, 1, R"({"kind":"visit",)"));
    row("fields in another order", valued(R"(37},"a":{"v":1)"));
    row("keys in another order deep down", valued(R"({"b":1,"a":2})"));
    row("keys in another order, bytes beyond ASCII", valued("{\"\xC3\xA9\":1,\"z\":2}"));
    row("minus zero", valued("-0"));
    row("an escaped letter", valued(R"("\u0061")"));
    row("an escape in capitals", valued(R"("\u001F")"));
    row("a long escape", valued(R"("\u000a")"));
    row("an escaped slash", valued(R"("\/")"));
    row("an escaped letter in a key", with(R"("kind")", R"("k\u0069nd")"));
    row("a pair of surrogates", valued(R"("\ud83c\udf3e")"));
}

void ChangeTest::readableTextIsTold_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<bool>("readable");
    const auto row = [](const char* name, const std::string& bytes, bool readable) {
        QTest::newRow(name) << asBytes(bytes) << readable;
    };
    row("nothing", "", true);
    row("ASCII", "37 moths", true);
    row("two bytes, lowest", "\xC2\x80", true);
    row("three bytes, highest", "\xEF\xBF\xBF", true);
    row("four bytes, highest", "\xF4\x8F\xBF\xBF", true);
    row("right to left", "\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D", true);
    row("NUL", "a\0b"s, false);
    row("overlong NUL", "\xC0\x80", false);
    row("overlong two", "\xC1\xBF", false);
    row("overlong three", "\xE0\x9F\xBF", false);
    row("overlong four", "\xF0\x8F\xBF\xBF", false);
    row("above the last", "\xF4\x90\x80\x80", false);
    row("surrogate", "\xED\xBF\xBF", false);
    row("cut", "\xE2\x82", false);
    row("lone continuation", "\x80", false);
    row("broken in the middle", "\xE2\x28\xA1", false);
    row("five bytes", "\xF8\x88\x80\x80\x80", false);
}

QTEST_APPLESS_MAIN(ChangeTest)
#include "change_test.moc"
