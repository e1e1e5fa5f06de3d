// SPDX-License-Identifier: MIT
#pragma once

#include <QFile>
#include <QJsonObject>
#include <QObject>
#include <QQuickWindow>
#include <QSocketNotifier>

#include "demo/hand/hand.h"

namespace duskrow::tests {

// Does to a window what standard input says, one act a line, and answers each with one line of JSON:
//   {"ok": true, "screen": [...], "taps": 3}      taps: since the start; keys are not counted
//   {"ok": false, "why": "...", "screen": [...]}  screen: what a screen reader would say, in its order
// An act waits for what it needs to come. Things are found by the name that a screen reader says.
//   tap NAME         touches the button, field, choice or tab of that name
//   type TEXT        types into the field that has the focus
//   replace TEXT     the same, in the stead of what stands there
//   key NAME         Escape, Return, Tab or Space
//   see TEXT         waits until the screen says it, as part of something
//   gone TEXT        waits until it does not
//   screen           says what is on the screen now
//   clipboard        what was copied, as "said"
//   picture FILE     saves a picture
//   quit             closes the window, as its owner would; there is no answer
class ActReader : public QObject {
    Q_OBJECT

public:
    explicit ActReader(QQuickWindow& window); // which it belongs to

private:
    void readLine();
    QJsonObject act(const QString& verb, const QString& what);
    QString tap(const QString& name);
    QString see(const QString& text, bool isWanted);

    QQuickWindow& m_window;
    demo::Hand m_hand;
    QFile m_input;
    QSocketNotifier m_notifier;
    int m_taps = 0;
};

} // namespace duskrow::tests
