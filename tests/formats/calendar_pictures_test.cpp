// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>

#include "formats/calendar_strip.h"
#include "formats/flight_fan.h"
#include "formats/svg.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

template <typename Kind>
std::vector<Kind> all(const Picture& picture)
{
    std::vector<Kind> found;
    for (const Primitive& one : picture.primitives)
        if (const auto* kind = std::get_if<Kind>(&one)) found.push_back(*kind);
    return found;
}

LocalDay july(unsigned day)
{
    return dayOf(2026, 7, day);
}

CalendarStripInput strip()
{
    CalendarStripInput input;
    input.firstDay = dayOf(2026, 5, 28);
    input.lastDay = dayOf(2026, 9, 12);
    input.entries = {
        {"Traps up", "3 Jun", dayOf(2026, 6, 3), dayOf(2026, 6, 3), dayOf(2026, 6, 3), dayOf(2026, 6, 3),
            true},
        {"First moths", "17 Jun to 24 Jun", dayOf(2026, 6, 17), dayOf(2026, 6, 17), dayOf(2026, 6, 24),
            dayOf(2026, 6, 24), true},
        {"Peak of the flight", "18 Jul", july(9), july(18), july(18), july(29), false},
        {"Larvae of damaging size", "15 Aug to 29 Aug", dayOf(2026, 8, 6), dayOf(2026, 8, 15),
            dayOf(2026, 8, 29), dayOf(2026, 9, 9), false},
        {"Last day for control by the label", "22 Aug", dayOf(2026, 8, 22), dayOf(2026, 8, 22),
            dayOf(2026, 8, 22), dayOf(2026, 8, 22), false},
    };
    input.ticks = {
        {dayOf(2026, 6, 1), "Jun"}, {july(1), "Jul"}, {dayOf(2026, 8, 1), "Aug"}, {dayOf(2026, 9, 1), "Sep"}};
    input.today = july(14);
    input.todayLabel = "today, 14 Jul";
    input.measuredLabel = "measured";
    input.expectedLabel = "expected";
    input.widestLabel = "at the widest";
    return input;
}

FlightFanInput fan()
{
    FlightFanInput input;
    input.from = 160;
    input.to = 230;
    const std::vector<TrapFlight> trap{
        {{155, 161, 2}, {161, 168, 9}, {168, 176, 41}, {176, 182, 88}, {182, 189, 121}, {189, 197, 96}}};
    const auto flight = *flightPosterior(trap, 197, {190, 10, std::log(10.0)});
    std::vector<double> points;
    for (int at = 160; at <= 230; at += 2) points.push_back(at);
    input.points = flight.fan(points);
    input.counts = trap.front();
    input.lastLook = 197;
    input.ticks = {{160, "9 Jun"}, {174, "23 Jun"}, {188, "7 Jul"}, {202, "21 Jul"}, {216, "4 Aug"}};
    input.lastLookLabel = "last count";
    input.shareLabel = "Part of the flight that is over";
    input.mothsLabel = "Moths of each count";
    input.emptyLabel = "No counts yet";
    return input;
}

bool hasWords(const Picture& picture, const std::string& text)
{
    std::string said;
    for (const Words& words : all<Words>(picture)) said += words.text + ' ';
    return said.find(text) != std::string::npos;
}

// Inside, large enough, and none over another.
QString complaintsOf(const Picture& picture)
{
    const Frame whole{0, 0, picture.width, picture.height};
    const auto words = all<Words>(picture);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const QString said = QString::fromStdString(words[i].text);
        if (!whole.holds(frameOf(words[i]))) return said + QStringLiteral(" leaves the picture");
        if (words[i].size < 12) return said + QStringLiteral(" is too small");
        for (std::size_t k = i + 1; k < words.size(); ++k)
            if (frameOf(words[i]).meets(frameOf(words[k])))
                return said + QStringLiteral(" runs into ") + QString::fromStdString(words[k].text);
    }
    return {};
}

} // namespace

// The strip of the calendar and the fan of a flight.
class CalendarPicturesTest : public QObject {
    Q_OBJECT

    static void addSizes()
    {
        QTest::addColumn<double>("width");
        QTest::addColumn<double>("scale");
        for (const double width : {320.0, 350.0, 520.0, 780.0})
            for (const double scale : {1.0, 1.5, 2.0})
                QTest::addRow("%g wide, %g %%", width, scale * 100) << width << scale;
    }

private Q_SLOTS:
    void theWordsOfTheStripStandApart_data() { addSizes(); }

    void theWordsOfTheStripStandApart()
    {
        QFETCH(double, width);
        QFETCH(double, scale);
        CalendarStripInput input = strip();
        input.width = width;
        input.textScale = scale;
        const Picture picture = calendarStrip(input);
        QCOMPARE(complaintsOf(picture), QString());
        for (const char* wanted : {"Traps up", "Last day", "15 Aug", "measured", "at the widest", "Jul"})
            QVERIFY2(hasWords(picture, wanted), wanted);
    }

    void theWordsOfTheFanStandApart_data() { addSizes(); }

    void theWordsOfTheFanStandApart()
    {
        QFETCH(double, width);
        QFETCH(double, scale);
        FlightFanInput input = fan();
        input.width = width;
        input.height = std::min(width, 420.0) * (scale > 1.4 ? 1.25 : 1.05);
        input.textScale = scale;
        const Picture picture = flightFan(input);
        QCOMPARE(complaintsOf(picture), QString());
        for (const char* wanted : {"Part of the flight", "Moths of each count", "121", "100 %", "9 Jun"})
            QVERIFY2(hasWords(picture, wanted), wanted);
    }

