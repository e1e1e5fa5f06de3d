// SPDX-License-Identifier: MIT
#include <QTest>

#include <chrono>
#include <fstream>
#include <sys/stat.h>

#include "sync/exchange_scene.h"
#include "sync/folder/folder_route.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;
namespace fs = std::filesystem;

namespace {

sync::ExchangeReport exchanged(Person& device, const std::string& shared)
{
    auto report = sync::exchangeByFolder(device.store(), shared, device.now);
    if (!report) qFatal("no exchange: %s", report.error().detail.c_str());
    return std::move(*report);
}

void write(const fs::path& path, const std::string& bytes)
{
    fs::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << bytes;
}

std::string read(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::set<std::string> everythingIn(const fs::path& folder)
{
    std::set<std::string> names;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) names.insert(entry.path().string());
    return names;
}

// A programme whose coordinator has handed over, and a grower who may fetch.
struct TwoPeople {
    ProgrammeScene scene;
    Person& ada = scene.coordinator();
    std::unique_ptr<Person> tom = scene.invite(2, Role::Grower, "tom");
    std::string shared = scene.shared();
    fs::path home = fs::path(shared) / "duskrow" / formatUuid(scene.programme);
    fs::path ofAda = home / "s" / formatHex(ada.store().stream());

    TwoPeople()
    {
        exchanged(ada, shared);
        exchanged(*tom, shared);
        exchanged(ada, shared);
    }
    [[nodiscard]] fs::path segmentOfAda() const { return fs::directory_iterator(ofAda)->path(); }
};

} // namespace

