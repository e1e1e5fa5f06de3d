// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include "domain/rules/walk_result.h"

namespace duskrow::text {

// A walk in the few words that a phone in the field has room for.

// "26 per m²"; "none found" where that is so; empty without a frame.
QString shortDensity(const domain::FrameEstimate& estimate, const QLocale& locale = {});

// "likely 15 to 44 · your threshold 21"; says why where there is no range.
QString shortRange(const domain::WalkResult& result, const QLocale& locale = {});

// "Too close to call. About 5 more frames."
QString shortCall(const domain::WalkResult& result, const QLocale& locale = {});

// "about 65 paces" for a distance on foot; a pace is 0.77 m (common practice, no source).
QString paces(domain::Metres distance, const QLocale& locale = {});

} // namespace duskrow::text
