// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <istream>
#include <memory>

#include "domain/base/result.h"
#include "sync/carry/carried_end.h"
#include "sync/carry/carried_item.h"

namespace duskrow::sync {

struct CarriedItem {
    ItemKind kind = ItemKind::Segment;
    std::string bytes;
};

enum class Ending {
    Whole, // all there, as its end says
    Cut, // it stops before its end; every item given was whole
    Damaged, // its end, or what stands between items, is not what was written
    NotOurs, // no magic: nothing was read
};

// What a file came to. Items skipped are in none of the two numbers of items given.
struct CarriedReport {
    Ending ending = Ending::Cut;
    std::int64_t segments = 0;
    std::int64_t photographs = 0;
    std::int64_t tooLarge = 0; // skipped: longer than their kind may be
    std::int64_t unknown = 0; // skipped: of a kind that this version does not know
    std::optional<CarriedEnd> end; // when there was one
};

// With magic and end, as a file; or the items alone, as a hub answers, whole when they stop between two.
enum class Frame { File, ItemsOnly };

// Gives the whole items one by one, holding one at a time. What is in them has not been looked at.
class CarriedReader {
public:
    // source  read from where it stands; it outlives the reader
    explicit CarriedReader(std::istream& source, Frame frame = Frame::File);
    ~CarriedReader();

    // Nothing when there is no further whole item; the report is complete then.
    std::optional<CarriedItem> next();
    [[nodiscard]] const CarriedReport& report() const;

private:
    struct Reading;
    std::unique_ptr<Reading> m_reading;
};

// Reads a file; stops early when `take` says no, with the report so far.
//
// Errors  FileUnreadable {path}
domain::Result<CarriedReport> readCarriedFile(
    const std::filesystem::path& path, const std::function<bool(CarriedItem)>& take);

} // namespace duskrow::sync
