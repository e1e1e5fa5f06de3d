// SPDX-License-Identifier: MIT
#include "text/frame_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

#include "domain/rules/sample_size.h"
#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct FrameWords {
    Q_DECLARE_TR_FUNCTIONS(Frames)
};

// Two significant digits are as much as a walk knows.
QString plain(double value, const QLocale& locale)
{
    return locale.toString(value, 'f', value < 9.95 && value != 0.0 ? 1 : 0);
}

// Frames, or stops where several frames make one.
QString looks(const FrameEstimate& estimate, std::int64_t count, const QLocale& locale)
{
    if (estimate.frames.value() == estimate.stops) return frames(Frames{count}, locale);
    return FrameWords::tr("%1 stops").arg(locale.toString(static_cast<qlonglong>(count)));
}

QString counted(const FrameEstimate& estimate, const QLocale& locale)
{
    QString where = frames(estimate.frames, locale);
    if (estimate.frames.value() != estimate.stops)
        //: "6 stops with 9 frames"
        where = FrameWords::tr("%1 with %2").arg(looks(estimate, estimate.stops, locale), where);
    //: "10 frames, 55 larvae: 22 larvae per m² (5.5 a frame)."
    return FrameWords::tr("%1, %2: %3 (%4 a frame).")
        .arg(where, larvae(estimate.larvae, locale), density(*estimate.mean, locale),
            plain(estimate.meanPerFrame->value(), locale));
}

// A share of 100 fields: "about 4", "fewer than 1".
QString ofHundred(double share, const QLocale& locale)
{
    const double whole = std::round(100.0 * share);
    if (whole < 1.0) return share > 0.0 ? FrameWords::tr("fewer than 1") : locale.toString(0);
    return locale.toString(static_cast<int>(whole));
}

QString fieldsOf(const OperatingRow& row, LarvaePerSquareMetre threshold, const QLocale& locale)
{
    const double factor = row.density.value() / threshold.value();
    const QString dense = density(row.density, locale);
    const auto is = [factor](double other) { return std::abs(factor - other) < 1e-6; };
    if (is(1.0)) return FrameWords::tr("Of 100 fields right at your threshold (%1)").arg(dense);
    if (is(0.5)) return FrameWords::tr("Of 100 fields at half your threshold (%1)").arg(dense);
    if (is(2.0 / 3.0)) return FrameWords::tr("Of 100 fields a third below your threshold (%1)").arg(dense);
    if (is(1.5)) return FrameWords::tr("Of 100 fields half as dense again as your threshold (%1)").arg(dense);
    if (is(2.0)) return FrameWords::tr("Of 100 fields at twice your threshold (%1)").arg(dense);
    return FrameWords::tr("Of 100 fields with %1").arg(dense);
}

} // namespace

QString frames(Frames count, const QLocale& locale)
{
    if (count.value() == 1) return FrameWords::tr("1 frame");
    return FrameWords::tr("%1 frames").arg(locale.toString(static_cast<qlonglong>(count.value())));
}

QString density(LarvaePerSquareMetre value, const QLocale& locale)
{
    return FrameWords::tr("%1 larvae per m²").arg(plain(value.value(), locale));
}

QStringList estimateSentences(const FrameEstimate& estimate, const QLocale& locale)
{
    if (estimate.standing == FrameStanding::NoFrames) return {FrameWords::tr("No frame was counted.")};
    QStringList sentences{counted(estimate, locale)};
    const auto end = [&](LarvaePerSquareMetre value) { return plain(value.value(), locale); };
    switch (estimate.standing) {
    case FrameStanding::NoFrames:
        break;
    case FrameStanding::TooFewForSpread:
        sentences << FrameWords::tr("Too few to know how much the field varies, so there is no range. "
                                    "Count more frames.");
        break;
    case FrameStanding::NoneFound:
        sentences << FrameWords::tr("None found: the field probably has fewer than %1, but not surely none.")
                         .arg(density(*estimate.upperBound, locale));
        break;
    case FrameStanding::TooFewForRange:
        sentences << FrameWords::tr("Too few frames for a useful range: it goes from %1 to %2 larvae per m².")
                         .arg(end(estimate.range->low), end(estimate.range->high));
        break;
    case FrameStanding::Range:
        sentences << FrameWords::tr(
            "The whole field probably has between %1 and %2 larvae per m² (95 % range; approximate where a "
            "walk stopped early).")
                         .arg(end(estimate.range->low), end(estimate.range->high));
        break;
    }
    return sentences;
}

