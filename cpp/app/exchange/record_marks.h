// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include <map>
#include <set>

#include "store/segments.h"

namespace duskrow::app {

// What the exchange adds to a record in a list: how far it got, and what is not agreed about it. Nothing
// while one keeps a season alone and has chosen no way.
class RecordMarks {
public:
    // Errors  those of the store
    static domain::Result<RecordMarks> read(store::Reader& reader, const domain::StreamId& own);

    // "on this phone", "handed over" or "at the hub", with its sign of who differs; a line each.
    //
    // Errors  those of the store
    [[nodiscard]] domain::Result<QStringList> of(store::Reader& reader, const domain::Uuid& record) const;

    // Why a change is not among the records; empty when it is.
    [[nodiscard]] std::string asideReason(const domain::ChangeRef& change) const;

private:
    domain::StreamId m_own{};
    bool m_isExchanged = false;
    std::set<domain::Uuid> m_differing;
    std::set<domain::Uuid> m_proposed;
    std::set<domain::Uuid> m_keptAside;
    std::map<domain::ChangeRef, std::string> m_aside;
};

} // namespace duskrow::app
