// SPDX-License-Identifier: MIT
#include "formats/calendar_strip.h"

#include <algorithm>
#include <cmath>

#include "formats/word_placer.h"

namespace duskrow::formats {

using domain::LocalDay;

namespace {

constexpr double padding = 14;
constexpr double lineHeight = 1.25; // of the size
constexpr double beside = 480; // from this width on, at plain type, words stand beside the bars

class StripDrawing {
public:
    explicit StripDrawing(const CalendarStripInput& input) : m_input(input)
    {
        m_size = std::min(16 * input.textScale, std::max(16.0, input.width / 14));
        m_isBeside = input.width >= beside * input.textScale;
        const double wordsTo = m_isBeside ? std::round(input.width * 0.4) : padding;
        m_wordsWidth = m_isBeside ? wordsTo - 2 * padding : input.width - 2 * padding;
        m_left = wordsTo;
        m_right = input.width - padding;
        m_days = std::max(1.0, static_cast<double>((input.lastDay - input.firstDay).count()));
    }

    Picture drawn()
    {
        m_picture = {m_input.width, 0, m_input.title, m_input.description, {}};
        m_y = padding;
        drawKey();
        drawMonths();
        drawToday();
        const double top = m_y;
        for (const StripEntry& entry : m_input.entries) drawEntry(entry);
        m_picture.height = std::ceil(m_y + padding / 2);
        layBelow(top);
        return std::move(m_picture);
    }

private:
    void add(Primitive primitive) { m_picture.primitives.push_back(std::move(primitive)); }

    [[nodiscard]] double x(LocalDay day) const
    {
        const auto gone = static_cast<double>((day - m_input.firstDay).count());
        return m_left + (m_right - m_left) * std::clamp(gone / m_days, 0.0, 1.0);
    }

    void say(const std::string& text, Point at, int weight, Ink ink, Anchor anchor = Anchor::Start)
    {
        const Words words{text, at, anchor, m_size, weight, ink, 0};
        m_placer.keepClearOf(frameOf(words));
        add(words);
    }

    [[nodiscard]] double line() const { return m_size * lineHeight; }
    [[nodiscard]] double barHeight() const { return std::round(m_size * 0.9); }

    // What the signs mean, in one line or in several.
    void drawKey()
    {
        double at = padding;
        const double sign = m_size * 2;
        const auto put = [&](const std::string& label, auto draw) {
            const double width = sign + 6 + widthOf(label, m_size);
            if (at > padding && at + width > m_input.width - padding) {
                at = padding;
                m_y += line();
            }
            draw(Frame{at, m_y + (line() - barHeight()) / 2, at + sign, m_y + (line() + barHeight()) / 2});
            say(label, {at + sign + 6, m_y + m_size}, 400, Ink::Soft);
            at += width + m_size;
        };
        put(m_input.measuredLabel, [&](const Frame& frame) { drawBar(frame, true); });
        put(m_input.expectedLabel, [&](const Frame& frame) { drawBar(frame, false); });
        put(m_input.widestLabel, [&](const Frame& frame) { drawWidest(frame); });
        m_y += line() + m_size * 0.5;
    }

    void drawMonths()
    {
        double free = 0;
        for (const StripTick& tick : m_input.ticks) {
            if (tick.day < m_input.firstDay || tick.day > m_input.lastDay) continue;
            const double width = widthOf(tick.label, m_size);
            const double at = x(tick.day) + 4;
            if (at < free || at + width > m_input.width - 4) continue;
            say(tick.label, {at, m_y + m_size}, 400, Ink::Soft);
            free = at + width + 4;
        }
        m_y += line();
    }

    [[nodiscard]] bool hasToday() const
    {
        return m_input.today && *m_input.today >= m_input.firstDay && *m_input.today <= m_input.lastDay;
    }

    void drawToday()
    {
        if (!hasToday()) return;
        const double width = widthOf(m_input.todayLabel, m_size);
        const double left = std::clamp(x(*m_input.today) - width / 2, 4.0, m_input.width - width - 4);
        say(m_input.todayLabel, {left, m_y + m_size}, 600, Ink::Full);
        m_y += line();
    }

