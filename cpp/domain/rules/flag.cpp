// SPDX-License-Identifier: MIT
#include "domain/rules/flag.h"

namespace duskrow::domain {

FalseAlarms falseAlarmsOf(Check check)
{
    switch (check) {
    case Check::InFuture:
    case Check::BeforeSetUp:
    case Check::AfterTakeDown:
    case Check::ReplacedTrapCounted:
        return {GoodCounts::None};
    case Check::WithoutTrap:
    case Check::DoubleEntry:
    case Check::NightsCountedTwice:
    case Check::CountFell:
    case Check::LongSinceEmptied:
    case Check::FasterThanDriving:
        return {GoodCounts::AllAlike};
    case Check::MovedTrap:
        return {GoodCounts::OneIn, 1000};
    case Check::FarAboveAround:
        return {GoodCounts::OneIn, 400};
    case Check::FarBelowAround:
        return {GoodCounts::OneIn, 250};
    case Check::FarAboveBefore:
        return {GoodCounts::OneIn, 35};
    case Check::RoundedCounts:
        return {GoodCounts::OneIn, 500};
    case Check::CatchUnlikelyLarge:
        break;
    }
    return {GoodCounts::NotMeasured};
}

} // namespace duskrow::domain
