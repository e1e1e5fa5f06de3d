// SPDX-License-Identifier: MIT
#pragma once

#include "app/device_settings.h"
#include "app/place_view_model.h"
#include "app/setup/setup_around.h"
#include "app/setup/setup_outlook.h"
#include "app/setup/setup_site.h"
#include "app/setup/setup_stake.h"
#include "app/setup/setup_trap.h"
#include "app/view_model.h"

namespace duskrow::app {

// Sets up a trap, page by page. All entries live in a draft until the trap is kept in one commit.
class SetupViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::SetupSite* site READ site CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::PlaceViewModel* place READ place CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::SetupAround* around READ around CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::SetupTrap* trap READ trap CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::SetupStake* stake READ stake CONSTANT FINAL)
    Q_PROPERTY(QString page READ page NOTIFY pageChanged FINAL)
    Q_PROPERTY(bool atStart READ atStart NOTIFY pageChanged FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString nextText READ nextText NOTIFY changed FINAL)
    Q_PROPERTY(QString remark MEMBER m_remark NOTIFY edited FINAL)
    Q_PROPERTY(QString setDay MEMBER m_setDay NOTIFY edited FINAL)
    Q_PROPERTY(QString photo MEMBER m_photo NOTIFY edited FINAL) // its hash
    Q_PROPERTY(QString photoSource READ photoSource NOTIFY changed FINAL) // the kept copy, as an address
    Q_PROPERTY(QString remarkError READ remarkError NOTIFY changed FINAL)
    Q_PROPERTY(QString lateness READ lateness NOTIFY changed FINAL)
    Q_PROPERTY(QString stillOpen READ stillOpen NOTIFY changed FINAL)
    Q_PROPERTY(QStringList nextLabels READ nextLabels NOTIFY changed FINAL)
    Q_PROPERTY(QStringList nextValues READ nextValues NOTIFY changed FINAL)
    Q_PROPERTY(bool resumed READ resumed NOTIFY changed FINAL) // a draft of an earlier time goes on
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)
    Q_PROPERTY(QString blocked READ blocked NOTIFY changed FINAL) // why no trap can be set up at all
    Q_PROPERTY(QString keptTrap READ keptTrap NOTIFY changed FINAL)
    Q_PROPERTY(QString keptSite READ keptSite NOTIFY changed FINAL)

public:
    // subject  empty; or a site's id, bare or behind "site/"; or "replace/" and the id of an earlier trap at
    //          the same spot
    SetupViewModel(
        Session& session, DeviceSettings& settings, const QString& subject, QObject* parent = nullptr);

    [[nodiscard]] SetupSite* site() { return &m_site; }
    [[nodiscard]] PlaceViewModel* place() { return &m_place; }
    [[nodiscard]] SetupAround* around() { return &m_around; }
    [[nodiscard]] SetupTrap* trap() { return &m_trap; }
    [[nodiscard]] SetupStake* stake() { return &m_stake; }
    [[nodiscard]] QString page() const;
    [[nodiscard]] bool atStart() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString nextText() const;
    [[nodiscard]] QString photoSource() const;
    [[nodiscard]] QString remarkError() const;
    [[nodiscard]] QString lateness() const;
    [[nodiscard]] QString stillOpen() const;
    [[nodiscard]] QStringList nextLabels() const;
    [[nodiscard]] QStringList nextValues() const;
    [[nodiscard]] bool resumed() const { return m_resumed; }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] QString blocked() const;
    [[nodiscard]] QString keptTrap() const { return idText(m_keptTrap); }
    [[nodiscard]] QString keptSite() const { return idText(m_keptSite); }

    // Goes on when the page's entries may stand: the lure and the strip are then in. Keeps the trap on the
    // last page.
    Q_INVOKABLE void goOn();
    Q_INVOKABLE void leaveOut(); // goes on without the lure, or without the strip
    Q_INVOKABLE void goBack();
    Q_INVOKABLE void keepAnyway(); // the answer to asked()
    Q_INVOKABLE void choosePhoto(const QUrl& file); // copies it beside the store at once
    Q_INVOKABLE void dropPhoto();
    Q_INVOKABLE void startOver(); // forgets the draft, then startedOver()

Q_SIGNALS:
    void pageChanged();
    void edited();
    void changed();
    void asked(const QString& title, const QString& text);
    void startedOver();

private:
    enum class Page { Field, Yes, Place, Around, Trap, Handling, Lure, Strip, Stake, Last, Kept };

    [[nodiscard]] bool wants(Page page) const;
    [[nodiscard]] Page firstPage() const;
    [[nodiscard]] Page after(Page page) const;
    [[nodiscard]] bool pass(Page page);
    void setPage(Page page);
    void measureWhereWanted();
    void takeEdit();
    void refresh();
    void takeFacts(const SetupFacts& facts);
    void takeSubject();
    void loadDraft();
    void saveDraft();
    [[nodiscard]] domain::LocalDay day() const;
    [[nodiscard]] domain::Trap soFar() const;
    [[nodiscard]] SetupOutlook outlook() const;
    void keep();

    DeviceSettings& m_settings;
    QString m_subject;
    QString m_draftKey;
    domain::Uuid m_wantedSite;
    domain::Uuid m_replaces;
    SetupFacts m_facts;
    SetupSite m_site;
    PlaceViewModel m_place;
    SetupAround m_around;
    SetupTrap m_trap;
    SetupStake m_stake;
    Page m_page = Page::Field;
    QString m_remark;
    QString m_setDay;
    QString m_photo;
    domain::Uuid m_keptTrap;
    domain::Uuid m_keptSite;
    bool m_resumed = false;
    bool m_busy = false;
    bool m_leavingOut = false;
    bool m_quiet = false; // entries change without a person's doing
};

} // namespace duskrow::app
