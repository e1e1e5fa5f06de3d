// SPDX-License-Identifier: MIT
#include "domain/log/change.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

#include "domain/log/bounded_json.h"
#include "domain/log/canonical_form.h"
#include "domain/log/quick_reader.h"
#include "domain/log/value_json.h"

namespace duskrow::domain {

using nlohmann::json;

namespace {

constexpr std::size_t deepestChange = 16;
constexpr std::int64_t format = 1;
constexpr std::int64_t mostMs = 253'402'300'799'999; // the end of the year 9999

// The canonical form is written straight down: building a tree of JSON first takes several times as long, and
// an import writes a hundred thousand changes.
void addPlain(std::string& out, std::string_view text) // ids: nothing in them is escaped
{
    out.append(1, '"').append(text).append(1, '"');
}

void addId(std::string& out, const Uuid& id)
{
    out += '"';
    appendUuid(out, id);
    out += '"';
}

void addText(std::string& out, std::string_view text)
{
    const auto isPlain = [](char c) { return c >= 0x20 && c < 0x7F && c != '"' && c != '\\'; };
    if (std::all_of(text.begin(), text.end(), isPlain))
        addPlain(out, text);
    else
        out += canonicalText(json(std::string(text)));
}

void addNumber(std::string& out, std::int64_t number)
{
    std::array<char, 24> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
    out.append(digits.data(), end);
}

void addValue(std::string& out, const Value& value)
{
    if (const auto* text = std::get_if<std::string>(&value))
        addText(out, *text);
    else if (const auto* number = std::get_if<std::int64_t>(&value))
        addNumber(out, *number);
    else
        out += canonicalText(jsonOf(value));
}

void addRefs(std::string& out, const std::vector<ChangeRef>& list)
{
    out += '[';
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (i > 0) out += ',';
        addPlain(out, formatRef(list[i]));
    }
    out += ']';
}

Error malformed(std::string what)
{
    return Error{ErrorCode::ChangeMalformed, {std::move(what)}};
}

std::optional<Uuid> readId(const json& object, const char* key)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_string()) return std::nullopt;
    return parseUuid(found->get_ref<const std::string&>());
}

std::optional<std::int64_t> readWhole(const json& object, const char* key)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_number_integer()) return std::nullopt;
    return found->get<std::int64_t>();
}

// A change cites only what was there before it: citing itself or a later number would hide what it says.
bool readRefs(const json& object, const char* key, const ChangeRef& own, std::vector<ChangeRef>& out)
{
    const auto found = object.find(key);
    if (found == object.end()) return true;
    if (!found->is_array()) return false;
    for (const json& item : *found) {
        const auto ref = item.is_string() ? parseRef(item.get_ref<const std::string&>()) : std::nullopt;
        if (!ref || (ref->stream == own.stream && ref->seq >= own.seq)) return false;
        out.push_back(*ref);
    }
    return true;
}

Result<Done> readFields(const json& object, Change& change)
{
    const auto fields = object.find("f");
    if (fields == object.end() || !fields->is_object()) return malformed("f");
    for (const auto& [name, set] : fields->items()) {
        FieldSet field;
        const auto value = set.is_object() ? set.find("v") : set.end();
        if (!set.is_object() || value == set.end() || !readRefs(set, "b", change.ref, field.base))
            return malformed(name);
        field.value = valueOf(*value);
        change.fields.emplace(name, std::move(field));
    }
    return Done{};
}

