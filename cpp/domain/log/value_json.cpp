// SPDX-License-Identifier: MIT
#include "domain/log/value_json.h"

namespace duskrow::domain {

using nlohmann::json;

json jsonOf(const Value& value)
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

Value valueOf(const json& held)
{
    if (held.is_null()) return {};
    if (held.is_boolean()) return held.get<bool>();
    if (held.is_number_integer()) return held.get<std::int64_t>();
    if (held.is_string()) return held.get<std::string>();
    return RawJson{canonicalText(held)};
}

std::string canonicalText(const json& held)
{
    return held.dump(-1, ' ', false, json::error_handler_t::replace);
}

} // namespace duskrow::domain
