// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/session.h"
#include "store/segments.h"

namespace duskrow::app {

// Who takes part with which device, in words.
class People {
public:
    // own     this device
    // Errors  those of the store
    static domain::Result<People> read(
        store::Reader& reader, const domain::Uuid& programme, const domain::StreamId& own);

    [[nodiscard]] const domain::Roster& roster() const { return m_roster; }
    [[nodiscard]] const std::vector<domain::Member>& members() const { return m_members; }
    [[nodiscard]] const domain::StreamId& own() const { return m_own; }
    // Of the member whose device this is, as the roster says; nil when it does not know this device.
    [[nodiscard]] domain::Uuid me() const { return m_roster.memberOf(m_own); }
    // This device may say what only coordinators may. One who is alone may say everything.
    [[nodiscard]] bool isCoordinator() const;
    // There are other devices, or somebody is invited.
    [[nodiscard]] bool hasOthers() const;

    [[nodiscard]] QString nameOf(const domain::Uuid& member) const; // empty when not known
    // "Ida’s phone", "this device", "a device of Ida", "a device not known here"
    [[nodiscard]] QString deviceName(const domain::StreamId& stream) const;

private:
    domain::Roster m_roster;
    std::vector<domain::Member> m_members;
    domain::StreamId m_own{};
};

} // namespace duskrow::app
