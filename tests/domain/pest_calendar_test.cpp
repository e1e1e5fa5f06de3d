// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/flight_prior.h"
#include "domain/rules/pest_calendar.h"

using namespace duskrow::domain;
using std::chrono::days;

namespace {

const CalendarSpan* find(
    const std::vector<CalendarSpan>& spans, CalendarWhat what, const std::string& stage = {})
{
    for (const CalendarSpan& span : spans)
        if (span.what == what && (stage.empty() || span.stage == stage)) return &span;
    return nullptr;
}

} // namespace

class PestCalendarTest : public QObject {
    Q_OBJECT

    Protocol m_protocol;
    std::optional<FlightPosterior> m_expected;
    std::optional<FlightPosterior> m_counted;

    [[nodiscard]] CalendarFacts facts(LocalDay today) const
    {
        return {.protocol = m_protocol, .year = std::chrono::year{2026}, .today = today};
    }

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY(read.has_value());
        m_protocol = *read;
        const auto prior = priorOf(*m_protocol.flightModel, std::chrono::year{2026});
        QVERIFY(prior.has_value());
        QCOMPARE(prior->centre, 196.0); // 15 July
        m_expected = *flightPosterior({}, 150, *prior);
        const std::vector<TrapFlight> trap{{{155, 161, 2}, {161, 168, 9}, {168, 176, 41}, {176, 182, 88},
            {182, 189, 121}, {189, 197, 96}, {197, 203, 45}, {203, 210, 24}, {210, 218, 9}}};
        m_counted = *flightPosterior(trap, 218, *prior);
    }

    void beforeTheSeasonAllIsExpectedAndSaysWhy()
    {
        auto asked = facts(dayOf(2026, 5, 1));
        asked.flight = &*m_expected;
        const auto spans = pestCalendar(asked);
        for (const CalendarSpan& span : spans) {
            QVERIFY(!span.isMeasured);
            QVERIFY(!span.source.empty());
            QVERIFY(span.earliest <= span.from && span.from <= span.to && span.to <= span.latest);
        }
        const auto* traps = find(spans, CalendarWhat::TrapsUp);
        QVERIFY(traps && traps->from == dayOf(2026, 6, 1) && traps->to == dayOf(2026, 6, 7));
        QVERIFY(traps->reason == CalendarReason::ProtocolDays);
        const auto* peak = find(spans, CalendarWhat::Peak);
        QVERIFY(peak && peak->reason == CalendarReason::FlightExpected);
        QVERIFY(std::abs((peak->from - dayOf(2026, 7, 15)).count()) <= 2);
        QVERIFY((peak->latest - peak->earliest).count() > 25);
        // Nothing is said of a crop that nobody seeded, and no cutting.
        QVERIFY(!find(spans, CalendarWhat::CropStage) && !find(spans, CalendarWhat::Cutting));
    }

    void countsSayWhenEggsHatchAndWhenToScout()
    {
        auto asked = facts(dayOf(2026, 8, 6));
        asked.flight = &*m_counted;
        asked.setDay = dayOf(2026, 6, 4);
        asked.firstCatchFrom = dayOf(2026, 6, 4);
        asked.firstCatchTo = dayOf(2026, 6, 10);
        const auto spans = pestCalendar(asked);
        QVERIFY(find(spans, CalendarWhat::TrapsUp)->isMeasured);
        const auto* first = find(spans, CalendarWhat::FirstMoths);
        QVERIFY(first->isMeasured && first->to == dayOf(2026, 6, 10));
        const CalendarSpan peak = *find(spans, CalendarWhat::Peak);
        QVERIFY(peak.isMeasured && peak.reason == CalendarReason::Counts);
        QVERIFY(std::abs((peak.from - dayOf(2026, 7, 6)).count()) <= 2); // day 187
        const auto* scouting = find(spans, CalendarWhat::Scouting);
        QVERIFY(scouting->from == peak.from + days{14} && scouting->to == peak.to + days{28});
        QCOMPARE(scouting->source, std::string("canola-encyclopedia"));
        const auto* hatch = find(spans, CalendarWhat::Hatch);
        QVERIFY(hatch->from == peak.from + days{5} && hatch->latest == peak.latest + days{7});
        const auto* larvae = find(spans, CalendarWhat::DamagingLarvae);
        QVERIFY(larvae->from == peak.from + days{28} && larvae->to == peak.to + days{42});
        QVERIFY(!larvae->isMeasured && larvae->reason == CalendarReason::AfterPeak);
    }

    void theCropFollowsItsSeedingAndTheStageSeen()
    {
        auto asked = facts(dayOf(2026, 7, 10));
        asked.seededDay = dayOf(2026, 5, 10);
        auto spans = pestCalendar(asked);
        const auto* flowers = find(spans, CalendarWhat::CropStage, "first-flowers");
        QVERIFY(flowers && flowers->from == dayOf(2026, 5, 10) + days{50});
        QVERIFY(flowers->reason == CalendarReason::AfterSeeding && !flowers->isMeasured);
        QVERIFY(find(spans, CalendarWhat::Cutting)->from == dayOf(2026, 5, 10) + days{95});
        // First flowers six days late: all that follows is later by as much.
        asked.stages = {{dayOf(2026, 5, 10) + days{56}, BbchStage{60}}};
        spans = pestCalendar(asked);
        flowers = find(spans, CalendarWhat::CropStage, "first-flowers");
        QVERIFY(flowers->isMeasured && flowers->from == dayOf(2026, 5, 10) + days{56});
        const auto* end = find(spans, CalendarWhat::CropStage, "flower-end");
        QVERIFY(end->from == dayOf(2026, 5, 10) + days{76} && end->reason == CalendarReason::AfterStageSeen);
        // A cutting day that somebody wrote down goes before, and the label counts back from it.
        asked.cuttingDay = dayOf(2026, 8, 20);
        asked.labelDays = 21;
        spans = pestCalendar(asked);
        QVERIFY(find(spans, CalendarWhat::Cutting)->from == dayOf(2026, 8, 20));
        QVERIFY(find(spans, CalendarWhat::LastControl)->from == dayOf(2026, 7, 30));
    }

    void aSumOfWarmthThatTheProtocolKnowsIsUsed()
    {
        Protocol known = m_protocol;
        for (HeatSum& sum : known.heat->sums)
            if (sum.id == "first-moths") sum.degreeDays = {300.0, commonPractice, {}};
        std::vector<DayTemperature> station;
        for (LocalDay day = dayOf(2026, 4, 1); day <= dayOf(2026, 7, 31); day += days{1})
            station.push_back({day, 12, 22}); // ten degree-days above 7
        const HeatCourse course =
            heatCourse({HeatMethod::SingleSine, 7}, station, dayOf(2026, 4, 1), dayOf(2026, 12, 31));
        CalendarFacts asked{.protocol = known, .year = std::chrono::year{2026}, .today = dayOf(2026, 8, 1)};
        asked.heat = &course;
        const auto spans = pestCalendar(asked);
        const auto* first = find(spans, CalendarWhat::FirstMoths);
        QVERIFY(first && first->reason == CalendarReason::HeatSum && first->isMeasured);
        QCOMPARE(first->from, dayOf(2026, 4, 30));
        // Of the hatch nobody published a sum: days after the peak are said instead.
        QVERIFY(find(spans, CalendarWhat::Hatch)->reason == CalendarReason::AfterPeak);
    }

    void mothsFollowThePupae()
    {
        Protocol known = m_protocol;
        known.heat->sums.push_back({"traps-up", {}, SumAfter::Start, {200.0, commonPractice, {}}});
        std::vector<DayTemperature> station;
        for (LocalDay day = dayOf(2026, 4, 1); day <= dayOf(2026, 4, 25); day += days{1})
            station.push_back({day, 12, 22});
        const HeatCourse course =
            heatCourse({HeatMethod::SingleSine, 7}, station, dayOf(2026, 4, 1), dayOf(2026, 12, 31));
        CalendarFacts asked{.protocol = known, .year = std::chrono::year{2026}, .today = dayOf(2026, 4, 25)};
        asked.heat = &course;
        const auto spans = pestCalendar(asked);
        QVERIFY(find(spans, CalendarWhat::TrapsUp)->from == dayOf(2026, 4, 20));
        const auto* first = find(spans, CalendarWhat::FirstMoths);
        QVERIFY(first->from == dayOf(2026, 4, 25) && first->to == dayOf(2026, 4, 27));
        QCOMPARE(first->source, std::string("ppmn-2017"));
    }

    void aProtocolThatKnowsNothingSaysNothing()
    {
        Protocol silent = m_protocol;
        silent.phenology.reset();
        silent.heat.reset();
        silent.flightModel.reset();
        silent.scouting.reset();
        silent.cropCalendar.clear();
        silent.season.setUp = {};
        silent.season.usualPeak = {};
        silent.season.firstMothsAfter = {};
        const CalendarFacts asked{
            .protocol = silent, .year = std::chrono::year{2026}, .today = dayOf(2026, 7, 1)};
        QVERIFY(pestCalendar(asked).empty());
    }
};

QTEST_APPLESS_MAIN(PestCalendarTest)
#include "pest_calendar_test.moc"
