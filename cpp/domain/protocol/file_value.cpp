// SPDX-License-Identifier: MIT
#include "domain/protocol/file_value.h"

namespace duskrow::domain {

namespace {

// Far above anything a season of traps can hold, far below where integers end.
constexpr std::int64_t mostWhole = 1'000'000'000;

std::optional<unsigned> twoDigits(std::string_view text)
{
    if (text.size() != 2) return std::nullopt;
    unsigned number = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return std::nullopt;
        number = number * 10 + static_cast<unsigned>(c - '0');
    }
    return number;
}

} // namespace

std::optional<std::int64_t> readWhole(const LocatedJson& node)
{
    if (node.kind != LocatedJson::Kind::Whole || node.whole < 0 || node.whole > mostWhole)
        return std::nullopt;
    return node.whole;
}

std::optional<double> readReal(const LocatedJson& node)
{
    if (!node.isNumber() || node.real < 0 || node.real > static_cast<double>(mostWhole)) return std::nullopt;
    return node.real;
}

std::optional<std::chrono::month_day> readMonthDay(const LocatedJson& node)
{
    if (node.kind != LocatedJson::Kind::Text || node.text.size() != 5 || node.text[2] != '-')
        return std::nullopt;
    const std::string_view text = node.text;
    const auto month = twoDigits(text.substr(0, 2));
    const auto day = twoDigits(text.substr(3));
    if (!month || !day) return std::nullopt;
    const std::chrono::month_day monthDay{std::chrono::month{*month}, std::chrono::day{*day}};
    return monthDay.ok() ? std::optional(monthDay) : std::nullopt;
}

std::string formOfChoice(std::span<const char* const> words)
{
    std::string form = words.size() == 1 ? "" : "one of ";
    for (std::size_t i = 0; i < words.size(); ++i)
        form += (i == 0 ? "\"" : ", \"") + std::string(words[i]) + '"';
    return form;
}

} // namespace duskrow::domain
