// SPDX-License-Identifier: MIT
#include "app/exchange/ways.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr auto waysKey = "ways";

std::string lastKey(const QString& way)
{
    return "last_time/" + way.toStdString();
}

Result<QJsonObject> objectIn(store::Reader& reader, const std::string& key)
{
    const auto held = reader.deviceSetting(key);
    if (!held) return held.error();
    return *held ? QJsonDocument::fromJson(QByteArray::fromStdString(**held)).object() : QJsonObject();
}

std::string textOf(const QJsonObject& object)
{
    return QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString();
}

} // namespace

QStringList Ways::keys() const
{
    QStringList all;
    for (const QString& folder : folders) all << QStringLiteral("folder:") + folder;
    if (!hub.isEmpty()) all << QStringLiteral("hub:") + hub;
    return all;
}

Result<Ways> waysOf(store::Reader& reader)
{
    const auto held = objectIn(reader, waysKey);
    if (!held) return held.error();
    Ways ways;
    const QJsonArray folders = held->value(QStringLiteral("folders")).toArray();
    for (const QJsonValue& folder : folders) ways.folders << folder.toString();
    ways.hub = held->value(QStringLiteral("hub")).toString();
    return ways;
}

Result<Done> saveWays(store::Store& store, const Ways& ways)
{
    return store.saveSettingNow(waysKey,
        textOf({{QStringLiteral("folders"), QJsonArray::fromStringList(ways.folders)},
            {QStringLiteral("hub"), ways.hub}}));
}

Result<std::optional<LastTime>> lastTimeOf(store::Reader& reader, const QString& way)
{
    const auto held = objectIn(reader, lastKey(way));
    if (!held) return held.error();
    if (held->isEmpty()) return std::optional<LastTime>{};
    return std::optional(LastTime{instantFromMs(held->value(QStringLiteral("at_ms")).toInteger()),
        held->value(QStringLiteral("said")).toString(), held->value(QStringLiteral("trouble")).toString()});
}

Result<Done> saveLastTime(store::Store& store, const QString& way, const LastTime& last)
{
    return store.saveSettingNow(lastKey(way),
        textOf({{QStringLiteral("at_ms"), static_cast<qint64>(toMs(last.at))},
            {QStringLiteral("said"), last.said}, {QStringLiteral("trouble"), last.trouble}}));
}

} // namespace duskrow::app
