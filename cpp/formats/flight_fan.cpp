// SPDX-License-Identifier: MIT
#include "formats/flight_fan.h"

#include <algorithm>
#include <cmath>

#include "formats/word_placer.h"

namespace duskrow::formats {

using domain::FanPoint;
using domain::FlightInterval;

namespace {

constexpr double margin = 14;
constexpr double countsPart = 0.3; // of the height, for the bars

class FanDrawing {
public:
    explicit FanDrawing(const FlightFanInput& input) : m_input(input)
    {
        m_small = std::min(13 * input.textScale, std::max(13.0, input.width / 16));
        m_size = std::min(16 * input.textScale, std::max(16.0, input.width / 14));
        const double left = margin + widthOf("100 %", m_small) + 6;
        const double bottom = input.height - margin - m_small * 1.6;
        const double bars = std::round((bottom - margin) * countsPart);
        m_plot = {left, margin + m_size * 1.5, input.width - margin, bottom - bars - m_size * 2};
        m_bars = {left, bottom - bars, input.width - margin, bottom};
        m_span = std::max(1e-6, input.to - input.from);
    }

    Picture drawn()
    {
        m_picture = {m_input.width, m_input.height, m_input.title, m_input.description, {}};
        add(Bar{{0, 0, m_input.width, m_input.height}, Ink::Card, Fill::Solid, 20, 1});
        const auto ground = static_cast<std::ptrdiff_t>(m_picture.primitives.size());
        drawBands();
        drawMiddle();
        drawBars();
        drawHeads();
        drawLastLook();
        drawTicks();
        drawNumbers();
        auto below = guides();
        m_picture.primitives.insert(m_picture.primitives.begin() + ground, below.begin(), below.end());
        for (const Words& words : m_placer.words()) add(words);
        return std::move(m_picture);
    }

private:
    void add(Primitive primitive) { m_picture.primitives.push_back(std::move(primitive)); }

    [[nodiscard]] double x(double at) const
    {
        return m_plot.left + m_plot.width() * std::clamp((at - m_input.from) / m_span, 0.0, 1.0);
    }
    [[nodiscard]] double y(double part) const
    {
        return m_plot.bottom - m_plot.height() * std::clamp(part, 0.0, 1.0);
    }
    [[nodiscard]] double split() const { return m_input.lastLook.value_or(m_input.from); }

    // The points up to the last count, or from there on; both hold the point in between.
    [[nodiscard]] std::vector<FanPoint> part(bool isCounted) const
    {
        std::vector<FanPoint> points;
        const FanPoint* before = nullptr;
        for (const FanPoint& point : m_input.points) {
            const bool isInside = isCounted ? point.at <= split() : point.at >= split();
            if (before && before->at < split() && point.at > split()) {
                const double share = (split() - before->at) / (point.at - before->at);
                const auto between = [share](double a, double b) { return a + share * (b - a); };
                points.push_back({split(), between(before->low, point.low),
                    between(before->quarter, point.quarter), between(before->middle, point.middle),
                    between(before->threeQuarters, point.threeQuarters), between(before->high, point.high)});
            }
            if (isInside) points.push_back(point);
            before = &point;
        }
        return points;
    }

    void addBand(const std::vector<FanPoint>& points, double FanPoint::*low, double FanPoint::*high,
        double opacity, bool isCounted)
    {
        if (points.size() < 2) return;
        std::vector<Point> lower, upper;
        for (const FanPoint& point : points) {
            lower.push_back({x(point.at), y(point.*low)});
            upper.push_back({x(point.at), y(point.*high)});
        }
        std::vector<Point> outline = lower;
        outline.insert(outline.end(), upper.rbegin(), upper.rend());
        add(Area{outline, Ink::Fan, Fill::Solid, opacity});
        if (isCounted) return;
        add(Area{outline, Ink::Full, Fill::Hatched, low == &FanPoint::low ? 0.22 : 0.3});
    }

    void drawBands()
    {
        for (const bool isCounted : {true, false}) {
            const auto points = part(isCounted);
            addBand(points, &FanPoint::low, &FanPoint::high, isCounted ? 0.32 : 0.15, isCounted);
            addBand(points, &FanPoint::quarter, &FanPoint::threeQuarters, isCounted ? 0.75 : 0.35, isCounted);
            for (const auto edge : {&FanPoint::low, &FanPoint::high}) addLine(points, edge, 1.2, !isCounted);
        }
    }

    void addLine(const std::vector<FanPoint>& points, double FanPoint::*value, double width, bool isDashed)
    {
        if (points.size() < 2) return;
        Line line{{}, Ink::Full, width, isDashed};
        for (const FanPoint& point : points) line.points.push_back({x(point.at), y(point.*value)});
        m_placer.keepClearOfCurve(line.points);
        add(std::move(line));
    }

    void drawMiddle()
    {
        for (const bool isCounted : {true, false}) addLine(part(isCounted), &FanPoint::middle, 3, !isCounted);
    }

    static double rateOf(const FlightInterval& count)
    {
        return static_cast<double>(count.moths) / std::max(1e-6, count.to - count.from);
    }

    // Of a bar, below the room that its number takes.
    [[nodiscard]] double topOf(const FlightInterval& count) const
    {
        double highest = 0;
        for (const FlightInterval& one : m_input.counts) highest = std::max(highest, rateOf(one));
        const double share = highest > 0 ? rateOf(count) / highest : 0;
        // None caught still is a count: it keeps a thin foot.
        return std::min(m_bars.bottom - (m_bars.height() - m_small * 1.5) * share, m_bars.bottom - 2);
    }

