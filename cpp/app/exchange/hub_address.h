// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QUrl>

namespace duskrow::app {

// What a person types for a hub: "hub.example" is meant as "https://hub.example:8460". Empty for nothing.
QUrl hubAddress(const QString& typed);

} // namespace duskrow::app
