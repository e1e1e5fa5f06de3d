// SPDX-License-Identifier: MIT
#include "app/row_list.h"

namespace duskrow::app {

namespace {

enum Role { Key = Qt::UserRole + 1, Title, Besides, Detail, Flags, Route, Subject, Struck };

QVariant valueOf(const Row& row, int role)
{
    switch (role) {
    case Key:
        return row.key;
    case Title:
        return row.title;
    case Besides:
        return row.besides;
    case Detail:
        return row.detail;
    case Flags:
        return row.flags;
    case Route:
        return row.route;
    case Subject:
        return row.subject;
    case Struck:
        return row.isStruck;
    default:
        return {};
    }
}

} // namespace

void RowList::show(std::vector<Row> rows)
{
    if (rows == m_rows) return;
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    Q_EMIT countChanged();
}

int RowList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant RowList::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= count()) return {};
    return valueOf(m_rows[static_cast<std::size_t>(index.row())], role);
}

QHash<int, QByteArray> RowList::roleNames() const
{
    return {{Key, "key"}, {Title, "title"}, {Besides, "besides"}, {Detail, "detail"}, {Flags, "flags"},
        {Route, "route"}, {Subject, "subject"}, {Struck, "struck"}};
}

} // namespace duskrow::app
