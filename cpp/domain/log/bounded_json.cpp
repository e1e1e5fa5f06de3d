// SPDX-License-Identifier: MIT
#include "domain/log/bounded_json.h"

#include <set>
#include <vector>

namespace duskrow::domain {

using nlohmann::json;

std::optional<json> parseBounded(std::string_view text, int depth)
{
    bool refused = false;
    std::vector<std::set<std::string>> keys;
    // Returning false from the callback would only drop the value; the flag refuses the whole text. Depth is
    // checked at every opening bracket, so a bomb of brackets stops growing the result at once.
    const json::parser_callback_t guard = [&](int level, json::parse_event_t event, json& parsed) {
        if (event == json::parse_event_t::object_start || event == json::parse_event_t::array_start) {
            if (level >= depth) refused = true;
            keys.emplace_back();
        } else if (event == json::parse_event_t::object_end || event == json::parse_event_t::array_end) {
            if (!keys.empty()) keys.pop_back();
        } else if (event == json::parse_event_t::key) {
            if (!keys.empty() && !keys.back().insert(parsed.get<std::string>()).second) refused = true;
        }
        return !refused;
    };
    json parsed = json::parse(text, guard, false);
    if (refused || parsed.is_discarded()) return std::nullopt;
    return parsed;
}

} // namespace duskrow::domain
