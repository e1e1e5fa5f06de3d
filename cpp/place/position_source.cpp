// SPDX-License-Identifier: MIT
#include "place/position_source.h"

#include <QNmeaPositionInfoSource>

#include <cmath>

#include "place/nmea_feed.h"

namespace duskrow::place {

using namespace duskrow::domain;

namespace {

// Metres a receiver of a phone is off for each unit of dilution that the log tells; a usual planning value,
// from memory of receiver manuals.
constexpr double userEquivalentRangeError = 5.0;
// What is assumed when a receiver does not say how good its fix is.
constexpr double unknownAccuracy = 25.0;

} // namespace

PositionSource::~PositionSource() = default;

bool PositionSource::useDevice()
{
    m_isLog = false;
    listenTo(std::unique_ptr<QGeoPositionInfoSource>(QGeoPositionInfoSource::createDefaultSource(nullptr)));
    return isAvailable();
}

Result<Done> PositionSource::useLog(const QString& path)
{
    auto feed = std::make_unique<NmeaFeed>(path);
    if (!feed->open(QIODevice::ReadOnly))
        return Error{ErrorCode::PositionLogUnreadable, {path.toStdString()}};
    auto source = std::make_unique<QNmeaPositionInfoSource>(QNmeaPositionInfoSource::RealTimeMode);
    source->setUserEquivalentRangeError(userEquivalentRangeError);
    feed->setParent(source.get());
    source->setDevice(feed.release());
    m_isLog = true;
    listenTo(std::move(source));
    return Done{};
}

void PositionSource::listenTo(std::unique_ptr<QGeoPositionInfoSource> source)
{
    m_source = std::move(source);
    m_last.reset();
    Q_EMIT availabilityChanged();
    if (!m_source) return;
    connect(
        m_source.get(), &QGeoPositionInfoSource::positionUpdated, this, [this](const QGeoPositionInfo& info) {
            const QGeoCoordinate place = info.coordinate();
            if (!place.isValid()) return;
            const double told = info.attribute(QGeoPositionInfo::HorizontalAccuracy);
            m_last = Reading{{static_cast<std::int32_t>(std::lround(place.latitude() * 1e7)),
                                 static_cast<std::int32_t>(std::lround(place.longitude() * 1e7))},
                Metres{std::isfinite(told) && told > 0 ? told : unknownAccuracy},
                instantFromMs(info.timestamp().toMSecsSinceEpoch())};
            Q_EMIT reading();
        });
    m_source->startUpdates();
}

} // namespace duskrow::place
