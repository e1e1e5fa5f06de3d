// SPDX-License-Identifier: MIT
#include "app/round/round_draft.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace duskrow::app {

namespace {

constexpr int minutesOfADay = 24 * 60;

} // namespace

QByteArray RoundDraft::written() const
{
    QJsonObject marked;
    for (auto mark = marks.cbegin(); mark != marks.cend(); ++mark) marked.insert(mark.key(), mark.value());
    QJsonObject all{{QStringLiteral("infested_last"), infestedLast},
        {QStringLiteral("survey_grid"), isSurveyGrid}, {QStringLiteral("marks"), marked},
        {QStringLiteral("phone"), phone}};
    if (order) all.insert(QStringLiteral("order"), QJsonArray::fromStringList(*order));
    if (backBy) all.insert(QStringLiteral("back_by"), *backBy);
    return QJsonDocument(all).toJson(QJsonDocument::Compact);
}

bool RoundDraft::read(const QByteArray& body)
{
    const QJsonDocument document = QJsonDocument::fromJson(body);
    if (!document.isObject()) return false;
    const QJsonObject all = document.object();
    RoundDraft found;
    found.infestedLast = all.value(QLatin1String("infested_last")).toBool(true);
    found.isSurveyGrid = all.value(QLatin1String("survey_grid")).toBool();
    found.phone = all.value(QLatin1String("phone")).toString();
    const QJsonObject marked = all.value(QLatin1String("marks")).toObject();
    for (auto mark = marked.begin(); mark != marked.end(); ++mark)
        if (mark->isBool()) found.marks.insert(mark.key(), mark->toBool());
    if (const QJsonValue held = all.value(QLatin1String("order")); held.isArray()) {
        found.order = QStringList();
        const QJsonArray keys = held.toArray();
        for (const QJsonValue& key : keys) found.order->append(key.toString());
    }
    if (const QJsonValue held = all.value(QLatin1String("back_by")); held.isDouble())
        found.backBy = std::clamp(held.toInt(), 0, minutesOfADay - 1);
    *this = found;
    return true;
}

QStringList inOrder(const QStringList& keys, const QStringList& order)
{
    QStringList found;
    for (const QString& key : order)
        if (keys.contains(key) && !found.contains(key)) found << key;
    for (const QString& key : keys)
        if (!found.contains(key)) found << key;
    return found;
}

QStringList moved(QStringList keys, const QString& key, int by)
{
    const auto from = keys.indexOf(key);
    if (from < 0) return keys;
    keys.move(from, std::clamp<qsizetype>(from + by, 0, keys.size() - 1));
    return keys;
}

} // namespace duskrow::app
