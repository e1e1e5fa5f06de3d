// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/log/fold.h"
#include "sync/carry/carried_reader.h"
#include "sync/folder/folder_files.h"
#include "sync/folder/folder_route.h"
#include "sync/roster/joining.h"
#include "sync/segment/segment.h"

namespace duskrow::sync {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {

constexpr std::size_t mostEntries = 200'000;
constexpr std::size_t mostRosterChanges = 200'000; // of one place; what lies beyond is not looked at

struct Candidate {
    Ticket ticket;
    bool isUsed = false;
};

bool sets(const Change& change, const char* field, const Value& value)
{
    const auto found = change.fields.find(field);
    return found != change.fields.end() && found->second.value == value;
}

// What lies at one place of one programme, as far as it says who is in.
class ProgrammeLook {
public:
    void add(const Change& change)
    {
        if (isRosterKind(change.kind)) m_roster.push_back(change);
        if (change.kind != "programme" || change.record != change.programme) return;
        m_own.push_back(change);
        const bool isCreation = std::all_of(change.fields.begin(), change.fields.end(),
            [](const auto& field) { return field.second.base.empty(); });
        if (isCreation) m_makers.insert(change.ref.stream);
    }

    [[nodiscard]] std::vector<Candidate> candidates(const Uuid& programme, const TicketWanted& wanted) const
    {
        const std::string key = formatHex(wanted.invitation);
        std::set<StreamId> streams = m_makers;
        for (const Change& change : m_roster)
            if (change.kind == "invitation" && sets(change, "key", key)) streams.insert(change.ref.stream);
        if (wanted.founder) streams = {*wanted.founder};
        std::vector<Candidate> all;
        for (const StreamId& stream : streams) {
            const Roster roster = Roster::from(programme, {stream}, m_roster);
            if (!wanted.founder && !isFounder(stream, roster)) continue;
            for (const auto& [id, invitation] : roster.invitations())
                if (invitation.key == wanted.invitation)
                    all.push_back({{programme, stream, id, invitation.member, invitation.until, name(roster)},
                        invitation.isClaimed});
        }
        return all;
    }

private:
    // The record of the programme is this stream's, or of streams that it made its equals (the phone on
    // which it began, before there were others).
    [[nodiscard]] bool isFounder(const StreamId& stream, const Roster& roster) const
    {
        if (m_makers.contains(stream)) return true;
        return !m_makers.empty() && std::all_of(m_makers.begin(), m_makers.end(), [&](const StreamId& maker) {
            return roster.isRoot(maker);
        });
    }

    [[nodiscard]] std::string name(const Roster& roster) const
    {
        if (m_own.empty()) return {};
        const Folded folded = fold(m_own, {&roster, nullptr});
        const auto found = folded.values.find("name");
        const auto* text = found == folded.values.end() ? nullptr : std::get_if<std::string>(&found->second);
        return text ? *text : std::string();
    }

    std::vector<Change> m_roster;
    std::vector<Change> m_own; // changes to the programme's own record
    std::set<StreamId> m_makers; // streams that made that record
};

// Looks through segments as strangers may have left them: only what is signed is taken note of.
class TicketSearch {
public:
    explicit TicketSearch(const TicketWanted& wanted) : m_wanted(wanted) { }

    void look(std::string_view bytes)
    {
        auto head = readHead(bytes);
        if (!head || m_noted >= mostRosterChanges) return;
        const Uuid programme = head->header.programme;
        if (!m_wanted.programme.isNil() && programme != m_wanted.programme) return;
        const auto segment = openSegment(std::move(*head));
        if (!segment) return;
        for (const SegmentLine& line : segment->lines) {
            if (line.bytes.empty() || !(isRosterKind(line.change.kind) || line.change.kind == "programme"))
                continue;
            m_looks[programme].add(line.change);
            ++m_noted;
        }
    }

    [[nodiscard]] Result<Ticket> ticket() const
    {
        std::vector<Candidate> all;
        for (const auto& [programme, look] : m_looks) {
            auto found = look.candidates(programme, m_wanted);
            all.insert(all.end(), found.begin(), found.end());
        }
        if (all.empty()) return Error{ErrorCode::InvitationUnknown};
        if (all.size() > 1) return Error{ErrorCode::InvitationDoubtful};
        if (all.front().isUsed) return Error{ErrorCode::InvitationUsed};
        return all.front().ticket;
    }

private:
    TicketWanted m_wanted;
    std::map<Uuid, ProgrammeLook> m_looks;
    std::size_t m_noted = 0;
};

} // namespace

Result<Ticket> ticketInFolder(const fs::path& shared, const TicketWanted& wanted)
{
    std::error_code failure;
    if (!fs::is_directory(shared, failure)) return Error{ErrorCode::FolderMissing, {shared.string()}};
    TicketSearch search(wanted);
    const auto look = [&](const fs::path& path) {
        if (const auto bytes = readPlainFile(path, mostSegmentBytes)) search.look(*bytes);
    };
    for (const Uuid& programme : programmesIn(shared))
        for (const char* part : {"s", "join"})
            eachEntry(programmeFolder(shared, programme) / part, mostEntries, look);
    return search.ticket();
}

Result<Ticket> ticketInCarried(const fs::path& file, const TicketWanted& wanted)
{
    TicketSearch search(wanted);
    const auto report = readCarriedFile(file, [&](const CarriedItem& item) {
        if (item.kind == ItemKind::Segment) search.look(item.bytes);
        return true;
    });
    if (!report) return report.error();
    if (report->ending == Ending::NotOurs) return Error{ErrorCode::CarriedNotOurs, {file.string()}};
    return search.ticket();
}

} // namespace duskrow::sync
