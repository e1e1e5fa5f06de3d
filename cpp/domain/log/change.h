// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/by_name.h"
#include "domain/base/signing.h"
#include "domain/records/field.h"

namespace duskrow::domain {

// Names a change: stream and number. Numbers are 1, 2, 3 without gaps.
struct ChangeRef {
    StreamId stream{};
    std::int64_t seq = 0;

    auto operator<=>(const ChangeRef&) const = default;
};

struct FieldSet {
    Value value;
    std::vector<ChangeRef> base; // every version of the field that the author saw

    bool operator==(const FieldSet&) const = default;
};

// One act on one record.
struct Change {
    Uuid programme;
    ChangeRef ref;
    Uuid author;
    std::string kind;
    Uuid record;
    Uuid site; // the site concerned; nil when it concerns the whole programme
    Instant at;
    std::chrono::minutes offset{0};
    ByName<FieldSet> fields;
    std::vector<ChangeRef> saw; // all versions seen; written when the change withdraws or rules on a record

    bool operator==(const Change&) const = default;
};

inline constexpr std::size_t mostChangeBytes = std::size_t{64} * 1024;

// "<stream in hex>.<number>"
std::string formatRef(const ChangeRef& ref);
std::optional<ChangeRef> parseRef(std::string_view text);

// The bytes of a change: UTF-8 JSON, keys sorted, no spaces, no floats. What is empty is left out.
std::string canonicalJson(const Change& change);
void appendCanonicalJson(std::string& out, const Change& change);

// Reads the bytes of a change. Keys of a newer version are passed over here; the log keeps the bytes.
//
// Errors  ChangeMalformed {what} when it is no JSON, repeats a key, is deeper than 16, larger than 64 KiB,
//         holds a float, a NUL or a number beyond 64 bits, lacks a needed key, or cites itself
Result<Change> readChange(std::string_view bytes);

// As readChange, and the bytes must be the canonical form: what comes from others is never tidied up.
//
// Errors  those of readChange; ChangeMalformed {"form"}
Result<Change> readCanonicalChange(std::string_view bytes);

} // namespace duskrow::domain
