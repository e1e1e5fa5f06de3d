// SPDX-License-Identifier: MIT
#include "app/round/round_list_model.h"

#include <algorithm>

namespace duskrow::app {

namespace {

enum Role { Key = Qt::UserRole + 1, Title, Line, Way, Route, Subject, Map, IsInfested };

QVariant valueOf(const RoundRow& row, int role)
{
    switch (role) {
    case Key:
        return row.key;
    case Title:
        return row.title;
    case Line:
        return row.line;
    case Way:
        return row.way;
    case Route:
        return row.route;
    case Subject:
        return row.subject;
    case Map:
        return row.map;
    case IsInfested:
        return row.isInfested;
    default:
        return {};
    }
}

bool sameKeys(const std::vector<RoundRow>& one, const std::vector<RoundRow>& other)
{
    return std::equal(one.begin(), one.end(), other.begin(), other.end(),
        [](const RoundRow& a, const RoundRow& b) { return a.key == b.key; });
}

} // namespace

// Tells of a single row that changed its place, as moving by hand does. False when it was more than that.
bool RoundListModel::moveOne(const std::vector<RoundRow>& wanted)
{
    if (m_rows.size() != wanted.size()) return false;
    const auto differs = [](const RoundRow& a, const RoundRow& b) { return a.key != b.key; };
    const auto first =
        std::mismatch(m_rows.begin(), m_rows.end(), wanted.begin(), std::not_fn(differs)).first;
    const auto last =
        std::mismatch(m_rows.rbegin(), m_rows.rend(), wanted.rbegin(), std::not_fn(differs)).first.base();
    if (first == m_rows.end()) return true;
    const auto from = static_cast<int>(first - m_rows.begin());
    const auto to = static_cast<int>(last - m_rows.begin()) - 1;
    std::vector<RoundRow> forward = m_rows;
    std::rotate(forward.begin() + from, forward.begin() + from + 1, forward.begin() + to + 1);
    std::vector<RoundRow> backward = m_rows;
    std::rotate(backward.begin() + from, backward.begin() + to, backward.begin() + to + 1);
    const bool isForward = sameKeys(forward, wanted);
    if (!isForward && !sameKeys(backward, wanted)) return false;
    if (isForward)
        beginMoveRows({}, from, from, {}, to + 1);
    else
        beginMoveRows({}, to, to, {}, from);
    m_rows = wanted;
    endMoveRows();
    return true;
}

void RoundListModel::show(std::vector<RoundRow> rows)
{
    if (moveOne(rows)) {
        m_rows = std::move(rows);
        if (!m_rows.empty()) Q_EMIT dataChanged(index(0), index(count() - 1));
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    Q_EMIT countChanged();
}

int RoundListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant RoundListModel::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= count()) return {};
    return valueOf(m_rows[static_cast<std::size_t>(index.row())], role);
}

QHash<int, QByteArray> RoundListModel::roleNames() const
{
    return {{Key, "key"}, {Title, "title"}, {Line, "line"}, {Way, "way"}, {Route, "route"},
        {Subject, "subject"}, {Map, "map"}, {IsInfested, "isInfested"}};
}

} // namespace duskrow::app
