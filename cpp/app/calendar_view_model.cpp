// SPDX-License-Identifier: MIT
#include "app/calendar_view_model.h"

#include <QDir>
#include <QStandardPaths>

#include "app/season_calendar.h"
#include "app/written_file.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

Result<int> writeTo(const QString& path, const formats::Calendar& calendar)
{
    const auto bytes = formats::writeCalendar(calendar);
    if (!bytes) return bytes.error();
    if (const auto written = writeFile(path, QByteArray::fromStdString(*bytes)); !written)
        return written.error();
    return static_cast<int>(calendar.events.size());
}

} // namespace

CalendarViewModel::CalendarViewModel(Session& session, QObject* parent)
    : ViewModel(session, parent),
      m_folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
}

void CalendarViewModel::setFolder(const QString& folder)
{
    if (folder == m_folder) return;
    m_folder = folder;
    m_written.clear();
    clearTrouble();
    Q_EMIT folderChanged();
    Q_EMIT writtenChanged();
}

QString CalendarViewModel::fileName() const
{
    return QStringLiteral("duskrow-%1.ics").arg(yearOf(session().clock().today()));
}

void CalendarViewModel::write()
{
    if (m_busy) return;
    const QString folder = m_folder.trimmed();
    if (folder.isEmpty()) return tell(Error{ErrorCode::Empty, {"folder"}});
    const auto ask = todayAskOf(session());
    if (!ask) return tell(ask.error());
    if (!*ask) return;
    m_busy = true;
    m_written.clear();
    Q_EMIT writtenChanged();
    const QString path = QDir(folder).filePath(fileName());
    const auto& programme = session().programme();
    const QString name = programme ? QString::fromStdString(programme->name) : QString();
    session().lookUp<int>(
        this,
        [ask = **ask, name, path, stamp = session().clock().now().at](store::Reader& reader) {
            const auto calendar = seasonCalendar(reader, ask, name, stamp);
            return calendar ? writeTo(path, *calendar) : Result<int>(calendar.error());
        },
        [this, path](const Result<int>& events) { finish(events, path); });
}

void CalendarViewModel::finish(const Result<int>& events, const QString& path)
{
    m_busy = false;
    if (!events) {
        tell(events.error());
    } else {
        clearTrouble();
        const QString place = QDir::toNativeSeparators(path);
        m_written = *events == 1 ? tr("One entry, in %1.").arg(place)
                                 : tr("%1 entries, in %2.").arg(*events).arg(place);
    }
    Q_EMIT writtenChanged();
}

} // namespace duskrow::app
