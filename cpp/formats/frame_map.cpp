// SPDX-License-Identifier: MIT
#include "formats/frame_map.h"

#include <algorithm>
#include <cmath>

#include "domain/rules/local_plane.h"
#include "formats/word_placer.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

constexpr double leastSpan = 120; // metres: what the sketch shows of a field at least
constexpr double dot = 9;
constexpr double edge = 6;
constexpr double mostFoot = 0.4; // of the height; beyond, only the bar stands there

struct Spot {
    const FrameSpot* frame;
    Point at; // metres east and south of the first one, then on the page
};

// Offsets from the first place; the mean of longitudes would go astray at the antimeridian.
std::vector<Spot> placed(const std::vector<FrameSpot>& frames)
{
    std::vector<Spot> spots;
    const GeoPoint* origin = nullptr;
    for (const FrameSpot& frame : frames) {
        if (!frame.place) continue;
        if (!origin) origin = &*frame.place;
        const PlaneOffset offset = offsetFrom(*origin, frame.place->latitude(), frame.place->longitude());
        spots.push_back({&frame, {offset.eastMetres, -offset.northMetres}});
    }
    return spots;
}

std::string lengthLabel(double metres)
{
    constexpr double kilometre = 1000;
    if (metres < kilometre) return std::to_string(std::llround(metres)) + " m";
    return std::to_string(std::llround(metres / kilometre)) + " km";
}

class Sketch {
public:
    explicit Sketch(const FrameMapInput& input)
        : m_input(input), m_size(16 * input.textScale), m_small(13 * input.textScale),
          m_spots(placed(input.frames))
    {
        m_picture = {input.width, input.height, input.title, input.description, {}};
    }

    Picture drawn()
    {
        if (m_spots.empty()) return withoutPlaces();
        layOut();
        drawGround();
        drawWay();
        drawNorth();
        for (const Spot& spot : m_spots) m_placer.keepClearOf(around(spot.at));
        for (const Spot& spot : m_spots) drawSpot(spot);
        drawFoot();
        for (const Words& words : m_placer.words()) m_picture.primitives.emplace_back(words);
        return std::move(m_picture);
    }

private:
    static Frame around(Point at) { return {at.x - dot / 2, at.y - dot / 2, at.x + dot / 2, at.y + dot / 2}; }

    Picture withoutPlaces()
    {
        const Frame whole{0, 0, m_input.width, m_input.height};
        drawBorder(whole);
        const double margin = m_size;
        const auto lines = brokenIntoLines(m_input.noPlaceLabel, m_size, m_input.width - 2 * margin);
        double y = m_input.height / 2 - m_size * 0.6 * (static_cast<double>(lines.size()) - 1) + m_size * 0.3;
        for (const std::string& line : lines) {
            m_picture.primitives.emplace_back(
                Words{line, {m_input.width / 2, y}, Anchor::Middle, m_size, 400, Ink::Full, 0});
            y += m_size * 1.2;
        }
        return std::move(m_picture);
    }

    // The key may take several lines; the ground gets what is left above it.
    void layOut()
    {
        const double barRoom = m_input.width / 3 + m_size;
        m_key = brokenIntoLines(m_input.keyLabel, m_small, m_input.width - barRoom - edge);
        m_crowded = brokenIntoLines(m_input.crowdedLabel, m_small, m_input.width - barRoom - edge);
        const auto footOf = [this](std::size_t lines) {
            return std::max(static_cast<double>(lines) * m_small * 1.25, m_size * 1.9) + edge;
        };
        m_foot = footOf(std::max(m_key.size(), m_crowded.size()));
        if (m_foot > m_input.height * mostFoot) {
            m_key.clear();
            m_crowded.clear();
            m_foot = footOf(0);
        }
        m_ground = {0, 0, m_input.width, m_input.height - m_foot};
        const double labels = m_size * 1.6; // room for a number beside the outermost frames
        const double north = m_size * 2;
        m_field = {labels, labels, m_ground.right - north - labels / 2, m_ground.bottom - labels};
        double west = 0, east = 0, top = 0, bottom = 0;
        for (const Spot& spot : m_spots) {
            west = std::min(west, spot.at.x);
            east = std::max(east, spot.at.x);
            top = std::min(top, spot.at.y);
            bottom = std::max(bottom, spot.at.y);
        }
        const double wide = std::max(east - west, leastSpan);
        const double high = std::max(bottom - top, leastSpan);
        m_pixelsPerMetre = std::min(m_field.width() / wide, m_field.height() / high);
        const double middleX = (m_field.left + m_field.right) / 2;
        const double middleY = (m_field.top + m_field.bottom) / 2;
        for (Spot& spot : m_spots)
            spot.at = {middleX + (spot.at.x - (west + east) / 2) * m_pixelsPerMetre,
                middleY + (spot.at.y - (top + bottom) / 2) * m_pixelsPerMetre};
    }

    void drawBorder(const Frame& frame)
    {
        constexpr double inset = 0.5;
        m_picture.primitives.emplace_back(
            Line{{{frame.left + inset, frame.top + inset}, {frame.right - inset, frame.top + inset},
                     {frame.right - inset, frame.bottom - inset}, {frame.left + inset, frame.bottom - inset},
                     {frame.left + inset, frame.top + inset}},
                Ink::Unknown, 1, false});
    }