Result<Done> readHead(const json& object, Change& change)
{
    const auto programme = readId(object, "programme");
    const auto author = readId(object, "author");
    const auto record = readId(object, "id");
    const auto seq = readWhole(object, "seq");
    const auto at = readWhole(object, "at_ms");
    const auto offset = readWhole(object, "offset_min");
    const auto kind = object.find("kind");
    const auto stream = object.find("stream");
    if (readWhole(object, "format") != format) return malformed("format");
    if (!programme) return malformed("programme");
    if (!author) return malformed("author");
    if (!record || record->isNil()) return malformed("id");
    if (!seq || *seq < 1) return malformed("seq");
    if (!at || *at < -mostMs || *at > mostMs) return malformed("at_ms");
    if (!offset || *offset < -1440 || *offset > 1440) return malformed("offset_min");
    if (kind == object.end() || !kind->is_string()) return malformed("kind");
    if (stream == object.end() || !stream->is_string()
        || !parseHex(stream->get_ref<const std::string&>(), change.ref.stream))
        return malformed("stream");
    change.programme = *programme;
    change.author = *author;
    change.record = *record;
    change.ref.seq = *seq;
    change.at = instantFromMs(*at);
    change.offset = std::chrono::minutes{*offset};
    change.kind = kind->get<std::string>();
    if (object.contains("site")) {
        const auto site = readId(object, "site");
        if (!site) return malformed("site");
        change.site = *site;
    }
    return Done{};
}

enum class Form { Any, Canonical };

Result<Change> read(std::string_view bytes, Form form)
{
    if (bytes.size() > mostChangeBytes) return malformed("size");
    if (auto usual = readUsualChange(bytes))
        if (form == Form::Any || isCanonicalForm(bytes)) return std::move(*usual);
    const auto object = parseBounded(bytes, deepestChange, Numbers::WholeOnly);
    if (!object || !object->is_object()) return malformed("JSON");
    if (form == Form::Canonical && !isCanonicalForm(bytes)) return malformed("form");
    Change change;
    if (const auto head = readHead(*object, change); !head) return head.error();
    if (const auto fields = readFields(*object, change); !fields) return fields.error();
    if (!readRefs(*object, "saw", change.ref, change.saw)) return malformed("saw");
    return change;
}

} // namespace

std::string formatRef(const ChangeRef& ref)
{
    return formatHex(ref.stream) + '.' + std::to_string(ref.seq);
}

std::optional<ChangeRef> parseRef(std::string_view text)
{
    ChangeRef ref;
    if (text.size() < 34 || text[32] != '.' || text[33] == '0' || !parseHex(text.substr(0, 32), ref.stream))
        return std::nullopt;
    const auto [end, error] = std::from_chars(text.data() + 33, text.data() + text.size(), ref.seq);
    if (error != std::errc{} || end != text.data() + text.size() || ref.seq < 1) return std::nullopt;
    return ref;
}

std::string canonicalJson(const Change& change)
{
    std::string bytes;
    bytes.reserve(640);
    appendCanonicalJson(bytes, change);
    return bytes;
}

void appendCanonicalJson(std::string& out, const Change& change)
{
    const auto key = [&out](std::string_view name) { out.append(",\"").append(name).append("\":"); };
    out += "{\"at_ms\":";
    addNumber(out, toMs(change.at));
    key("author");
    addId(out, change.author);
    key("f");
    out += '{';
    bool isFirst = true;
    for (const auto& [name, set] : change.fields) {
        if (!std::exchange(isFirst, false)) out += ',';
        addText(out, name);
        out += ":{";
        if (!set.base.empty()) {
            out += "\"b\":";
            addRefs(out, set.base);
            out += ',';
        }
        out += "\"v\":";
        addValue(out, set.value);
        out += '}';
    }
    out += '}';
    key("format");
    addNumber(out, format);
    key("id");
    addId(out, change.record);
    key("kind");
    addText(out, change.kind);
    key("offset_min");
    addNumber(out, change.offset.count());
    key("programme");
    addId(out, change.programme);
    if (!change.saw.empty()) {
        key("saw");
        addRefs(out, change.saw);
    }
    key("seq");
    addNumber(out, change.ref.seq);
    if (!change.site.isNil()) {
        key("site");
        addId(out, change.site);
    }
    key("stream");
    addPlain(out, formatHex(change.ref.stream));
    out += '}';
}

Result<Change> readChange(std::string_view bytes)
{
    return read(bytes, Form::Any);
}

Result<Change> readCanonicalChange(std::string_view bytes)
{
    return read(bytes, Form::Canonical);
}

} // namespace duskrow::domain
