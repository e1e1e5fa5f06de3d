// SPDX-License-Identifier: MIT
#include "store/store.h"

#include <chrono>
#include <filesystem>
#include <future>

#include "domain/records/roster.h"
#include "store/durable_file.h"
#include "store/founders.h"
#include "store/own_key.h"
#include "store/setting.h"
#include "store/stranded.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// A second program is kept out by an open transaction in a file beside the store. SQLite's own locking does
// it on every system, and a killed program leaves nothing behind.
Result<std::unique_ptr<SQLite::Database>> takeLock(const std::string& path)
{
    return guarded<std::unique_ptr<SQLite::Database>>(path, [&] {
        auto lock = std::make_unique<SQLite::Database>(
            path + ".lock", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0);
        lock->exec("PRAGMA journal_mode=MEMORY");
        lock->exec("BEGIN EXCLUSIVE");
        return lock;
    });
}

Result<Done> checkAfterUncleanEnd(SQLite::Database& database, const std::string& path)
{
    return guarded<Done>(path, [&]() -> Result<Done> {
        const std::string verdict = database.execAndGet("PRAGMA quick_check(1)").getString();
        if (verdict == "ok") return Done{};
        return Error{ErrorCode::StoreDamaged, {path}, verdict};
    });
}

// What stands in the way of making a store here, said before anything is made.
Result<Done> checkPlace(const std::string& path, bool mayCreate)
{
    if (!mayCreate) return Error{ErrorCode::StoreMissing, {path}};
    std::error_code failure;
    const auto folder = std::filesystem::absolute(path, failure).parent_path();
    if (!std::filesystem::is_directory(folder, failure)) return Error{ErrorCode::FileUnwritable, {path}};
    return Done{};
}

Result<Uuid> programmeOf(
    SQLite::Database& database, const std::string& path, const std::optional<Uuid>& wanted)
{
    return guarded<Uuid>(path, [&]() -> Result<Uuid> {
        const std::string held = setting(database, "programme");
        if (const auto id = parseUuid(held)) return *id;
        const bool isNew = database.execAndGet("SELECT count(*) FROM stream").getInt() == 0;
        if (!held.empty() || !isNew) return Error{ErrorCode::StoreDamaged, {path}, "programme id"};
        const auto now = std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
        const Uuid id = wanted ? *wanted : newId(now);
        putSetting(database, "programme", formatUuid(id));
        return id;
    });
}

bool stands(const std::string& path)
{
    std::error_code failure;
    return std::filesystem::exists(path, failure);
}

Result<Done> refreshTables(Folding& folding, const std::string& path, const Progress& progress)
{
    return guarded<Done>(path, [&]() -> Result<Done> {
        if (!folding.isStale() || folding.rebuild(progress)) return Done{};
        return Error{ErrorCode::StoreBusy, {path}, "folding was stopped"};
    });
}

} // namespace

Result<Store::Parts> Store::prepare(const std::string& path, const OpenHow& how)
{
    const auto kind = inspectFile(path);
    if (!kind) return kind.error();
    if (*kind == FileKind::Absent)
        if (const auto place = checkPlace(path, how.mayCreate); !place) return place.error();

    Parts parts;
    auto lock = takeLock(path);
    if (!lock) return lock.error();
    parts.lock = std::move(*lock);
    const bool endedUncleanly = hasContent(path + "-wal");
    auto database = openWriter(path, how.vfs);
    if (!database) return database.error();
    parts.database = std::move(*database);
    // A file that is refused here stays as it is, with the log beside it.
    const auto sound = endedUncleanly ? checkAfterUncleanEnd(*parts.database, path) : Result<Done>(Done{});
    const auto migrated = sound ? migrate(*parts.database, path) : sound;
    if (!migrated) {
        leaveAsItIs(*parts.database);
        return migrated.error();
    }
    const auto programme = programmeOf(*parts.database, path, how.programme);
    if (!programme) return programme.error();
    parts.programme = *programme;
    auto own = ownKey(*parts.database, path, how.keyFolder, parts.programme);
    if (!own) return own.error();
    parts.key = std::move(own->key);
    parts.hasNewStream = own->isNew;
    parts.keyBefore = std::move(own->before);
    std::set<StreamId> keys;
    for (const StreamKey& former : retiredKeys(how.keyFolder, parts.programme)) keys.insert(former.stream);
    const auto adopted = adoptStranded(*parts.database, path, parts.key.stream, keys);
    if (!adopted) return adopted.error();
    parts.folding = std::make_unique<Folding>(*parts.database, parts.programme, parts.key.stream);
    if (const auto fresh = refreshTables(*parts.folding, path, how.progress); !fresh) return fresh.error();
    const auto founders =
        settleFounders(*parts.database, path, how.founders, parts.key.stream, *parts.folding);
    if (!founders) return founders.error();
    return parts;
}

