// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "sync/hub/store/engine.h"
#include "sync/segment/segment.h"

namespace duskrow::hub {

using domain::Done;
using domain::Instant;
using domain::Result;
using domain::StreamId;
using domain::Uuid;
using sync::Hash;
using sync::PublicKey;

struct ProgrammeRow {
    Uuid programme;
    std::string name;
    StreamId root{}; // the founding stream
    std::int64_t epoch = 0;
    std::int64_t head = 0;
};

// A code that may found one programme.
struct Founding {
    PublicKey key{};
    std::string name;
    Instant until;
    Uuid programme; // nil until it is used
    StreamId stream{};
};

// Says that a segment is on the disk. Asked again, the hub answers the same.
struct Receipt {
    std::int64_t at = 0;
    Hash id{};
    std::int64_t last = 0;
    StreamId stream{};
    Instant time;
};

// A segment that passed every check, on its way into the store.
struct Arrival {
    sync::SegmentHeader header;
    Hash id{};
    std::string bytes;
    std::vector<std::pair<std::int64_t, std::string>> facts; // place and bytes of each change to the roster
    std::vector<PublicKey> invitations; // keys that these facts bring
    StreamId pushedBy{};
    Instant now;
    // The last number of the stream when its content was compared, because numbers come twice.
    std::optional<std::int64_t> comparedAt;
    bool isFork = false; // what the comparison showed
};

enum class Outcome {
    Stored,
    Had,
    Gap, // `next` is due
    Compare, // numbers come twice: look at overlapping(), then come again with comparedAt = next - 1
};

struct Placed {
    Outcome outcome = Outcome::Gap;
    Receipt receipt; // of Stored and Had
    std::int64_t next = 0;
};

struct StoredSegment {
    std::int64_t at = 0;
    std::string bytes;
};

struct AsideSegment {
    Hash file{}; // hash of its bytes
    StreamId stream{};
    std::int64_t first = 0;
    std::int64_t last = 0;
    Hash id{};
    std::string reason;
    StreamId pushedBy{};
    Instant received;
    std::string bytes; // left empty in lists
};

// What changed for the roster after a moment of the log.
struct Facts {
    std::int64_t head = 0;
    std::vector<std::string> lines;
};

struct Bearer {
    Uuid programme;
    StreamId stream{};
};

struct PhotographState {
    std::int64_t size = 0;
    std::int64_t held = 0;
    bool isWhole = false;
};

// A file that anybody may read.
struct Publication {
    std::string name;
    Hash hash{}; // of its bytes
    StreamId putBy{};
    Instant put;
    std::string bytes;
};
inline constexpr std::int64_t mostPublications = 1'000; // of one programme

// Everything the hub keeps. Every act is one transaction, and done when it returns. May be used by several
// threads at once. Errors are those of Engine.
class HubStore {
public:
    explicit HubStore(std::unique_ptr<Engine> engine) : m_engine(std::move(engine)) { }

    Engine& engine() { return *m_engine; }
    // Whether the store answers at all.
    Result<Done> ping();
    // 32 random bytes that all hubs over one store share; made when there are none.
    Result<std::string> secret();

    // Programmes
    Result<Done> addFounding(const Founding& founding);
    Result<std::optional<Founding>> founding(const PublicKey& key);
    enum class Founded { New, Again, Used, Taken };
    Result<Founded> found(const Founding& founding, const PublicKey& streamKey, Instant now);
    Result<std::optional<ProgrammeRow>> programme(const Uuid& programme);
    Result<std::vector<ProgrammeRow>> programmes();
    Result<std::vector<Uuid>> programmesInviting(const PublicKey& key);

    // Segments
    Result<Placed> place(const Uuid& programme, const Arrival& arrival);
    Result<std::vector<StoredSegment>> page(const Uuid& programme, std::int64_t after, std::int64_t most);
    Result<std::vector<StoredSegment>> overlapping(
        const Uuid& programme, const StreamId& stream, std::int64_t first, std::int64_t last);
    Result<std::map<StreamId, std::int64_t>> lastNumbers(const Uuid& programme);
    Result<Facts> factsAfter(const Uuid& programme, std::int64_t at);

    // Kept aside. False when there is no room for more.
    Result<bool> putAside(const Uuid& programme, const AsideSegment& segment);
    Result<std::vector<AsideSegment>> aside(const Uuid& programme);
    Result<std::optional<AsideSegment>> asideWithBytes(const Uuid& programme, const Hash& file);
    Result<Done> takeFromAside(const Uuid& programme, const Hash& file);

    // Tokens
    Result<std::optional<PublicKey>> keyOf(const Uuid& programme, const StreamId& stream);
    // False when the nonce was used before. Ends the older token of the stream.
    Result<bool> putToken(const Bearer& bearer, const Hash& token, const std::string& nonce, Instant now);
    Result<std::optional<Bearer>> bearerOf(const Hash& token);

    // Publications. False when there is no room for another name.
    Result<bool> putPublication(const Uuid& programme, const Publication& file);
    Result<std::map<std::string, Hash>> publications(const Uuid& programme);
    Result<std::optional<Publication>> publication(const Uuid& programme, const std::string& name);
    Result<std::vector<ProgrammeRow>> publishing(); // the programmes with any; id and name

    // Photographs
    Result<PhotographState> photograph(const Uuid& programme, const Hash& photograph);
    // Appends when `start` is what is held; otherwise nothing changes and the state tells what is.
    Result<PhotographState> putPart(const Uuid& programme, const Hash& photograph, std::int64_t start,
        std::int64_t size, const std::string& bytes, Instant now);
    Result<std::string> photographBytes(const Uuid& programme, const Hash& photograph);
    Result<Done> finishPhotograph(const Uuid& programme, const Hash& photograph);
    Result<Done> forgetPhotograph(const Uuid& programme, const Hash& photograph);

    Result<Done> audit(const Uuid& programme, const StreamId& who, const std::string& what,
        const std::string& detail, Instant now);

private:
    std::unique_ptr<Engine> m_engine;
};

inline constexpr std::int64_t mostAsideBytes = std::int64_t{256} << 20; // of one programme

} // namespace duskrow::hub
