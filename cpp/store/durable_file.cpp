// SPDX-License-Identifier: MIT
#include "store/durable_file.h"

#include <cerrno>
#include <cstring>
#if __has_include(<unistd.h>)
#include <fcntl.h>
#include <unistd.h>
#else
#include <fstream>
#endif

namespace duskrow::store {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {

Error refusal(const fs::path& path, int reason)
{
    const bool isFull = reason == ENOSPC || reason == EDQUOT;
    return Error{
        isFull ? ErrorCode::DiskFull : ErrorCode::FileUnwritable, {path.string()}, std::strerror(reason)};
}

#if __has_include(<unistd.h>)

// 0, or what the system says went wrong.
int writeAll(int file, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return errno;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return ::fsync(file) == 0 ? 0 : errno;
}

int writeNew(const fs::path& path, std::string_view bytes, Access access)
{
    const mode_t mode = access == Access::OwnerOnly ? 0600 : 0644;
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, mode);
    if (file < 0) return errno;
    const int failure = writeAll(file, bytes);
    const int closing = ::close(file) == 0 ? 0 : errno;
    return failure != 0 ? failure : closing;
}

// The name itself is on the disk only when its folder is. Some file systems refuse this; nothing better can
// be done there.
void syncFolder(const fs::path& folder)
{
    const int file = ::open(folder.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return;
    ::fsync(file);
    ::close(file);
}

#else

int writeNew(const fs::path& path, std::string_view bytes, Access access)
{
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    std::error_code failure;
    if (access == Access::OwnerOnly)
        fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write, failure);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    file.close();
    return file && !failure ? 0 : EIO;
}

void syncFolder(const fs::path&)
{
}

#endif

} // namespace

Result<Done> writeDurably(const fs::path& path, std::string_view bytes, Access access)
{
    fs::path fresh = path;
    fresh += ".new";
    std::error_code failure;
    fs::create_directories(path.parent_path(), failure);
    if (failure) return refusal(path, failure.value());
    if (const int reason = writeNew(fresh, bytes, access); reason != 0) {
        fs::remove(fresh, failure);
        return refusal(path, reason);
    }
    fs::rename(fresh, path, failure);
    if (failure) return refusal(path, failure.value());
    syncFolder(path.parent_path());
    return Done{};
}

} // namespace duskrow::store
