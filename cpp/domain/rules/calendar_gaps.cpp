// SPDX-License-Identifier: MIT
#include "domain/rules/calendar_gaps.h"

#include <algorithm>

namespace duskrow::domain {

namespace {

class GapFinder {
public:
    GapFinder(const CalendarFacts& facts, HeatStanding heat) : m_facts(facts), m_heat(heat) { }

    std::vector<CalendarGap> find()
    {
        findHeat();
        const Protocol& protocol = m_facts.protocol;
        addIf(!protocol.flightModel, CalendarGap::NoFlightModel);
        const bool hasDays = protocol.phenology && protocol.phenology->damagingLarvaeAfter.from;
        addIf(!hasDays && !hasSum("damaging-larvae"), CalendarGap::NoLarvaeDays);
        findCrop();
        return std::move(m_gaps);
    }

private:
    void addIf(bool is, CalendarGap gap)
    {
        if (is) m_gaps.push_back(gap);
    }

    void findHeat()
    {
        addIf(m_heat == HeatStanding::NoTerms, CalendarGap::NoHeatTerms);
        addIf(m_heat == HeatStanding::NoPlace, CalendarGap::NoPlace);
        addIf(m_heat == HeatStanding::NoStation, CalendarGap::NoStation);
        addIf(m_heat == HeatStanding::NoTemperatures, CalendarGap::NoTemperatures);
        if (m_facts.heat) {
            addIf(!m_facts.heat->measuredUntil, CalendarGap::NoneThisYear);
            addIf(m_facts.heat->isAtLeast, CalendarGap::DaysMissing);
            addIf(m_facts.heat->pastYears == 0, CalendarGap::NoPastYears);
        }
        addIf(m_heat != HeatStanding::NoTerms && !hasSum({}), CalendarGap::NoSums);
    }

    // Of one id, or any at all.
    [[nodiscard]] bool hasSum(std::string_view id) const
    {
        const auto& heat = m_facts.protocol.heat;
        return heat && std::ranges::any_of(heat->sums, [&](const HeatSum& sum) {
            return sum.degreeDays.value && (id.empty() || sum.id == id);
        });
    }

    [[nodiscard]] std::string crop() const
    {
        if (!m_facts.crop.empty() || m_facts.protocol.crops.empty()) return m_facts.crop;
        return m_facts.protocol.crops.front().id;
    }

    void findCrop()
    {
        const auto has = [&](bool isCutting) {
            return std::ranges::any_of(m_facts.protocol.cropCalendar, [&](const CropDays& days) {
                return days.crop == crop() && days.afterSeeding.from
                    && (days.id == cuttingOfCrop) == isCutting;
            });
        };
        addIf(!has(false), CalendarGap::NoCropDays);
        addIf(!m_facts.seededDay && (has(false) || has(true)), CalendarGap::NoSeeding);
        addIf(!m_facts.cuttingDay && !(m_facts.seededDay && has(true)), CalendarGap::NoCutting);
        addIf(!m_facts.labelDays, CalendarGap::NoLabelDays);
    }

    const CalendarFacts& m_facts;
    HeatStanding m_heat;
    std::vector<CalendarGap> m_gaps;
};

} // namespace

std::vector<CalendarGap> calendarGaps(const CalendarFacts& facts, HeatStanding heat)
{
    return GapFinder(facts, heat).find();
}

} // namespace duskrow::domain
