// SPDX-License-Identifier: MIT
#include "domain/rules/pest_calendar.h"

#include <algorithm>

#include "domain/rules/flight_prior.h"

namespace duskrow::domain {

using std::chrono::days;

namespace {

constexpr days scoutingLasts{14};
constexpr double firstOfFlight = 0.05; // part of a flight that is taken for its first moths

class CalendarMaker {
public:
    explicit CalendarMaker(const CalendarFacts& facts) : m_facts(facts) { }

    std::vector<CalendarSpan> make()
    {
        addTrapsUp();
        addFirstMoths();
        addPeak();
        addHatch();
        addScouting();
        addDamagingLarvae();
        addCrop();
        addCutting();
        return std::move(m_spans);
    }

private:
    [[nodiscard]] LocalDay at(double number) const { return dayAt(m_facts.year, number); }
    [[nodiscard]] LocalDay on(std::chrono::month_day day) const { return LocalDay{m_facts.year / day}; }

    void add(CalendarSpan span)
    {
        span.from = std::max(span.from, span.earliest);
        span.to = std::max(span.to, span.from);
        span.latest = std::max(span.latest, span.to);
        m_spans.push_back(std::move(span));
    }
    void addDay(CalendarWhat what, LocalDay day, CalendarReason reason)
    {
        add({.what = what,
            .earliest = day,
            .from = day,
            .to = day,
            .latest = day,
            .isMeasured = day <= m_facts.today,
            .reason = reason});
    }

    // By a sum of warmth, where the protocol knows one and the course reaches it.
    bool addByHeat(CalendarWhat what, const char* id)
    {
        if (!m_facts.protocol.heat || !m_facts.heat) return false;
        for (const HeatSum& sum : m_facts.protocol.heat->sums) {
            if (sum.id != id || !sum.degreeDays.value) continue;
            double wanted = *sum.degreeDays.value;
            if (sum.after == SumAfter::FirstCatch) {
                if (!m_facts.firstCatchTo) continue;
                wanted += m_facts.heat->totalBy(*m_facts.firstCatchTo);
            }
            const auto reached = m_facts.heat->reaching(wanted);
            if (!reached.middle || !reached.earliest) continue;
            add({.what = what,
                .earliest = *reached.earliest,
                .from = *reached.middle,
                .to = *reached.middle,
                .latest = reached.latest.value_or(*reached.middle),
                .isMeasured = reached.isMeasured,
                .reason = CalendarReason::HeatSum,
                .source = sum.degreeDays.source});
            return true;
        }
        return false;
    }

    void addTrapsUp()
    {
        const auto& days = m_facts.protocol.season.setUp;
        if (m_facts.setDay)
            addDay(CalendarWhat::TrapsUp, *m_facts.setDay, CalendarReason::Noted);
        else if (!addByHeat(CalendarWhat::TrapsUp, "traps-up") && days.from && days.to)
            add({.what = CalendarWhat::TrapsUp,
                .earliest = on(*days.from),
                .from = on(*days.from),
                .to = on(*days.to),
                .latest = on(*days.to),
                .reason = CalendarReason::ProtocolDays,
                .source = days.source});
    }

    void addFirstMoths()
    {
        using enum CalendarWhat;
        const auto& lag = m_facts.protocol.season.firstMothsAfter;
        if (m_facts.firstCatchTo) {
            const LocalDay from = m_facts.firstCatchFrom.value_or(*m_facts.firstCatchTo);
            add({.what = FirstMoths,
                .earliest = from,
                .from = from,
                .to = *m_facts.firstCatchTo,
                .latest = *m_facts.firstCatchTo,
                .isMeasured = true,
                .reason = CalendarReason::FirstCatch});
        } else if (addByHeat(FirstMoths, "first-moths") || addAfterPupae()) {
            return;
        } else if (m_facts.setDay && lag.from && lag.to) {
            add({.what = FirstMoths,
                .earliest = *m_facts.setDay + *lag.from,
                .from = *m_facts.setDay + *lag.from,
                .to = *m_facts.setDay + *lag.to,
                .latest = *m_facts.setDay + *lag.to,
                .reason = CalendarReason::AfterSetUp,
                .source = lag.source,
                .numbers = {lag.from->count(), lag.to->count()}});
        } else if (m_facts.flight) {
            const ChanceRange first = m_facts.flight->reached(firstOfFlight);
            add({.what = FirstMoths,
                .earliest = at(first.low),
                .from = at(first.middle),
                .to = at(first.middle),
                .latest = at(first.high),
                .reason = reasonOfFlight(),
                .source = sourceOfFlight()});
        }
    }

