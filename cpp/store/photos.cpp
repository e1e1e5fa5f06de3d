// SPDX-License-Identifier: MIT
#include "store/photos.h"

#include <filesystem>
#include <fstream>
#include <optional>

#include "domain/base/uuid.h"
#include "store/durable_file.h"

namespace duskrow::store {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {
constexpr std::uintmax_t mostBytes = std::uintmax_t{32} * 1024 * 1024;

// The bytes of a file; nothing when it cannot be read whole, is empty, or too large.
std::optional<std::string> readWhole(const std::string& path)
{
    std::error_code failure;
    const std::uintmax_t size = fs::file_size(path, failure);
    if (failure || size == 0 || size > mostBytes) return std::nullopt;
    std::ifstream source(path, std::ios::binary);
    std::string bytes(size, '\0');
    if (!source.read(bytes.data(), static_cast<std::streamsize>(size))) return std::nullopt;
    return bytes;
}

} // namespace

std::string photoPath(const std::string& storePath, const std::string& hash)
{
    return storePath + ".d/photos/" + hash;
}

Result<std::string> keepPhoto(const std::string& storePath, const std::string& sourcePath)
{
    const auto bytes = readWhole(sourcePath);
    if (!bytes) return Error{ErrorCode::PictureUnreadable, {sourcePath}};
    std::string hash = formatHex(hashOf(*bytes));
    const std::string target = photoPath(storePath, hash);
    // A damaged copy under this name is replaced: the name says what its bytes must be.
    if (readWhole(target) != bytes)
        if (const auto kept = writeDurably(target, *bytes, Access::Everyone); !kept) return kept.error();
    return hash;
}

} // namespace duskrow::store