Result<std::unique_ptr<Store>> Store::open(const std::string& path, const OpenHow& how)
{
    auto parts = prepare(path, how);
    if (!parts) return parts.error();
    const std::optional<StreamKey> before = parts->keyBefore;
    std::unique_ptr<Store> store(new Store(path, how, std::move(*parts)));
    if (before)
        if (const auto vouched = store->goOnFrom(*before); !vouched) return vouched.error();
    return store;
}

Store::Store(std::string path, const OpenHow& how, Parts parts)
    : m_path(std::move(path)), m_vfs(how.vfs), m_keyFolder(how.keyFolder), m_programme(parts.programme),
      m_key(std::move(parts.key)), m_hasNewStream(parts.hasNewStream), m_lock(std::move(parts.lock)),
      m_database(std::move(parts.database)), m_folding(std::move(parts.folding)),
      m_writer(std::make_unique<LogWriter>(*m_database, m_path, m_programme, m_key.stream, *m_folding)),
      m_shelf(std::make_unique<SegmentShelf>(*m_database, m_path, *m_folding)), m_thread([this] { run(); })
{
}

Store::~Store()
{
    {
        const std::lock_guard guard(m_mutex);
        m_stopping = true;
    }
    m_wake.notify_all();
    m_thread.join();
    m_shelf.reset();
    m_writer.reset();
    m_folding.reset();
    emptyLog(*m_database, m_path);
}

void Store::run()
{
    std::unique_lock guard(m_mutex);
    while (true) {
        m_wake.wait(guard, [&] { return m_stopping || !m_jobs.empty(); });
        if (m_jobs.empty()) return; // all that was asked is done before the thread ends
        const std::function<void()> job = std::move(m_jobs.front());
        m_jobs.pop_front();
        guard.unlock();
        job();
        guard.lock();
    }
}

void Store::post(std::function<void()> job)
{
    {
        const std::lock_guard guard(m_mutex);
        m_jobs.push_back(std::move(job));
    }
    m_wake.notify_one();
}

void Store::keep(Batch batch, Answer answer)
{
    sealDrafts();
    post([this, batch = std::move(batch), answer = std::move(answer)]() mutable {
        answer(m_writer->keep(std::move(batch)));
    });
}

Result<Kept> Store::keepNow(Batch batch)
{
    std::promise<Result<Kept>> promise;
    auto answer = promise.get_future();
    keep(std::move(batch), [&](Result<Kept> kept) { promise.set_value(std::move(kept)); });
    return answer.get();
}

// What is saved after this must also be written after it, and no longer joins a draft that waits before it.
void Store::sealDrafts()
{
    const std::lock_guard guard(m_mutex);
    m_waitingDrafts.clear();
}

void Store::saveDraft(const std::string& key, std::string body, Saved answer)
{
    std::shared_ptr<WaitingDraft> waiting;
    bool isFirst = false;
    {
        const std::lock_guard guard(m_mutex);
        auto& held = m_waitingDrafts[key];
        isFirst = !held;
        if (isFirst) held = std::make_shared<WaitingDraft>();
        waiting = held;
        waiting->body = std::move(body);
        if (answer) waiting->answers.push_back(std::move(answer));
    }
    if (!isFirst) return;
    post([this, key, waiting] {
        {
            const std::lock_guard guard(m_mutex);
            const auto held = m_waitingDrafts.find(key);
            if (held != m_waitingDrafts.end() && held->second == waiting) m_waitingDrafts.erase(held);
        }
        const auto saved = m_writer->saveDraft(key, waiting->body);
        for (const Saved& answered : waiting->answers) answered(saved);
    });
}

