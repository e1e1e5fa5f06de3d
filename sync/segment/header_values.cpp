// SPDX-License-Identifier: MIT
#include "sync/segment/header_values.h"

namespace duskrow::sync {

using namespace duskrow::domain;
using nlohmann::json;

namespace {

constexpr std::size_t longestName = 64;

const std::string* textAt(const json& object, const char* key)
{
    const auto found = object.find(key);
    return found == object.end() ? nullptr : found->get_ptr<const std::string*>();
}

} // namespace

std::optional<std::int64_t> wholeAt(const json& object, const char* key)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_number_integer()) return std::nullopt;
    return found->get<std::int64_t>();
}

std::optional<Uuid> uuidAt(const json& object, const char* key)
{
    const std::string* text = textAt(object, key);
    return text == nullptr ? std::nullopt : parseUuid(*text);
}

bool hexAt(const json& object, const char* key, std::span<std::uint8_t> out)
{
    const std::string* text = textAt(object, key);
    return text != nullptr && parseHex(*text, out);
}

std::optional<std::vector<std::string>> namesAt(const json& object, const char* key)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_array()) return std::nullopt;
    std::vector<std::string> names;
    for (const json& item : *found) {
        const auto* name = item.get_ptr<const std::string*>();
        if (name == nullptr || name->empty() || name->size() > longestName) return std::nullopt;
        names.push_back(*name);
    }
    return names;
}

std::optional<std::map<StreamId, std::int64_t>> citesAt(
    const json& object, const char* key, const StreamId& own)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_object()) return std::nullopt;
    std::map<StreamId, std::int64_t> cites;
    for (const auto& [name, number] : found->items()) {
        StreamId stream{};
        if (!parseHex(name, stream) || stream == own || !number.is_number_integer()) return std::nullopt;
        const auto last = number.get<std::int64_t>();
        if (last < 1) return std::nullopt;
        cites.emplace(stream, last);
    }
    return cites;
}

} // namespace duskrow::sync
