// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"
#include "app/visit/catch_parts.h"
#include "app/visit/visit_entry.h"
#include "domain/rules/heavy_catch.h"

namespace duskrow::app {

// A catch too large to count moth by moth, from counted parts of it. Amounts are in millilitres or grams.
class HeavyCatchViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")
    Q_PROPERTY(QString method READ method WRITE setMethod NOTIFY changed FINAL) // "volume" or "weight"
    Q_PROPERTY(QString unit READ unit NOTIFY changed FINAL)
    Q_PROPERTY(bool wholeKnown READ wholeKnown NOTIFY changed FINAL)
    Q_PROPERTY(double whole READ whole NOTIFY changed FINAL)
    Q_PROPERTY(duskrow::app::CatchParts* parts READ parts CONSTANT FINAL)
    Q_PROPERTY(bool canAddPart READ canAddPart NOTIFY changed FINAL)
    Q_PROPERTY(QString estimate READ estimate NOTIFY changed FINAL) // empty while something is missing
    Q_PROPERTY(QString shown READ shown NOTIFY changed FINAL) // the estimate alone: "982"
    Q_PROPERTY(QString range READ range NOTIFY changed FINAL)
    Q_PROPERTY(QString why READ why NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL) // why there is no estimate

public:
    explicit HeavyCatchViewModel(VisitEntry& entry);

    [[nodiscard]] QString method() const;
    void setMethod(const QString& method);
    [[nodiscard]] QString unit() const;
    [[nodiscard]] bool wholeKnown() const { return heavy().whole.has_value(); }
    [[nodiscard]] double whole() const;
    [[nodiscard]] CatchParts* parts() { return &m_parts; }
    [[nodiscard]] bool canAddPart() const;
    [[nodiscard]] QString estimate() const;
    [[nodiscard]] QString shown() const;
    [[nodiscard]] QString range() const;
    [[nodiscard]] QString why() const;
    [[nodiscard]] QString problem() const;

    Q_INVOKABLE void setWhole(double amount);
    Q_INVOKABLE void clearWhole();
    Q_INVOKABLE void addPart();
    // Writes the estimate, its range and the raw parts into the visit.
    Q_INVOKABLE bool use();

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const HeavyCatchDraft& heavy() const { return m_entry.position().heavy; }
    // Nothing while a number is missing.
    [[nodiscard]] std::optional<domain::Result<domain::HeavyCatch>> estimated() const;

    VisitEntry& m_entry;
    CatchParts m_parts;
};

} // namespace duskrow::app
