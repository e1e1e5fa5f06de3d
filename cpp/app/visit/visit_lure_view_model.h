// SPDX-License-Identifier: MIT
#pragma once

#include "app/device_settings.h"
#include "app/view_model.h"
#include "app/visit/visit_entry.h"

namespace duskrow::app {

// Lure and killing strip: there, gone or changed; and whether the bucket was emptied and the field sprayed.
class VisitLureViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")
    Q_PROPERTY(bool hasStrip READ hasStrip CONSTANT FINAL)
    Q_PROPERTY(QString trapShape READ trapShape CONSTANT FINAL) // of the pictures
    Q_PROPERTY(bool detailed READ detailed WRITE setDetailed NOTIFY changed FINAL) // not simply "yes"
    Q_PROPERTY(bool answeredYes READ answeredYes NOTIFY changed FINAL)
    Q_PROPERTY(bool lureThere READ lureThere WRITE setLureThere NOTIFY changed FINAL)
    Q_PROPERTY(bool lureChanged READ lureChanged WRITE setLureChanged NOTIFY changed FINAL)
    Q_PROPERTY(bool handlingNeeded READ handlingNeeded NOTIFY changed FINAL) // once a day
    Q_PROPERTY(QStringList handling READ handling CONSTANT FINAL)
    Q_PROPERTY(QString lureLot READ lureLot WRITE setLureLot NOTIFY changed FINAL)
    Q_PROPERTY(QString lureExpiry READ lureExpiry WRITE setLureExpiry NOTIFY changed FINAL)
    Q_PROPERTY(QString expiredWords READ expiredWords NOTIFY changed FINAL)
    Q_PROPERTY(bool stripThere READ stripThere WRITE setStripThere NOTIFY changed FINAL)
    Q_PROPERTY(bool stripChanged READ stripChanged WRITE setStripChanged NOTIFY changed FINAL)
    Q_PROPERTY(QStringList stripCautions READ stripCautions CONSTANT FINAL)
    Q_PROPERTY(bool mothsAlive READ mothsAlive WRITE setMothsAlive NOTIFY changed FINAL)
    Q_PROPERTY(bool emptied READ emptied WRITE setEmptied NOTIFY changed FINAL)
    Q_PROPERTY(QString emptiedWords READ emptiedWords NOTIFY changed FINAL)
    Q_PROPERTY(bool sprayed READ sprayed NOTIFY changed FINAL)
    Q_PROPERTY(bool saidNotSprayed READ saidNotSprayed NOTIFY changed FINAL)
    Q_PROPERTY(QString sprayedWhat READ sprayedWhat WRITE setSprayedWhat NOTIFY changed FINAL)
    Q_PROPERTY(QString sprayedDay READ sprayedDay WRITE setSprayedDay NOTIFY changed FINAL)
    Q_PROPERTY(bool reentryKnown READ reentryKnown NOTIFY changed FINAL)
    Q_PROPERTY(double reentryHours READ reentryHours NOTIFY changed FINAL)
    Q_PROPERTY(QString sprayedWords READ sprayedWords NOTIFY changed FINAL) // one line on it
    Q_PROPERTY(QString reentry READ reentry NOTIFY changed FINAL) // "Stay out until ..."
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)

public:
    VisitLureViewModel(VisitEntry& entry, DeviceSettings& settings);

    [[nodiscard]] bool hasStrip() const { return m_entry.book().hasStrip(); }
    [[nodiscard]] QString trapShape() const;
    [[nodiscard]] bool detailed() const { return m_entry.position().hasLureDetails; }
    void setDetailed(bool detailed);
    [[nodiscard]] bool answeredYes() const;
    [[nodiscard]] bool lureThere() const { return visit().lureThere.value_or(true); }
    void setLureThere(bool there);
    [[nodiscard]] bool lureChanged() const { return records().lure.what.has_value(); }
    void setLureChanged(bool changed);
    [[nodiscard]] bool handlingNeeded() const;
    [[nodiscard]] QStringList handling() const;
    [[nodiscard]] QString lureLot() const { return QString::fromStdString(records().lure.lureLot); }
    void setLureLot(const QString& lot);
    [[nodiscard]] QString lureExpiry() const;
    void setLureExpiry(const QString& day);
    [[nodiscard]] QString expiredWords() const;
    [[nodiscard]] bool stripThere() const { return visit().stripThere.value_or(true); }
    void setStripThere(bool there);
    [[nodiscard]] bool stripChanged() const { return records().strip.what.has_value(); }
    void setStripChanged(bool changed);
    [[nodiscard]] QStringList stripCautions() const;
    [[nodiscard]] bool mothsAlive() const { return visit().mothsAlive.value_or(false); }
    void setMothsAlive(bool alive);
    [[nodiscard]] bool emptied() const { return visit().emptied.value_or(false); }
    void setEmptied(bool emptied);
    [[nodiscard]] QString emptiedWords() const;
    [[nodiscard]] bool sprayed() const { return visit().sprayed == true; }
    [[nodiscard]] bool saidNotSprayed() const { return visit().sprayed == false; }
    [[nodiscard]] QString sprayedWhat() const { return QString::fromStdString(visit().sprayedWhat); }
    void setSprayedWhat(const QString& what);
    [[nodiscard]] QString sprayedDay() const;
    void setSprayedDay(const QString& day);
    [[nodiscard]] bool reentryKnown() const { return visit().reentryHours.has_value(); }
    [[nodiscard]] double reentryHours() const;
    [[nodiscard]] QString sprayedWords() const;
    [[nodiscard]] QString reentry() const;
    [[nodiscard]] QString today() const;
    [[nodiscard]] bool canUndo() const { return m_entry.draft().canUndo(); }

    // The one tap: lure and strip there, nothing alive.
    Q_INVOKABLE void allThere();
    Q_INVOKABLE void acknowledgeHandling();
    Q_INVOKABLE void setSprayed(bool sprayed);
    Q_INVOKABLE void setReentry(double hours);
    Q_INVOKABLE void clearReentry();
    Q_INVOKABLE void undo() { m_entry.undo(); }

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const domain::Visit& visit() const { return m_entry.visit(); }
    [[nodiscard]] const VisitRecords& records() const { return m_entry.draft().records(); }

    VisitEntry& m_entry;
    DeviceSettings& m_settings;
};

} // namespace duskrow::app
