// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/hostile_json.h"
#include "sync/segment_forger.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::test;
using nlohmann::json;

namespace {

const Scene scene;
const Forger forger{scene};

// The header and payload of three good changes, with some keys of the header said otherwise.
std::string lying(const json& patch)
{
    json header = json::parse(scene.sealed(1, 3).headerBytes);
    header.merge_patch(patch);
    return forged(scene.keys, header.dump(), scene.sealed(1, 3).payload);
}

QByteArray asBytes(const std::string& text)
{
    return {text.data(), static_cast<qsizetype>(text.size())};
}

} // namespace

// People who know the format and hold a key.
class SegmentHostileTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theHandIsTrueOtherwise()
    {
        QCOMPARE(fate(lying(json::object())), "ok");
        QCOMPARE(fate(forger.forgedLines(scene.lines(1, 3))), "ok");
        QCOMPARE(fate(forger.withPayload(packed(joinedLines(scene.lines(1, 3))),
                     static_cast<std::int64_t>(joinedLines(scene.lines(1, 3)).size()))),
            "ok");
    }

    void headersThatLie_data();
    void headersThatLie()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, wanted);
        QCOMPARE(QString::fromStdString(fate(bytes.toStdString())), wanted);
    }

    void payloadsThatLie_data();
    void payloadsThatLie()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, wanted);
        QCOMPARE(QString::fromStdString(fate(bytes.toStdString())), wanted);
    }

    void linesThatLie_data();
    void linesThatLie()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, wanted);
        QCOMPARE(QString::fromStdString(fate(bytes.toStdString())), wanted);
    }

    void hostileJsonAsALine_data() { hostileJsonRows(); }
    void hostileJsonAsALine()
    {
        QFETCH(QByteArray, text);
        const std::string found = fate(forger.forgedLines({text.toStdString()}));
        QVERIFY2(found.starts_with("malformed") || found.starts_with("too large"), found.c_str());
    }

    void hostileJsonAsAHeader_data() { hostileJsonRows(); }
    void hostileJsonAsAHeader()
    {
        QFETCH(QByteArray, text);
        const std::string found = fate(forged(scene.keys, text.toStdString(), scene.sealed(1, 3).payload));
        QVERIFY2(found.starts_with("malformed header") || found.starts_with("too large"), found.c_str());
    }

    void hostileJsonInAValue_data() { hostileValueRows(); }
    void hostileJsonInAValue()
    {
        QFETCH(QByteArray, text);
        std::string line = scene.lines(1, 1).front();
        const std::string from = "{\"v\":\"caf\xC3\xA9, wind \\\"west\\\"\"}";
        QVERIFY(line.find(from) != std::string::npos);
        line.replace(line.find(from), from.size(), "{\"v\":" + text.toStdString() + '}');
        const std::string found = fate(forger.forgedLines({line}));
        QVERIFY2(found.starts_with("malformed change 1: ") || found == "too large raw", found.c_str());
    }
};

