// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "app/clock.h"
#include "app/round/round_draft.h"
#include "text/round_text.h"

namespace duskrow::app {

// When one is back, and the message about it for somebody who waits. The phone's own messages send it; here
// nothing is sent, and nobody is followed.
class RoundBackBy : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by RoundViewModel")
    Q_PROPERTY(QString time READ time WRITE setTime NOTIFY changed FINAL) // of day, as typed
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    Q_PROPERTY(QString phone READ phone WRITE setPhone NOTIFY changed FINAL)
    Q_PROPERTY(QString message READ message NOTIFY changed FINAL) // empty until there is a time
    Q_PROPERTY(QString remark READ remark NOTIFY changed FINAL) // that the time went by
    Q_PROPERTY(QUrl url READ url NOTIFY changed FINAL) // for the phone's messages

public:
    RoundBackBy(const Clock& clock, RoundDraft& draft, QObject* parent = nullptr);

    [[nodiscard]] QString time() const { return m_time; }
    void setTime(const QString& typed);
    [[nodiscard]] QString error() const;
    [[nodiscard]] QString phone() const { return m_draft.phone; }
    void setPhone(const QString& phone);
    [[nodiscard]] QString message() const;
    [[nodiscard]] QString remark() const;
    [[nodiscard]] QUrl url() const;

    Q_INVOKABLE void shift(int minutes); // within the day

    // Where the round goes, without the time.
    void setRound(const text::BackBy& round);
    void readDraft(); // it was taken up, or changed from elsewhere

Q_SIGNALS:
    void changed();
    void edited(); // by the person: the draft is to be saved

private:
    [[nodiscard]] int minute() const; // settled, else in two hours
    [[nodiscard]] int minuteNow() const;

    const Clock& m_clock;
    RoundDraft& m_draft;
    QString m_time;
    bool m_isUnderstood = true;
    text::BackBy m_round;
};

} // namespace duskrow::app
