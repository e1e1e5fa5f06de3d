// SPDX-License-Identifier: MIT
#pragma once

#include <QDate>
#include <QDateTime>
#include <QElapsedTimer>

#include <optional>

#include "domain/base/time.h"

namespace duskrow::app {

// The only place where the device's clock and calendar meet ours. Everything else is handed a Moment.
class Clock {
public:
    // The device's clock.
    Clock() = default;
    // Stands still on a day (demo and tests): that day at half past seven in the evening, plus what has
    // really passed since, so that two acts never share a moment.
    explicit Clock(domain::LocalDay day);

    [[nodiscard]] domain::Moment now() const;
    [[nodiscard]] domain::LocalDay today() const { return now().day; }

private:
    std::optional<domain::LocalDay> m_day;
    QElapsedTimer m_passed;
};

QDate toQDate(domain::LocalDay day);
domain::LocalDay toLocalDay(QDate date);

} // namespace duskrow::app