    // Where traps go up by the development of the pupae, moths follow in so many days.
    bool addAfterPupae()
    {
        const auto& lags = m_facts.protocol.phenology;
        const bool isByPupae = !m_spans.empty() && m_spans.back().what == CalendarWhat::TrapsUp
            && m_spans.back().reason == CalendarReason::HeatSum;
        if (!isByPupae || !lags || !lags->adultsAfter.from || !lags->adultsAfter.to) return false;
        const CalendarSpan traps = m_spans.back();
        const days from = *lags->adultsAfter.from, to = *lags->adultsAfter.to;
        add({.what = CalendarWhat::FirstMoths,
            .earliest = traps.earliest + from,
            .from = traps.from + from,
            .to = traps.to + to,
            .latest = traps.latest + to,
            .reason = CalendarReason::AfterSetUp,
            .source = lags->adultsAfter.source,
            .numbers = {from.count(), to.count()}});
        return true;
    }

    [[nodiscard]] CalendarReason reasonOfFlight() const
    {
        return m_facts.flight->isPriorOnly() ? CalendarReason::FlightExpected : CalendarReason::Counts;
    }
    [[nodiscard]] std::string sourceOfFlight() const
    {
        const auto& model = m_facts.protocol.flightModel;
        return m_facts.flight->isPriorOnly() && model ? model->median.source : std::string();
    }

    void addPeak()
    {
        // Counts go before a sum of warmth once they say anything.
        if (m_facts.flight && (!m_facts.flight->isPriorOnly() || !addByHeat(CalendarWhat::Peak, "peak"))) {
            const ChanceRange& peak = m_facts.flight->peak();
            add({.what = CalendarWhat::Peak,
                .earliest = at(peak.low),
                .from = at(peak.middle),
                .to = at(peak.middle),
                .latest = at(peak.high),
                .isMeasured = m_facts.flight->stage() == FlightStage::PastPeak,
                .reason = reasonOfFlight(),
                .source = sourceOfFlight()});
        } else if (!m_facts.flight && !addByHeat(CalendarWhat::Peak, "peak")) {
            const auto& usual = m_facts.protocol.season.usualPeak;
            if (usual.from && usual.to)
                add({.what = CalendarWhat::Peak,
                    .earliest = on(*usual.from),
                    .from = on(*usual.from),
                    .to = on(*usual.to),
                    .latest = on(*usual.to),
                    .reason = CalendarReason::ProtocolDays,
                    .source = usual.source});
        }
    }

    [[nodiscard]] const CalendarSpan* peak() const
    {
        const auto found = std::find_if(m_spans.begin(), m_spans.end(),
            [](const CalendarSpan& span) { return span.what == CalendarWhat::Peak; });
        return found == m_spans.end() ? nullptr : &*found;
    }

    void addAfterPeak(CalendarWhat what, days from, days to, const std::string& source)
    {
        const CalendarSpan* const found = peak();
        if (!found) return;
        const CalendarSpan peak = *found;
        add({.what = what,
            .earliest = peak.earliest + from,
            .from = peak.from + from,
            .to = peak.to + to,
            .latest = peak.latest + to,
            .reason = CalendarReason::AfterPeak,
            .source = source,
            .numbers = {from.count(), to.count()}});
    }

    void addHatch()
    {
        const auto& lags = m_facts.protocol.phenology;
        if (addByHeat(CalendarWhat::Hatch, "hatch") || !lags) return;
        const auto& lag = lags->eggsHatchAfter;
        if (lag.from && lag.to) addAfterPeak(CalendarWhat::Hatch, *lag.from, *lag.to, lag.source);
    }

    void addScouting()
    {
        if (!m_facts.protocol.scouting) return;
        const auto& lag = m_facts.protocol.scouting->startsAfterPeak;
        if (lag.value)
            addAfterPeak(CalendarWhat::Scouting, *lag.value, *lag.value + scoutingLasts, lag.source);
    }

    void addDamagingLarvae()
    {
        const auto& lags = m_facts.protocol.phenology;
        if (addByHeat(CalendarWhat::DamagingLarvae, "damaging-larvae") || !lags) return;
        const auto& lag = lags->damagingLarvaeAfter;
        if (lag.from && lag.to) addAfterPeak(CalendarWhat::DamagingLarvae, *lag.from, *lag.to, lag.source);
    }

    [[nodiscard]] const ProtocolCrop* crop() const
    {
        for (const ProtocolCrop& crop : m_facts.protocol.crops)
            if (m_facts.crop.empty() || crop.id == m_facts.crop) return &crop;
        return nullptr;
    }

