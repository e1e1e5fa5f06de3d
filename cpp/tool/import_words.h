// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <nlohmann/json.hpp>

#include "tool/import_file.h"

namespace duskrow::tool {

// What was found about a table, what it makes, what is refused and why.
void printPreview(const ImportPreview& preview);
// The same with every word on a row, for other programs.
nlohmann::ordered_json previewJson(const ImportPreview& preview);

// "4 seasons, 120 sites ..." without what there is none of.
QString countsByKind(const std::map<std::string, std::size_t, std::less<>>& counts);

} // namespace duskrow::tool
