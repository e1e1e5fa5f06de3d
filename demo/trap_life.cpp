// SPDX-License-Identifier: MIT
#include "demo/trap_life.h"

#include <algorithm>
#include <cmath>

#include "demo/heavy_count.h"
#include "demo/names.h"

namespace duskrow::demo {

using namespace duskrow::domain;
using std::chrono::days;

namespace {

constexpr double clumping = 5.0; // k of the weekly catches
constexpr std::int64_t heavyCatch = 180; // moths; from here on parts of the catch are counted
constexpr Millimetres stakeEnd{1200};

Millimetres toFiveCentimetres(Millimetres height)
{
    return Millimetres{(height.value() + 25) / 50 * 50};
}

} // namespace

TrapLife::TrapLife(const Story& story, const Common& common, const Summer& summer, Dice dice)
    : m_story(story), m_common(common), m_summer(summer), m_dice(dice)
{
}

Instant TrapLife::at(LocalDay day, int minute) const
{
    const std::chrono::sys_days utcDay{day.time_since_epoch()};
    return Instant{utcDay + std::chrono::minutes{minute} - valleyOffset};
}

// On the present day it is still morning.
int TrapLife::minuteOn(LocalDay day)
{
    return static_cast<int>(day == m_common.today ? m_dice.whole(400, 560) : m_dice.whole(420, 1200));
}

template <typename R>
void TrapLife::enter(LocalDay day, int minute, const R& record)
{
    if (day > m_common.today) return;
    const Uuid author = m_story.keeper->typesOwnCounts ? m_story.keeper->member.id : m_common.coordinator;
    m_entries.push_back({day, minute, author, creation(record, m_site.id)});
}

template <typename R>
void TrapLife::correct(LocalDay day, int minute, const R& before, const R& after)
{
    if (day > m_common.today) return;
    const Uuid author = m_story.keeper->typesOwnCounts ? m_story.keeper->member.id : m_common.coordinator;
    m_entries.push_back({day, minute, author, correction(before, after, m_site.id)});
}

std::vector<Entry> TrapLife::entries()
{
    keepSite();
    setUp();
    if (m_story.setDay <= m_common.today) goRounds();
    return std::move(m_entries);
}

void TrapLife::keepSite()
{
    constexpr std::array<std::string_view, 6> gates{"Through the yard, second gate on the left",
        "By the approach off the grid road", "Field road along the fence; shut the gate",
        "Ask first when it is wet", "Park at the bins and walk in", "From the north side; soft after rain"};
    constexpr std::array<std::string_view, 5> fields{
        "home quarter", "the long eighty", "across the road", "behind the bins", "the new land"};
    const LocalDay agreed = dayOf(m_story.year, 5, 10) + days{m_dice.whole(0, 15)};
    const int minute = minuteOn(agreed);
    m_site.id = m_dice.id(at(agreed, minute));
    m_site.season = m_story.season;
    m_site.district = m_story.district;
    m_site.keeper = m_story.keeper->member.id;
    m_site.name = m_story.siteName;
    m_site.field = m_dice.oneOf(fields);
    m_site.crop = "canola";
    m_site.landowner = m_story.keeper->member.name;
    if (m_story.keeper->member.role == Role::Agronomist)
        m_site.landowner = personName(static_cast<std::uint64_t>(m_story.year), 20'000 + m_story.number);
    m_site.agreedDay = agreed;
    m_site.gate = m_dice.oneOf(gates);
    m_site.seededDay = dayOf(m_story.year, 5, 8) + days{m_dice.whole(0, 14)};
    enter(agreed, minute, m_site);
}

void TrapLife::setUp()
{
    const LocalDay day = m_story.setDay;
    const int minute = minuteOn(day);
    const Instant moment = at(day, minute);
    const GeoPoint place = placeOf(m_story.spot);
    m_trap.id = m_dice.id(moment);
    m_trap.site = m_site.id;
    m_trap.season = m_story.season;
    m_trap.tag = "bertha " + std::to_string(m_story.number + 1); // species and number
    m_trap.pest = m_common.pest;
    m_trap.protocolVersion = m_common.protocolVersion;
    m_trap.trapType = m_common.trapType;
    m_trap.setDay = day;
    m_trap.setAtMs = toMs(moment);
    m_trap.offsetMin = static_cast<int>(valleyOffset.count());
    m_trap.latE7 = place.latE7;
    m_trap.lonE7 = place.lonE7;
    m_trap.accuracy = Millimetres{m_dice.whole(2000, 6000)};
    m_trap.fixMethod = FixMethod::Satellite;
    m_trap.fixAtMs = toMs(moment);
    m_trap.fixCount = static_cast<int>(m_dice.whole(10, 40));
    m_trap.cleaned = true;
    m_trap.handlingRead = m_story.keeper->typesOwnCounts ? std::optional(true) : std::nullopt;
    m_trap.lureIn = true;
    m_trap.lureLot = std::to_string(m_story.year % 100) + (m_dice.happens(0.5) ? "-C" : "-D");
    m_trap.lureExpiry = dayOf(m_story.year + 1, 3, 31);
    m_trap.stripIn = true;
    m_trap.entrance = Millimetres{m_dice.whole(19, 21) * 50};
    m_trap.canopy = m_story.crop.canopy(day);
    m_trap.heightRule = HeightRule::FollowCanopy;
    m_trap.edgeDistance = Millimetres{m_dice.whole(15, 40) * 100};
    m_trap.farmyardDistance = Millimetres{m_dice.whole(4, 15) * 100'000};
    if (m_story.mishaps.badLure) m_trap.remark = "The lure slipped out and was picked up by hand.";
    m_from = day;
    m_entrance = *m_trap.entrance;
    enter(day, minute, m_trap);
    if (m_story.mishaps.lent) lend();
}

void TrapLife::goRounds()
{
    constexpr int weeks = 9;
    LocalDay countDay = seasonStart(m_story.year) + days{1}; // Monday
    int number = 0;
    for (int week = 0; week <= weeks && !m_trap.endDay; ++week, countDay += days{7}) {
        if (countDay < m_story.setDay + days{4}) continue;
        const bool isLast = countDay >= m_story.lastCountWeek;
        const bool isMissed = !isLast && number > 0 && m_dice.happens(m_story.missesWeek);
        const LocalDay day = countDay + days{isMissed ? 0 : m_story.countLag};
        if (day > m_common.today) return;
        if (m_story.notSeenSince && day >= *m_story.notSeenSince) return;
        if (isMissed) continue;
        visit(day, number++);
        if (isLast && !m_trap.endDay) takeDown(day, m_entries.back().minute + 15, EndReason::SeasonOver);
    }
}

void TrapLife::visit(LocalDay day, int number)
{
    const int minute = minuteOn(day);
    const Mishaps& mishaps = m_story.mishaps;
    Visit visit;
    visit.id = m_dice.id(at(day, minute));
    visit.trap = m_trap.id;
    visit.day = day;
    visit.atMs = toMs(at(day, minute));
    visit.offsetMin = static_cast<int>(valleyOffset.count());
    if (!m_story.keeper->typesOwnCounts) visit.observer = m_story.keeper->member.name;

    if (!couldNotCount(visit, number)) {
        count(visit, number);
        look(visit);
        noteTroubles(visit, number);
    }
    Visit first = visit;
    if (mishaps.correctedAt == number && visit.pest) first.pest = Moths{visit.pest->value() * 2 + 7};
    enter(day, minute, first);
    if (first.pest != visit.pest) correct(day + days{1}, 495, first, visit);

    if (visit.unsure.value_or(Moths{0}) > Moths{0}) keepSample(visit);
    if (visit.reason == NoCountReason::Missing) takeDown(day, minute + 5, EndReason::Lost);
    if (mishaps.aliveAt == number) service(day, minute + 5, ServiceWhat::Strip);
    if (mishaps.lureChangedAt == number) service(day, minute + 5, ServiceWhat::Lure);
    if (visit.outcome == Outcome::Counted) raiseIfLow(day, minute + 10);
}

bool TrapLife::couldNotCount(Visit& visit, int number)
{
    const Mishaps& mishaps = m_story.mishaps;
    if (mishaps.noAccessAt == number) {
        visit.reason = NoCountReason::Access;
        visit.emptied = false;
        visit.remark = "Too wet to drive in.";
    } else if (mishaps.floodedAt == number) {
        visit.reason = NoCountReason::Flooded;
        visit.state = TrapState::Flooded;
        visit.emptied = true;
        m_from = *visit.day;
    } else if (mishaps.lostAt == number) {
        visit.reason = NoCountReason::Missing;
        visit.state = TrapState::Missing;
        visit.emptied = false;
        visit.remark = "Stake and trap are gone.";
    } else {
        return false;
    }
    visit.outcome = Outcome::CouldNotCount;
    return true;
}

void TrapLife::count(Visit& visit, int number)
{
    const Mishaps& mishaps = m_story.mishaps;
    const LocalDay day = *visit.day;
    const auto weeks = static_cast<double>((day - m_from).count()) / 7.0;
    double expected = m_story.wholeCatch * (m_summer.flightOver(day) - m_summer.flightOver(m_from));
    if (mishaps.badLure) expected *= 0.07;
    if (mishaps.fallenAt == number) expected *= 0.3;
    // The whole catches of the outbreak are given: with less clumping they come out as they were meant.
    const std::int64_t caught = m_dice.clumped(expected, m_story.keeper->inOutbreak ? 12.0 : clumping);
    visit.outcome = Outcome::Counted;
    if (caught >= heavyCatch) {
        countByCups(visit, caught, m_dice);
    } else {
        visit.countMethod = CountMethod::Each;
        visit.pest = Moths{mishaps.tenfoldAt == number ? std::max<std::int64_t>(caught, 4) * 10 : caught};
    }
    visit.notIt = Moths{m_dice.poisson(1.5 * weeks)};
    visit.bees = Bees{m_dice.poisson(m_story.bees * weeks)};
    if (mishaps.unsureAt == number) visit.unsure = Moths{m_dice.whole(2, 4)};
    visit.emptied = true;
    m_from = day;
}

void TrapLife::look(Visit& visit)
{
    visit.state = TrapState::Fine;
    visit.lureThere = true;
    visit.stripThere = true;
    const LocalDay flowerEnds = m_story.crop.halfGrown + days{26};
    visit.floweringOver = *visit.day >= flowerEnds;
    if (*visit.floweringOver) return; // heights are not asked any more
    visit.entrance = m_entrance;
    visit.canopy = m_story.crop.canopy(*visit.day);
}

void TrapLife::noteTroubles(Visit& visit, int number)
{
    const Mishaps& mishaps = m_story.mishaps;
    visit.sprayed = mishaps.sprayedAt == number;
    if (*visit.sprayed) {
        visit.sprayedWhat = "fungicide";
        visit.sprayedDay = *visit.day - days{m_dice.whole(2, 5)};
        visit.reentryHours = 24;
    }
    if (mishaps.fallenAt == number) {
        visit.state = TrapState::Fallen;
        visit.atLeast = true;
        visit.remark = "Lay on its side; stood up again.";
    }
    if (mishaps.aliveAt == number) visit.mothsAlive = true;
}

void TrapLife::keepSample(const Visit& visit)
{
    const LocalDay day = *visit.day;
    Sample sample;
    sample.id = m_dice.id(at(day, 1210));
    sample.visit = visit.id;
    sample.trap = m_trap.id;
    sample.number = std::to_string(m_story.number + 1) + "-" + std::to_string(m_dice.whole(1, 9));
    sample.moths = visit.unsure;
    sample.state = SampleState::Kept;
    sample.keptDay = day;
    enter(day, 1210, sample);

    const Sample kept = sample;
    sample.state = SampleState::Sent;
    sample.sentDay = day + days{m_dice.whole(1, 3)};
    sample.sentTo = "the valley's insect room";
    correct(*sample.sentDay, 600, kept, sample);

    const Sample sent = sample;
    sample.state = SampleState::Received;
    sample.receivedDay = *sample.sentDay + days{m_dice.whole(2, 4)};
    correct(*sample.receivedDay, 610, sent, sample);

    const Sample received = sample;
    sample.state = SampleState::Named;
    sample.namedDay = *sample.receivedDay + days{m_dice.whole(2, 6)};
    sample.namedBy = personName(1, 30'000);
    sample.namedAs = "bertha armyworm and clover cutworm";
    sample.pest = Moths{m_dice.whole(0, visit.unsure->value() - 1)};
    correct(*sample.namedDay, 620, received, sample);
}

void TrapLife::raiseIfLow(LocalDay day, int minute)
{
    const Millimetres canopy = m_story.crop.canopy(day);
    const bool isLow = m_entrance < canopy + Millimetres{250};
    if (!isLow || m_entrance >= stakeEnd || m_story.mishaps.neverRaised) return;
    m_entrance = std::min(stakeEnd, toFiveCentimetres(canopy + Millimetres{400}));
    service(day, minute, ServiceWhat::Raise);
}

void TrapLife::service(LocalDay day, int minute, ServiceWhat what)
{
    Service service;
    service.id = m_dice.id(at(day, minute));
    service.trap = m_trap.id;
    service.day = day;
    service.atMs = toMs(at(day, minute));
    service.offsetMin = static_cast<int>(valleyOffset.count());
    service.what = what;
    if (what == ServiceWhat::Raise) service.entrance = m_entrance;
    if (what == ServiceWhat::Lure) {
        service.lureLot = std::to_string(m_story.year % 100) + "-E";
        service.lureExpiry = dayOf(m_story.year + 1, 3, 31);
        service.handlingRead = true;
        service.remark = "The first lure had dried out.";
    }
    enter(day, minute, service);
}

void TrapLife::lend()
{
    Loan loan;
    const LocalDay from = dayOf(m_story.year, 7, 6);
    loan.id = m_dice.id(at(from, 480));
    loan.trap = m_trap.id;
    loan.borrower = personName(static_cast<std::uint64_t>(m_story.year), 25'000);
    loan.fromDay = from;
    loan.untilDay = dayOf(m_story.year, 7, 20);
    enter(from, 480, loan);
}

void TrapLife::takeDown(LocalDay day, int minute, EndReason reason)
{
    const Trap before = m_trap;
    m_trap.endDay = day;
    m_trap.endReason = reason;
    if (reason == EndReason::SeasonOver) {
        m_trap.lureOut = true;
        m_trap.stripOut = true;
        m_trap.washed = m_dice.happens(0.8) ? std::optional(true) : std::nullopt;
        m_trap.spareLuresFrozen = m_dice.happens(0.6) ? std::optional(true) : std::nullopt;
    }
    correct(day, minute, before, m_trap);
}

} // namespace duskrow::demo
