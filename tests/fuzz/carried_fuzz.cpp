// SPDX-License-Identifier: MIT
#include <sstream>

#include "fuzz/fuzz.h"
#include "sync/carry/carried_reader.h"

using namespace duskrow::sync;

namespace {

std::size_t readAll(const std::string& bytes, Frame frame)
{
    std::istringstream source(bytes);
    CarriedReader reader(source, frame);
    std::size_t given = 0;
    std::int64_t items = 0;
    while (const auto item = reader.next()) {
        given += item->bytes.size() + itemHeadBytes;
        fuzz::demand(item->bytes.size() <= mostItemBytes(item->kind));
        ++items;
    }
    fuzz::demand(given <= bytes.size());
    const CarriedReport& report = reader.report();
    fuzz::demand(report.segments + report.photographs == items);
    if (frame == Frame::File) fuzz::demand((report.ending == Ending::Whole) <= report.end.has_value());
    return given;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string bytes(reinterpret_cast<const char*>(data), size);
    readAll(bytes, Frame::File);
    readAll(bytes, Frame::ItemsOnly);
    return 0;
}
