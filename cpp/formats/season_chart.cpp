// SPDX-License-Identifier: MIT
#include "formats/season_chart.h"

#include <algorithm>
#include <array>

#include "formats/season_scale.h"
#include "formats/season_words.h"
#include "formats/word_placer.h"

namespace duskrow::formats {

using domain::LocalDay;
using domain::Moths;

namespace {

constexpr double curveWidth = 3.5;
constexpr std::array<Ink, 4> bandInks{Ink::Tint1, Ink::Tint2, Ink::Tint3, Ink::Tint4};

class SeasonDrawing {
public:
    explicit SeasonDrawing(const SeasonChartInput& input) : m_input(input), m_scale(seasonScale(input)) { }

    Picture drawn()
    {
        m_picture = {m_input.width, m_input.height, m_input.title, m_input.description, {}};
        add(Bar{{0, 0, m_input.width, m_input.height}, Ink::Card, Fill::Solid, 20, 1});
        drawBands();
        const auto ground = static_cast<std::ptrdiff_t>(m_picture.primitives.size());
        for (const UnknownDays& days : m_input.unknown) m_placer.keepClearOfSign(stripOf(days));
        drawFan();
        drawBars();
        drawCurve();
        for (Primitive& primitive : seasonWords(m_input, m_scale, m_placer)) add(std::move(primitive));
        // What has to know where the words are, yet lies under everything observed.
        auto below = guides();
        for (const UnknownDays& days : m_input.unknown) addHatching(below, stripOf(days));
        m_picture.primitives.insert(m_picture.primitives.begin() + ground, below.begin(), below.end());
        return std::move(m_picture);
    }

private:
    void add(Primitive primitive) { m_picture.primitives.push_back(std::move(primitive)); }

    void drawBands()
    {
        const Frame& plot = m_scale.plot;
        for (std::size_t i = 0; i < m_input.bands.size(); ++i) {
            const Frame frame = frameOfBand(m_input.bands, i, m_scale);
            if (frame.height() <= 0) continue;
            add(Bar{frame, bandInks.at(std::min<std::size_t>(i, 3)), Fill::Solid, 0, 1});
        }
        add(Line{{{plot.left, plot.bottom}, {plot.right, plot.bottom}}, Ink::Soft, 1, false});
    }

    [[nodiscard]] Frame stripOf(const UnknownDays& days) const
    {
        return {m_scale.x(days.from), m_scale.plot.top, m_scale.x(days.to), m_scale.plot.bottom};
    }

    // Hatching makes words hard to read: a piece of plain card lies under those that cross it.
    void addHatching(std::vector<Primitive>& ground, const Frame& strip) const
    {
        if (strip.width() <= 0) return;
        ground.emplace_back(Bar{strip, Ink::Unknown, Fill::Hatched, 0, 0.45});
        for (const Words& words : m_placer.words()) {
            const Frame frame = frameOf(words);
            if (!frame.meets(strip)) continue;
            const Frame card{std::max(0.0, frame.left - 3), std::max(strip.top, frame.top - 1),
                std::min(m_input.width, frame.right + 3), std::min(strip.bottom, frame.bottom + 1)};
            ground.emplace_back(Bar{card, Ink::Card, Fill::Solid, 4, 1});
        }
    }

    // The edge of the fan: steep at first, level at the end, as flights fade.
    [[nodiscard]] std::vector<Point> fanEdge(Moths goal) const
    {
        const auto start = static_cast<double>(totalOf(m_input.intervals).value());
        const double end = std::max(start, static_cast<double>(goal.value()));
        const double from = m_scale.x(lastCountDay());
        const double to = m_scale.plot.right;
        std::vector<Point> edge;
        constexpr int steps = 16;
        for (int i = 0; i <= steps; ++i) {
            const double gone = static_cast<double>(i) / steps;
            const double rise = 1 - (1 - gone) * (1 - gone);
            edge.push_back({from + (to - from) * gone, m_scale.y(start + (end - start) * rise)});
        }
        return edge;
    }

    void drawFan()
    {
        if (!m_input.fan || !hasFan(m_input)) return;
        const auto low = fanEdge(m_input.fan->low);
        const auto high = fanEdge(std::max(m_input.fan->low, m_input.fan->high));
        std::vector<Point> outline = low;
        outline.insert(outline.end(), high.rbegin(), high.rend());
        add(Area{outline, Ink::Fan, Fill::Solid, 0.45});
        add(Line{low, Ink::Curve, 1.5, true});
        add(Line{high, Ink::Curve, 1.5, true});
        m_placer.keepClearOfCurve(low);
        m_placer.keepClearOfCurve(high);
    }

