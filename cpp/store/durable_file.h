// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <memory>
#include <string_view>

#include "domain/base/result.h"

namespace duskrow::store {

enum class Access { Everyone, OwnerOnly };

// A file written piece by piece beside its place and put there only when it is whole and on the disk: after a
// power cut the old content or the new stands there, never a part. What is not finished is removed.
class DurableFile {
public:
    // Errors  DiskFull, FileUnwritable {path}
    static domain::Result<DurableFile> open(const std::filesystem::path& path, Access access);

    DurableFile(DurableFile&&) noexcept;
    DurableFile& operator=(DurableFile&&) noexcept;
    ~DurableFile();

    // Errors  DiskFull, FileUnwritable {path}; nothing more can be written then
    domain::Result<domain::Done> append(std::string_view bytes);
    domain::Result<domain::Done> finish();

private:
    struct Draft;
    explicit DurableFile(std::unique_ptr<Draft> draft);

    std::unique_ptr<Draft> m_draft;
};

// The same for a file that is all in memory.
//
// Errors  DiskFull, FileUnwritable {path}
domain::Result<domain::Done> writeDurably(
    const std::filesystem::path& path, std::string_view bytes, Access access);

} // namespace duskrow::store
