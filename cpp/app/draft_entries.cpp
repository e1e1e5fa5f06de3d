// SPDX-License-Identifier: MIT
#include "app/draft_entries.h"

#include <QMetaProperty>

namespace duskrow::app {

namespace {

template <typename Take>
void eachEntry(const QObject& object, Take take)
{
    const QMetaObject* meta = object.metaObject();
    for (int i = QObject::staticMetaObject.propertyCount(); i < meta->propertyCount(); ++i) {
        const QMetaProperty property = meta->property(i);
        if (property.isWritable()) take(property);
    }
}

} // namespace

QJsonObject entriesOf(const QObject& object)
{
    QJsonObject entries;
    eachEntry(object, [&](const QMetaProperty& property) {
        entries.insert(QString::fromLatin1(property.name()), property.read(&object).toJsonValue());
    });
    return entries;
}

void takeEntries(QObject& object, const QJsonObject& entries)
{
    eachEntry(object, [&](const QMetaProperty& property) {
        const QJsonValue held = entries.value(QLatin1String(property.name()));
        if (!held.isUndefined() && !held.isNull()) property.write(&object, held.toVariant());
    });
}

} // namespace duskrow::app
