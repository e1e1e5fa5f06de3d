// SPDX-License-Identifier: MIT
#include "app/clock.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {
constexpr int standingHour = 19;
constexpr int standingMinute = 30;
} // namespace

Clock::Clock(LocalDay day) : m_day(day)
{
    m_passed.start();
}

Moment Clock::now() const
{
    const QDateTime local = m_day ? QDateTime(toQDate(*m_day), QTime(standingHour, standingMinute), Qt::UTC)
                                        .addMSecs(m_passed.elapsed())
                                  : QDateTime::currentDateTime();
    return {toLocalDay(local.date()), instantFromMs(local.toMSecsSinceEpoch()),
        std::chrono::minutes{local.offsetFromUtc() / 60}};
}

QDate toQDate(LocalDay day)
{
    const std::chrono::year_month_day ymd{day};
    return {static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())),
        static_cast<int>(static_cast<unsigned>(ymd.day()))};
}

LocalDay toLocalDay(QDate date)
{
    return dayOf(date.year(), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

} // namespace duskrow::app
