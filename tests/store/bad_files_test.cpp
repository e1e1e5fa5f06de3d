// SPDX-License-Identifier: MIT
#include <QTest>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

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

void overwrite(const std::string& path, std::streamoff at, const std::string& bytes)
{
    std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp(at).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

// Everything in the scene's folder, by name: equal pictures mean that nothing was touched, added or removed.
// Empty files and SQLite's shared memory hold nothing.
std::map<std::string, std::string> picture(const StoreScene& scene)
{
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(scene.path()).parent_path()))
        if (entry.is_regular_file() && entry.file_size() > 0 && !entry.path().string().ends_with("-shm"))
            files[entry.path().string()] = bytesOf(entry.path().string());
    return files;
}

void fill(const StoreScene& scene, std::uint32_t visits)
{
    const auto store = scene.open();
    std::vector<Edit> edits;
    for (std::uint32_t number = 1; number <= visits; ++number)
        edits.push_back(creation(visitOf(number, number), idOf(4)));
    if (!store->keepNow(batchOf(std::move(edits))).has_value()) qFatal("cannot fill the store");
}

// What opening says: the code, or nothing when it opens.
std::optional<ErrorCode> opening(const StoreScene& scene)
{
    const auto store = Store::open(scene.path(), scene.how());
    if (store) return std::nullopt;
    return store.error().code;
}

