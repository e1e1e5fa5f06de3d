// SPDX-License-Identifier: MIT
#include "other_device.h"

#include "domain/log/fold.h"
#include "domain/records/question.h"
#include "domain/records/visit.h"
#include "store/queries.h"
#include "store/segments.h"
#include "store/stream_key.h"
#include "sync/carry/carry_route.h"
#include "sync/folder/folder_route.h"
#include "sync/roster/joining.h"
#include "sync/roster/roster_edits.h"
#include "world_values.h"

using namespace duskrow;
using namespace duskrow::domain;

namespace {

template <typename T>
T must(Result<T> result, const char* what)
{
    if (!result)
        qFatal("%s: error %d %s %s", what, static_cast<int>(result.error().code),
            result.error().args.empty() ? "" : result.error().args.front().c_str(),
            result.error().detail.c_str());
    return std::move(*result);
}

Uuid idOf(const QString& text)
{
    return *parseUuid(text.toStdString());
}

} // namespace

std::string OtherDevice::keyFolder() const
{
    return m_folder.filePath(QStringLiteral("keys")).toStdString();
}

void OtherDevice::keep(std::vector<Edit> edits)
{
    const Moment now = m_clock.now();
    must(
        m_store->keepNow(
            {.author = m_me, .at = now.at, .offset = now.offset, .edits = std::move(edits), .draftDone = {}}),
        "keeping");
}

void OtherDevice::found(const QString& name, const QString& coordinator, int year)
{
    m_store = must(store::Store::open(m_folder.filePath(QStringLiteral("other.duskrow")).toStdString(),
                       {.keyFolder = keyFolder(), .mayCreate = true}),
        "opening");
    m_me = store::newId(m_clock.now().at);
    must(m_store->saveSettingNow("me", formatUuid(m_me)), "saying who it is");
    Programme programme;
    programme.id = m_store->programme();
    programme.name = name.toStdString();
    Season season;
    season.id = seasonId(programme.id, year);
    season.year = year;
    season.weekStart = season.countDay = 1;
    ProtocolUse use;
    use.id = protocolUseId(programme.id, season.id, "bertha-armyworm");
    use.season = season.id;
    use.pest = "bertha-armyworm";
    Member me;
    me.id = m_me;
    me.name = coordinator.toStdString();
    me.role = Role::Coordinator;
    keep({creation(programme, {}), creation(season, {}), creation(use, {}), creation(me, {})});
}

void OtherDevice::join(const QString& link, const QString& folder, const QString& label)
{
    const auto invitation = must(sync::readInvitation(link.toStdString()), "reading the invitation");
    const auto key = must(sync::keyOfCode(invitation.code), "making the key");
    const auto ticket =
        must(sync::ticketInFolder(folder.toStdString(), {key.key, invitation.programme, invitation.founder}),
            "finding the ticket");
    m_store = must(sync::join(m_folder.filePath(QStringLiteral("other.duskrow")).toStdString(),
                       {.keyFolder = keyFolder()}, ticket, key, label.toStdString(), m_clock.now()),
        "joining");
    m_me = ticket.member;
    exchange(folder);
}

QString OtherDevice::member() const
{
    return QString::fromStdString(formatUuid(m_me));
}

QString OtherDevice::programme() const
{
    return QString::fromStdString(formatUuid(m_store->programme()));
}

QString OtherDevice::stream() const
{
    return QString::fromStdString(formatHex(m_store->stream()));
}

QString OtherDevice::invite(
    const QString& name, const QString& role, const QString& until, const QString& hub)
{
    Member member;
    member.name = name.toStdString();
    const auto found = std::find(roleNames.begin(), roleNames.end(), role.toStdString());
    member.role = static_cast<Role>(found - roleNames.begin());
    auto made =
        must(sync::invite(member, *parseDay(until.toStdString()), m_clock.now().at), "making an invitation");
    keep(made.edits);
    return QString::fromStdString(
        sync::invitationLink({made.code, m_store->programme(), m_store->stream(), hub.toStdString()}));
}

void OtherDevice::exchange(const QString& folder)
{
    must(sync::exchangeByFolder(*m_store, folder.toStdString(), m_clock.now().at), "exchanging");
    if (must(sync::confirmClaims(*m_store, m_clock.now()), "confirming") > 0)
        must(sync::exchangeByFolder(*m_store, folder.toStdString(), m_clock.now().at), "exchanging");
}

void OtherDevice::writeFile(const QString& path)
{
    must(sync::writeCarried(*m_store, path.toStdString(), {}, m_clock.now().at), "writing a file");
}

QString OtherDevice::addCount(const QString& trap, const QString& site, const QString& day, int moths)
{
    Visit visit;
    visit.id = store::newId(m_clock.now().at);
    visit.trap = idOf(trap);
    visit.day = *parseDay(day.toStdString());
    visit.atMs = toMs(Instant{visit.day->time_since_epoch() + std::chrono::hours{19}});
    visit.offsetMin = 0;
    visit.outcome = Outcome::Counted;
    visit.pest = Moths{moths};
    visit.emptied = true;
    visit.state = TrapState::Fine;
    keep({creation(visit, idOf(site))});
    return QString::fromStdString(formatUuid(visit.id));
}

void OtherDevice::change(
    const QString& kind, const QString& id, const QString& site, const QVariantMap& fields)
{
    Edit edit{kind.toStdString(), idOf(id), idOf(site), {}};
    for (auto field = fields.cbegin(); field != fields.cend(); ++field)
        edit.fields[field.key().toStdString()] = toValue(field.value());
    keep({edit});
}

QVariant OtherDevice::fieldOf(const QString& kind, const QString& id, const QString& field) const
{
    const auto reader = must(m_store->reader(), "reading");
    const auto roster = must(store::rosterOf(*reader, m_store->programme()), "reading the roster");
    const auto folded =
        must(store::foldedRecord(*reader, roster, m_store->programme(), idOf(id)), "reading a record");
    if (!folded || folded->kind != kind.toStdString()) return {};
    const auto found = folded->values.find(field.toStdString());
    return found == folded->values.end() ? QVariant() : toVariant(found->second);
}

QString OtherDevice::answerTo(const QString& question) const
{
    return QString::fromStdString(formatUuid(answerId(m_store->programme(), idOf(question))));
}

QStringList OtherDevice::membersHere() const
{
    const auto reader = must(m_store->reader(), "reading");
    QStringList names;
    for (const Member& one : must(store::members(*reader), "reading members"))
        names << QString::fromStdString(one.name);
    names.sort();
    return names;
}

int OtherDevice::visitsHere() const
{
    const auto reader = must(m_store->reader(), "reading");
    return static_cast<int>(must(reader->select<Visit>({}), "reading visits").size());
}
