// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>

#include "app/today_list_model.h"
#include "app/today_stops.h"

namespace duskrow::app {

struct TodayWords {
    Q_DECLARE_TR_FUNCTIONS(Today)
};

// A stop in the words of the list.
TodayRow rowOf(const Stop& stop, domain::LocalDay today);

// "Two stops today", "Nothing due today"
QString headingOf(std::size_t stops);

} // namespace duskrow::app
