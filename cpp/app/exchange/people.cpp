// SPDX-License-Identifier: MIT
#include "app/exchange/people.h"

#include <QCoreApplication>

#include <algorithm>

#include "store/queries.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct PeopleText {
    Q_DECLARE_TR_FUNCTIONS(PeopleText)
};

} // namespace

Result<People> People::read(store::Reader& reader, const Uuid& programme, const StreamId& own)
{
    People people;
    auto roster = store::rosterOf(reader, programme);
    if (!roster) return roster.error();
    auto members = store::members(reader);
    if (!members) return members.error();
    people.m_roster = std::move(*roster);
    people.m_members = std::move(*members);
    people.m_own = own;
    return people;
}

bool People::isCoordinator() const
{
    return m_roster.isAlone() || m_roster.isCoordinator(m_own);
}

bool People::hasOthers() const
{
    return !m_roster.isAlone() || !m_roster.invitations().empty();
}

QString People::nameOf(const Uuid& member) const
{
    const auto found = std::find_if(
        m_members.begin(), m_members.end(), [&](const Member& known) { return known.id == member; });
    return found == m_members.end() ? QString() : QString::fromStdString(found->name);
}

QString People::deviceName(const StreamId& stream) const
{
    if (stream == m_own) return PeopleText::tr("this device");
    const auto device = m_roster.devices().find(stream);
    if (device == m_roster.devices().end()) return PeopleText::tr("a device not known here");
    const QString label = QString::fromStdString(device->second.label);
    const QString name = nameOf(device->second.member);
    if (name.isEmpty()) return label.isEmpty() ? PeopleText::tr("a device not known here") : label;
    //: a person and the name of the device: Ida's phone
    return label.isEmpty() ? PeopleText::tr("a device of %1").arg(name)
                           : PeopleText::tr("%1’s %2").arg(name, label);
}

} // namespace duskrow::app
