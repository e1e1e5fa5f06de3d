// SPDX-License-Identifier: MIT
#include "domain/log/change.h"

#include <charconv>
#include <nlohmann/json.hpp>

#include "domain/log/bounded_json.h"

namespace duskrow::domain {

using nlohmann::json;

namespace {

constexpr std::size_t mostBytes = 64 * 1024;
constexpr int format = 1;

json refs(const std::vector<ChangeRef>& list)
{
    json array = json::array();
    for (const ChangeRef& ref : list) array.push_back(formatRef(ref));
    return array;
}

json toJson(const Value& value)
{
    struct Visitor {
        json operator()(std::monostate) const { return nullptr; }
        json operator()(bool flag) const { return flag; }
        json operator()(std::int64_t number) const { return number; }
        json operator()(const std::string& text) const { return text; }
        json operator()(const RawJson& raw) const { return json::parse(raw.text, nullptr, false); }
    };
    return std::visit(Visitor{}, value);
}

Value fromJson(const json& value)
{
    if (value.is_null()) return {};
    if (value.is_boolean()) return value.get<bool>();
    if (value.is_number_unsigned() && value.get<std::uint64_t>() > std::numeric_limits<std::int64_t>::max())
        return RawJson{value.dump()};
    if (value.is_number_integer()) return value.get<std::int64_t>();
    if (value.is_string()) return value.get<std::string>();
    return RawJson{value.dump()};
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

bool readRefs(const json& object, const char* key, std::vector<ChangeRef>& out)
{
    const auto found = object.find(key);
    if (found == object.end()) return true;
    if (!found->is_array()) return false;
    for (const json& item : *found) {
        const auto ref = item.is_string() ? parseRef(item.get_ref<const std::string&>()) : std::nullopt;
        if (!ref) return false;
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
        if (!set.is_object() || value == set.end() || !readRefs(set, "b", field.base)) return malformed(name);
        field.value = fromJson(*value);
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
    if (!programme) return malformed("programme");
    if (!author) return malformed("author");
    if (!record) return malformed("id");
    if (!seq || *seq < 1) return malformed("seq");
    if (!at) return malformed("at_ms");
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

} // namespace

std::string formatRef(const ChangeRef& ref)
{
    return formatHex(ref.stream) + '.' + std::to_string(ref.seq);
}

std::optional<ChangeRef> parseRef(std::string_view text)
{
    ChangeRef ref;
    if (text.size() < 34 || text[32] != '.' || !parseHex(text.substr(0, 32), ref.stream)) return std::nullopt;
    const auto [end, error] = std::from_chars(text.data() + 33, text.data() + text.size(), ref.seq);
    if (error != std::errc{} || end != text.data() + text.size() || ref.seq < 1) return std::nullopt;
    return ref;
}

std::string canonicalJson(const Change& change)
{
    json fields = json::object();
    for (const auto& [name, set] : change.fields) {
        json entry{{"v", toJson(set.value)}};
        if (!set.base.empty()) entry["b"] = refs(set.base);
        fields[name] = std::move(entry);
    }
    json object{
        {"at_ms", toMs(change.at)},
        {"author", formatUuid(change.author)},
        {"f", std::move(fields)},
        {"format", format},
        {"id", formatUuid(change.record)},
        {"kind", change.kind},
        {"offset_min", change.offset.count()},
        {"programme", formatUuid(change.programme)},
        {"seq", change.ref.seq},
        {"stream", formatHex(change.ref.stream)},
    };
    if (!change.site.isNil()) object["site"] = formatUuid(change.site);
    if (!change.saw.empty()) object["saw"] = refs(change.saw);
    // Text that is not UTF-8 never gets this far from the screens; replacing keeps the change readable.
    return object.dump(-1, ' ', false, json::error_handler_t::replace);
}

Result<Change> readChange(std::string_view bytes)
{
    if (bytes.size() > mostBytes) return malformed("size");
    const auto object = parseBounded(bytes, 16);
    if (!object || !object->is_object()) return malformed("JSON");
    Change change;
    if (const auto head = readHead(*object, change); !head) return head.error();
    if (const auto fields = readFields(*object, change); !fields) return fields.error();
    if (!readRefs(*object, "saw", change.saw)) return malformed("saw");
    return change;
}

} // namespace duskrow::domain