QString chanceSentence(const FrameEstimate& estimate, LarvaePerSquareMetre threshold, const QLocale& locale)
{
    if (!estimate.probabilityAbove) return {};
    const double percent = std::round(100.0 * *estimate.probabilityAbove);
    const QString dense = density(threshold, locale);
    if (percent < 1.0)
        return FrameWords::tr("The chance that the field has more than %1 is below 1 %.").arg(dense);
    if (percent > 99.0)
        return FrameWords::tr("The chance that the field has more than %1 is above 99 %.").arg(dense);
    return FrameWords::tr("The chance that the field has more than %1 is about %2 %.")
        .arg(dense, locale.toString(percent, 'f', 0));
}

QString stopSentence(
    const StopPlan& plan, const StopReport& report, const FrameEstimate& estimate, const QLocale& locale)
{
    const auto named = [&](std::int64_t count) { return looks(estimate, count, locale); };
    switch (report.state) {
    case StopState::Below:
        return FrameWords::tr("%1 after %2: far enough below the threshold to stop.")
            .arg(larvae(estimate.larvae, locale), named(estimate.stops));
    case StopState::Above:
        return FrameWords::tr("%1 after %2: far enough above the threshold to stop.")
            .arg(larvae(estimate.larvae, locale), named(estimate.stops));
    case StopState::Undecided:
        return FrameWords::tr("After %1 the field is near the threshold. Look again in two or "
                              "three days.")
            .arg(named(estimate.stops));
    case StopState::GoOn:
        break;
    }
    const std::int64_t next = std::max<std::int64_t>(estimate.stops + 1, plan.design.fewest);
    const QString above = larvae(*aboveFrom(plan, next), locale);
    QString sentence = report.isHeldByPatchiness
        ? FrameWords::tr("Go on: the total is low, but the counts are so uneven that a patch may be missed.")
        : FrameWords::tr("Go on.");
    sentence += QLatin1Char(' ');
    const auto below = belowUpTo(plan, next);
    if (below)
        return sentence
            + FrameWords::tr("After %1 stop at %2 or fewer in all (below), or at %3 or more (above).")
                  .arg(named(next), larvae(*below, locale), above);
    return sentence
        + FrameWords::tr("After %1 stop at %2 or more in all (above); it is too early to stop below.")
              .arg(named(next), above);
}

QString verdictSentence(
    FrameVerdict verdict, StopState state, LarvaePerSquareMetre threshold, const QLocale& locale)
{
    const QString dense = density(threshold, locale);
    switch (verdict) {
    case FrameVerdict::Below:
        return FrameWords::tr("Below your threshold of %1.").arg(dense);
    case FrameVerdict::Above:
        return FrameWords::tr("Above your threshold of %1.").arg(dense);
    case FrameVerdict::TooCloseToCall:
        break;
    }
    if (state == StopState::Below || state == StopState::Above)
        return FrameWords::tr(
            "Too close to call at your threshold of %1 all the same: the counts are too uneven "
            "to trust the total. Count more frames.")
            .arg(dense);
    return FrameWords::tr("Too close to call at your threshold of %1.").arg(dense);
}

QString operatingSentence(const OperatingRow& row, LarvaePerSquareMetre threshold, const QLocale& locale)
{
    //: "Of 100 fields a third below your threshold (13 larvae per m²), about 91 are called below, ..."
    return FrameWords::tr("%1, about %2 are called below, %3 are called above and %4 stay open.")
        .arg(fieldsOf(row, threshold, locale), ofHundred(row.below, locale), ofHundred(row.above, locale),
            ofHundred(row.undecided(), locale));
}

QString textbookSentence(const TextbookFigures& figures, const QLocale& locale)
{
    return FrameWords::tr(
        "A textbook range (Student’s t) would be %1 to %2 larvae per m². With so few and so uneven "
        "counts it holds the truth in 80 to 90 of 100 walks only, so it is not used here.")
        .arg(plain(figures.tRange.low.value(), locale), plain(figures.tRange.high.value(), locale));
}

QString precisionSentence(LarvaePerFrame mean, double dispersion, const QLocale& locale)
{
    const auto half = framesForHalfWidth(mean, 0.5, Clumped{dispersion});
    const auto quarter = framesForHalfWidth(mean, 0.25, Clumped{dispersion});
    if (!half || !quarter) return {};
    return FrameWords::tr("To know a mean of %1 a frame within 50 % takes about %2, within 25 % about %3 "
                          "(95 %, as patchy as k = %4).")
        .arg(plain(mean.value(), locale), frames(*half, locale), frames(*quarter, locale),
            locale.toString(dispersion, 'g', 2));
}

} // namespace duskrow::text