// A shared folder as people, other programs and ill will may leave it.
class FolderTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aFolderThatIsGone()
    {
        TwoPeople two;
        two.scene.setUp(*two.tom, 20, 30);
        const std::string away = two.shared + "-away";
        fs::rename(two.shared, away);
        const auto report = sync::exchangeByFolder(two.tom->store(), two.shared, two.tom->now);
        QVERIFY(!report);
        QCOMPARE(report.error().code, ErrorCode::FolderMissing);
        QVERIFY(two.tom->isSound());
        fs::rename(away, two.shared);
        QCOMPARE(exchanged(*two.tom, two.shared).sent, 1);
        QCOMPARE(exchanged(two.ada, two.shared).changes, 2);
    }

    // Where nothing can be written everything stays here, and what others left is taken in all the same.
    void aFolderThatTakesNothing()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const std::string shared = scene.shared();
        write(fs::path(shared) / "duskrow", "a file in the place of the folder");
        const auto report = sync::exchangeByFolder(ada.store(), shared, ada.now);
        QVERIFY(!report);
        QCOMPARE(report.error().code, ErrorCode::FileUnwritable);
        QCOMPARE(store::handedOver(*ada.reader(), ada.store().stream())->here, 3);
        QVERIFY(ada.isSound());
        fs::remove(fs::path(shared) / "duskrow");
        QVERIFY(exchanged(ada, shared).sent > 0);
        QCOMPARE(store::handedOver(*ada.reader(), ada.store().stream())->here, 0);
    }

    // One place that something else has taken keeps nothing else back, and is said.
    void aPlaceThatIsTaken()
    {
        TwoPeople two;
        const fs::path taken = two.segmentOfAda();
        fs::remove(taken);
        fs::create_directories(taken / "inside");
        two.scene.setUp(two.ada, 20, 30);
        const auto report = exchanged(two.ada, two.shared);
        QCOMPARE(report.sent, 1);
        QCOMPARE(report.troubles.size(), std::size_t{1});
        QCOMPARE(report.troubles.front().code, ErrorCode::FileUnwritable);
    }

    // Whoever copied the folder left a part of a file: its owner puts the whole in its place.
    void aDamagedFileOfOurs_data()
    {
        QTest::addColumn<int>("size");
        QTest::newRow("empty") << 0;
        QTest::newRow("a part") << 100;
    }
    void aDamagedFileOfOurs()
    {
        QFETCH(const int, size);
        TwoPeople two;
        const fs::path path = two.segmentOfAda();
        const std::string whole = read(path);
        fs::resize_file(path, static_cast<std::uintmax_t>(size));
        exchanged(two.ada, two.shared);
        QVERIFY(read(path) == whole);
    }

    void namesThatLeadElsewhere()
    {
        TwoPeople two;
        two.scene.setUp(two.ada, 20, 30);
        exchanged(two.ada, two.shared);
        // The same segments under the worst names that a file can have.
        std::vector<std::string> segments;
        for (const auto& entry : fs::directory_iterator(two.ofAda)) segments.push_back(read(entry.path()));
        fs::remove_all(two.ofAda);
        const std::vector<std::string> names{"..\\..\\outside.seg", "%2e%2e%2foutside.seg",
            "000000001-999999999-.seg", "a\nline.seg", "\xFF\xFE.seg", "-rf", "$(touch outside).seg", ".seg",
            std::string(255, 'x'), "000000001-000000003-0000000000000000.seg (1)", "CON", "a copy of it"};
        const fs::path odd = two.home / "s" / "..outside";
        for (std::size_t i = 0; i < names.size(); ++i) write(odd / names[i], segments[i % segments.size()]);
        const auto before = everythingIn(fs::path(two.shared).parent_path());
        const auto report = exchanged(*two.tom, two.shared);
        QCOMPARE(report.keptAside, 0);
        QVERIFY(report.changes > 0); // what they say is known by their content, not by their names
        QVERIFY(two.tom->isSound());
        for (const std::string& name : everythingIn(fs::path(two.shared).parent_path()))
            QVERIFY2(before.contains(name) || name.starts_with(two.home.string())
                    || name.starts_with(two.scene.at("tom")),
                name.c_str());
        fs::remove_all(odd); // Qt cannot name all of it
    }

    // What is no regular file is passed by, without waiting for it and without following it.
    void linksPipesAndFolders()
    {
        TwoPeople two;
        two.scene.setUp(two.ada, 20, 30);
        exchanged(two.ada, two.shared);
        const fs::path hidden = fs::path(two.scene.at("elsewhere"));
        fs::create_directories(hidden);
        for (const auto& entry : fs::directory_iterator(two.ofAda))
            fs::rename(entry.path(), hidden / entry.path().filename());
        for (const auto& entry : fs::directory_iterator(hidden))
            fs::create_symlink(entry.path(), two.ofAda / entry.path().filename());
        fs::create_directory_symlink(hidden, two.home / "s" / "a-link-to-a-folder");
        fs::create_symlink(two.ofAda, two.ofAda / "round-and-round");
        fs::create_symlink("/dev/zero", two.ofAda / "zeros.seg");
        QCOMPARE(mkfifo((two.ofAda / "pipe.seg").c_str(), 0600), 0);
        fs::create_directories(two.ofAda / "folder.seg" / "deeper" / "still deeper");
        const auto began = std::chrono::steady_clock::now();
        const auto report = exchanged(*two.tom, two.shared);
        QVERIFY(std::chrono::steady_clock::now() - began < std::chrono::seconds(10));
        QCOMPARE(report.changes, 0);
        QCOMPARE(report.keptAside, 0);
        QVERIFY(!two.tom->visit(idOf(40)));
    }

    // Byte for byte what its author typed: no other normal form, nothing cut, nothing reordered.
    void textsOfEveryKind()
    {
        TwoPeople two;
        two.scene.setUp(*two.tom, 20, 30);
        const std::vector<std::string> texts{"caf\xC3\xA9", "cafe\xCC\x81", "\xEA\xB0\x80",
            "\xE1\x84\x80\xE1\x85\xA1",
            "\xD8\xB3\xD9\x84\xD8\xA7\xD9\x85 abc \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D",
            "\xE2\x80\xAEright to left\xE2\x80\xAC", "\xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x8C\xBE",
            "\xF0\x9F\x87\xA8\xF0\x9F\x87\xA6", "\xEF\xBB\xBFmark in front",
            "line\xE2\x80\xA8"
            "separator",
            "\xEF\xBF\xBF\xF4\x8F\xBF\xBF", "tab\tline\nreturn\r bell\a escape\x1B delete\x7F",
            R"("quoted" \ back)", "=1+1", "\xE1\xBA\xA7\xCC\xA3\xCC\x82", std::string(9000, 'x'),
            " spaces  around "};
        std::uint32_t number = 40;
        for (const std::string& text : texts) {
            Visit visit = countAt(number++, 30, 1);
            visit.remark = text;
            two.tom->keep({creation(visit, idOf(20))});
        }
        exchanged(*two.tom, two.shared);
        exchanged(two.ada, two.shared);
        for (std::size_t i = 0; i < texts.size(); ++i) {
            const auto there = two.ada.visit(idOf(40 + static_cast<std::uint32_t>(i)));
            QVERIFY2(there && there->remark == texts[i], texts[i].c_str());
        }
        QCOMPARE(two.ada.records(), two.tom->records());
    }

    // A folder that people use for everything else, too.
    void aHundredThousandForeignFiles()
    {
        TwoPeople two;
        two.scene.setUp(two.ada, 20, 30);
        const fs::path stranger = two.home / "s" / "holiday";
        fs::create_directories(stranger);
        for (int i = 0; i < 100'000; ++i)
            std::ofstream(stranger / ("picture " + std::to_string(i) + ".jpg")) << i;
        exchanged(two.ada, two.shared);
        const auto began = std::chrono::steady_clock::now();
        const auto report = exchanged(*two.tom, two.shared);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
        qInfo("%.1f s", took.count());
        QCOMPARE(report.changes, 2);
        QCOMPARE(report.keptAside, 0);
        QVERIFY(report.troubles.empty());
    }
};

QTEST_GUILESS_MAIN(FolderTest)
#include "folder_test.moc"
