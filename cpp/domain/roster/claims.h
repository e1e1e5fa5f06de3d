// SPDX-License-Identifier: MIT
#pragma once

#include "domain/roster/roster.h"

namespace duskrow::domain {

// A device that enters by an invitation, proven by a signature with the invitation's key.
struct Claim {
    Uuid invitation;
    Uuid member;
    StreamId stream{};
    PublicKey key{};
    std::string label;
};

// The claims among the `device` changes that are proven and in time.
std::vector<Claim> claimsIn(
    const std::map<std::pair<std::string, Uuid>, std::vector<Change>>& records, const Roster& roster);

// Those that count: of a stream that was confirmed for the invited member, or else the only one of its
// invitation.
std::vector<Claim> rightfulClaims(
    const std::vector<Claim>& claims, const std::map<StreamId, Uuid>& confirmed);

// Streams that go on from another, by a signature with the other's key: new stream, old stream.
std::map<StreamId, StreamId> followersIn(
    const std::map<std::pair<std::string, Uuid>, std::vector<Change>>& records);

} // namespace duskrow::domain
