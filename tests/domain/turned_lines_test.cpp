// SPDX-License-Identifier: MIT
#include <QTest>

#include <random>

#include "domain/log/turned_lines.h"
#include "domain/log/turned_tokens.h"

using namespace duskrow::domain;
using namespace std::string_literals;

namespace {

constexpr std::size_t plenty = std::size_t{8} << 20;

std::string edit(int seq, const std::string& value, const std::string& field = "pest")
{
    return R"({"at_ms":17839800)" + std::to_string(10000 + 7 * seq)
        + R"(,"author":"01980a5c-1000-7000-8000-000000000002","f":{")" + field
        + R"(":{"b":["00112233445566778899aabbccddeeff.)" + std::to_string(1000 - seq) + R"("],"v":)" + value
        + R"(}},"seq":)" + std::to_string(seq) + "}\n";
}

std::string someEdits(int count)
{
    std::string lines;
    for (int i = 1; i <= count; ++i)
        lines += i % 3 == 0 ? edit(i, "\"it \\\"rained\\\" \\\\\"", "remark")
                            : edit(i, std::to_string(i * i % 97));
    return lines;
}

constexpr const char* oddLines[] = {"", "x", "{}", "-", "--", "-0", "007", "0075", "007-5",
    "-9223372036854775808", "9223372036854775807", "9223372036854775808", "18446744073709551616", "1.5e-7",
    "\"", "\"\\\"", "\"\\", "\"a\\\"b\"", R"({"":""})", R"(["",""])", R"({"a":"1","b":1})",
    R"("0198XA5C-1000-7000-8000-000000000002")", R"("01980a5c-1000-7000-8000-00000000000G")",
    R"("01980A5C-1000-7000-8000-000000000002")", R"("01980a5c-1000-7000-8000-0000000000021")",
    R"("00112233445566778899aabbccddeeff")", R"("00112233445566778899aabbccddeeff.")",
    R"("00112233445566778899aabbccddeeff.-7")", R"("00112233445566778899aabbccddeeff.07")",
    R"("00112233445566778899aabbccddeeff.7x")",
    "-00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff",
    "-00112233445566778899aabbccddeeff00112233445566778899aabbccddeefF",
    R"("00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff")", "\xC3\xA9 \xF0\x9F\x8C\xBE",
    "{\"v\":\"caf\xC3\xA9\"}", "a:b,\"c\":\"d\":1"};

} // namespace

class TurnedLinesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Worked out by hand from the description of the format.
    void bytes()
    {
        const std::string lines = "{\"n\":5,\"t\":\"ab\"}\n{\"n\":3,\"t\":\"c\"}\n{\"n\":3,\"t\":\"\"}\n"
                                  "{\"n\":-300,\"t\":\"ab\"}\n[1]\n";
        const std::string turned = "\x01\x05\x02{\"n\":\x01,\"t\":\"\x05\"}\n[\x01]\n"s + "\0\0\0\0\1"s
            + "\x01\x0A\x03\0\xDD\x04"s + "\x01"s + "ab\nc\n\nab\n" + "\0\x02"s;
        QCOMPARE(turn(lines), turned);
        QCOMPARE(turnBack(turned, plenty).value_or(""), lines);
    }

    void idsLieInPlanes()
    {
        const std::string first = "01980a5c-1000-7000-8000-000000000002";
        const std::string second = "01980a5c-1000-7000-8000-0000000000ff";
        const std::string turned = turn("[\"" + first + "\"]\n[\"" + second + "\"]\n");
        std::string planes;
        for (const int byte : {0x01, 0x98, 0x0A, 0x5C, 0x10, 0, 0x70, 0, 0x80, 0, 0, 0, 0, 0, 0})
            planes.append(2, static_cast<char>(byte));
        QCOMPARE(turned, "\x01\x02\x01[\"\x02\"]\n\x01"s + planes + "\x02\xFF");
    }

    void back_data()
    {
        QTest::addColumn<QString>("line");
        for (const char* line : oddLines) QTest::newRow(line) << QString::fromUtf8(line);
    }
    // Whatever stands in them, lines come back as they were: alone, many times, and among others.
    void back()
    {
        QFETCH(const QString, line);
        const std::string bytes = line.toStdString() + "\n";
        for (const std::string& lines : {bytes, bytes + bytes + bytes, someEdits(5) + bytes + someEdits(4)}) {
            const std::string turned = turn(lines);
            QCOMPARE(isTurned(turned) ? turnBack(turned, plenty).value_or("nothing") : turned, lines);
        }
    }

    // A line of the shape of another is split in a shorter way: to the same cells, and no other line is.
    void theShorterWayGivesTheSame()
    {
        std::vector<std::string> lines(std::begin(oddLines), std::end(oddLines));
        const std::string edits = someEdits(9);
        for (std::size_t from = 0; from < edits.size(); from = edits.find('\n', from) + 1)
            lines.push_back(edits.substr(from, edits.find('\n', from) - from));
        for (const char* values : {"[5,\"%\"]", "{\"%\":1}", "\"%\"", "[%]", "-%"})
            for (const char* value : oddLines)
                lines.push_back(std::string(values).replace(std::string(values).find('%'), 1, value));
        int alike = 0;
        std::string shape;
        std::string other;
        std::vector<Cell> cells;
        std::vector<Cell> wanted;
        for (const std::string& line : lines) {
            splitLine(line, shape, wanted);
            for (const std::string& next : lines) {
                splitLine(next, other, wanted);
                QCOMPARE(splitAlike(next, shape, cells), other == shape);
                if (other != shape) continue;
                ++alike;
                QCOMPARE(cells.size(), wanted.size());
                for (std::size_t i = 0; i < cells.size(); ++i) {
                    QVERIFY(cells[i].hole == wanted[i].hole);
                    QCOMPARE(cells[i].number, wanted[i].number);
                    if (cells[i].hole != Hole::Number) QVERIFY(cells[i].text == wanted[i].text);
                }
            }
        }
        QVERIFY(alike > static_cast<int>(lines.size()));
    }

    void muchLess()
    {
        const std::string lines = someEdits(900);
        QVERIFY(turn(lines).size() * 10 < lines.size());
        QCOMPARE(turnBack(turn(lines), lines.size()).value_or(""), lines);
        QVERIFY(!turnBack(turn(lines), lines.size() - 1));
    }

    void leftAlone_data()
    {
        QTest::addColumn<QByteArray>("lines");
        QTest::newRow("no end") << QByteArray("{\"a\":1}");
        QTest::newRow("a mark in a line") << QByteArray("{\"a\":1}\n{\x01}\n{\"a\":1}\n{\"a\":1}\n");
        QTest::newRow("too many lines") << QByteArray("[1]\n").repeated(5001);
        QByteArray wide("[");
        QTest::newRow("too many holes") << (wide + QByteArray("1,").repeated(65'537) + "1]\n");
        QTest::newRow("nothing") << QByteArray();
    }
    void leftAlone()
    {
        QFETCH(const QByteArray, lines);
        QCOMPARE(QByteArray::fromStdString(turn(lines.toStdString())), lines);
    }

    // Nothing of what comes from others is believed.
    void damaged()
    {
        const std::string lines = someEdits(12);
        const std::string turned = turn(lines);
        for (std::size_t i = 0; i < turned.size(); ++i) QVERIFY(!turnBack(turned.substr(0, i), plenty));
        QVERIFY(!turnBack(turned + "x", plenty));
        std::mt19937 random(11);
        int others = 0;
        for (int i = 0; i < 20'000; ++i) {
            std::string bad = turned;
            for (int n = 0; n <= i % 3; ++n) bad[random() % bad.size()] = static_cast<char>(random());
            const auto got = turnBack(bad, 20'000);
            QVERIFY(!got || got->size() <= 20'000);
            others += got && *got != lines ? 1 : 0;
        }
        QVERIFY(others > 0); // hash and signature are for that
    }

    void refused_data()
    {
        QTest::addColumn<QByteArray>("turned");
        const auto row = [](const char* name, const std::string& bytes) {
            QTest::newRow(name) << QByteArray::fromStdString(bytes);
        };
        row("empty", "");
        row("not turned", "[1]\n");
        row("no lines", "\1\0\1[]\n"s);
        row("too many lines", "\1\x89\x27\1[]\n"s);
        row("no shape", "\1\1\0"s);
        row("more shapes than lines", "\1\1\2[]\n{}\n"s);
        row("no such shape", "\1\2\2[]\n{}\n\0\2"s);
        row("no mode", "\1\1\1[\1]\n"s);
        row("unknown mode", "\1\1\1[\1]\n\2\0"s);
        row("a number without end", "\1\1\1[\1]\n\0\x80\x80\x80\x80\x80\x80\x80\x80\x80\x80\x80"s);
        row("an id cut short", "\1\1\1[\2]\n\0" + std::string(15, 'x'));
        row("text without end", "\1\1\1[\5]\n\0text"s);
        row("something follows", "\1\1\1[]\n "s);
        row("a shape that no line has", "\1\3\3[]\n{}\n()\n\0\1\0"s);
        std::string wide = "\1\1\1" + std::string(65'536, '\5') + "\n";
        for (int i = 0; i < 65'536; ++i) wide += "\0"s + std::string(200, 'x') + "\n";
        row("one line beyond all bounds", wide);
        std::string vast = "\1\x88\x27\1"s; // 5,000 lines of 60,000 bytes
        row("grows beyond all bounds", vast + std::string(60'000, ' ') + "\n");
    }
    void refused()
    {
        QFETCH(const QByteArray, turned);
        QVERIFY(!turnBack(turned.toStdString(), plenty));
    }
};

QTEST_APPLESS_MAIN(TurnedLinesTest)
#include "turned_lines_test.moc"
