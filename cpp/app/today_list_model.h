// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace duskrow::app {

// One stop as the list shows it.
struct TodayRow {
    QString trap;
    QString title;
    QString line; // everything due, in one line
    QString right; // how far, or when
    QString spokenRight; // the same in words, for a reader that cannot speak an arrow
    QString reasons; // a line each
    QString firstReason; // of what comes first, for the stop that stands large
    QString alsoLine; // of the rest
    QString alsoReasons;
    QString actText; // what one does there
    QString actRoute;
    bool isDue = false;
};

// The stops of one part of the day's list.
class TodayListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by TodayViewModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    using QAbstractListModel::QAbstractListModel;

    // Rows that are the same as before keep their places on the screen.
    void show(std::vector<TodayRow> rows);
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void countChanged();

private:
    std::vector<TodayRow> m_rows;
};

} // namespace duskrow::app