void Store::dropDraft(const std::string& key, Saved answer)
{
    sealDrafts();
    post([this, key, answer = std::move(answer)] {
        const auto dropped = m_writer->dropDraft(key);
        if (answer) answer(dropped);
    });
}

Result<Done> Store::saveSettingNow(const std::string& key, const std::string& value)
{
    std::promise<Result<Done>> promise;
    auto answer = promise.get_future();
    post([&] {
        promise.set_value(guarded<Done>(m_path, [&] {
            putSetting(*m_database, "device/" + key, value);
            return Done{};
        }));
    });
    return answer.get();
}

// The old key vouches for the new stream in its first change, so that nobody has to let this device in again.
// Alone too: once something was handed over, others may have come in since the store was copied.
Result<Done> Store::goOnFrom(const StreamKey& before)
{
    if (m_folding->roster().isAlone() && before.handedOver == 0) return Done{};
    Device device;
    device.id = deviceId(m_programme, m_key.stream);
    device.stream = formatHex(m_key.stream);
    device.key = formatHex(m_key.publicKey);
    device.followsKey = formatHex(before.publicKey);
    device.proof = formatHex(signWith(before, claimMessage(m_programme, m_key.stream)));
    Batch batch;
    const auto author = guarded<Uuid>(m_path, [&] {
        const Uuid member = m_folding->roster().memberOf(before.stream);
        return member.isNil() ? parseUuid(setting(*m_database, "device/me")).value_or(Uuid{}) : member;
    });
    if (!author) return author.error();
    batch.author = *author;
    batch.at = std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    batch.edits.push_back(creation(device, {}));
    const auto kept = keepNow(std::move(batch));
    if (!kept) return kept.error();
    return Done{};
}

Signature Store::sign(std::string_view message) const
{
    return signWith(m_key, message);
}

std::vector<StreamKey> Store::formerKeys() const
{
    return retiredKeys(m_keyFolder, m_programme);
}

void Store::flush()
{
    std::promise<void> promise;
    auto done = promise.get_future();
    post([&] { promise.set_value(); });
    done.wait();
}

Result<std::unique_ptr<Reader>> Store::reader() const
{
    auto database = openReader(m_path, m_vfs);
    if (!database) return database.error();
    return std::make_unique<Reader>(std::move(*database), m_path);
}

Result<std::unique_ptr<Reader>> openForReading(const std::string& path)
{
    const auto kind = inspectFile(path);
    if (!kind) return kind.error();
    if (*kind == FileKind::Absent) return Error{ErrorCode::StoreMissing, {path}};
    const Error older{ErrorCode::StoreOlder, {path}};
    if (*kind == FileKind::Older) return older;
    auto database = openReader(path, {});
    if (!database) return database.error();
    const auto isStale = guarded<bool>(path, [&] { return CurrentTables(**database).isStale(); });
    if (!isStale) return isStale.error();
    if (*isStale) return older;
    return std::make_unique<Reader>(std::move(*database), path);
}

Result<std::string> setAside(const std::string& path)
{
    for (int number = 1; number < 1000; ++number) {
        const std::string target = path + ".damaged-" + std::to_string(number);
        if (stands(target) || stands(target + "-wal")) continue;
        for (const char* part : {"", "-wal", "-shm", "-journal"}) {
            std::error_code failure;
            if (stands(path + part)) std::filesystem::rename(path + part, target + part, failure);
            if (failure) return Error{ErrorCode::FileUnwritable, {target}, failure.message()};
        }
        return target;
    }
    return Error{ErrorCode::FileUnwritable, {path}};
}

} // namespace duskrow::store
