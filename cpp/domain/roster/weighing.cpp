// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/records/roster.h"
#include "domain/roster/roster.h"

namespace duskrow::domain {

namespace {

// Kinds of the whole programme, which growers and agronomists read but do not write.
bool isCoordinatorKind(const std::string& kind)
{
    static constexpr std::array<std::string_view, 13> kinds{"programme", "season", "district", "protocol_use",
        "member", "invitation", "assignment", "ruling", "admission", "question", "station", "temperature",
        "bulletin"};
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

// What a borrower does at a trap; what he answers is of the day of that work.
bool isTrapWork(const std::string& kind)
{
    return kind == "service" || kind == "visit" || kind == "sample" || kind == "answer";
}

Uuid trapIn(const Change& change)
{
    const auto trap = change.fields.find("trap");
    const auto* text = trap == change.fields.end() ? nullptr : std::get_if<std::string>(&trap->second.value);
    return text ? parseUuid(*text).value_or(Uuid{}) : Uuid{};
}

std::optional<LocalDay> dayIn(const Change& change)
{
    const auto day = change.fields.find("day");
    const auto* text = day == change.fields.end() ? nullptr : std::get_if<std::string>(&day->second.value);
    const auto parsed = text ? parseDay(*text) : Result<LocalDay>(Error{ErrorCode::NotADay});
    return parsed ? std::optional(*parsed) : std::nullopt;
}

LocalDay workDay(const Change& change)
{
    return dayIn(change).value_or(dayOf(change.at, change.offset));
}

const Uuid& siteOf(const Change& change)
{
    return change.kind == "site" ? change.record : change.site;
}

// The first in the fixed order of those that made the record.
const Change* makerOf(std::span<const Change* const> changes, const std::vector<Standing>& standings)
{
    const Change* maker = nullptr;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        if (standings[i] != Standing::Counts || !isCreation(*changes[i])) continue;
        if (!maker || changes[i]->ref < maker->ref) maker = changes[i];
    }
    return maker;
}

} // namespace

Standing Roster::standing(const Change& change) const
{
    return standing(change, nullptr);
}

Standing Roster::standing(const Change& change, const Change* maker) const
{
    if (m_admitted.contains(change.ref)) return Standing::Counts;
    const auto found = m_devices.find(change.ref.stream);
    if (found == m_devices.end())
        return m_here == change.ref.stream ? Standing::Counts : Standing::NotEnrolled;
    const EnrolledDevice& device = found->second;
    if (device.endedAfter && change.ref.seq > *device.endedAfter) return Standing::Ended;
    const auto member = m_members.find(device.member);
    if (!device.isRoot && member != m_members.end() && member->second.until
        && workDay(change) > *member->second.until)
        return Standing::MemberEnded;
    return byRole(change, device, maker);
}

// The roster itself was read by the finer rules; what a coordinator had to leave to a root was noted there.
Standing Roster::byRole(const Change& change, const EnrolledDevice& device, const Change* maker) const
{
    if (device.isRoot) return Standing::Counts;
    if (isCoordinator(device.stream))
        return m_forRoots.contains(change.ref) ? Standing::RootOnly : Standing::Counts;
    if (isCoordinatorKind(change.kind)) return Standing::CoordinatorOnly;
    if (change.kind == "device") return isOwnDevice(change) ? Standing::Counts : Standing::CoordinatorOnly;
    if (device.member.isNil()) return Standing::NotYours;
    if (settlesOthers(change)) return Standing::SettlingNotYours;
    return atSite(change, device.member, maker);
}

// Of its own record a device writes what a claim holds, and no more.
bool Roster::isOwnDevice(const Change& change) const
{
    static constexpr std::array<std::string_view, 5> fields{"stream", "key", "label", "invitation", "proof"};
    if (change.record != deviceId(m_programme, change.ref.stream)) return false;
    const auto stream = change.fields.find("stream");
    if (stream != change.fields.end() && stream->second.value != Value{formatHex(change.ref.stream)})
        return false;
    return std::all_of(change.fields.begin(), change.fields.end(), [](const auto& field) {
        return std::find(fields.begin(), fields.end(), field.first) != fields.end();
    });
}

Standing Roster::atSite(const Change& change, const Uuid& member, const Change* maker) const
{
    const Uuid& site = siteOf(change);
    if (site.isNil()) return Standing::CoordinatorOnly;
    if (isAtHome(member, site)) return Standing::Counts;
    return isLentTo(member, change, maker) ? Standing::Counts : Standing::NotYours;
}

// A correction belongs to the trap and the day of the work that it corrects, whenever it is made; nor may it
// carry the work to a trap that was not lent.
bool Roster::isLentTo(const Uuid& member, const Change& change, const Change* maker) const
{
    if (!isTrapWork(change.kind)) return false;
    const Uuid trap = trapIn(change);
    const Uuid madeFor = maker ? trapIn(*maker) : trap;
    const LocalDay day = dayIn(change).value_or(workDay(maker ? *maker : change));
    const auto covers = [&](const Uuid& wanted) {
        return std::any_of(m_lendings.begin(), m_lendings.end(), [&](const Lending& lending) {
            return lending.member == member && lending.site == change.site
                && (wanted.isNil() || wanted == lending.trap) && (!lending.from || day >= *lending.from)
                && (!lending.until || day <= *lending.until);
        });
    };
    return covers(trap) && covers(madeFor);
}

// Whether a measured field is set in view of values of different people.
bool Roster::settlesOthers(const Change& change) const
{
    const RecordKind* kind = findKind(change.kind);
    for (const auto& [name, set] : change.fields) {
        const Field* field = kind ? kind->find(name) : nullptr;
        if (set.base.size() < 2 || !field || field->merge != MergeClass::Measured) continue;
        const Uuid first = memberOf(set.base.front().stream);
        for (const ChangeRef& ref : set.base)
            if (memberOf(ref.stream).isNil() || memberOf(ref.stream) != first) return true;
    }
    return false;
}

std::vector<Standing> Roster::weigh(std::span<const Change> ofOneRecord) const
{
    std::vector<const Change*> changes;
    changes.reserve(ofOneRecord.size());
    for (const Change& change : ofOneRecord) changes.push_back(&change);
    return weigh(std::span<const Change* const>(changes));
}

std::vector<Standing> Roster::weigh(std::span<const Change* const> ofOneRecord) const
{
    std::vector<Standing> standings;
    standings.reserve(ofOneRecord.size());
    for (const Change* change : ofOneRecord) standings.push_back(standing(*change));
    if (ofOneRecord.size() < 2 || m_isAlone) return standings;

    const Change* maker = makerOf(ofOneRecord, standings);
    if (!maker) return standings;
    for (std::size_t i = 0; i < ofOneRecord.size(); ++i) {
        const Change& change = *ofOneRecord[i];
        standings[i] = standing(change, maker);
        if (standings[i] != Standing::Counts || isCoordinator(change.ref.stream)) continue;
        if (m_admitted.contains(change.ref)) continue;
        if (siteOf(change) != siteOf(*maker)) standings[i] = Standing::OtherSite;
    }
    return standings;
}

} // namespace duskrow::domain
