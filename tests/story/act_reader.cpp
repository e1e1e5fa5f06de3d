// SPDX-License-Identifier: MIT
#include "story/act_reader.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QTest>
#include <QtQuickTest>

#include <algorithm>
#include <cstdio>
#include <map>

#include "story/screen_ear.h"

namespace duskrow::tests {

namespace {

constexpr int patienceMs = 30'000;
constexpr int settledMs = 25;

const std::map<QString, Qt::Key> keys{{QStringLiteral("Escape"), Qt::Key_Escape},
    {QStringLiteral("Return"), Qt::Key_Return}, {QStringLiteral("Tab"), Qt::Key_Tab},
    {QStringLiteral("Space"), Qt::Key_Space}};

// The topmost one: sheets come after the page they lie over.
QQuickItem* tappable(QQuickWindow& window, const QString& name)
{
    const auto all = heardFrom(window);
    const auto found = std::find_if(all.rbegin(), all.rend(),
        [&](const Heard& one) { return one.canBeTapped() && !one.isOff && one.name == name; });
    return found == all.rend() ? nullptr : found->item;
}

} // namespace

ActReader::ActReader(QQuickWindow& window)
    : QObject(&window), m_window(window), m_hand(window), m_notifier(fileno(stdin), QSocketNotifier::Read)
{
    QAccessible::setActive(true);
    if (!m_input.open(stdin, QIODevice::ReadOnly | QIODevice::Unbuffered)) qFatal("no standard input");
    connect(&m_notifier, &QSocketNotifier::activated, this, &ActReader::readLine);
}

void ActReader::readLine()
{
    m_notifier.setEnabled(false); // an act turns the event loop
    const QString line = QString::fromUtf8(m_input.readLine()).trimmed();
    const QString verb = line.section(QLatin1Char(' '), 0, 0);
    // Whoever told the story is gone.
    if (line.isEmpty() || verb == QLatin1String("quit")) {
        m_window.close();
        return;
    }
    QJsonObject answer = act(verb, line.section(QLatin1Char(' '), 1));
    answer.insert(QStringLiteral("taps"), m_taps);
    answer.insert(QStringLiteral("screen"), QJsonArray::fromStringList(wordsOf(heardFrom(m_window))));
    std::printf("%s\n", QJsonDocument(answer).toJson(QJsonDocument::Compact).constData());
    std::fflush(stdout);
    m_notifier.setEnabled(true);
}

QJsonObject ActReader::act(const QString& verb, const QString& what)
{
    QString why;
    QString said;
    if (verb == QLatin1String("tap")) {
        why = tap(what);
    } else if (verb == QLatin1String("type")) {
        m_hand.type(what);
    } else if (verb == QLatin1String("replace")) {
        m_hand.selectAll();
        m_hand.type(what);
    } else if (verb == QLatin1String("key") && keys.contains(what)) {
        m_hand.key(keys.at(what));
    } else if (verb == QLatin1String("see") || verb == QLatin1String("gone")) {
        why = see(what, verb == QLatin1String("see"));
    } else if (verb == QLatin1String("clipboard")) {
        said = QGuiApplication::clipboard()->text();
    } else if (verb == QLatin1String("picture")) {
        QTest::qWait(settledMs);
        if (!m_hand.savePicture(what)) why = QStringLiteral("the picture cannot be written");
    } else if (verb != QLatin1String("screen")) {
        why = QStringLiteral("no such act");
    }
    return {
        {QStringLiteral("ok"), why.isEmpty()}, {QStringLiteral("why"), why}, {QStringLiteral("said"), said}};
}

QString ActReader::tap(const QString& name)
{
    QPointF before(-1, -1);
    // It is there, where it was a moment ago, and nothing waits for its place.
    const bool isThere = QTest::qWaitFor(
        [&] {
            QQuickItem* item = tappable(m_window, name);
            const QPointF at = item ? item->mapToScene(QPointF(0, 0)) : QPointF(-1, -1);
            const bool isSettled = item && at == before && !QQuickTest::qIsPolishScheduled(&m_window);
            before = at;
            return isSettled;
        },
        patienceMs);
    if (!isThere) return QStringLiteral("nothing to tap is called so, or it is switched off");
    ++m_taps;
    return m_hand.tap(*tappable(m_window, name)) ? QString() : QStringLiteral("it is switched off");
}

QString ActReader::see(const QString& text, bool isWanted)
{
    const auto holds = [&] {
        const auto all = heardFrom(m_window);
        const bool isSeen =
            std::any_of(all.begin(), all.end(), [&](const Heard& one) { return one.words().contains(text); });
        return isSeen == isWanted;
    };
    if (QTest::qWaitFor(holds, patienceMs)) return {};
    return isWanted ? QStringLiteral("the screen does not say so")
                    : QStringLiteral("the screen still says so");
}

} // namespace duskrow::tests
