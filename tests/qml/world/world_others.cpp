// SPDX-License-Identifier: MIT
#include <QDir>

#include <algorithm>

#include "other_device.h"
#include "store/queries.h"
#include "sync/carry/carry_route.h"
#include "sync/folder/folder_route.h"
#include "sync/roster/joining.h"
#include "sync/roster/roster_edits.h"
#include "world.h"

using namespace duskrow;
using namespace duskrow::domain;

namespace {

constexpr auto shared = "shared";

} // namespace

QString World::sharedFolder()
{
    QDir(m_folder.path()).mkpath(QString::fromLatin1(shared));
    return m_folder.filePath(QString::fromLatin1(shared));
}

// The exchange of the app's own store, past the screens.
void World::exchange()
{
    store::Store& store = m_app->session()->store();
    const Moment now = m_app->session()->clock().now();
    const std::string folder = sharedFolder().toStdString();
    const auto first = sync::exchangeByFolder(store, folder, now.at);
    if (!first) qFatal("the exchange failed: %d", static_cast<int>(first.error().code));
    const auto confirmed = sync::confirmClaims(store, now);
    if (!confirmed) qFatal("newcomers were not confirmed: %d", static_cast<int>(confirmed.error().code));
    if (const auto again = sync::exchangeByFolder(store, folder, now.at); !again)
        qFatal("the exchange failed: %d", static_cast<int>(again.error().code));
    m_app->session()->refresh();
    Q_EMIT m_app->session()->changed();
}

OtherDevice* World::joinAnother(const QString& name, const QString& role, const QString& label)
{
    Member member;
    member.name = name.toStdString();
    const auto found = std::find(roleNames.begin(), roleNames.end(), role.toStdString());
    member.role = static_cast<Role>(found - roleNames.begin());
    const LocalDay today = *parseDay(m_today.toStdString());
    const auto made = sync::invite(member, today + std::chrono::days{30}, m_app->session()->clock().now().at);
    if (!made) qFatal("there is no invitation");
    keep(made->edits);
    exchange();
    store::Store& store = m_app->session()->store();
    auto* other = new OtherDevice(m_app->session()->clock());
    other->setParent(this);
    other->join(
        QString::fromStdString(sync::invitationLink({made->code, store.programme(), store.stream(), {}})),
        sharedFolder(), label);
    exchange();
    other->exchange(sharedFolder());
    return other;
}

void World::loseFileOf(OtherDevice* other)
{
    QDir folder(sharedFolder() + QStringLiteral("/duskrow/") + other->programme() + QStringLiteral("/s/")
        + other->stream());
    const QStringList files = folder.entryList({QStringLiteral("*.seg")}, QDir::Files, QDir::Name);
    if (files.size() < 2 || !folder.remove(files[files.size() - 2])) qFatal("there is no file to be lost");
}

OtherDevice* World::otherProgramme(const QString& name, const QString& coordinator)
{
    auto* other = new OtherDevice(m_app->session()->clock());
    other->setParent(this);
    other->found(name, coordinator, yearOf(*parseDay(m_today.toStdString())));
    return other;
}

QString World::writeFile()
{
    const QString path = m_folder.filePath(QStringLiteral("own.dusk"));
    const Moment now = m_app->session()->clock().now();
    if (!sync::writeCarried(m_app->session()->store(), path.toStdString(), {}, now.at))
        qFatal("the file could not be written");
    return path;
}

void World::standsNow(const QString& record)
{
    keep({sync::ruling(
        m_app->session()->store().programme(), *parseUuid(record.toStdString()), Says::Stands)});
}

QString World::memberId(const QString& name) const
{
    const auto members = store::members(m_app->session()->reader());
    if (!members) qFatal("the members could not be read");
    for (const Member& member : *members)
        if (member.name == name.toStdString()) return QString::fromStdString(formatUuid(member.id));
    return {};
}
