// SPDX-License-Identifier: MIT
#include "text/walk_text.h"

#include <QCoreApplication>

#include <cmath>

#include "text/amounts.h"
#include "text/frame_text.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct WalkWords {
    Q_DECLARE_TR_FUNCTIONS(Walk)
};

// Two significant digits are as much as a walk knows.
QString plain(LarvaePerSquareMetre value, const QLocale& locale)
{
    return locale.toString(value.value(), 'f', value.value() < 9.95 && value.value() != 0.0 ? 1 : 0);
}

QString spread(const FrameEstimate& estimate, const QLocale& locale)
{
    switch (estimate.standing) {
    case FrameStanding::NoFrames:
        return WalkWords::tr("no frame yet");
    case FrameStanding::TooFewForSpread:
        return WalkWords::tr("too few frames for a range");
    case FrameStanding::NoneFound:
        return WalkWords::tr("probably below %1 per m²").arg(plain(*estimate.upperBound, locale));
    case FrameStanding::TooFewForRange:
        return WalkWords::tr("too few frames: %1 to %2")
            .arg(plain(estimate.range->low, locale), plain(estimate.range->high, locale));
    case FrameStanding::Range:
        return WalkWords::tr("likely %1 to %2")
            .arg(plain(estimate.range->low, locale), plain(estimate.range->high, locale));
    }
    return {};
}

// How much further to walk, where that would settle it.
QString onwards(const WalkResult& result, const QLocale& locale)
{
    if (!result.more) return WalkWords::tr("Look again in a few days.");
    if (result.plan && result.estimate.stops < result.plan->design.fewest)
        return WalkWords::tr("At least %1.").arg(frames(Frames{result.plan->design.fewest}, locale));
    return result.more->value() == 1
        ? WalkWords::tr("About one more frame.")
        : WalkWords::tr("About %1 more frames.")
              .arg(locale.toString(static_cast<qlonglong>(result.more->value())));
}

} // namespace

QString shortDensity(const FrameEstimate& estimate, const QLocale& locale)
{
    if (!estimate.mean) return {};
    if (estimate.standing == FrameStanding::NoneFound) return WalkWords::tr("none found");
    return WalkWords::tr("%1 per m²").arg(plain(*estimate.mean, locale));
}

QString shortRange(const WalkResult& result, const QLocale& locale)
{
    const QString range = spread(result.estimate, locale);
    if (!result.threshold) return range;
    return WalkWords::tr("%1 · your threshold %2")
        .arg(range, locale.toString(std::llround(result.threshold->larvae.value())));
}

QString shortCall(const WalkResult& result, const QLocale& locale)
{
    if (!result.threshold) return WalkWords::tr("Say what control costs, and the lines say when to stop.");
    if (!result.plan) return WalkWords::tr("No stop rule can be drawn for this threshold.");
    switch (result.verdict) {
    case FrameVerdict::Below:
        return WalkWords::tr("Below your threshold: you may stop.");
    case FrameVerdict::Above:
        return WalkWords::tr("Above your threshold: you may stop.");
    case FrameVerdict::TooCloseToCall:
        break;
    }
    return WalkWords::tr("Too close to call. %1").arg(onwards(result, locale));
}

QString paces(Metres distance, const QLocale& locale)
{
    constexpr double metresAPace = 0.77;
    const auto count = std::llround(distance.value() / metresAPace / 5.0) * 5;
    return WalkWords::tr("about %1 paces").arg(locale.toString(static_cast<qlonglong>(count)));
}

} // namespace duskrow::text
