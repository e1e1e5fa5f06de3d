// SPDX-License-Identifier: MIT
#include "demo/tour/stage.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QElapsedTimer>
#include <QTest>

#include <cstdio>
#include <cstdlib>

namespace duskrow::demo {

namespace {

constexpr int patienceMs = 10'000;

// What a person can see: visible all the way up, and with some size.
QQuickItem* seenBelow(QQuickItem* root, const QString& name)
{
    if (!root->isVisible()) return nullptr;
    if (root->objectName() == name && root->width() > 0 && root->height() > 0) return root;
    // The topmost child is looked at first: a sheet lies over the page.
    const QList<QQuickItem*> children = root->childItems();
    for (auto child = children.rbegin(); child != children.rend(); ++child)
        if (QQuickItem* found = seenBelow(*child, name)) return found;
    return nullptr;
}

QQuickItem* flickableAround(QQuickItem* item)
{
    for (QQuickItem* above = item->parentItem(); above; above = above->parentItem())
        if (above->inherits("QQuickFlickable")) return above;
    return nullptr;
}

} // namespace

void giveUp(const QString& sentence)
{
    std::fprintf(stderr, "The tour stopped: %s\n", qPrintable(sentence));
    std::fflush(stderr);
    std::_Exit(1);
}

Stage::Stage(QQuickWindow& window, QString pictureFolder)
    : m_window(window), m_folder(std::move(pictureFolder))
{
    if (!QDir().mkpath(m_folder)) giveUp(QStringLiteral("the folder %1 cannot be made.").arg(m_folder));
}

QQuickItem* Stage::seen(const QString& name) const
{
    return seenBelow(m_window.contentItem(), name);
}

bool Stage::sees(const QString& name) const
{
    return seen(name) != nullptr;
}

void Stage::waitUntil(const QString& what, const std::function<bool()>& holds)
{
    QElapsedTimer timer;
    timer.start();
    while (!holds()) {
        if (timer.elapsed() > patienceMs) {
            shoot(QStringLiteral("stopped-here"));
            giveUp(QStringLiteral("%1 did not come about.").arg(what));
        }
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

void Stage::waitFor(const QString& name)
{
    waitUntil(QStringLiteral("\"%1\" on the screen").arg(name), [&] { return sees(name); });
}

QQuickItem* Stage::find(const QString& name)
{
    waitFor(name);
    return seen(name);
}

void Stage::bringIntoView(QQuickItem& item)
{
    QQuickItem* flickable = flickableAround(&item);
    if (!flickable) return;
    const auto overshoot = [&] {
        const QRectF box = item.mapRectToItem(flickable, item.boundingRect());
        if (box.height() > flickable->height()) return box.top();
        if (box.bottom() > flickable->height()) return box.bottom() - flickable->height();
        return box.top() < 0 ? box.top() : 0.0;
    };
    for (int turns = 0; turns < 200 && std::abs(overshoot()) > 1; ++turns) {
        const double before = flickable->property("contentY").toDouble();
        // In the margin, where nothing else takes the wheel.
        const QPointF middle = flickable->mapToScene(QPointF(4, flickable->height() / 2));
        const int step = overshoot() > 0 ? -40 : 40;
        QWheelEvent wheel(middle, m_window.mapToGlobal(middle), QPoint(0, step), QPoint(0, step),
            Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        // Without a time of its own the view takes it for a repetition of the last one.
        wheel.setTimestamp(static_cast<quint64>(QDateTime::currentMSecsSinceEpoch()));
        QCoreApplication::sendEvent(&m_window, &wheel);
        const auto hasMoved = [&] { return flickable->property("contentY").toDouble() != before; };
        if (!QTest::qWaitFor(hasMoved, 300)) break;
    }
}

void Stage::tapAt(QQuickItem& item)
{
    QTest::qWait(80); // a person looks before touching; the page has settled by then
    bringIntoView(item);
    if (!item.isEnabled()) {
        shoot(QStringLiteral("stopped-here"));
        giveUp(QStringLiteral("\"%1\" cannot be tapped now.").arg(item.objectName()));
    }
    const QPointF middle = item.mapToScene(QPointF(item.width() / 2, item.height() / 2));
    QTest::mouseClick(&m_window, Qt::LeftButton, Qt::NoModifier, middle.toPoint());
    QCoreApplication::processEvents();
}

void Stage::tap(const QString& name)
{
    tapAt(*find(name));
}

void Stage::tapIn(const QString& name, const QString& part)
{
    QQuickItem* whole = find(name);
    QQuickItem* found = seenBelow(whole, part);
    if (!found) giveUp(QStringLiteral("\"%1\" has no \"%2\".").arg(name, part));
    tapAt(*found);
}

void Stage::type(const QString& text)
{
    for (const QChar c : text)
        QTest::sendKeyEvent(QTest::Click, &m_window, Qt::Key_unknown, QString(c), Qt::NoModifier);
    QCoreApplication::processEvents();
}

void Stage::key(Qt::Key key)
{
    QTest::keyClick(&m_window, key);
    QCoreApplication::processEvents();
}

QVariant Stage::propertyOf(const QString& name, const char* property)
{
    return find(name)->property(property);
}

void Stage::selectAll()
{
    QTest::keySequence(&m_window, QKeySequence(QKeySequence::SelectAll));
}

void Stage::goTo(const QString& place)
{
    for (int pages = 0; pages < 10 && !sees(QStringLiteral("tabs")); ++pages) {
        key(Qt::Key_Escape);
        QTest::qWait(50);
    }
    tap(QStringLiteral("tab_") + place);
}

void Stage::shoot(const QString& name)
{
    QTest::qWait(150);
    const QString file =
        QStringLiteral("%1/%2-%3.png").arg(m_folder).arg(++m_pictures, 2, 10, QLatin1Char('0')).arg(name);
    if (!m_window.grabWindow().save(file))
        giveUp(QStringLiteral("the picture %1 cannot be written.").arg(file));
}

} // namespace duskrow::demo
