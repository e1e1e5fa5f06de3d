// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace duskrow::formats {

// A colour by what it stands for; the painter turns it into red, green and blue for light or dark.
// Band1 to Band4 are the risk bands from lowest to highest, Tint1 to Tint4 the same as a quiet ground for
// words; Unknown is for what nobody has observed.
enum class Ink {
    Full,
    Soft,
    Paper,
    Card,
    Line,
    Accent,
    Curve,
    Band1,
    Band2,
    Band3,
    Band4,
    Tint1,
    Tint2,
    Tint3,
    Tint4,
    CatchBar,
    Fan,
    Unknown,
};

// Lengths are in logical pixels, x to the right and y downwards from the top left corner.
struct Point {
    double x = 0;
    double y = 0;
};

struct Frame {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;

    [[nodiscard]] double width() const { return right - left; }
    [[nodiscard]] double height() const { return bottom - top; }
    [[nodiscard]] bool meets(const Frame& other) const
    {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
    [[nodiscard]] bool holds(const Frame& other) const
    {
        return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
    }
};

struct Line {
    std::vector<Point> points;
    Ink ink = Ink::Full;
    double width = 1;
    bool isDashed = false;
};

enum class Fill { Solid, Hatched };

// A closed polygon; the last point joins the first.
struct Area {
    std::vector<Point> outline;
    Ink ink = Ink::Full;
    Fill fill = Fill::Solid;
    double opacity = 1;
};

// An upright rectangle, with round corners where radius > 0.
struct Bar {
    Frame frame;
    Ink ink = Ink::Full;
    Fill fill = Fill::Solid;
    double radius = 0;
    double opacity = 1;
};

enum class MarkShape { Circle, Square, Diamond };

// A small sign centred on `at`; `size` is its full width. A hollow one is filled with Card.
struct Mark {
    Point at;
    MarkShape shape = MarkShape::Circle;
    double size = 6;
    Ink ink = Ink::Full;
    bool isHollow = false;
};

enum class Anchor { Start, Middle, End };

// One line of text. `at` is on the baseline; `turn` is in degrees clockwise around `at`.
struct Words {
    std::string text;
    Point at;
    Anchor anchor = Anchor::Start;
    double size = 14;
    int weight = 400;
    Ink ink = Ink::Full;
    double turn = 0;
};

using Primitive = std::variant<Line, Area, Bar, Mark, Words>;

// What a screen, a page or an SVG file shows, drawn in the order of the primitives. Title and description are
// what a screen reader says instead.
struct Picture {
    double width = 0;
    double height = 0;
    std::string title = {};
    std::string description = {};
    std::vector<Primitive> primitives = {};
};

// Distance between the lines of a hatched fill.
constexpr double hatchSpacing = 8;

// The corners of a square or diamond mark.
std::vector<Point> outlineOf(const Mark& mark);

// A width that common sans-serif types do not exceed: 0.6 of the size for a letter, the whole size for
// ideographs, kana, Hangul and emoji. Measured by eye on common types, no source.
double widthOf(std::string_view text, double size);

// The room that upright words take, by the same measure.
Frame frameOf(const Words& words);

} // namespace duskrow::formats
