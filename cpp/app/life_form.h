// SPDX-License-Identifier: MIT
#pragma once

#include "app/place_view_model.h"
#include "app/view_model.h"
#include "store/trap_records.h"

namespace duskrow::app {

// The entries of one act on a trap, as typed: raising, lure, strip, moving, lending, ending.
class LifeForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by LifeViewModel")
    // raise, lure, strip, move, lend or end; empty while nothing is being done
    Q_PROPERTY(QString act MEMBER m_act NOTIFY edited FINAL)
    Q_PROPERTY(
        QString editing MEMBER m_editing NOTIFY edited FINAL) // the record corrected; empty for a new one
    Q_PROPERTY(QString day MEMBER m_day NOTIFY edited FINAL)
    Q_PROPERTY(int entranceCm MEMBER m_entranceCm NOTIFY edited FINAL)
    Q_PROPERTY(bool entranceKnown MEMBER m_entranceKnown NOTIFY edited FINAL)
    Q_PROPERTY(int canopyCm MEMBER m_canopyCm NOTIFY edited FINAL)
    Q_PROPERTY(bool canopyKnown MEMBER m_canopyKnown NOTIFY edited FINAL)
    Q_PROPERTY(QString lot MEMBER m_lot NOTIFY edited FINAL)
    Q_PROPERTY(QString expiry MEMBER m_expiry NOTIFY edited FINAL)
    Q_PROPERTY(bool handlingRead MEMBER m_handlingRead NOTIFY edited FINAL)
    Q_PROPERTY(QString borrower MEMBER m_borrower NOTIFY edited FINAL)
    Q_PROPERTY(QString member MEMBER m_member NOTIFY edited FINAL) // the borrower, if one of the programme
    Q_PROPERTY(QString until MEMBER m_until NOTIFY edited FINAL)
    Q_PROPERTY(QString reason MEMBER m_reason NOTIFY edited FINAL) // season_over or lost
    Q_PROPERTY(bool lureOut MEMBER m_lureOut NOTIFY edited FINAL)
    Q_PROPERTY(bool stripOut MEMBER m_stripOut NOTIFY edited FINAL)
    Q_PROPERTY(bool washed MEMBER m_washed NOTIFY edited FINAL)
    Q_PROPERTY(bool sparesFrozen MEMBER m_sparesFrozen NOTIFY edited FINAL)
    Q_PROPERTY(duskrow::app::PlaceViewModel* place READ place NOTIFY placeChanged FINAL)

public:
    LifeForm(place::PositionSource& source, const Clock& clock, QObject* parent);

    [[nodiscard]] const QString& act() const { return m_act; }
    [[nodiscard]] const QString& editing() const { return m_editing; }
    [[nodiscard]] bool isHandlingRead() const { return m_handlingRead; }
    [[nodiscard]] bool isCorrection() const { return !m_editing.isEmpty(); }
    [[nodiscard]] std::optional<domain::Millimetres> entrance() const;
    [[nodiscard]] PlaceViewModel* place() const { return m_place; }

    // Empties every entry, then fills those that this act starts from.
    void begin(const QString& act, domain::LocalDay day);
    void takeEntrance(std::optional<domain::Millimetres> entrance, std::optional<domain::Millimetres> canopy);
    void take(const domain::Service& service);
    void take(const domain::Loan& loan);
    void takeEnd(const domain::Trap& trap);

    // What the act comes to in the records.
    //
    // now    of the device; work on another day is put at the same hour of that day
    // newId  for a record that is not corrected but made
    // Errors  NotADay for a day that is none; Empty {field} where something must be said
    [[nodiscard]] domain::Result<std::vector<domain::Edit>> edits(
        const store::TrapRecords& records, const domain::Moment& now, const domain::Uuid& newId) const;

    [[nodiscard]] QJsonObject entries() const;
    void takeEntries(const QJsonObject& entries);

Q_SIGNALS:
    void edited();
    void placeChanged();

private:
    void freshPlace();
    [[nodiscard]] domain::Result<std::vector<domain::Edit>> serviceEdits(
        const store::TrapRecords& records, const domain::Moment& now, const domain::Uuid& newId) const;
    [[nodiscard]] domain::Result<std::vector<domain::Edit>> loanEdits(
        const store::TrapRecords& records, const domain::Uuid& newId) const;
    [[nodiscard]] domain::Result<std::vector<domain::Edit>> endEdits(const store::TrapRecords& records) const;
    [[nodiscard]] std::optional<domain::Error> fill(domain::Service& service) const;

    place::PositionSource& m_source;
    const Clock& m_clock;
    PlaceViewModel* m_place = nullptr; // a child; a fresh one for each act
    QString m_act;
    QString m_editing;
    QString m_day;
    int m_entranceCm = 0;
    bool m_entranceKnown = false;
    int m_canopyCm = 0;
    bool m_canopyKnown = false;
    QString m_lot;
    QString m_expiry;
    bool m_handlingRead = false;
    QString m_borrower;
    QString m_member;
    QString m_until;
    QString m_reason;
    bool m_lureOut = false;
    bool m_stripOut = false;
    bool m_washed = false;
    bool m_sparesFrozen = false;
};

} // namespace duskrow::app
