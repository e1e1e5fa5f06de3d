// SPDX-License-Identifier: MIT
#include "domain/log/turned_lines.h"
#include "fuzz/fuzz.h"

using namespace duskrow::domain;

// Turned content as others may send it; and any lines, which must come back as they were.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    constexpr std::size_t most = std::size_t{1} << 20;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const auto lines = turnBack(bytes, most);
    fuzz::demand(!lines || (isTurned(bytes) && lines->size() <= most));
    const std::string turned = turn(bytes);
    if (isTurned(bytes)) return 0; // no line begins so: left as it is
    const auto back = isTurned(turned) ? turnBack(turned, most) : turned;
    fuzz::demand(back == bytes);
    return 0;
}
