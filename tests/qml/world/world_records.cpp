// SPDX-License-Identifier: MIT
#include "world.h"

using namespace duskrow;
using namespace duskrow::domain;

namespace {

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
