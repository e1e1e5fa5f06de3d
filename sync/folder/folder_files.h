// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>

#include "store/segments.h"

// The names in a shared folder, and files as strangers may have left them. FORMAT.md section 4.1.
namespace duskrow::sync {

std::string segmentName(const store::SegmentRow& row);
std::filesystem::path programmeFolder(const std::filesystem::path& shared, const domain::Uuid& programme);

// Reads a regular file of at most `most` bytes, following no link and waiting for nothing; nothing when it is
// anything else.
std::optional<std::string> readPlainFile(const std::filesystem::path& path, std::size_t most);

// Writes a file whose name tells its content: under a name of its own, to the disk, into its place, read
// back. One of the same size that is there already stays; a part of it is replaced.
//
// Errors  DiskFull, FileUnwritable {path}
domain::Result<domain::Done> handOver(
    const std::filesystem::path& path, std::string_view bytes, const domain::StreamId& own);

// Whether a regular file of this size stands there.
bool isThere(const std::filesystem::path& path, std::size_t size);

// Every entry below a folder, to a depth of two folders, at most `most` of them; false when there are more.
bool eachEntry(const std::filesystem::path& folder, std::size_t most,
    const std::function<void(const std::filesystem::path&)>& take);

} // namespace duskrow::sync
