// SPDX-License-Identifier: MIT
#include "app/correction_entries.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "text/entry_scale.h"
#include "text/field_names.h"
#include "text/upper_first.h"
#include "text/value_words.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

enum Role {
    FieldRole = Qt::UserRole,
    LabelRole,
    SortRole,
    KeysRole,
    WordsRole,
    TextRole,
    KnownRole,
    NumberRole,
    UnitRole,
    StepRole,
    LowRole,
    HighRole,
    DecimalsRole,
    MostRole
};

// Withdrawing has a way of its own, a photograph is no words, and ids stand for records that are chosen by
// name.
bool mayBeTyped(const Field& field, bool hasChoices)
{
    constexpr std::array<std::string_view, 3> never{"withdrawn", "photo", "invented"};
    if (std::find(never.begin(), never.end(), field.name) != never.end()) return false;
    if (!text::isWorthReading(std::string(field.name))) return false;
    return field.type != FieldType::Id || hasChoices;
}

std::vector<EntryChoice> choicesOf(const RecordKind& kind, const Field& field)
{
    std::vector<EntryChoice> choices;
    const auto words = [&](const Value& value) {
        return text::valueWords(kind, std::string(field.name), value, {});
    };
    if (field.type == FieldType::Flag)
        return {{QStringLiteral("yes"), words(true)}, {QStringLiteral("no"), words(false)}};
    for (const std::string_view code : field.codes)
        choices.push_back(
            {QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size())), words(std::string(code))});
    return choices;
}

QString textOf(const Value& value)
{
    if (const auto* flag = std::get_if<bool>(&value))
        return *flag ? QStringLiteral("yes") : QStringLiteral("no");
    const auto* held = std::get_if<std::string>(&value);
    return held ? QString::fromStdString(*held) : QString();
}

// Blanks around a text are nothing a person meant.
Value trimmed(const Value& value)
{
    const auto* held = std::get_if<std::string>(&value);
    if (!held) return value;
    const QString text = QString::fromStdString(*held).trimmed();
    return text.isEmpty() ? Value{} : Value{text.toStdString()};
}

double numberOf(const Value& value, const text::EntryScale& scale)
{
    const auto* held = std::get_if<std::int64_t>(&value);
    return held ? static_cast<double>(*held) / scale.kept : 0;
}

// As a draft holds it: a value of the log, whole numbers as text so that none is rounded.
QJsonValue toDraft(const Value& value)
{
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return QStringLiteral("#%1").arg(*whole);
    if (const auto* flag = std::get_if<bool>(&value)) return *flag;
    const auto* held = std::get_if<std::string>(&value);
    return held ? QJsonValue(QStringLiteral("=") + QString::fromStdString(*held)) : QJsonValue(QString());
}

Value fromDraft(const QJsonValue& draft)
{
    if (draft.isBool()) return draft.toBool();
    const QString text = draft.toString();
    if (text.startsWith(QLatin1Char('#'))) return static_cast<std::int64_t>(text.mid(1).toLongLong());
    if (text.startsWith(QLatin1Char('='))) return text.mid(1).toStdString();
    return {};
}

} // namespace

void CorrectionEntries::show(const RecordKind& kind, const ByName<Value>& values, const Choices& choices)
{
    beginResetModel();
    m_kind = &kind;
    m_entries.clear();
    for (const Field& field : kind.fields) {
        const auto named = choices.find(std::string(field.name));
        if (!mayBeTyped(field, named != choices.end())) continue;
        const auto found = values.find(field.name);
        const Value held = found == values.end() ? Value{} : found->second;
        m_entries.push_back(
            {&field, held, held, named != choices.end() ? named->second : choicesOf(kind, field)});
    }
    endResetModel();
}

CorrectionEntries::Values CorrectionEntries::changed() const
{
    Values all;
    for (const Entry& entry : m_entries)
        if (entry.value != entry.held) all.emplace(entry.field->name, trimmed(entry.value));
    return all;
}

QJsonObject CorrectionEntries::typed() const
{
    QJsonObject all;
    for (const auto& [field, value] : changed()) all.insert(QString::fromStdString(field), toDraft(value));
    return all;
}

