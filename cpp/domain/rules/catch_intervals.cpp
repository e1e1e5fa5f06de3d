// SPDX-License-Identifier: MIT
#include "domain/rules/catch_intervals.h"

#include <algorithm>
#include <span>
#include <utility>

#include "domain/rules/rates.h"

namespace duskrow::domain {

namespace {

std::optional<Nights> nightsSince(std::optional<LocalDay> from, LocalDay to)
{
    if (!from || to < *from) return std::nullopt;
    return nightsBetween(*from, to);
}

std::optional<MothsPerNight> rateOf(std::optional<Moths> caught, std::optional<Nights> nights)
{
    return caught && nights ? ratePerNight(*caught, *nights) : std::nullopt;
}

bool stands(const Record& record)
{
    return record.withdrawn.empty();
}

bool isLeftOut(const TrapFacts& facts, const Visit& visit)
{
    return std::ranges::binary_search(facts.leftOut, visit.id);
}

// Whether a visit that is left out still tells that somebody was there.
bool tellsOfItsDay(const TrapFacts& facts, const Visit& visit)
{
    if (facts.trap.setDay && *visit.day < *facts.trap.setDay) return false;
    if (facts.trap.endDay && *visit.day > *facts.trap.endDay) return false;
    return std::ranges::none_of(facts.visits, [&](const Visit& other) {
        return other.id != visit.id && stands(other) && other.day == visit.day && !isLeftOut(facts, other);
    });
}

Visit withoutItsCount(Visit visit)
{
    visit.outcome = Outcome::CouldNotCount;
    visit.reason = NoCountReason::Other;
    visit.pest.reset();
    return visit;
}

struct SampleSum {
    Moths sampled = {}; // bagged
    Moths settled = {}; // of these, named
    Moths pest = {}; // of these, the pest
};

SampleSum samplesOfVisit(const Uuid& visit, std::span<const Sample> samples)
{
    SampleSum sum;
    for (const Sample& sample : samples) {
        if (sample.visit != visit || !stands(sample)) continue;
        sum.sampled += sample.moths.value_or(Moths{});
        if (sample.state != SampleState::Named || !sample.pest) continue;
        sum.settled += sample.moths.value_or(*sample.pest);
        sum.pest += *sample.pest;
    }
    return sum;
}

std::optional<MothRange> rangeOf(const Visit& visit, Moths named)
{
    if (!visit.pestLow || !visit.pestHigh) return std::nullopt;
    return MothRange{*visit.pestLow + named, *visit.pestHigh + named};
}

VisitCatch setRight(const Visit& visit, std::span<const Sample> samples)
{
    VisitCatch caught{.visit = visit.id, .day = *visit.day};
    const SampleSum sum = samplesOfVisit(visit.id, samples);
    const Moths bagged = std::max(visit.unsure.value_or(Moths{}), sum.sampled);
    caught.waiting = std::max(bagged - sum.settled, Moths{});
    if (visit.outcome == Outcome::CouldNotCount || !visit.pest) return caught;
    caught.asCounted = visit.pest;
    caught.named = sum.pest;
    caught.count = *visit.pest + sum.pest;
    caught.range = rangeOf(visit, sum.pest);
    return caught;
}

// Nobody who could not reach the trap has emptied it.
bool isEmptyingUnknown(const Visit& visit)
{
    return !visit.emptied && visit.reason != NoCountReason::Access;
}

// What stands in the bucket since it was last emptied.
struct Bucket {
    std::optional<LocalDay> from = {};
    std::optional<LocalDay> stepFrom = {};
    std::optional<LocalDay> lastVisit = {};
    std::optional<Moths> standing = {};
    std::optional<MothRange> range = {};
    std::optional<Uuid> maybeEmptied = {}; // a visit of which nobody knows
    bool hasFailed = false;
    bool isProvisional = false;
};

class Walk {
public:
    explicit Walk(std::optional<LocalDay> setDay) { m_bucket.from = m_bucket.stepFrom = setDay; }

