// SPDX-License-Identifier: MIT
#pragma once

#include <QGeoPositionInfoSource>
#include <QObject>

#include <memory>
#include <optional>

#include "domain/base/time.h"

namespace duskrow::place {

// One reading of the receiver.
struct Reading {
    domain::GeoPoint point;
    domain::Metres accuracy; // radius within which two of three readings lie
    domain::Instant at;
};

// The device's own receiver, or a recorded NMEA log in its place.
class PositionSource : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    ~PositionSource() override;

    // Uses the device's receiver. False when there is none.
    bool useDevice();

    // Plays a log instead.
    //
    // Errors  PositionLogUnreadable {path}
    domain::Result<domain::Done> useLog(const QString& path);

    [[nodiscard]] bool isAvailable() const { return m_source != nullptr; }
    [[nodiscard]] bool isLog() const { return m_isLog; }
    [[nodiscard]] const std::optional<Reading>& last() const { return m_last; }

Q_SIGNALS:
    void reading();
    void availabilityChanged();

private:
    void listenTo(std::unique_ptr<QGeoPositionInfoSource> source);

    std::unique_ptr<QGeoPositionInfoSource> m_source;
    std::optional<Reading> m_last;
    bool m_isLog = false;
};

} // namespace duskrow::place
