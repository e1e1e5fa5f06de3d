// SPDX-License-Identifier: MIT
#pragma once

#include <QDate>
#include <QLocale>
#include <QString>

#include "domain/base/time.h"
#include "domain/base/units.h"

namespace duskrow::text {

// Numbers with the words that say what they mean. All take the reader's locale.

QString number(std::int64_t value, const QLocale& locale = {}); // "1,200"
QString moths(domain::Moths count, const QLocale& locale = {}); // "1 moth", "47 moths"
QString bees(domain::Bees count, const QLocale& locale = {}); // "2 bees"
QString larvae(domain::Larvae count, const QLocale& locale = {}); // "1 larva", "26 larvae"
QString nights(domain::Nights count, const QLocale& locale = {}); // "7 nights"
QString days(std::chrono::days count, const QLocale& locale = {}); // "1 day", "56 days"
QString perNight(domain::MothsPerNight rate, const QLocale& locale = {}); // "6.7 a night"
QString soFar(domain::Moths count, const QLocale& locale = {}); // "259 so far"
QString atLeast(domain::Moths count, const QLocale& locale = {}); // "at least 140"
QString range(domain::Moths low, domain::Moths high, const QLocale& locale = {}); // "330 to 640"

// Heights in whole centimetres, which is as well as anybody reads a stake.
QString height(domain::Millimetres value, const QLocale& locale = {}); // "118 cm"

// The entrance over the canopy: "23 cm clear", "level with the canopy", "5 cm below the canopy".
QString clearance(domain::Millimetres value, const QLocale& locale = {});

// Over ground: metres below a kilometre, then kilometres with one decimal below ten.
QString distance(domain::Metres value, const QLocale& locale = {}); // "8 m", "3.4 km", "12 km"
QString accuracy(domain::Metres value, const QLocale& locale = {}); // "within 6 m"

QDate calendarDay(domain::LocalDay day);
QString day(domain::LocalDay day, const QLocale& locale = {}); // "Tuesday 7 July"
QString dayAndYear(domain::LocalDay day, const QLocale& locale = {}); // "Tuesday 7 July 2026"
QString shortDay(domain::LocalDay day, const QLocale& locale = {}); // "7 Jul"

// iso  1 is Monday, 7 is Sunday
QString weekday(int iso, const QLocale& locale = {}); // "Tuesday"
QString timeOfDay(int minute, const QLocale& locale = {}); // "12:00"

} // namespace duskrow::text
