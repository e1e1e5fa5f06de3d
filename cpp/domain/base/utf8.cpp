// SPDX-License-Identifier: MIT
#include "domain/base/utf8.h"

#include <cstdint>

namespace duskrow::domain {

namespace {

struct Lead {
    std::size_t more; // continuation bytes
    std::uint32_t bits;
    std::uint32_t lowest; // a smaller code point would have a shorter form
};

Lead leadOf(std::uint8_t byte)
{
    if (byte < 0x80) return {0, byte, 1};
    if (byte >= 0xC0 && byte < 0xE0) return {1, byte & 0x1FU, 0x80};
    if (byte >= 0xE0 && byte < 0xF0) return {2, byte & 0x0FU, 0x800};
    if (byte >= 0xF0 && byte < 0xF8) return {3, byte & 0x07U, 0x10000};
    return {0, 0, 1};
}

} // namespace

bool isReadableText(std::string_view bytes)
{
    for (std::size_t at = 0; at < bytes.size();) {
        auto [more, point, lowest] = leadOf(static_cast<std::uint8_t>(bytes[at++]));
        if (more > bytes.size() - at) return false;
        for (; more > 0; --more) {
            const auto next = static_cast<std::uint8_t>(bytes[at++]);
            if ((next & 0xC0) != 0x80) return false;
            point = (point << 6) | (next & 0x3FU);
        }
        if (point < lowest || point > 0x10FFFF || (point >= 0xD800 && point <= 0xDFFF)) return false;
    }
    return true;
}

} // namespace duskrow::domain
