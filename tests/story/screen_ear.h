// SPDX-License-Identifier: MIT
#pragma once

#include <QAccessible>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

#include <vector>

namespace duskrow::tests {

// One thing on the screen as a screen reader is told of it.
struct Heard {
    QQuickItem* item = nullptr;
    QAccessible::Role role = QAccessible::NoRole;
    QString name;
    QString value; // of what is typed in
    bool isOff = false;
    bool isChosen = false;

    [[nodiscard]] bool canBeTapped() const;
    [[nodiscard]] QString words() const; // "Name: Tom", "[Keep]", "(Begin)" when it is switched off
};

// All of it, in reading order, scrolled out of sight or not.
std::vector<Heard> heardFrom(QQuickWindow& window);

QStringList wordsOf(const std::vector<Heard>& all);

} // namespace duskrow::tests
