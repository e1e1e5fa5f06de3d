// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/segment_forger.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::test;

namespace {

const Scene scene;

Segment opened(const SegmentHead& head)
{
    auto read = readHead(segmentBytes(head));
    if (!read) qFatal("no head");
    auto segment = openSegment(std::move(read.value()));
    if (!segment) qFatal("%s", segment.error().args.empty() ? "?" : segment.error().args.front().c_str());
    return std::move(segment.value());
}

// Changes whose remarks do not pack: random letters.
std::vector<std::string> incompressible(std::int64_t count, std::size_t letters)
{
    std::mt19937 draw(11);
    std::vector<std::string> lines;
    for (std::int64_t n = 1; n <= count; ++n) {
        Change change = scene.change(n);
        std::string remark;
        while (remark.size() < letters) remark += static_cast<char>('#' + draw() % 57);
        change.fields["remark"] = {remark, {}};
        lines.push_back(canonicalJson(change));
    }
    return lines;
}

} // namespace

class SegmentTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void comesBackWhole()
    {
        const auto lines = scene.lines(1, 20);
        const SegmentHead head = scene.sealed(1, 20);
        const Segment segment = opened(head);
        QCOMPARE(segment.head.id, head.id);
        QCOMPARE(segment.head.form, Form::Whole);
        QCOMPARE(segment.lines.size(), lines.size());
        for (std::size_t i = 0; i < lines.size(); ++i) {
            QCOMPARE(segment.lines[i].bytes, lines[i]);
            QCOMPARE(canonicalJson(segment.lines[i].change), lines[i]);
        }
        QCOMPARE(segmentBytes(segment.head), segmentBytes(head));
    }

    void headerSaysWhatIsInside()
    {
        const SegmentHeader header = opened(scene.sealed(11, 30)).head.header;
        QCOMPARE(header.first, std::int64_t{11});
        QCOMPARE(header.last, std::int64_t{30});
        QCOMPARE(header.previous, scene.sealing(11).previous);
        QCOMPARE(header.roster, std::int64_t{3});
        QCOMPARE(toMs(header.earliest), std::int64_t{1'783'980'000'000 + 61'000 * 11});
        QCOMPARE(toMs(header.latest), std::int64_t{1'783'980'000'000 + 61'000 * 30});
        QCOMPARE(header.cites.size(), std::size_t{1});
        QCOMPARE(header.cites.at(StreamId{0xAB}), std::int64_t{30});
        std::size_t raw = 0;
        for (const std::string& line : scene.lines(11, 30)) raw += line.size() + 1;
        QCOMPARE(header.rawBytes, static_cast<std::int64_t>(raw));
        QVERIFY(header.needs.empty());
    }

    // Put together by hand from the description: another way to the same bytes.
    void bytesAreThoseOfTheDescription()
    {
        const SegmentHead head = scene.sealed(1, 3);
        QCOMPARE(segmentBytes(head), joined(head.headerBytes, 0, head.payload, head.signature));
        std::string leaves = "DSEG1-root";
        for (const std::string& line : scene.lines(1, 3)) leaves += asText(hashOf("DSEG1-leaf" + line));
        QCOMPARE(asText(head.header.root), asText(hashOf(leaves)));
        QCOMPARE(asText(head.id), asText(hashOf("DSEG1-id" + head.headerBytes)));
        const auto header = nlohmann::json::parse(head.headerBytes);
        QCOMPARE(header.dump(), head.headerBytes);
        QCOMPARE(header.size(), std::size_t{13});
        QCOMPARE(header.at("prev").get<std::string>(), std::string());
    }

    void sealingAgainGivesTheSameId() { QCOMPARE(scene.sealed(1, 400).id, scene.sealed(1, 400).id); }

    // Others may pack as they like, and need not turn the lines.
    void linesThatWereNotTurned()
    {
        SegmentHead head = scene.sealed(1, 400);
        const Segment turned = opened(head);
        const std::string plain = packed(joinedLines(scene.lines(1, 400)));
        QVERIFY(plain.size() > head.payload.size());
        head.payload = plain;
        const Segment same = opened(head);
        QCOMPARE(same.head.id, turned.head.id);
        for (std::size_t i = 0; i < turned.lines.size(); ++i)
            QCOMPARE(same.lines[i].bytes, turned.lines[i].bytes);
    }

    void partialFormVerifiesAndHides()
    {
        const Segment whole = opened(scene.sealed(1, 30));
        const auto mayRead = [](const Change& change) { return change.ref.seq % 3 == 0; };
        const SegmentHead head = partialForm(whole, mayRead);
        QCOMPARE(head.form, Form::Partial);
        QCOMPARE(head.id, whole.head.id);
        const Segment part = opened(head);
        QCOMPARE(part.lines.size(), std::size_t{30});
        for (std::size_t i = 0; i < 30; ++i) {
            const bool isShown = (i + 1) % 3 == 0;
            QCOMPARE(part.lines[i].bytes, isShown ? whole.lines[i].bytes : std::string());
            QCOMPARE(part.lines[i].leaf, whole.lines[i].leaf);
        }
        // Leaving out more of what was already partial; and nobody may read anything.
        const Segment less = opened(partialForm(part, [](const Change& c) { return c.ref.seq <= 6; }));
        QCOMPARE(less.lines[2].bytes, whole.lines[2].bytes);
        QVERIFY(less.lines[8].bytes.empty());
        const Segment none = opened(partialForm(whole, [](const Change&) { return false; }));
        QVERIFY(
            std::all_of(none.lines.begin(), none.lines.end(), [](const auto& l) { return l.bytes.empty(); }));
        QCOMPARE(none.head.id, whole.head.id);
    }

    void aLineOfAPartialFormCannotBeReplaced()
    {
        Segment whole = opened(scene.sealed(1, 5));
        whole.lines[2].bytes = scene.lines(6, 6).front();
        QCOMPARE(
            fate(segmentBytes(partialForm(whole, [](const Change&) { return true; }))), "malformed root");
    }

    void cutsAtFiveThousandChanges()
    {
        const auto head = seal(scene.sealing(), scene.lines(1, 5003), scene.keys.signer());
        QVERIFY(head.has_value());
        QCOMPARE(head->header.last, std::int64_t{5000});
        QCOMPARE(opened(*head).lines.size(), std::size_t{5000});
        const Segment none = opened(partialForm(opened(*head), [](const Change&) { return false; }));
        QCOMPARE(none.lines.size(), std::size_t{5000});
    }

    void cutsAtEightMebibytes()
    {
        std::vector<std::string> lines;
        for (std::int64_t n = 1; n <= 200; ++n) {
            Change change = scene.change(n);
            change.fields["remark"] = {std::string(60'000, 'm'), {}};
            lines.push_back(canonicalJson(change));
        }
        const auto head = seal(scene.sealing(), lines, scene.keys.signer());
        QVERIFY(head.has_value());
        QVERIFY(head->header.last < 200);
        QVERIFY(head->header.rawBytes <= mostRawBytes);
        QVERIFY(head->header.rawBytes + static_cast<std::int64_t>(lines.front().size()) > mostRawBytes - 100);
        opened(*head);
    }

    void cutsAtOneMebibytePacked()
    {
        const auto lines = incompressible(60, 60'000);
        const auto head = seal(scene.sealing(), lines, scene.keys.signer());
        QVERIFY(head.has_value());
        QVERIFY(head->payload.size() <= mostPayloadBytes);
        QVERIFY(head->header.last < 60);
        QVERIFY(head->payload.size() > mostPayloadBytes / 2);
        // The partial form is at home in the same bounds for a file.
        const Segment whole = opened(*head);
        opened(partialForm(whole, [](const Change& c) { return c.ref.seq % 2 == 0; }));
    }

    void oneChangeThatDoesNotPackFits()
    {
        const auto head = seal(scene.sealing(), incompressible(1, 64'700), scene.keys.signer());
        QVERIFY(head.has_value());
        opened(*head);
    }

    void cutsBeforeTheHeaderOverflows()
    {
        std::vector<std::string> lines;
        for (std::int64_t n = 1; n <= 40; ++n) {
            Change change = scene.change(n);
            for (std::uint8_t i = 0; i < 10; ++i)
                change.saw.push_back({{0xCD, static_cast<std::uint8_t>(n), i}, INT64_MAX});
            lines.push_back(canonicalJson(change));
        }
        const auto head = seal(scene.sealing(), lines, scene.keys.signer());
        QVERIFY(head.has_value());
        QVERIFY(head->headerBytes.size() <= 16'384);
        QCOMPARE(head->header.last, std::int64_t{25});
        opened(*head);
        Change greedy = scene.change(1);
        for (std::uint16_t i = 0; i < 300; ++i)
            greedy.saw.push_back({{static_cast<std::uint8_t>(i), static_cast<std::uint8_t>(i >> 8), 1}, 1});
        const auto refused = seal(scene.sealing(), {canonicalJson(greedy)}, scene.keys.signer());
        QVERIFY(!refused.has_value());
        QCOMPARE(refused.error().code, ErrorCode::SegmentTooLarge);
    }

    void refusesToSealWhatIsNoStream_data();
    void refusesToSealWhatIsNoStream()
    {
        QFETCH(QStringList, lines);
        QFETCH(std::int64_t, first);
        std::vector<std::string> bytes;
        for (const QString& line : lines) bytes.push_back(line.toStdString());
        const auto head = seal(scene.sealing(first), bytes, scene.keys.signer());
        QVERIFY(!head.has_value());
        QCOMPARE(head.error().code, ErrorCode::SegmentMalformed);
    }
};

void SegmentTest::refusesToSealWhatIsNoStream_data()
{
    QTest::addColumn<QStringList>("lines");
    QTest::addColumn<std::int64_t>("first");
    const auto line = [](std::int64_t n) { return QString::fromStdString(scene.lines(n, n).front()); };
    Change other = scene.change(2);
    other.programme = uuidOf(9);
    Change stranger = scene.change(2);
    stranger.ref.stream = {1};
    QTest::newRow("nothing") << QStringList{} << std::int64_t{1};
    QTest::newRow("no change") << QStringList{QStringLiteral("{}")} << std::int64_t{1};
    QTest::newRow("not canonical") << QStringList{line(1) + u' '} << std::int64_t{1};
    QTest::newRow("a gap") << QStringList{line(1), line(3)} << std::int64_t{1};
    QTest::newRow("twice") << QStringList{line(1), line(1)} << std::int64_t{1};
    QTest::newRow("another programme")
        << QStringList{line(1), QString::fromStdString(canonicalJson(other))} << std::int64_t{1};
    QTest::newRow("another stream") << QStringList{line(1), QString::fromStdString(canonicalJson(stranger))}
                                    << std::int64_t{1};
    QTest::newRow("the second without the first") << QStringList{line(2)} << std::int64_t{1};
    QTest::newRow("the first with one before it") << QStringList{line(1)} << std::int64_t{2};
}

QTEST_APPLESS_MAIN(SegmentTest)
#include "segment_test.moc"
