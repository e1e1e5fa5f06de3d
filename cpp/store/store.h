// SPDX-License-Identifier: MIT
#pragma once

#include <condition_variable>
#include <deque>
#include <future>
#include <mutex>
#include <thread>

#include "store/connection.h"
#include "store/log_writer.h"
#include "store/reader.h"
#include "store/segment_shelf.h"
#include "store/stream_key.h"

namespace duskrow::store {

struct OpenHow {
    std::string keyFolder; // where this installation keeps its keys
    bool mayCreate = false;
    Progress progress = {}; // of folding the log again after an update
    std::string vfs = {}; // of SQLite, for fault tests
    std::optional<domain::Uuid> programme = {}; // of a store made now; a fresh id when left out
    std::set<domain::StreamId> founders = {}; // of a programme that is joined; empty for one that is made now
};

// One programme in one file. Writing happens on a thread of its own, in the order asked; the answer comes on
// that thread, after the commit; an answer must neither wait for the store nor end it. Only one Store, of the
// app or of the tool, may have a file open at a time.
class Store {
public:
    // Errors  StoreMissing, StoreNotOurs, StoreNewer (the file is untouched in all three), StoreDamaged,
    //         StoreBusy, StoreReadOnly, FileUnreadable, DiskFull, DiskFailed, KeyUnreadable; FileUnwritable
    //         when the folder of a new store is not there
    static domain::Result<std::unique_ptr<Store>> open(const std::string& path, const OpenHow& how);

    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    using Answer = std::function<void(domain::Result<Kept>)>;
    void keep(Batch batch, Answer answer);
    domain::Result<Kept> keepNow(Batch batch); // waits

    // A draft saved again before the writer got to it is written once. The answer says whether it is on disk.
    using Saved = std::function<void(domain::Result<domain::Done>)>;
    void saveDraft(const std::string& key, std::string body, Saved answer = {});
    void dropDraft(const std::string& key, Saved answer = {});
    // What this device remembers about the programme, e.g. which member holds it. Not part of the log.
    domain::Result<domain::Done> saveSettingNow(const std::string& key, const std::string& value);
    void flush(); // waits until all that was asked is done

    // --- What the exchange does. What ends in Now waits for the writer, and is for a thread that may wait.
    // The next segment may be looked at while this one is taken.
    std::future<domain::Result<Taken>> take(IncomingSegment segment);
    // The roster as the log has it now, at hand without reading the log. Here the own stream counts always.
    domain::Result<domain::Roster> rosterNow();
    // Puts a segment in the place of the changes it was made of. Its numbers may leave the device after this.
    domain::Result<domain::Done> sealNow(const SegmentRow& segment);
    // Keeps new records whose changes are sealed already. The next batch may be made ready meanwhile, as if
    // this one were kept; where it is not, keep() does. The changes are put in another order.
    std::future<domain::Result<SealedAs>> keepSealed(std::shared_ptr<SealedBatch> batch);
    // Notes beside the store, before anything leaves the device, how far the own segments go.
    domain::Result<domain::Done> noteSealedNow();
    domain::Result<domain::Done> markPassedOnNow(
        const std::string& route, const std::vector<SegmentId>& ids, domain::Instant at);
    // Of a hub that was put back from a backup nobody knows what it still has.
    domain::Result<domain::Done> forgetPassedOnNow(const std::string& route);
    // Keeps refused bytes beside the store, with the reason.
    domain::Result<domain::Done> keepAsideNow(const AsideRow& row, std::string_view bytes);
    [[nodiscard]] domain::Signature sign(std::string_view message) const;
    // Of the streams that this installation wrote before the one it writes now.
    [[nodiscard]] std::vector<StreamKey> formerKeys() const;
    [[nodiscard]] const domain::PublicKey& publicKey() const { return m_key.publicKey; }
    // Whether this opening began a new stream, because the store was copied, restored or met its double.
    [[nodiscard]] bool hasNewStream() const { return m_hasNewStream; }

    domain::Result<std::unique_ptr<Reader>> reader() const;

    [[nodiscard]] const std::string& path() const { return m_path; }
    [[nodiscard]] const domain::Uuid& programme() const { return m_programme; }
    [[nodiscard]] const domain::StreamId& stream() const { return m_key.stream; }

private:
    struct Parts {
        std::unique_ptr<SQLite::Database> lock;
        std::unique_ptr<SQLite::Database> database;
        domain::Uuid programme;
        StreamKey key;
        bool hasNewStream = false;
        std::optional<StreamKey> keyBefore;
        std::unique_ptr<Folding> folding;
    };
    Store(std::string path, const OpenHow& how, Parts parts);

    static domain::Result<Parts> prepare(const std::string& path, const OpenHow& how);
    domain::Result<domain::Done> goOnFrom(const StreamKey& before);
    void post(std::function<void()> job);
    template <typename T>
    domain::Result<T> wait(std::function<domain::Result<T>()> work);
    domain::Result<domain::Done> noteSealed();
    void sealDrafts();
    void run();

    std::string m_path;
    std::string m_vfs;
    std::string m_keyFolder;
    domain::Uuid m_programme;
    StreamKey m_key;
    bool m_hasNewStream = false;
    std::unique_ptr<SQLite::Database> m_lock;
    std::unique_ptr<SQLite::Database> m_database;
    std::unique_ptr<Folding> m_folding;
    std::unique_ptr<LogWriter> m_writer;
    std::unique_ptr<SegmentShelf> m_shelf;

    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::deque<std::function<void()>> m_jobs;
    struct WaitingDraft {
        std::string body;
        std::vector<Saved> answers;
    };
    std::map<std::string, std::shared_ptr<WaitingDraft>> m_waitingDrafts;
    bool m_stopping = false;
    std::thread m_thread;
};

template <typename T>
domain::Result<T> Store::wait(std::function<domain::Result<T>()> work)
{
    std::promise<domain::Result<T>> promise;
    auto answer = promise.get_future();
    post([&] { promise.set_value(work()); });
    return answer.get();
}

// Looks into a store that another program may have open, and writes nothing to it.
//
// Errors  StoreMissing, StoreNotOurs, StoreNewer, StoreDamaged, FileUnreadable, DiskFailed; StoreOlder when
//         its tables must be folded again first, which opening a Store does
domain::Result<std::unique_ptr<Reader>> openForReading(const std::string& path);

// Moves a damaged store out of the way under a name of its own; returns that name. Nothing is overwritten.
domain::Result<std::string> setAside(const std::string& path);

} // namespace duskrow::store
