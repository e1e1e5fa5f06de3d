// SPDX-License-Identifier: MIT
#include "text/calendar_text.h"

#include <QCoreApplication>

#include <cmath>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct Calendar {
    Q_DECLARE_TR_FUNCTIONS(PestCalendar)
};

// "50 days", "5 to 7 days"
QString lagWords(const CalendarSpan& span)
{
    if (span.numbers.empty()) return {};
    const auto least = span.numbers.front(), most = span.numbers.back();
    if (least == most) return days(std::chrono::days{static_cast<int>(least)});
    return Calendar::tr("%1 to %2 days").arg(least).arg(most);
}

QString notedWords(const CalendarSpan& span)
{
    if (span.what == CalendarWhat::TrapsUp) return Calendar::tr("Written down at set-up.");
    if (span.what == CalendarWhat::CropStage) return Calendar::tr("Seen in this field.");
    return Calendar::tr("Written down with a decision on this field.");
}

QString reasonWords(const CalendarSpan& span)
{
    switch (span.reason) {
    case CalendarReason::Noted:
        return notedWords(span);
    case CalendarReason::FirstCatch:
        return Calendar::tr("The first of this field was caught in these nights.");
    case CalendarReason::Counts:
        return Calendar::tr("From the counts of this field and what was expected before them.");
    case CalendarReason::FlightExpected:
        return Calendar::tr("What is expected of a flight. Too little is counted yet to say more.");
    case CalendarReason::HeatSum:
        return Calendar::tr("The day on which warmth reaches the sum that the protocol names.");
    case CalendarReason::ProtocolDays:
        return Calendar::tr("The days that the protocol names for every year.");
    case CalendarReason::AfterSetUp:
        return Calendar::tr("%1 after the traps go up.").arg(lagWords(span));
    case CalendarReason::AfterPeak:
        return Calendar::tr("%1 after the peak of the flight.").arg(lagWords(span));
    case CalendarReason::AfterSeeding:
        return Calendar::tr("%1 after seeding.").arg(lagWords(span));
    case CalendarReason::AfterStageSeen:
        return Calendar::tr("%1 after seeding, moved by the stage that was seen last.").arg(lagWords(span));
    case CalendarReason::BeforeCutting:
        return Calendar::tr("%1 of the label before the earliest cutting.").arg(lagWords(span));
    }
    return {};
}

} // namespace

QString calendarWhat(const CalendarSpan& span, const Protocol& protocol, const std::string& language)
{
    switch (span.what) {
    case CalendarWhat::TrapsUp:
        return Calendar::tr("Traps up");
    case CalendarWhat::FirstMoths:
        return Calendar::tr("First catch");
    case CalendarWhat::Peak:
        return Calendar::tr("Peak of the flight");
    case CalendarWhat::Hatch:
        return Calendar::tr("Eggs hatch");
    case CalendarWhat::Scouting:
        return Calendar::tr("Scouting for larvae");
    case CalendarWhat::DamagingLarvae:
        return Calendar::tr("Larvae of damaging size");
    case CalendarWhat::Cutting:
        return Calendar::tr("Cutting");
    case CalendarWhat::LastControl:
        return Calendar::tr("Last day for control by the label");
    case CalendarWhat::CropStage:
        break;
    }
    for (const ProtocolCrop& crop : protocol.crops)
        for (const GrowthStage& stage : crop.growthStages)
            if (stage.id == span.stage)
                //: the crop, and the stage it is in
                return Calendar::tr("%1: %2").arg(QString::fromStdString(crop.name.in(language)),
                    QString::fromStdString(stage.name.in(language)));
    return QString::fromStdString(span.stage);
}

QString calendarDays(LocalDay from, LocalDay to, const QLocale& locale)
{
    if (from == to) return shortDay(from, locale);
    //: two days
    return Calendar::tr("%1 to %2").arg(shortDay(from, locale), shortDay(to, locale));
}

QString certainty(const CalendarSpan& span)
{
    return span.isMeasured ? Calendar::tr("measured") : Calendar::tr("expected");
}

