// SPDX-License-Identifier: MIT
#pragma once

#include <QDir>
#include <QTemporaryDir>

#include "domain/records/programme.h"
#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"
#include "store/queries.h"
#include "store/segments.h"
#include "store/store.h"
#include "sync/folder/folder_route.h"
#include "sync/roster/joining.h"
#include "sync/roster/roster_edits.h"

namespace duskrow::tests {

inline domain::Moment noonOf(int month, unsigned day)
{
    const domain::LocalDay date = domain::dayOf(2026, static_cast<unsigned>(month), day);
    const std::chrono::minutes offset{-360};
    const domain::Instant at{
        std::chrono::sys_days{date.time_since_epoch()} + std::chrono::hours{12} - offset};
    return {date, at, offset};
}

inline const domain::Moment today = noonOf(7, 14);

// A value that must be there.
template <typename T>
T got(domain::Result<T> result)
{
    if (!result)
        qFatal("error %d: %s %s", static_cast<int>(result.error().code),
            result.error().args.empty() ? "" : result.error().args.front().c_str(),
            result.error().detail.c_str());
    return std::move(*result);
}

template <typename T>
std::optional<domain::ErrorCode> codeOf(const domain::Result<T>& result)
{
    return result ? std::optional<domain::ErrorCode>() : result.error().code;
}

inline std::vector<domain::ChangeRef> keep(
    store::Store& store, std::vector<domain::Edit> edits, const domain::Moment& when = today)
{
    const auto reader = got(store.reader());
    const domain::Uuid me = got(sync::holderOf(store, *reader));
    return got(
        store.keepNow(
            {.author = me, .at = when.at, .offset = when.offset, .edits = std::move(edits), .draftDone = {}}))
        .changes;
}

template <typename R>
void addRows(store::Reader& reader, std::string& all)
{
    store::Selection everything;
    everything.withWithdrawn = true;
    for (const R& record : got(reader.select<R>(everything))) {
        domain::Change written;
        written.kind = domain::kindOf<R>().name;
        written.record = record.id;
        for (const auto& [name, value] : domain::creation(record, {}).fields)
            written.fields[name] = {value, {}};
        all += domain::canonicalJson(written) + '\n';
    }
}

// Every record as it stands, of all kinds.
inline std::string dumpOf(const store::Store& store)
{
    const auto reader = got(store.reader());
    std::string all;
    using namespace domain;
    addRows<Programme>(*reader, all);
    addRows<Season>(*reader, all);
    addRows<District>(*reader, all);
    addRows<Member>(*reader, all);
    addRows<Device>(*reader, all);
    addRows<Invitation>(*reader, all);
    addRows<Site>(*reader, all);
    addRows<Trap>(*reader, all);
    addRows<Service>(*reader, all);
    addRows<Loan>(*reader, all);
    addRows<Visit>(*reader, all);
    addRows<Sample>(*reader, all);
    addRows<Walk>(*reader, all);
    addRows<Frame>(*reader, all);
    addRows<Decision>(*reader, all);
    return all;
}

inline domain::Roster rosterIn(store::Store& store)
{
    const auto reader = got(store.reader());
    return got(store::rosterOf(*reader, store.programme()));
}

// Whether a stream is a device of the programme, not only one that asks.
inline bool isIn(store::Store& store, const domain::StreamId& stream)
{
    return rosterIn(store).devices().contains(stream);
}

// Some devices, each with a store and a folder of keys of its own, and a folder that all can open.
class JoiningScene {
public:
    JoiningScene() { QDir(m_folder.path()).mkpath(QStringLiteral("shared")); }

    [[nodiscard]] std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    [[nodiscard]] std::string shared() const { return path("shared"); }
    [[nodiscard]] store::OpenHow how(const std::string& device) const
    {
        return {.keyFolder = path(device + "-keys"), .mayCreate = true};
    }
    [[nodiscard]] std::unique_ptr<store::Store> open(const std::string& device) const
    {
        return got(store::Store::open(path(device), how(device)));
    }

    // A programme with its coordinator.
    [[nodiscard]] std::unique_ptr<store::Store> founded(const std::string& device = "desk") const
    {
        auto store = open(device);
        domain::Programme programme;
        programme.id = store->programme();
        programme.name = "Valley";
        domain::Member member;
        member.id = store::newId(today.at);
        member.name = "Ida";
        member.role = domain::Role::Coordinator;
        got(store->saveSettingNow("me", domain::formatUuid(member.id)));
        keep(*store, {creation(programme, {}), creation(member, {})});
        return store;
    }

    static sync::Invited invited(
        store::Store& store, const std::string& name, domain::Role role, domain::LocalDay until = today.day)
    {
        domain::Member member;
        member.name = name;
        member.role = role;
        auto made = got(sync::invite(member, until, today.at));
        keep(store, made.edits);
        return made;
    }

    sync::ExchangeReport exchange(store::Store& store) const
    {
        auto report = got(sync::exchangeByFolder(store, shared(), today.at));
        got(sync::confirmClaims(store, today));
        return report;
    }

    [[nodiscard]] domain::Result<sync::Ticket> ticket(const std::string& code) const
    {
        return sync::ticketInFolder(
            shared(), {.invitation = got(sync::keyOfCode(code)).key, .programme = {}, .founder = {}});
    }

    [[nodiscard]] domain::Result<std::unique_ptr<store::Store>> tryJoin(
        const std::string& device, const std::string& code, const domain::Moment& when = today) const
    {
        const auto found = ticket(code);
        if (!found) return found.error();
        return sync::join(
            path(device), how(device), *found, got(sync::keyOfCode(code)), device + " phone", when);
    }

    // Invited, joined, exchanged and confirmed.
    [[nodiscard]] std::unique_ptr<store::Store> member(
        store::Store& desk, const std::string& name, domain::Role role) const
    {
        const auto invitation = invited(desk, name, role);
        exchange(desk);
        auto store = got(tryJoin(name, invitation.code));
        exchange(*store);
        exchange(desk);
        exchange(desk);
        exchange(*store);
        return store;
    }

private:
    QTemporaryDir m_folder;
};

inline domain::Site siteNamed(const std::string& name)
{
    domain::Site site;
    site.id = store::newId(today.at);
    site.name = name;
    site.season = store::newId(today.at); // whoever says its season made it
    return site;
}

inline domain::Trap trapAt(const domain::Site& site, const std::string& tag)
{
    domain::Trap trap;
    trap.id = store::newId(today.at);
    trap.site = site.id;
    trap.season = site.season;
    trap.tag = tag;
    trap.pest = "bertha-armyworm";
    trap.setDay = domain::dayOf(2026, 6, 1);
    return trap;
}

inline domain::Visit visitTo(const domain::Trap& trap, std::int64_t moths)
{
    domain::Visit visit;
    visit.id = store::newId(today.at);
    visit.trap = trap.id;
    visit.day = today.day;
    visit.outcome = domain::Outcome::Counted;
    visit.pest = domain::Moths{moths};
    visit.remark = std::to_string(moths) + " in the bucket";
    return visit;
}

inline std::int64_t countedIn(store::Store& store, const domain::Uuid& visit)
{
    const auto reader = got(store.reader());
    const auto found = got(store::visit(*reader, visit));
    return found && found->pest ? found->pest->value() : -1;
}

} // namespace duskrow::tests
