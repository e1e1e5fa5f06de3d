// SPDX-License-Identifier: MIT
#include "app/exchange/member_view_model.h"

#include "app/as_qstring.h"
#include "app/exchange/exchange_words.h"
#include "app/exchange/people.h"
#include "store/last_heard.h"
#include "store/queries.h"
#include "sync/roster/roster_edits.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

struct MemberViewModel::State {
    People people;
    std::map<StreamId, std::int64_t> used;
    std::map<StreamId, Instant> heard;
    std::vector<Row> sites;
    std::vector<Row> otherSites;
    std::set<Uuid> assignments;
};

namespace {

Row deviceRow(const People& people, const EnrolledDevice& device, std::int64_t used,
    const std::map<StreamId, Instant>& heard, const Moment& now)
{
    Row row{.key = QString::fromStdString(formatHex(device.stream)),
        .title = QString::fromStdString(device.label)};
    if (row.title.isEmpty()) row.title = MemberViewModel::tr("Device without a name");
    if (device.stream == people.own()) row.besides = MemberViewModel::tr("this one");
    QStringList parts{(static_cast<int>(used) == 1
            ? MemberViewModel::tr("1 entry is here")
            : MemberViewModel::tr("%n entries are here", nullptr, static_cast<int>(used)))};
    if (const auto found = heard.find(device.stream); found != heard.end())
        parts << MemberViewModel::tr("the last of %1", "day and time").arg(momentWords(found->second, now));
    row.detail = parts.join(QStringLiteral(", "));
    if (device.isRoot) row.flags << MemberViewModel::tr("Main device of the programme");
    if (!device.isConfirmed) row.flags << MemberViewModel::tr("Entered by its code, not confirmed yet");
    if (device.endedAfter)
        row.flags << MemberViewModel::tr("Ended after entry %1").arg(text::number(*device.endedAfter));
    row.isStruck = device.endedAfter.has_value();
    return row;
}

Result<std::vector<Row>> siteRows(store::Reader& reader, const People& people, const Uuid& member)
{
    std::vector<Row> rows;
    for (const Uuid& id : people.roster().sitesOf(member)) {
        const auto site = store::site(reader, id);
        if (!site) return site.error();
        if (*site)
            rows.push_back({.key = QString::fromStdString(formatUuid(id)),
                .title = QString::fromStdString((*site)->name)});
    }
    return rows;
}

// Those of the season that somebody else keeps.
Result<std::vector<Row>> otherSiteRows(
    store::Reader& reader, const People& people, const Uuid& member, const Uuid& season)
{
    std::vector<Row> rows;
    const auto sites = store::sitesOf(reader, season);
    if (!sites) return sites.error();
    const std::set<Uuid> his = people.roster().sitesOf(member);
    for (const Site& site : *sites) {
        if (site.keeper == member) continue;
        Row row{
            .key = QString::fromStdString(formatUuid(site.id)), .title = QString::fromStdString(site.name)};
        const QString keeper = people.nameOf(site.keeper);
        if (!keeper.isEmpty()) row.detail = MemberViewModel::tr("kept by %1").arg(keeper);
        if (his.contains(site.id)) row.flags << MemberViewModel::tr("works there too");
        rows.push_back(std::move(row));
    }
    return rows;
}

Result<std::set<Uuid>> assignmentsIn(store::Reader& reader)
{
    const auto made = reader.select<Assignment>({.withWithdrawn = true});
    if (!made) return made.error();
    std::set<Uuid> ids;
    for (const Assignment& one : *made) ids.insert(one.id);
    return ids;
}

} // namespace

MemberViewModel::MemberViewModel(Session& session, const QString& member, QObject* parent)
    : ViewModel(session, parent), m_member(parseUuid(member.toStdString()).value_or(Uuid{}))
{
    connect(&session, &Session::changed, this, &MemberViewModel::refresh);
    refresh();
}

QString MemberViewModel::today() const
{
    return QString::fromStdString(formatDay(session().clock().today()));
}

