// SPDX-License-Identifier: MIT
#include "app/visit/catch_parts.h"

#include <cmath>

namespace duskrow::app {

CatchParts::CatchParts(VisitEntry& entry) : m_entry(entry), m_rows(static_cast<int>(parts().size()))
{
    connect(&m_entry, &VisitEntry::changed, this, &CatchParts::follow);
}

const std::vector<HeavyCatchDraft::Part>& CatchParts::parts() const
{
    return m_entry.position().heavy.parts;
}

// The draft may have been begun again or read anew.
void CatchParts::follow()
{
    if (m_rows == static_cast<int>(parts().size())) return;
    beginResetModel();
    m_rows = static_cast<int>(parts().size());
    endResetModel();
}

int CatchParts::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : m_rows;
}

QVariant CatchParts::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= static_cast<int>(parts().size())) return {};
    const HeavyCatchDraft::Part& part = parts()[static_cast<std::size_t>(index.row())];
    switch (role) {
    case CountedKnown:
        return part.counted.has_value();
    case Counted:
        return static_cast<double>(part.counted.value_or(0));
    case AmountKnown:
        return part.amount.has_value();
    case Amount:
        return static_cast<double>(part.amount.value_or(0)) / 1000.0;
    default:
        return {};
    }
}

QHash<int, QByteArray> CatchParts::roleNames() const
{
    return {{CountedKnown, "countedKnown"}, {Counted, "counted"}, {AmountKnown, "amountKnown"},
        {Amount, "amount"}};
}

void CatchParts::edit(int row, const std::function<void(HeavyCatchDraft::Part&)>& act)
{
    if (row < 0 || row >= m_rows) return;
    m_entry.go([&](VisitPosition& position) { act(position.heavy.parts[static_cast<std::size_t>(row)]); });
    Q_EMIT dataChanged(index(row), index(row));
}

void CatchParts::setCounted(int row, double moths)
{
    edit(row, [&](HeavyCatchDraft::Part& part) { part.counted = std::llround(moths); });
}

void CatchParts::clearCounted(int row)
{
    edit(row, [](HeavyCatchDraft::Part& part) { part.counted.reset(); });
}

void CatchParts::setAmount(int row, double amount)
{
    edit(row, [&](HeavyCatchDraft::Part& part) { part.amount = std::llround(amount * 1000.0); });
}

void CatchParts::clearAmount(int row)
{
    edit(row, [](HeavyCatchDraft::Part& part) { part.amount.reset(); });
}

void CatchParts::remove(int row)
{
    if (row < 0 || row >= m_rows || m_rows == 1) return;
    beginRemoveRows({}, row, row);
    --m_rows;
    m_entry.go(
        [&](VisitPosition& position) { position.heavy.parts.erase(position.heavy.parts.begin() + row); });
    endRemoveRows();
}

void CatchParts::add()
{
    if (m_rows >= most) return;
    beginInsertRows({}, m_rows, m_rows);
    ++m_rows;
    m_entry.go([](VisitPosition& position) { position.heavy.parts.emplace_back(); });
    endInsertRows();
}

} // namespace duskrow::app