    // 107 days from 28 May to 12 September; the bar of the larvae begins on day 79 and ends on day 93.
    void aBarLiesOnItsDays()
    {
        CalendarStripInput input = strip();
        input.entries = {input.entries[3]};
        const Picture picture = calendarStrip(input);
        const double left = 14, width = input.width - 28;
        const auto isOn = [&](double x, double day) {
            return std::abs(x - (left + width * day / 107)) < 1e-6;
        };
        const auto bars = all<Bar>(picture);
        QVERIFY(std::ranges::any_of(bars, [&](const Bar& bar) {
            return isOn(bar.frame.left, 79) && isOn(bar.frame.right, 93) && bar.fill == Fill::Hatched;
        }));
        // The widest days are a line from day 70 to day 104.
        const auto lines = all<Line>(picture);
        QVERIFY(std::ranges::any_of(lines, [&](const Line& line) {
            return isOn(line.points.front().x, 70) && isOn(line.points.back().x, 104);
        }));
    }

    void whatIsMeasuredDiffersByItsShape()
    {
        CalendarStripInput input = strip();
        input.measuredLabel = input.expectedLabel = input.widestLabel = "k";
        const auto signsOf = [&](std::size_t entry, bool isMeasured) {
            CalendarStripInput one = input;
            one.entries = {input.entries[entry]};
            one.entries.front().isMeasured = isMeasured;
            return calendarStrip(one);
        };
        const Mark seen = all<Mark>(signsOf(0, true)).front();
        const Mark awaited = all<Mark>(signsOf(0, false)).front();
        QVERIFY(seen.shape != awaited.shape);
        QVERIFY(!seen.isHollow && awaited.isHollow);
        // The key shows one hatched bar; what is expected adds another, what is measured none.
        const auto hatched = [&](const Picture& picture) {
            const auto bars = all<Bar>(picture);
            return std::ranges::count(bars, Fill::Hatched, &Bar::fill);
        };
        QCOMPARE(hatched(signsOf(1, true)), 1);
        QCOMPARE(hatched(signsOf(1, false)), 2);
    }

    void todayOutsideTheStripIsNotDrawn()
    {
        CalendarStripInput input = strip();
        QVERIFY(hasWords(calendarStrip(input), "today, 14 Jul"));
        input.today = dayOf(2026, 11, 2);
        QVERIFY(!hasWords(calendarStrip(input), "today"));
    }

    void afterTheLastCountAllIsHatchedAndDashed()
    {
        const FlightFanInput input = fan();
        const Picture picture = flightFan(input);
        std::vector<Line> middle = all<Line>(picture);
        std::erase_if(middle, [](const Line& line) { return line.width != 3; });
        QCOMPARE(middle.size(), std::size_t{2});
        QVERIFY(!middle[0].isDashed && middle[1].isDashed);
        QCOMPARE(middle[0].points.back().x, middle[1].points.front().x);
        QCOMPARE(middle[0].points.back().y, middle[1].points.front().y);
        const double split = middle[1].points.front().x;
        int hatched = 0;
        for (const Area& area : all<Area>(picture)) {
            if (area.fill != Fill::Hatched) continue;
            ++hatched;
            for (const Point& point : area.outline) QVERIFY(point.x >= split - 1e-6);
        }
        QCOMPARE(hatched, 2);
    }

    void theFanNeverFallsAndHoldsItsMiddle()
    {
        std::vector<Line> lines = all<Line>(flightFan(fan()));
        for (const Line& line : lines) {
            if (line.width != 3) continue;
            for (std::size_t i = 1; i < line.points.size(); ++i)
                QVERIFY(line.points[i].y <= line.points[i - 1].y + 1e-9);
        }
        for (const FanPoint& point : fan().points) {
            QVERIFY(point.low <= point.quarter && point.quarter <= point.middle);
            QVERIFY(point.middle <= point.threeQuarters && point.threeQuarters <= point.high);
        }
    }

    // 96 moths in 8 nights are 12 a night, 88 in 6 are 14.7: the longer count has the lower bar.
    void aMissedWeekMakesNoPeak()
    {
        FlightFanInput input = fan();
        std::vector<Bar> bars = all<Bar>(flightFan(input));
        std::erase_if(bars, [](const Bar& bar) { return bar.ink != Ink::CatchBar; });
        QCOMPARE(bars.size(), std::size_t{6});
        QVERIFY(bars[5].frame.height() < bars[3].frame.height());
        QVERIFY(bars[5].frame.width() > bars[3].frame.width());
        const double a = bars[4].frame.height() * 7 / 121, b = bars[2].frame.height() * 8 / 41;
        QVERIFY(std::abs(a - b) < 1e-9); // height is moths a night
    }

    void withoutCountsItSaysSo()
    {
        FlightFanInput input = fan();
        input.counts.clear();
        input.lastLook.reset();
        const Picture picture = flightFan(input);
        QVERIFY(hasWords(picture, "No counts yet"));
        QVERIFY(!hasWords(picture, "Moths of each count"));
        QVERIFY(std::ranges::none_of(
            all<Line>(picture), [](const Line& l) { return l.width == 3 && !l.isDashed; }));
    }

    void withoutASizeNothingIsDrawn()
    {
        CalendarStripInput small = strip();
        small.width = 0;
        QVERIFY(calendarStrip(small).primitives.empty());
        FlightFanInput fanSmall = fan();
        fanSmall.height = 20;
        QVERIFY(flightFan(fanSmall).primitives.empty());
    }

    void bothAreWrittenAsSvg()
    {
        QVERIFY(writeSvg(calendarStrip(strip()), {}).find("Traps up") != std::string::npos);
        QVERIFY(writeSvg(flightFan(fan()), {}).find("last count") != std::string::npos);
    }
};

QTEST_GUILESS_MAIN(CalendarPicturesTest)
#include "calendar_pictures_test.moc"
