// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include "app/view_model.h"
#include "domain/records/walk.h"

namespace duskrow::app {

// Begins a scouting walk: which field, and at which crop stage.
class WalkStartViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString site MEMBER m_site NOTIFY edited FINAL) // its id; empty for a field not listed
    Q_PROPERTY(QString name MEMBER m_name NOTIFY edited FINAL) // of a field not listed
    Q_PROPERTY(QString search MEMBER m_search NOTIFY edited FINAL)
    Q_PROPERTY(QString stage MEMBER m_stage NOTIFY edited FINAL) // its code; empty until said
    Q_PROPERTY(bool drySeason MEMBER m_drySeason NOTIFY edited FINAL) // a note, for the decision to ask about
    Q_PROPERTY(bool hasSites READ hasSites CONSTANT FINAL)
    Q_PROPERTY(QStringList siteKeys READ siteKeys NOTIFY edited FINAL) // the first few that fit the search
    Q_PROPERTY(QStringList siteNames READ siteNames NOTIFY edited FINAL)
    Q_PROPERTY(QString moreSites READ moreSites NOTIFY edited FINAL)
    Q_PROPERTY(QString scale READ scale CONSTANT FINAL) // "BBCH scale of oilseed rape"
    Q_PROPERTY(QStringList stageKeys READ stageKeys CONSTANT FINAL)
    Q_PROPERTY(QStringList stageNames READ stageNames CONSTANT FINAL)
    Q_PROPERTY(QString stageLine READ stageLine NOTIFY edited FINAL) // whether it is the time to look
    Q_PROPERTY(QString frameLine READ frameLine CONSTANT FINAL) // "A quarter of a square metre, 50 x 50 cm"
    Q_PROPERTY(bool canBegin READ canBegin NOTIFY edited FINAL)
    Q_PROPERTY(QString goOnWith READ goOnWith NOTIFY edited FINAL) // an open walk in this field; its id
    Q_PROPERTY(QString goOnLine READ goOnLine NOTIFY edited FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    // subject  empty; or "site/" and a field's id; or the id of a trap that stands in it
    WalkStartViewModel(Session& session, const QString& subject, QObject* parent = nullptr);

    [[nodiscard]] bool hasSites() const { return !m_sites.empty(); }
    [[nodiscard]] QStringList siteKeys() const;
    [[nodiscard]] QStringList siteNames() const;
    [[nodiscard]] QString moreSites() const;
    [[nodiscard]] QString scale() const;
    [[nodiscard]] QStringList stageKeys() const;
    [[nodiscard]] QStringList stageNames() const;
    [[nodiscard]] QString stageLine() const;
    [[nodiscard]] QString frameLine() const;
    [[nodiscard]] bool canBegin() const;
    [[nodiscard]] QString goOnWith() const;
    [[nodiscard]] QString goOnLine() const;
    [[nodiscard]] bool busy() const { return m_busy; }

    // Keeps the walk, and the field where it is new; then began().
    Q_INVOKABLE void begin();

Q_SIGNALS:
    void edited();
    void busyChanged();
    void began(const QString& walk);

private:
    void read(const QString& subject);
    [[nodiscard]] std::vector<const domain::Site*> fitting() const;
    [[nodiscard]] const domain::ProtocolCrop* crop() const;
    [[nodiscard]] const domain::Walk* openWalk() const;

    std::vector<domain::Site> m_sites; // mine first, then by name
    std::vector<domain::Walk> m_open; // walks of this season that are not finished, newest first
    const domain::Protocol* m_protocol = nullptr;
    QString m_site;
    QString m_name;
    QString m_search;
    QString m_stage;
    bool m_drySeason = false;
    bool m_busy = false;
};

} // namespace duskrow::app
