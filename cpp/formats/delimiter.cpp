// SPDX-License-Identifier: MIT
#include "formats/delimiter.h"

#include <array>
#include <tuple>
#include <utility>
#include <vector>

namespace duskrow::formats {

namespace {

constexpr std::size_t farEnough = 64 * 1024; // bytes
constexpr std::size_t enoughLines = 100;

constexpr std::array<std::pair<char, std::string_view>, 4> knownDelimiters{
    {{',', "comma"}, {';', "semicolon"}, {'\t', "tab"}, {'|', "bar"}}};

using Counts = std::array<std::size_t, knownDelimiters.size()>;

// How often each candidate stands in each of the first lines, outside of quotes.
std::vector<Counts> countsOf(std::string_view text)
{
    std::vector<Counts> lines;
    Counts counts{};
    bool isQuoted = false;
    bool mayOpen = true; // a quoted cell
    bool isEmpty = true;
    const auto end = [&] {
        if (!isEmpty) lines.push_back(counts);
        counts = {};
        isEmpty = true;
    };
    std::size_t looked = 0;
    for (const char sign : text) {
        if (lines.size() == enoughLines || (++looked > farEnough && !lines.empty())) return lines;
        // A quote within a cell, such as that of seconds, quotes nothing.
        if (sign == '"' && (isQuoted || mayOpen)) isQuoted = !isQuoted;
        mayOpen = sign == '"' || sign == '\n' || sign == '\r' || !delimiterCode(sign).empty();
        if (!isQuoted && (sign == '\n' || sign == '\r')) {
            end();
            continue;
        }
        isEmpty = false;
        if (isQuoted) continue;
        for (std::size_t i = 0; i < knownDelimiters.size(); ++i)
            if (sign == knownDelimiters[i].first) ++counts[i];
    }
    end();
    return lines;
}

} // namespace

DelimiterFinding delimiterOf(std::string_view text)
{
    DelimiterFinding best;
    const std::vector<Counts> lines = countsOf(text);
    best.lines = lines.size();
    if (lines.empty()) return best;
    for (std::size_t i = 0; i < knownDelimiters.size(); ++i) {
        const std::size_t parts = lines.front()[i];
        if (parts == 0) continue;
        std::size_t agreeing = 0;
        for (const Counts& counts : lines) agreeing += counts[i] == parts ? 1U : 0U;
        if (std::tuple(agreeing, parts + 1) <= std::tuple(best.agreeing, best.columns)) continue;
        best = {knownDelimiters[i].first, DelimiterReason::Steady, parts + 1, agreeing, lines.size()};
    }
    return best;
}

std::string_view delimiterCode(char delimiter)
{
    for (const auto& [sign, code] : knownDelimiters)
        if (sign == delimiter) return code;
    return {};
}

std::optional<char> delimiterNamed(std::string_view code)
{
    for (const auto& [sign, name] : knownDelimiters)
        if (name == code) return sign;
    return std::nullopt;
}

} // namespace duskrow::formats
