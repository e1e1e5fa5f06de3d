// SPDX-License-Identifier: MIT
#include "app/desk/typing_list.h"

#include <algorithm>

namespace duskrow::app {

namespace {

enum Role { Title = Qt::UserRole + 1, Pest, Animal, Section, Typed, Who, Error, Kept, Keeping };

} // namespace

void TypingList::show(std::vector<TypingRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    Q_EMIT countChanged();
}

int TypingList::rowOf(const domain::Uuid& trap) const
{
    const auto found = std::ranges::find(m_rows, trap, &TypingRow::trap);
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

void TypingList::tellOf(int row)
{
    if (has(row)) Q_EMIT dataChanged(index(row), index(row));
}

int TypingList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant TypingList::data(const QModelIndex& index, int role) const
{
    if (!has(index.row())) return {};
    const TypingRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Title:
        return row.title;
    case Pest:
        return row.pest;
    case Animal:
        return row.animal.many();
    case Section:
        return row.section;
    case Typed:
        return row.count;
    case Who:
        return row.who;
    case Error:
        return row.error;
    case Kept:
        return row.kept;
    case Keeping:
        return row.isKeeping;
    default:
        return {};
    }
}

QHash<int, QByteArray> TypingList::roleNames() const
{
    return {{Title, "title"}, {Pest, "pest"}, {Animal, "animal"}, {Section, "section"}, {Typed, "typed"},
        {Who, "who"}, {Error, "error"}, {Kept, "kept"}, {Keeping, "keeping"}};
}

} // namespace duskrow::app
