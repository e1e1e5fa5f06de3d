// SPDX-License-Identifier: MIT
#include "speech.h"

#include <QAccessible>

namespace {

void speak(QAccessibleInterface* heard, QStringList& said)
{
    if (!heard || heard->state().invisible) return;
    const QString name = heard->text(QAccessible::Name).simplified();
    if (!name.isEmpty()) said << name;
    for (int i = 0; i < heard->childCount(); ++i) speak(heard->child(i), said);
}

// Not every item is heard by itself: its nearest children are, in the order of the items.
void speakBelow(QQuickItem* item, QStringList& said)
{
    if (!item->isVisible()) return;
    if (QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(item);
        heard && heard->role() != QAccessible::NoRole)
        return speak(heard, said);
    for (QQuickItem* child : item->childItems()) speakBelow(child, said);
}

} // namespace

void Speech::listen() const
{
    QAccessible::setActive(true);
}

QStringList Speech::of(QQuickItem* item) const
{
    QStringList said;
    if (item) speakBelow(item, said);
    return said;
}
