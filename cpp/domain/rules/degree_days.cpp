// SPDX-License-Identifier: MIT
#include "domain/rules/degree_days.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace duskrow::domain {

namespace {

// What a day has above one temperature: degree-days, and the share of the day that is so warm.
struct Above {
    double heat = 0.0;
    double share = 0.0;
};

enum class DayCourse { Flat, Triangle, Sine };

// The closed form: every cut-off is made of what lies above the lower and above the upper limit.
Above above(DayCourse course, double limit, double minimum, double maximum)
{
    const double mean = (minimum + maximum) / 2.0;
    if (course == DayCourse::Flat) return {std::max(mean - limit, 0.0), mean > limit ? 1.0 : 0.0};
    if (limit >= maximum) return {};
    if (limit <= minimum) return {mean - limit, 1.0};
    if (course == DayCourse::Triangle) {
        const double part = maximum - limit;
        const double width = maximum - minimum;
        return {part * part / (2.0 * width), part / width};
    }
    using std::numbers::pi;
    const double half = (maximum - minimum) / 2.0;
    const double angle = std::asin(std::clamp((limit - mean) / half, -1.0, 1.0));
    return {((mean - limit) * (pi / 2.0 - angle) + half * std::cos(angle)) / pi, 0.5 - angle / pi};
}

double betweenLimits(const HeatTerms& terms, DayCourse course, double minimum, double maximum)
{
    const double all = above(course, terms.lower, minimum, maximum).heat;
    if (terms.cutOff == CutOff::None || !terms.upper) return all;
    const Above beyond = above(course, *terms.upper, minimum, maximum);
    switch (terms.cutOff) {
    case CutOff::None:
        break;
    case CutOff::Horizontal:
        return all - beyond.heat;
    case CutOff::Intermediate:
        return all - 2.0 * beyond.heat;
    case CutOff::Vertical:
        return all - beyond.heat - (*terms.upper - terms.lower) * beyond.share;
    }
    return all;
}

double clampedAverage(const HeatTerms& terms, double minimum, double maximum)
{
    const auto within = [&](double temperature) {
        const double raised = std::max(temperature, terms.lower);
        return terms.upper && terms.cutOff != CutOff::None ? std::min(raised, *terms.upper) : raised;
    };
    return (within(minimum) + within(maximum)) / 2.0 - terms.lower;
}

} // namespace

Result<Done> checkTerms(const HeatTerms& terms)
{
    if (terms.cutOff == CutOff::None) return Done{};
    if (!terms.upper) return Error{ErrorCode::Empty, {"upper_limit"}};
    if (!(*terms.upper > terms.lower)) return Error{ErrorCode::LimitsCrossed, {}};
    const bool isHard = terms.cutOff == CutOff::Intermediate || terms.cutOff == CutOff::Vertical;
    if (isHard && terms.method == HeatMethod::AverageClamped)
        return Error{ErrorCode::UnknownCode,
            {"cut_off", terms.cutOff == CutOff::Vertical ? "vertical" : "intermediate", "none, horizontal"}};
    return Done{};
}

double rawDegreeDays(const HeatTerms& terms, double minimum, double maximum, double nextMinimum)
{
    const auto halves = [&](DayCourse course) {
        // A night that is warmer than the day before it was: the second half of the day is even.
        const double second = std::min(nextMinimum, maximum);
        return (betweenLimits(terms, course, minimum, maximum)
                   + betweenLimits(terms, course, second, maximum))
            / 2.0;
    };
    switch (terms.method) {
    case HeatMethod::Average:
        return betweenLimits(terms, DayCourse::Flat, minimum, maximum);
    case HeatMethod::AverageClamped:
        return clampedAverage(terms, minimum, maximum);
    case HeatMethod::SingleTriangle:
        return betweenLimits(terms, DayCourse::Triangle, minimum, maximum);
    case HeatMethod::DoubleTriangle:
        return halves(DayCourse::Triangle);
    case HeatMethod::SingleSine:
        return betweenLimits(terms, DayCourse::Sine, minimum, maximum);
    case HeatMethod::DoubleSine:
        return halves(DayCourse::Sine);
    }
    return 0.0;
}

double degreeDays(const HeatTerms& terms, double minimum, double maximum, double nextMinimum)
{
    return std::max(rawDegreeDays(terms, minimum, maximum, nextMinimum), 0.0);
}

std::vector<DayHeat> sumDegreeDays(const HeatTerms& terms, std::span<const DayTemperature> days)
{
    std::vector<DayHeat> sums;
    sums.reserve(days.size());
    double total = 0.0;
    double lost = 0.0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        const bool hasNext = i + 1 < days.size() && days[i + 1].day == days[i].day + std::chrono::days{1};
        const double next = hasNext ? days[i + 1].minimum : days[i].minimum;
        const double heat = degreeDays(terms, days[i].minimum, days[i].maximum, next);
        const double part = heat - lost;
        const double raised = total + part;
        lost = (raised - total) - part;
        total = raised;
        sums.push_back({days[i].day, heat, total});
    }
    return sums;
}

} // namespace duskrow::domain