    // Days after seeding by which a stage is expected: between two stages of the calendar in a straight line.
    [[nodiscard]] std::optional<double> expectedDays(const ProtocolCrop& crop, BbchStage stage) const
    {
        std::vector<std::pair<double, double>> known; // code and days
        for (const CropDays& one : m_facts.protocol.cropCalendar)
            for (const GrowthStage& grown : crop.growthStages)
                if (one.crop == crop.id && one.id == grown.id && one.afterSeeding.from)
                    known.emplace_back(static_cast<double>(grown.code.value()),
                        static_cast<double>((*one.afterSeeding.from + *one.afterSeeding.to).count()) / 2);
        const auto code = static_cast<double>(stage.value());
        for (std::size_t i = 0; i < known.size(); ++i) {
            if (known[i].first == code) return known[i].second;
            if (i == 0 || known[i].first < code || known[i - 1].first > code) continue;
            const double part = (code - known[i - 1].first) / (known[i].first - known[i - 1].first);
            return known[i - 1].second + part * (known[i].second - known[i - 1].second);
        }
        return std::nullopt;
    }

    // By how much the crop is later than its calendar, by the stage seen last.
    [[nodiscard]] std::optional<days> lateness(const ProtocolCrop& crop) const
    {
        std::optional<StageSeen> last;
        for (const StageSeen& seen : m_facts.stages)
            if (seen.day <= m_facts.today && (!last || seen.day > last->day)
                && expectedDays(crop, seen.stage))
                last = seen;
        if (!last || !m_facts.seededDay) return std::nullopt;
        const double expected = *expectedDays(crop, last->stage);
        return days{
            static_cast<int>(static_cast<double>((last->day - *m_facts.seededDay).count()) - expected + 0.5)};
    }

    [[nodiscard]] std::optional<LocalDay> daySeen(const ProtocolCrop& crop, const std::string& stage) const
    {
        std::optional<LocalDay> first;
        for (const GrowthStage& grown : crop.growthStages)
            for (const StageSeen& seen : m_facts.stages)
                if (grown.id == stage && seen.stage == grown.code && (!first || seen.day < *first))
                    first = seen.day;
        return first;
    }

    void addCrop()
    {
        const ProtocolCrop* const grown = crop();
        if (!grown) return;
        const auto late = lateness(*grown);
        for (const CropDays& one : m_facts.protocol.cropCalendar) {
            if (one.crop != grown->id) continue;
            const bool isCutting = one.id == cuttingOfCrop;
            if (const auto seen = isCutting ? std::nullopt : daySeen(*grown, one.id)) {
                addDay(CalendarWhat::CropStage, *seen, CalendarReason::Noted);
                m_spans.back().stage = one.id;
                continue;
            }
            if ((isCutting && m_facts.cuttingDay) || !m_facts.seededDay || !one.afterSeeding.from) continue;
            const days moved = late.value_or(days{0});
            const LocalDay from = *m_facts.seededDay + *one.afterSeeding.from + moved;
            const LocalDay to = *m_facts.seededDay + *one.afterSeeding.to + moved;
            add({.what = isCutting ? CalendarWhat::Cutting : CalendarWhat::CropStage,
                .earliest = from,
                .from = from,
                .to = to,
                .latest = to,
                .reason = late ? CalendarReason::AfterStageSeen : CalendarReason::AfterSeeding,
                .source = one.afterSeeding.source,
                .stage = isCutting ? std::string() : one.id,
                .numbers = {one.afterSeeding.from->count(), one.afterSeeding.to->count()}});
        }
    }

    void addCutting()
    {
        if (m_facts.cuttingDay) addDay(CalendarWhat::Cutting, *m_facts.cuttingDay, CalendarReason::Noted);
        if (!m_facts.labelDays) return;
        const auto cutting = std::find_if(m_spans.begin(), m_spans.end(),
            [](const CalendarSpan& span) { return span.what == CalendarWhat::Cutting; });
        if (cutting == m_spans.end()) return;
        const days label{static_cast<int>(*m_facts.labelDays)};
        const CalendarSpan cut = *cutting;
        // Counted from the earliest cutting: whoever sprays later may have to cut later.
        add({.what = CalendarWhat::LastControl,
            .earliest = cut.earliest - label,
            .from = cut.earliest - label,
            .to = cut.earliest - label,
            .latest = cut.earliest - label,
            .reason = CalendarReason::BeforeCutting,
            .numbers = {*m_facts.labelDays}});
    }

    const CalendarFacts& m_facts;
    std::vector<CalendarSpan> m_spans;
};

} // namespace

std::vector<CalendarSpan> pestCalendar(const CalendarFacts& facts)
{
    return CalendarMaker(facts).make();
}

} // namespace duskrow::domain
