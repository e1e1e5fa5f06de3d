// SPDX-License-Identifier: MIT
#include "app/walk/walk_entry.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <numeric>

namespace duskrow::app {

namespace {

constexpr std::size_t deepest = 60; // more taps than a frame takes

QJsonValue orNull(const std::optional<std::int64_t>& number)
{
    return number ? QJsonValue(static_cast<qint64>(*number)) : QJsonValue();
}

std::optional<std::int64_t> numberIn(const QJsonValue& value)
{
    return value.isDouble() ? std::optional<std::int64_t>(value.toInteger()) : std::nullopt;
}

QJsonObject toJson(const FrameEntry& entry)
{
    QJsonArray sizes;
    for (const std::int64_t count : entry.bySize) sizes.append(static_cast<qint64>(count));
    return {{QStringLiteral("sizes"), sizes}, {QStringLiteral("sick"), static_cast<qint64>(entry.sick)},
        {QStringLiteral("seen"), orNull(entry.podsSeen)},
        {QStringLiteral("damaged"), orNull(entry.podsDamaged)}, {QStringLiteral("remark"), entry.remark},
        {QStringLiteral("same"), entry.isSameStop}};
}

FrameEntry fromJson(const QJsonObject& json)
{
    FrameEntry entry;
    const QJsonArray sizes = json.value(QStringLiteral("sizes")).toArray();
    for (const QJsonValue& count : sizes) entry.bySize.push_back(count.toInteger());
    entry.sick = json.value(QStringLiteral("sick")).toInteger();
    entry.podsSeen = numberIn(json.value(QStringLiteral("seen")));
    entry.podsDamaged = numberIn(json.value(QStringLiteral("damaged")));
    entry.remark = json.value(QStringLiteral("remark")).toString();
    entry.isSameStop = json.value(QStringLiteral("same")).toBool();
    return entry;
}

} // namespace

std::int64_t FrameEntry::larvae() const
{
    return std::accumulate(bySize.begin(), bySize.end(), std::int64_t{0});
}

bool WalkEntry::isUntouched() const
{
    FrameEntry fresh;
    fresh.bySize.assign(m_now.bySize.size(), 0);
    return m_undo.empty() && m_now == fresh;
}

bool WalkEntry::change(const FrameEntry& after)
{
    if (after == m_now) return false;
    m_undo.push_back(m_now);
    if (m_undo.size() > deepest) m_undo.erase(m_undo.begin());
    m_now = after;
    return true;
}

void WalkEntry::undo()
{
    if (m_undo.empty()) return;
    m_now = m_undo.back();
    m_undo.pop_back();
}

void WalkEntry::startOver(std::size_t sizes)
{
    m_now = {};
    m_now.bySize.assign(sizes, 0);
    m_undo.clear();
}

QByteArray WalkEntry::written() const
{
    QJsonArray undo;
    for (const FrameEntry& entry : m_undo) undo.append(toJson(entry));
    return QJsonDocument(QJsonObject{{QStringLiteral("now"), toJson(m_now)}, {QStringLiteral("undo"), undo}})
        .toJson(QJsonDocument::Compact);
}

bool WalkEntry::read(const QByteArray& body)
{
    const QJsonObject json = QJsonDocument::fromJson(body).object();
    FrameEntry now = fromJson(json.value(QStringLiteral("now")).toObject());
    if (now.bySize.size() != m_now.bySize.size()) return false;
    m_now = std::move(now);
    m_undo.clear();
    const QJsonArray undo = json.value(QStringLiteral("undo")).toArray();
    for (const QJsonValue& entry : undo) m_undo.push_back(fromJson(entry.toObject()));
    return true;
}

} // namespace duskrow::app
