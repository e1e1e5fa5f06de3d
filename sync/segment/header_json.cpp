// SPDX-License-Identifier: MIT
#include "sync/segment/header_json.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "domain/log/bounded_json.h"
#include "domain/log/value_json.h"
#include "sync/segment/header_values.h"
#include "sync/segment/refusals.h"

namespace duskrow::sync {

using namespace duskrow::domain;
using nlohmann::json;

namespace {

constexpr std::size_t deepest = 16;
constexpr std::int64_t format = 1;
constexpr std::int64_t mostMs = 253'402'300'799'999; // the end of the year 9999

Error malformedHeader(const char* what)
{
    return malformed(std::string("header: ") + what);
}

bool readTimes(const json& object, SegmentHeader& header)
{
    const auto found = object.find("at_ms");
    if (found == object.end() || !found->is_array() || found->size() != 2) return false;
    for (const json& item : *found)
        if (!item.is_number_integer() || item.get<std::int64_t>() < -mostMs
            || item.get<std::int64_t>() > mostMs)
            return false;
    header.earliest = instantFromMs(found->front().get<std::int64_t>());
    header.latest = instantFromMs(found->back().get<std::int64_t>());
    return header.earliest <= header.latest;
}

Result<Done> readNumbers(const json& object, SegmentHeader& header)
{
    const auto first = wholeAt(object, "first");
    const auto last = wholeAt(object, "last");
    const auto raw = wholeAt(object, "raw");
    const auto roster = wholeAt(object, "roster");
    if (!first || *first < 1) return malformedHeader("first");
    if (!last || *last < *first) return malformedHeader("last");
    if (*last - *first >= mostChanges) return tooLarge("changes");
    if (!raw || *raw < 1) return malformedHeader("raw");
    if (*raw > mostRawBytes) return tooLarge("raw");
    if (!roster || *roster < 0) return malformedHeader("roster");
    header.first = *first;
    header.last = *last;
    header.rawBytes = *raw;
    header.roster = *roster;
    return Done{};
}

// Only the first segment of a stream has none before it.
bool readPrevious(const json& object, SegmentHeader& header)
{
    if (header.first > 1) return hexAt(object, "prev", header.previous);
    const auto found = object.find("prev");
    return found != object.end() && *found == "";
}

} // namespace

std::string headerText(const SegmentHeader& header)
{
    json cites = json::object();
    for (const auto& [stream, number] : header.cites) cites[formatHex(stream)] = number;
    return canonicalText(json{
        {"at_ms", json::array({toMs(header.earliest), toMs(header.latest)})},
        {"cites", std::move(cites)},
        {"first", header.first},
        {"format", format},
        {"key", formatHex(header.key)},
        {"last", header.last},
        {"needs", header.needs},
        {"prev", header.first == 1 ? std::string() : formatHex(header.previous)},
        {"programme", formatUuid(header.programme)},
        {"raw", header.rawBytes},
        {"root", formatHex(header.root)},
        {"roster", header.roster},
        {"stream", formatHex(header.stream)},
    });
}

Result<SegmentHeader> readHeader(std::string_view text)
{
    if (text.size() > mostHeaderBytes) return tooLarge("header");
    const auto object = parseBounded(text, deepest, Numbers::WholeOnly);
    if (!object || !object->is_object()) return malformedHeader("JSON");
    if (canonicalText(*object) != text) return malformedHeader("form");
    if (wholeAt(*object, "format") != format) return malformedHeader("format");
    SegmentHeader header;
    const auto programme = uuidAt(*object, "programme");
    if (!programme || programme->isNil()) return malformedHeader("programme");
    header.programme = *programme;
    if (!hexAt(*object, "stream", header.stream)) return malformedHeader("stream");
    if (!hexAt(*object, "key", header.key)) return malformedHeader("key");
    if (!hexAt(*object, "root", header.root)) return malformedHeader("root");
    if (!readTimes(*object, header)) return malformedHeader("at_ms");
    if (const auto numbers = readNumbers(*object, header); !numbers) return numbers.error();
    if (!readPrevious(*object, header)) return malformedHeader("prev");
    auto cites = citesAt(*object, "cites", header.stream);
    if (!cites) return malformedHeader("cites");
    header.cites = std::move(*cites);
    auto needs = namesAt(*object, "needs");
    if (!needs) return malformedHeader("needs");
    header.needs = std::move(*needs);
    return header;
}

} // namespace duskrow::sync
