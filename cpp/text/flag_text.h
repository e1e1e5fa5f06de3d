// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include "domain/rules/flag.h"
#include "text/animal.h"

namespace duskrow::text {

// What a record is asked about, in two to five words: "Far above the traps around".
QString checkName(domain::Check check);

// Why, in one sentence with the numbers. It never says what somebody may have meant.
QString flagReason(const domain::Flag& flag, const QLocale& locale = {}, const Animal& animal = {});

// How many good counts get such a flag: "1 good count in 400 gets this flag; it may be real."
QString goodCounts(domain::Check check, const QLocale& locale = {});

// One count that another was held against: "31 in 7 nights, 4.2 km away".
QString countNearby(const domain::CountNearby& count, const QLocale& locale = {});

} // namespace duskrow::text
