// SPDX-License-Identifier: MIT
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include <sstream>

#include "sync/carry/carried_reader.h"
#include "sync/carry/carried_writer.h"
#include "sync/segment_scene.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::test;

namespace {

const Scene scene;

struct Carried {
    std::vector<std::string> items; // each after its letter
    CarriedReport report;
};

Carried read(const std::string& bytes, Frame frame = Frame::File)
{
    std::istringstream source(bytes);
    CarriedReader reader(source, frame);
    Carried carried;
    while (auto item = reader.next()) carried.items.push_back(static_cast<char>(item->kind) + item->bytes);
    carried.report = reader.report();
    return carried;
}

// From the description, by hand.
std::string item(char letter, const std::string& bytes)
{
    return letter + littleEndian(bytes.size(), 8) + bytes;
}

std::string ended(const std::string& items, int segments, int photographs)
{
    const std::string before = "DUSK1\n" + items
        + item('i',
            R"({"format":1,"photographs":)" + std::to_string(photographs) + R"(,"programme":")"
                + formatUuid(scene.programme) + R"(","segments":)" + std::to_string(segments) + '}');
    return before + asText(hashOf(before));
}

const std::vector<std::string> three{"sone", "ptwo", "sthree"};
const std::string good = ended(item('s', "one") + item('p', "two") + item('s', "three"), 2, 1);

std::string contents(const std::string& path)
{
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return file.readAll().toStdString();
}

} // namespace

class CarryTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void writesTheBytesOfTheDescription()
    {
        const QTemporaryDir folder;
        const std::string path = folder.filePath(QStringLiteral("deep/a.dusk")).toStdString();
        {
            auto writer = CarriedWriter::open(path, scene.programme);
            QVERIFY(writer.has_value());
            QVERIFY(writer->add(ItemKind::Segment, "one").has_value());
            QVERIFY(writer->add(ItemKind::Photograph, "two").has_value());
            const auto refused = writer->add(ItemKind::Segment, std::string((2 << 20) + 1, 'm'));
            QVERIFY(!refused.has_value());
            QCOMPARE(refused.error().code, ErrorCode::SegmentTooLarge);
            QVERIFY(writer->add(ItemKind::Segment, "three").has_value());
            QVERIFY(!QFile::exists(QString::fromStdString(path)));
            QVERIFY(writer->finish().has_value());
        }
        QVERIFY(contents(path) == good);
        std::vector<std::string> items;
        const auto report = readCarriedFile(path, [&items](const CarriedItem& found) {
            items.push_back(static_cast<char>(found.kind) + found.bytes);
            return true;
        });
        QVERIFY(report.has_value());
        QCOMPARE(report->ending, Ending::Whole);
        QVERIFY(report->end == (CarriedEnd{scene.programme, 2, 1}));
        QVERIFY(items == three);
        int taken = 0;
        QVERIFY(readCarriedFile(path, [&taken](const CarriedItem&) { return ++taken < 2; }).has_value());
        QCOMPARE(taken, 2);
    }

    void whatIsNotFinishedLeavesNothing()
    {
        const QTemporaryDir folder;
        const std::string path = folder.filePath(QStringLiteral("a.dusk")).toStdString();
        {
            auto writer = CarriedWriter::open(path, scene.programme);
            QVERIFY(writer.has_value());
            QVERIFY(writer->add(ItemKind::Segment, "one").has_value());
        }
        QVERIFY(QDir(folder.path()).isEmpty());
    }

    void saysWhatCannotBeReadOrWritten()
    {
        const QTemporaryDir folder;
        const std::string path = folder.filePath(QStringLiteral("none.dusk")).toStdString();
        const auto report = readCarriedFile(path, [](const CarriedItem&) { return true; });
        QVERIFY(!report.has_value());
        QCOMPARE(report.error().code, ErrorCode::FileUnreadable);
        const auto inFile = CarriedWriter::open("/proc/self/cmdline/a.dusk", scene.programme);
        QVERIFY(!inFile.has_value());
        QCOMPARE(inFile.error().code, ErrorCode::FileUnwritable);
        const auto aFolder =
            readCarriedFile(folder.path().toStdString(), [](const CarriedItem&) { return true; });
        QVERIFY(!aFolder.has_value());
    }

    void everyCutGivesTheWholeItems()
    {
        for (std::size_t length = 0; length < good.size(); ++length) {
            const Carried carried = read(good.substr(0, length));
            QCOMPARE(carried.report.ending, length < 6 ? Ending::NotOurs : Ending::Cut);
            const std::size_t whole = length < 6 + 12 ? 0 : length < 6 + 24 ? 1 : length < 6 + 38 ? 2 : 3;
            QVERIFY(carried.items == std::vector(three.begin(), three.begin() + static_cast<long>(whole)));
            QVERIFY(!carried.report.end);
        }
        QCOMPARE(read(good).report.ending, Ending::Whole);
    }

    // A bit may hide items behind it when it lies in a length, but never passes for a whole file.
    void everyBitIsNoticed()
    {
        for (std::size_t bit = 0; bit < good.size() * 8; ++bit) {
            std::string flipped = good;
            flipped[bit / 8] = static_cast<char>(flipped[bit / 8] ^ (1 << (bit % 8)));
            QVERIFY(read(flipped).report.ending != Ending::Whole);
        }
    }

    void tellsEndings_data();
    void tellsEndings()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(int, ending);
        QFETCH(int, items);
        QFETCH(int, skipped);
        const Carried carried = read(bytes.toStdString());
        QCOMPARE(static_cast<int>(carried.report.ending), ending);
        QCOMPARE(static_cast<int>(carried.items.size()), items);
        QCOMPARE(static_cast<int>(carried.report.segments + carried.report.photographs), items);
        QCOMPARE(static_cast<int>(carried.report.tooLarge + carried.report.unknown), skipped);
    }

    void itemsAloneAreWholeBetweenTwo()
    {
        const std::string items = item('s', "one") + item('s', "three");
        QCOMPARE(read(items, Frame::ItemsOnly).report.ending, Ending::Whole);
        QCOMPARE(read(items, Frame::ItemsOnly).items.size(), std::size_t{2});
        QCOMPARE(read({}, Frame::ItemsOnly).report.ending, Ending::Whole);
        QCOMPARE(read(items.substr(0, items.size() - 1), Frame::ItemsOnly).report.ending, Ending::Cut);
        QCOMPARE(read(items.substr(0, 15), Frame::ItemsOnly).report.ending, Ending::Cut);
        QCOMPARE(read(items + item('i', "{}"), Frame::ItemsOnly).report.ending, Ending::Damaged);
    }

    void segmentsComeThrough()
    {
        const std::string first = segmentBytes(scene.sealed(1, 300));
        const std::string second = segmentBytes(scene.sealed(301, 400));
        const Carried carried = read(ended(item('s', first) + item('s', second), 2, 0));
        QCOMPARE(carried.report.ending, Ending::Whole);
        QCOMPARE(fate(carried.items[0].substr(1)), "ok");
        QCOMPARE(fate(carried.items[1].substr(1)), "ok");
    }
};

