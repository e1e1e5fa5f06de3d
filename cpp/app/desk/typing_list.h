// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

#include "app/desk/typing_row.h"

namespace duskrow::app {

// The rows that counts are typed into.
class TypingList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<TypingRow> rows);
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] bool has(int row) const { return row >= 0 && row < count(); }
    [[nodiscard]] TypingRow& at(int row) { return m_rows[static_cast<std::size_t>(row)]; }
    [[nodiscard]] int rowOf(const domain::Uuid& trap) const; // -1 when it is not there
    void tellOf(int row); // it was changed

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void countChanged();

private:
    std::vector<TypingRow> m_rows;
};

} // namespace duskrow::app
