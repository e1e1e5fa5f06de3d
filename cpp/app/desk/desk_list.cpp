// SPDX-License-Identifier: MIT
#include "app/desk/desk_list.h"

namespace duskrow::app {

namespace {

enum Role { Key = Qt::UserRole + 1, Trap, Title, Besides, Right, Remark, Section, Due, New, CanMark, Marked };

} // namespace

void DeskList::show(std::vector<DeskLine> lines)
{
    if (lines == m_lines) return;
    beginResetModel();
    m_lines = std::move(lines);
    QSet<QString> left;
    for (const DeskLine& line : m_lines)
        if (line.canMark && m_marked.contains(line.key)) left.insert(line.key);
    m_marked = left;
    endResetModel();
    Q_EMIT countChanged();
    Q_EMIT markedChanged();
}

void DeskList::toggle(int row)
{
    if (!has(row) || !at(row).canMark) return;
    const QString& key = at(row).key;
    if (!m_marked.remove(key)) m_marked.insert(key);
    Q_EMIT dataChanged(index(row), index(row), {Marked});
    Q_EMIT markedChanged();
}

void DeskList::markAll()
{
    QSet<QString> all;
    for (const DeskLine& line : m_lines)
        if (line.canMark) all.insert(line.key);
    m_marked = all == m_marked ? QSet<QString>() : all;
    if (count() > 0) Q_EMIT dataChanged(index(0), index(count() - 1), {Marked});
    Q_EMIT markedChanged();
}

QString DeskList::trapAt(int row) const
{
    return has(row) ? at(row).trap : QString();
}

QString DeskList::keyAt(int row) const
{
    return has(row) ? at(row).key : QString();
}

int DeskList::rowOf(const QString& key) const
{
    for (int row = 0; row < count(); ++row)
        if (at(row).key == key) return row;
    return -1;
}

int DeskList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant DeskList::data(const QModelIndex& index, int role) const
{
    if (!has(index.row())) return {};
    const DeskLine& line = at(index.row());
    switch (role) {
    case Key:
        return line.key;
    case Trap:
        return line.trap;
    case Title:
        return line.title;
    case Besides:
        return line.besides;
    case Right:
        return line.right;
    case Remark:
        return line.remark;
    case Section:
        return line.section;
    case Due:
        return line.isDue;
    case New:
        return line.isNew;
    case CanMark:
        return line.canMark;
    case Marked:
        return m_marked.contains(line.key);
    default:
        return {};
    }
}

QHash<int, QByteArray> DeskList::roleNames() const
{
    return {{Key, "key"}, {Trap, "trap"}, {Title, "title"}, {Besides, "besides"}, {Right, "amount"},
        {Remark, "remark"}, {Section, "section"}, {Due, "due"}, {New, "isNew"}, {CanMark, "canMark"},
        {Marked, "marked"}};
}

} // namespace duskrow::app