void CarryTest::tellsEndings_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<int>("ending");
    QTest::addColumn<int>("items");
    QTest::addColumn<int>("skipped");
    const auto row = [](const char* name, const std::string& bytes, Ending ending, int items,
                         int skipped = 0) {
        QTest::newRow(name) << QByteArray(bytes.data(), static_cast<qsizetype>(bytes.size()))
                            << static_cast<int>(ending) << items << skipped;
    };
    const std::string one = item('s', "one");
    row("whole", good, Ending::Whole, 3);
    row("empty of items", ended("", 0, 0), Ending::Whole, 0);
    row("an empty item", ended(item('s', ""), 1, 0), Ending::Whole, 1);
    row("nothing", "", Ending::NotOurs, 0);
    row("a segment", segmentBytes(scene.sealed(1, 3)), Ending::NotOurs, 0);
    row("text", "Dear Ida, the traps are", Ending::NotOurs, 0);
    row("more behind its end", good + 'x', Ending::Damaged, 3);
    row("two files in one", good + good, Ending::Damaged, 3);
    row("a segment of 2 MiB", ended(item('s', std::string(2 << 20, 'm')), 1, 0), Ending::Whole, 1);
    row("a segment too large", ended(item('s', std::string((2 << 20) + 1, 'm')) + one, 2, 0), Ending::Whole,
        1, 1);
    row("a photograph of 16 MiB", ended(item('p', std::string(16 << 20, 'm')), 0, 1), Ending::Whole, 1);
    row("a photograph too large", ended(item('p', std::string((16 << 20) + 1, 'm')) + one, 1, 1),
        Ending::Whole, 1, 1);
    row("a kind of a newer version", ended(item('w', "waybill") + one, 1, 0), Ending::Whole, 1, 1);
    row("a length without end", "DUSK1\n" + one + 's' + littleEndian(UINT64_MAX, 8) + "abc", Ending::Cut, 1);
    row("a length within the limit, nothing there", "DUSK1\n" + one + 'p' + littleEndian(16 << 20, 8),
        Ending::Cut, 1);
    row("zeros between items", "DUSK1\n" + one + std::string(4096, '\0'), Ending::Damaged, 1);
    row("an end that counts more", ended(one, 2, 0), Ending::Damaged, 1);
    row("an end that counts fewer", ended(one, 0, 0), Ending::Damaged, 1);
    row("an end that counts other kinds", ended(one, 0, 1), Ending::Damaged, 1);
    row("an end of 4 GiB", "DUSK1\n" + one + 'i' + littleEndian(UINT32_MAX, 8), Ending::Damaged, 1);
    const std::string spaced = "DUSK1\n" + one + item('i', R"({ "format":1})");
    row("an end that is not canonical", spaced + asText(hashOf(spaced)), Ending::Damaged, 1);
}

QTEST_APPLESS_MAIN(CarryTest)
#include "carry_test.moc"
