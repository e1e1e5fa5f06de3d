// SPDX-License-Identifier: MIT
#include "demo/hand/hand.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QTest>

#include <algorithm>
#include <cstdlib>

namespace duskrow::demo {

namespace {

constexpr int wheelStep = 120;
constexpr int mostLost = 3;

QQuickItem* flickableAround(QQuickItem* item)
{
    for (QQuickItem* above = item->parentItem(); above; above = above->parentItem())
        if (above->inherits("QQuickFlickable")) return above;
    return nullptr;
}

// How far an item stands out of a view, downwards positive.
double overshoot(QQuickItem& item, QQuickItem& view)
{
    // Not its boundingRect, which for a field that is typed in is that of its text.
    const QRectF box = item.mapRectToItem(&view, QRectF(0, 0, item.width(), item.height()));
    if (box.height() > view.height()) return box.top();
    if (box.bottom() > view.height()) return box.bottom() - view.height();
    return std::min(box.top(), 0.0);
}

} // namespace

QQuickItem* seenBelow(QQuickItem* root, const std::function<bool(const QQuickItem&)>& fits)
{
    if (!root->isVisible()) return nullptr;
    if (root->width() > 0 && root->height() > 0 && fits(*root)) return root;
    const QList<QQuickItem*> children = root->childItems();
    for (auto child = children.rbegin(); child != children.rend(); ++child)
        if (QQuickItem* found = seenBelow(*child, fits)) return found;
    return nullptr;
}

void Hand::bringIntoView(QQuickItem& item)
{
    QQuickItem* view = flickableAround(&item);
    if (!view) return;
    int lost = 0;
    for (int turns = 0; turns < 200 && std::abs(overshoot(item, *view)) > 1; ++turns) {
        const double before = view->property("contentY").toDouble();
        // In the margin, where nothing else takes the wheel.
        const QPointF margin = view->mapToScene(QPointF(4, view->height() / 2));
        const double by = std::clamp(overshoot(item, *view), -double{wheelStep}, double{wheelStep});
        const int step = -static_cast<int>(by > 0 ? std::ceil(by) : std::floor(by));
        QWheelEvent wheel(margin, m_window.mapToGlobal(margin), QPoint(0, step), QPoint(0, step),
            Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        // Without a time of its own the view takes it for a repetition of the last one.
        wheel.setTimestamp(static_cast<quint64>(QDateTime::currentMSecsSinceEpoch()));
        QCoreApplication::sendEvent(&m_window, &wheel);
        const auto hasMoved = [&] { return view->property("contentY").toDouble() != before; };
        // One turn may be lost while the page still comes to rest from the one before.
        if (!QTest::qWaitFor(hasMoved, 100) && ++lost > mostLost) break;
    }
}

bool Hand::tap(QQuickItem& item)
{
    bringIntoView(item);
    if (!item.isEnabled()) return false;
    const QPointF middle = item.mapToScene(QPointF(item.width() / 2, item.height() / 2));
    QTest::mouseClick(&m_window, Qt::LeftButton, Qt::NoModifier, middle.toPoint());
    QCoreApplication::processEvents();
    return true;
}

void Hand::type(const QString& text)
{
    for (const QChar c : text)
        QTest::sendKeyEvent(QTest::Click, &m_window, Qt::Key_unknown, QString(c), Qt::NoModifier);
    QCoreApplication::processEvents();
}

void Hand::key(Qt::Key key)
{
    QTest::keyClick(&m_window, key);
    QCoreApplication::processEvents();
}

void Hand::selectAll()
{
    QTest::keySequence(&m_window, QKeySequence(QKeySequence::SelectAll));
}

bool Hand::savePicture(const QString& file)
{
    return m_window.grabWindow().save(file);
}

} // namespace duskrow::demo
