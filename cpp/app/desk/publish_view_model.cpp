// SPDX-License-Identifier: MIT
#include "app/desk/publish_view_model.h"

#include <QDateTime>
#include <QDesktopServices>
#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QPointer>
#include <QStandardPaths>
#include <QUrl>

#include "app/as_qstring.h"
#include "domain/rules/week_desk.h"
#include "publish/bulletin_files.h"
#include "publish/bulletin_record.h"
#include "publish/readers_language.h"
#include "store/publications.h"
#include "text/bulletin_text.h"
#include "text/desk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;
using publish::WeekOutcome;

namespace {

constexpr std::chrono::days aWeek{7};

QStringList lines(const std::vector<std::string>& texts)
{
    QStringList found;
    for (const std::string& text : texts) found << asQString(text);
    return found;
}

publish::FilesAsked filesAsked(
    const WeekReading& reading, const text::BulletinWords& words, const QLocale& locale)
{
    return {reading.draft, words, reading.overlay, reading.programmeKey, formats::OccurrenceTerms::Detected,
        locale};
}

} // namespace

PublishViewModel::PublishViewModel(Session& session, QObject* parent)
    : ViewModel(session, parent), m_language(asQString(Session::language() == "fr" ? "fr" : "en")),
      m_folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
    m_week = weekToSettle(session.clock().today(), rhythm());
    // The last week whose counts are all due.
    while (session.clock().today() <= countsOf(m_week, rhythm()).last)
        m_week = {m_week.first - aWeek, m_week.last - aWeek};
    connect(&session, &Session::changed, this, &PublishViewModel::refresh);
    takeDraft();
    refresh();
}

SeasonWeek PublishViewModel::rhythm() const
{
    const auto& season = session().season();
    return season ? seasonWeekOf(*season).value_or(SeasonWeek{}) : SeasonWeek{};
}

void PublishViewModel::refresh()
{
    const auto& season = session().season();
    if (!season) return;
    const auto boundaries = session().reader().deviceSetting(boundariesSetting);
    m_boundaries = boundaries && *boundaries ? asQString(**boundaries) : QString();
    const publish::WeekAsked asked{isoWeekOf(m_week.first + std::chrono::days{3}), *season, {},
        keptFolder(asQString(session().store().path())), m_isReissue, session().clock().today()};
    using Read = std::shared_ptr<WeekReading>;
    session().lookUp<Read>(
        this, [asked](store::Reader& reader) { return readWeek(reader, asked); },
        [this, look = ++m_looks](const Result<Read>& read) {
            if (look != m_looks) return;
            if (read) {
                m_reading = *read;
                tellOfReading(m_reading->overlayTrouble);
            } else {
                m_reading = nullptr;
                tellOfReading(text::sentence(read.error()));
            }
            show();
        });
}

// What else went wrong, as a file that could not be written, stays to be read.
void PublishViewModel::tellOfReading(const QString& sentence)
{
    if (!sentence.isEmpty() || m_readingTold) tell(sentence);
    m_readingTold = !sentence.isEmpty();
}

bool PublishViewModel::hasWords() const
{
    return m_reading && publish::hasBulletin(m_reading->draft.outcome);
}

void PublishViewModel::write()
{
    m_words = {};
    if (!hasWords()) return;
    const publish::ReadersLanguage readers(m_language.toStdString());
    m_words = text::bulletinWords(m_reading->draft.bulletin, *m_reading->draft.protocol, readers.locale());
    if (isOwnText()) m_words.paragraphs = text::ownParagraphs(m_ownText);
}

void PublishViewModel::show()
{
    write();
    std::vector<Row> areas;
    for (const text::AreaWords& area : m_words.districts) {
        Row row{.title = asQString(area.name), .detail = asQString(area.reason)};
        for (std::size_t i = 0; i < area.cells.size() && i + 1 < m_words.columns.size(); ++i)
            if (!area.cells[i].empty())
                row.flags << tr("%1: %2").arg(asQString(m_words.columns[i + 1]), asQString(area.cells[i]));
        areas.push_back(std::move(row));
    }
    m_areas.show(std::move(areas));
    std::vector<Row> blocks;
    if (hasWords()) {
        blocks.push_back({.title = asQString(m_words.toDoHeading), .flags = lines(m_words.toDo)});
        blocks.push_back({.title = tr("Cautions"), .flags = lines(m_words.cautions)});
        blocks.push_back({.title = asQString(m_words.privacyHeading), .flags = lines(m_words.privacy)});
    }
    m_blocks.show(std::move(blocks));
    ++m_revision;
    Q_EMIT shown();
    Q_EMIT textChanged();
}

