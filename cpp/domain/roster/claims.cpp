// SPDX-License-Identifier: MIT
#include "domain/roster/claims.h"

#include <algorithm>

namespace duskrow::domain {

namespace {

std::string textOf(const Change& change, const char* field)
{
    const auto found = change.fields.find(field);
    if (found == change.fields.end()) return {};
    const auto* text = std::get_if<std::string>(&found->second.value);
    return text ? *text : std::string();
}

std::optional<Claim> claimOf(const Change& change, const std::map<Uuid, OpenInvitation>& invitations)
{
    const auto invitation = invitations.find(parseUuid(textOf(change, "invitation")).value_or(Uuid{}));
    if (invitation == invitations.end()) return std::nullopt;
    const OpenInvitation& asked = invitation->second;
    if (asked.until && dayOf(change.at, change.offset) > *asked.until) return std::nullopt;
    Claim claim{asked.id, asked.member, change.ref.stream, {}, textOf(change, "label")};
    Signature proof{};
    if (!parseHex(textOf(change, "key"), claim.key) || !parseHex(textOf(change, "proof"), proof))
        return std::nullopt;
    if (streamOf(claim.key, change.programme) != claim.stream) return std::nullopt;
    if (!isSignedBy(asked.key, claimMessage(change.programme, claim.stream), proof)) return std::nullopt;
    return claim;
}

} // namespace

std::vector<Claim> claimsIn(
    const std::map<std::pair<std::string, Uuid>, std::vector<Change>>& records, const Roster& roster)
{
    std::map<std::pair<Uuid, StreamId>, Claim> claims;
    for (auto record = records.lower_bound({"device", Uuid{}});
         record != records.end() && record->first.first == "device"; ++record)
        for (const Change& change : record->second)
            if (auto claim = claimOf(change, roster.invitations()))
                claims.insert({{claim->invitation, claim->stream}, *claim});
    std::vector<Claim> all;
    for (auto& [key, claim] : claims) all.push_back(std::move(claim));
    return all;
}

std::map<StreamId, StreamId> followersIn(
    const std::map<std::pair<std::string, Uuid>, std::vector<Change>>& records)
{
    std::map<StreamId, StreamId> followers;
    for (auto record = records.lower_bound({"device", Uuid{}});
         record != records.end() && record->first.first == "device"; ++record)
        for (const Change& change : record->second) {
            PublicKey key{};
            Signature proof{};
            if (!parseHex(textOf(change, "follows_key"), key) || !parseHex(textOf(change, "proof"), proof))
                continue;
            if (isSignedBy(key, claimMessage(change.programme, change.ref.stream), proof))
                followers[change.ref.stream] = streamOf(key, change.programme);
        }
    return followers;
}

std::vector<Claim> rightfulClaims(const std::vector<Claim>& claims, const std::map<StreamId, Uuid>& confirmed)
{
    const auto isConfirmed = [&](const Claim& claim) {
        const auto found = confirmed.find(claim.stream);
        return found != confirmed.end() && found->second == claim.member;
    };
    std::vector<Claim> rightful;
    for (const Claim& claim : claims) {
        const auto rivals = [&](const Claim& other) { return other.invitation == claim.invitation; };
        const bool isOnly = std::count_if(claims.begin(), claims.end(), rivals) == 1;
        if (isConfirmed(claim) || isOnly) rightful.push_back(claim);
    }
    return rightful;
}

} // namespace duskrow::domain
