// SPDX-License-Identifier: MIT
#include <QTest>

#include <cstring>
#include <filesystem>
#include <fstream>
#include <sched.h>
#include <sys/mount.h>

#include "store/check.h"
#include "store/photos.h"
#include "store/store_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;
using namespace std::string_literals;
namespace fs = std::filesystem;

namespace {

// A disk of 1 MiB, seen by this process only, with a filler file that leaves as much room as wanted.
class SmallDisk {
public:
    explicit SmallDisk(const std::string& folder) : m_folder(folder)
    {
        if (mount("none", m_folder.c_str(), "tmpfs", 0, "size=1m") != 0)
            qFatal("the small disk cannot be mounted: %s", std::strerror(errno));
    }
    ~SmallDisk() { umount2(m_folder.c_str(), MNT_DETACH); }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;

    [[nodiscard]] std::uintmax_t room() const { return fs::space(m_folder).available; }
    void leave(std::uintmax_t room) const
    {
        makeRoom();
        std::ofstream file(filler(), std::ios::binary);
        file << std::string(this->room() - room, 'x');
        if (!file.flush() || this->room() != room) qFatal("the small disk cannot be filled");
    }
    void makeRoom() const { fs::remove(filler()); }

private:
    [[nodiscard]] std::string filler() const { return m_folder + "/filler"; }
    std::string m_folder;
};

struct Scene {
    QTemporaryDir folder{trialFolder()};
    SmallDisk disk{folder.path().toStdString()};
    OpenHow how{.keyFolder = folder.path().toStdString() + "/keys", .mayCreate = true};

    [[nodiscard]] std::string path() const { return folder.path().toStdString() + "/trial.duskrow"; }
};

} // namespace

class DiskFullTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        if (unshare(CLONE_NEWNS) != 0 || mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0)
            QSKIP("a small disk can be mounted only with the right to do so: run as root");
    }

    void keepingFailsLoudlyAndGoesOnWhenThereIsRoom()
    {
        const Scene scene;
        auto store = Store::open(scene.path(), scene.how);
        QVERIFY(store.has_value());
        (*store)->saveDraft("visit/7", "half");
        (*store)->flush();
        scene.disk.leave(96U * 1024);

        std::uint32_t kept = 0;
        std::optional<Error> failure;
        while (!failure && kept < 5000) {
            Batch batch = batchOf(visitOf(kept + 1, kept + 1));
            batch.draftDone = "visit/7 of another trap";
            const auto answer = (*store)->keepNow(batch);
            if (answer)
                ++kept;
            else
                failure = answer.error();
        }
        QVERIFY(failure.has_value());
        QCOMPARE(failure->code, ErrorCode::DiskFull);
        QCOMPARE(failure->args.front(), scene.path());
        QVERIFY(kept > 3);

        // It stays full: each further try says so, each look still shows everything that was kept.
        for (int again = 0; again < 3; ++again)
            QCOMPARE((*store)->keepNow(batchOf(visitOf(9000, 1))).error().code, ErrorCode::DiskFull);
        std::optional<ErrorCode> saved;
        (*store)->saveDraft("visit/8", std::string(200'000, 'd'),
            [&](const Result<Done>& answer) { saved = answer ? ErrorCode::Empty : answer.error().code; });
        (*store)->flush();
        QCOMPARE(saved, std::optional(ErrorCode::DiskFull));
        {
            const auto reader = (*store)->reader();
            QVERIFY(reader.has_value());
            QCOMPARE(visitsOf(**reader, idOf(7))->size(), std::size_t{kept});
            QVERIFY(*(*reader)->draft("visit/7") == "half"s);
        }

        scene.disk.makeRoom();
        const auto answer = (*store)->keepNow(batchOf(visitOf(9001, 1)));
        QVERIFY2(answer.has_value(), answer ? "" : answer.error().detail.c_str());
        QCOMPARE(answer->changes.front().seq, std::int64_t{kept} + 1);
        *store = nullptr;
        const auto report = checkStore(scene.path());
        QVERIFY(report->isSound());
        QCOMPARE(report->changes, std::int64_t{kept} + 1);
    }

    void closingAndOpeningOnAFullDiskLosesNothing()
    {
        const Scene scene;
        std::uint32_t kept = 0;
        {
            const auto store = Store::open(scene.path(), scene.how);
            scene.disk.leave(64U * 1024);
            while ((*store)->keepNow(batchOf(visitOf(kept + 1, 1))).has_value()) ++kept;
            scene.disk.leave(0);
        }
        QVERIFY(kept > 0);
        if (const auto store = Store::open(scene.path(), scene.how); store) {
            const auto reader = (*store)->reader();
            QVERIFY(reader.has_value());
            QCOMPARE(visitsOf(**reader, idOf(7))->size(), std::size_t{kept});
        } else
            QCOMPARE(store.error().code, ErrorCode::DiskFull);
        scene.disk.makeRoom();
        QVERIFY(checkStore(scene.path())->isSound());
        QCOMPARE(checkStore(scene.path())->changes, std::int64_t{kept});
        QVERIFY(Store::open(scene.path(), scene.how).has_value());
    }

    // Whatever room there is when a store is made: it says that the disk is full, or it is there and whole.
    void makingAStoreWithTooLittleRoom()
    {
        int refused = 0;
        for (std::uintmax_t room = 0; room <= 512U * 1024; room += 8192) {
            const Scene scene;
            scene.disk.leave(room);
            if (const auto store = Store::open(scene.path(), scene.how); !store) {
                QCOMPARE(store.error().code, ErrorCode::DiskFull);
                ++refused;
            }
            scene.disk.makeRoom();
            const auto store = Store::open(scene.path(), scene.how);
            QVERIFY2(store.has_value(), std::to_string(room).c_str());
            QVERIFY((*store)->keepNow(batchOf(visitOf(1, 1))).has_value());
        }
        QVERIFY(refused > 10);
        QVERIFY(refused < 64);
    }

    void foldingAgainWithTooLittleRoomLeavesTheOldTables()
    {
        const Scene scene;
        {
            const auto store = Store::open(scene.path(), scene.how);
            std::vector<Edit> edits;
            for (std::uint32_t number = 1; number <= 100; ++number)
                edits.push_back(creation(visitOf(number, 1), {}));
            QVERIFY((*store)->keepNow(batchOf(std::move(edits))).has_value());
        }
        SQLite::Database(scene.path(), SQLite::OPEN_READWRITE)
            .exec("UPDATE setting SET value='old' "
                  "WHERE key='declaration'");
        scene.disk.leave(40U * 1024);
        QCOMPARE(Store::open(scene.path(), scene.how).error().code, ErrorCode::DiskFull);
        scene.disk.makeRoom();
        QVERIFY(Store::open(scene.path(), scene.how).has_value());
        QVERIFY(checkStore(scene.path())->isSound());
    }

    void aPhotographThatDoesNotFitIsRefusedWhole()
    {
        const Scene scene;
        const std::string source = scene.folder.path().toStdString() + "/a.jpg";
        std::ofstream(source, std::ios::binary) << std::string(100'000, 'p');
        scene.disk.leave(50U * 1024 / 4096 * 4096);
        const auto before = scene.disk.room();
        QCOMPARE(keepPhoto(scene.path(), source).error().code, ErrorCode::DiskFull);
        QCOMPARE(scene.disk.room(), before);
        scene.disk.makeRoom();
        const auto hash = keepPhoto(scene.path(), source);
        QVERIFY(hash.has_value());
        QCOMPARE(fs::file_size(photoPath(scene.path(), *hash)), std::uintmax_t{100'000});
    }
};

QTEST_APPLESS_MAIN(DiskFullTest)
#include "disk_full_test.moc"
