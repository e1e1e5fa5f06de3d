// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "domain/rules/walk_result.h"

namespace duskrow::app {

// Thresholds around the user's own cost and price, cell by cell, with what the walk says of each.
class ThresholdGrid : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by DecisionViewModel")
    Q_PROPERTY(int columns READ columns NOTIFY changed FINAL)
    Q_PROPERTY(QStringList prices READ prices NOTIFY changed FINAL)
    Q_PROPERTY(QStringList costs READ costs NOTIFY changed FINAL)
    Q_PROPERTY(QString priceUnit READ priceUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString costUnit READ costUnit NOTIFY changed FINAL)

public:
    using QAbstractListModel::QAbstractListModel;

    using Verdicts = std::vector<std::vector<domain::FrameVerdict>>;

    // verdicts  one for each cell of the table; empty before a walk says anything
    void show(
        const domain::ThresholdTable& table, const Verdicts& verdicts, const domain::Threshold& threshold);
    void clear();

    [[nodiscard]] int columns() const { return static_cast<int>(m_prices.size()); }
    [[nodiscard]] QStringList prices() const { return m_prices; }
    [[nodiscard]] QStringList costs() const { return m_costs; }
    [[nodiscard]] QString priceUnit() const { return m_priceUnit; }
    [[nodiscard]] QString costUnit() const { return m_costUnit; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void changed();

private:
    struct Cell {
        QString larvae; // "21"
        QString verdict; // below, above, too_close; empty where nothing is known
        QString spoken;
        bool isOwn = false;
        bool isPublished = false;
    };
    std::vector<Cell> m_cells; // row by row
    QStringList m_prices;
    QStringList m_costs;
    QString m_priceUnit;
    QString m_costUnit;
};

} // namespace duskrow::app