    void visit(const Visit& visit, std::span<const Sample> samples)
    {
        VisitCatch caught = setRight(visit, samples);
        m_bucket.hasFailed = m_bucket.hasFailed || hasFailed(visit);
        m_bucket.lastVisit = caught.day;
        caught.since = m_bucket.from;
        caught.nights = nightsSince(m_bucket.from, caught.day);
        if (caught.count) stand(caught);
        const bool isLost = !caught.count && visit.emptied == true;
        if (isLost) lose(caught.day);
        caught.isAtLeast = m_bucket.hasFailed;
        if (!caught.isAtLeast) caught.rate = rateOf(caught.count, caught.nights);
        caught.soFar = m_out.total + m_bucket.standing.value_or(Moths{});
        if (caught.count || isLost) m_out.countedUntil = caught.day;
        if (visit.emptied == true)
            empty(caught.day);
        else if (isEmptyingUnknown(visit))
            m_bucket.maybeEmptied = visit.id;
        m_out.visits.push_back(caught);
    }

    CatchIntervals finish()
    {
        if (m_bucket.lastVisit) close(*m_bucket.lastVisit, true);
        return std::move(m_out);
    }

private:
    void stand(const VisitCatch& caught)
    {
        const Moths before = m_bucket.standing.value_or(Moths{});
        if (m_bucket.maybeEmptied) {
            ask(*m_bucket.maybeEmptied, CatchQuestion::EmptiedUnknown);
            m_bucket.maybeEmptied.reset();
        } else if (*caught.count < before && !m_bucket.hasFailed) {
            ask(caught.visit, CatchQuestion::CountFell);
        }
        const Moths now = std::max(*caught.count, before);
        if (!m_bucket.standing || *caught.count >= before) m_bucket.range = caught.range;
        m_bucket.standing = now;
        m_out.steps.push_back(
            {m_bucket.stepFrom, caught.day, now - before, m_bucket.hasFailed, m_bucket.isProvisional});
        m_bucket.stepFrom = caught.day;
    }

    void lose(LocalDay day)
    {
        m_bucket.hasFailed = true;
        m_out.steps.push_back({m_bucket.stepFrom, day, std::nullopt, true, m_bucket.isProvisional});
    }

    void ask(const Uuid& visit, CatchQuestion question)
    {
        m_out.questions.push_back({visit, question});
        m_bucket.isProvisional = true;
    }

    void empty(LocalDay day)
    {
        close(day, false);
        // A mistyped day never turns the nights back.
        const LocalDay from = m_bucket.from ? std::max(*m_bucket.from, day) : day;
        m_bucket = {.from = from, .stepFrom = from};
    }

    void close(LocalDay day, bool isOpen)
    {
        CaughtInterval interval{.from = m_bucket.from, .to = day, .caught = m_bucket.standing};
        interval.range = m_bucket.range;
        interval.nights = nightsSince(m_bucket.from, day);
        interval.isAtLeast = m_bucket.hasFailed;
        interval.isProvisional = m_bucket.isProvisional;
        interval.isOpen = isOpen;
        if (!interval.isAtLeast) interval.rate = rateOf(interval.caught, interval.nights);
        addToTotal(interval);
        m_out.intervals.push_back(interval);
    }

    void addToTotal(const CaughtInterval& interval)
    {
        if (!interval.caught) return;
        const bool isFirstRange = interval.range && !m_out.range;
        if (isFirstRange) m_out.range = MothRange{m_out.total, m_out.total};
        m_out.total += *interval.caught;
        if (!m_out.range) return;
        m_out.range->low += interval.range ? interval.range->low : *interval.caught;
        m_out.range->high += interval.range ? interval.range->high : *interval.caught;
    }

    Bucket m_bucket;
    CatchIntervals m_out;
};

} // namespace

bool hasFailed(const Visit& visit)
{
    if (visit.atLeast == true) return true;
    if (visit.state && *visit.state != TrapState::Fine) return true;
    if (visit.outcome != Outcome::CouldNotCount || !visit.reason) return false;
    return *visit.reason == NoCountReason::Fallen || *visit.reason == NoCountReason::Missing
        || *visit.reason == NoCountReason::Flooded;
}

CatchIntervals catchIntervals(const TrapFacts& facts)
{
    Walk walk(facts.trap.setDay);
    for (const Visit& visit : facts.visits) {
        if (!stands(visit) || !visit.day) continue;
        if (!isLeftOut(facts, visit))
            walk.visit(visit, facts.samples);
        else if (tellsOfItsDay(facts, visit))
            walk.visit(withoutItsCount(visit), facts.samples);
    }
    return walk.finish();
}

} // namespace duskrow::domain
