// SPDX-License-Identifier: MIT
#include "domain/rules/heat_course.h"

#include <algorithm>
#include <map>

namespace duskrow::domain {

using std::chrono::days;
using std::chrono::year_month_day;

namespace {

DayTemperature between(const DayTemperature& before, const DayTemperature& after, LocalDay day)
{
    const double part = static_cast<double>((day - before.day).count())
        / static_cast<double>((after.day - before.day).count());
    return {day, before.minimum + part * (after.minimum - before.minimum),
        before.maximum + part * (after.maximum - before.maximum)};
}

// The same day so many years earlier; the last of February stands for a leap day.
LocalDay yearsBefore(LocalDay day, int years)
{
    const year_month_day date{day};
    year_month_day earlier = (date.year() - std::chrono::years{years}) / date.month() / date.day();
    if (!earlier.ok()) earlier = earlier.year() / earlier.month() / std::chrono::day{28};
    return LocalDay{earlier};
}

using HeatByDay = std::map<LocalDay, double>;

// The warmth of each day that is known; a day followed by a hole has its own minimum for the next one's.
HeatByDay heatOf(const HeatTerms& terms, const std::vector<DayTemperature>& known)
{
    HeatByDay heat;
    for (std::size_t i = 0; i < known.size(); ++i) {
        const bool hasNext = i + 1 < known.size() && known[i + 1].day == known[i].day + days{1};
        const double next = hasNext ? known[i + 1].minimum : known[i].minimum;
        heat.emplace_hint(
            heat.end(), known[i].day, degreeDays(terms, known[i].minimum, known[i].maximum, next));
    }
    return heat;
}

// Past years that have every day that the course needs filled.
std::vector<int> yearsFor(const HeatByDay& heat, const std::vector<LocalDay>& missing)
{
    std::vector<int> years;
    if (heat.empty() || missing.empty()) return years;
    const int most = yearOf(missing.back()) - yearOf(heat.begin()->first);
    for (int back = 1; back <= most; ++back)
        if (std::all_of(missing.begin(), missing.end(),
                [&](LocalDay day) { return heat.contains(yearsBefore(day, back)); }))
            years.push_back(back);
    return years;
}

// Of several sums the lowest and highest, without the outer twentieths where there are ten or more.
std::pair<double, double> bandOf(std::vector<double> sums)
{
    std::sort(sums.begin(), sums.end());
    const std::size_t off = sums.size() / 20 + (sums.size() >= 10 && sums.size() < 20 ? 1 : 0);
    return {sums[off], sums[sums.size() - 1 - off]};
}

} // namespace

BridgedDays bridged(std::span<const DayTemperature> measured)
{
    BridgedDays result;
    for (const DayTemperature& day : measured) {
        if (!result.days.empty()) {
            const DayTemperature before = result.days.back();
            const long missing = (day.day - before.day).count() - 1;
            if (missing > longestBridged) result.gaps.push_back({before.day + days{1}, day.day - days{1}});
            if (missing > 0 && missing <= longestBridged)
                for (LocalDay at = before.day + days{1}; at < day.day; at += days{1}) {
                    result.days.push_back(between(before, day, at));
                    result.interpolated.push_back(at);
                }
        }
        result.days.push_back(day);
    }
    return result;
}

HeatCourse heatCourse(
    const HeatTerms& terms, std::span<const DayTemperature> station, LocalDay from, LocalDay to)
{
    HeatCourse course;
    const BridgedDays known = bridged(station);
    const HeatByDay heat = heatOf(terms, known.days);
    for (const DayTemperature& day : station)
        if (day.day >= from && day.day <= to) course.measuredUntil = day.day;
    std::vector<LocalDay> missing;
    for (LocalDay day = from; day <= to; day += days{1})
        if (!heat.contains(day)) missing.push_back(day);
    const std::vector<int> years = yearsFor(heat, missing);
    course.pastYears = years.size();
    const LocalDay last = years.empty() ? course.measuredUntil.value_or(from - days{1}) : to;
    for (std::size_t i = 0; i < missing.size();) {
        DayGap gap{missing[i], missing[i]};
        while (++i < missing.size() && missing[i] == gap.last + days{1}) gap.last = missing[i];
        if (course.measuredUntil && gap.last < *course.measuredUntil) course.gaps.push_back(gap);
    }
    course.isAtLeast = years.empty() && !course.gaps.empty();
    double total = 0.0;
    std::vector<double> filled(years.size(), 0.0); // by the past years, over all days filled so far
    double measured = 0.0;
    for (LocalDay day = from; day <= last; day += days{1}) {
        HeatPoint point{day};
        if (const auto found = heat.find(day); found != heat.end()) {
            point.degreeDays = found->second;
            measured += found->second;
            const bool isBridged =
                std::binary_search(known.interpolated.begin(), known.interpolated.end(), day);
            point.source = isBridged ? HeatSource::Interpolated : HeatSource::Measured;
        } else if (years.empty()) {
            continue; // nothing stands in for it: the gap is told
        } else {
            for (std::size_t i = 0; i < years.size(); ++i) {
                const double past = heat.at(yearsBefore(day, years[i]));
                filled[i] += past;
                point.degreeDays += past / static_cast<double>(years.size());
            }
            point.source = HeatSource::Expected;
        }
        total += point.degreeDays;
        point.total = point.low = point.high = total;
        if (!filled.empty()) {
            const auto [low, high] = bandOf(filled);
            point.low = std::min(total, measured + low);
            point.high = std::max(total, measured + high);
        }
        course.points.push_back(point);
    }
    return course;
}

HeatCourse::Reached HeatCourse::reaching(double sum) const
{
    Reached reached;
    for (const HeatPoint& point : points) {
        if (!reached.earliest && point.high >= sum) reached.earliest = point.day;
        if (!reached.middle && point.total >= sum) {
            reached.middle = point.day;
            reached.isMeasured = measuredUntil && point.day <= *measuredUntil && point.low == point.high;
        }
        if (!reached.latest && point.low >= sum) reached.latest = point.day;
    }
    return reached;
}

double HeatCourse::totalBy(LocalDay day) const
{
    double total = 0.0;
    for (const HeatPoint& point : points) {
        if (point.day > day) break;
        total = point.total;
    }
    return total;
}

} // namespace duskrow::domain
