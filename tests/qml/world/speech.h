// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QQuickItem>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

// What a screen reader would say of a screen, in its order: the tree that Qt hands to it, not that of the
// items.
class Speech : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    using QObject::QObject;

    // As when a screen reader is switched on; before a screen is made.
    Q_INVOKABLE void listen() const;

    // The names of what is not hidden, below the item; what has no name is only gone through.
    Q_INVOKABLE QStringList of(QQuickItem* item) const;
};
