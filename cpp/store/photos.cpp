// SPDX-License-Identifier: MIT
#include "store/photos.h"

#include <filesystem>
#include <fstream>
#include <iterator>

#include "domain/base/uuid.h"

namespace duskrow::store {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {
constexpr std::uintmax_t mostBytes = 32U * 1024 * 1024;
} // namespace

std::string photoPath(const std::string& storePath, const std::string& hash)
{
    return storePath + ".d/photos/" + hash;
}

Result<std::string> keepPhoto(const std::string& storePath, const std::string& sourcePath)
{
    std::error_code failure;
    const std::uintmax_t size = fs::file_size(sourcePath, failure);
    std::ifstream source(sourcePath, std::ios::binary);
    if (failure || !source || size == 0 || size > mostBytes)
        return Error{ErrorCode::PictureUnreadable, {sourcePath}};
    const std::string bytes{std::istreambuf_iterator<char>(source), {}};
    if (bytes.size() != size) return Error{ErrorCode::PictureUnreadable, {sourcePath}};

    const std::string hash = formatHex(hashOf(bytes));
    const std::string target = photoPath(storePath, hash);
    if (fs::exists(target)) return hash;
    const Error refused{ErrorCode::FileUnwritable, {target}};
    fs::create_directories(fs::path(target).parent_path(), failure);
    if (failure) return refused;
    const std::string fresh = target + ".new";
    std::ofstream file(fresh, std::ios::binary | std::ios::trunc);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    file.close();
    if (!file) {
        fs::remove(fresh, failure);
        return refused;
    }
    fs::rename(fresh, target, failure);
    if (failure) return refused;
    return hash;
}

} // namespace duskrow::store
