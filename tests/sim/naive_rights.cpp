// SPDX-License-Identifier: MIT
// What follows from the roster for a change: does it count, may it be read.
#include <algorithm>

#include "domain/records/roster.h"
#include "sim/naive_roster.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

std::string text(const Change& change, const std::string& field)
{
    const auto found = change.fields.find(field);
    if (found == change.fields.end()) return {};
    const auto* value = std::get_if<std::string>(&found->second.value);
    return value != nullptr ? *value : std::string();
}

Uuid trapOf(const Change& change)
{
    return parseUuid(text(change, "trap")).value_or(Uuid{});
}

std::string dayOfWork(const Change& change)
{
    const std::string day = text(change, "day");
    return parseDay(day) ? day : formatDay(dayOf(change.at, change.offset));
}

Uuid siteOf(const Change& change)
{
    return change.kind == "site" ? change.record : change.site;
}

bool isMeasured(const Change& change, const std::string& name)
{
    const RecordKind* kind = findKind(change.kind);
    const Field* field = kind != nullptr ? kind->find(name) : nullptr;
    return field != nullptr && field->merge == MergeClass::Measured;
}

} // namespace

Uuid NaiveRoster::memberOf(const StreamId& stream) const
{
    const auto found = m_devices.find(stream);
    return found == m_devices.end() ? Uuid{} : found->second.member;
}

bool NaiveRoster::isEnded(const StreamId& stream) const
{
    const auto found = m_devices.find(stream);
    return found != m_devices.end() && found->second.end;
}

bool NaiveRoster::isOnly(const std::set<StreamId>& these) const
{
    return std::all_of(
        m_devices.begin(), m_devices.end(), [&](const auto& device) { return these.contains(device.first); });
}

bool NaiveRoster::isCoordinator(const StreamId& stream) const
{
    return m_roots.contains(stream) || (m_devices.contains(stream) && m_coordinatorStreams.contains(stream));
}

bool NaiveRoster::isHome(const Uuid& member, const Uuid& site) const
{
    return !member.isNil() && !site.isNil() && m_homes.contains({member, site});
}

bool NaiveRoster::isLent(const Uuid& member, const Change& change, const Change* maker) const
{
    if (change.kind != "service" && change.kind != "visit" && change.kind != "sample"
        && change.kind != "answer")
        return false;
    const std::string day =
        text(change, "day").empty() && maker != nullptr ? dayOfWork(*maker) : dayOfWork(change);
    const auto covers = [&](const Uuid& trap) {
        return std::any_of(m_loans.begin(), m_loans.end(), [&](const Loan& loan) {
            return loan.member == member && loan.site == change.site && (trap.isNil() || trap == loan.trap)
                && (loan.from.empty() || day >= loan.from) && (loan.until.empty() || day <= loan.until);
        });
    };
    return covers(trapOf(change)) && covers(maker != nullptr ? trapOf(*maker) : trapOf(change));
}

bool NaiveRoster::settlesForOthers(const Change& change) const
{
    for (const auto& [name, set] : change.fields) {
        if (set.base.size() < 2 || !isMeasured(change, name)) continue;
        std::set<Uuid> members;
        for (const ChangeRef& ref : set.base) members.insert(memberOf(ref.stream));
        if (members.size() > 1 || members.contains(Uuid{})) return true;
    }
    return false;
}

bool NaiveRoster::hasMemberEnded(const Uuid& member, const Change& change) const
{
    const auto until = m_until.find(member);
    return until != m_until.end() && dayOfWork(change) > until->second;
}

bool NaiveRoster::isOwnClaim(const Change& change) const
{
    if (change.record != deviceId(m_programme, change.ref.stream)) return false;
    const std::string stream = text(change, "stream");
    if (change.fields.contains("stream") && stream != formatHex(change.ref.stream)) return false;
    static const std::set<std::string> own{"stream", "key", "label", "invitation", "proof"};
    return std::all_of(change.fields.begin(), change.fields.end(),
        [&](const auto& field) { return own.contains(field.first); });
}

bool NaiveRoster::counts(const Change& change, const Change* maker) const
{
    if (m_admitted.contains(change.ref)) return true;
    const auto device = m_devices.find(change.ref.stream);
    if (device == m_devices.end()) return change.ref.stream == m_own;
    if (device->second.end && change.ref.seq > *device->second.end) return false;
    if (m_roots.contains(change.ref.stream)) return true;
    if (hasMemberEnded(device->second.member, change)) return false;
    if (isCoordinator(change.ref.stream)) return !m_forRoots.contains(change.ref);
    static const std::set<std::string> coordinators{"programme", "season", "district", "protocol_use",
        "member", "invitation", "assignment", "ruling", "admission", "question", "station", "temperature",
        "bulletin"};
    if (coordinators.contains(change.kind)) return false;
    if (change.kind == "device") return isOwnClaim(change);
    const Uuid member = device->second.member;
    if (member.isNil() || settlesForOthers(change)) return false;
    if (!isHome(member, siteOf(change)) && !isLent(member, change, maker)) return false;
    return maker == nullptr || siteOf(change) == siteOf(*maker);
}

Changes NaiveRoster::counting(const Changes& ofRecord) const
{
    const Change* maker = nullptr;
    for (const Change* change : ofRecord)
        if (isMaking(*change) && counts(*change, nullptr) && (maker == nullptr || change->ref < maker->ref))
            maker = change;
    Changes all;
    for (const Change* change : ofRecord)
        if (counts(*change, maker)) all.push_back(change);
    return all;
}

bool NaiveRoster::mayRead(const StreamId& reader, const Change& change) const
{
    if (isCoordinator(reader)) return true;
    const Uuid site = siteOf(change);
    const Uuid member = memberOf(reader);
    if (site.isNil() || change.ref.stream == reader) return true;
    if (member.isNil()) return false;
    if (memberOf(change.ref.stream) == member || m_assigned.contains({member, site})) return true;
    const auto keeper = m_keeper.find(site);
    if (keeper != m_keeper.end() && keeper->second == member) return true;
    return std::any_of(m_loans.begin(), m_loans.end(),
        [&](const Loan& loan) { return loan.member == member && loan.site == site; });
}

} // namespace duskrow::sim