    void drawGround()
    {
        m_picture.primitives.emplace_back(Bar{m_ground, Ink::Tint1, Fill::Solid, 0, 1});
        drawBorder(m_ground);
    }

    void drawWay()
    {
        Line way{{}, Ink::Unknown, 1, true};
        for (const Spot& spot : m_spots) way.points.push_back(spot.at);
        m_placer.keepClearOfCurve(way.points);
        if (way.points.size() > 1) m_picture.primitives.emplace_back(std::move(way));
    }

    void drawNorth()
    {
        const double x = m_ground.right - m_size * 1.2;
        const double top = m_ground.top + edge;
        const double half = m_size * 0.35;
        const double high = m_size * 1.3;
        m_picture.primitives.emplace_back(
            Area{{{x, top}, {x + half, top + high}, {x, top + high * 0.75}, {x - half, top + high}},
                Ink::Full, Fill::Solid, 1});
        const Words label{
            m_input.northLabel, {x, top + high + m_small}, Anchor::Middle, m_small, 600, Ink::Full, 0};
        const Frame words = frameOf(label);
        m_placer.keepClearOf(
            {std::min(x - half, words.left), top, std::max(x + half, words.right), words.bottom});
        m_picture.primitives.emplace_back(label);
    }

    // A full dot where larvae were found, a ring where none were.
    void drawSpot(const Spot& spot)
    {
        const bool isEmpty = !spot.frame->larvae || spot.frame->larvae->value() == 0;
        m_picture.primitives.emplace_back(Mark{spot.at, MarkShape::Circle, dot, Ink::Full, isEmpty});
        const std::string count =
            spot.frame->larvae ? std::to_string(spot.frame->larvae->value()) : std::string("\u2013");
        const double gap = m_size * 0.25;
        WordBlock block{
            {count}, m_size, 700, Ink::Full, Anchor::Start, widthOf(spot.frame->number, m_small) + gap, 0};
        const Point corner{spot.at.x + dot * 0.7, spot.at.y - block.height() * 0.9};
        const Frame within{edge / 2, edge / 2, m_ground.right - edge / 2, m_ground.bottom - edge / 2};
        auto room = m_placer.place(block, {within, corner, m_size * 2.2, WordPlacer::Over::Nothing});
        if (!room) room = m_placer.place(block, {within, corner, m_size * 2.2, WordPlacer::Over::Drawing});
        if (!room) {
            m_isCrowded = true;
            return;
        }
        const double baseline = m_placer.words().back().at.y;
        m_picture.primitives.emplace_back(
            Words{spot.frame->number, {room->left, baseline}, Anchor::Start, m_small, 400, Ink::Soft, 0});
        tie(spot.at, *room);
    }

    // A thin line from a mark to words that found no room beside it.
    void tie(Point at, const Frame& words)
    {
        const Point nearest{
            std::clamp(at.x, words.left, words.right), std::clamp(at.y, words.top, words.bottom)};
        if (std::hypot(nearest.x - at.x, nearest.y - at.y) > dot * 1.5)
            m_picture.primitives.emplace_back(Line{{at, nearest}, Ink::Soft, 0.75, false});
    }

    void drawFoot()
    {
        const double length = roundLength(Metres{m_input.width / 3 / m_pixelsPerMetre});
        const double pixels = length * m_pixelsPerMetre;
        const double base = m_ground.bottom + edge + m_size;
        m_picture.primitives.emplace_back(
            Words{lengthLabel(length), {1, base - 1}, Anchor::Start, m_small, 400, Ink::Full, 0});
        const double y = base + m_size * 0.5;
        const double tick = m_size * 0.25;
        m_picture.primitives.emplace_back(
            Line{{{1, y - tick}, {1, y}, {1 + pixels, y}, {1 + pixels, y - tick}}, Ink::Full, 1.5, false});
        double lineBase = m_ground.bottom + edge + m_small * 0.85;
        for (const std::string& line : m_isCrowded ? m_crowded : m_key) {
            m_picture.primitives.emplace_back(
                Words{line, {m_input.width, lineBase}, Anchor::End, m_small, 400, Ink::Soft, 0});
            lineBase += m_small * 1.25;
        }
    }

    const FrameMapInput& m_input;
    double m_size;
    double m_small;
    std::vector<Spot> m_spots;
    std::vector<std::string> m_key;
    std::vector<std::string> m_crowded;
    Frame m_ground;
    Frame m_field; // where frames may lie
    double m_foot = 0;
    double m_pixelsPerMetre = 1;
    bool m_isCrowded = false;
    WordPlacer m_placer;
    Picture m_picture;
};

} // namespace

double roundLength(Metres most)
{
    if (!(most.value() > 1)) return 1;
    const double power = std::pow(10.0, std::floor(std::log10(most.value())));
    for (const double step : {5.0, 2.0})
        if (step * power <= most.value()) return step * power;
    return power;
}

Picture frameMap(const FrameMapInput& input)
{
    constexpr double least = 120;
    if (input.width < least || input.height < least)
        return {input.width, input.height, input.title, input.description, {}};
    return Sketch(input).drawn();
}

} // namespace duskrow::formats
