// SPDX-License-Identifier: MIT
#pragma once

#include <list>
#include <map>
#include <mutex>

#include "sync/hub/rosters.h"

namespace duskrow::hub {

// Segments as their readers may see them. Most readers see the same of a segment, so that forms are kept for
// a while: 32 MiB of them, those asked for last.
class ReadableForms {
public:
    // What a stream may read of a stored segment, in the form it travels in. Empty when it needs what this
    // hub lacks: then nobody can say which of its lines are for whom, and only its author's devices get it.
    //
    // Errors  those of opening a segment: the store is damaged
    Result<std::string> of(const Known& known, const StreamId& reader, const std::string& bytes);

private:
    struct Entry {
        StreamId author{};
        bool isNewer = false; // needs what this hub lacks
        std::vector<Uuid> sites; // that each line names; nil is for everybody
        std::map<std::string, std::string> forms; // by what is left out: a letter for each line
    };
    using Key = std::string; // hash of the bytes

    static Result<Entry> read(const std::string& bytes);
    Result<Entry> entryOf(const Key& key, const std::string& bytes);
    void keepForm(const Key& key, const std::string& shown, const std::string& form);
    std::string formKept(const Key& key, const std::string& shown);
    void makeRoom();

    std::mutex m_mutex;
    std::list<std::pair<Key, Entry>> m_entries; // the last used first
    std::map<Key, std::list<std::pair<Key, Entry>>::iterator> m_byKey;
    std::size_t m_bytes = 0;
};

} // namespace duskrow::hub
