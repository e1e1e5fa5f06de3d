// SPDX-License-Identifier: MIT
#include "tool/difference_list.h"

#include "domain/log/value_json.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

std::string nameOf(const Roster& roster, const StreamId& stream)
{
    const auto member = roster.members().find(roster.memberOf(stream));
    return member == roster.members().end() ? formatHex(stream) : member->second.name;
}

} // namespace

Result<std::vector<OpenField>> openFields(store::Reader& reader, const Uuid& programme, const Roster& roster)
{
    const auto open = store::openDifferences(reader);
    if (!open) return open.error();
    std::vector<OpenField> all;
    for (const store::OpenDifference& one : *open) {
        const auto folded = store::foldedRecord(reader, roster, programme, one.record);
        if (!folded) return folded.error();
        if (!*folded) continue;
        const auto textIn = [&](const char* name) {
            const auto found = (*folded)->values.find(name);
            const auto* held =
                found == (*folded)->values.end() ? nullptr : std::get_if<std::string>(&found->second);
            return held ? *held : std::string();
        };
        const auto day = parseDay(textIn("day"));
        OpenField field{.record = one.record,
            .kind = one.kind,
            .field = one.field,
            .site = (*folded)->site,
            .trap = one.kind == "trap" ? one.record : parseUuid(textIn("trap")).value_or(Uuid{}),
            .day = day ? std::optional(*day) : std::nullopt,
            .values = {}};
        for (const Difference& difference : (*folded)->differences)
            if (difference.field == one.field)
                for (const Head& head : difference.heads)
                    field.values.push_back({head.ref, head.value, nameOf(roster, head.ref.stream)});
        all.push_back(std::move(field));
    }
    return all;
}

Json differencesJson(const std::vector<OpenField>& open, const std::vector<store::AsideChange>& aside,
    const std::vector<store::OpenDifference>& stale)
{
    Json differences = Json::array();
    for (const OpenField& one : open) {
        Json values = Json::array();
        for (const OpenValue& value : one.values)
            values.push_back({{"change", formatRef(value.change)}, {"value", Json(jsonOf(value.value))},
                {"member", value.member}});
        differences.push_back({{"record", formatUuid(one.record)}, {"kind", one.kind}, {"field", one.field},
            {"trap", one.trap.isNil() ? Json() : Json(formatUuid(one.trap))},
            {"day", one.day ? Json(formatDay(*one.day)) : Json()}, {"values", std::move(values)}});
    }
    Json keptAside = Json::array();
    for (const store::AsideChange& one : aside)
        keptAside.push_back({{"record", formatUuid(one.record)}, {"kind", one.kind},
            {"change", formatRef(one.change)}, {"reason", one.reason}});
    Json stales = Json::array();
    for (const store::OpenDifference& one : stale)
        stales.push_back({{"record", formatUuid(one.record)}, {"kind", one.kind}});
    return {{"differences", std::move(differences)}, {"kept_aside", std::move(keptAside)},
        {"stale_rulings", std::move(stales)}};
}

} // namespace duskrow::tool
