// SPDX-License-Identifier: MIT
#include "app/visit/visit_draft.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr std::size_t mostUndoSteps = 1000;

QJsonValue toJson(const Value& value)
{
    if (const auto* flag = std::get_if<bool>(&value)) return *flag;
    if (const auto* number = std::get_if<std::int64_t>(&value)) return static_cast<qint64>(*number);
    if (const auto* text = std::get_if<std::string>(&value)) return QString::fromStdString(*text);
    return QJsonValue::Null;
}

Value fromJson(const QJsonValue& json)
{
    if (json.isBool()) return json.toBool();
    if (json.isDouble()) return std::int64_t{json.toInteger()};
    if (json.isString()) return json.toString().toStdString();
    return {};
}

// The fields in which `now` differs from `then`, with their values in `now`.
QJsonObject difference(VisitRecords then, VisitRecords now)
{
    std::vector<const Record*> before;
    then.each([&](const char*, const RecordKind&, Record& record) { before.push_back(&record); });
    QJsonObject all;
    std::size_t index = 0;
    now.each([&](const char* name, const RecordKind& kind, Record& record) {
        const Record& old = *before[index++];
        QJsonObject fields;
        if (record.id != old.id)
            fields.insert(QLatin1String("id"), QString::fromStdString(formatUuid(record.id)));
        for (const Field& field : kind.fields) {
            const Value value = field.get(record);
            if (value == field.get(old)) continue;
            fields.insert(QString::fromUtf8(field.name.data(), static_cast<qsizetype>(field.name.size())),
                toJson(value));
        }
        if (!fields.isEmpty()) all.insert(QLatin1String(name), fields);
    });
    return all;
}

void apply(const QJsonObject& difference, VisitRecords& records)
{
    records.each([&](const char* name, const RecordKind& kind, Record& record) {
        const QJsonObject fields = difference.value(QLatin1String(name)).toObject();
        for (auto it = fields.begin(); it != fields.end(); ++it) {
            if (it.key() == QLatin1String("id"))
                record.id = parseUuid(it->toString().toStdString()).value_or(record.id);
            else
                assign(kind, record, it.key().toStdString(), fromJson(*it));
        }
    });
}

// The same fields of the same records, whatever their values.
bool sameFields(const QJsonObject& one, const QJsonObject& other)
{
    if (one.keys() != other.keys()) return false;
    for (const QString& record : one.keys())
        if (one.value(record).toObject().keys() != other.value(record).toObject().keys()) return false;
    return true;
}

QJsonValue numberOrNull(const std::optional<std::int64_t>& value)
{
    return value ? QJsonValue(static_cast<qint64>(*value)) : QJsonValue(QJsonValue::Null);
}

std::optional<std::int64_t> optionalNumber(const QJsonValue& json)
{
    return json.isDouble() ? std::optional<std::int64_t>(json.toInteger()) : std::nullopt;
}

QJsonObject written(const HeavyCatchDraft& heavy)
{
    QJsonArray parts;
    for (const HeavyCatchDraft::Part& part : heavy.parts)
        parts.append(QJsonArray{numberOrNull(part.counted), numberOrNull(part.amount)});
    return {{QStringLiteral("by_weight"), heavy.byWeight},
        {QStringLiteral("whole"), numberOrNull(heavy.whole)}, {QStringLiteral("parts"), parts}};
}

HeavyCatchDraft heavyFrom(const QJsonObject& json)
{
    HeavyCatchDraft heavy{.byWeight = json.value(QLatin1String("by_weight")).toBool(),
        .whole = optionalNumber(json.value(QLatin1String("whole"))),
        .parts = {}};
    const QJsonArray parts = json.value(QLatin1String("parts")).toArray();
    for (const QJsonValue& part : parts)
        heavy.parts.push_back({optionalNumber(part[0]), optionalNumber(part[1])});
    if (heavy.parts.empty()) heavy.parts.emplace_back();
    return heavy;
}

QJsonObject written(const VisitPosition& position)
{
    return {{QStringLiteral("step"), position.step}, {QStringLiteral("bin"), position.bin},
        {QStringLiteral("trap_told"), position.hasTrapTold},
        {QStringLiteral("lure_details"), position.hasLureDetails},
        {QStringLiteral("answered"), QJsonArray::fromStringList(position.answered)},
        {QStringLiteral("heavy"), written(position.heavy)}};
}

VisitPosition positionFrom(const QJsonObject& json)
{
    VisitPosition position;
    position.step = json.value(QLatin1String("step")).toString(position.step);
    position.bin = json.value(QLatin1String("bin")).toString(position.bin);
    position.hasTrapTold = json.value(QLatin1String("trap_told")).toBool();
    position.hasLureDetails = json.value(QLatin1String("lure_details")).toBool();
    const QJsonArray answered = json.value(QLatin1String("answered")).toArray();
    for (const QJsonValue& question : answered) position.answered.append(question.toString());
    position.heavy = heavyFrom(json.value(QLatin1String("heavy")).toObject());
    return position;
}

} // namespace

void VisitRecords::each(const std::function<void(const char*, const RecordKind&, Record&)>& act)
{
    act("visit", kindOf<Visit>(), visit);
    act("lure", kindOf<Service>(), lure);
    act("strip", kindOf<Service>(), strip);
    act("raise", kindOf<Service>(), raise);
    act("sample", kindOf<Sample>(), sample);
}

bool VisitDraft::change(const std::function<void(VisitRecords&)>& act, Undoing undoing)
{
    VisitRecords after = m_records;
    act(after);
    QJsonObject back = difference(after, m_records);
    if (back.isEmpty()) return false;
    const bool isTyped = undoing == Undoing::AsTyped;
    const bool joins =
        isTyped && !m_undo.empty() && m_undo.back().isTyped && sameFields(m_undo.back().before, back);
    if (!joins) m_undo.push_back({std::move(back), isTyped});
    if (m_undo.size() > mostUndoSteps) m_undo.erase(m_undo.begin());
    m_records = std::move(after);
    return true;
}

bool VisitDraft::undo()
{
    if (m_undo.empty()) return false;
    apply(m_undo.back().before, m_records);
    m_undo.pop_back();
    return true;
}

void VisitDraft::startOver()
{
    m_records = m_begun;
    m_position = {};
    m_undo.clear();
}

bool VisitDraft::isUntouched() const
{
    return difference(m_begun, m_records).isEmpty();
}

QByteArray VisitDraft::written() const
{
    QJsonArray undo;
    for (const UndoStep& step : m_undo)
        undo.append(
            QJsonObject{{QStringLiteral("before"), step.before}, {QStringLiteral("typed"), step.isTyped}});
    const QJsonObject all{{QStringLiteral("records"), difference(m_base, m_records)},
        {QStringLiteral("position"), app::written(m_position)}, {QStringLiteral("undo"), undo}};
    return QJsonDocument(all).toJson(QJsonDocument::Compact);
}

bool VisitDraft::read(const QByteArray& body)
{
    const QJsonDocument document = QJsonDocument::fromJson(body);
    if (!document.isObject()) return false;
    const QJsonObject all = document.object();
    m_records = m_base;
    apply(all.value(QLatin1String("records")).toObject(), m_records);
    m_position = positionFrom(all.value(QLatin1String("position")).toObject());
    m_undo.clear();
    const QJsonArray undo = all.value(QLatin1String("undo")).toArray();
    for (const QJsonValue& step : undo)
        m_undo.push_back({step[QLatin1String("before")].toObject(), step[QLatin1String("typed")].toBool()});
    return true;
}

} // namespace duskrow::app
