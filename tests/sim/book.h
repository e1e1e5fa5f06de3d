// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <unordered_map>

#include "sim/naive_roster.h"

namespace duskrow::store {
class Reader;
}

namespace duskrow::sim {

using Lines = std::set<int>; // changes, as the book numbers them

// Every change that anybody ever wrote, byte for byte. What is not in it was made up on the way.
class Book {
public:
    int write(const std::string& bytes);
    [[nodiscard]] std::optional<int> find(const std::string& bytes) const;
    [[nodiscard]] const Change& at(int line) const { return m_changes[static_cast<std::size_t>(line)]; }
    [[nodiscard]] int size() const { return static_cast<int>(m_changes.size()); }
    [[nodiscard]] Changes changes(const Lines& lines) const;
    // All that was ever written under a reference; several when a stream forked.
    [[nodiscard]] const std::vector<int>& under(const domain::ChangeRef& ref) const;

    // Segments that need what this version lacks: kept and passed on, not looked into.
    std::set<std::string> unread;
    // What stands in a whole segment, once it was looked into.
    std::unordered_map<std::string, std::vector<int>> inSegment;
    mutable std::unordered_map<std::string, std::vector<int>> inBytes; // by all bytes of a segment

private:
    std::unordered_map<std::string, int> m_known;
    std::vector<Change> m_changes;
    std::map<domain::ChangeRef, std::vector<int>> m_under;
};

// What lies in a store.
struct Held {
    Lines used;
    Lines whole; // in whole segments or the own tail: what can be passed on
    Lines waiting; // in segments whose predecessor is not there
    std::set<std::string> aside; // hashes of what was refused
    std::set<std::string> segments; // ids
    std::set<std::string> pictures; // names of sound photographs

    [[nodiscard]] bool has(int line) const { return used.contains(line) || waiting.contains(line); }
};

// Reads a store's log behind its back. `own` are streams whose last changes may be unknown to the book: a
// crash came after the commit and before the answer.
Held heldBy(store::Reader& reader, Book& book, const std::set<StreamId>& own, bool mayBeNew);

// The changes in the bytes of a segment, if it is one of ours and whole. Nothing otherwise.
// `isAllKnown` says whether the book has all of them: a crash may have come before what was kept was written
// in it.
std::vector<int> linesIn(const std::string& bytes, const Book& book, bool* isAllKnown = nullptr);

} // namespace duskrow::sim
