// SPDX-License-Identifier: MIT
#include "sync/roster/roster_edits.h"

#include <algorithm>

#include "store/segments.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

Device deviceOf(const Uuid& programme, const StreamId& stream)
{
    Device device;
    device.id = deviceId(programme, stream);
    device.stream = formatHex(stream);
    return device;
}

} // namespace

Edit enrolment(const Uuid& programme, const EnrolledDevice& device)
{
    Device made = deviceOf(programme, device.stream);
    made.key = formatHex(device.key);
    made.label = device.label;
    made.member = device.member;
    return creation(made, {});
}

Edit secondRoot(const Uuid& programme, const StreamId& stream)
{
    Device device = deviceOf(programme, stream);
    device.root = true;
    return creation(device, {});
}

Edit ending(const Uuid& programme, const StreamId& stream, std::int64_t lastGood)
{
    Device device = deviceOf(programme, stream);
    device.endedAfter = lastGood;
    return creation(device, {});
}

Edit leaving(const Uuid& member, LocalDay lastDay)
{
    Member leaver;
    leaver.id = member;
    leaver.untilDay = lastDay;
    return creation(leaver, {});
}

Edit assignment(const Uuid& programme, const Uuid& member, const Uuid& site)
{
    Assignment made;
    made.id = assignmentId(programme, member, site);
    made.member = member;
    made.site = site;
    return creation(made, {});
}

Edit admission(const Uuid& programme, const ChangeRef& change)
{
    Admission made;
    made.change = formatRef(change);
    made.id = admissionId(programme, made.change);
    return creation(made, {});
}

Edit ruling(const Uuid& programme, const Uuid& record, Says says, const std::string& remark)
{
    Ruling made;
    made.id = rulingId(programme, record);
    made.subject = record;
    made.says = says;
    made.remark = remark;
    return creation(made, {});
}

Edit leavingOut(const Uuid& programme, const Uuid& visit, const std::string& reason)
{
    return {"ruling", rulingId(programme, visit), {},
        {{"record", formatUuid(visit)}, {"left_out", reason.empty() ? Value{} : Value{reason}}}};
}

Result<std::int64_t> lastArrived(store::Reader& reader, const StreamId& stream)
{
    const auto states = store::streamStates(reader);
    if (!states) return states.error();
    const auto found = states->find(stream);
    return found == states->end() ? std::int64_t{0} : found->second.used;
}

Result<std::vector<Edit>> earlierFounders(store::Store& store, store::Reader& reader)
{
    std::vector<Edit> edits;
    const auto roster = store::rosterOf(reader, store.programme());
    if (!roster) return roster.error();
    if (!roster->founders().contains(store.stream())) return edits;
    const auto said = reader.select<Device>({});
    if (!said) return said.error();
    for (const StreamId& founder : roster->founders()) {
        const bool isSaid = std::any_of(said->begin(), said->end(),
            [&](const Device& device) { return device.stream == formatHex(founder) && device.root == true; });
        if (founder != store.stream() && !isSaid) edits.push_back(secondRoot(store.programme(), founder));
    }
    return edits;
}

Result<Uuid> holderOf(store::Store& store, store::Reader& reader)
{
    const auto said = reader.deviceSetting("me");
    if (!said) return said.error();
    if (const auto id = *said ? parseUuid(**said) : std::nullopt) return *id;
    const auto roster = store::rosterOf(reader, store.programme());
    if (!roster) return roster.error();
    const Uuid member = roster->memberOf(store.stream());
    if (member.isNil()) return Error{ErrorCode::MemberUnsaid, {store.path()}};
    return member;
}

Result<std::int64_t> confirmClaims(store::Store& store, const Moment& now)
{
    const auto reader = store.reader();
    if (!reader) return reader.error();
    const auto roster = store::rosterOf(**reader, store.programme());
    if (!roster) return roster.error();
    if (!roster->isCoordinator(store.stream())) return std::int64_t{0};
    std::vector<Edit> edits;
    for (const auto& [stream, device] : roster->devices()) {
        if (device.isConfirmed || device.member.isNil()) continue;
        const auto member = roster->members().find(device.member);
        const bool isForRoots = member != roster->members().end() && member->second.role == Role::Coordinator;
        if (isForRoots && !roster->isRoot(store.stream())) continue;
        edits.push_back(enrolment(store.programme(), device));
    }
    if (edits.empty()) return std::int64_t{0};
    const auto author = holderOf(store, **reader);
    if (!author) return author.error();
    const auto kept = store.keepNow(
        {.author = *author, .at = now.at, .offset = now.offset, .edits = std::move(edits), .draftDone = {}});
    if (!kept) return kept.error();
    return static_cast<std::int64_t>(kept->changes.size());
}

} // namespace duskrow::sync
