// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace duskrow::app {

// One stop of the round as the list shows it.
struct RoundRow {
    QString key;
    QString title;
    QString line; // what is due
    QString way = {}; // how far it is, and where from
    QString route;
    QString subject;
    QUrl map = {}; // for the phone's own map; empty without a place
    bool isInfested = false;
};

// The stops of the round in their order.
class RoundListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by RoundViewModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    using QAbstractListModel::QAbstractListModel;

    // Rows that stay, and one that was moved, keep what is focused in them.
    void show(std::vector<RoundRow> rows);
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void countChanged();

private:
    bool moveOne(const std::vector<RoundRow>& wanted);

    std::vector<RoundRow> m_rows;
};

} // namespace duskrow::app
