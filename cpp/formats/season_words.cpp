// SPDX-License-Identifier: MIT
#include "formats/season_words.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace duskrow::formats {

using domain::LocalDay;
using domain::Moths;

namespace {

using Over = WordPlacer::Over;

constexpr double anywhere = 1e9;

class SeasonWording {
public:
    SeasonWording(const SeasonChartInput& input, const SeasonScale& scale, WordPlacer& placer)
        : m_input(input), m_scale(scale), m_placer(placer), m_room{scale.plot.left + 5, scale.plot.top + 3,
                                                                scale.plot.right - 5, scale.plot.bottom - 3}
    {
    }

    // The earlier, the surer of its place.
    std::vector<Primitive> worded()
    {
        wordLevels();
        wordTicks();
        wordEmpty();
        wordTotal();
        wordFan();
        wordToday();
        wordNotes();
        wordUnknown();
        wordBands();
        for (const Words& words : m_placer.words()) m_drawn.emplace_back(words);
        return std::move(m_drawn);
    }

private:
    void wordLevels()
    {
        const double right = m_scale.plot.left - 6;
        for (auto level = m_scale.levels.rbegin(); level != m_scale.levels.rend(); ++level) {
            const WordBlock block{
                {numberText(m_input, *level)}, m_scale.smallSize, 400, Ink::Soft, Anchor::End};
            const Point corner{right - block.width(), m_scale.y(*level) - block.height() / 2};
            m_placer.place(block, {{0, 0, right, m_input.height}, corner, 4, Over::Drawing});
        }
    }

    void wordTicks()
    {
        const Frame& plot = m_scale.plot;
        const Frame below{4, plot.bottom + 5, m_input.width - 4, plot.bottom + 7 + m_scale.smallSize * 1.2};
        for (const SeasonTick& tick : m_input.ticks) {
            if (tick.day < m_input.firstDay || tick.day > m_input.lastDay) continue;
            const double x = m_scale.x(tick.day);
            m_drawn.emplace_back(Line{{{x, plot.bottom}, {x, plot.bottom + 4}}, Ink::Soft, 1, false});
            const WordBlock block{{tick.label}, m_scale.smallSize, 400, Ink::Soft, Anchor::Middle};
            // Moved no farther than keeps it above or below its tick.
            const double farthest = block.width() / 2 + 2;
            const Point corner{x - block.width() / 2, plot.bottom + 6};
            m_placer.place(block, {below, corner, farthest, Over::Drawing});
        }
    }

    void wordToday()
    {
        const auto today = m_input.today;
        if (!today || *today < m_input.firstDay || *today > m_input.lastDay) return;
        if (m_input.todayLabel.empty()) return;
        const double x = m_scale.x(*today);
        const WordBlock block{{m_input.todayLabel}, m_scale.smallSize, 400, Ink::Full};
        const bool isLate = x + block.width() + 6 > m_room.right;
        const double left = isLate ? x - block.width() - 6 : x + 6;
        m_placer.place(block, {m_room, {left, m_room.top}, m_scale.smallSize * 4, Over::Nothing});
    }

    // In two lines at most if the plot is wide enough for that.
    [[nodiscard]] std::vector<std::string> inFewLines(const std::string& text, double size) const
    {
        std::vector<std::string> lines;
        for (const double share : {0.7, 1.0}) {
            lines = brokenIntoLines(text, size, m_room.width() * share);
            if (lines.size() <= 2) break;
        }
        return lines;
    }

    // A label that must stand: a little smaller, then over bars, then as small as can be read, and over a
    // curve rather than not at all.
    void placeAnyway(const WordBlock& block, const std::string& text, Point middle)
    {
        const double little = block.size * 0.8;
        const double least = std::min(little, 14.0);
        for (const double smallest : {little, least}) {
            for (const auto over : {Over::Nothing, Over::Signs}) {
                if (placeShrinking(block, text, middle, smallest, over)) return;
            }
        }
        placeShrinking(block, text, middle, least, Over::Drawing);
    }

    bool placeShrinking(
        WordBlock block, const std::string& text, Point middle, double smallest, WordPlacer::Over over)
    {
        const double step = block.size / 10;
        for (; block.size >= smallest - 0.01; block.size -= step) {
            block.lines = inFewLines(text, block.size);
            const Point corner{middle.x - block.width() / 2, middle.y - block.height() / 2};
            if (m_placer.place(block, {m_room, corner, anywhere, over})) return true;
        }
        return false;
    }

    void wordEmpty()
    {
        if (!m_input.intervals.empty() || m_input.emptyLabel.empty()) return;
        const Point middle{(m_room.left + m_room.right) / 2, (m_room.top + m_room.bottom) / 2};
        placeAnyway({{}, m_scale.size, 600, Ink::Full, Anchor::Middle}, m_input.emptyLabel, middle);
    }

