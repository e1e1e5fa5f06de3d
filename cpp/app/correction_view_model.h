// SPDX-License-Identifier: MIT
#pragma once

#include "app/correction_entries.h"
#include "app/view_model.h"
#include "domain/log/fold.h"

namespace duskrow::app {

// Sets single fields of one record right, whatever its kind. What stood there before stays in the history.
class CorrectionViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString title READ title CONSTANT FINAL)
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(bool isFound READ isFound CONSTANT FINAL)
    Q_PROPERTY(int changes READ changes NOTIFY changesChanged FINAL) // fields that differ from what stands
    Q_PROPERTY(duskrow::app::CorrectionEntries* entries READ entries CONSTANT FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    // subject  "trap/<id>", and so for every kind of record
    CorrectionViewModel(Session& session, const QString& subject, QObject* parent = nullptr);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString today() const;
    [[nodiscard]] bool isFound() const { return m_isFound; }
    [[nodiscard]] int changes() const { return static_cast<int>(m_entries.changed().size()); }
    [[nodiscard]] CorrectionEntries* entries() { return &m_entries; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void keep(); // then kept()
    Q_INVOKABLE void forget(); // what was typed

Q_SIGNALS:
    void changesChanged();
    void busyChanged();
    void kept();

private:
    void read();
    [[nodiscard]] CorrectionEntries::Choices choices(const domain::Folded& now);
    [[nodiscard]] QString draftKey() const;
    void saveDraft();

    std::string m_kind;
    domain::Uuid m_record;
    domain::Uuid m_site;
    CorrectionEntries m_entries;
    bool m_isFound = false;
    bool m_busy = false;
};

} // namespace duskrow::app
