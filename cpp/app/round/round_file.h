// SPDX-License-Identifier: MIT
#pragma once

#include "app/round/round_stops.h"
#include "app/view_model.h"

namespace duskrow::app {

// Writes the stops of the round, in their order, as a file for receivers and maps.
class RoundFile : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by RoundViewModel")
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY folderChanged FINAL)
    Q_PROPERTY(QString fileName READ fileName CONSTANT FINAL)
    Q_PROPERTY(QString written READ written NOTIFY writtenChanged FINAL) // where it is; empty until then
    Q_PROPERTY(bool busy READ busy NOTIFY writtenChanged FINAL)
    Q_PROPERTY(bool canWrite READ canWrite NOTIFY stopsChanged FINAL) // some stop has a place

public:
    explicit RoundFile(Session& session, QObject* parent = nullptr);

    [[nodiscard]] QString folder() const { return m_folder; }
    void setFolder(const QString& folder);
    [[nodiscard]] QString fileName() const; // "duskrow-round-2026-07-14.gpx"
    [[nodiscard]] QString written() const { return m_written; }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] bool canWrite() const;

    Q_INVOKABLE void write();

    void setStops(const std::vector<RoundPlace>& stops);

Q_SIGNALS:
    void folderChanged();
    void writtenChanged();
    void stopsChanged();

private:
    QString m_folder;
    QString m_written;
    std::vector<RoundPlace> m_stops;
    bool m_busy = false;
};

} // namespace duskrow::app
