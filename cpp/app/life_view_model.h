// SPDX-License-Identifier: MIT
#pragma once

#include "app/device_settings.h"
#include "app/life_form.h"
#include "app/row_list.h"

namespace duskrow::app {

// The life of one trap: what was done to it, how it was set up, and the acts that may follow.
class LifeViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString title READ title NOTIFY refreshed FINAL)
    Q_PROPERTY(QString trap READ trap CONSTANT FINAL)
    Q_PROPERTY(QString site READ site NOTIFY refreshed FINAL) // its id; empty where it is not known
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(bool isFound READ isFound NOTIFY refreshed FINAL)
    Q_PROPERTY(bool isRunning READ isRunning NOTIFY refreshed FINAL) // out in the field and not withdrawn
    Q_PROPERTY(bool isUnfinished READ isUnfinished NOTIFY refreshed FINAL) // ended, steps of closing are open
    Q_PROPERTY(QString ended READ ended NOTIFY refreshed FINAL) // why and when; empty while it runs
    Q_PROPERTY(QString lent READ lent NOTIFY refreshed FINAL) // to whom, until when; empty when it is not
    Q_PROPERTY(bool hasStrip READ hasStrip NOTIFY refreshed FINAL)
    Q_PROPERTY(QString trapShape READ trapShape NOTIFY refreshed FINAL) // of the pictures
    Q_PROPERTY(QStringList handling READ handling NOTIFY refreshed FINAL) // of the lure, before it is opened
    Q_PROPERTY(QStringList stripCautions READ stripCautions NOTIFY refreshed FINAL)
    Q_PROPERTY(bool needsReminder READ needsReminder NOTIFY formChanged FINAL) // of handling, once a day
    Q_PROPERTY(bool needsLastCount READ needsLastCount NOTIFY refreshed FINAL)
    Q_PROPERTY(QString clearance READ clearance NOTIFY formChanged FINAL)
    Q_PROPERTY(QString entranceWords READ entranceWords NOTIFY formChanged FINAL)
    Q_PROPERTY(QString canopyWords READ canopyWords NOTIFY formChanged FINAL)
    Q_PROPERTY(QString raiseAdvice READ raiseAdvice NOTIFY formChanged FINAL)
    Q_PROPERTY(QString moved READ moved NOTIFY formChanged FINAL) // "120 m from where it stood"
    Q_PROPERTY(duskrow::app::LifeForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* timeline READ timeline CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* facts READ facts CONSTANT FINAL)
    Q_PROPERTY(QStringList memberKeys READ memberKeys NOTIFY refreshed FINAL) // who a trap may be lent to
    Q_PROPERTY(QStringList memberNames READ memberNames NOTIFY refreshed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    // subject  a trap's id; with "end:" before it that form opens at once; "edit:" and the id of a service or
    //          loan corrects that one
    LifeViewModel(
        Session& session, DeviceSettings& settings, const QString& subject, QObject* parent = nullptr);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString trap() const;
    [[nodiscard]] QString site() const;
    [[nodiscard]] QString today() const;
    [[nodiscard]] bool isFound() const { return m_isFound; }
    [[nodiscard]] bool isRunning() const;
    [[nodiscard]] bool isUnfinished() const;
    [[nodiscard]] QString ended() const;
    [[nodiscard]] QString lent() const;
    [[nodiscard]] bool hasStrip() const;
    [[nodiscard]] QString trapShape() const;
    [[nodiscard]] QStringList handling() const;
    [[nodiscard]] QStringList stripCautions() const;
    [[nodiscard]] bool needsReminder() const;
    [[nodiscard]] bool needsLastCount() const;
    [[nodiscard]] QString clearance() const;
    [[nodiscard]] QString entranceWords() const;
    [[nodiscard]] QString canopyWords() const;
    [[nodiscard]] QString raiseAdvice() const;
    [[nodiscard]] QString moved() const;
    [[nodiscard]] LifeForm* form() { return &m_form; }
    [[nodiscard]] RowList* timeline() { return &m_timeline; }
    [[nodiscard]] RowList* facts() { return &m_facts; }
    [[nodiscard]] QStringList memberKeys() const { return m_memberKeys; }
    [[nodiscard]] QStringList memberNames() const { return m_memberNames; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void begin(const QString& act);
    Q_INVOKABLE void cancel();
    Q_INVOKABLE void acknowledgeHandling(); // of the lure; enough for this day
    Q_INVOKABLE void keep(); // what the form says; then finished()
    Q_INVOKABLE void replace(); // ends it with that reason; then replacementWanted()
    Q_INVOKABLE void takeBack(); // the loan ends today
    Q_INVOKABLE void letRunOn(); // the end was a mistake

Q_SIGNALS:
    void refreshed();
    void formChanged();
    void busyChanged();
    void finished();
    void replacementWanted(const QString& subject);

private:
    void openSubject(const QString& subject);
    void openEdit(const domain::Uuid& record);
    void refresh();
    void readMembers();
    void readDraft();
    void saveDraft();
    void keepEdits(std::vector<domain::Edit> edits, const std::function<void()>& then);
    [[nodiscard]] const domain::Loan* currentLoan() const;
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] std::optional<domain::Millimetres> canopyNow() const;

    DeviceSettings& m_settings;
    domain::Uuid m_trap;
    store::TrapRecords m_records;
    const domain::Protocol* m_protocol = nullptr;
    LifeForm m_form;
    RowList m_timeline;
    RowList m_facts;
    QStringList m_memberKeys;
    QStringList m_memberNames;
    bool m_isFound = false;
    bool m_busy = false;
};

} // namespace duskrow::app
