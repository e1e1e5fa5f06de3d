// SPDX-License-Identifier: MIT
#include "domain/rules/typed_place.h"

#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "domain/base/plain_word.h"

namespace duskrow::domain {

namespace {

constexpr std::size_t longestPlace = 64;

struct Axis {
    std::string name;
    double most;
    char positive;
    char negative;
};

// Everything a keyboard or a copied page may hold for a sign is brought to plain ASCII first.
constexpr std::array<std::pair<std::string_view, char>, 14> plainForms{{
    {"\u00B0", 'd'}, // degree
    {"\u00BA", 'd'}, // masculine ordinal, often typed for degree
    {"\u02DA", 'd'}, // ring above
    {"''", 's'}, // two apostrophes for a double one
    {"\u2032\u2032", 's'}, {"\"", 's'}, {"\u2033", 's'}, // double prime
    {"\u201D", 's'}, // closing double quote
    {"'", 'm'}, {"\u2032", 'm'}, // prime
    {"\u2019", 'm'}, // closing quote
    {"\u2212", '-'}, // minus sign
    {"\u00A0", ' '}, // no-break space
    {"\u202F", ' '}, // narrow no-break space
}};

std::optional<std::string> plainPlace(std::string_view text)
{
    std::string plain;
    const auto isPlain = [](char c) { return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == ' '; };
    while (!text.empty()) {
        if (isPlain(text.front())) {
            plain += text.front();
            text.remove_prefix(1);
            continue;
        }
        bool isKnown = false;
        for (const auto& [form, letter] : plainForms) {
            if (!text.starts_with(form)) continue;
            plain += letter;
            text.remove_prefix(form.size());
            isKnown = true;
            break;
        }
        if (isKnown) continue;
        const char c = text.front();
        // The letters that stand for signs here are not accepted when typed as such.
        if (c == 'd' || c == 'm' || (c & 0x80) != 0) return std::nullopt;
        plain += c == '\t' ? ' ' : c == 's' ? 'S' : c;
        text.remove_prefix(1);
    }
    return plain;
}

// Takes a sign or a letter of the compass off either end: 1, -1, or nothing when they contradict.
std::optional<int> takeSign(std::string_view& text, const Axis& axis)
{
    int signs = 0;
    int direction = 1;
    const auto take = [&](char c) {
        const char letter = c >= 'a' && c <= 'z' && c != 's' ? static_cast<char>(c - 'a' + 'A') : c;
        if (letter == axis.negative) direction = -1;
        return letter == axis.negative || letter == axis.positive;
    };
    if (!text.empty() && (text.front() == '-' || text.front() == '+' || take(text.front()))) {
        if (text.front() == '-') direction = -1;
        ++signs;
        text = withoutBlanks(text.substr(1));
    }
    if (!text.empty() && take(text.back())) {
        ++signs;
        text = withoutBlanks(text.substr(0, text.size() - 1));
    }
    if (signs > 1) return std::nullopt;
    return direction;
}

struct Figure {
    double value = 0.0;
    bool isWhole = true;
};

std::optional<Figure> takeFigure(std::string_view& text)
{
    std::string digits;
    Figure figure;
    while (!text.empty()) {
        const char c = text.front();
        const bool isMark = c == '.' || c == ',';
        if (!isMark && (c < '0' || c > '9')) break;
        if (isMark && (!figure.isWhole || digits.empty())) return std::nullopt;
        if (isMark) figure.isWhole = false;
        digits += isMark ? '.' : c;
        text.remove_prefix(1);
    }
    if (digits.empty() || digits.back() == '.') return std::nullopt;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), figure.value);
    if (read.ec != std::errc{}) return std::nullopt;
    return figure;
}

// The figures in order: degrees, minutes, seconds. Only the last may have decimals.
std::optional<std::vector<Figure>> takeFigures(std::string_view text)
{
    constexpr std::string_view marks = "dms";
    std::vector<Figure> figures;
    while (!text.empty()) {
        if (figures.size() == marks.size()) return std::nullopt;
        if (!figures.empty() && !figures.back().isWhole) return std::nullopt;
        const auto figure = takeFigure(text);
        if (!figure) return std::nullopt;
        figures.push_back(*figure);
        const std::size_t before = text.size();
        text = withoutBlanks(text);
        if (text.starts_with(marks[figures.size() - 1]))
            text = withoutBlanks(text.substr(1));
        else if (!text.empty() && before == text.size())
            return std::nullopt;
    }
    if (figures.empty()) return std::nullopt;
    return figures;
}

Result<double> parseAngle(std::string_view typed, const Axis& axis)
{
    if (typed.size() > longestPlace)
        return Error{ErrorCode::TooLong, {axis.name, std::to_string(longestPlace)}};
    const Error refused{ErrorCode::NotAPlace, {std::string(typed)}};
    const auto plain = plainPlace(typed);
    if (!plain) return refused;
    std::string_view text = withoutBlanks(*plain);
    const auto sign = takeSign(text, axis);
    if (!sign) return refused;
    const auto figures = takeFigures(text);
    if (!figures) return refused;

    double degrees = figures->front().value;
    if (figures->size() > 1) {
        if ((*figures)[1].value >= 60.0) return Error{ErrorCode::OutOfRange, {"minutes", "0", "60"}};
        degrees += (*figures)[1].value / 60.0;
    }
    if (figures->size() > 2) {
        if ((*figures)[2].value >= 60.0) return Error{ErrorCode::OutOfRange, {"seconds", "0", "60"}};
        degrees += (*figures)[2].value / 3600.0;
    }
    if (degrees > axis.most) {
        const std::string most = std::to_string(static_cast<int>(axis.most));
        return Error{ErrorCode::OutOfRange, {axis.name, "-" + most, most}};
    }
    return *sign * degrees;
}

std::int32_t toE7(double degrees)
{
    return static_cast<std::int32_t>(std::lround(degrees * 1e7));
}

} // namespace

Result<GeoPoint> parsePlace(std::string_view latitude, std::string_view longitude)
{
    const auto lat = parseAngle(latitude, {"latitude", 90.0, 'N', 'S'});
    if (!lat) return lat.error();
    const auto lon = parseAngle(longitude, {"longitude", 180.0, 'E', 'W'});
    if (!lon) return lon.error();
    return GeoPoint{toE7(*lat), toE7(*lon)};
}

} // namespace duskrow::domain
