// SPDX-License-Identifier: MIT
#include "formats/zip.h"

#include <memory>
#include <zip.h>

namespace duskrow::formats {

using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

struct FreeSource {
    void operator()(zip_source_t* source) const { zip_source_free(source); }
};
using Source = std::unique_ptr<zip_source_t, FreeSource>;

struct DropArchive {
    void operator()(zip_t* archive) const { zip_discard(archive); }
};
using Archive = std::unique_ptr<zip_t, DropArchive>;

bool addFile(zip_t* archive, const ExportedFile& file, domain::Instant at)
{
    Source source(zip_source_buffer(archive, file.bytes.data(), file.bytes.size(), 0));
    if (!source) return false;
    const zip_int64_t index = zip_file_add(archive, file.name.c_str(), source.get(), ZIP_FL_ENC_UTF_8);
    if (index < 0) return false;
    static_cast<void>(source.release()); // the archive has it now
    const auto seconds = std::chrono::floor<std::chrono::seconds>(at).time_since_epoch().count();
    return zip_file_set_mtime(archive, static_cast<zip_uint64_t>(index), static_cast<time_t>(seconds), 0)
        == 0;
}

Result<std::string> bytesOf(zip_source_t* source)
{
    const Error failed{ErrorCode::NotEnoughMemory};
    if (zip_source_open(source) < 0) return failed;
    std::string bytes;
    std::string part(1U << 16U, '\0');
    zip_int64_t got = 0;
    while ((got = zip_source_read(source, part.data(), part.size())) > 0)
        bytes.append(part, 0, static_cast<std::size_t>(got));
    zip_source_close(source);
    if (got < 0) return failed;
    return bytes;
}

} // namespace

Result<std::string> writeZip(std::span<const ExportedFile> files, domain::Instant at)
{
    const Error failed{ErrorCode::NotEnoughMemory};
    zip_error_t error;
    zip_error_init(&error);
    const Source made(zip_source_buffer_create(nullptr, 0, 0, &error));
    if (!made) return failed;
    zip_source_keep(made.get()); // what is written is read from it once the archive is closed
    Archive archive(zip_open_from_source(made.get(), ZIP_TRUNCATE, &error));
    if (!archive) {
        zip_source_free(made.get());
        return failed;
    }
    for (const ExportedFile& file : files)
        if (!addFile(archive.get(), file, at)) return failed;
    if (zip_close(archive.get()) < 0) return failed;
    static_cast<void>(archive.release());
    return bytesOf(made.get());
}

} // namespace duskrow::formats
