// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

// Saves what each judged screen looks like, for the eyes of a person: only where DUSKROW_PICTURES names a
// folder.
class Camera : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    using QObject::QObject;

    // The window that shows an item, as "<test>-<row>-<number>.png".
    Q_INVOKABLE void take(QQuickItem* seen);

private:
    int m_taken = 0;
};
