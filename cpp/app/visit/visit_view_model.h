// SPDX-License-Identifier: MIT
#pragma once

#include "app/device_settings.h"
#include "app/view_model.h"
#include "app/visit/heavy_catch_view_model.h"
#include "app/visit/moth_guide.h"
#include "app/visit/visit_count_view_model.h"
#include "app/visit/visit_done_view_model.h"
#include "app/visit/visit_lure_view_model.h"
#include "app/visit/visit_trap_view_model.h"
#include "app/visit/which_trap_view_model.h"

namespace duskrow::app {

// The weekly visit: which trap, its steps, and keeping it.
class VisitViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(
        QString step READ step NOTIFY changed FINAL) // "which", "count", "trap", "lure", "done", "kept"
    Q_PROPERTY(QString trapId READ trapId CONSTANT FINAL)
    Q_PROPERTY(QString visitId READ visitId CONSTANT FINAL)
    Q_PROPERTY(QString title READ title CONSTANT FINAL)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed FINAL)
    Q_PROPERTY(bool isCorrection READ isCorrection CONSTANT FINAL)
    Q_PROPERTY(bool wasResumed READ wasResumed NOTIFY changed FINAL)
    Q_PROPERTY(bool trapSeen READ trapSeen NOTIFY changed FINAL) // false when nobody could get to it
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)
    Q_PROPERTY(QString keptWords READ keptWords NOTIFY changed FINAL)
    Q_PROPERTY(QString bagWords READ bagWords NOTIFY changed FINAL)
    Q_PROPERTY(QString nextWords READ nextWords NOTIFY changed FINAL)
    Q_PROPERTY(duskrow::app::WhichTrapViewModel* which READ which CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::VisitCountViewModel* count READ count CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::HeavyCatchViewModel* heavy READ heavy CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::VisitTrapViewModel* trap READ trap CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::VisitLureViewModel* lure READ lure CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::VisitDoneViewModel* done READ done CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::MothGuide* guide READ guide CONSTANT FINAL)

public:
    // subject  a trap's id, "edit:" and a visit's id, or anything else for the trap stood at
    VisitViewModel(Session& session, DeviceSettings& settings, const QString& subject);

    [[nodiscard]] QString step() const;
    [[nodiscard]] QString trapId() const;
    [[nodiscard]] QString visitId() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] bool isCorrection() const { return m_entry && m_entry->isCorrection(); }
    [[nodiscard]] bool wasResumed() const;
    [[nodiscard]] bool trapSeen() const;
    [[nodiscard]] bool canUndo() const { return m_entry && m_entry->draft().canUndo(); }
    [[nodiscard]] bool busy() const { return m_isBusy; }
    [[nodiscard]] QString keptWords() const { return m_keptWords; }
    [[nodiscard]] QString bagWords() const { return m_bagWords; }
    [[nodiscard]] QString nextWords() const { return m_nextWords; }
    [[nodiscard]] WhichTrapViewModel* which() const { return m_which; }
    [[nodiscard]] VisitCountViewModel* count() const { return m_count.get(); }
    [[nodiscard]] HeavyCatchViewModel* heavy() const { return m_heavy.get(); }
    [[nodiscard]] VisitTrapViewModel* trap() const { return m_trap.get(); }
    [[nodiscard]] VisitLureViewModel* lure() const { return m_lure.get(); }
    [[nodiscard]] VisitDoneViewModel* done() const { return m_done.get(); }
    [[nodiscard]] MothGuide* guide() const { return m_guide; }

    // The answer to which trap it is, when it is this one.
    Q_INVOKABLE void tellTrap();
    Q_INVOKABLE void next();
    // False when there is no step before this one.
    Q_INVOKABLE bool previous();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void startOver();
    // Keeps the visit in one commit and then stands at "kept". Without an answer to a question it is kept all
    // the same: who asks again is the screen.
    Q_INVOKABLE void keep();

Q_SIGNALS:
    void changed();

private:
    void open(const domain::Uuid& trap, const std::optional<domain::Visit>& before, DeviceSettings& settings);
    void openCorrection(const domain::Uuid& visit, DeviceSettings& settings);
    [[nodiscard]] QStringList steps() const;
    void go(const QString& step);
    void wordsOfKept();
    void kept();

    WhichTrapViewModel* m_which;
    MothGuide* m_guide = nullptr;
    std::unique_ptr<VisitEntry> m_entry;
    std::unique_ptr<VisitCountViewModel> m_count;
    std::unique_ptr<HeavyCatchViewModel> m_heavy;
    std::unique_ptr<VisitTrapViewModel> m_trap;
    std::unique_ptr<VisitLureViewModel> m_lure;
    std::unique_ptr<VisitDoneViewModel> m_done;
    bool m_isBusy = false;
    bool m_isKept = false;
    QString m_keptWords;
    QString m_bagWords;
    QString m_nextWords;
};

} // namespace duskrow::app