    void drawEntry(const StripEntry& entry)
    {
        m_y += m_size * 0.5;
        const double top = m_y;
        const double room = m_wordsWidth;
        double y = m_y;
        const double both = widthOf(entry.label, m_size) + m_size + widthOf(entry.days, m_size);
        if (!m_isBeside && both <= room) {
            say(entry.label, {padding, y + m_size}, 600, Ink::Full);
            say(entry.days, {m_input.width - padding, y + m_size}, 400, Ink::Full, Anchor::End);
            y += line();
        } else {
            for (const auto& [text, weight] : {std::pair{entry.label, 600}, std::pair{entry.days, 400}})
                for (const std::string& part : brokenIntoLines(text, m_size, room)) {
                    say(part, {padding, y + m_size}, weight, Ink::Full);
                    y += line();
                }
        }
        const double middle = m_isBeside ? (top + y) / 2 : y + m_size * 0.75;
        drawDays(entry, middle);
        m_y = m_isBeside ? y : y + m_size * 1.5;
        m_y += m_size * 0.25;
        m_rules.push_back(m_y);
    }

    void drawDays(const StripEntry& entry, double middle)
    {
        const double half = barHeight() / 2;
        if (entry.earliest < entry.from || entry.latest > entry.to)
            drawWidest({x(entry.earliest), middle - half, x(entry.latest), middle + half});
        if (entry.from == entry.to) {
            const double size = barHeight() + 2;
            add(Mark{{x(entry.from), middle}, entry.isMeasured ? MarkShape::Circle : MarkShape::Diamond, size,
                Ink::Full, !entry.isMeasured});
            return;
        }
        drawBar({x(entry.from), middle - half, x(entry.to), middle + half}, entry.isMeasured);
    }

    void drawBar(const Frame& frame, bool isMeasured)
    {
        const double radius = std::min(frame.height(), frame.width()) / 4;
        if (isMeasured) return add(Bar{frame, Ink::Full, Fill::Solid, radius, 1});
        add(Bar{frame, Ink::Fan, Fill::Solid, 0, 0.35});
        add(Bar{frame, Ink::Full, Fill::Hatched, 0, 0.8});
        add(Line{{{frame.left, frame.top}, {frame.right, frame.top}, {frame.right, frame.bottom},
                     {frame.left, frame.bottom}, {frame.left, frame.top}},
            Ink::Full, 1.5, false});
    }

    // A thin line with an upright at either end.
    void drawWidest(const Frame& frame)
    {
        const double middle = (frame.top + frame.bottom) / 2;
        const double end = frame.height() * 0.35;
        add(Line{{{frame.left, middle}, {frame.right, middle}}, Ink::Full, 1.5, false});
        for (const double at : {frame.left, frame.right})
            add(Line{{{at, middle - end}, {at, middle + end}}, Ink::Full, 1.5, false});
    }

    // What has to know where the words are, yet lies under everything.
    void layBelow(double top)
    {
        std::vector<Primitive> below;
        below.emplace_back(Bar{{0, 0, m_input.width, m_picture.height}, Ink::Card, Fill::Solid, 20, 1});
        const double bottom = m_picture.height - padding / 2;
        const auto lay = [&](const Line& whole) {
            for (const Line& piece : m_placer.cutAroundWords(whole)) below.emplace_back(piece);
        };
        for (std::size_t i = 0; i + 1 < m_rules.size(); ++i)
            below.emplace_back(Line{{{padding, m_rules[i] + m_size * 0.25},
                                        {m_input.width - padding, m_rules[i] + m_size * 0.25}},
                Ink::Line, 1, false});
        for (const StripTick& tick : m_input.ticks)
            if (tick.day >= m_input.firstDay && tick.day <= m_input.lastDay)
                lay({{{x(tick.day), top - line() * (hasToday() ? 2 : 1)}, {x(tick.day), bottom}}, Ink::Line,
                    1, false});
        if (hasToday()) lay({{{x(*m_input.today), top}, {x(*m_input.today), bottom}}, Ink::Full, 2, true});
        m_picture.primitives.insert(m_picture.primitives.begin(), below.begin(), below.end());
    }

    const CalendarStripInput& m_input;
    double m_size = 16;
    bool m_isBeside = false;
    double m_wordsWidth = 0;
    double m_left = 0;
    double m_right = 0;
    double m_days = 1;
    double m_y = 0;
    std::vector<double> m_rules; // between the rows
    WordPlacer m_placer;
    Picture m_picture;
};

} // namespace

Picture calendarStrip(const CalendarStripInput& input)
{
    constexpr double least = 160;
    if (input.width < least) return {input.width, 0, input.title, input.description, {}};
    return StripDrawing(input).drawn();
}

} // namespace duskrow::formats
