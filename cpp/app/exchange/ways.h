// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>

#include "store/store.h"

namespace duskrow::app {

// The ways by which this device exchanges one programme. They lie in its store beside the log and never
// travel.
struct Ways {
    QStringList folders;
    QString hub; // its address; empty for none

    [[nodiscard]] bool isEmpty() const { return folders.isEmpty() && hub.isEmpty(); }
    [[nodiscard]] QStringList keys() const; // "folder:<path>", "hub:<address>"
};

// What the last exchange by one way came to, as it was said then.
struct LastTime {
    domain::Instant at;
    QString said;
    QString trouble; // empty when all went well
};

// Errors  those of the store
domain::Result<Ways> waysOf(store::Reader& reader);
domain::Result<domain::Done> saveWays(store::Store& store, const Ways& ways);

// Nothing before the first exchange.
domain::Result<std::optional<LastTime>> lastTimeOf(store::Reader& reader, const QString& way);
domain::Result<domain::Done> saveLastTime(store::Store& store, const QString& way, const LastTime& last);

} // namespace duskrow::app