QStringList calendarReasons(const CalendarSpan& span)
{
    QStringList sentences{reasonWords(span)};
    const bool isFromPeak = span.reason == CalendarReason::AfterPeak;
    if (isFromPeak && (span.what == CalendarWhat::Hatch || span.what == CalendarWhat::DamagingLarvae))
        sentences << Calendar::tr("That most eggs are laid about the peak: common practice, no source.");
    if (span.what == CalendarWhat::Scouting)
        sentences << Calendar::tr("That the window lasts two weeks: common practice, no source.");
    return sentences;
}

QString gapWords(CalendarGap gap)
{
    switch (gap) {
    case CalendarGap::NoHeatTerms:
        return Calendar::tr(
            "Warmth is not used: nobody has published a base temperature and a start for this "
            "pest. A coordinator who has them writes them into a copy of the protocol.");
    case CalendarGap::NoPlace:
        return Calendar::tr("No warmth: no trap of this field has a position, so no station is nearest. Read "
                            "the position at the trap.");
    case CalendarGap::NoStation:
        return Calendar::tr("No warmth: the programme has no weather station with a position. A coordinator "
                            "brings in daily lows and highs under “Bring in temperatures” on the season’s "
                            "page, or with “duskrow-tool temperatures”.");
    case CalendarGap::NoTemperatures:
        return Calendar::tr(
            "No warmth: the nearest station has no temperatures. A coordinator brings in daily "
            "lows and highs under “Bring in temperatures” on the season’s page, or with “duskrow-tool "
            "temperatures”.");
    case CalendarGap::NoneThisYear:
        return Calendar::tr("No temperatures of this year: all warmth is that of past years. Bring in this "
                            "year’s.");
    case CalendarGap::DaysMissing:
        return Calendar::tr("Days are missing at the station that nothing stands in for: its sum is at least "
                            "what is said. Bring in the missing days.");
    case CalendarGap::NoPastYears:
        return Calendar::tr("The station has no past years: nothing can be said of the warmth still to come. "
                            "Bring in past years.");
    case CalendarGap::NoSums:
        return Calendar::tr(
            "No day comes from warmth: nobody has published at what sum things happen to this "
            "pest. A coordinator who has sums writes them into a copy of the protocol.");
    case CalendarGap::NoFlightModel:
        return Calendar::tr("No curve of the flight: nobody has published when this pest flies and for how "
                            "long. A coordinator writes what is expected into a copy of the protocol.");
    case CalendarGap::NoLarvaeDays:
        return Calendar::tr("Nobody has published how long this pest takes to larvae of damaging size: look "
                            "into the field.");
    case CalendarGap::NoCropDays:
        return Calendar::tr("No crop stages: the protocol names no days from seeding for this crop. Note the "
                            "stage on each walk.");
    case CalendarGap::NoSeeding:
        return Calendar::tr("No days of the crop: nobody has written down when this field was seeded. Put it "
                            "right in the field’s record.");
    case CalendarGap::NoCutting:
        return Calendar::tr("No day for cutting: neither written down nor expected. Write it down with a "
                            "decision on this field.");
    case CalendarGap::NoLabelDays:
        return Calendar::tr(
            "No last day for control: the days that the label asks for before cutting are not "
            "written down. Write them down with a decision on this field.");
    }
    return {};
}

QString stageWords(const FlightPosterior& flight)
{
    switch (flight.stage()) {
    case FlightStage::CannotTell:
        return flight.isPriorOnly() ? Calendar::tr("too little counted to say")
                                    : Calendar::tr("nobody can say yet");
    case FlightStage::Early:
        return Calendar::tr("early");
    case FlightStage::AroundPeak:
        return Calendar::tr("around its peak");
    case FlightStage::PastPeak:
        return Calendar::tr("past its peak");
    }
    return {};
}

QString partWords(const ChanceRange& part, const QLocale& locale)
{
    // Outwards, so that the range holds what it says.
    const auto percent = [&](double rounded) { return number(static_cast<std::int64_t>(rounded), locale); };
    return Calendar::tr("%1 to %2 %")
        .arg(percent(std::floor(part.low * 100)), percent(std::ceil(part.high * 100)));
}

} // namespace duskrow::text
