// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "sim/book.h"
#include "store/store.h"

namespace duskrow::sim {

struct World;

// What a phone remembers of the hub.
struct AtHub {
    std::string token;
    std::int64_t after = 0;
    std::int64_t epoch = 0;
    std::string scope;
};

// One installation: a real store over files in memory, in the hands of a person.
struct Phone {
    int number = 0;
    std::size_t person = 0;
    std::filesystem::path folder;
    std::unique_ptr<store::Store> store;
    std::unique_ptr<store::Reader> reader;
    std::chrono::milliseconds clockError{0};
    Held expected; // what must be there whatever happens
    AtHub hub;
    bool wasCopied = false; // the same numbers may stand twice, in other cuts
    bool mayRenew = false; // copied, put back or met its double: a new stream may begin
    struct Backup {
        std::filesystem::path folder;
        Held held;
    };
    std::vector<Backup> backups; // the oldest first
    domain::PublicKey lastKey{};
    std::set<StreamId> streams; // all that it ever wrote, this one too

    [[nodiscard]] std::string path() const { return folder / "live" / "store.db"; }
    [[nodiscard]] domain::Uuid member(const World& world) const;
    [[nodiscard]] const StreamId& stream() const { return store->stream(); }

    // Opens the store; when it should be the same stream as before and is another, something is broken.
    void open(World& world);
    void close();
    // Reads what is there, compares it with what must be, and takes it for what must be from now on.
    void audit(World& world, const std::string& after, bool mayBeNew = false);

private:
    void checkCounts(World& world, const std::string& who) const;
};

} // namespace duskrow::sim
