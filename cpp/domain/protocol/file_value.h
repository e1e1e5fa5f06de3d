// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <chrono>
#include <optional>
#include <span>
#include <string>
#include <type_traits>

#include "domain/base/quantity.h"
#include "domain/protocol/located_json.h"
#include "domain/protocol/protocol.h"

namespace duskrow::domain {

// How one type stands in a protocol file: `read` gives nothing when the value has another form, and `form`
// says in words what belongs there.
template <typename T>
struct FileValue;

std::optional<std::int64_t> readWhole(const LocatedJson& node); // 0 to 1,000,000,000
std::optional<double> readReal(const LocatedJson& node); // 0 or more
std::optional<std::chrono::month_day> readMonthDay(const LocatedJson& node); // "06-01"

// The words of a closed choice, in the order of the enum's own values.
template <typename Choice>
std::optional<Choice> readChoice(const LocatedJson& node, std::span<const char* const> words)
{
    if (node.kind != LocatedJson::Kind::Text) return std::nullopt;
    for (std::size_t i = 0; i < words.size(); ++i)
        if (node.text == words[i]) return static_cast<Choice>(i);
    return std::nullopt;
}
std::string formOfChoice(std::span<const char* const> words);

template <>
struct FileValue<int> {
    static std::optional<int> read(const LocatedJson& node)
    {
        const auto whole = readWhole(node);
        return whole ? std::optional(static_cast<int>(*whole)) : std::nullopt;
    }
    static std::string form() { return "a whole number, 0 or more"; }
};

template <>
struct FileValue<bool> {
    static std::optional<bool> read(const LocatedJson& node)
    {
        return node.kind == LocatedJson::Kind::Boolean ? std::optional(node.boolean) : std::nullopt;
    }
    static std::string form() { return "true or false"; }
};

template <>
struct FileValue<double> {
    static std::optional<double> read(const LocatedJson& node) { return readReal(node); }
    static std::string form() { return "a number, 0 or more"; }
};

template <>
struct FileValue<std::string> {
    static std::optional<std::string> read(const LocatedJson& node)
    {
        return node.kind == LocatedJson::Kind::Text ? std::optional(node.text) : std::nullopt;
    }
    static std::string form() { return "a text"; }
};

template <typename Tag>
struct FileValue<Quantity<Tag, std::int64_t>> {
    static std::optional<Quantity<Tag, std::int64_t>> read(const LocatedJson& node)
    {
        const auto whole = readWhole(node);
        return whole ? std::optional(Quantity<Tag, std::int64_t>(*whole)) : std::nullopt;
    }
    static std::string form() { return FileValue<int>::form(); }
};

template <typename Tag>
struct FileValue<Quantity<Tag, double>> {
    static std::optional<Quantity<Tag, double>> read(const LocatedJson& node)
    {
        const auto real = readReal(node);
        return real ? std::optional(Quantity<Tag, double>(*real)) : std::nullopt;
    }
    static std::string form() { return FileValue<double>::form(); }
};

template <typename Rep, typename Period>
struct FileValue<std::chrono::duration<Rep, Period>> {
    static std::optional<std::chrono::duration<Rep, Period>> read(const LocatedJson& node)
    {
        constexpr int most = 10'000; // a lifetime, and small enough to be added to any day
        const auto whole = FileValue<int>::read(node);
        return whole && *whole <= most ? std::optional(std::chrono::duration<Rep, Period>(*whole))
                                       : std::nullopt;
    }
    static std::string form() { return "a whole number from 0 to 10,000"; }
};

template <>
struct FileValue<std::chrono::year> {
    static std::optional<std::chrono::year> read(const LocatedJson& node)
    {
        const auto whole = FileValue<int>::read(node);
        return whole && *whole <= 9999 ? std::optional(std::chrono::year(*whole)) : std::nullopt;
    }
    static std::string form() { return "a year of four digits"; }
};

template <>
struct FileValue<std::chrono::month_day> {
    static std::optional<std::chrono::month_day> read(const LocatedJson& node) { return readMonthDay(node); }
    static std::string form() { return "a day of the year such as \"06-01\""; }
};

template <>
struct FileValue<std::chrono::weekday> {
    static constexpr std::array words{
        "sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"};
    static std::optional<std::chrono::weekday> read(const LocatedJson& node)
    {
        const auto day = readChoice<unsigned>(node, words);
        return day ? std::optional(std::chrono::weekday(*day)) : std::nullopt;
    }
    static std::string form() { return formOfChoice(words); }
};

// The words of an enum in the file, in the order of its values.
template <typename Choice>
inline constexpr std::array<const char*, 0> choiceWords{};
template <>
inline constexpr std::array choiceWords<TrapShape>{"bucket", "delta", "wing", "cone", "jug"};
template <>
inline constexpr std::array choiceWords<CatchOf>{"males", "females", "both"};
template <>
inline constexpr std::array choiceWords<HeightRule>{"fixed", "follow_canopy"};
template <>
inline constexpr std::array choiceWords<PlacementRelation>{"about", "at_least", "away_from"};
template <>
inline constexpr std::array choiceWords<HeatUnit>{"celsius", "fahrenheit"};
template <>
inline constexpr std::array choiceWords<HeatMethod>{
    "average", "average_clamped", "single_triangle", "double_triangle", "single_sine", "double_sine"};
template <>
inline constexpr std::array choiceWords<CutOff>{"none", "horizontal", "intermediate", "vertical"};
template <>
inline constexpr std::array choiceWords<SumAfter>{"start", "first_catch"};
template <>
inline constexpr std::array choiceWords<Currency>{"CAD", "USD"};
template <>
inline constexpr std::array choiceWords<Milestone>{"half_of_flight", "peak"};
template <>
inline constexpr std::array choiceWords<AreaUnit>{"m2", "ft2"};
template <>
inline constexpr std::array choiceWords<CautionPlace>{"counting", "decision", "killing_strip", "round"};

template <typename Choice>
requires std::is_enum_v<Choice>
struct FileValue<Choice> {
    static std::optional<Choice> read(const LocatedJson& node)
    {
        return readChoice<Choice>(node, choiceWords<Choice>);
    }
    static std::string form() { return formOfChoice(choiceWords<Choice>); }
};

} // namespace duskrow::domain
