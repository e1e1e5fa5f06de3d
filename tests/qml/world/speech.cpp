// SPDX-License-Identifier: MIT
#include "speech.h"

#include <QAccessible>
#include <QQuickWindow>

namespace {

// From the window downwards, as a reader goes: an item asked for by itself may answer though it is ignored.
void speak(QAccessibleInterface* heard, const QQuickItem* within, QStringList& said)
{
    if (!heard || heard->state().invisible) return;
    const auto* item = qobject_cast<const QQuickItem*>(heard->object());
    const QString name = heard->text(QAccessible::Name).simplified();
    if (!name.isEmpty() && item && within->isAncestorOf(item)) said << name;
    for (int i = 0; i < heard->childCount(); ++i) speak(heard->child(i), within, said);
}

} // namespace

void Speech::listen() const
{
    QAccessible::setActive(true);
}

QStringList Speech::of(QQuickItem* item) const
{
    QStringList said;
    if (item && item->window()) speak(QAccessible::queryAccessibleInterface(item->window()), item, said);
    return said;
}
