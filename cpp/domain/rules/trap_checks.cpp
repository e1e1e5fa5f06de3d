// SPDX-License-Identifier: MIT
#include "domain/rules/trap_checks.h"

#include <algorithm>
#include <cmath>

#include "domain/rules/geodesy.h"
#include "domain/rules/moved_trap.h"
#include "domain/rules/trap_place.h"
#include "domain/rules/visit_questions.h"

namespace duskrow::domain {

namespace {

constexpr std::int64_t daysAheadAllowed = 1;
constexpr double farAboveTimes = 10.0;
constexpr std::int64_t farAboveMoths = 20;

std::optional<Check> checkOf(const AskedQuestion& asked)
{
    switch (asked.question) {
    case VisitQuestion::InFuture:
        if (asked.numbers.front() <= daysAheadAllowed) return std::nullopt;
        return Check::InFuture;
    case VisitQuestion::BeforeSetUp:
        return Check::BeforeSetUp;
    case VisitQuestion::AfterEnd:
        return Check::AfterTakeDown;
    case VisitQuestion::LongSinceEmptied:
        return Check::LongSinceEmptied;
    case VisitQuestion::CatchUnlikelyLarge:
        return Check::CatchUnlikelyLarge;
    case VisitQuestion::SecondWithinDay: // whether anything is wrong shows once both are kept
    case VisitQuestion::CatchFarAboveOthers: // the traps around say more
        break;
    }
    return std::nullopt;
}

class TrapCheck {
public:
    TrapCheck(const TrapFacts& facts, const CatchIntervals& catches, LocalDay today)
        : m_facts(facts), m_catches(catches), m_today(today)
    {
    }

    std::vector<Flag> flags()
    {
        const Visit* before = nullptr;
        for (const Visit& visit : m_facts.visits) {
            if (!visit.withdrawn.empty() || !visit.day) continue;
            for (const AskedQuestion& asked : questionsAbout(visit, m_facts, m_today))
                if (const auto check = checkOf(asked)) add(*check, visit, asked.numbers);
            if (before) checkSameDay(*before, visit);
            checkPlace(visit);
            before = &visit;
        }
        checkCatches();
        return std::move(m_flags);
    }

private:
    Flag& add(Check check, const Visit& visit, std::vector<std::int64_t> numbers)
    {
        return m_flags.emplace_back(Flag{.check = check,
            .visit = visit.id,
            .trap = m_facts.trap.id,
            .day = visit.day,
            .numbers = std::move(numbers)});
    }

    // What was not emptied in between stands in both counts and is added once.
    void checkSameDay(const Visit& before, const Visit& visit)
    {
        if (*before.day != *visit.day || before.emptied == false || !before.pest || !visit.pest) return;
        const std::int64_t moths = visit.pest->value();
        const std::int64_t mothsBefore = before.pest->value();
        if (moths == mothsBefore)
            add(Check::DoubleEntry, visit, {moths}).others = {before.id};
        else if (moths > 0 && before.emptied == true)
            add(Check::NightsCountedTwice, visit, {moths, mothsBefore}).others = {before.id};
    }

    // On the day of a move the visit may have been made at either place.
    void checkPlace(const Visit& visit)
    {
        if (!visit.latE7 || !visit.lonE7 || !visit.accuracy) return;
        const GeoPoint here{static_cast<std::int32_t>(*visit.latE7), static_cast<std::int32_t>(*visit.lonE7)};
        const Metres accuracy = toMetres(*visit.accuracy);
        std::optional<Flag> nearest;
        for (const LocalDay day : {*visit.day, *visit.day - std::chrono::days{1}}) {
            const auto spot = spotOn(m_facts, day);
            if (!spot || !spot->accuracy) return;
            const Metres apart = courseBetween(spot->place, here).distance;
            const Metres trapAccuracy = toMetres(*spot->accuracy);
            const Metres explained = explainedDistance(accuracy, trapAccuracy);
            if (apart <= explained) return;
            if (nearest && whole(apart) >= nearest->numbers.front()) continue;
            nearest = Flag{.check = Check::MovedTrap,
                .visit = visit.id,
                .trap = m_facts.trap.id,
                .day = visit.day,
                .numbers = {whole(apart), whole(explained), whole(accuracy), whole(trapAccuracy)}};
        }
        m_flags.push_back(std::move(*nearest));
    }

    void checkCatches()
    {
        const VisitCatch* before = nullptr;
        const VisitCatch* counted = nullptr;
        for (const VisitCatch& caught : m_catches.visits) {
            const OpenQuestion fell{caught.visit, CatchQuestion::CountFell};
            if (before
                && std::find(m_catches.questions.begin(), m_catches.questions.end(), fell)
                    != m_catches.questions.end())
                addCatch(Check::CountFell, caught, {caught.count->value(), before->count->value()});
            if (caught.count) before = &caught;
            if (!caught.rate) continue;
            if (counted) checkJump(*counted, caught);
            counted = &caught;
        }
    }

    // Without a moth before, a single one stands for it. Multiplied out, so that ten times is just that.
    void checkJump(const VisitCatch& before, const VisitCatch& caught)
    {
        const auto product = [](std::int64_t moths, Nights nights) {
            return static_cast<double>(moths) * static_cast<double>(nights.value());
        };
        const std::int64_t mothsBefore = std::max<std::int64_t>(1, before.count->value());
        const bool isFarAbove = product(caught.count->value(), *before.nights)
            > farAboveTimes * product(mothsBefore, *caught.nights);
        if (!isFarAbove || caught.count->value() <= farAboveMoths) return;
        addCatch(Check::FarAboveBefore, caught,
            {caught.count->value(), caught.nights->value(), before.count->value(), before.nights->value()});
    }

    void addCatch(Check check, const VisitCatch& caught, std::vector<std::int64_t> numbers)
    {
        m_flags.push_back(Flag{.check = check,
            .visit = caught.visit,
            .trap = m_facts.trap.id,
            .day = caught.day,
            .numbers = std::move(numbers)});
    }

    static std::int64_t whole(Metres metres) { return std::llround(metres.value()); }

    const TrapFacts& m_facts;
    const CatchIntervals& m_catches;
    LocalDay m_today;
    std::vector<Flag> m_flags;
};

} // namespace

std::vector<Flag> trapFlags(const TrapFacts& facts, const CatchIntervals& catches, LocalDay today)
{
    return TrapCheck(facts, catches, today).flags();
}

} // namespace duskrow::domain
