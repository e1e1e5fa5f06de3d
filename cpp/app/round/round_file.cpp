// SPDX-License-Identifier: MIT
#include "app/round/round_file.h"

#include <QDir>
#include <QStandardPaths>

#include <algorithm>

#include "app/round/round_gpx.h"
#include "app/written_file.h"

namespace duskrow::app {

using namespace duskrow::domain;

RoundFile::RoundFile(Session& session, QObject* parent)
    : ViewModel(session, parent),
      m_folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
}

void RoundFile::setFolder(const QString& folder)
{
    if (folder == m_folder) return;
    m_folder = folder;
    m_written.clear();
    clearTrouble();
    Q_EMIT folderChanged();
    Q_EMIT writtenChanged();
}

QString RoundFile::fileName() const
{
    return QStringLiteral("duskrow-round-%1.gpx")
        .arg(QString::fromStdString(formatDay(session().clock().today())));
}

bool RoundFile::canWrite() const
{
    return std::any_of(
        m_stops.begin(), m_stops.end(), [](const RoundPlace& stop) { return stop.place.has_value(); });
}

void RoundFile::setStops(const std::vector<RoundPlace>& stops)
{
    const bool isSame = std::equal(stops.begin(), stops.end(), m_stops.begin(), m_stops.end(),
        [](const RoundPlace& a, const RoundPlace& b) { return a.key == b.key && a.place == b.place; });
    m_stops = stops;
    if (!isSame) m_written.clear(); // another order than the file's
    Q_EMIT stopsChanged();
    Q_EMIT writtenChanged();
}

void RoundFile::write()
{
    if (m_busy || !canWrite()) return;
    const QString folder = m_folder.trimmed();
    if (folder.isEmpty()) return tell(Error{ErrorCode::Empty, {"folder"}});
    const auto bytes = formats::writeGpx(roundGpx(m_stops, session().clock().now()));
    if (!bytes) return tell(bytes.error());
    m_busy = true;
    m_written.clear();
    Q_EMIT writtenChanged();
    const QString path = QDir(folder).filePath(fileName());
    session().lookUp<Done>(
        this,
        [path, content = QByteArray::fromStdString(*bytes)](
            store::Reader&) { return writeFile(path, content); },
        [this, path](const Result<Done>& done) {
            m_busy = false;
            if (done) {
                clearTrouble();
                m_written = tr("The stops are in %1.").arg(QDir::toNativeSeparators(path));
            } else {
                tell(done.error());
            }
            Q_EMIT writtenChanged();
        });
}

} // namespace duskrow::app
