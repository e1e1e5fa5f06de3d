// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace duskrow::app {

// One line of a list as a screen shows it.
struct Row {
    QString key = {}; // of the record it is about
    QString title = {};
    QString besides = {};
    QString detail = {};
    QStringList flags = {}; // what is particular about it, a line each
    QString route = {}; // where a touch leads; empty for nowhere
    QString subject = {};
    bool isStruck = false; // withdrawn: still listed, not counted

    bool operator==(const Row&) const = default;
};

// Rows that a view model made, for a list of a screen.
class RowList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    using QAbstractListModel::QAbstractListModel;

    // The same rows again change nothing: what somebody is about to touch is not made anew.
    void show(std::vector<Row> rows);
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void countChanged();

private:
    std::vector<Row> m_rows;
};

} // namespace duskrow::app
