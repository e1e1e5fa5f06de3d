// SPDX-License-Identifier: MIT
#include "text/heat_text.h"

#include <QCoreApplication>
#include <QLocale>

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct Heat {
    Q_DECLARE_TR_FUNCTIONS(Heat)
};

QString plainNumber(double number)
{
    return QLocale().toString(number, 'g', 6);
}

} // namespace

QString methodWords(HeatMethod method)
{
    switch (method) {
    case HeatMethod::Average:
        return Heat::tr("average, limits applied to the mean");
    case HeatMethod::AverageClamped:
        return Heat::tr("average, limits applied to minimum and maximum first");
    case HeatMethod::SingleTriangle:
        return Heat::tr("single triangle");
    case HeatMethod::DoubleTriangle:
        return Heat::tr("double triangle");
    case HeatMethod::SingleSine:
        return Heat::tr("single sine");
    case HeatMethod::DoubleSine:
        return Heat::tr("double sine");
    }
    return {};
}

QString cutOffWords(CutOff cutOff)
{
    switch (cutOff) {
    case CutOff::None:
        return Heat::tr("counts in full");
    case CutOff::Horizontal:
        return Heat::tr("counts as the limit does (horizontal cut-off)");
    case CutOff::Intermediate:
        return Heat::tr("takes away as much as it lies above (intermediate cut-off)");
    case CutOff::Vertical:
        return Heat::tr("nothing counts (vertical cut-off)");
    }
    return {};
}

QString temperatureWords(double degrees, HeatUnit unit)
{
    return unit == HeatUnit::Celsius ? Heat::tr("%1 °C").arg(plainNumber(degrees))
                                     : Heat::tr("%1 °F").arg(plainNumber(degrees));
}

QString sumWords(double degreeDays, HeatUnit unit)
{
    return unit == HeatUnit::Celsius ? Heat::tr("%1 degree-days (°C)").arg(plainNumber(degreeDays))
                                     : Heat::tr("%1 degree-days (°F)").arg(plainNumber(degreeDays));
}

} // namespace duskrow::text
