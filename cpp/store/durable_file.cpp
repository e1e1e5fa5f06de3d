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

// Each of its functions answers 0, or what the system says went wrong.
#if __has_include(<unistd.h>)

class Output {
public:
    ~Output() { close(); }

    int open(const fs::path& path, Access access)
    {
        const mode_t mode = access == Access::OwnerOnly ? 0600 : 0644;
        m_file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, mode);
        return m_file < 0 ? errno : 0;
    }
    int append(std::string_view bytes) const
    {
        while (!bytes.empty()) {
            const ssize_t written = ::write(m_file, bytes.data(), bytes.size());
            if (written < 0 && errno == EINTR) continue;
            if (written < 0) return errno;
            bytes.remove_prefix(static_cast<std::size_t>(written));
        }
        return 0;
    }
    int finish()
    {
        const int flushing = ::fsync(m_file) == 0 ? 0 : errno;
        const int closing = close();
        return flushing != 0 ? flushing : closing;
    }

private:
    int close()
    {
        if (m_file < 0) return 0;
        const int file = m_file;
        m_file = -1;
        return ::close(file) == 0 ? 0 : errno;
    }

    int m_file = -1;
};

// The name itself is on the disk only when its folder is. Some file systems refuse this; nothing better can
// be done there.
void syncFolder(const fs::path& folder)
{
    const int file = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return;
    ::fsync(file);
    ::close(file);
}

#else

class Output {
public:
    int open(const fs::path& path, Access access)
    {
        m_file.open(path, std::ios::binary | std::ios::trunc);
        std::error_code failure;
        if (access == Access::OwnerOnly)
            fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write, failure);
        return m_file && !failure ? 0 : EIO;
    }
    int append(std::string_view bytes)
    {
        m_file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        return m_file ? 0 : EIO;
    }
    int finish()
    {
        m_file.close();
        return m_file ? 0 : EIO;
    }

private:
    std::ofstream m_file;
};

void syncFolder(const fs::path&)
{
}

#endif

} // namespace

struct DurableFile::Draft {
    fs::path path;
    fs::path fresh;
    Output output;
    int failure = 0;
    bool isFinished = false;

    ~Draft()
    {
        if (isFinished) return;
        output.finish();
        std::error_code ignored;
        fs::remove(fresh, ignored);
    }
};

DurableFile::DurableFile(std::unique_ptr<Draft> draft) : m_draft(std::move(draft))
{
}
DurableFile::DurableFile(DurableFile&&) noexcept = default;
DurableFile& DurableFile::operator=(DurableFile&&) noexcept = default;
DurableFile::~DurableFile() = default;

Result<DurableFile> DurableFile::open(const fs::path& path, Access access)
{
    std::error_code failure;
    if (path.has_parent_path()) fs::create_directories(path.parent_path(), failure);
    if (failure) return refusal(path, failure.value());
    auto draft = std::make_unique<Draft>();
    draft->path = path;
    draft->fresh = path;
    draft->fresh += ".new";
    if (const int reason = draft->output.open(draft->fresh, access); reason != 0) {
        draft->isFinished = true; // nothing of ours to remove
        return refusal(path, reason);
    }
    return DurableFile(std::move(draft));
}

Result<Done> DurableFile::append(std::string_view bytes)
{
    if (m_draft->failure == 0) m_draft->failure = m_draft->output.append(bytes);
    if (m_draft->failure != 0) return refusal(m_draft->path, m_draft->failure);
    return Done{};
}

Result<Done> DurableFile::finish()
{
    if (m_draft->failure == 0) m_draft->failure = m_draft->output.finish();
    if (m_draft->failure != 0) return refusal(m_draft->path, m_draft->failure);
    std::error_code failure;
    fs::rename(m_draft->fresh, m_draft->path, failure);
    if (failure) return refusal(m_draft->path, failure.value());
    m_draft->isFinished = true;
    syncFolder(m_draft->path.parent_path());
    return Done{};
}

Result<Done> writeDurably(const fs::path& path, std::string_view bytes, Access access)
{
    auto file = DurableFile::open(path, access);
    if (!file) return file.error();
    if (const auto written = file->append(bytes); !written) return written.error();
    return file->finish();
}

} // namespace duskrow::store
