// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "domain/log/fold.h"
#include "domain/records/bulletin.h"
#include "domain/records/next_year.h"
#include "domain/records/programme.h"
#include "domain/records/roster.h"
#include "domain/records/visit.h"
#include "domain/records/weather.h"
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

// Twelve degrees between night and day; the mean climbs from 4 on 1 April to 19 in the middle of July and
// falls to 11 at the end of September, a degree up or down by the year.
void World::addWarmth(const QString& station, double lat, double lon, int firstYear, const QString& until)
{
    const app::Session& session = *m_app->session();
    Station told;
    told.id = session.newId();
    told.name = station.toStdString();
    told.latE7 = std::llround(lat * 1e7);
    told.lonE7 = std::llround(lon * 1e7);
    told.dayEndsMinute = 540;
    std::vector<Edit> edits{creation(told, {})};
    const LocalDay last = *parseDay(until.toStdString());
    for (int year = firstYear; year <= yearOf(last); ++year) {
        const LocalDay start = dayOf(year, 4, 1);
        for (LocalDay day = start; day <= std::min(last, dayOf(year, 9, 30)); day += std::chrono::days{1}) {
            const auto gone = (day - start).count();
            const std::int64_t mean =
                (gone <= 105 ? 4'000 + 143 * gone : 19'000 - 103 * (gone - 105)) + (year % 3 - 1) * 1'000;
            Temperature one;
            one.id = temperatureId(session.programme()->id, told.id, day);
            one.station = told.id;
            one.day = day;
            one.minimum = MilliCelsius{mean - 6'000};
            one.maximum = MilliCelsius{mean + 6'000};
            edits.push_back(creation(one, {}));
        }
    }
    keep(std::move(edits));
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
        || gather<Assignment>(reader, kind, ids) || gather<PublishedBulletin>(reader, kind, ids)
        || gather<NextYear>(reader, kind, ids) || gather<Station>(reader, kind, ids)
        || gather<Temperature>(reader, kind, ids);
    if (!isKnown) qFatal("no such kind: %s", qPrintable(kind));
    return ids;
}
