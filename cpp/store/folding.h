// SPDX-License-Identifier: MIT
#pragma once

#include "store/current_tables.h"
#include "store/sealed_lines.h"

namespace duskrow::store {

// Brings the current tables along with the log: knows the roster and the rulings that decide what counts.
// Used on one thread only, inside the transaction of its caller.
class Folding {
public:
    Folding(SQLite::Database& database, domain::Uuid programme, const domain::StreamId& own);

    // Whether the tables were made by another version, or when this device wrote another stream, and must be
    // made anew: the own stream counts here before anybody has let it in.
    [[nodiscard]] bool isStale();
    // Drops all tables and folds the whole log again, in one transaction. False when stopped.
    bool rebuild(const Progress& progress);

    const domain::Roster& roster();
    SealedLines& lines() { return m_lines; }
    [[nodiscard]] const CurrentTables& tables() const { return m_tables; }
    // The changes of a record, and what they come to.
    std::vector<domain::Change> changesOf(const domain::Uuid& record) { return m_lines.changesOf(record); }
    domain::Folded folded(std::span<const domain::Change> ofOneRecord);

    // Folds the records of these new changes, which are already in the log, and whatever else depends on
    // them. `segments` hold these changes and no others that are used; of `fresh` records, in their order,
    // the log holds no others either.
    // The changes are put in the order of their records.
    void take(std::span<domain::Change> added, std::span<const std::int64_t> segments = {},
        std::span<const domain::Uuid> fresh = {});
    // Forgets what it knows: after a transaction that did not come about.
    void forget();

private:
    void load();
    void put(std::span<const domain::Change> changes, bool isNew);
    [[nodiscard]] bool countsByItself(const domain::Change& change) const;
    std::vector<domain::Change> refold(const domain::Uuid& record); // its changes
    domain::Roster readRoster();
    void takeRoster(std::span<const domain::Change> added);
    void weighAgain(const domain::Roster& before);
    std::set<domain::Uuid> asideUnder(const domain::Roster& before);
    void readRulings();
    void putRuling(std::span<const domain::Change> changes);
    std::set<domain::StreamId> founders();
    std::vector<domain::StreamId> streams();
    std::set<domain::Uuid> recordsOf(const domain::StreamId& stream);
    void eachBody(const std::function<bool(std::string_view)>& use);
    bool foldAll(const Progress& progress);
    void foldSeveral();

    SQLite::Database& m_database;
    domain::Uuid m_programme;
    domain::StreamId m_own;
    CurrentTables m_tables;
    SealedLines m_lines;
    Statements m_statements;
    bool m_isLoaded = false;
    std::vector<domain::Change> m_rosterChanges;
    domain::Roster m_roster;
    std::map<domain::Uuid, domain::RulingSeen> m_rulings; // by the record they are about
};

} // namespace duskrow::store
