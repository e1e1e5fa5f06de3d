// SPDX-License-Identifier: MIT
#pragma once

#include <QDir>
#include <QTemporaryDir>

#include <map>

#include "domain/records/programme.h"
#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "store/check.h"
#include "store/queries.h"
#include "store/segments.h"
#include "store/store.h"
#include "store/store_scene.h"
#include "sync/roster/invitation_code.h"

namespace duskrow::tests {

// One person's device with its store.
class Person {
public:
    Person(std::string folder, const domain::Uuid& programme, std::set<domain::StreamId> founders = {})
        : m_folder(std::move(folder)), m_programme(programme), m_founders(std::move(founders))
    {
        open();
    }

    void open()
    {
        m_store.reset();
        QDir().mkpath(QString::fromStdString(m_folder));
        const store::OpenHow how{.keyFolder = m_folder + "/keys",
            .mayCreate = true,
            .progress = {},
            .vfs = {},
            .programme = m_programme,
            .founders = m_founders};
        auto opened = store::Store::open(path(), how);
        if (!opened) qFatal("a store does not open: %s", opened.error().detail.c_str());
        m_store = std::move(*opened);
    }
    void close() { m_store.reset(); }

    [[nodiscard]] std::string path() const { return m_folder + "/records.duskrow"; }
    [[nodiscard]] store::Store& store() const { return *m_store; }
    [[nodiscard]] std::unique_ptr<store::Reader> reader() const
    {
        auto opened = m_store->reader();
        if (!opened) qFatal("no reader");
        return std::move(*opened);
    }

    void keep(std::vector<domain::Edit> edits)
    {
        now += std::chrono::minutes(1);
        const auto kept = m_store->keepNow({member, now, std::chrono::minutes{-300}, std::move(edits), {}});
        if (!kept)
            qFatal("not kept: %d %s", static_cast<int>(kept.error().code), kept.error().detail.c_str());
    }

    // Everything that the records have come to, as text.
    [[nodiscard]] std::string records() const
    {
        SQLite::Database database(path(), SQLite::OPEN_READONLY);
        return store::CurrentTables(database).dump();
    }
    [[nodiscard]] std::optional<domain::Visit> visit(const domain::Uuid& id) const
    {
        const auto found = store::visit(*reader(), id);
        return found ? *found : std::nullopt;
    }
    [[nodiscard]] bool isSound() const
    {
        const auto report = store::checkStore(path());
        return report && report->isSound();
    }

    domain::Uuid member;
    domain::Instant now = domain::instantFromMs(1'783'980'000'000);

private:
    std::string m_folder;
    domain::Uuid m_programme;
    std::set<domain::StreamId> m_founders;
    std::unique_ptr<store::Store> m_store;
};

// A programme with its coordinator, and people who join it.
class ProgrammeScene {
public:
    ProgrammeScene() : m_coordinator(std::make_unique<Person>(at("coordinator"), programme))
    {
        m_coordinator->member = idOf(100);
        domain::Programme made;
        made.id = programme;
        made.name = "Invented district";
        domain::Season season;
        season.id = domain::seasonId(programme, 2026);
        season.year = 2026;
        coordinator().keep({domain::creation(made, {}),
            domain::creation(memberOf(100, domain::Role::Coordinator), {}), domain::creation(season, {})});
    }

    [[nodiscard]] Person& coordinator() const { return *m_coordinator; }
    [[nodiscard]] std::string at(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    [[nodiscard]] std::string shared() const
    {
        QDir().mkpath(QString::fromStdString(at("shared")));
        return at("shared");
    }

    // The coordinator invites; whoever is invited claims it as the first thing he does.
    std::unique_ptr<Person> invite(std::uint32_t number, domain::Role role, const std::string& name)
    {
        const auto key = sync::keyOfCode(sync::freshCode());
        if (!key) qFatal("no key of a code");
        domain::Invitation invitation;
        invitation.id = idOf(number + 5000);
        invitation.member = idOf(number);
        invitation.key = domain::formatHex(key->key);
        coordinator().keep({domain::creation(memberOf(number, role), {}), domain::creation(invitation, {})});

        auto device = std::make_unique<Person>(at(name), programme, std::set{coordinator().store().stream()});
        device->member = idOf(number);
        domain::Device claim;
        const domain::StreamId stream = device->store().stream();
        claim.id = domain::deviceId(programme, stream);
        claim.stream = domain::formatHex(stream);
        claim.key = domain::formatHex(device->store().publicKey());
        claim.label = name;
        claim.invitation = invitation.id;
        claim.proof = domain::formatHex(key->sign(domain::claimMessage(programme, stream)));
        device->keep({domain::creation(claim, {})});
        return device;
    }

    static domain::Member memberOf(std::uint32_t number, domain::Role role)
    {
        domain::Member member;
        member.id = idOf(number);
        member.name = "member " + std::to_string(number);
        member.role = role;
        return member;
    }

    // A site with a trap, made on a device.
    void setUp(Person& device, std::uint32_t site, std::uint32_t trapNumber) const
    {
        domain::Site made;
        made.id = idOf(site);
        made.season = domain::seasonId(programme, 2026);
        made.keeper = device.member;
        made.name = "field " + std::to_string(site);
        domain::Trap trap;
        trap.id = idOf(trapNumber);
        trap.site = made.id;
        trap.season = made.season;
        trap.tag = "T" + std::to_string(trapNumber);
        device.keep({domain::creation(made, made.id), domain::creation(trap, made.id)});
    }

    domain::Uuid programme = idOf(1);

private:
    QTemporaryDir m_folder{trialFolder()};
    std::unique_ptr<Person> m_coordinator;
};

inline domain::Visit countAt(std::uint32_t number, std::uint32_t trap, std::int64_t moths)
{
    domain::Visit visit = visitOf(number, moths);
    visit.day = domain::dayOf(2026, 7, 14);
    visit.trap = idOf(trap);
    return visit;
}

} // namespace duskrow::tests
