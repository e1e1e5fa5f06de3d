// SPDX-License-Identifier: MIT
#include "domain/log/fold.h"
#include "domain/records/bulletin.h"
#include "domain/records/programme.h"
#include "domain/records/roster.h"
#include "domain/records/visit.h"
#include "world.h"
#include "world_values.h"

using namespace duskrow;
using namespace duskrow::domain;

Value toValue(const QVariant& value)
{
    switch (value.typeId()) {
    case QMetaType::Bool:
        return value.toBool();
    case QMetaType::Int:
    case QMetaType::LongLong:
    case QMetaType::Double:
        return std::int64_t{value.toLongLong()};
    case QMetaType::QString:
        return value.toString().toStdString();
    default:
        return {};
    }
}

QVariant toVariant(const Value& value)
{
    if (const auto* flag = std::get_if<bool>(&value)) return *flag;
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return qlonglong{*whole};
    if (const auto* text = std::get_if<std::string>(&value)) return QString::fromStdString(*text);
    return {};
}

namespace {

template <typename R>
bool gather(store::Reader& reader, const QString& kind, QStringList& ids)
{
    if (kindOf<R>().name != kind.toStdString()) return false;
    const auto found = reader.select<R>({});
    if (!found) qFatal("the records could not be read");
    for (const R& record : *found) ids << QString::fromStdString(formatUuid(record.id));
    return true;
}

} // namespace

QString World::keepRecord(const QString& kind, const QVariantMap& fields, const QString& id)
{
    Edit edit{.kind = kind.toStdString(), .record = m_app->session()->newId(), .site = {}, .fields = {}};
    if (!id.isEmpty()) edit.record = *parseUuid(id.toStdString());
    for (auto field = fields.cbegin(); field != fields.cend(); ++field)
        edit.fields[field.key().toStdString()] = toValue(field.value());
    const QString kept = QString::fromStdString(formatUuid(edit.record));
    keep({edit});
    return kept;
}

QVariant World::fieldOf(const QString& kind, const QString& id, const QString& field) const
{
    const auto changes = m_app->session()->reader().changesOf(*parseUuid(id.toStdString()));
    if (!changes || changes->empty() || changes->front().kind != kind.toStdString()) return {};
    const Folded now = fold(*changes);
    const auto found = now.values.find(field.toStdString());
    return found == now.values.end() ? QVariant() : toVariant(found->second);
}

QStringList World::recordsOf(const QString& kind) const
{
    QStringList ids;
    store::Reader& reader = m_app->session()->reader();
    const bool isKnown = gather<Season>(reader, kind, ids) || gather<Site>(reader, kind, ids)
        || gather<Trap>(reader, kind, ids) || gather<Service>(reader, kind, ids)
        || gather<Loan>(reader, kind, ids) || gather<Visit>(reader, kind, ids)
        || gather<Sample>(reader, kind, ids) || gather<Walk>(reader, kind, ids)
        || gather<Frame>(reader, kind, ids) || gather<Decision>(reader, kind, ids)
        || gather<Assignment>(reader, kind, ids) || gather<PublishedBulletin>(reader, kind, ids);
    if (!isKnown) qFatal("no such kind: %s", qPrintable(kind));
    return ids;
}