    // One width for all bars, so that only their height speaks.
    [[nodiscard]] double barWidth() const
    {
        double closest = 7;
        for (std::size_t i = 1; i < m_input.intervals.size(); ++i) {
            const auto apart = m_input.intervals[i].to - m_input.intervals[i - 1].to;
            closest = std::min(closest, static_cast<double>(apart.count()));
        }
        return std::clamp(m_scale.plot.width() / m_scale.days * closest * 0.55, 2.0, 22.0);
    }

    void drawBars()
    {
        const double width = barWidth();
        for (const SeasonInterval& interval : m_input.intervals) {
            const double middle = std::clamp(
                m_scale.x(interval.to), m_scale.plot.left + width / 2, m_scale.plot.right - width / 2);
            // None caught still is a count: it keeps a thin foot.
            const double top = std::min(m_scale.y(interval.caught), m_scale.plot.bottom - 2);
            const Frame frame{middle - width / 2, top, middle + width / 2, m_scale.plot.bottom};
            const double radius = std::min(4.0, frame.height() / 2);
            add(Bar{frame, Ink::CatchBar, interval.isAtLeast ? Fill::Hatched : Fill::Solid, radius, 0.85});
            if (interval.isAtLeast)
                add(Line{{{frame.left, top}, {frame.right, top}}, Ink::CatchBar, 2, false});
            m_placer.keepClearOfSign(frame);
        }
    }

    // Thin lines that lead the eye: they stop short of words.
    [[nodiscard]] std::vector<Primitive> guides() const
    {
        const Frame& plot = m_scale.plot;
        std::vector<Line> lines;
        for (const Moths level : m_scale.levels) {
            const double y = m_scale.y(level);
            lines.push_back({{{plot.left, y}, {plot.right, y}}, Ink::Line, 1, false});
        }
        const auto today = m_input.today;
        if (today && *today >= m_input.firstDay && *today <= m_input.lastDay) {
            const double x = m_scale.x(*today);
            lines.push_back({{{x, plot.top}, {x, plot.bottom}}, Ink::Soft, 1, true});
        }
        std::vector<Primitive> pieces;
        for (const Line& line : lines) {
            for (const Line& piece : m_placer.cutAroundWords(line)) pieces.emplace_back(piece);
        }
        return pieces;
    }

    void drawCurve()
    {
        Moths soFar{0};
        std::optional<Point> end;
        std::vector<Mark> marks;
        const double plainSize =
            std::min(7.0, barWidth() + 1); // daily counts shall not run into a string of beads
        for (const SeasonInterval& interval : m_input.intervals) {
            const Point start{m_scale.x(interval.from), m_scale.y(soFar)};
            if (end && end->x < start.x) addCurve(*end, start, true);
            soFar += interval.caught;
            end = Point{m_scale.x(interval.to), m_scale.y(soFar)};
            addCurve(start, *end, interval.isLong);
            const auto shape = interval.isAtLeast ? MarkShape::Diamond : MarkShape::Circle;
            marks.push_back(
                {*end, shape, interval.isAtLeast ? 11.0 : plainSize, Ink::Curve, interval.isAtLeast});
        }
        if (marks.empty()) return;
        if (!marks.back().isHollow) marks.back().size = 11;
        for (const Mark& mark : marks) add(mark);
    }

    void addCurve(Point from, Point to, bool isDashed)
    {
        add(Line{{from, to}, Ink::Curve, curveWidth, isDashed});
        m_placer.keepClearOfCurve({from, to});
    }

    [[nodiscard]] LocalDay lastCountDay() const { return m_input.intervals.back().to; }

    const SeasonChartInput& m_input;
    SeasonScale m_scale;
    Picture m_picture;
    WordPlacer m_placer;
};

} // namespace

Picture seasonChart(const SeasonChartInput& input)
{
    constexpr double least = 160;
    if (input.width < least || input.height < least) {
        return {input.width, input.height, input.title, input.description, {}};
    }
    return SeasonDrawing(input).drawn();
}

} // namespace duskrow::formats
