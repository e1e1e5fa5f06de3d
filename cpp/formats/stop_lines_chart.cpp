// SPDX-License-Identifier: MIT
#include "formats/stop_lines_chart.h"

#include <algorithm>
#include <cmath>

#include "formats/word_placer.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

class Drawing {
public:
    explicit Drawing(const StopLinesInput& input) : m_input(input), m_size(16 * input.textScale)
    {
        const double left = widthOf(std::to_string(topLabel()), m_size) + 14;
        m_plot = {left, 12, input.width - 12, input.height - m_size - 16};
    }

    Picture drawn()
    {
        m_picture = {m_input.width, m_input.height, m_input.title, m_input.description, {}};
        drawFields();
        drawAxes();
        drawTotals();
        drawLabels();
        return std::move(m_picture);
    }

private:
    [[nodiscard]] int stops() const
    {
        return std::max(m_input.plan.design.expected,
            std::min(m_input.plan.design.most, static_cast<int>(m_input.totals.size()) + 3));
    }
    // High enough for the upper line at its end, and for what was found, as far as that is no outbreak.
    [[nodiscard]] double top() const
    {
        const StopLines& lines = m_input.plan.lines;
        const double line = lines.slope * stops() + lines.above;
        const double found = m_input.totals.empty() ? 0 : static_cast<double>(m_input.totals.back().value());
        return std::clamp(found * 1.1, line * 1.05, line * 3);
    }
    [[nodiscard]] std::int64_t topLabel() const { return std::llround(top()); }
    [[nodiscard]] double x(double stop) const { return m_plot.left + m_plot.width() * stop / stops(); }
    [[nodiscard]] double y(double total) const
    {
        return m_plot.bottom - m_plot.height() * std::clamp(total / top(), 0.0, 1.0);
    }

    // Nothing is called before the fewest stops, so both fields begin there.
    void drawFields()
    {
        const StopLines& lines = m_input.plan.lines;
        const double first = std::min(m_input.plan.design.fewest, stops());
        const auto upper = [&](double stop) { return y(lines.slope * stop + lines.above); };
        const auto lower = [&](double stop) { return y(lines.slope * stop + lines.below); };
        const double from = std::max<double>(first, lines.firstBelow);
        m_picture.primitives.emplace_back(Area{{{x(first), m_plot.top}, {x(first), upper(first)},
                                                   {x(stops()), upper(stops())}, {x(stops()), m_plot.top}},
            Ink::Tint4, Fill::Solid, 1});
        if (from < stops())
            m_picture.primitives.emplace_back(Area{{{x(from), lower(from)}, {x(stops()), lower(stops())},
                                                       {x(stops()), m_plot.bottom}, {x(from), m_plot.bottom}},
                Ink::Tint1, Fill::Solid, 1});
        m_placer.keepClearOfCurve({{x(first), upper(first)}, {x(stops()), upper(stops())}});
        m_placer.keepClearOfCurve({{x(from), lower(from)}, {x(stops()), lower(stops())}});
        m_picture.primitives.emplace_back(
            Line{{{x(first), upper(first)}, {x(stops()), upper(stops())}}, Ink::Band4, 2, false});
        if (from < stops())
            m_picture.primitives.emplace_back(
                Line{{{x(from), lower(from)}, {x(stops()), lower(stops())}}, Ink::Full, 2, true});
    }

    // The unit stands at the end of the axis where the last number leaves room.
    void drawAxes()
    {
        m_picture.primitives.emplace_back(
            Line{{{m_plot.left, m_plot.bottom}, {m_plot.right, m_plot.bottom}}, Ink::Soft, 1, false});
        const double base = m_plot.bottom + m_size + 4;
        const int step = stops() > 10 ? 5 : stops() > 5 ? 2 : 1;
        double free = m_plot.left;
        for (int stop = step; stop <= stops(); stop += step) {
            const double half = widthOf(std::to_string(stop), m_size) / 2;
            if (x(stop) + half > m_input.width) continue;
            m_picture.primitives.emplace_back(
                Words{std::to_string(stop), {x(stop), base}, Anchor::Middle, m_size, 400, Ink::Soft, 0});
            free = x(stop) + half + m_size / 2;
        }
        if (m_plot.right - widthOf(m_input.stopsLabel, m_size) > free)
            m_picture.primitives.emplace_back(
                Words{m_input.stopsLabel, {m_plot.right, base}, Anchor::End, m_size, 400, Ink::Soft, 0});
        m_picture.primitives.emplace_back(Words{std::to_string(topLabel()),
            {m_plot.left - 8, m_plot.top + m_size * 0.8}, Anchor::End, m_size, 400, Ink::Soft, 0});
        m_picture.primitives.emplace_back(
            Words{"0", {m_plot.left - 8, m_plot.bottom}, Anchor::End, m_size, 400, Ink::Soft, 0});
    }

    void drawTotals()
    {
        Line path{{{x(0), y(0)}}, Ink::Full, 3.5, false};
        for (std::size_t i = 0; i < m_input.totals.size(); ++i) {
            const double stop = static_cast<double>(i + 1);
            if (stop > stops()) break;
            path.points.push_back({x(stop), y(static_cast<double>(m_input.totals[i].value()))});
        }
        m_placer.keepClearOfCurve(path.points);
        const Point end = path.points.back();
        m_picture.primitives.emplace_back(std::move(path));
        m_picture.primitives.emplace_back(Mark{end, MarkShape::Circle, 11, Ink::Full, false});
    }

    void drawLabels()
    {
        const auto word = [&](const std::string& text, Point at, Anchor anchor) {
            const Words words{text, at, anchor, m_size, 600, Ink::Full, 0};
            if (widthOf(text, m_size) >= m_plot.width()) return;
            m_picture.primitives.emplace_back(words);
            m_placer.keepClearOf(frameOf(words));
        };
        const double first = x(std::min(m_input.plan.design.fewest, stops()));
        const double room = m_plot.right - widthOf(m_input.aboveLabel, m_size) - 8;
        word(m_input.aboveLabel,
            {std::max(m_plot.left + 10, std::min(first + 8, room)), m_plot.top + m_size + 4}, Anchor::Start);
        word(m_input.belowLabel, {m_plot.right - 8, m_plot.bottom - 8}, Anchor::End);
        placeBetween();
    }

    // Between the lines, and clear of them and of the path; left out where there is no such room.
    void placeBetween()
    {
        const WordBlock block{{m_input.onLabel}, m_size, 600, Ink::Full, Anchor::Start, 0, 0};
        const double left = m_plot.right - 8 - block.width();
        const double stop = stops() * (left + block.width() / 2 - m_plot.left) / m_plot.width();
        const Point corner{left, y(m_input.plan.lines.slope * stop) - block.height() / 2};
        const Frame within{
            x(std::min(m_input.plan.design.fewest, stops())), m_plot.top, m_plot.right - 2, m_plot.bottom};
        if (block.width() > within.width() || !m_placer.place(block, {within, corner, m_size * 3})) return;
        m_picture.primitives.emplace_back(m_placer.words().back());
    }

    const StopLinesInput& m_input;
    double m_size;
    Frame m_plot;
    WordPlacer m_placer; // knows the lines and the path
    Picture m_picture;
};

} // namespace

Picture stopLinesChart(const StopLinesInput& input)
{
    constexpr double least = 120;
    if (input.width < least || input.height < least)
        return {input.width, input.height, input.title, input.description, {}};
    return Drawing(input).drawn();
}

} // namespace duskrow::formats
