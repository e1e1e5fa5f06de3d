// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <vector>

#include "store/segments.h"

namespace duskrow::tool {

// One of the values that stand beside each other.
struct OpenValue {
    domain::ChangeRef change;
    domain::Value value;
    std::string member; // who wrote it, by name
};

struct OpenField {
    domain::Uuid record;
    std::string kind;
    std::string field;
    domain::Uuid site;
    domain::Uuid trap; // nil where the record is of none
    std::optional<domain::LocalDay> day;
    std::vector<OpenValue> values;
};

// Every measured field on which people differ.
domain::Result<std::vector<OpenField>> openFields(
    store::Reader& reader, const domain::Uuid& programme, const domain::Roster& roster);

nlohmann::ordered_json differencesJson(const std::vector<OpenField>& open,
    const std::vector<store::AsideChange>& aside, const std::vector<store::OpenDifference>& stale);

} // namespace duskrow::tool
