// SPDX-License-Identifier: MIT
#include "formats/utf8.h"

#include <cstddef>

namespace duskrow::formats {

namespace {

struct Lead {
    std::size_t length;
    char32_t bits;
    char32_t lowest; // anything below is an overlong form
};

Lead leadOf(unsigned char byte)
{
    if (byte < 0x80) return {1, byte, 0};
    if ((byte & 0xE0U) == 0xC0U) return {2, byte & 0x1FU, 0x80};
    if ((byte & 0xF0U) == 0xE0U) return {3, byte & 0x0FU, 0x800};
    if ((byte & 0xF8U) == 0xF0U) return {4, byte & 0x07U, 0x10000};
    return {0, 0, 0};
}

} // namespace

char32_t takeCodePoint(std::string_view& rest)
{
    const Lead lead = leadOf(static_cast<unsigned char>(rest.front()));
    char32_t point = lead.bits;
    bool isValid = lead.length > 0 && lead.length <= rest.size();
    for (std::size_t i = 1; isValid && i < lead.length; ++i) {
        const auto byte = static_cast<unsigned char>(rest[i]);
        isValid = (byte & 0xC0U) == 0x80U;
        point = (point << 6U) | (byte & 0x3FU);
    }
    const bool isSurrogate = point >= 0xD800 && point <= 0xDFFF;
    if (!isValid || point < lead.lowest || point > 0x10FFFF || isSurrogate) {
        rest.remove_prefix(1);
        return replacementCharacter;
    }
    rest.remove_prefix(lead.length);
    return point;
}

void appendUtf8(std::string& text, char32_t point)
{
    const auto add = [&text](char32_t byte) { text.push_back(static_cast<char>(byte)); };
    const auto addTail = [&add, point](unsigned shift) { add(0x80U | ((point >> shift) & 0x3FU)); };
    if (point < 0x80) {
        add(point);
    } else if (point < 0x800) {
        add(0xC0U | (point >> 6U));
        addTail(0);
    } else if (point < 0x10000) {
        add(0xE0U | (point >> 12U));
        addTail(6);
        addTail(0);
    } else {
        add(0xF0U | (point >> 18U));
        addTail(12);
        addTail(6);
        addTail(0);
    }
}

std::string validUtf8(std::string_view text)
{
    std::string valid;
    valid.reserve(text.size());
    while (!text.empty()) appendUtf8(valid, takeCodePoint(text));
    return valid;
}

} // namespace duskrow::formats
