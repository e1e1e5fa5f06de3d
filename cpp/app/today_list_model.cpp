// SPDX-License-Identifier: MIT
#include "app/today_list_model.h"

#include <algorithm>

namespace duskrow::app {

namespace {

enum Role { Trap = Qt::UserRole + 1, Title, Line, Right, SpokenRight, Reasons, ActText, ActRoute, IsDue };

QVariant valueOf(const TodayRow& row, int role)
{
    switch (role) {
    case Trap:
        return row.trap;
    case Title:
        return row.title;
    case Line:
        return row.line;
    case Right:
        return row.right;
    case SpokenRight:
        return row.spokenRight;
    case Reasons:
        return row.reasons;
    case ActText:
        return row.actText;
    case ActRoute:
        return row.actRoute;
    case IsDue:
        return row.isDue;
    default:
        return {};
    }
}

bool sameTraps(const std::vector<TodayRow>& one, const std::vector<TodayRow>& other)
{
    return std::equal(one.begin(), one.end(), other.begin(), other.end(),
        [](const TodayRow& a, const TodayRow& b) { return a.trap == b.trap; });
}

} // namespace

void TodayListModel::show(std::vector<TodayRow> rows)
{
    if (sameTraps(m_rows, rows)) {
        m_rows = std::move(rows);
        if (!m_rows.empty()) Q_EMIT dataChanged(index(0), index(count() - 1));
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    Q_EMIT countChanged();
}

int TodayListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant TodayListModel::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= count()) return {};
    return valueOf(m_rows[static_cast<std::size_t>(index.row())], role);
}

QHash<int, QByteArray> TodayListModel::roleNames() const
{
    return {{Trap, "trap"}, {Title, "title"}, {Line, "line"}, {Right, "aside"}, {SpokenRight, "spokenAside"},
        {Reasons, "reasons"}, {ActText, "actText"}, {ActRoute, "actRoute"}, {IsDue, "isDue"}};
}

} // namespace duskrow::app
