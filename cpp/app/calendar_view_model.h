// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"

namespace duskrow::app {

// Writes what is still to come this season as a calendar file.
class CalendarViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY folderChanged FINAL)
    Q_PROPERTY(QString fileName READ fileName CONSTANT FINAL)
    Q_PROPERTY(QString written READ written NOTIFY writtenChanged FINAL) // where it is; empty until then
    Q_PROPERTY(bool busy READ busy NOTIFY writtenChanged FINAL)

public:
    explicit CalendarViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] QString folder() const { return m_folder; }
    void setFolder(const QString& folder);
    [[nodiscard]] QString fileName() const; // "duskrow-2026.ics"
    [[nodiscard]] QString written() const { return m_written; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void write();

Q_SIGNALS:
    void folderChanged();
    void writtenChanged();

private:
    void finish(const domain::Result<int>& events, const QString& path);

    QString m_folder;
    QString m_written;
    bool m_busy = false;
};

} // namespace duskrow::app