void MemberViewModel::refresh()
{
    const auto read = [programme = session().store().programme(), own = session().store().stream(),
                          season = session().season() ? session().season()->id : Uuid{},
                          member = m_member](store::Reader& reader) -> Result<State> {
        auto people = People::read(reader, programme, own);
        if (!people) return people.error();
        auto heard = store::lastHeard(reader);
        if (!heard) return heard.error();
        const auto states = store::streamStates(reader);
        if (!states) return states.error();
        auto sites = siteRows(reader, *people, member);
        if (!sites) return sites.error();
        auto others = otherSiteRows(reader, *people, member, season);
        if (!others) return others.error();
        auto assignments = assignmentsIn(reader);
        if (!assignments) return assignments.error();
        State state{std::move(*people), {}, std::move(*heard), std::move(*sites), std::move(*others),
            std::move(*assignments)};
        for (const auto& [stream, known] : *states) state.used[stream] = known.used;
        return state;
    };
    session().lookUp<State>(this, read, [this](const Result<State>& state) {
        if (!state) return tell(state.error());
        show(*state);
    });
}

void MemberViewModel::show(const State& state)
{
    const Roster& roster = state.people.roster();
    const auto member = std::find_if(state.people.members().begin(), state.people.members().end(),
        [this](const Member& one) { return one.id == m_member; });
    if (member == state.people.members().end()) return tell(Error{ErrorCode::RecordMissing, {"member"}});
    clearTrouble();
    m_name = QString::fromStdString(member->name);
    m_role = member->role ? asQString(roleNames[static_cast<std::size_t>(*member->role)]) : QString();
    m_roleWords = member->role ? text::name(*member->role) : QString();
    m_lastDay = member->untilDay ? text::dayAndYear(*member->untilDay) : QString();
    m_used = state.used;
    const bool isOverCoordinators = roster.isAlone() || roster.isRoot(state.people.own());
    m_mayChange = state.people.isCoordinator() && (member->role != Role::Coordinator || isOverCoordinators)
        && !(session().me() && session().me()->id == m_member);
    m_mayMakeRoots = isOverCoordinators && member->role == Role::Coordinator;
    std::vector<Row> devices;
    for (const auto& [stream, device] : roster.devices())
        if (device.member == m_member)
            devices.push_back(
                deviceRow(state.people, device, m_used[stream], state.heard, session().clock().now()));
    m_devices.show(std::move(devices));
    const std::vector<Row> others =
        m_mayChange && member->role != Role::Coordinator ? state.otherSites : std::vector<Row>{};
    // What can be switched below need not stand there twice.
    std::vector<Row> sites = state.sites;
    std::erase_if(sites, [&](const Row& site) {
        return std::any_of(
            others.begin(), others.end(), [&](const Row& other) { return other.key == site.key; });
    });
    m_sites.show(std::move(sites));
    m_assignments = state.assignments;
    m_otherSites.show(others);
    Q_EMIT shown();
}

void MemberViewModel::keep(std::vector<Edit> edits)
{
    if (m_busy) return;
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(std::move(edits), std::nullopt, this, [this](const Result<store::Kept>& kept) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!kept) return tell(kept.error());
        clearTrouble();
    });
}

void MemberViewModel::endDevice(const QString& stream)
{
    StreamId id{};
    if (!parseHex(stream.toStdString(), id)) return;
    keep({sync::ending(session().store().programme(), id, m_used[id])});
}

void MemberViewModel::makeRoot(const QString& stream)
{
    StreamId id{};
    if (parseHex(stream.toStdString(), id)) keep({sync::secondRoot(session().store().programme(), id)});
}

void MemberViewModel::leave(const QString& lastDay)
{
    const auto day = parseDay(lastDay.toStdString());
    if (!day) return tell(day.error());
    keep({sync::leaving(m_member, *day)});
}

void MemberViewModel::setWorksAt(const QString& site, bool works)
{
    const Uuid& programme = session().store().programme();
    const Uuid where = parseUuid(site.toStdString()).value_or(Uuid{});
    if (where.isNil()) return;
    Assignment known;
    known.id = assignmentId(programme, m_member, where);
    if (!works)
        keep({withdrawal(known, {}, "not any more")});
    else if (m_assignments.contains(known.id))
        keep({withdrawal(known, {}, {})});
    else
        keep({sync::assignment(programme, m_member, where)});
}

void MemberViewModel::setRole(const QString& role)
{
    if (role == m_role) return;
    keep({Edit{"member", m_member, {}, {{"role", role.toStdString()}}}});
}

} // namespace duskrow::app
