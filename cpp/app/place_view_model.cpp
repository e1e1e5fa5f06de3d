// SPDX-License-Identifier: MIT
#include "app/place_view_model.h"

#include <QLocale>

#include <cmath>

#include "app/draft_entries.h"
#include "domain/rules/typed_place.h"
#include "text/amounts.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// An hour and more of standing: what is older adds nothing.
constexpr std::size_t mostFixes = 5000;
constexpr int coordinateDecimals = 5; // about a metre

const auto foundKey = QStringLiteral("found");

QString degrees(double value)
{
    return QLocale().toString(value, 'f', coordinateDecimals);
}

std::optional<qint64> wholeOf(const QJsonObject& object, const QString& key)
{
    const QJsonValue held = object.value(key);
    return held.isDouble() ? std::optional(held.toInteger()) : std::nullopt;
}

} // namespace

PlaceViewModel::PlaceViewModel(place::PositionSource& source, const Clock& clock, QObject* parent)
    : QObject(parent), m_source(source), m_clock(clock)
{
    connect(this, &PlaceViewModel::edited, this, &PlaceViewModel::changed);
    connect(&source, &place::PositionSource::reading, this, &PlaceViewModel::hear);
    connect(&source, &place::PositionSource::availabilityChanged, this, &PlaceViewModel::changed);
}

void PlaceViewModel::setTyping(bool typing)
{
    if (typing == m_typing) return;
    m_typing = typing;
    m_typedError.clear();
    Q_EMIT edited();
}

int PlaceViewModel::fixes() const
{
    return m_average ? static_cast<int>(m_average->used) : 0;
}

QString PlaceViewModel::accuracy() const
{
    // Rounded up: a position is never called better than it is.
    return m_average ? text::number(std::llround(std::ceil(m_average->accuracy.value()))) : QString();
}

QString PlaceViewModel::fixWords() const
{
    return fixes() == 1 ? tr("one fix") : tr("%1 fixes averaged").arg(text::number(fixes()));
}

bool PlaceViewModel::settled() const
{
    return m_average && isSettled(*m_average);
}

QString PlaceViewModel::coordinates() const
{
    if (!m_found) return {};
    return tr("%1, %2").arg(degrees(m_found->point.latitude()), degrees(m_found->point.longitude()));
}

QString PlaceViewModel::origin() const
{
    if (!m_found) return {};
    if (m_found->method == FixMethod::Typed) return tr("typed in");
    QStringList parts;
    if (m_found->accuracy) parts << text::accuracy(*m_found->accuracy);
    if (m_found->count)
        parts << (*m_found->count == 1 ? tr("one fix") : tr("%1 fixes").arg(text::number(*m_found->count)));
    return parts.join(QStringLiteral(", "));
}

bool PlaceViewModel::hasTyped() const
{
    return typing() && !(m_latitude.trimmed() + m_longitude.trimmed()).isEmpty();
}

void PlaceViewModel::measure()
{
    if (m_measuring) return;
    m_measuring = true;
    m_fixes.clear();
    m_average.reset();
    // A log that has come to its end stands where it ended; a receiver speaks again within a second.
    if (m_source.isLog()) hear();
    Q_EMIT changed();
}

void PlaceViewModel::rest()
{
    m_measuring = false;
}

void PlaceViewModel::hear()
{
    if (!m_measuring || m_found || !m_source.last()) return;
    const place::Reading& reading = *m_source.last();
    if (m_fixes.size() >= mostFixes) m_fixes.erase(m_fixes.begin());
    m_fixes.push_back({reading.point, reading.accuracy, reading.at});
    m_average = averageFixes(m_fixes);
    Q_EMIT changed();
}

bool PlaceViewModel::takeTyped()
{
    const auto point = parsePlace(m_latitude.trimmed().toStdString(), m_longitude.trimmed().toStdString());
    m_typedError = point ? QString() : text::sentence(point.error());
    if (!point) {
        Q_EMIT changed();
        return false;
    }
    setFound({*point, FixMethod::Typed, {}, m_clock.now().at, {}});
    return true;
}

bool PlaceViewModel::take()
{
    if (typing()) return takeTyped();
    if (!m_average) return false;
    setFound({m_average->place, FixMethod::Satellite, m_average->accuracy, m_fixes.back().at, fixes()});
    return true;
}

void PlaceViewModel::again()
{
    m_found.reset();
    rest();
    measure();
    Q_EMIT edited();
}

void PlaceViewModel::setFound(const KeptPlace& place)
{
    m_found = place;
    Q_EMIT edited();
}

QJsonObject PlaceViewModel::entries() const
{
    QJsonObject all = entriesOf(*this);
    // Typing for want of a receiver is no choice: there may be one the next time.
    all.insert(QStringLiteral("typing"), m_typing);
    if (!m_found) return all;
    QJsonObject found{{QStringLiteral("lat_e7"), m_found->point.latE7},
        {QStringLiteral("lon_e7"), m_found->point.lonE7},
        {QStringLiteral("typed"), m_found->method == FixMethod::Typed}};
    if (m_found->accuracy)
        found.insert(QStringLiteral("accuracy_mm"), qint64{std::llround(m_found->accuracy->value() * 1000)});
    if (m_found->at) found.insert(QStringLiteral("at_ms"), qint64{toMs(*m_found->at)});
    if (m_found->count) found.insert(QStringLiteral("count"), *m_found->count);
    all.insert(foundKey, found);
    return all;
}

void PlaceViewModel::takeEntries(const QJsonObject& entries)
{
    app::takeEntries(*this, entries);
    const QJsonObject found = entries.value(foundKey).toObject();
    if (found.isEmpty()) return;
    KeptPlace place;
    place.point = {
        found.value(QLatin1String("lat_e7")).toInt(), found.value(QLatin1String("lon_e7")).toInt()};
    place.method = found.value(QLatin1String("typed")).toBool() ? FixMethod::Typed : FixMethod::Satellite;
    if (const auto mm = wholeOf(found, QStringLiteral("accuracy_mm")))
        place.accuracy = toMetres(Millimetres{*mm});
    if (const auto ms = wholeOf(found, QStringLiteral("at_ms"))) place.at = instantFromMs(*ms);
    if (const auto count = wholeOf(found, QStringLiteral("count"))) place.count = static_cast<int>(*count);
    setFound(place);
}

} // namespace duskrow::app
