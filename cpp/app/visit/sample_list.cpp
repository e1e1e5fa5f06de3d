// SPDX-License-Identifier: MIT
#include "app/visit/sample_list.h"

#include <algorithm>

#include "app/visit/visit_words.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

QString idOf(const Sample& sample)
{
    return QString::fromStdString(formatUuid(sample.id));
}

QString outcomeOf(const SampleRow& row)
{
    const Sample& sample = row.sample;
    if (sample.state != SampleState::Named) return sampleWords(sample, row.animal);
    const std::int64_t pest = sample.pest.value_or(Moths{}).value();
    const std::int64_t all = sample.moths.value_or(Moths{pest}).value();
    const QString words = SampleList::tr("%1 of %2 the pest").arg(text::number(pest), text::number(all));
    return sample.namedAs.empty() ? words
                                  : words + QStringLiteral(" · ") + QString::fromStdString(sample.namedAs);
}

} // namespace

void SampleList::take(std::vector<SampleRow> rows)
{
    std::stable_partition(rows.begin(), rows.end(),
        [](const SampleRow& row) { return row.sample.state != SampleState::Named; });
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

const SampleRow* SampleList::find(const QString& sampleId) const
{
    const auto found = std::find_if(
        m_rows.begin(), m_rows.end(), [&](const SampleRow& row) { return idOf(row.sample) == sampleId; });
    return found == m_rows.end() ? nullptr : &*found;
}

int SampleList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant SampleList::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount()) return {};
    const SampleRow& row = m_rows[static_cast<std::size_t>(index.row())];
    const auto state = row.sample.state.value_or(SampleState::Kept);
    switch (role) {
    case SampleId:
        return idOf(row.sample);
    case Number:
        return row.sample.number.empty() ? tr("without a number") : QString::fromStdString(row.sample.number);
    case Trap:
        return row.trapTitle;
    case State:
        return static_cast<int>(state);
    case StateWords:
        return text::name(state);
    case Summary:
        return outcomeOf(row);
    case IsNamed:
        return state == SampleState::Named;
    default:
        return {};
    }
}

QHash<int, QByteArray> SampleList::roleNames() const
{
    return {{SampleId, "sampleId"}, {Number, "number"}, {Trap, "trapTitle"}, {State, "state"},
        {StateWords, "stateWords"}, {Summary, "summary"}, {IsNamed, "isNamed"}};
}

} // namespace duskrow::app
