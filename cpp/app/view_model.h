// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "app/session.h"
#include "text/error_text.h"

namespace duskrow::app {

// What every screen's view model has: the session, and the one sentence that is wrong at the moment.
class ViewModel : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged FINAL)

public:
    explicit ViewModel(Session& session, QObject* parent = nullptr) : QObject(parent), m_session(session) { }

    [[nodiscard]] QString trouble() const { return m_trouble; }

Q_SIGNALS:
    void troubleChanged();

protected:
    [[nodiscard]] Session& session() const { return m_session; }

    void tell(const domain::Error& error) { setTrouble(text::sentence(error)); }
    void tell(const QString& sentence) { setTrouble(sentence); }
    void clearTrouble() { setTrouble({}); }

private:
    void setTrouble(const QString& sentence)
    {
        if (sentence == m_trouble) return;
        m_trouble = sentence;
        Q_EMIT troubleChanged();
    }

    Session& m_session;
    QString m_trouble;
};

} // namespace duskrow::app
