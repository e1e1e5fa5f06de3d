// SPDX-License-Identifier: MIT
#include <QTest>

#include <filesystem>
#include <fstream>

#include "store/check.h"
#include "store/photos.h"
#include "store/store_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;
using namespace std::string_literals;
namespace fs = std::filesystem;

namespace {

void write(const std::string& path, const std::string& bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

class OpenTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aStoreIsMadeOnlyWhenAskedFor()
    {
        const StoreScene scene;
        const auto refused = Store::open(scene.path(), {.keyFolder = scene.path("keys")});
        QCOMPARE(refused.error().code, ErrorCode::StoreMissing);
        QVERIFY(!fs::exists(scene.path()));
        QVERIFY(!fs::exists(scene.path() + ".lock"));
    }

    // What the log beside the file holds is taken for an unclean end when the store is opened again.
    void closingEmptiesTheLogThoughAReaderLooksOn()
    {
        const StoreScene scene;
        std::unique_ptr<Reader> reader;
        {
            const auto store = scene.open();
            QVERIFY(store->keepNow(batchOf(visitOf(1, 3))));
            auto opened = store->reader();
            reader = std::move(*opened);
            QCOMPARE(reader->select<Visit>({})->size(), std::size_t{1});
            QVERIFY(fs::file_size(scene.path() + "-wal") > 0);
        }
        QCOMPARE(fs::file_size(scene.path() + "-wal"), std::uintmax_t{0});
        QCOMPARE(reader->select<Visit>({})->size(), std::size_t{1});
    }

    void theSameStoreKeepsItsProgrammeAndStream()
    {
        const StoreScene scene;
        Uuid programme;
        StreamId stream{};
        {
            const auto store = scene.open();
            programme = store->programme();
            stream = store->stream();
        }
        QVERIFY(!programme.isNil());
        const auto store = scene.open();
        QCOMPARE(store->programme(), programme);
        QVERIFY(store->stream() == stream);
    }

    void onlyOneStoreAtATime()
    {
        const StoreScene scene;
        {
            const auto store = scene.open();
            const auto second = Store::open(scene.path(), scene.how());
            QVERIFY(!second.has_value());
            QCOMPARE(second.error().code, ErrorCode::StoreBusy);
            QVERIFY(store->keepNow(batchOf(visitOf(1, 37))).has_value());
        }
        QVERIFY(Store::open(scene.path(), scene.how()).has_value());
    }

    void aStoreFromAnotherInstallationBeginsANewStream()
    {
        const StoreScene scene;
        StreamId first{};
        {
            const auto store = scene.open();
            first = store->stream();
            QVERIFY(store->keepNow(batchOf(visitOf(1, 37))).has_value());
        }
        OpenHow elsewhere = scene.how();
        elsewhere.keyFolder = scene.path("keys of another phone");
        StreamId second{};
        {
            const auto store = Store::open(scene.path(), elsewhere);
            QVERIFY(store.has_value());
            second = (*store)->stream();
            QVERIFY(second != first);
            const auto kept = (*store)->keepNow(batchOf(visitOf(2, 1)));
            // The first number was taken by what nobody could sign any more.
            QVERIFY(kept->changes.front() == (ChangeRef{second, 2}));
        }
        // Back on the first phone the copy is as foreign as it was there: numbers are never given out twice.
        const auto store = scene.open();
        QVERIFY(store->stream() != first);
        QVERIFY(store->stream() != second);
        QVERIFY(checkStore(scene.path())->isSound());
    }

    void otherDeclarationsMakeTheTablesAnew()
    {
        const StoreScene scene;
        {
            const auto store = scene.open();
            QVERIFY(store->keepNow(batchOf(visitOf(1, 37))).has_value());
        }
        {
            auto raw = scene.raw();
            raw.exec("UPDATE setting SET value='of another version' WHERE key='declaration'");
            raw.exec("UPDATE now_visit SET pest=99");
            raw.exec("CREATE TABLE now_gone (id BLOB)");
            raw.exec("DROP TABLE now_loan");
        }
        const auto store = scene.open();
        const auto reader = store->reader();
        const auto visits = visitsOf(**reader, idOf(7));
        QVERIFY(visits.has_value());
        QCOMPARE(visits->front().pest->value(), std::int64_t{37});
        QVERIFY(loansOf(**reader, idOf(7)).has_value());
        QVERIFY(checkStore(scene.path())->isSound());
        QVERIFY(!scene.raw().tableExists("now_gone"));
    }

    void foldingTellsItsProgressAndCanBeStopped()
    {
        const StoreScene scene;
        {
            const auto store = scene.open();
            std::vector<Edit> edits;
            for (std::uint32_t number = 1; number <= 1500; ++number)
                edits.push_back(creation(visitOf(number, 1), {}));
            QVERIFY(store->keepNow(batchOf(std::move(edits))).has_value());
            scene.raw().exec("UPDATE setting SET value='old' WHERE key='declaration'");
        }
        OpenHow how = scene.how();
        how.progress = [](std::int64_t, std::int64_t) { return false; };
        QCOMPARE(Store::open(scene.path(), how).error().code, ErrorCode::StoreBusy);
        std::vector<std::pair<std::int64_t, std::int64_t>> told;
        how.progress = [&](std::int64_t done, std::int64_t all) {
            told.emplace_back(done, all);
            return true;
        };
        QVERIFY(Store::open(scene.path(), how).has_value());
        QVERIFY(told == (std::vector{std::pair{std::int64_t{1000}, std::int64_t{1500}}}));
        QVERIFY(checkStore(scene.path())->isSound());
    }

    void checkingFindsWhatWasAlteredAndChangesNothing()
    {
        const StoreScene scene;
        QVERIFY(scene.open()
                    ->keepNow(batchOf({creation(visitOf(1, 37), {}), creation(visitOf(2, 38), {})}))
                    .has_value());
        const std::string before = bytesOf(scene.path());
        QVERIFY(checkStore(scene.path())->isSound());
        QVERIFY(bytesOf(scene.path()) == before);

        scene.raw().exec("UPDATE now_visit SET pest=1");
        QVERIFY(!checkStore(scene.path())->tablesEqual);
        scene.raw().exec("UPDATE change SET body=replace(body, '\"seq\":2', '\"seq\":3')");
        QCOMPARE(checkStore(scene.path())->unreadable, std::int64_t{1});
        scene.raw().exec("DELETE FROM change WHERE seq=1");
        QCOMPARE(checkStore(scene.path())->gaps, std::int64_t{1});
        QCOMPARE(checkStore(scene.path("none")).error().code, ErrorCode::StoreMissing);
    }

    void photographsAreKeptByTheirContent()
    {
        const StoreScene scene;
        write(scene.path("a.jpg"), "picture");
        write(scene.path("b.jpg"), "picture");
        const auto hash = keepPhoto(scene.path(), scene.path("a.jpg"));
        QVERIFY(hash.has_value());
        // b2sum -l 256 of the seven bytes "picture"
        QCOMPARE(*hash, "604085597d589d91f631f56541c6a00842a745b69a543eca2e9349dcc266c8af"s);
        QCOMPARE(*keepPhoto(scene.path(), scene.path("b.jpg")), *hash);
        QCOMPARE(bytesOf(photoPath(scene.path(), *hash)), "picture"s);
        const auto folder = fs::directory_iterator(scene.path() + ".d/photos");
        QCOMPARE(std::distance(begin(folder), end(folder)), std::ptrdiff_t{1});

        write(photoPath(scene.path(), *hash), "pict"); // cut by a power cut
        QCOMPARE(*keepPhoto(scene.path(), scene.path("b.jpg")), *hash);
        QCOMPARE(bytesOf(photoPath(scene.path(), *hash)), "picture"s);
    }

    void whatIsNoPhotographIsRefused()
    {
        const StoreScene scene;
        write(scene.path("empty.jpg"), "");
        write(scene.path("large.jpg"), "x");
        fs::resize_file(scene.path("large.jpg"), 32U * 1024 * 1024 + 1);
        for (const char* name : {"none.jpg", "empty.jpg", "large.jpg", ""})
            QCOMPARE(keepPhoto(scene.path(), scene.path(name)).error().code, ErrorCode::PictureUnreadable);
        write(scene.path("good.jpg"), "picture");
        write(scene.path() + ".d", "a file where the folder should be");
        QCOMPARE(keepPhoto(scene.path(), scene.path("good.jpg")).error().code, ErrorCode::FileUnwritable);
    }

    void settingAsideOverwritesNothing()
    {
        const StoreScene scene;
        for (const char* body : {"one", "two"}) {
            write(scene.path(), body);
            write(scene.path() + "-wal", "log of "s + body);
            QVERIFY(setAside(scene.path()).has_value());
            QVERIFY(!fs::exists(scene.path()));
            QVERIFY(!fs::exists(scene.path() + "-wal"));
        }
        QCOMPARE(bytesOf(scene.path() + ".damaged-1"), "one"s);
        QCOMPARE(bytesOf(scene.path() + ".damaged-1-wal"), "log of one"s);
        QCOMPARE(bytesOf(scene.path() + ".damaged-2"), "two"s);
        QCOMPARE(bytesOf(scene.path() + ".damaged-2-wal"), "log of two"s);
        QVERIFY(scene.open() != nullptr);
    }

    // Setting aside was cut short between the store and its log: the log is not thrown away.
    void aLogWithoutItsStoreIsNotThrownAway()
    {
        const StoreScene scene;
        write(scene.path() + "-wal", "what is nowhere else");
        QCOMPARE(Store::open(scene.path(), scene.how()).error().code, ErrorCode::StoreDamaged);
        QCOMPARE(bytesOf(scene.path() + "-wal"), "what is nowhere else"s);
        QVERIFY(setAside(scene.path()).has_value());
        QVERIFY(scene.open() != nullptr);
        QCOMPARE(bytesOf(scene.path() + ".damaged-1-wal"), "what is nowhere else"s);
    }
};

QTEST_APPLESS_MAIN(OpenTest)
#include "open_test.moc"
