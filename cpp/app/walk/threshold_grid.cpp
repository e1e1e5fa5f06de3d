// SPDX-License-Identifier: MIT
#include "app/walk/threshold_grid.h"

#include <QLocale>

#include <cmath>

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

enum Role { LarvaeRole = Qt::UserRole, VerdictRole, SpokenRole, OwnRole, PublishedRole };

QString codeOf(FrameVerdict verdict)
{
    switch (verdict) {
    case FrameVerdict::Below:
        return QStringLiteral("below");
    case FrameVerdict::Above:
        return QStringLiteral("above");
    case FrameVerdict::TooCloseToCall:
        return QStringLiteral("too_close");
    }
    return {};
}

QString wordsOf(FrameVerdict verdict)
{
    switch (verdict) {
    case FrameVerdict::Below:
        return ThresholdGrid::tr("the walk lies below");
    case FrameVerdict::Above:
        return ThresholdGrid::tr("the walk lies above");
    case FrameVerdict::TooCloseToCall:
        return ThresholdGrid::tr("too close to call");
    }
    return {};
}

QString amount(double value)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator); // it is typed into a box when it is taken
    return locale.toString(value, 'g', 5);
}

} // namespace

void ThresholdGrid::show(const ThresholdTable& table, const Verdicts& verdicts, const Threshold& threshold)
{
    beginResetModel();
    m_cells.clear();
    m_prices.clear();
    m_costs.clear();
    m_priceUnit = QString::fromStdString(domain::codeOf(threshold.price.unit));
    m_costUnit = QString::fromStdString(domain::codeOf(threshold.cost.unit));
    for (const double price : table.prices) m_prices << amount(price);
    for (const double cost : table.costs) m_costs << amount(cost);
    for (std::size_t row = 0; row < table.cells.size(); ++row) {
        for (std::size_t column = 0; column < table.cells[row].size(); ++column) {
            const ThresholdCell& cell = table.cells[row][column];
            Cell shown{QLocale().toString(std::llround(cell.larvae.value())), {}, {},
                row == table.ownCost && column == table.ownPrice, cell.isPublished};
            //: cost, its unit, price, its unit, larvae
            shown.spoken = tr("%1 %2 at %3 %4: %5 larvae per m²")
                               .arg(m_costs[static_cast<qsizetype>(row)], m_costUnit,
                                   m_prices[static_cast<qsizetype>(column)], m_priceUnit, shown.larvae);
            if (row < verdicts.size() && column < verdicts[row].size()) {
                shown.verdict = codeOf(verdicts[row][column]);
                shown.spoken += QStringLiteral(", ") + wordsOf(verdicts[row][column]);
            }
            m_cells.push_back(std::move(shown));
        }
    }
    endResetModel();
    Q_EMIT changed();
}

void ThresholdGrid::clear()
{
    beginResetModel();
    m_cells.clear();
    m_prices.clear();
    m_costs.clear();
    endResetModel();
    Q_EMIT changed();
}

int ThresholdGrid::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_cells.size());
}

QVariant ThresholdGrid::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Cell& cell = m_cells[static_cast<std::size_t>(index.row())];
    switch (role) {
    case LarvaeRole:
        return cell.larvae;
    case VerdictRole:
        return cell.verdict;
    case SpokenRole:
        return cell.spoken;
    case OwnRole:
        return cell.isOwn;
    case PublishedRole:
        return cell.isPublished;
    default:
        return {};
    }
}

QHash<int, QByteArray> ThresholdGrid::roleNames() const
{
    return {{LarvaeRole, "larvae"}, {VerdictRole, "verdict"}, {SpokenRole, "spoken"}, {OwnRole, "isOwn"},
        {PublishedRole, "isPublished"}};
}

} // namespace duskrow::app
