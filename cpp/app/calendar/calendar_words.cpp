// SPDX-License-Identifier: MIT
#include "app/calendar/calendar_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

#include "app/session.h"
#include "text/amounts.h"
#include "text/animal.h"
#include "text/calendar_text.h"
#include "text/heat_text.h"
#include "text/protocol_figures.h"

namespace duskrow::app {

using namespace duskrow::domain;
using std::chrono::days;

namespace {

struct PageWords {
    Q_DECLARE_TR_FUNCTIONS(PageWords)
};

constexpr days stripMargin{5};
constexpr days longestWait{45}; // after the last of it, today is no longer on the strip

QString fromProtocol(const LocalText& text)
{
    return QString::fromStdString(text.in(Session::language()));
}

std::vector<CalendarSpan> inOrder(const CalendarBook& book)
{
    std::vector<CalendarSpan> spans = book.calendar.spans;
    std::ranges::stable_sort(spans, {}, &CalendarSpan::from);
    return spans;
}

QString named(const CalendarBook& book, const CalendarSpan& span)
{
    return text::calendarWhat(span, book.protocol, Session::language());
}

bool isWider(const CalendarSpan& span)
{
    return span.earliest < span.from || span.latest > span.to;
}

QString widestWords(const CalendarSpan& span)
{
    return PageWords::tr("at the widest %1").arg(text::calendarDays(span.earliest, span.latest));
}

QString monthWords(LocalDay day)
{
    return QLocale().standaloneMonthName(text::calendarDay(day).month(), QLocale::ShortFormat);
}

// The first days of the months from a day to another.
std::vector<LocalDay> monthsBetween(LocalDay from, LocalDay to)
{
    std::vector<LocalDay> firsts;
    const std::chrono::year_month_day start(from);
    for (auto month = start.year() / start.month();; month += std::chrono::months{1}) {
        const LocalDay first{month / 1};
        if (first > to) return firsts;
        if (first >= from) firsts.push_back(first);
    }
}

QString dayRange(const CalendarBook& book, const ChanceRange& range)
{
    return text::calendarDays(dayAt(book.calendar.year, range.low), dayAt(book.calendar.year, range.high));
}

QString unitWords(const CalendarBook& book)
{
    return book.protocol.heat && book.protocol.heat->unit == HeatUnit::Fahrenheit
        ? PageWords::tr("degree-days (°F)")
        : PageWords::tr("degree-days (°C)");
}

// A range on its axis; of warmth with the days on which it is reached by the middle course.
QString rangeWords(const CalendarBook& book, const FlightRead& flight, const ChanceRange& range)
{
    if (flight.axis == FlightAxis::Days) return dayRange(book, range);
    const QString sums = PageWords::tr("%1 to %2 %3", "two sums and their unit")
                             .arg(text::number(std::llround(std::max(0.0, range.low))),
                                 text::number(std::llround(range.high)), unitWords(book));
    const HeatCourse* const course = book.calendar.heat.get();
    const auto low = course->reaching(std::max(0.0, range.low)).middle;
    const auto high = course->reaching(range.high).middle;
    if (!low || !high) return sums;
    //: a range of warmth, and the days on which it is reached
    return PageWords::tr("%1, about %2").arg(sums, text::calendarDays(*low, *high));
}

} // namespace

std::vector<Row> calendarRows(const CalendarBook& book)
{
    std::vector<Row> rows;
    for (const CalendarSpan& span : inOrder(book)) {
        Row row{.title = named(book, span), .besides = text::certainty(span)};
        row.detail = text::calendarDays(span.from, span.to);
        if (isWider(span)) row.detail += QStringLiteral("; ") + widestWords(span);
        row.flags = text::calendarReasons(span);
        if (!span.source.empty())
            row.flags << PageWords::tr("Source: %1").arg(text::sourceWords(book.protocol, span.source));
        rows.push_back(std::move(row));
    }
    return rows;
}

formats::CalendarStripInput stripInput(const CalendarBook& book)
{
    formats::CalendarStripInput input;
    const auto spans = inOrder(book);
    if (spans.empty()) return input;
    input.firstDay = spans.front().earliest;
    input.lastDay = spans.front().latest;
    QStringList said;
    for (const CalendarSpan& span : spans) {
        input.firstDay = std::min(input.firstDay, span.earliest);
        input.lastDay = std::max(input.lastDay, span.latest);
        const QString words = text::calendarDays(span.from, span.to);
        input.entries.push_back({named(book, span).toStdString(), words.toStdString(), span.earliest,
            span.from, span.to, span.latest, span.isMeasured});
        said << QStringLiteral("%1: %2, %3").arg(named(book, span), words, text::certainty(span));
    }
    if (book.today > input.firstDay - longestWait && book.today < input.lastDay + longestWait) {
        input.firstDay = std::min(input.firstDay, book.today);
        input.lastDay = std::max(input.lastDay, book.today);
        input.today = book.today;
    }
    input.firstDay -= stripMargin;
    input.lastDay += stripMargin;
    for (const LocalDay first : monthsBetween(input.firstDay, input.lastDay))
        input.ticks.push_back({first, monthWords(first).toStdString()});
    input.todayLabel = PageWords::tr("today, %1").arg(text::shortDay(book.today)).toStdString();
    input.measuredLabel = PageWords::tr("measured").toStdString();
    input.expectedLabel = PageWords::tr("expected").toStdString();
    input.widestLabel = PageWords::tr("at the widest").toStdString();
    input.title = PageWords::tr("Calendar of pest and crop").toStdString();
    input.description = PageWords::tr("Calendar of pest and crop. %1. The list below says why.")
                            .arg(said.join(QStringLiteral("; ")))
                            .toStdString();
    return input;
}

QStringList warmthLines(const CalendarBook& book)
{
    const HeatCourse* const course = book.calendar.heat.get();
    if (!course || !book.protocol.heat) return {};
    const HeatModel& heat = *book.protocol.heat;
    QStringList lines;
    const QString station = QString::fromStdString(book.calendar.heat.station);
    if (course->measuredUntil) {
        const QString sum = text::sumWords(std::round(course->totalBy(*course->measuredUntil)), heat.unit);
        lines << (course->isAtLeast ? PageWords::tr("At least %1 from %2 to %3, measured at %4.")
                                    : PageWords::tr("%1 from %2 to %3, measured at %4."))
                     .arg(sum, text::shortDay(LocalDay{book.calendar.year / *heat.start.value}),
                         text::shortDay(*course->measuredUntil), station);
    } else {
        lines << PageWords::tr("Nearest station with temperatures: %1.").arg(station);
    }
    QString method =
        PageWords::tr("Method: %1, above %2")
            .arg(text::methodWords(*heat.method.value), text::temperatureWords(*heat.lower.value, heat.unit));
    if (heat.upper.value)
        method += PageWords::tr(", up to %1 (%2)")
                      .arg(text::temperatureWords(*heat.upper.value, heat.unit),
                          text::cutOffWords(heat.cutOff.value.value_or(CutOff::None)));
    lines << method + QLatin1Char('.');
    lines << PageWords::tr("Base temperature: %1").arg(text::sourceWords(book.protocol, heat.lower.source));
    if (book.calendar.heat.dayEndsMinute)
        lines << PageWords::tr("Its day ends at %1.").arg(text::timeOfDay(*book.calendar.heat.dayEndsMinute));
    if (course->pastYears > 0)
        lines << (course->pastYears == 1
                ? PageWords::tr("What is still to come is expected from one past year of the station.")
                : PageWords::tr("What is still to come is expected from %n past years of the station.",
                    nullptr, static_cast<int>(course->pastYears)));
    return lines;
}

QStringList gapLines(const CalendarBook& book)
{
    QStringList lines;
    for (const CalendarGap gap : book.calendar.gaps) lines << text::gapWords(gap);
    return lines;
}

QStringList cautionLines(const Protocol& protocol)
{
    QStringList lines;
    for (const Statement& caution : protocol.cautionsAt(CautionPlace::Decision))
        lines << fromProtocol(caution.text);
    return lines;
}

QString flightTitle(const FlightRead& flight, WhoseFlight whose)
{
    const QString stage = text::stageWords(flight.posterior);
    return whose == WhoseFlight::Trap ? PageWords::tr("Flight of this trap: %1").arg(stage)
                                      : PageWords::tr("Flight of the district: %1").arg(stage);
}

QStringList flightLines(const CalendarBook& book, const FlightRead& flight, WhoseFlight whose)
{
    QStringList lines;
    if (whose == WhoseFlight::District && !flight.posterior.isPriorOnly())
        lines << PageWords::tr("By the last count %1 of the flight was over.")
                     .arg(text::partWords(flight.posterior.part()));
    const auto say = [&](const QString& what, const ChanceRange& range) {
        //: what happens, and when
        lines << PageWords::tr("%1: %2").arg(what, rangeWords(book, flight, range));
    };
    say(PageWords::tr("Well begun"), flight.first);
    say(PageWords::tr("Peak"), flight.posterior.peak());
    say(PageWords::tr("Half of it over"), flight.posterior.median());
    say(PageWords::tr("Nearly over"), flight.last);
    lines << PageWords::tr("Well begun: one in twenty has flown. Nearly over: nineteen in twenty.");
    lines << PageWords::tr("Each range holds nine times in ten where flights are as in the model.");
    return lines;
}

namespace {

QString caughtWords(const CalendarBook& book, const FlightRead& flight)
{
    return text::animalOf(&book.protocol, Session::language()).amount(Moths{flight.posterior.moths()});
}

} // namespace

QStringList flightMethod(const CalendarBook& book, const FlightRead& flight)
{
    QStringList lines;
    const QString moths = caughtWords(book, flight);
    if (flight.traps > 1)
        lines << PageWords::tr("From %1 in %2 counts of %3 traps that are on this device.")
                     .arg(moths, text::number(static_cast<std::int64_t>(flight.intervals)),
                         text::number(static_cast<std::int64_t>(flight.traps)));
    else
        lines << (flight.intervals == 1
                ? PageWords::tr("From %1 in one count.").arg(moths)
                : PageWords::tr("From %1 in %n counts.", nullptr, static_cast<int>(flight.intervals))
                      .arg(moths));
    if (flight.posterior.isPriorOnly())
        lines << PageWords::tr(
            "Fewer than %1 caught, or one count alone, say nothing: what you see is what was expected "
            "beforehand.")
                     .arg(fewestMothsForFlight);
    lines << PageWords::tr(
        "Four shapes of a flight are weighed against the counts. Missed weeks and catches that "
        "are only a minimum are left out, not taken for zero.");
    if (const auto& model = book.protocol.flightModel) {
        lines << PageWords::tr("Expected beforehand: %1")
                     .arg(text::sourceWords(book.protocol, model->median.source));
        lines << PageWords::tr("How much flights differ: %1")
                     .arg(text::sourceWords(book.protocol, model->medianSpreadDays.source));
    }
    const auto years = book.calendar.prior ? book.calendar.prior->years : 0;
    lines << (years == 0 ? PageWords::tr("No past years of this programme are in it yet.")
            : years == 1 ? PageWords::tr("In it is one past year of this programme.")
                         : PageWords::tr("In it are %n past years of this programme.", nullptr, int(years)));
    return lines;
}

formats::FlightFanInput fanInput(const CalendarBook& book, const FlightRead& flight)
{
    formats::FlightFanInput input;
    input.from = flight.from;
    input.to = flight.to;
    input.points = flight.fan;
    input.counts = flight.counts;
    if (flight.isCounted) input.lastLook = flight.posterior.until();
    input.lastLookLabel = PageWords::tr("last count").toStdString();
    input.shareLabel = PageWords::tr("Part of the flight that is over").toStdString();
    input.emptyLabel = PageWords::tr("No counts yet").toStdString();
    if (flight.axis == FlightAxis::Days) {
        const auto year = book.calendar.year;
        constexpr days step{14};
        for (LocalDay day = dayAt(year, std::ceil(flight.from)); dayNumber(day) <= flight.to; day += step)
            input.ticks.push_back({dayNumber(day), text::shortDay(day).toStdString()});
        input.mothsLabel = PageWords::tr("Caught at each count").toStdString();
        input.title = PageWords::tr("The flight by days").toStdString();
    } else {
        const double span = flight.to - flight.from;
        const double step = span > 800 ? 200 : span > 400 ? 100 : 50;
        for (double at = std::ceil(flight.from / step) * step; at <= flight.to; at += step)
            input.ticks.push_back({at, text::number(std::llround(at)).toStdString()});
        input.mothsLabel = PageWords::tr("Caught at each count, by %1").arg(unitWords(book)).toStdString();
        input.title = PageWords::tr("The flight by warmth").toStdString();
    }
    input.description =
        PageWords::tr("%1: half of all chances as the inner band, nine in ten as the outer one. Peak: "
                      "%2. Half of it over: %3. Bars: %4.")
            .arg(QString::fromStdString(input.title), rangeWords(book, flight, flight.posterior.peak()),
                rangeWords(book, flight, flight.posterior.median()), caughtWords(book, flight))
            .toStdString();
    input.number = [](std::int64_t moths) { return text::number(moths).toStdString(); };
    return input;
}

} // namespace duskrow::app
