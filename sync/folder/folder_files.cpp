// SPDX-License-Identifier: MIT
#include "sync/folder/folder_files.h"

#include <array>
#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "store/durable_file.h"

namespace duskrow::sync {

using namespace duskrow::domain;
namespace fs = std::filesystem;

std::string segmentName(const store::SegmentRow& row)
{
    std::array<char, 64> numbers{};
    std::snprintf(numbers.data(), numbers.size(), "%09lld-%09lld-", static_cast<long long>(row.first),
        static_cast<long long>(row.last));
    return numbers.data() + formatHex(row.id).substr(0, 16) + ".seg";
}

fs::path programmeFolder(const fs::path& shared, const Uuid& programme)
{
    return shared / "duskrow" / formatUuid(programme);
}

std::optional<std::string> readPlainFile(const fs::path& path, std::size_t most)
{
    const int file = ::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
    if (file < 0) return std::nullopt;
    std::optional<std::string> bytes;
    struct stat about = {};
    if (::fstat(file, &about) == 0 && S_ISREG(about.st_mode) && about.st_size >= 0
        && static_cast<std::size_t>(about.st_size) <= most) {
        bytes.emplace(static_cast<std::size_t>(about.st_size), '\0');
        std::size_t got = 0;
        while (got < bytes->size()) {
            const ssize_t part = ::read(file, bytes->data() + got, bytes->size() - got);
            if (part < 0 && errno == EINTR) continue;
            if (part <= 0) break;
            got += static_cast<std::size_t>(part);
        }
        bytes->resize(got);
    }
    ::close(file);
    return bytes;
}

bool isThere(const fs::path& path, std::size_t size)
{
    std::error_code failure;
    return fs::is_regular_file(fs::symlink_status(path, failure)) && fs::file_size(path, failure) == size
        && !failure;
}

Result<Done> handOver(const fs::path& path, std::string_view bytes, const StreamId& own)
{
    if (isThere(path, bytes.size())) return Done{};
    const std::string mark = ".t-" + formatHex(own).substr(0, 16) + '-';
    const auto written = store::writeDurably(path, bytes, store::Access::Everyone, mark);
    if (!written) return written;
    if (readPlainFile(path, bytes.size()) == bytes) return Done{};
    return Error{ErrorCode::FileUnwritable, {path.string()}, "read back otherwise"};
}

bool eachEntry(const fs::path& folder, std::size_t most, const std::function<void(const fs::path&)>& take)
{
    std::error_code failure;
    fs::recursive_directory_iterator entries(folder, fs::directory_options::skip_permission_denied, failure);
    std::size_t seen = 0;
    while (!failure && entries != fs::recursive_directory_iterator()) {
        if (++seen > most) return false;
        // Links are not followed by the iterator; what they point to is not ours to read.
        if (entries.depth() >= 2) entries.disable_recursion_pending();
        take(entries->path());
        entries.increment(failure);
    }
    return true;
}

} // namespace duskrow::sync
