// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>

#include "domain/base/result.h"

namespace duskrow::app {

// Writes a whole file at once: the old one stands until the new one is complete.
//
// Errors  FileUnwritable {path}
domain::Result<domain::Done> writeFile(const QString& path, const QByteArray& content);

} // namespace duskrow::app
