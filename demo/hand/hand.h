// SPDX-License-Identifier: MIT
#pragma once

#include <QQuickItem>
#include <QQuickWindow>
#include <QString>

#include <functional>

namespace duskrow::demo {

// The first item that can be seen and fits, the topmost first: a sheet lies over the page. Null for none.
QQuickItem* seenBelow(QQuickItem* root, const std::function<bool(const QQuickItem&)>& fits);

// A hand on a window: real events of a pointer, a wheel and a keyboard, and nothing past them.
class Hand {
public:
    explicit Hand(QQuickWindow& window) : m_window(window) { }

    // Scrolls the page until the item lies in it, as far as it goes.
    void bringIntoView(QQuickItem& item);
    // Brings it into view and touches its middle. False, and nothing happens, where it is switched off.
    [[nodiscard]] bool tap(QQuickItem& item);
    void type(const QString& text);
    void key(Qt::Key key);
    void selectAll(); // of the field that is typed in
    [[nodiscard]] bool savePicture(const QString& file);

private:
    QQuickWindow& m_window;
};

} // namespace duskrow::demo
