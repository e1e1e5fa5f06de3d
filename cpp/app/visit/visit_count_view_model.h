// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"
#include "app/visit/visit_entry.h"

namespace duskrow::app {

// The count of a visit: moths in three bins, bees, none at all, or could not count.
class VisitCountViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")
    Q_PROPERTY(QString bin READ bin WRITE setBin NOTIFY changed FINAL) // "pest", "not_it", "unsure", "bees"
    Q_PROPERTY(QStringList binCounts READ binCounts NOTIFY changed FINAL) // in that order
    Q_PROPERTY(QString shown READ shown NOTIFY changed FINAL)
    Q_PROPERTY(QString caption READ caption NOTIFY changed FINAL)
    Q_PROPERTY(QStringList lines READ lines NOTIFY changed FINAL)
    Q_PROPERTY(QString longInterval READ longInterval NOTIFY changed FINAL)
    Q_PROPERTY(QString oneMore READ oneMore NOTIFY changed FINAL) // what +1 means just now
    Q_PROPERTY(bool isCounted READ isCounted NOTIFY changed FINAL) // of the pest, zero included
    Q_PROPERTY(bool isUntouched READ isUntouched NOTIFY changed FINAL)
    Q_PROPERTY(bool isEstimate READ isEstimate NOTIFY changed FINAL)
    Q_PROPERTY(QString estimate READ estimate NOTIFY changed FINAL)
    Q_PROPERTY(QString zeroQuestion READ zeroQuestion NOTIFY changed FINAL)
    Q_PROPERTY(QString noCountReason READ noCountReason NOTIFY changed FINAL) // a code; empty when counted
    Q_PROPERTY(QString noCountWords READ noCountWords NOTIFY changed FINAL)
    Q_PROPERTY(QStringList reasonKeys READ reasonKeys CONSTANT FINAL)
    Q_PROPERTY(QStringList reasonNames READ reasonNames CONSTANT FINAL)
    Q_PROPERTY(bool canTakeAway READ canTakeAway NOTIFY changed FINAL)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution CONSTANT FINAL)

public:
    explicit VisitCountViewModel(VisitEntry& entry);

    [[nodiscard]] QString bin() const { return m_entry.position().bin; }
    void setBin(const QString& bin);
    [[nodiscard]] QStringList binCounts() const;
    [[nodiscard]] QString shown() const;
    [[nodiscard]] QString caption() const;
    [[nodiscard]] QStringList lines() const;
    [[nodiscard]] QString longInterval() const;
    [[nodiscard]] QString oneMore() const;
    [[nodiscard]] bool isCounted() const;
    [[nodiscard]] bool isUntouched() const;
    [[nodiscard]] bool isEstimate() const;
    [[nodiscard]] QString estimate() const;
    [[nodiscard]] QString zeroQuestion() const;
    [[nodiscard]] QString noCountReason() const;
    [[nodiscard]] QString noCountWords() const;
    [[nodiscard]] static QStringList reasonKeys();
    [[nodiscard]] static QStringList reasonNames();
    [[nodiscard]] bool canTakeAway() const;
    [[nodiscard]] bool canUndo() const { return m_entry.draft().canUndo(); }
    [[nodiscard]] QString caution() const;

    // Adds to the bin in hand. Taking the last one away leaves nothing counted: a zero is said, not fallen
    // to.
    Q_INVOKABLE void add(int by);
    // A typed number for the bin in hand. Too large a one is refused by `trouble`.
    Q_INVOKABLE void type(int number);
    Q_INVOKABLE void noneCaught();
    // Drops an estimate; nothing is counted then.
    Q_INVOKABLE void countEach() { put(std::nullopt); }
    Q_INVOKABLE void couldNotCount(const QString& reason);
    Q_INVOKABLE void countAfterAll();
    Q_INVOKABLE void undo();

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] std::optional<std::int64_t> held(const QString& bin) const;
    void put(std::optional<std::int64_t> number);

    VisitEntry& m_entry;
};

} // namespace duskrow::app