void CorrectionEntries::takeTyped(const QJsonObject& typed)
{
    beginResetModel();
    for (Entry& entry : m_entries) {
        const QString name =
            QString::fromUtf8(entry.field->name.data(), static_cast<qsizetype>(entry.field->name.size()));
        if (typed.contains(name)) entry.value = fromDraft(typed.value(name));
    }
    endResetModel();
}

void CorrectionEntries::set(int row, Value value)
{
    if (row < 0 || row >= rowCount()) return;
    Entry& entry = m_entries[static_cast<std::size_t>(row)];
    if (entry.value == value) return;
    entry.value = std::move(value);
    Q_EMIT dataChanged(index(row), index(row));
    Q_EMIT edited();
}

void CorrectionEntries::setText(int row, const QString& text)
{
    if (row < 0 || row >= rowCount()) return;
    const Entry& entry = m_entries[static_cast<std::size_t>(row)];
    if (entry.field->type == FieldType::Flag && !text.isEmpty())
        return set(row, text == QLatin1String("yes"));
    set(row, text.isEmpty() ? Value{} : Value{text.toStdString()});
}

void CorrectionEntries::setNumber(int row, double number)
{
    if (row < 0 || row >= rowCount()) return;
    const Entry& entry = m_entries[static_cast<std::size_t>(row)];
    const text::EntryScale scale = text::entryScale(*entry.field);
    // A number read in larger units does not round away what was kept more finely.
    const double shown = std::pow(10, scale.decimals);
    if (!isEmpty(entry.held) && std::round(numberOf(entry.held, scale) * shown) == std::round(number * shown))
        return set(row, entry.held);
    set(row, static_cast<std::int64_t>(std::llround(number * scale.kept)));
}

void CorrectionEntries::clear(int row)
{
    set(row, {});
}

int CorrectionEntries::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

QString CorrectionEntries::sort(const Entry& entry) const
{
    if (!entry.choices.empty()) return QStringLiteral("choice");
    if (entry.field->type == FieldType::Integer) return QStringLiteral("number");
    if (entry.field->type == FieldType::Day) return QStringLiteral("day");
    return entry.field->merge == MergeClass::Remark ? QStringLiteral("remark") : QStringLiteral("line");
}

QVariant CorrectionEntries::bound(const Entry& entry, int role) const
{
    const text::EntryScale scale = text::entryScale(*entry.field);
    switch (role) {
    case NumberRole:
        return numberOf(entry.value, scale);
    case UnitRole:
        return scale.unit;
    case StepRole:
        return scale.step;
    case DecimalsRole:
        return scale.decimals;
    case LowRole:
        return std::ceil(static_cast<double>(entry.field->low) / scale.kept);
    case HighRole:
        return std::floor(static_cast<double>(entry.field->high) / scale.kept);
    default:
        return {};
    }
}

QVariant CorrectionEntries::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Entry& entry = m_entries[static_cast<std::size_t>(index.row())];
    QStringList keys;
    QStringList words;
    switch (role) {
    case FieldRole:
        return QString::fromUtf8(entry.field->name.data(), static_cast<qsizetype>(entry.field->name.size()));
    case LabelRole:
        return text::upperFirst(text::fieldName(m_kind->name, entry.field->name));
    case SortRole:
        return sort(entry);
    case KeysRole:
        for (const EntryChoice& choice : entry.choices) keys << choice.key;
        return entry.field->required ? keys : keys << QString();
    case WordsRole:
        for (const EntryChoice& choice : entry.choices) words << choice.words;
        return entry.field->required ? words : words << tr("not said");
    case TextRole:
        return textOf(entry.value);
    case KnownRole:
        return !isEmpty(entry.value);
    case MostRole:
        return static_cast<int>(std::min<std::int64_t>(entry.field->high, 40'000));
    default:
        return bound(entry, role);
    }
}

QHash<int, QByteArray> CorrectionEntries::roleNames() const
{
    return {{FieldRole, "field"}, {LabelRole, "label"}, {SortRole, "sort"}, {KeysRole, "keys"},
        {WordsRole, "words"}, {TextRole, "text"}, {KnownRole, "known"}, {NumberRole, "number"},
        {UnitRole, "unit"}, {StepRole, "step"}, {LowRole, "low"}, {HighRole, "high"},
        {DecimalsRole, "decimals"}, {MostRole, "most"}};
}

} // namespace duskrow::app
