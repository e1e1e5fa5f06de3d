// SPDX-License-Identifier: MIT
#pragma once

#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

#include "store/connection.h"
#include "store/log_writer.h"
#include "store/reader.h"

namespace duskrow::store {

struct OpenHow {
    std::string keyFolder; // where this installation keeps its keys
    bool mayCreate = false;
    Progress progress = {}; // of folding the log again after an update
    std::string vfs = {}; // of SQLite, for fault tests
    std::optional<domain::Uuid> programme = {}; // of a store made now; a fresh id when left out
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

    domain::Result<std::unique_ptr<Reader>> reader() const;

    [[nodiscard]] const std::string& path() const { return m_path; }
    [[nodiscard]] const domain::Uuid& programme() const { return m_programme; }
    [[nodiscard]] const domain::StreamId& stream() const { return m_stream; }

private:
    struct Parts {
        std::unique_ptr<SQLite::Database> lock;
        std::unique_ptr<SQLite::Database> database;
        domain::Uuid programme;
        StreamKey key;
    };
    Store(std::string path, std::string vfs, Parts parts);

    static domain::Result<Parts> prepare(const std::string& path, const OpenHow& how);
    void post(std::function<void()> job);
    void sealDrafts();
    void run();

    std::string m_path;
    std::string m_vfs;
    domain::Uuid m_programme;
    domain::StreamId m_stream;
    std::unique_ptr<SQLite::Database> m_lock;
    std::unique_ptr<SQLite::Database> m_database;
    std::unique_ptr<LogWriter> m_writer;

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

// Looks into a store that another program may have open, and writes nothing to it.
//
// Errors  StoreMissing, StoreNotOurs, StoreNewer, StoreDamaged, FileUnreadable, DiskFailed; StoreOlder when
//         its tables must be folded again first, which opening a Store does
domain::Result<std::unique_ptr<Reader>> openForReading(const std::string& path);

// Moves a damaged store out of the way under a name of its own; returns that name. Nothing is overwritten.
domain::Result<std::string> setAside(const std::string& path);

} // namespace duskrow::store
