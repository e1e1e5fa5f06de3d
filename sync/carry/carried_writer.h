// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <memory>

#include "domain/base/result.h"
#include "domain/base/uuid.h"
#include "sync/carry/carried_item.h"

namespace duskrow::sync {

// Writes a carried file, one item at a time. The file stands in its place only after finish(), whole and on
// the disk; without it nothing is left behind.
class CarriedWriter {
public:
    // Errors  DiskFull, FileUnwritable {path}
    static domain::Result<CarriedWriter> open(
        const std::filesystem::path& path, const domain::Uuid& programme);

    CarriedWriter(CarriedWriter&&) noexcept;
    CarriedWriter& operator=(CarriedWriter&&) noexcept;
    ~CarriedWriter();

    // Errors  SegmentTooLarge {"item"} when its kind may not be so long: it was not written, and the file
    // goes
    //         on; DiskFull, FileUnwritable {path}
    domain::Result<domain::Done> add(ItemKind kind, std::string_view bytes);

    // Errors  DiskFull, FileUnwritable {path}
    domain::Result<domain::Done> finish();

private:
    struct Writing;
    explicit CarriedWriter(std::unique_ptr<Writing> writing);

    std::unique_ptr<Writing> m_writing;
};

} // namespace duskrow::sync
