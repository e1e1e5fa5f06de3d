// SPDX-License-Identifier: MIT
#include "app/exchange/difference_list.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

#include "text/entry_scale.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

enum Role {
    TitleRole = Qt::UserRole,
    LabelRole,
    WordsRole,
    BesidesRole,
    StandingRole,
    ChosenRole,
    TypedRole,
    OtherRole,
    UnitRole
};

const Field* fieldOf(const DifferenceRow& row)
{
    const RecordKind* kind = findKind(row.kind);
    return kind ? kind->find(row.field) : nullptr;
}

// Whether something else than the choices may be typed.
bool mayBeTyped(const DifferenceRow& row)
{
    const Field* field = fieldOf(row);
    return field && field->codes.empty() && field->type != FieldType::Flag && field->type != FieldType::Id;
}

Result<Value> typedValue(const DifferenceRow& row)
{
    const Field& field = *fieldOf(row);
    const QString text = row.typed.trimmed();
    if (field.type != FieldType::Integer) return Value{text.toStdString()};
    bool isNumber = false;
    const double number = QLocale().toDouble(text, &isNumber);
    if (!isNumber || !std::isfinite(number) || std::abs(number) > 1e12)
        return Error{ErrorCode::NotANumber, {text.toStdString()}};
    return Value{static_cast<std::int64_t>(std::llround(number * text::entryScale(field).kept))};
}

} // namespace

void DifferenceList::show(std::vector<DifferenceRow> rows)
{
    for (DifferenceRow& row : rows) {
        const auto before = std::find_if(m_rows.begin(), m_rows.end(), [&](const DifferenceRow& old) {
            return old.record == row.record && old.field == row.field
                && old.choices.size() == row.choices.size();
        });
        if (before == m_rows.end()) continue;
        row.chosen = before->chosen;
        row.typed = before->typed;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    Q_EMIT chosenChanged();
}

int DifferenceList::chosen() const
{
    return static_cast<int>(std::count_if(
        m_rows.begin(), m_rows.end(), [](const DifferenceRow& row) { return row.chosen >= 0; }));
}

void DifferenceList::choose(int at, int choice)
{
    if (at < 0 || at >= count()) return;
    DifferenceRow& row = m_rows[static_cast<std::size_t>(at)];
    row.chosen = row.chosen == choice ? -1 : choice;
    Q_EMIT dataChanged(index(at), index(at));
    Q_EMIT chosenChanged();
}

void DifferenceList::type(int at, const QString& text)
{
    if (at < 0 || at >= count()) return;
    DifferenceRow& row = m_rows[static_cast<std::size_t>(at)];
    row.typed = text;
    row.chosen = text.trimmed().isEmpty() ? -1 : static_cast<int>(row.choices.size());
    Q_EMIT dataChanged(index(at), index(at));
    Q_EMIT chosenChanged();
}

Result<std::vector<Edit>> DifferenceList::edits() const
{
    std::vector<Edit> all;
    for (const DifferenceRow& row : m_rows) {
        if (row.chosen < 0) continue;
        const bool isTyped = row.chosen >= static_cast<int>(row.choices.size());
        auto value = isTyped ? typedValue(row)
                             : Result<Value>(row.choices[static_cast<std::size_t>(row.chosen)].value);
        if (!value) return value.error();
        Edit edit{row.kind, row.record, row.site, {{row.field, std::move(*value)}}};
        if (const auto checked = checkEdit(edit); !checked) return checked.error();
        all.push_back(std::move(edit));
    }
    return all;
}

int DifferenceList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant DifferenceList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const DifferenceRow& row = m_rows[static_cast<std::size_t>(index.row())];
    QStringList all;
    switch (role) {
    case TitleRole:
        return row.title;
    case LabelRole:
        return row.label;
    case WordsRole:
        for (const DifferenceRow::Choice& choice : row.choices) all << choice.words;
        return all;
    case BesidesRole:
        for (const DifferenceRow::Choice& choice : row.choices) all << choice.besides;
        return all;
    case StandingRole:
        return row.standing;
    case ChosenRole:
        return row.chosen;
    case TypedRole:
        return row.typed;
    case OtherRole:
        return mayBeTyped(row);
    case UnitRole:
        return fieldOf(row) && fieldOf(row)->type == FieldType::Integer ? text::entryScale(*fieldOf(row)).unit
                                                                        : QString();
    default:
        return {};
    }
}

QHash<int, QByteArray> DifferenceList::roleNames() const
{
    return {{TitleRole, "title"}, {LabelRole, "label"}, {WordsRole, "words"}, {BesidesRole, "besides"},
        {StandingRole, "standing"}, {ChosenRole, "chosen"}, {TypedRole, "typed"}, {OtherRole, "other"},
        {UnitRole, "unit"}};
}

} // namespace duskrow::app