void SegmentHostileTest::headersThatLie_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("wanted");
    const auto row = [](const char* name, const std::string& bytes, const char* wanted) {
        QTest::newRow(name) << asBytes(bytes) << QString::fromUtf8(wanted);
    };
    const KeyPair stranger(8);
    const std::string streamOfStranger = formatHex(streamOf(stranger.open, scene.programme));
    row("an unknown key", lying({{"zeta", {1, 2}}}), "ok");
    row("an ability nobody has", lying({{"needs", {"sealed-letters"}}}), "newer sealed-letters");
    row("abilities that are numbers", lying({{"needs", {1}}}), "malformed header: needs");
    row("an ability with a long name", lying({{"needs", {std::string(65, 'x')}}}), "malformed header: needs");
    row("stream not the hash of the key", lying({{"stream", std::string(32, 'a')}}), "forged");
    row("the right key for another stream", lying({{"stream", streamOfStranger}}), "forged");
    row("another's key and stream, own signature",
        lying({{"stream", streamOfStranger}, {"key", formatHex(stranger.open)}}), "forged");
    row("key of small order",
        lying({{"key", std::string(64, '0')}, {"stream", formatHex(streamOf(PublicKey{}, scene.programme))}}),
        "forged");
    row("another programme", lying({{"programme", formatUuid(uuidOf(9))}}), "forged");
    row("another programme and its stream",
        lying({{"programme", formatUuid(uuidOf(9))},
            {"stream", formatHex(streamOf(scene.keys.open, uuidOf(9)))}}),
        "malformed change 1: not of this segment");
    row("last below first", lying({{"last", 0}}), "malformed header: last");
    row("first zero", lying({{"first", 0}}), "malformed header: first");
    row("first negative", lying({{"first", -5}}), "malformed header: first");
    row("5,001 changes", lying({{"last", 5001}}), "too large changes");
    row("all numbers there are", lying({{"last", INT64_MAX}}), "too large changes");
    row("5,000 changes that are three", lying({{"last", 5000}}), "malformed lines");
    row("one more than there are", lying({{"last", 4}}), "malformed lines");
    row("one fewer than there are", lying({{"last", 2}}), "malformed lines");
    row("other numbers", lying({{"first", 2}, {"last", 4}, {"prev", std::string(64, '1')}}),
        "malformed change 2: not of this segment");
    row("raw too small", lying({{"raw", 1000}}), "too large payload");
    row("raw too large", lying({{"raw", 1000000}}), "malformed raw");
    row("raw beyond all bounds", lying({{"raw", 8388609}}), "too large raw");
    row("raw zero", lying({{"raw", 0}}), "malformed header: raw");
    row("raw negative", lying({{"raw", -1}}), "malformed header: raw");
    row("another root", lying({{"root", std::string(64, '1')}}), "malformed root");
    row("no root", lying({{"root", nullptr}}), "malformed header: root");
    row("format 2", lying({{"format", 2}}), "malformed header: format");
    row("prev in capitals", lying({{"prev", std::string(64, 'A')}}), "malformed header: prev");
    row("prev of the first", lying({{"prev", std::string(64, '1')}}), "malformed header: prev");
    row("cites itself", lying({{"cites", {{formatHex(scene.stream), 1}}}}), "malformed header: cites");
    row("cites number 0", lying({{"cites", {{std::string(32, 'a'), 0}}}}), "malformed header: cites");
    row("times the wrong way round", lying({{"at_ms", {2, 1}}}), "malformed header: at_ms");
    row("one time", lying({{"at_ms", {1}}}), "malformed header: at_ms");
    row("times out of reach", lying({{"at_ms", {1, INT64_MAX}}}), "malformed header: at_ms");
    row("roster negative", lying({{"roster", -1}}), "malformed header: roster");
    row("programme nil", lying({{"programme", formatUuid(Uuid{})}}), "malformed header: programme");
    const SegmentHead good = scene.sealed(1, 3);
    row("a space in it", forged(scene.keys, good.headerBytes + ' ', good.payload), "malformed header: form");
    row("16 KiB and one", forged(scene.keys, std::string(16'385, ' '), good.payload), "too large header");
    row("signed by another", forged(stranger, good.headerBytes, good.payload), "forged");
    row("signature over the header alone",
        joined(good.headerBytes, 0, good.payload, scene.keys.sign(good.headerBytes)), "forged");
    row("a third form", forged(scene.keys, good.headerBytes, good.payload, 2), "malformed form");
    row("whole said to be partial", forged(scene.keys, good.headerBytes, good.payload, 1), "ok");
    row("another magic", closed("DSEG2\n" + segmentBytes(good).substr(6, 900)), "malformed magic");
    row("a header longer than the file", closed("DSEG1\n" + littleEndian(9000, 4) + std::string(200, '{')),
        "malformed header length");
    row("a header of 4 GiB", closed("DSEG1\n" + littleEndian(0xFFFFFFFF, 4) + std::string(200, '{')),
        "too large header");
    row("2 MiB and one", std::string((2 << 20) + 1, 'm'), "too large file");
}

void SegmentHostileTest::payloadsThatLie_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("wanted");
    const std::string raw = joinedLines(scene.lines(1, 3));
    const auto row = [&raw](const char* name, const std::string& payload, const char* wanted,
                         std::int64_t said = -1, char form = 0) {
        const auto bytes =
            forger.withPayload(payload, said < 0 ? static_cast<std::int64_t>(raw.size()) : said, form);
        QTest::newRow(name) << asBytes(bytes) << QString::fromUtf8(wanted);
    };
    const std::string good = packed(raw);
    row("nothing", "", "malformed payload");
    row("no zstd", "moths", "malformed payload");
    row("magic alone", good.substr(0, 4), "malformed payload");
    row("cut", good.substr(0, good.size() - 1), "malformed payload");
    row("a byte behind", good + 'x', "malformed payload");
    row("two frames", good + good, "malformed payload");
    row("many frames", packed(raw.substr(0, 100)) + packed(raw.substr(100)), "malformed payload");
    row("an empty frame before", packed("") + good, "malformed payload");
    row("a skippable frame before", std::string("\x50\x2A\x4D\x18\x04\0\0\0abcd", 12) + good,
        "malformed payload");
    row("a skippable frame behind", good + std::string("\x50\x2A\x4D\x18\x04\0\0\0abcd", 12),
        "malformed payload");
    row("a frame of an old version", std::string("\x27\xB5\x2F\xFD", 4) + good.substr(4),
        "malformed payload");
    row("8 MiB of zeros", packed(std::string(8 << 20, '\0')), "too large payload");
    row("8 MiB of zeros, said so", packed(std::string(8 << 20, '\0')), "malformed lines", 8 << 20);
    row("8 MiB of line feeds", packed(std::string(8 << 20, '\n')), "malformed lines", 8 << 20);
    row("three line feeds", packed("\n\n\n"), "malformed lines", 3);
    row("three line feeds, partial", packed("\n\n\n"), "malformed lines", 3, 1);
    row("no line feed at the end", packed(raw.substr(0, raw.size() - 1)), "malformed lines",
        static_cast<std::int64_t>(raw.size() - 1));
    row("hashes in the whole form", packed('-' + std::string(64, 'a') + "\n-\n-\n"), "malformed root", 70);
    row("a hash too short", packed("-ab\n-ab\n-ab\n"), "malformed lines", 12, 1);
    row("a hash in capitals", packed('-' + std::string(64, 'A') + "\n-\n-\n"), "malformed lines", 70, 1);
    row("partial, longer than its bound", packed(std::string(raw.size() + 66 * 3 + 1, 'x')),
        "too large payload", -1, 1);
    // Frames by hand, RFC 8878: magic, descriptor, window, content size, one raw or repeated block.
    const std::string magic = "\x28\xB5\x2F\xFD";
    row("no content size", magic + std::string("\x00\x58\x01\x00\x00", 5), "malformed payload");
    row("a content size of 16 EiB", magic + "\xC0\x58" + std::string(8, '\xFE') + std::string("\x01\0\0", 3),
        "too large payload");
    row("a window of 2 GiB", magic + "\x80\xA8" + littleEndian(raw.size(), 4) + std::string("\x01\0\0", 3),
        "malformed payload");
    const auto plain = [&](char window) {
        return magic + '\x80' + window + littleEndian(raw.size(), 4) + littleEndian(raw.size() << 3 | 1, 3)
            + raw;
    };
    row("a window of 8 MiB", plain('\x68'), "ok");
    row("a window just above 8 MiB", plain('\x69'), "malformed payload");
    row("a dictionary", magic + "\x81\x58\x07" + littleEndian(raw.size(), 4) + "\x01", "malformed payload");
    row("says more than there is",
        magic + "\x80\x58" + littleEndian(raw.size() + 1, 4) + littleEndian(raw.size() << 3 | 1, 3) + raw,
        "malformed payload", static_cast<std::int64_t>(raw.size() + 1));
    row("says less than there is",
        magic + "\x80\x58" + littleEndian(raw.size() - 1, 4) + littleEndian(raw.size() << 3 | 1, 3) + raw,
        "malformed payload", static_cast<std::int64_t>(raw.size() - 1));
}

void SegmentHostileTest::linesThatLie_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("wanted");
    const auto row = [](const char* name, const Change& second, const char* wanted) {
        const std::vector<std::string> lines{
            scene.lines(1, 1).front(), canonicalJson(second), scene.lines(3, 3).front()};
        QTest::newRow(name) << asBytes(forger.forgedLines(lines)) << QString::fromUtf8(wanted);
    };
    row("nothing wrong", scene.change(2), "ok");
    const char* elsewhere = "malformed change 2: not of this segment";
    Change other = scene.change(2);
    other.programme = uuidOf(9);
    row("of another programme", other, elsewhere);
    other = scene.change(2);
    other.ref.stream = {9};
    row("of another stream", other, elsewhere);
    row("a number too high", scene.change(4), elsewhere);
    row("a number twice", scene.change(1), elsewhere);
}

QTEST_APPLESS_MAIN(SegmentHostileTest)
#include "segment_hostile_test.moc"
