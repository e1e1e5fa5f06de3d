// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "domain/log/bounded_json.h"
#include "sync/hub/call.h"

namespace duskrow::hub {

namespace {

constexpr std::size_t smallBody = std::size_t{16} << 10;
constexpr std::size_t photographBody = std::size_t{16} << 20;
constexpr std::size_t publicationBody = std::size_t{4} << 20;
constexpr std::size_t mostParts = 8;

std::vector<std::string_view> partsOf(std::string_view path)
{
    std::vector<std::string_view> parts;
    while (!path.empty() && parts.size() <= mostParts) {
        if (path.front() != '/') return {};
        path.remove_prefix(1);
        const auto end = std::min(path.find('/'), path.size());
        parts.push_back(path.substr(0, end));
        path.remove_prefix(end);
    }
    return parts;
}

// What stands for the open parts, or nothing when the path is another one.
std::optional<std::vector<std::string>> matched(
    std::string_view pattern, const std::vector<std::string_view>& parts)
{
    const auto wanted = partsOf(pattern);
    if (wanted.size() != parts.size()) return std::nullopt;
    std::vector<std::string> open;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (wanted[i] == ":")
            open.emplace_back(parts[i]);
        else if (wanted[i] != parts[i])
            return std::nullopt;
    }
    return open;
}

} // namespace

const std::vector<CallRow>& callRows()
{
    using enum Method;
    static const std::vector<CallRow> rows{
        {"health", Get, "/v1/health", Needs::Nothing, 0, health},
        {"metrics", Get, "/v1/metrics", Needs::Nothing, 0, metricsText},
        {"invitation", Get, "/v1/invitations/:", Needs::Nothing, 0, askInvitation},
        {"found", Post, "/v1/programmes", Needs::Nothing, smallBody, foundProgramme},
        {"join", Post, "/v1/programmes/:/join", Needs::Programme, sync::mostSegmentBytes, join},
        {"challenge", Post, "/v1/programmes/:/challenge", Needs::Programme, smallBody, challenge},
        {"token", Post, "/v1/programmes/:/token", Needs::Programme, smallBody, token},
        {"state", Get, "/v1/programmes/:/state", Needs::Token, 0, state},
        {"push", Put, "/v1/programmes/:/segments/:/:", Needs::Token, sync::mostSegmentBytes, push},
        {"pull", Get, "/v1/programmes/:/segments", Needs::Token, 0, pull},
        {"vector", Get, "/v1/programmes/:/vector", Needs::Token, 0, vectorOf},
        {"list-aside", Get, "/v1/programmes/:/aside", Needs::Token, 0, listAside},
        {"get-aside", Get, "/v1/programmes/:/aside/:", Needs::Token, 0, getAside},
        {"head-photograph", Head, "/v1/programmes/:/photographs/:", Needs::Token, 0, headPhotograph},
        {"get-photograph", Get, "/v1/programmes/:/photographs/:", Needs::Token, 0, getPhotograph},
        {"put-photograph", Put, "/v1/programmes/:/photographs/:", Needs::Token, photographBody,
            putPhotograph},
        {"list-publications", Get, "/v1/programmes/:/publications", Needs::Token, 0, listPublications},
        {"put-publication", Put, "/v1/programmes/:/publications/:", Needs::Token, publicationBody,
            putPublication},
        {"bulletins", Get, "/bulletin", Needs::Nothing, 0, bulletins},
        {"bulletins", Get, "/bulletin/", Needs::Nothing, 0, bulletins},
        {"bulletin", Get, "/bulletin/:/:", Needs::Nothing, 0, bulletinFile},
    };
    return rows;
}

Found findCall(Method method, std::string_view path)
{
    Found found;
    const auto parts = partsOf(path);
    for (const CallRow& row : callRows()) {
        auto open = matched(row.pattern, parts);
        if (!open) continue;
        if (row.method == method) return {&row, std::move(*open), false};
        found.isOtherMethod = true;
    }
    return found;
}

std::optional<std::map<std::string, std::string>> textsOf(
    const std::string& body, const std::vector<std::string>& keys)
{
    const auto held = domain::parseBounded(body, 2);
    if (!held || !held->is_object() || held->size() != keys.size()) return std::nullopt;
    std::map<std::string, std::string> texts;
    for (const std::string& key : keys) {
        const auto found = held->find(key);
        if (found == held->end() || !found->is_string()) return std::nullopt;
        texts[key] = found->get<std::string>();
    }
    return texts;
}

std::optional<std::int64_t> numberOf(std::string_view text)
{
    if (text.empty() || text.size() > 15) return std::nullopt;
    std::int64_t number = 0;
    for (const char digit : text) {
        if (digit < '0' || digit > '9') return std::nullopt;
        number = number * 10 + (digit - '0');
    }
    return number;
}

} // namespace duskrow::hub
