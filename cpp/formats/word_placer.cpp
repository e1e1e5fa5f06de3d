// SPDX-License-Identifier: MIT
#include "formats/word_placer.h"

#include <algorithm>
#include <cmath>

namespace duskrow::formats {

namespace {

constexpr double lineHeight = 1.2; // of the size
constexpr double ascent = 0.85; // of the size, from the top of a line to its baseline
constexpr double clearance = 3;
constexpr double gridStep = 4;

// Does the segment pass through the frame? (Clipping after Liang and Barsky, from memory.)
bool crosses(const Frame& frame, Point from, Point to)
{
    const double dx = to.x - from.x;
    const double dy = to.y - from.y;
    double enter = 0;
    double leave = 1;
    const auto clip = [&enter, &leave](double direction, double distance) {
        if (direction == 0) return distance >= 0;
        const double at = distance / direction;
        if (direction < 0) enter = std::max(enter, at);
        if (direction > 0) leave = std::min(leave, at);
        return enter <= leave;
    };
    return clip(-dx, from.x - frame.left) && clip(dx, frame.right - from.x) && clip(-dy, from.y - frame.top)
        && clip(dy, frame.bottom - from.y);
}

Frame grown(const Frame& frame, double by)
{
    return {frame.left - by, frame.top - by, frame.right + by, frame.bottom + by};
}

} // namespace

double WordBlock::width() const
{
    double widest = 0;
    for (const auto& line : lines) widest = std::max(widest, widthOf(line, size));
    return room + widest;
}

double WordBlock::height() const
{
    return std::max(leastHeight, lineHeight * size * static_cast<double>(lines.size()));
}

namespace {

std::vector<std::string> brokenGreedily(std::string_view text, double size, double mostWidth)
{
    std::vector<std::string> lines;
    while (!text.empty()) {
        const auto space = text.find(' ');
        const std::string word(text.substr(0, space));
        text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
        if (!lines.empty() && widthOf(lines.back() + " " + word, size) <= mostWidth) {
            lines.back() += " " + word;
        } else {
            lines.push_back(word);
        }
    }
    return lines;
}

} // namespace

std::vector<std::string> brokenIntoLines(std::string_view text, double size, double mostWidth)
{
    auto lines = brokenGreedily(text, size, mostWidth);
    // Narrower for as long as it costs no line: nothing is left alone in the last one.
    const int halfLetters = static_cast<int>(std::min(mostWidth * 2 / size, 1000.0));
    for (int i = halfLetters; i > 2; --i) {
        auto narrower = brokenGreedily(text, size, i * size / 2);
        if (narrower.size() > lines.size()) break;
        lines = std::move(narrower);
    }
    return lines;
}

void WordPlacer::keepClearOfCurve(const std::vector<Point>& points)
{
    for (std::size_t i = 1; i < points.size(); ++i) m_curve.emplace_back(points[i - 1], points[i]);
}

bool WordPlacer::isFree(const Frame& frame, Over over) const
{
    const Frame wanted = grown(frame, clearance);
    const auto meetsAny = [&wanted](const std::vector<Frame>& frames) {
        return std::any_of(
            frames.begin(), frames.end(), [&wanted](const Frame& other) { return wanted.meets(other); });
    };
    if (meetsAny(m_frames)) return false;
    if (over == Over::Drawing) return true;
    if (over == Over::Nothing && meetsAny(m_signs)) return false;
    return std::none_of(m_curve.begin(), m_curve.end(),
        [&wanted](const auto& segment) { return crosses(wanted, segment.first, segment.second); });
}

std::vector<Line> WordPlacer::cutAroundWords(const Line& line) const
{
    const Point from = line.points.front();
    const Point to = line.points.back();
    const bool isUpright = from.x == to.x;
    std::vector<std::pair<double, double>> covered;
    for (const Frame& words : m_frames) {
        const Frame frame = grown(words, 1);
        if (!crosses(frame, from, to)) continue;
        covered.emplace_back(isUpright ? frame.top : frame.left, isUpright ? frame.bottom : frame.right);
    }
    std::sort(covered.begin(), covered.end());
    const double end = isUpright ? to.y : to.x;
    covered.emplace_back(end, end);
    std::vector<Line> pieces;
    double at = isUpright ? from.y : from.x;
    for (const auto& [first, last] : covered) {
        if (first > at) {
            const Point start = isUpright ? Point{from.x, at} : Point{at, from.y};
            const Point stop = isUpright ? Point{from.x, first} : Point{first, from.y};
            pieces.push_back({{start, stop}, line.ink, line.width, line.isDashed});
        }
        at = std::max(at, last);
    }
    return pieces;
}

std::optional<Frame> WordPlacer::place(const WordBlock& block, const Wish& wish)
{
    const double width = block.width();
    const double height = block.height();
    const Frame corners{
        wish.within.left, wish.within.top, wish.within.right - width, wish.within.bottom - height};
    if (corners.left > corners.right || corners.top > corners.bottom) return std::nullopt;
    // A grid through the wanted corner, so that the wish itself is tried.
    const Point start{std::clamp(wish.corner.x, corners.left, corners.right),
        std::clamp(wish.corner.y, corners.top, corners.bottom)};
    std::optional<Frame> best;
    double shortest = wish.farthest;
    const auto stepsBack = [](double length) { return -std::floor(length / gridStep); };
    for (double i = stepsBack(start.x - corners.left); start.x + i * gridStep <= corners.right; ++i) {
        for (double j = stepsBack(start.y - corners.top); start.y + j * gridStep <= corners.bottom; ++j) {
            const Point corner{start.x + i * gridStep, start.y + j * gridStep};
            const double away = std::hypot(corner.x - wish.corner.x, corner.y - wish.corner.y);
            if (away > shortest || (best && away == shortest)) continue;
            const Frame frame{corner.x, corner.y, corner.x + width, corner.y + height};
            if (!isFree(frame, wish.over)) continue;
            best = frame;
            shortest = away;
        }
    }
    if (!best) return best;
    m_frames.push_back(*best);
    const double spare = height - lineHeight * block.size * static_cast<double>(block.lines.size());
    double baseline = best->top + spare / 2 + ascent * block.size;
    for (const auto& line : block.lines) {
        double x = best->left + block.room;
        if (block.anchor == Anchor::Middle) x = (x + best->right) / 2;
        if (block.anchor == Anchor::End) x = best->right;
        m_words.push_back({line, {x, baseline}, block.anchor, block.size, block.weight, block.ink, 0});
        baseline += lineHeight * block.size;
    }
    return best;
}

} // namespace duskrow::formats
