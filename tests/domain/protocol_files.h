// SPDX-License-Identifier: MIT
#pragma once

#include <QFile>
#include <QString>

#include <string>

// The text of a protocol file as it is shipped; empty when it cannot be read, which fails every test on it.
inline std::string protocolText(const char* id)
{
    QFile file(QStringLiteral(DUSKROW_SOURCE_DIR "/assets/protocols/%1.json").arg(QLatin1String(id)));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return file.readAll().toStdString();
}
