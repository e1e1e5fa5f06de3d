// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include "domain/rules/geodesy.h"

namespace duskrow::text {

QString name(domain::CompassPoint point); // "north-east"

// The way to a place, as a sentence: "You are 8 m away.", "3.4 km to the north-east."
QString wayThere(const domain::Course& course, const QLocale& locale = {});

// The same at the edge of a row: "8 m", "3.4 km ↗". The arrow is for eyes only: wayThere says it in words.
QString wayMark(const domain::Course& course, const QLocale& locale = {});

} // namespace duskrow::text
