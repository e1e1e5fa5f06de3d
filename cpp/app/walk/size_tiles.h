// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

#include "domain/protocol/scouting.h"

namespace duskrow::app {

// One tile for each size class of a protocol, with what is counted in it.
class SizeTiles : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by FrameViewModel")

public:
    using QAbstractListModel::QAbstractListModel;

    void show(const domain::ScoutingAdvice& scouting);
    void setCounts(const std::vector<std::int64_t>& counts);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Tile {
        QString name;
        QString span; // "13 to 25 mm"
        double lowMm = 0; // the edges, for outlines as long as the larvae
        double highMm = 0;
        std::int64_t count = 0;
    };
    std::vector<Tile> m_tiles;
};

} // namespace duskrow::app
