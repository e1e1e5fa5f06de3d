// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/segment_scene.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::test;

namespace {

const Scene scene;

std::vector<std::string> linesOf(std::string_view bytes)
{
    std::vector<std::string> lines;
    const auto segment = openSegment(readHead(bytes).value());
    for (const SegmentLine& line : segment.value().lines) lines.push_back(line.bytes);
    return lines;
}

} // namespace

// Disks, cables and people: whatever happens to the bytes, nothing else than what was signed is read from
// them.
class SegmentDamageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyPrefixIsUnfinished()
    {
        const std::string bytes = segmentBytes(scene.sealed(1, 5));
        QCOMPARE(fate(bytes), "ok");
        for (std::size_t length = 0; length < bytes.size(); ++length)
            QCOMPARE(fate(std::string_view(bytes).substr(0, length)), "unfinished");
        QCOMPARE(fate(bytes + '\0'), "unfinished");
        QCOMPARE(fate(bytes + bytes), "unfinished");
    }

    void everyBitIsGuarded()
    {
        const std::string bytes = segmentBytes(scene.sealed(1, 5));
        for (std::size_t bit = 0; bit < bytes.size() * 8; ++bit) {
            std::string flipped = bytes;
            flipped[bit / 8] = static_cast<char>(flipped[bit / 8] ^ (1 << (bit % 8)));
            QCOMPARE(fate(flipped), "unfinished");
        }
    }

    // The same by somebody who sets length and hash right again: only the key would help.
    void everyBitIsGuardedBehindTheFileHash()
    {
        const std::string bytes = segmentBytes(scene.sealed(1, 5));
        const std::string parts = bytes.substr(0, bytes.size() - 40);
        const auto lines = linesOf(bytes);
        const std::size_t form = 10 + scene.sealed(1, 5).headerBytes.size();
        std::map<std::string, int> fates;
        for (std::size_t bit = 0; bit < parts.size() * 8; ++bit) {
            std::string flipped = parts;
            flipped[bit / 8] = static_cast<char>(flipped[bit / 8] ^ (1 << (bit % 8)));
            flipped = closed(flipped);
            const std::string found = fate(flipped);
            ++fates[found.substr(0, found.find(' '))];
            // Form and the wrapping of the payload are not signed, and a few bits of it say the same in
            // another way; what is inside is signed.
            if (found == "ok") {
                QVERIFY(bit / 8 >= form && bit / 8 < parts.size() - 64);
                QVERIFY(linesOf(flipped) == lines);
            }
            QVERIFY(found != "unfinished");
        }
        for (const auto& [name, count] : fates) qInfo("%s: %d", name.c_str(), count);
        QVERIFY(fates["ok"] < 40);
        QVERIFY(fates["forged"] >= 64 * 8);
    }

    void holesZerosAndSwapsAreUnfinished()
    {
        const std::string bytes = segmentBytes(scene.sealed(1, 3000));
        QVERIFY(bytes.size() > 20'000);
        for (const std::size_t block : {512U, 4096U})
            for (std::size_t at = 0; at + 2 * block <= bytes.size(); at += block) {
                std::string hole = bytes;
                hole.replace(at, block, block, '\0');
                QCOMPARE(fate(hole), "unfinished");
                std::string tail = bytes;
                tail.replace(at, bytes.size() - at, bytes.size() - at, '\0');
                QCOMPARE(fate(tail), "unfinished");
                std::string swapped = bytes;
                std::swap_ranges(swapped.begin() + static_cast<std::ptrdiff_t>(at),
                    swapped.begin() + static_cast<std::ptrdiff_t>(at + block),
                    swapped.begin() + static_cast<std::ptrdiff_t>(at + block));
                QCOMPARE(fate(swapped), "unfinished");
                QCOMPARE(fate(std::string(bytes).erase(at, block)), "unfinished");
            }
    }

    void fourHundredCutsOfALargerOne()
    {
        const std::string bytes = segmentBytes(scene.sealed(1, 2000));
        std::mt19937 draw(400);
        for (int i = 0; i < 400; ++i)
            QCOMPARE(fate(std::string_view(bytes).substr(0, draw() % bytes.size())), "unfinished");
    }
};

QTEST_APPLESS_MAIN(SegmentDamageTest)
#include "segment_damage_test.moc"
