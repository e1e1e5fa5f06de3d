// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string_view>

#include "domain/base/result.h"

namespace duskrow::store {

enum class Access { Everyone, OwnerOnly };

// Writes a whole file beside its place, brings it to the disk, and only then puts it in its place: after a
// power cut the old content or the new stands there, never a part.
//
// Errors  DiskFull, FileUnwritable {path}
domain::Result<domain::Done> writeDurably(
    const std::filesystem::path& path, std::string_view bytes, Access access);

} // namespace duskrow::store
