// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "app/visit/visit_entry.h"

namespace duskrow::app {

// The counted parts of a heavy catch, as they are being typed.
class CatchParts : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by HeavyCatchViewModel")

public:
    enum Role { CountedKnown = Qt::UserRole, Counted, AmountKnown, Amount };

    static constexpr int most = 8; // as many as fit into the record, and more than anybody counts

    explicit CatchParts(VisitEntry& entry);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    Q_INVOKABLE void setCounted(int row, double moths);
    Q_INVOKABLE void clearCounted(int row);
    Q_INVOKABLE void setAmount(int row, double amount); // in millilitres or grams
    Q_INVOKABLE void clearAmount(int row);
    Q_INVOKABLE void remove(int row);
    void add();

private:
    [[nodiscard]] const std::vector<HeavyCatchDraft::Part>& parts() const;
    void edit(int row, const std::function<void(HeavyCatchDraft::Part&)>& act);
    void follow();

    VisitEntry& m_entry;
    int m_rows = 0;
};

} // namespace duskrow::app
