// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

namespace duskrow::store {

// Where the files of published bulletins lie beside a store, for a hub to be given them.
inline std::filesystem::path publicFolder(const std::string& store)
{
    return store + "-bulletins/public";
}

} // namespace duskrow::store
