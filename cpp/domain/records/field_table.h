// SPDX-License-Identifier: MIT
#pragma once

// The verbs a record's table is written with. Only the .cpp files of records include this.

#include <algorithm>
#include <array>

#include "domain/records/field.h"

namespace duskrow::domain::table {

inline constexpr std::int64_t shortText = 200;
inline constexpr std::int64_t longText = 40'000;
inline constexpr std::int64_t lastMs = 253'402'300'799'999; // the end of the year 9999
inline constexpr std::int64_t tallest = 10'000; // mm; a stake of ten metres is a slip of the finger
inline constexpr std::int64_t halfAChange = 24'000; // two of them fit into one change with room to spare

template <typename R>
R& as(Record& record)
{
    return static_cast<R&>(record);
}
template <typename R>
const R& as(const Record& record)
{
    return static_cast<const R&>(record);
}

inline Field withdrawn()
{
    return {.name = "withdrawn",
        .type = FieldType::Text,
        .high = shortText,
        .get = [](const Record& r) { return r.withdrawn.empty() ? Value{} : Value{r.withdrawn}; },
        .set =
            [](Record& r, const Value& v) {
                if (isEmpty(v)) return r.withdrawn.clear(), true;
                const auto* text = std::get_if<std::string>(&v);
                if (text) r.withdrawn = *text;
                return text != nullptr;
            }};
}

template <typename R>
Field text(std::string_view name, std::string R::*member, MergeClass merge, std::int64_t most = shortText)
{
    return {.name = name,
        .type = FieldType::Text,
        .merge = merge,
        .high = most,
        .get =
            [member](const Record& r) {
                const std::string& held = as<R>(r).*member;
                return held.empty() ? Value{} : Value{held};
            },
        .set =
            [member](Record& r, const Value& v) {
                if (isEmpty(v)) return (as<R>(r).*member).clear(), true;
                const auto* held = std::get_if<std::string>(&v);
                if (held) as<R>(r).*member = *held;
                return held != nullptr;
            }};
}

// One that nobody may empty.
inline Field required(Field field)
{
    field.required = true;
    return field;
}

template <typename R>
Field decimal(std::string_view name, std::string R::*member, std::string_view unit)
{
    Field field = text(name, member, MergeClass::Measured, 40);
    field.type = FieldType::Decimal;
    field.unit = unit;
    return field;
}

template <typename R>
Field flag(std::string_view name, std::optional<bool> R::*member, MergeClass merge)
{
    return {.name = name,
        .type = FieldType::Flag,
        .merge = merge,
        .get =
            [member](const Record& r) {
                const auto& held = as<R>(r).*member;
                return held ? Value{*held} : Value{};
            },
        .set =
            [member](Record& r, const Value& v) {
                if (isEmpty(v)) return (as<R>(r).*member).reset(), true;
                const auto* held = std::get_if<bool>(&v);
                if (held) as<R>(r).*member = *held;
                return held != nullptr;
            }};
}

template <typename R, typename Q>
Field integer(std::string_view name, std::optional<Q> R::*member, std::string_view unit, std::int64_t low,
    std::int64_t high, MergeClass merge = MergeClass::Measured)
{
    return {.name = name,
        .type = FieldType::Integer,
        .merge = merge,
        .unit = unit,
        .low = low,
        .high = high,
        .get =
            [member](const Record& r) {
                const auto& held = as<R>(r).*member;
                if (!held) return Value{};
                if constexpr (std::is_arithmetic_v<Q>)
                    return Value{static_cast<std::int64_t>(*held)};
                else
                    return Value{static_cast<std::int64_t>(held->value())};
            },
        .set =
            [member](Record& r, const Value& v) {
                if (isEmpty(v)) return (as<R>(r).*member).reset(), true;
                const auto* held = std::get_if<std::int64_t>(&v);
                if (!held) return false;
                if constexpr (std::is_arithmetic_v<Q>)
                    as<R>(r).*member = static_cast<Q>(*held);
                else
                    as<R>(r).*member = Q{static_cast<typename Q::rep>(*held)};
                return true;
            }};
}

template <typename R>
Field day(std::string_view name, std::optional<LocalDay> R::*member, MergeClass merge = MergeClass::Measured)
{
    return {.name = name,
        .type = FieldType::Day,
        .merge = merge,
        .get =
            [member](const Record& r) {
                const auto& held = as<R>(r).*member;
                return held ? Value{formatDay(*held)} : Value{};
            },
        .set =
            [member](Record& r, const Value& v) {
                if (isEmpty(v)) return (as<R>(r).*member).reset(), true;
                const auto* held = std::get_if<std::string>(&v);
                const auto parsed = held ? parseDay(*held) : Result<LocalDay>(Error{ErrorCode::NotADay});
                if (parsed) as<R>(r).*member = *parsed;
                return parsed.has_value();
            }};
}

template <typename R>
Field id(std::string_view name, Uuid R::*member, bool indexed = true)
{
    return {.name = name,
        .type = FieldType::Id,
        .indexed = indexed,
        .get =
            [member](const Record& r) {
                const Uuid& held = as<R>(r).*member;
                return held.isNil() ? Value{} : Value{formatUuid(held)};
            },
        .set =
            [member](Record& r, const Value& v) {
                if (isEmpty(v)) return as<R>(r).*member = Uuid{}, true;
                const auto* held = std::get_if<std::string>(&v);
                const auto parsed = held ? parseUuid(*held) : std::nullopt;
                if (parsed) as<R>(r).*member = *parsed;
                return parsed.has_value();
            }};
}

// A field of few words. `names` lists the words in the order of the enum.
template <typename R, typename E, std::size_t N>
Field code(std::string_view name, std::optional<E> R::*member, const std::array<std::string_view, N>& names,
    MergeClass merge = MergeClass::Measured)
{
    return {.name = name,
        .type = FieldType::Code,
        .merge = merge,
        .codes = {names.begin(), names.end()},
        .get =
            [member, names](const Record& r) {
                const auto& held = as<R>(r).*member;
                return held ? Value{std::string(names[static_cast<std::size_t>(*held)])} : Value{};
            },
        .set =
            [member, names](Record& r, const Value& v) {
                if (isEmpty(v)) return (as<R>(r).*member).reset(), true;
                const auto* held = std::get_if<std::string>(&v);
                const auto* found = held ? std::find(names.begin(), names.end(), *held) : names.end();
                if (found != names.end()) as<R>(r).*member = static_cast<E>(found - names.begin());
                return found != names.end();
            }};
}

} // namespace duskrow::domain::table
