// SPDX-License-Identifier: MIT
#include "place/nmea_feed.h"

#include <QFile>

#include <algorithm>
#include <cstring>

namespace duskrow::place {

namespace {
constexpr int msPerFix = 20;
}

NmeaFeed::NmeaFeed(const QString& path, QObject* parent) : QIODevice(parent), m_path(path)
{
    m_timer.setInterval(msPerFix);
    connect(&m_timer, &QTimer::timeout, this, &NmeaFeed::playNext);
}

bool NmeaFeed::open(OpenMode mode)
{
    QFile file(m_path);
    if (!file.open(QIODevice::ReadOnly)) return false;
    const QByteArrayList lines = file.readAll().split('\n');
    for (const QByteArray& line : lines)
        if (line.startsWith('$')) m_lines.append(line.trimmed() + "\r\n");
    m_timer.start();
    return QIODevice::open(mode);
}

void NmeaFeed::playNext()
{
    if (m_next >= m_lines.size()) {
        m_timer.stop();
        return;
    }
    // One fix is one RMC sentence and whatever stands before the next one.
    do m_waiting += m_lines.at(m_next++);
    while (m_next < m_lines.size() && !m_lines.at(m_next).mid(3).startsWith("RMC"));
    Q_EMIT readyRead();
}

qint64 NmeaFeed::bytesAvailable() const
{
    return m_waiting.size() + QIODevice::bytesAvailable();
}

bool NmeaFeed::canReadLine() const
{
    return m_waiting.contains('\n') || QIODevice::canReadLine();
}

qint64 NmeaFeed::readData(char* data, qint64 most)
{
    const qint64 count = std::min<qint64>(most, m_waiting.size());
    std::memcpy(data, m_waiting.constData(), static_cast<std::size_t>(count));
    m_waiting.remove(0, count);
    return count;
}

qint64 NmeaFeed::writeData(const char*, qint64)
{
    return -1;
}

} // namespace duskrow::place