// Runs a check in a process of its own that is nobody in particular: root ignores the mode of a file.
// Returns its exit status: 0 when every check held, else the number of the check that did not.
int asNobody(const std::function<int()>& check)
{
    const pid_t child = fork();
    if (child == 0) {
        if (getuid() == 0 && (setgid(65534) != 0 || setuid(65534) != 0)) _exit(100);
        _exit(check());
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 200;
}

void openToAll(const std::string& folder)
{
    fs::permissions(folder, fs::perms::all);
    for (const auto& entry : fs::recursive_directory_iterator(folder)) fs::permissions(entry, fs::perms::all);
}

// A store whose newest header stands only in the log beside it, as after a kill just after a migration.
void leaveHeaderInLog(const StoreScene& scene, const char* pragma)
{
    SQLite::Database raw = scene.raw();
    sqlite3_db_config(raw.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    raw.exec("PRAGMA wal_autocheckpoint=0");
    raw.exec(pragma);
}

} // namespace

class BadFilesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void refusedAndUntouched_data();
    void refusedAndUntouched()
    {
        QFETCH(QByteArray, what);
        QFETCH(int, code);
        const StoreScene scene;
        damage(scene, what.toStdString());
        const auto before = picture(scene);
        QCOMPARE(static_cast<int>(opening(scene).value_or(ErrorCode::Empty)), code);
        QVERIFY(picture(scene) == before);
        (void)checkStore(scene.path());
        QVERIFY(picture(scene) == before);
    }

    void aHeaderInTheLogIsReadToo_data()
    {
        QTest::addColumn<QByteArray>("pragma");
        QTest::addColumn<int>("code");
        QTest::newRow("newer") << QByteArray("PRAGMA user_version=2000000")
                               << static_cast<int>(ErrorCode::StoreNewer);
        QTest::newRow("of another program")
            << QByteArray("PRAGMA application_id=7") << static_cast<int>(ErrorCode::StoreNotOurs);
        QTest::newRow("nonsense") << QByteArray("PRAGMA user_version=-1")
                                  << static_cast<int>(ErrorCode::StoreDamaged);
    }

    void aHeaderInTheLogIsReadToo()
    {
        QFETCH(QByteArray, pragma);
        QFETCH(int, code);
        const StoreScene scene;
        fill(scene, 3);
        leaveHeaderInLog(scene, pragma.constData());
        const auto before = picture(scene);
        QVERIFY(before.at(scene.path() + "-wal").size() > 0);
        QCOMPARE(static_cast<int>(opening(scene).value_or(ErrorCode::Empty)), code);
        QVERIFY(picture(scene) == before);
    }

    // Another program's database whose tables all still stand in its log looks unfinished, but is not ours.
    void anotherProgramsLogIsNotTaken()
    {
        const StoreScene scene;
        {
            SQLite::Database raw(scene.path(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
            sqlite3_db_config(raw.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
            raw.exec("PRAGMA journal_mode=WAL");
            raw.exec("CREATE TABLE birds (name TEXT)");
        }
        const auto before = picture(scene);
        QCOMPARE(opening(scene), std::optional(ErrorCode::StoreNotOurs));
        QVERIFY(picture(scene) == before);
    }

    void anEmptyFileBecomesAStore()
    {
        const StoreScene scene;
        write(scene.path(), "");
        const auto refused = Store::open(scene.path(), {.keyFolder = scene.path("keys")});
        QCOMPARE(refused.error().code, ErrorCode::StoreMissing);
        QCOMPARE(opening(scene), std::optional<ErrorCode>{});
        QVERIFY(checkStore(scene.path())->isSound());
    }

    void aMissingFolderIsSaidBeforeAnythingIsMade()
    {
        const StoreScene scene;
        const auto store = Store::open(scene.path("none/trial.duskrow"), scene.how());
        QCOMPARE(store.error().code, ErrorCode::FileUnwritable);
        QVERIFY(!fs::exists(scene.path("none")));
        QVERIFY(!fs::exists(scene.path("keys")));
    }

    // Cut anywhere, a store is either refused or still whole; it never gives fewer visits without a word.
    void cutAnywhere()
    {
        const StoreScene scene;
        fill(scene, 300);
        const std::string whole = bytesOf(scene.path());
        for (std::size_t length = 0; length < whole.size(); length += 4096 + 512) {
            write(scene.path(), whole.substr(0, length));
            fs::remove(scene.path() + ".lock");
            const auto store = Store::open(scene.path(), {.keyFolder = scene.path("keys")});
            QVERIFY2(!store.has_value(), std::to_string(length).c_str());
            QCOMPARE(bytesOf(scene.path()).size(), length);
        }
        write(scene.path(), whole);
        QVERIFY(checkStore(scene.path())->isSound());
    }

    // One page after another is overwritten: opening, looking and checking never crash, and the check never
    // calls such a store sound.
    void everyPageDamaged()
    {
        const StoreScene scene;
        fill(scene, 60);
        const std::string whole = bytesOf(scene.path());
        for (std::size_t page = 1; page * 4096 < whole.size(); ++page) {
            write(scene.path(), whole);
            overwrite(scene.path(), static_cast<std::streamoff>(page * 4096), std::string(4096, '\x5A'));
            if (const auto report = checkStore(scene.path()))
                QVERIFY2(!report->isSound(), std::to_string(page).c_str());
            if (const auto store = Store::open(scene.path(), scene.how())) {
                const auto reader = (*store)->reader();
                QVERIFY(reader.has_value());
                for (std::uint32_t number = 1; number <= 60; ++number) (void)visit(**reader, idOf(number));
                (void)(*store)->keepNow(batchOf(visitOf(61, 61)));
            }
        }
    }

    void aDamagedKeyIsSaid_data()
    {
        QTest::addColumn<QByteArray>("key");
        QTest::newRow("empty") << QByteArray("");
        QTest::newRow("cut") << QByteArray(64, 'a');
        QTest::newRow("no token") << QByteArray(64, 'a') + '\n';
        QTest::newRow("not hexadecimal") << QByteArray(64, 'x') + '\n' + QByteArray(32, 'a') + '\n';
        QTest::newRow("token not hexadecimal") << QByteArray(64, 'a') + '\n' + QByteArray(32, 'x') + '\n';
    }

    void aDamagedKeyIsSaid()
    {
        QFETCH(QByteArray, key);
        const StoreScene scene;
        fill(scene, 1);
        const fs::path file = fs::directory_iterator(scene.path("keys"))->path();
        write(file.string(), key.toStdString());
        QCOMPARE(opening(scene), std::optional(ErrorCode::KeyUnreadable));
        QCOMPARE(bytesOf(file.string()), key.toStdString());
    }

    void theKeyIsForItsOwnerOnly()
    {
        const StoreScene scene;
        fill(scene, 1);
        const fs::path file = fs::directory_iterator(scene.path("keys"))->path();
        QCOMPARE(fs::status(file).permissions(), fs::perms::owner_read | fs::perms::owner_write);
    }

    void aFolderThatCannotBeWritten()
    {
        const StoreScene scene;
        fill(scene, 3);
        const std::string folder = fs::path(scene.path()).parent_path();
        openToAll(folder);
        fs::remove(scene.path() + ".lock");
        fs::permissions(folder,
            fs::perms::group_read | fs::perms::group_exec | fs::perms::others_read | fs::perms::others_exec
                | fs::perms::owner_read | fs::perms::owner_exec,
            fs::perm_options::replace);
        const auto before = picture(scene);
        QCOMPARE(asNobody([&] {
            if (opening(scene) != ErrorCode::StoreReadOnly) return 1;
            const auto fresh = Store::open(scene.path("other.duskrow"), scene.how());
            if (fresh || fresh.error().code != ErrorCode::StoreReadOnly) return 2;
            const auto photo = keepPhoto(scene.path(), scene.path());
            if (photo || photo.error().code != ErrorCode::FileUnwritable) return 3;
            const auto aside = setAside(scene.path());
            if (aside || aside.error().code != ErrorCode::FileUnwritable) return 4;
            return 0;
        }),
            0);
        QVERIFY(picture(scene) == before);
        fs::permissions(folder, fs::perms::all);
    }

    void filesThatCannotBeRead()
    {
        const StoreScene scene;
        fill(scene, 3);
        openToAll(fs::path(scene.path()).parent_path());
        const fs::path key = fs::directory_iterator(scene.path("keys"))->path();
        const auto before = picture(scene);
        fs::permissions(key, fs::perms::none);
        QCOMPARE(asNobody([&] { return opening(scene) == ErrorCode::KeyUnreadable ? 0 : 1; }), 0);
        fs::permissions(scene.path("keys"), fs::perms::none);
        QCOMPARE(asNobody([&] { return opening(scene) == ErrorCode::KeyUnreadable ? 0 : 1; }), 0);
        fs::permissions(scene.path(), fs::perms::none);
        QCOMPARE(asNobody([&] { return opening(scene) == ErrorCode::FileUnreadable ? 0 : 1; }), 0);
        fs::permissions(scene.path(), fs::perms::owner_read | fs::perms::others_read);
        QCOMPARE(asNobody([&] { return opening(scene) == ErrorCode::StoreReadOnly ? 0 : 1; }), 0);
        fs::permissions(fs::path(scene.path()).parent_path(), fs::perms::none);
        QCOMPARE(asNobody([&] { return opening(scene) == ErrorCode::FileUnreadable ? 0 : 1; }), 0);
        openToAll(fs::path(scene.path()).parent_path());
        QVERIFY(picture(scene) == before);
        QCOMPARE(opening(scene), std::optional<ErrorCode>{});
    }

private:
    static void damage(const StoreScene& scene, const std::string& what);
};

void BadFilesTest::refusedAndUntouched_data()
{
    QTest::addColumn<QByteArray>("what");
    QTest::addColumn<int>("code");
    const auto row = [](const char* what, ErrorCode code) {
        QTest::newRow(what) << QByteArray(what) << static_cast<int>(code);
    };
    row("newer version", ErrorCode::StoreNewer);
    row("text", ErrorCode::StoreNotOurs);
    row("a few bytes", ErrorCode::StoreNotOurs);
    row("another program", ErrorCode::StoreNotOurs);
    row("another program without tables", ErrorCode::StoreNotOurs);
    row("first bytes damaged", ErrorCode::StoreNotOurs);
    row("page size damaged", ErrorCode::StoreDamaged);
    row("version damaged", ErrorCode::StoreDamaged);
    row("version lost", ErrorCode::StoreDamaged);
    row("cut in half", ErrorCode::StoreDamaged);
    row("schema damaged", ErrorCode::StoreDamaged);
    row("programme lost", ErrorCode::StoreDamaged);
    row("a folder", ErrorCode::FileUnreadable);
}

void BadFilesTest::damage(const StoreScene& scene, const std::string& what)
{
    const std::string path = scene.path();
    if (what == "text") return write(path, std::string(5000, 'm'));
    if (what == "a few bytes") return write(path, "SQLite format 3");
    if (what == "a folder") return (void)fs::create_directory(path);
    if (what.starts_with("another program")) {
        SQLite::Database raw(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        raw.exec(what.ends_with("tables") ? "PRAGMA user_version=1" : "CREATE TABLE birds (name TEXT)");
        return;
    }
    fill(scene, 300);
    if (what == "newer version") scene.raw().exec("PRAGMA user_version=2000000");
    if (what == "first bytes damaged") overwrite(path, 3, "####");
    if (what == "page size damaged") overwrite(path, 16, "\x01\x01");
    if (what == "version damaged") overwrite(path, 60, "\xFF");
    if (what == "version lost") scene.raw().exec("PRAGMA user_version=0");
    if (what == "cut in half") fs::resize_file(path, fs::file_size(path) / 2);
    if (what == "schema damaged") overwrite(path, 100, std::string(3000, '\x5A'));
    if (what == "programme lost") scene.raw().exec("DELETE FROM setting WHERE key='programme'");
}

QTEST_APPLESS_MAIN(BadFilesTest)
#include "bad_files_test.moc"
