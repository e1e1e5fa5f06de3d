// SPDX-License-Identifier: MIT
#include "app/walk/size_tiles.h"

#include <algorithm>

#include "app/session.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

enum Role { Name = Qt::UserRole, Span, LowMm, HighMm, Count };

// A number stays with its unit where a narrow tile breaks the line.
QString spanWords(const SizeClass& size)
{
    const auto from = size.from.value();
    if (!size.below) return SizeTiles::tr("over %1\u00A0mm").arg(from - 1);
    if (from == 0) return SizeTiles::tr("under %1\u00A0mm").arg(size.below->value());
    return SizeTiles::tr("%1 to %2\u00A0mm").arg(from).arg(size.below->value() - 1);
}

} // namespace

void SizeTiles::show(const ScoutingAdvice& scouting)
{
    beginResetModel();
    m_tiles.clear();
    const double grown = scouting.fullGrown.to ? static_cast<double>(scouting.fullGrown.to->value()) : 40.0;
    for (const SizeClass& size : scouting.sizeClasses) {
        const auto low = static_cast<double>(size.from.value());
        m_tiles.push_back({QString::fromStdString(size.name.in(Session::language())), spanWords(size), low,
            size.below ? static_cast<double>(size.below->value()) : std::max(low, grown), 0});
    }
    endResetModel();
}

void SizeTiles::setCounts(const std::vector<std::int64_t>& counts)
{
    for (std::size_t i = 0; i < std::min(counts.size(), m_tiles.size()); ++i) {
        if (m_tiles[i].count == counts[i]) continue;
        m_tiles[i].count = counts[i];
        const QModelIndex at = index(static_cast<int>(i));
        Q_EMIT dataChanged(at, at, {Count});
    }
}

int SizeTiles::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_tiles.size());
}

QVariant SizeTiles::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Tile& tile = m_tiles[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Name:
        return tile.name;
    case Span:
        return tile.span;
    case LowMm:
        return tile.lowMm;
    case HighMm:
        return tile.highMm;
    case Count:
        return static_cast<int>(tile.count);
    default:
        return {};
    }
}

QHash<int, QByteArray> SizeTiles::roleNames() const
{
    return {{Name, "name"}, {Span, "span"}, {LowMm, "lowMm"}, {HighMm, "highMm"}, {Count, "count"}};
}

} // namespace duskrow::app
