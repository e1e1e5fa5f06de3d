// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/week_reading.h"
#include "app/paint/picture_handle.h"
#include "app/row_list.h"
#include "app/view_model.h"
#include "formats/formats.h"
#include "text/bulletin_words.h"

namespace duskrow::app {

// A coordinator's bulletin of a week: what anybody would read of it, the text to be edited, and publishing.
class PublishViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(QString weekLine READ weekLine NOTIFY shown FINAL)
    Q_PROPERTY(bool canGoOn READ canGoOn NOTIFY shown FINAL) // there is a later week
    Q_PROPERTY(QString standing READ standing NOTIFY shown FINAL) // new, again, reissued, not_over, nothing
    Q_PROPERTY(QString standingLine READ standingLine NOTIFY shown FINAL)
    Q_PROPERTY(QString waitingLine READ waitingLine NOTIFY shown FINAL) // counts that came after publishing
    Q_PROPERTY(bool canPublish READ canPublish NOTIFY shown FINAL)
    Q_PROPERTY(bool canReissue READ canReissue NOTIFY shown FINAL) // a new issue may be looked at
    Q_PROPERTY(bool hasWords READ hasWords NOTIFY shown FINAL)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY shown FINAL) // en, fr
    Q_PROPERTY(QString title READ title NOTIFY shown FINAL)
    Q_PROPERTY(
        QString besides READ besides NOTIFY shown FINAL) // dates, programme, issue, that it is invented
    Q_PROPERTY(QString text READ text NOTIFY textChanged FINAL) // paragraphs, parted by empty lines
    Q_PROPERTY(bool isOwnText READ isOwnText NOTIFY textChanged FINAL)
    Q_PROPERTY(
        duskrow::app::RowList* areas READ areas CONSTANT FINAL) // region and districts, figures as flags
    Q_PROPERTY(duskrow::app::RowList* blocks READ blocks CONSTANT FINAL) // what to do, cautions, privacy
    Q_PROPERTY(QString cellsLine READ cellsLine NOTIFY shown FINAL)
    Q_PROPERTY(int revision READ revision NOTIFY shown FINAL) // of the pictures
    Q_PROPERTY(QString boundaries READ boundaries NOTIFY shown FINAL) // the file of districts; empty for none
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY folderChanged FINAL)
    Q_PROPERTY(QString written READ written NOTIFY folderChanged FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    explicit PublishViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] bool isRead() const { return m_reading != nullptr; }
    [[nodiscard]] QString weekLine() const;
    [[nodiscard]] bool canGoOn() const;
    [[nodiscard]] QString standing() const;
    [[nodiscard]] QString standingLine() const;
    [[nodiscard]] QString waitingLine() const;
    [[nodiscard]] bool canPublish() const { return hasWords() && m_reading->draft.fresh.has_value(); }
    [[nodiscard]] bool canReissue() const;
    [[nodiscard]] bool hasWords() const;
    [[nodiscard]] QString language() const { return m_language; }
    void setLanguage(const QString& language);
    [[nodiscard]] QString title() const { return QString::fromStdString(m_words.title); }
    [[nodiscard]] QString besides() const;
    [[nodiscard]] QString text() const;
    [[nodiscard]] bool isOwnText() const { return !m_ownText.isNull(); }
    [[nodiscard]] RowList* areas() { return &m_areas; }
    [[nodiscard]] RowList* blocks() { return &m_blocks; }
    [[nodiscard]] QString cellsLine() const;
    [[nodiscard]] int revision() const { return m_revision; }
    [[nodiscard]] QString boundaries() const { return m_boundaries; }
    [[nodiscard]] QString folder() const { return m_folder; }
    void setFolder(const QString& folder);
    [[nodiscard]] QString written() const { return m_written; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void goWeeks(int by);
    // The coordinator's own paragraphs; empty for the drafted ones again.
    Q_INVOKABLE void edit(const QString& text);
    Q_INVOKABLE void lookAtReissue(); // the week as it would come out again
    Q_INVOKABLE void publish();
    Q_INVOKABLE void writeFiles(); // those of a published week, into the folder
    Q_INVOKABLE void openPage(); // the one that was written
    Q_INVOKABLE void setBoundaries(const QString& path);
    Q_INVOKABLE duskrow::app::PictureHandle map(double width, int revision) const;
    Q_INVOKABLE duskrow::app::PictureHandle chart(double width, int revision) const;

Q_SIGNALS:
    void shown();
    void textChanged();
    void folderChanged();
    void busyChanged();

private:
    void refresh();
    void show();
    void write(); // the words, in the readers' language
    void takeDraft();
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] domain::SeasonWeek rhythm() const;
    void setBusy(bool busy);
    void kept(const domain::Result<store::Kept>& kept);
    void wrote(const domain::ReportingWeek& week, const QString& folder,
        const domain::Result<std::vector<formats::ExportedFile>>& files);
    void tellOfReading(const QString& sentence); // empty when nothing is wrong

    domain::ReportingWeek m_week;
    bool m_isReissue = false;
    std::shared_ptr<WeekReading> m_reading;
    text::BulletinWords m_words;
    QString m_ownText; // null for the drafted one
    QString m_language;
    QString m_boundaries;
    RowList m_areas;
    RowList m_blocks;
    QString m_folder;
    QString m_written;
    QString m_page; // where the web page was written
    int m_revision = 0;
    int m_looks = 0; // the last one asked for is the one that is shown
    bool m_readingTold = false; // the trouble is one of reading
    bool m_busy = false;
};

} // namespace duskrow::app
