// SPDX-License-Identifier: MIT
#pragma once

#include <QDir>
#include <QTemporaryDir>

#include "store/segments.h"
#include "sync/folder/folder_route.h"
#include "sync/joining_records.h"
#include "sync/roster/joining.h"
#include "sync/roster/roster_edits.h"

namespace duskrow::tests {

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

} // namespace duskrow::tests
