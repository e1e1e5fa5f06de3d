// SPDX-License-Identifier: MIT
#pragma once

#include <QtQml/qqmlregistration.h>

#include "app/setup/setup_part.h"

namespace duskrow::app {

// The field of a trap and its landowner's yes: a new one, or one of this season.
class SetupSite : public SetupPart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("part of a set-up")
    Q_PROPERTY(bool known MEMBER m_known NOTIFY edited FINAL) // one of this season
    Q_PROPERTY(QString site MEMBER m_site NOTIFY edited FINAL) // its id
    Q_PROPERTY(QString search MEMBER m_search NOTIFY edited FINAL)
    Q_PROPERTY(QString name MEMBER m_name NOTIFY edited FINAL)
    Q_PROPERTY(QString field MEMBER m_field NOTIFY edited FINAL)
    Q_PROPERTY(QString crop MEMBER m_crop NOTIFY edited FINAL)
    Q_PROPERTY(QString district MEMBER m_district NOTIFY edited FINAL)
    Q_PROPERTY(QString seededDay MEMBER m_seededDay NOTIFY edited FINAL)
    Q_PROPERTY(QString landowner MEMBER m_landowner NOTIFY edited FINAL)
    Q_PROPERTY(QString agreedDay MEMBER m_agreedDay NOTIFY edited FINAL)
    Q_PROPERTY(QString gate MEMBER m_gate NOTIFY edited FINAL)
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(bool hasSites READ hasSites NOTIFY changed FINAL)
    Q_PROPERTY(QStringList siteKeys READ siteKeys NOTIFY changed FINAL) // the first few that fit the search
    Q_PROPERTY(QStringList siteNames READ siteNames NOTIFY changed FINAL)
    Q_PROPERTY(QStringList siteDetails READ siteDetails NOTIFY changed FINAL)
    Q_PROPERTY(QString moreSites READ moreSites NOTIFY changed FINAL)
    Q_PROPERTY(QStringList cropKeys READ cropKeys NOTIFY changed FINAL)
    Q_PROPERTY(QStringList cropLabels READ cropLabels NOTIFY changed FINAL)
    Q_PROPERTY(QStringList districtKeys READ districtKeys NOTIFY changed FINAL)
    Q_PROPERTY(QStringList districtLabels READ districtLabels NOTIFY changed FINAL)
    Q_PROPERTY(QString nameError READ nameError NOTIFY changed FINAL)
    Q_PROPERTY(QString fieldError READ fieldError NOTIFY changed FINAL)
    Q_PROPERTY(QString siteError READ siteError NOTIFY changed FINAL)
    Q_PROPERTY(QString landownerError READ landownerError NOTIFY changed FINAL)
    Q_PROPERTY(QString agreedError READ agreedError NOTIFY changed FINAL)
    Q_PROPERTY(QString gateError READ gateError NOTIFY changed FINAL)

public:
    SetupSite(Session& session, const SetupFacts& facts, QObject* parent);

    // Words for the screen.
    [[nodiscard]] bool hasSites() const { return !facts().sites.empty(); }
    [[nodiscard]] QStringList siteKeys() const;
    [[nodiscard]] QStringList siteNames() const;
    [[nodiscard]] QStringList siteDetails() const;
    [[nodiscard]] QString moreSites() const;
    [[nodiscard]] QStringList cropKeys() const;
    [[nodiscard]] QStringList cropLabels() const;
    [[nodiscard]] QStringList districtKeys() const;
    [[nodiscard]] QStringList districtLabels() const;
    [[nodiscard]] QString nameError() const;
    [[nodiscard]] QString fieldError() const;
    [[nodiscard]] QString siteError() const;
    [[nodiscard]] QString landownerError() const;
    [[nodiscard]] QString agreedError() const;
    [[nodiscard]] QString gateError() const;
    [[nodiscard]] QString title() const; // the field's name as entered or chosen

    Q_INVOKABLE void ownLand(); // I am the landowner myself

    void preset(); // what the season's facts suggest, where nothing was entered
    // Whether the step may be left; shows what is wrong from now on.
    bool passField();
    bool passYes();
    [[nodiscard]] bool hasYes() const { return !m_landowner.trimmed().isEmpty(); }
    [[nodiscard]] bool wantsYes() const; // nobody has recorded it yet

    void choose(const domain::Uuid& site);
    [[nodiscard]] const domain::Site* chosen() const;

    // The edit that makes the site, or adds the yes to one of this season; none when there is nothing to
    // keep.
    [[nodiscard]] std::optional<domain::Edit> edit(const domain::Uuid& newId) const;

private:
    void fillYes(domain::Site& site) const;
    [[nodiscard]] std::vector<const domain::Site*> fitting() const;
    [[nodiscard]] std::vector<const domain::ProtocolCrop*> crops() const;

    bool m_known = false;
    QString m_site;
    QString m_search;
    QString m_name;
    QString m_field;
    QString m_crop;
    QString m_district;
    QString m_seededDay;
    QString m_landowner;
    QString m_agreedDay;
    QString m_gate;
    bool m_fieldAsked = false;
    bool m_yesAsked = false;
};

} // namespace duskrow::app
