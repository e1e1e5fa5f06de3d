// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "domain/base/signing.h"
#include "domain/records/field.h"

// Who takes part with which device, and what a coordinator said of a record. sync/FORMAT.md section 5.
namespace duskrow::domain {

// One installation. Its id comes from its stream.
struct Device : Record {
    std::string stream; // hexadecimal
    std::string key; // its public key, hexadecimal
    std::string label; // as its owner calls it
    Uuid member; // who holds it
    std::optional<bool> root;
    std::optional<std::int64_t> endedAfter; // its last change that counts
    Uuid invitation; // that it claimed
    std::string proof; // signature by the invitation's key, or by that of the stream it follows, hexadecimal
    std::string followsKey; // public key of the stream that this one goes on from, after a restored backup
};

struct Invitation : Record {
    Uuid member;
    std::string key; // public key made from the code, hexadecimal
    std::optional<LocalDay> untilDay;
};

// A site that a member works at without keeping it. Its id comes from both.
struct Assignment : Record {
    Uuid member;
    Uuid site;
};

enum class Says { Stands, Open };
inline constexpr std::array<std::string_view, 2> saysNames{"stands", "open"};

// A coordinator's word on a record. Its id comes from the record's. `saw` of its change lists what it is
// about.
struct Ruling : Record {
    Uuid subject; // the record
    std::optional<Says> says;
    std::string leftOut; // why the count of this visit is left out of the picture; empty while it is in it
    std::string remark;
};

// Lets in one change that was kept aside.
struct Admission : Record {
    std::string change; // its reference
};

template <>
const RecordKind& kindOf<Device>();
template <>
const RecordKind& kindOf<Invitation>();
template <>
const RecordKind& kindOf<Assignment>();
template <>
const RecordKind& kindOf<Ruling>();
template <>
const RecordKind& kindOf<Admission>();

Uuid deviceId(const Uuid& programme, const StreamId& stream);
Uuid assignmentId(const Uuid& programme, const Uuid& member, const Uuid& site);
Uuid rulingId(const Uuid& programme, const Uuid& record);
Uuid admissionId(const Uuid& programme, const std::string& change);

} // namespace duskrow::domain