    void wordTotal()
    {
        if (m_input.intervals.empty() || m_input.totalLabel.empty()) return;
        const double size = m_scale.size * 1.15;
        const Point end{m_scale.x(m_input.intervals.back().to), m_scale.y(totalOf(m_input.intervals))};
        placeAnyway(
            {{}, size, 700, Ink::Full, Anchor::End}, m_input.totalLabel, {end.x - size, end.y - size * 1.1});
    }

    void wordFan()
    {
        if (!m_input.fan || !hasFan(m_input) || m_input.fan->label.empty()) return;
        const double size = m_scale.size;
        const double above = m_scale.y(std::max(m_input.fan->high, m_input.fan->low)) - size * 1.6;
        placeAnyway(
            {{}, size, 600, Ink::Full, Anchor::End}, m_input.fan->label, {m_room.right - size * 4, above});
    }

    void wordNotes()
    {
        Moths soFar{0};
        for (const SeasonInterval& interval : m_input.intervals) {
            const double before = m_scale.y(soFar);
            soFar += interval.caught;
            if (interval.note.empty()) continue;
            const double x = (m_scale.x(interval.from) + m_scale.x(interval.to)) / 2;
            placeNote(interval.note, {x, (before + m_scale.y(soFar)) / 2});
        }
    }

    // Left above the middle of its stretch of the curve, or nowhere.
    void placeNote(const std::string& note, Point middle)
    {
        for (const double share : {1.0, 0.85, 0.7}) {
            WordBlock block{{}, std::max(12.0, m_scale.smallSize * share), 400, Ink::Full, Anchor::End};
            for (const double width : {0.8, 0.45, 0.3}) {
                block.lines = brokenIntoLines(note, block.size, m_room.width() * width);
                if (block.lines.size() > 3) break;
                const Point corner{middle.x - block.width() - 8, middle.y - block.height() - 6};
                if (m_placer.place(block, {m_room, corner, m_scale.size * 2.5, Over::Nothing})) return;
            }
        }
    }

    void wordUnknown()
    {
        for (const UnknownDays& days : m_input.unknown) {
            if (days.label.empty()) continue;
            const double middle = (m_scale.x(days.from) + m_scale.x(days.to)) / 2;
            WordBlock block{{}, m_scale.smallSize, 400, Ink::Full, Anchor::Middle};
            block.lines = brokenIntoLines(days.label, block.size, m_room.width() * 0.4);
            const Point corner{middle - block.width() / 2, m_room.top + m_room.height() * 0.4};
            m_placer.place(block, {m_room, corner, m_room.height() * 0.6, Over::Drawing});
        }
    }

    void wordBands()
    {
        const double dot = std::round(m_scale.smallSize * 0.42);
        for (std::size_t i = 0; i < m_input.bands.size(); ++i) {
            const Frame band = frameOfBand(m_input.bands, i, m_scale);
            const Frame within{band.left + 6, band.top, band.right - 6, band.bottom};
            const int dots = std::clamp(m_input.bands[i].dots, 1, 4);
            WordBlock block{{m_input.bands[i].name}, m_scale.smallSize, 400, Ink::Full};
            block.room = dots * dot * 1.4 + 4;
            block.leastHeight = dot + 2;
            auto frame = placeInBand(block, within);
            if (!frame) { // the dots alone need less room
                block.lines.clear();
                frame = placeInBand(block, within);
            }
            if (frame) drawDots(*frame, dots, dot);
        }
    }

    std::optional<Frame> placeInBand(const WordBlock& block, const Frame& within)
    {
        const double top = (within.top + within.bottom - block.height()) / 2;
        return m_placer.place(block, {within, {within.left, top}, within.width() * 0.45, Over::Nothing});
    }

    void drawDots(const Frame& frame, int dots, double size)
    {
        const double y = (frame.top + frame.bottom) / 2;
        for (int i = 0; i < dots; ++i) {
            const Point at{frame.left + size / 2 + i * size * 1.4, y};
            m_drawn.emplace_back(Mark{at, MarkShape::Circle, size, Ink::Full, false});
        }
    }

    const SeasonChartInput& m_input;
    const SeasonScale& m_scale;
    WordPlacer& m_placer;
    Frame m_room; // the plot without a small margin
    std::vector<Primitive> m_drawn;
};

} // namespace

std::vector<Primitive> seasonWords(
    const SeasonChartInput& input, const SeasonScale& scale, WordPlacer& placer)
{
    return SeasonWording(input, scale, placer).worded();
}

} // namespace duskrow::formats