QString PublishViewModel::weekLine() const
{
    //: the number of a week and its days
    return tr("Week %1 · %2")
        .arg(isoWeekOf(m_week.first + std::chrono::days{3}).week)
        .arg(text::weekDays(m_week));
}

bool PublishViewModel::canGoOn() const
{
    return m_week.last < session().clock().today();
}

QString PublishViewModel::standing() const
{
    if (!m_reading) return {};
    switch (m_reading->draft.outcome) {
    case WeekOutcome::New:
        return m_reading->draft.fresh ? QStringLiteral("new") : QStringLiteral("again");
    case WeekOutcome::Again:
        return QStringLiteral("again");
    case WeekOutcome::Reissued:
        return QStringLiteral("reissued");
    case WeekOutcome::NotOver:
        return QStringLiteral("not_over");
    case WeekOutcome::NothingToReissue:
        return QStringLiteral("nothing");
    case WeekOutcome::NoTraps:
        return QStringLiteral("no_traps");
    }
    return {};
}

QString PublishViewModel::standingLine() const
{
    if (!m_reading) return {};
    switch (m_reading->draft.outcome) {
    case WeekOutcome::New:
        return tr("Not published yet. Once it is, the week no longer moves with late counts.");
    case WeekOutcome::Again:
        return tr("Published, issue %1. This is what everybody reads.").arg(m_reading->draft.bulletin.issue);
    case WeekOutcome::Reissued:
        return tr("This would be issue %1. It replaces the one that is out.")
            .arg(m_reading->draft.bulletin.issue);
    case WeekOutcome::NotOver:
        return tr("The counts of this week are not all due yet. Publish it when they are.");
    case WeekOutcome::NothingToReissue:
        return tr("No new issue: too few farms have changed their counts, and it would show whose they are.");
    case WeekOutcome::NoTraps:
        return tr("No trap stood out in this week. Choose another.");
    }
    return {};
}

QString PublishViewModel::waitingLine() const
{
    if (!m_reading || m_reading->draft.waiting == 0) return {};
    return tr("Traps whose counts have changed since: %1.").arg(m_reading->draft.waiting);
}

bool PublishViewModel::canReissue() const
{
    return m_reading && m_reading->draft.outcome == WeekOutcome::Again && m_reading->draft.waiting > 0;
}

void PublishViewModel::setLanguage(const QString& language)
{
    if (language == m_language) return;
    m_language = language;
    // Another language is another draft; own words stay what they are.
    show();
}

