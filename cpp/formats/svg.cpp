// SPDX-License-Identifier: MIT
#include "formats/svg.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <variant>

#include "formats/utf8.h"

namespace duskrow::formats {

namespace {

// At most two decimals, never in the language of the machine.
std::string number(double value)
{
    if (!std::isfinite(value)) return "0";
    std::array<char, 400> buffer{};
    const auto [end, error] =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, 2);
    std::string text(buffer.data(), error == std::errc{} ? end : buffer.data());
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

std::string attribute(std::string_view name, std::string_view value)
{
    return " " + std::string(name) + "=\"" + escapedXml(value) + "\"";
}
std::string attribute(std::string_view name, double value)
{
    return attribute(name, number(value));
}

std::string pointList(const std::vector<Point>& points)
{
    std::string list;
    for (const Point& point : points) {
        if (!list.empty()) list += ' ';
        list += number(point.x) + "," + number(point.y);
    }
    return list;
}

std::string inkNumber(Ink ink)
{
    return std::to_string(static_cast<int>(ink));
}

// Writes each kind of primitive as one element.
class SvgWriter {
public:
    explicit SvgWriter(const SvgStyle& style) : m_style(style) { }

    std::string operator()(const Line& line) const
    {
        return "<polyline" + attribute("points", pointList(line.points)) + attribute("fill", "none")
            + strokeWith(line.ink) + attribute("stroke-width", line.width)
            + attribute("stroke-linejoin", "round")
            + attribute("stroke-linecap", line.isDashed ? "butt" : "round")
            + (line.isDashed
                    ? attribute("stroke-dasharray", number(3 * line.width) + " " + number(2 * line.width))
                    : std::string())
            + "/>\n";
    }

    std::string operator()(const Area& area) const
    {
        return "<polygon" + attribute("points", pointList(area.outline))
            + paint(area.ink, area.fill, area.opacity) + "/>\n";
    }

    std::string operator()(const Bar& bar) const
    {
        return "<rect" + attribute("x", bar.frame.left) + attribute("y", bar.frame.top)
            + attribute("width", std::max(0.0, bar.frame.width()))
            + attribute("height", std::max(0.0, bar.frame.height()))
            + (bar.radius > 0 ? attribute("rx", bar.radius) : std::string())
            + paint(bar.ink, bar.fill, bar.opacity) + "/>\n";
    }

    std::string operator()(const Mark& mark) const
    {
        const std::string look = mark.isHollow
            ? fillAndStroke(Ink::Card, mark.ink) + attribute("stroke-width", 2)
            : fillWith(mark.ink);
        if (mark.shape == MarkShape::Circle) {
            return "<circle" + attribute("cx", mark.at.x) + attribute("cy", mark.at.y)
                + attribute("r", mark.size / 2) + look + "/>\n";
        }
        return "<polygon" + attribute("points", pointList(outlineOf(mark))) + look + "/>\n";
    }

    std::string operator()(const Words& words) const
    {
        constexpr std::array<const char*, 3> anchors{"start", "middle", "end"};
        const std::string turn = words.turn == 0
            ? std::string()
            : attribute("transform",
                "rotate(" + number(words.turn) + " " + number(words.at.x) + " " + number(words.at.y) + ")");
        return "<text" + attribute("x", words.at.x) + attribute("y", words.at.y)
            + attribute("text-anchor", anchors.at(static_cast<std::size_t>(words.anchor)))
            + attribute("font-size", words.size) + attribute("font-weight", words.weight)
            + fillWith(words.ink) + turn + ">" + escapedXml(words.text) + "</text>\n";
    }

private:
    [[nodiscard]] std::string colour(Ink ink) const { return hexOf(rgbOf(ink, m_style.light)); }
    [[nodiscard]] bool isInPage() const { return !m_style.inPage.empty(); }

    [[nodiscard]] std::string fillWith(Ink ink) const
    {
        return isInPage() ? attribute("class", "f" + inkNumber(ink)) : attribute("fill", colour(ink));
    }
    [[nodiscard]] std::string strokeWith(Ink ink) const
    {
        return isInPage() ? attribute("class", "s" + inkNumber(ink)) : attribute("stroke", colour(ink));
    }
    [[nodiscard]] std::string fillAndStroke(Ink fill, Ink stroke) const
    {
        if (isInPage()) return attribute("class", "f" + inkNumber(fill) + " s" + inkNumber(stroke));
        return attribute("fill", colour(fill)) + attribute("stroke", colour(stroke));
    }

