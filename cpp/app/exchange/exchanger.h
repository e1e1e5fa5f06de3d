// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <deque>

#include "app/exchange/ways.h"
#include "app/session.h"
#include "sync/exchange/report.h"

namespace duskrow::app {

// Runs the exchanges of one session on a thread of their own, one at a time: by every way the person chose,
// when the app starts, when the person comes back to it, on demand, every half minute while a screen watches,
// and by the hub when the network returns. In between it seals what has grown long.
class Exchanger : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool running READ running NOTIFY progressed FINAL)
    Q_PROPERTY(QString doing READ doing NOTIFY progressed FINAL) // what is under way
    Q_PROPERTY(double part READ part NOTIFY progressed FINAL) // done of it, 0 to 1; negative: not known
    Q_PROPERTY(
        QString trouble READ trouble NOTIFY finished FINAL) // of the last round; empty when all went well
    Q_PROPERTY(QString said READ said NOTIFY finished FINAL) // what the last round came to

public:
    // One piece of work on the exchanging thread.
    using Work = std::function<domain::Result<sync::ExchangeReport>(
        store::Store&, const domain::Moment&, const sync::Journey&)>;
    using Answer = std::function<void(const domain::Result<sync::ExchangeReport>&)>;

    explicit Exchanger(Session& session, QObject* parent = nullptr);
    ~Exchanger() override;

    [[nodiscard]] bool running() const { return m_isRunning; }
    [[nodiscard]] QString doing() const { return m_doing; }
    [[nodiscard]] double part() const { return m_part; }
    [[nodiscard]] QString trouble() const { return m_trouble; }
    [[nodiscard]] QString said() const { return m_said; }

    // By every way. While an exchange is under way or asked for this does nothing.
    Q_INVOKABLE void exchange();
    Q_INVOKABLE void exchangeBy(const QString& way);
    // Ends what is under way after the piece it is at, and forgets what waits.
    Q_INVOKABLE void stop();

    // While somebody watches, an exchange runs every half minute.
    void watch(bool isWatching);
    // Any other work with the store that takes long; `answer` is called here unless `context` is gone.
    void run(const QString& doing, Work work, QObject* context, Answer answer);

    [[nodiscard]] Session& session() const { return m_session; }

Q_SIGNALS:
    void progressed();
    void finished(); // one piece of work is done

private:
    struct Job {
        QString way; // empty for work that is no way's
        QString doing;
        Work work;
        std::function<void(const domain::Result<sync::ExchangeReport>&)> answer;
    };
    void listen();
    void listenToNetwork();
    void sealWhenFull();
    void begin();
    void finish(const Job& job, const domain::Result<sync::ExchangeReport>& outcome);
    void remember(const QString& way, const domain::Result<sync::ExchangeReport>& outcome);
    [[nodiscard]] bool isAskedFor(const QString& way) const;

    Session& m_session;
    std::deque<Job> m_waiting;
    QTimer m_watching;
    int m_watchers = 0;
    bool m_isRunning = false;
    bool m_hearsNetwork = false;
    QString m_way; // that is under way
    QString m_doing;
    QString m_trouble;
    QString m_said;
    double m_part = -1;
    std::atomic<bool> m_isStopped = false;
    QThreadPool m_thread;
};

} // namespace duskrow::app