    void drawBars()
    {
        for (const FlightInterval& count : m_input.counts) {
            if (count.to < m_input.from || count.from > m_input.to) continue;
            const double top = topOf(count);
            const Frame frame{
                x(count.from) + 1, top, std::max(x(count.to) - 1, x(count.from) + 2), m_bars.bottom};
            add(Bar{frame, Ink::CatchBar, Fill::Solid, std::min(3.0, frame.height() / 2), 0.85});
            m_placer.keepClearOfSign(frame);
        }
        add(Line{{{m_bars.left, m_bars.bottom}, {m_bars.right, m_bars.bottom}}, Ink::Soft, 1, false});
        add(Line{{{m_plot.left, m_plot.bottom}, {m_plot.right, m_plot.bottom}}, Ink::Soft, 1, false});
    }

    // What the two axes count.
    void drawHeads()
    {
        const std::string& bars = m_input.counts.empty() ? m_input.emptyLabel : m_input.mothsLabel;
        const auto isTooWide = [&](double size) {
            return std::max(widthOf(m_input.shareLabel, size), widthOf(bars, size))
                > m_input.width - 2 * margin;
        };
        double size = m_size;
        while (size > 12.5 && isTooWide(size)) size -= 0.5;
        const auto head = [&](const std::string& text, double baseline) {
            const Words words{text, {margin, baseline}, Anchor::Start, size, 600, Ink::Full, 0};
            m_placer.keepClearOf(frameOf(words));
            add(words);
        };
        head(m_input.shareLabel, margin + m_size * 0.85);
        head(bars, m_bars.top - m_size * 0.45);
        for (const int percent : {100, 50, 0}) {
            const Words words{std::to_string(percent) + " %",
                {m_plot.left - 6, y(percent / 100.0) + m_small * 0.35}, Anchor::End, m_small, 400, Ink::Soft,
                0};
            m_placer.keepClearOf(frameOf(words));
            add(words);
        }
    }

    void drawLastLook()
    {
        if (!m_input.lastLook || *m_input.lastLook < m_input.from || *m_input.lastLook > m_input.to) return;
        const WordBlock block{{m_input.lastLookLabel}, m_small, 600, Ink::Full, Anchor::Start, 0, 0};
        const double at = x(*m_input.lastLook);
        const Frame within{m_plot.left + 3, m_plot.top + 2, m_plot.right - 2, m_plot.bottom - 2};
        // On the side where the fan is not: above it early in the flight, below it late.
        for (const Point corner : {Point{at - block.width() - 6, m_plot.top + 4},
                 Point{at + 6, m_plot.bottom - block.height() - 4}})
            if (m_placer.place(block, {within, corner, m_small * 6})) return;
    }

    void drawTicks()
    {
        double free = 0;
        for (const FanTick& tick : m_input.ticks) {
            if (tick.at < m_input.from || tick.at > m_input.to) continue;
            const double width = widthOf(tick.label, m_small);
            const double left = std::clamp(x(tick.at) - width / 2, 4.0, m_input.width - width - 4);
            if (left < free) continue;
            const Words words{tick.label, {left, m_bars.bottom + m_small * 1.35}, Anchor::Start, m_small, 400,
                Ink::Soft, 0};
            m_placer.keepClearOf(frameOf(words));
            add(words);
            free = left + width + m_small * 0.8;
            add(Line{{{x(tick.at), m_bars.bottom}, {x(tick.at), m_bars.bottom + 4}}, Ink::Soft, 1, false});
        }
    }

    // Each count above its bar, where it finds room; the highest first.
    void drawNumbers()
    {
        std::vector<FlightInterval> counts = m_input.counts;
        std::stable_sort(counts.begin(), counts.end(),
            [](const FlightInterval& a, const FlightInterval& b) { return rateOf(a) > rateOf(b); });
        for (const FlightInterval& count : counts) {
            const std::string number =
                m_input.number ? m_input.number(count.moths) : std::to_string(count.moths);
            const WordBlock block{{number}, m_small, 400, Ink::Full, Anchor::Start, 0, 0};
            const Frame within{m_bars.left, m_bars.top - m_small * 0.3, m_bars.right, m_bars.bottom};
            const Point corner{
                (x(count.from) + x(count.to) - block.width()) / 2, topOf(count) - block.height() - 1};
            m_placer.place(block, {within, corner, 3, WordPlacer::Over::Signs});
        }
    }

    // Thin lines that lead the eye: they stop short of words.
    [[nodiscard]] std::vector<Primitive> guides() const
    {
        std::vector<Primitive> pieces;
        const auto lay = [&](const Line& whole) {
            for (const Line& piece : m_placer.cutAroundWords(whole)) pieces.emplace_back(piece);
        };
        for (const double part : {0.5, 1.0})
            lay({{{m_plot.left, y(part)}, {m_plot.right, y(part)}}, Ink::Line, 1, false});
        if (m_input.lastLook && *m_input.lastLook >= m_input.from && *m_input.lastLook <= m_input.to) {
            const double at = x(*m_input.lastLook);
            lay({{{at, m_plot.top}, {at, m_bars.bottom}}, Ink::Soft, 1.5, true});
        }
        return pieces;
    }

    const FlightFanInput& m_input;
    double m_small = 13;
    double m_size = 16;
    double m_span = 1;
    Frame m_plot;
    Frame m_bars;
    WordPlacer m_placer;
    Picture m_picture;
};

} // namespace

Picture flightFan(const FlightFanInput& input)
{
    constexpr double least = 160;
    if (input.width < least || input.height < least)
        return {input.width, input.height, input.title, input.description, {}};
    return FanDrawing(input).drawn();
}

} // namespace duskrow::formats
