// SPDX-License-Identifier: MIT
#include "domain/rules/rates.h"

namespace duskrow::domain {

std::optional<MothsPerNight> ratePerNight(Moths caught, Nights nights)
{
    if (nights.value() <= 0) return std::nullopt;
    return MothsPerNight{static_cast<double>(caught.value()) / static_cast<double>(nights.value())};
}

MothsPerFiveNights perFiveNights(MothsPerNight rate)
{
    return MothsPerFiveNights{rate.value() * 5.0};
}

MothsPerWeek perWeek(MothsPerNight rate)
{
    return MothsPerWeek{rate.value() * 7.0};
}

MothsPerNight perNight(MothsPerFiveNights rate)
{
    return MothsPerNight{rate.value() / 5.0};
}

MothsPerNight perNight(MothsPerWeek rate)
{
    return MothsPerNight{rate.value() / 7.0};
}

} // namespace duskrow::domain
