// SPDX-License-Identifier: MIT
#include "sync/carry/carried_end.h"

#include "domain/log/bounded_json.h"
#include "domain/log/value_json.h"
#include "sync/carry/carried_item.h"
#include "sync/segment/header_values.h"
#include "sync/segment/layout.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

constexpr std::size_t deepest = 16;
constexpr std::int64_t format = 1;

} // namespace

std::string itemHead(char letter, std::uint64_t length)
{
    std::string bytes(1, letter);
    appendNumber(bytes, length, itemHeadBytes - 1);
    return bytes;
}

std::string endText(const CarriedEnd& end)
{
    return canonicalText({
        {"format", format},
        {"photographs", end.photographs},
        {"programme", formatUuid(end.programme)},
        {"segments", end.segments},
    });
}

std::optional<CarriedEnd> readEnd(std::string_view text)
{
    const auto object = parseBounded(text, deepest, Numbers::WholeOnly);
    if (!object || !object->is_object() || canonicalText(*object) != text
        || wholeAt(*object, "format") != format)
        return std::nullopt;
    const auto programme = uuidAt(*object, "programme");
    const auto segments = wholeAt(*object, "segments");
    const auto photographs = wholeAt(*object, "photographs");
    if (!programme || !segments || !photographs) return std::nullopt;
    return CarriedEnd{*programme, *segments, *photographs};
}

} // namespace duskrow::sync
