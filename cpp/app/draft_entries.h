// SPDX-License-Identifier: MIT
#pragma once

#include <QJsonObject>
#include <QObject>

namespace duskrow::app {

// What was entered into an object: its own properties that can be written, by name. For drafts only, never
// for records.
QJsonObject entriesOf(const QObject& object);

// Enters it again. What the object does not know, or cannot hold, is left out.
void takeEntries(QObject& object, const QJsonObject& entries);

} // namespace duskrow::app
