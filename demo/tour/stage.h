// SPDX-License-Identifier: MIT
#pragma once

#include <QQuickItem>
#include <QQuickWindow>
#include <QString>

#include <functional>

#include "demo/hand/hand.h"

namespace duskrow::demo {

// Uses a window as a person would: looks for a thing by name, brings it into view, taps it, types. Every call
// that cannot do so ends the tour with a sentence saying what was not there.
class Stage {
public:
    Stage(QQuickWindow& window, QString pictureFolder);

    void tap(const QString& name);
    void tapIn(const QString& name, const QString& part);
    void type(const QString& text) { m_hand.type(text); }
    void key(Qt::Key key) { m_hand.key(key); }
    void waitFor(const QString& name);
    void waitUntil(const QString& what, const std::function<bool()>& holds);
    void shoot(const QString& name); // saves build/demo/NN-name.png

    void selectAll() { m_hand.selectAll(); } // of the field that is typed in
    void goTo(const QString& place); // leaves the page, if one is open, for a place along the bottom

    [[nodiscard]] bool sees(const QString& name) const;
    [[nodiscard]] QVariant propertyOf(const QString& name, const char* property);
    [[nodiscard]] int pictures() const { return m_pictures; }

private:
    [[nodiscard]] QQuickItem* seen(const QString& name) const;
    QQuickItem* find(const QString& name);
    void tapAt(QQuickItem& item);

    QQuickWindow& m_window;
    Hand m_hand;
    QString m_folder;
    int m_pictures = 0;
};

// Says what went wrong and ends the program with exit code 1.
[[noreturn]] void giveUp(const QString& sentence);

} // namespace duskrow::demo
