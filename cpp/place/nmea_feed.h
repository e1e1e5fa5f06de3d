// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArrayList>
#include <QIODevice>
#include <QTimer>

namespace duskrow::place {

// Plays a recorded NMEA log line by line, like a receiver on a wire. Qt's own NMEA source reads it in
// real-time mode, which never waits over gaps in the log as its simulation mode does. After the last line it
// stays silent.
class NmeaFeed : public QIODevice {
    Q_OBJECT

public:
    // Errors  open() fails when the file cannot be read
    explicit NmeaFeed(const QString& path, QObject* parent = nullptr);

    bool open(OpenMode mode) override;
    [[nodiscard]] bool isSequential() const override { return true; }
    [[nodiscard]] qint64 bytesAvailable() const override;
    [[nodiscard]] bool canReadLine() const override;

protected:
    qint64 readData(char* data, qint64 most) override;
    qint64 writeData(const char* data, qint64 length) override;

private:
    void playNext();

    QString m_path;
    QByteArrayList m_lines;
    qsizetype m_next = 0;
    QByteArray m_waiting;
    QTimer m_timer;
};

} // namespace duskrow::place
