// SPDX-License-Identifier: MIT
#include "protocols/protocol_files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "domain/protocol/protocol_reader.h"

namespace duskrow::protocols {

using namespace duskrow::domain;

namespace {

const auto carriedFolder = QStringLiteral(":/protocols");

QString fileIn(const QString& folder, const QString& pest)
{
    return QDir(folder).filePath(pest + QStringLiteral(".json"));
}

} // namespace

QStringList carriedProtocols()
{
    QStringList pests = QDir(carriedFolder).entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
    for (QString& pest : pests) pest.chop(5);
    return pests;
}

Result<Protocol> loadProtocol(const QString& pest, const QString& folder)
{
    QString path = fileIn(folder, pest);
    if (folder.isEmpty() || !QFile::exists(path)) path = fileIn(carriedFolder, pest);
    QFile file(path);
    // A pest's id is also a file's name: what could lead out of the folder names no protocol.
    if (pest.contains(QLatin1Char('/')) || pest.contains(QLatin1Char('\\')) || !file.exists())
        return Error{ErrorCode::ProtocolMissing, {pest.toStdString()}};
    if (!file.open(QIODevice::ReadOnly)) return Error{ErrorCode::FileUnreadable, {path.toStdString()}};
    return readProtocol(file.readAll().toStdString(), QFileInfo(path).fileName().toStdString());
}

} // namespace duskrow::protocols
