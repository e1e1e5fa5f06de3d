// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QQmlParserStatus>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTranslator>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "app/app.h"
#include "other_device.h"

// A world for one screen test: a fresh store in a temporary folder, standing on one day, with the app over
// it.
class World : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(QString today MEMBER m_today FINAL)
    Q_PROPERTY(bool begun MEMBER m_begun FINAL) // a programme with one member, as after the first start
    Q_PROPERTY(QString member MEMBER m_member FINAL)
    // Of the season that was begun; 0 for the year of `today`.
    Q_PROPERTY(int seasonYear MEMBER m_seasonYear FINAL)
    // Of the screens and their numbers, e.g. "fr_CA"; empty for English as the tests are run.
    Q_PROPERTY(QString language MEMBER m_language FINAL)
    Q_PROPERTY(QString opened MEMBER m_opened FINAL) // a file or an invitation, as from the command line
    Q_PROPERTY(duskrow::app::App* app READ app CONSTANT FINAL)

public:
    using QObject::QObject;
    ~World() override;

    void classBegin() override { }
    void componentComplete() override;

    [[nodiscard]] duskrow::app::App* app() const { return m_app.get(); }

    // A site with one trap, set up on a day; gives the trap's id. Further fields are preset as a good set-up
    // leaves them.
    Q_INVOKABLE QString addTrap(
        const QString& siteName, const QString& tag, const QString& setDay, double lat, double lon);
    // The same at a field of another member.
    Q_INVOKABLE QString addTrapOf(
        const QString& keeper, const QString& siteName, const QString& tag, const QString& setDay);
    // So many sites with a trap each, "Site 0001" onwards, all of the member's.
    Q_INVOKABLE void addManyTraps(int count);
    // The trap came down on a day.
    Q_INVOKABLE void endTrap(const QString& trap, const QString& day);
    // Half-entered work under a key, as a screen leaves it.
    Q_INVOKABLE void leaveDraft(const QString& key, const QString& body);
    // A count that emptied the trap; gives the visit's id.
    Q_INVOKABLE QString addCount(const QString& trap, const QString& day, int moths);
    // Any record, by the names of its fields; gives its id. With an id the record of that id is changed.
    Q_INVOKABLE QString keepRecord(const QString& kind, const QVariantMap& fields, const QString& id = {});
    // What is kept in one field, as it stands in the log's tables; undefined for nothing.
    Q_INVOKABLE QVariant fieldOf(const QString& kind, const QString& id, const QString& field) const;
    // The ids of all records of a kind that stand, oldest first.
    Q_INVOKABLE QStringList recordsOf(const QString& kind) const;
    // Kills the app and opens the same store again, as after a crash.
    Q_INVOKABLE void restart();
    // Stands at a place: `fixes` readings of a receiver, through an NMEA log.
    Q_INVOKABLE void standAt(double lat, double lon, int fixes);
    // From now on addresses of a scheme, as "geo", are taken here and not handed to the device.
    Q_INVOKABLE void listenToUrls(const QString& scheme);
    Q_INVOKABLE QStringList openedUrls() const { return m_urls; } // as they were written
    Q_INVOKABLE void takeUrl(const QUrl& url);
    // How often the log holds a value for a field: what is really kept, past every view model.
    Q_INVOKABLE int changes() const;
    // The keys of all half-entered work, once it is on disk.
    Q_INVOKABLE QStringList draftKeys() const;
    // The ids of all traps, or sites, oldest first.
    Q_INVOKABLE QStringList trapIds() const;
    Q_INVOKABLE QStringList siteIds() const;
    // One field of a record as it is kept; undefined when it was not observed.
    Q_INVOKABLE QVariant fieldOf(const QString& id, const QString& field) const;
    // How many changes a record has: 1 when it was never corrected.
    Q_INVOKABLE int changesOf(const QString& id) const;
    Q_INVOKABLE bool hasDraft(const QString& key) const;
    Q_INVOKABLE void flush() const { m_app->session()->store().flush(); }
    // The app's window over this world, closed with it. `route` and `subject` may open a page at once.
    Q_INVOKABLE QQuickWindow* openWindow(
        int width, int height, const QString& route = {}, const QString& subject = {});
    Q_INVOKABLE QString folder() const { return m_folder.path(); }
    // Puts a file into the folder, as UTF-8 or in the one byte a letter of old programs; gives its path.
    Q_INVOKABLE QString putFile(const QString& name, const QString& text, bool isLatin1 = false);
    Q_INVOKABLE QString fileText(const QString& name) const; // of a file in the folder

    // A folder that several devices can open, and one exchange by it without the screens.
    Q_INVOKABLE QString sharedFolder();
    Q_INVOKABLE void exchange();
    // Somebody is invited here, joins by the shared folder with a device of his own, and is confirmed.
    Q_INVOKABLE OtherDevice* joinAnother(const QString& name, const QString& role, const QString& label);
    // A file of another device in the shared folder gets lost: the last but one.
    Q_INVOKABLE void loseFileOf(OtherDevice* other);
    // A programme that somebody else made; this world is not in it.
    Q_INVOKABLE OtherDevice* otherProgramme(const QString& name, const QString& coordinator);
    // Everything here as one carried file; its path.
    Q_INVOKABLE QString writeFile();
    // The coordinator says of a record that it stands.
    Q_INVOKABLE void standsNow(const QString& record);
    Q_INVOKABLE QString memberId(const QString& name) const;

private:
    void start();
    void speak();
    void keep(std::vector<duskrow::domain::Edit> edits);
    std::vector<duskrow::domain::Edit> trapEdits(duskrow::domain::Trap& trap,
        const duskrow::domain::Uuid& keeper, const QString& siteName, const QString& tag,
        const QString& setDay, double lat, double lon);
    QString addTrapAt(const duskrow::domain::Uuid& keeper, const QString& siteName, const QString& tag,
        const QString& setDay, double lat, double lon);

    QTemporaryDir m_folder;
    QString m_today = QStringLiteral("2026-07-14");
    QString m_member = QStringLiteral("Wren");
    QString m_language;
    QString m_opened;
    QStringList m_urls;
    QStringList m_schemes;
    QTranslator m_translator;
    bool m_begun = true;
    int m_seasonYear = 0;
    int m_logs = 0;
    std::unique_ptr<duskrow::app::App> m_app;
    std::unique_ptr<QObject> m_window; // gone before the app it shows
};
