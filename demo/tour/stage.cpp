// SPDX-License-Identifier: MIT
#include "demo/tour/stage.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QTest>

#include <cstdio>
#include <cstdlib>

namespace duskrow::demo {

namespace {

constexpr int patienceMs = 10'000;

std::function<bool(const QQuickItem&)> isCalled(const QString& name)
{
    return [name](const QQuickItem& item) { return item.objectName() == name; };
}

} // namespace

void giveUp(const QString& sentence)
{
    std::fprintf(stderr, "The tour stopped: %s\n", qPrintable(sentence));
    std::fflush(stderr);
    std::_Exit(1);
}

Stage::Stage(QQuickWindow& window, QString pictureFolder)
    : m_window(window), m_hand(window), m_folder(std::move(pictureFolder))
{
    if (!QDir().mkpath(m_folder)) giveUp(QStringLiteral("the folder %1 cannot be made.").arg(m_folder));
}

QQuickItem* Stage::seen(const QString& name) const
{
    return seenBelow(m_window.contentItem(), isCalled(name));
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

void Stage::tapAt(QQuickItem& item)
{
    QTest::qWait(80); // a person looks before touching; the page has settled by then
    if (m_hand.tap(item)) return;
    shoot(QStringLiteral("stopped-here"));
    giveUp(QStringLiteral("\"%1\" cannot be tapped now.").arg(item.objectName()));
}

void Stage::tap(const QString& name)
{
    tapAt(*find(name));
}

void Stage::tapIn(const QString& name, const QString& part)
{
    QQuickItem* whole = find(name);
    QQuickItem* found = seenBelow(whole, isCalled(part));
    if (!found) giveUp(QStringLiteral("\"%1\" has no \"%2\".").arg(name, part));
    tapAt(*found);
}

QVariant Stage::propertyOf(const QString& name, const char* property)
{
    return find(name)->property(property);
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
    if (!m_hand.savePicture(file)) giveUp(QStringLiteral("the picture %1 cannot be written.").arg(file));
}

} // namespace duskrow::demo
