// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"
#include "app/visit/visit_entry.h"

namespace duskrow::app {

// How the trap stands: its height over the crop, and whether it worked.
class VisitTrapViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")
    Q_PROPERTY(bool entranceKnown READ entranceKnown NOTIFY changed FINAL)
    Q_PROPERTY(bool canopyKnown READ canopyKnown NOTIFY changed FINAL) // now or at an earlier visit
    Q_PROPERTY(int entranceMm READ entranceMm NOTIFY changed FINAL)
    Q_PROPERTY(int canopyMm READ canopyMm NOTIFY changed FINAL)
    Q_PROPERTY(double entranceCm READ entranceCm NOTIFY changed FINAL)
    Q_PROPERTY(double canopyCm READ canopyCm NOTIFY changed FINAL)
    Q_PROPERTY(bool canopyMeasured READ canopyMeasured NOTIFY changed FINAL) // at this visit
    Q_PROPERTY(QString canopyLast READ canopyLast NOTIFY changed FINAL) // "74 cm on 30 Jun"
    Q_PROPERTY(QString stillWords READ stillWords NOTIFY changed FINAL) // "Still 74 cm"
    Q_PROPERTY(QString stage READ stage NOTIFY changed FINAL) // for the picture
    Q_PROPERTY(QString trapShape READ trapShape CONSTANT FINAL) // of the pictures
    Q_PROPERTY(QString entranceWords READ entranceWords NOTIFY changed FINAL)
    Q_PROPERTY(QString canopyWords READ canopyWords NOTIFY changed FINAL)
    Q_PROPERTY(QString clearance READ clearance NOTIFY changed FINAL)
    Q_PROPERTY(QString description READ description NOTIFY changed FINAL)
    Q_PROPERTY(QString advice READ advice NOTIFY changed FINAL) // growth, date reached, raise
    Q_PROPERTY(bool raiseNow READ raiseNow NOTIFY changed FINAL)
    Q_PROPERTY(QString raiseWords READ raiseWords NOTIFY changed FINAL) // "Raised to 120 cm"
    Q_PROPERTY(bool heightsAsked READ heightsAsked NOTIFY changed FINAL)
    Q_PROPERTY(bool floweringAsked READ floweringAsked NOTIFY changed FINAL)
    Q_PROPERTY(bool floweringOver READ floweringOver WRITE setFloweringOver NOTIFY changed FINAL)
    Q_PROPERTY(QString state READ state WRITE setState NOTIFY changed FINAL)
    Q_PROPERTY(QStringList stateKeys READ stateKeys CONSTANT FINAL)
    Q_PROPERTY(QStringList stateNames READ stateNames CONSTANT FINAL)
    Q_PROPERTY(QString atLeastWords READ atLeastWords NOTIFY changed FINAL)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)

public:
    explicit VisitTrapViewModel(VisitEntry& entry);

    [[nodiscard]] bool entranceKnown() const { return entrance().has_value(); }
    [[nodiscard]] bool canopyKnown() const { return canopy().has_value(); }
    [[nodiscard]] int entranceMm() const;
    [[nodiscard]] int canopyMm() const;
    [[nodiscard]] double entranceCm() const { return entranceMm() / 10.0; }
    [[nodiscard]] double canopyCm() const { return canopyMm() / 10.0; }
    [[nodiscard]] bool canopyMeasured() const { return m_entry.visit().canopy.has_value(); }
    [[nodiscard]] QString canopyLast() const;
    [[nodiscard]] QString stillWords() const;
    [[nodiscard]] QString stage() const;
    [[nodiscard]] QString trapShape() const;
    [[nodiscard]] QString entranceWords() const;
    [[nodiscard]] QString canopyWords() const;
    [[nodiscard]] QString clearance() const;
    [[nodiscard]] QString description() const;
    [[nodiscard]] QString advice() const;
    [[nodiscard]] bool raiseNow() const { return suggestion().has_value(); }
    [[nodiscard]] QString raiseWords() const;
    [[nodiscard]] bool heightsAsked() const;
    [[nodiscard]] bool floweringAsked() const;
    [[nodiscard]] bool floweringOver() const { return m_entry.visit().floweringOver == true; }
    void setFloweringOver(bool over);
    [[nodiscard]] QString state() const;
    void setState(const QString& state);
    [[nodiscard]] static QStringList stateKeys();
    [[nodiscard]] static QStringList stateNames();
    [[nodiscard]] QString atLeastWords() const;
    [[nodiscard]] bool canUndo() const { return m_entry.draft().canUndo(); }

    // Heights in centimetres. An untouched height is not an observation and is not kept.
    Q_INVOKABLE void setEntrance(double cm);
    Q_INVOKABLE void setCanopy(double cm);
    Q_INVOKABLE void clearCanopy();
    Q_INVOKABLE void stillAsBefore();
    Q_INVOKABLE void raise();
    Q_INVOKABLE void undo() { m_entry.undo(); }

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] std::optional<domain::Millimetres> entrance() const;
    [[nodiscard]] std::optional<domain::Millimetres> canopy() const;
    [[nodiscard]] std::optional<domain::CanopyHeight> lastCanopy() const;
    // Of earlier visits and this one.
    [[nodiscard]] std::vector<domain::CanopyHeight> heights() const;
    [[nodiscard]] std::optional<domain::RaiseSuggestion> suggestion() const;
    [[nodiscard]] domain::Millimetres floweringFrom() const;
    [[nodiscard]] QString growthWords() const;

    VisitEntry& m_entry;
};

} // namespace duskrow::app
