// SPDX-License-Identifier: MIT
#include "domain/log/quick_reader.h"

#include <simdjson.h>

namespace duskrow::domain {

namespace {

using simdjson::dom::array;
using simdjson::dom::element;
using simdjson::dom::element_type;
using simdjson::dom::object;

constexpr std::int64_t mostMs = 253'402'300'799'999;

bool holdsNul(std::string_view text)
{
    return text.find('\0') != std::string_view::npos;
}

std::optional<std::string_view> textOf(const element& held)
{
    std::string_view text;
    if (held.get(text) != simdjson::SUCCESS || holdsNul(text)) return std::nullopt;
    return text;
}

std::optional<std::int64_t> wholeOf(const element& held)
{
    std::int64_t number = 0;
    if (held.type() != element_type::INT64 || held.get(number) != simdjson::SUCCESS) return std::nullopt;
    return number;
}

bool readId(const element& held, Uuid& id)
{
    const auto text = textOf(held);
    const auto parsed = text ? parseUuid(*text) : std::nullopt;
    if (parsed) id = *parsed;
    return parsed.has_value();
}

bool readRefs(const element& held, const ChangeRef& own, std::vector<ChangeRef>& refs)
{
    array list;
    if (held.get(list) != simdjson::SUCCESS) return false;
    refs.reserve(list.size());
    for (const element item : list) {
        const auto text = textOf(item);
        const auto ref = text ? parseRef(*text) : std::nullopt;
        if (!ref || (ref->stream == own.stream && ref->seq >= own.seq)) return false;
        refs.push_back(*ref);
    }
    return true;
}

bool readValue(const element& held, Value& value)
{
    switch (held.type()) {
    case element_type::NULL_VALUE:
        return true;
    case element_type::BOOL: {
        bool flag = false;
        if (held.get(flag) != simdjson::SUCCESS) return false;
        value = flag;
        return true;
    }
    case element_type::INT64:
        value = *wholeOf(held);
        return true;
    case element_type::STRING: {
        const auto text = textOf(held);
        if (text) value = std::string(*text);
        return text.has_value();
    }
    default:
        return false;
    }
}

// The references of a field are read once it is known whose change it is: `f` stands before `seq` and
// `stream`.
bool readField(const element& held, const ChangeRef& own, FieldSet& field)
{
    object parts;
    if (held.get(parts) != simdjson::SUCCESS) return false;
    std::string_view before;
    bool hasValue = false;
    for (const auto& [key, part] : parts) {
        if (!before.empty() && key <= before) return false;
        before = key;
        if (key == "b" && !readRefs(part, own, field.base)) return false;
        if (key == "v") hasValue = readValue(part, field.value);
        if (key != "b" && key != "v") return false;
    }
    return hasValue;
}

bool readFields(const element& held, Change& change)
{
    object fields;
    if (held.get(fields) != simdjson::SUCCESS) return false;
    change.fields.reserve(fields.size());
    std::string_view before;
    bool isFirst = true;
    for (const auto& [key, set] : fields) {
        if ((!isFirst && key <= before) || holdsNul(key)) return false;
        isFirst = false;
        before = key;
        const auto placed = change.fields.emplace_hint(change.fields.end(), std::string(key), FieldSet{});
        if (!readField(set, change.ref, placed->second)) return false;
    }
    return true;
}

// What stands at the top, in the order of the keys; nothing when one is unknown or out of order.
struct Top {
    std::optional<element> fields;
    std::optional<element> saw;
    int found = 0; // of the keys that must be there
};

bool readKey(std::string_view key, const element& held, Change& change, Top& top)
{
    ++top.found;
    if (key == "programme") return readId(held, change.programme);
    if (key == "author") return readId(held, change.author);
    if (key == "id") return readId(held, change.record) && !change.record.isNil();
    if (key == "f") return top.fields = held, true;
    if (key == "format") return wholeOf(held) == 1;
    if (key == "seq") return (change.ref.seq = wholeOf(held).value_or(0)) >= 1;
    if (key == "stream") {
        const auto text = textOf(held);
        return text && parseHex(*text, change.ref.stream);
    }
    if (key == "kind") {
        const auto text = textOf(held);
        if (text) change.kind = *text;
        return text.has_value();
    }
    if (key == "at_ms") {
        const auto ms = wholeOf(held);
        if (ms) change.at = instantFromMs(*ms);
        return ms && *ms >= -mostMs && *ms <= mostMs;
    }
    if (key == "offset_min") {
        const auto minutes = wholeOf(held);
        if (minutes) change.offset = std::chrono::minutes{*minutes};
        return minutes && *minutes >= -1440 && *minutes <= 1440;
    }
    --top.found;
    if (key == "site") return readId(held, change.site);
    if (key == "saw") return top.saw = held, true;
    return false;
}

} // namespace

std::optional<Change> readUsualChange(std::string_view bytes)
{
    thread_local simdjson::dom::parser parser;
    element root;
    object top;
    if (parser.parse(bytes.data(), bytes.size()).get(root) != simdjson::SUCCESS) return std::nullopt;
    if (root.get(top) != simdjson::SUCCESS) return std::nullopt;
    Change change;
    Top seen;
    std::string_view before;
    for (const auto& [key, held] : top) {
        if (key <= before || !readKey(key, held, change, seen)) return std::nullopt;
        before = key;
    }
    constexpr int needed = 10;
    if (seen.found != needed || !readFields(*seen.fields, change)) return std::nullopt;
    if (seen.saw && !readRefs(*seen.saw, change.ref, change.saw)) return std::nullopt;
    return change;
}

} // namespace duskrow::domain
