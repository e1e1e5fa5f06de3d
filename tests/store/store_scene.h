// SPDX-License-Identifier: MIT
#pragma once

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

#include "domain/records/programme.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "store/queries.h"
#include "store/store.h"

namespace duskrow::tests {

inline domain::Uuid idOf(std::uint32_t number)
{
    domain::Uuid id;
    id.bytes[0] = 1;
    for (std::size_t i = 0; i < 4; ++i) id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
    return id;
}

inline domain::Visit visitOf(std::uint32_t number, std::int64_t moths)
{
    domain::Visit visit;
    visit.id = idOf(number);
    visit.trap = idOf(7);
    visit.day = domain::dayOf(2026, 6, 1) + std::chrono::days{number};
    visit.outcome = domain::Outcome::Counted;
    visit.pest = domain::Moths{moths};
    visit.emptied = true;
    visit.remark = "visit " + std::to_string(number);
    return visit;
}

inline store::Batch batchOf(std::vector<domain::Edit> edits)
{
    return {.author = idOf(2),
        .at = domain::instantFromMs(1'783'980'000'000),
        .offset = std::chrono::minutes{-300},
        .edits = std::move(edits),
        .draftDone = {}};
}

inline store::Batch batchOf(const domain::Visit& visit)
{
    return batchOf(std::vector{domain::creation(visit, idOf(4))});
}

// Where trials lie: in memory where there is such a place. What a power cut does is the business of the fault
// tests; here waiting for the disk would only be slow.
inline QString trialFolder()
{
    const bool inMemory = QFileInfo(QStringLiteral("/dev/shm")).isWritable();
    return (inMemory ? QStringLiteral("/dev/shm") : QDir::tempPath()) + QStringLiteral("/duskrow-XXXXXX");
}

// A folder of its own with a store in it, and one for keys.
class StoreScene {
public:
    [[nodiscard]] std::string path(const std::string& name = "trial.duskrow") const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    [[nodiscard]] store::OpenHow how() const { return {.keyFolder = path("keys"), .mayCreate = true}; }

    [[nodiscard]] std::unique_ptr<store::Store> open() const
    {
        auto opened = store::Store::open(path(), how());
        if (!opened) qFatal("the store does not open: %s", opened.error().detail.c_str());
        return std::move(*opened);
    }

    // Makes the store, with another stream among those that made the programme.
    void letCount(const domain::StreamId& other) const
    {
        [[maybe_unused]] const auto made = open();
        raw().exec(
            "UPDATE setting SET value=value || ' " + domain::formatHex(other) + "' WHERE key='founders'");
    }

    // The file itself, behind the back of the store.
    [[nodiscard]] SQLite::Database raw() const
    {
        return SQLite::Database(path(), SQLite::OPEN_READWRITE, 5000);
    }

private:
    QTemporaryDir m_folder{trialFolder()};
};

// Takes away what the second version of a store added.
inline void backToTheFirstVersion(SQLite::Database& raw)
{
    for (const char* table : {"sealed", "passed_on", "cited", "kept_aside", "segment"})
        raw.exec(std::string("DROP TABLE ") + table);
    raw.exec("DELETE FROM setting WHERE key IN ('founders', 'declaration')");
    raw.exec("PRAGMA user_version=1");
}

} // namespace duskrow::tests