QString PublishViewModel::besides() const
{
    QStringList parts{asQString(m_words.dates), asQString(m_words.programme), asQString(m_words.issue),
        asQString(m_words.notice)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

QString PublishViewModel::text() const
{
    return isOwnText() ? m_ownText : lines(m_words.paragraphs).join(QStringLiteral("\n\n"));
}

QString PublishViewModel::cellsLine() const
{
    if (!hasWords()) return {};
    return tr("Cells of a tenth of a degree with five farms or more: %1")
        .arg(m_reading->draft.bulletin.cells.size());
}

void PublishViewModel::goWeeks(int by)
{
    m_week = {m_week.first + by * aWeek, m_week.last + by * aWeek};
    m_isReissue = false;
    m_written.clear();
    m_page.clear();
    takeDraft();
    Q_EMIT folderChanged();
    refresh();
}

QString PublishViewModel::draftKey() const
{
    return QStringLiteral("bulletin/") + asQString(formatDay(m_week.first));
}

void PublishViewModel::takeDraft()
{
    m_ownText = QString();
    const auto draft = session().draft(draftKey());
    if (!draft) return;
    const QJsonObject json = QJsonDocument::fromJson(*draft).object();
    if (json.contains(QStringLiteral("text"))) m_ownText = json[QStringLiteral("text")].toString();
}

void PublishViewModel::edit(const QString& text)
{
    m_ownText = text.trimmed().isEmpty() ? QString() : text;
    if (isOwnText())
        session().saveDraft(
            draftKey(), QJsonDocument(QJsonObject{{QStringLiteral("text"), m_ownText}}).toJson());
    else
        session().dropDraft(draftKey());
    // With each key that is struck nothing but the paragraphs is made anew.
    if (isOwnText() && hasWords())
        m_words.paragraphs = text::ownParagraphs(m_ownText);
    else
        write();
    Q_EMIT textChanged();
}

void PublishViewModel::lookAtReissue()
{
    m_isReissue = true;
    refresh();
}

void PublishViewModel::setBusy(bool busy)
{
    m_busy = busy;
    Q_EMIT busyChanged();
}

void PublishViewModel::publish()
{
    if (m_busy || !canPublish()) return;
    const auto& season = session().season();
    write();
    const Instant now = instantFromMs(QDateTime::currentMSecsSinceEpoch());
    if (const auto done = publish::keepDraft(m_reading->draft, m_words.summary, now); !done)
        return tell(done.error());
    const auto edit = publish::bulletinEdit(session().reader(), season->id, m_reading->draft, m_words);
    if (!edit) return tell(edit.error());
    m_isReissue = false;
    if (!*edit) return refresh();
    setBusy(true);
    session().keep({**edit}, draftKey(), this, [this](const auto& done) { kept(done); });
}

// The draft is gone with the keeping; what was written stays on the screen until the week is read again.
void PublishViewModel::kept(const Result<store::Kept>& kept)
{
    setBusy(false);
    if (!kept) return tell(kept.error());
    writeFiles();
    refresh();
}

void PublishViewModel::setFolder(const QString& folder)
{
    if (folder == m_folder) return;
    m_folder = folder;
    m_written.clear();
    m_page.clear();
    Q_EMIT folderChanged();
}

// A page, a map and an archive of thousands of traps take a while: the screens do not wait for them.
void PublishViewModel::writeFiles()
{
    m_written.clear();
    m_page.clear();
    Q_EMIT folderChanged();
    if (!m_readingTold) clearTrouble();
    if (!hasWords() || m_busy) return;
    const QString folder = m_folder.trimmed();
    if (folder.isEmpty()) return tell(Error{ErrorCode::Empty, {"folder"}});
    const publish::ReadersLanguage readers(m_language.toStdString());
    // What a hub serves lies beside the store, wherever the coordinator wants the files besides.
    const QString forHub = asQString(store::publicFolder(session().store().path()).string());
    using Files = std::vector<formats::ExportedFile>;
    setBusy(true);
    Session* home = &session();
    // Told wherever somebody is by then: the page may be gone.
    home->lookUpLong<Files>(
        home,
        [reading = m_reading, words = m_words, locale = readers.locale(),
            feed = publish::feedOf(filesAsked(*m_reading, m_words, readers.locale())), forHub,
            folder](store::Reader&) -> Result<Files> {
            auto files = publish::publishedFiles(filesAsked(*reading, words, locale), feed);
            if (!files) return files;
            for (const QString& to : {forHub, folder})
                if (const auto done = publish::writeFiles(to, *files); !done) return done.error();
            return files;
        },
        [home, self = QPointer<PublishViewModel>(this), week = m_week, folder](const Result<Files>& files) {
            if (!files) Q_EMIT home->troubled(files.error());
            if (self) self->wrote(week, folder, files);
        });
}

void PublishViewModel::wrote(
    const ReportingWeek& week, const QString& folder, const Result<std::vector<formats::ExportedFile>>& files)
{
    setBusy(false);
    if (!files || week != m_week) return;
    m_page = QDir(folder).filePath(asQString(files->front().name));
    //: the number of files, a folder
    m_written = tr("Written: %1 files, in %2.").arg(files->size()).arg(QDir::toNativeSeparators(folder));
    Q_EMIT folderChanged();
}

void PublishViewModel::openPage()
{
    if (!m_page.isEmpty()) QDesktopServices::openUrl(QUrl::fromLocalFile(m_page));
}

void PublishViewModel::setBoundaries(const QString& path)
{
    const QString plain = path.trimmed();
    if (plain == m_boundaries) return;
    if (const auto done = session().store().saveSettingNow(boundariesSetting, plain.toStdString()); !done)
        return tell(done.error());
    refresh();
}

PictureHandle PublishViewModel::map(double width, int /*revision*/) const
{
    if (!hasWords() || width <= 0) return {};
    return PictureHandle(
        formats::mapOf(publish::documentOf(filesAsked(*m_reading, m_words, QLocale())), width));
}

PictureHandle PublishViewModel::chart(double width, int /*revision*/) const
{
    if (!hasWords() || width <= 0) return {};
    return PictureHandle(
        formats::chartOf(publish::documentOf(filesAsked(*m_reading, m_words, QLocale())), width));
}

} // namespace duskrow::app
