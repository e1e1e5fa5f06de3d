// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/base/result.h"

namespace duskrow::store {

// Photographs lie beside the store in STORE.d/photos, each named by the hash of its bytes, so that the same
// picture is kept once and a damaged one is noticed.
//
// Errors  PictureUnreadable {path} when the source cannot be read, is empty, or larger than 32 MiB
//         FileUnwritable, DiskFull when it cannot be kept
domain::Result<std::string> keepPhoto(const std::string& storePath, const std::string& sourcePath);

// Where a kept photograph lies; the file may be missing when only the record has travelled.
std::string photoPath(const std::string& storePath, const std::string& hash);

} // namespace duskrow::store
