// SPDX-License-Identifier: MIT
#include "story/screen_ear.h"

namespace duskrow::tests {

namespace {

void listen(QAccessibleInterface* node, std::vector<Heard>& all)
{
    if (!node || node->state().invisible) return;
    auto* item = qobject_cast<QQuickItem*>(node->object());
    const QString name = node->text(QAccessible::Name).simplified();
    if (item && !name.isEmpty())
        all.push_back({item, node->role(), name,
            node->role() == QAccessible::EditableText ? node->text(QAccessible::Value) : QString(),
            !item->isEnabled(), static_cast<bool>(node->state().checked)});
    for (int i = 0; i < node->childCount(); ++i) listen(node->child(i), all);
}

} // namespace

bool Heard::canBeTapped() const
{
    switch (role) {
    case QAccessible::Button:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::EditableText:
    case QAccessible::PageTab:
    case QAccessible::ListItem:
    case QAccessible::SpinBox:
        return true;
    default:
        return false;
    }
}

QString Heard::words() const
{
    if (role == QAccessible::EditableText) return QStringLiteral("%1: %2").arg(name, value);
    if (!canBeTapped()) return name;
    const QString mark = isChosen ? QStringLiteral("*") : QString();
    return (isOff ? QStringLiteral("(%1%2)") : QStringLiteral("[%1%2]")).arg(mark, name);
}

std::vector<Heard> heardFrom(QQuickWindow& window)
{
    std::vector<Heard> all;
    listen(QAccessible::queryAccessibleInterface(&window), all);
    return all;
}

QStringList wordsOf(const std::vector<Heard>& all)
{
    QStringList words;
    for (const Heard& one : all)
        if (words.isEmpty() || words.constLast() != one.words()) words << one.words();
    return words;
}

} // namespace duskrow::tests
