// SPDX-License-Identifier: MIT
#include "domain/rules/visit_questions.h"

#include <algorithm>
#include <chrono>

namespace duskrow::domain {

namespace {

constexpr std::chrono::hours oneDay{24};
constexpr std::int64_t longestInterval = 21;
constexpr std::int64_t farAboveTimes = 4;
constexpr std::int64_t farAboveMore = 20;
constexpr std::int64_t unlikelyCatch = 5000;

void askAboutDay(std::vector<AskedQuestion>& asked, const VisitToKeep& visit, LocalDay today)
{
    if (visit.day > today)
        asked.push_back({VisitQuestion::InFuture, {nightsBetween(today, visit.day).value()}});
    if (visit.setUp && visit.day < *visit.setUp)
        asked.push_back({VisitQuestion::BeforeSetUp, {nightsBetween(visit.day, *visit.setUp).value()}});
    if (visit.ended && visit.day > *visit.ended)
        asked.push_back({VisitQuestion::AfterEnd, {nightsBetween(*visit.ended, visit.day).value()}});
}

void askAboutSecondVisit(
    std::vector<AskedQuestion>& asked, const VisitToKeep& visit, std::span<const OtherVisit> others)
{
    const OtherVisit* closest = nullptr;
    auto least = std::chrono::milliseconds{oneDay};
    for (const OtherVisit& other : others) {
        const auto between = std::chrono::abs(visit.at - other.at);
        if (between >= least) continue;
        least = between;
        closest = &other;
    }
    if (!closest) return;
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(least).count();
    asked.push_back({VisitQuestion::SecondWithinDay, {minutes, closest->wasEmptied ? 1 : 0}});
}

void askAboutInterval(std::vector<AskedQuestion>& asked, const VisitToKeep& visit)
{
    const std::optional<LocalDay> since = visit.lastEmptied ? visit.lastEmptied : visit.setUp;
    if (!since) return;
    const std::int64_t nights = nightsBetween(*since, visit.day).value();
    if (nights > longestInterval) asked.push_back({VisitQuestion::LongSinceEmptied, {nights}});
}

void askAboutCatch(
    std::vector<AskedQuestion>& asked, const VisitToKeep& visit, std::span<const OtherVisit> others)
{
    if (!visit.caught) return;
    const std::int64_t caught = std::max<std::int64_t>(0, visit.caught->value());
    std::optional<std::int64_t> largest;
    for (const OtherVisit& other : others)
        if (other.caught) largest = std::max({std::int64_t{0}, largest.value_or(0), other.caught->value()});
    // Written by division, so that no catch is too large to be compared.
    if (largest && caught - *largest > farAboveMore && *largest <= (caught - 1) / farAboveTimes)
        asked.push_back({VisitQuestion::CatchFarAboveOthers, {caught, *largest}});
    if (caught > unlikelyCatch) asked.push_back({VisitQuestion::CatchUnlikelyLarge, {caught, unlikelyCatch}});
}

} // namespace

std::vector<AskedQuestion> questionsFor(
    const VisitToKeep& visit, std::span<const OtherVisit> others, LocalDay today)
{
    std::vector<AskedQuestion> asked;
    askAboutDay(asked, visit, today);
    askAboutSecondVisit(asked, visit, others);
    askAboutInterval(asked, visit);
    askAboutCatch(asked, visit, others);
    return asked;
}

std::vector<AskedQuestion> questionsAbout(const Visit& visit, const TrapFacts& facts, LocalDay today)
{
    std::vector<OtherVisit> others;
    VisitToKeep mine{.day = *visit.day,
        .at = momentOf(visit),
        .caught = visit.outcome == Outcome::Counted ? visit.pest : std::nullopt,
        .setUp = facts.trap.setDay,
        .ended = facts.trap.endDay,
        .lastEmptied = {}};
    for (const Visit& other : facts.visits) {
        if (other.id == visit.id || !other.day || !other.withdrawn.empty()) continue;
        others.push_back({momentOf(other), other.emptied == true, other.pest});
        if (other.emptied == true && *other.day <= mine.day) mine.lastEmptied = other.day;
    }
    return questionsFor(mine, others, today);
}

Instant momentOf(const Visit& visit)
{
    if (visit.atMs) return instantFromMs(*visit.atMs);
    return Instant{visit.day->time_since_epoch() + std::chrono::hours{12}};
}

} // namespace duskrow::domain