    [[nodiscard]] std::string paint(Ink ink, Fill fill, double opacity) const
    {
        const std::string with = fill == Fill::Hatched
            ? attribute("fill", "url(#" + m_style.inPage + "hatch" + inkNumber(ink) + ")")
            : fillWith(ink);
        return with + (opacity < 1 ? attribute("fill-opacity", opacity) : std::string());
    }

    const SvgStyle& m_style;
};

// One pattern for each ink, so that a hatched area may have any; unused ones cost a line each.
std::string hatchPatterns(const Picture& picture, const SvgStyle& style)
{
    std::string patterns;
    for (int i = 0; i <= static_cast<int>(Ink::Unknown); ++i) {
        const auto ink = static_cast<Ink>(i);
        const bool isUsed =
            std::any_of(picture.primitives.begin(), picture.primitives.end(), [ink](const auto& one) {
                const auto* area = std::get_if<Area>(&one);
                const auto* bar = std::get_if<Bar>(&one);
                return (area && area->fill == Fill::Hatched && area->ink == ink)
                    || (bar && bar->fill == Fill::Hatched && bar->ink == ink);
            });
        if (!isUsed) continue;
        const std::string stroke = style.inPage.empty() ? attribute("stroke", hexOf(rgbOf(ink, style.light)))
                                                        : attribute("class", "s" + inkNumber(ink));
        patterns += "<pattern" + attribute("id", style.inPage + "hatch" + std::to_string(i))
            + attribute("patternUnits", "userSpaceOnUse") + attribute("width", hatchSpacing)
            + attribute("height", hatchSpacing) + attribute("patternTransform", "rotate(45)") + "><line"
            + attribute("x1", 0) + attribute("y1", 0) + attribute("x2", 0) + attribute("y2", hatchSpacing)
            + stroke + attribute("stroke-width", 3) + "/></pattern>\n";
    }
    return patterns.empty() ? patterns : "<defs>\n" + patterns + "</defs>\n";
}

bool isForbidden(char32_t point)
{
    const bool isControl = point < 0x20 && point != '\t' && point != '\n' && point != '\r';
    return isControl || point == 0xFFFE || point == 0xFFFF;
}

} // namespace

std::string escapedXml(std::string_view text)
{
    std::string escaped;
    escaped.reserve(text.size());
    while (!text.empty()) {
        const char32_t point = takeCodePoint(text);
        switch (point) {
        case '&':
            escaped += "&amp;";
            break;
        case '<':
            escaped += "&lt;";
            break;
        case '>':
            escaped += "&gt;";
            break;
        case '"':
            escaped += "&quot;";
            break;
        case '\'':
            escaped += "&#39;";
            break;
        case '\r':
            escaped += "&#13;";
            break; // a bare one would be read back as a line feed
        default:
            appendUtf8(escaped, isForbidden(point) ? replacementCharacter : point);
        }
    }
    return escaped;
}

std::string inkClasses(Light light)
{
    std::string rules;
    for (int i = 0; i <= static_cast<int>(Ink::Unknown); ++i) {
        const std::string colour = hexOf(rgbOf(static_cast<Ink>(i), light));
        rules += ".f" + std::to_string(i) + "{fill:" + colour + "}.s" + std::to_string(i)
            + "{stroke:" + colour + "}";
    }
    return rules;
}

std::string writeSvg(const Picture& picture, const SvgStyle& style)
{
    const bool isInPage = !style.inPage.empty();
    const std::string titleId = style.inPage + "title";
    const std::string aboutId = style.inPage + "desc";
    std::string svg = isInPage ? "" : "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    svg += "<svg xmlns=\"http://www.w3.org/2000/svg\"" + attribute("width", picture.width)
        + attribute("height", picture.height)
        + attribute("viewBox", "0 0 " + number(picture.width) + " " + number(picture.height));
    if (isInPage)
        svg += attribute("aria-labelledby", titleId) + attribute("aria-describedby", aboutId);
    else
        svg += attribute("font-family", style.fontFamily) + attribute("xml:lang", style.language);
    svg += " role=\"img\">\n";
    svg += "<title" + (isInPage ? attribute("id", titleId) : std::string()) + ">" + escapedXml(picture.title)
        + "</title>\n";
    svg += "<desc" + (isInPage ? attribute("id", aboutId) : std::string()) + ">"
        + escapedXml(picture.description) + "</desc>\n";
    svg += hatchPatterns(picture, style);
    const SvgWriter writer(style);
    for (const Primitive& primitive : picture.primitives) svg += std::visit(writer, primitive);
    return svg + "</svg>\n";
}

} // namespace duskrow::formats
