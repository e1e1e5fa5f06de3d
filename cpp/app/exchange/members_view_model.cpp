// SPDX-License-Identifier: MIT
#include "app/exchange/members_view_model.h"

#include <algorithm>

#include "app/exchange/exchange_words.h"
#include "app/exchange/people.h"
#include "domain/records/roster.h"
#include "store/last_heard.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

struct MembersViewModel::State {
    std::vector<Row> members;
    std::vector<Row> invited;
    bool isCoordinator = false;
    bool needsSecondRoot = false;
};

namespace {

using Heard = std::map<StreamId, Instant>;

// "2 devices · last entry today, 14:05 · 3 fields"
QString devicesLine(
    const People& people, const Uuid& member, bool isMe, const Heard& heard, const Moment& now)
{
    int devices = 0;
    std::optional<Instant> last;
    bool hasThis = false;
    for (const auto& [stream, device] : people.roster().devices()) {
        if (device.member != member || device.endedAfter) continue;
        ++devices;
        hasThis = hasThis || stream == people.own();
        if (const auto found = heard.find(stream); found != heard.end())
            last = std::max(last.value_or(found->second), found->second);
    }
    QStringList parts;
    if (devices == 0 && isMe)
        parts << MembersViewModel::tr("this device");
    else if (devices == 0)
        parts << MembersViewModel::tr("no device yet");
    else if (devices == 1 && hasThis)
        parts << MembersViewModel::tr("this device");
    else
        parts << (devices == 1 ? MembersViewModel::tr("1 device")
                               : MembersViewModel::tr("%n devices", nullptr, devices));
    if (last && !(devices == 1 && hasThis))
        parts << MembersViewModel::tr("last entry %1", "day and time").arg(momentWords(*last, now));
    const auto sites = static_cast<int>(people.roster().sitesOf(member).size());
    if (sites > 0)
        parts << (sites == 1 ? MembersViewModel::tr("1 field")
                             : MembersViewModel::tr("%n fields", nullptr, sites));
    return parts.join(QStringLiteral(" · "));
}

Row rowOf(const People& people, const Member& member, bool isMe, const Heard& heard, const Moment& now)
{
    const QString id = QString::fromStdString(formatUuid(member.id));
    Row row{.key = id, .title = QString::fromStdString(member.name)};
    row.besides = member.role ? text::name(*member.role) : QString();
    row.detail = devicesLine(people, member.id, isMe, heard, now);
    if (member.untilDay)
        row.flags << MembersViewModel::tr("until %1", "last day in the programme")
                         .arg(text::dayAndYear(*member.untilDay));
    row.route = QStringLiteral("member");
    row.subject = id;
    return row;
}

} // namespace

MembersViewModel::MembersViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &MembersViewModel::refresh);
    refresh();
}

void MembersViewModel::refresh()
{
    const auto read = [programme = session().store().programme(), own = session().store().stream(),
                          me = session().me() ? session().me()->id : Uuid{},
                          now = session().clock().now()](store::Reader& reader) -> Result<State> {
        const auto people = People::read(reader, programme, own);
        if (!people) return people.error();
        const auto heard = store::lastHeard(reader);
        if (!heard) return heard.error();
        State state;
        state.isCoordinator = people->isCoordinator();
        for (const Member& member : people->members())
            state.members.push_back(rowOf(*people, member, member.id == me, *heard, now));
        for (const auto& [id, invitation] : people->roster().invitations()) {
            const bool isPast = invitation.until && *invitation.until < now.day;
            if (invitation.isClaimed) continue;
            Row row{
                .key = QString::fromStdString(formatUuid(id)), .title = people->nameOf(invitation.member)};
            if (invitation.until) {
                const QString until = yearOf(*invitation.until) == yearOf(now.day)
                    ? text::day(*invitation.until)
                    : text::dayAndYear(*invitation.until);
                row.detail = isPast ? tr("the code was good until %1").arg(until)
                                    : tr("the code is good until %1").arg(until);
            }
            state.invited.push_back(std::move(row));
        }
        const auto& devices = people->roster().devices();
        const auto roots = std::count_if(devices.begin(), devices.end(),
            [](const auto& device) { return device.second.isRoot && !device.second.endedAfter; });
        state.needsSecondRoot = people->hasOthers() && people->roster().isRoot(own) && roots < 2;
        return state;
    };
    session().lookUp<State>(this, read, [this](const Result<State>& state) {
        if (!state) return tell(state.error());
        m_members.show(state->members);
        m_invited.show(state->invited);
        m_isCoordinator = state->isCoordinator;
        m_needsSecondRoot = state->needsSecondRoot;
        Q_EMIT shown();
    });
}

void MembersViewModel::takeBack(const QString& invitation)
{
    Invitation record;
    record.id = parseUuid(invitation.toStdString()).value_or(Uuid{});
    session().keep(
        {withdrawal(record, {}, "taken back")}, std::nullopt, this, [this](const Result<store::Kept>& kept) {
            if (!kept) tell(kept.error());
        });
}

} // namespace duskrow::app
