// SPDX-License-Identifier: MIT
#include "formats/encoding.h"

#include <algorithm>
#include <array>

#include "formats/utf8.h"

namespace duskrow::formats {

namespace {

constexpr std::string_view markUtf8 = "\xEF\xBB\xBF";
constexpr std::string_view markLittle = "\xFF\xFE";
constexpr std::string_view markBig = "\xFE\xFF";

constexpr std::array<std::string_view, 4> codes{"utf-8", "utf-16le", "utf-16be", "windows-1252"};

// 0x80 to 0x9F of Windows-1252; the other bytes are the first 256 characters of Unicode.
constexpr std::array<char32_t, 32> upperControls{0x20AC, 0xFFFD, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020,
    0x2021, 0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0xFFFD, 0x017D, 0xFFFD, 0xFFFD, 0x2018, 0x2019, 0x201C,
    0x201D, 0x2022, 0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0xFFFD, 0x017E, 0x0178};

bool isAscii(char byte)
{
    return static_cast<unsigned char>(byte) < 0x80;
}

// Whether these last bytes are the beginning of a longer character.
bool isCutCharacter(std::string_view rest)
{
    const auto lead = static_cast<unsigned char>(rest.front());
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC2 ? 2 : 0;
    return rest.size() < length && std::all_of(rest.begin() + 1, rest.end(), [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
    });
}

// Where the first byte stands that is no UTF-8.
std::size_t firstForeignByte(std::string_view bytes)
{
    for (std::size_t at = 0; at < bytes.size();) {
        if (isAscii(bytes[at])) {
            ++at;
            continue;
        }
        std::string_view rest = bytes.substr(at, 4);
        const std::size_t before = rest.size();
        const char32_t point = takeCodePoint(rest);
        const bool isForeign = point == replacementCharacter && before - rest.size() == 1;
        if (isForeign && !(bytes.size() - at < 4 && isCutCharacter(bytes.substr(at)))) return at;
        at += before - rest.size();
    }
    return bytes.size();
}

std::string fromUtf16(std::string_view bytes, bool isBig)
{
    std::string text;
    const auto unitAt = [&](std::size_t at) {
        const auto first = static_cast<unsigned char>(bytes[at]);
        const auto second = static_cast<unsigned char>(bytes[at + 1]);
        return isBig ? char32_t{first} << 8U | second : char32_t{second} << 8U | first;
    };
    std::size_t at = 0;
    for (; at + 1 < bytes.size(); at += 2) {
        char32_t point = unitAt(at);
        if (point >= 0xD800 && point < 0xDC00 && at + 3 < bytes.size()) {
            const char32_t low = unitAt(at + 2);
            if (low >= 0xDC00 && low < 0xE000) {
                point = 0x10000 + ((point - 0xD800) << 10U) + (low - 0xDC00);
                at += 2;
            }
        }
        const bool isHalf = point >= 0xD800 && point < 0xE000;
        appendUtf8(text, isHalf ? replacementCharacter : point);
    }
    if (at < bytes.size()) appendUtf8(text, replacementCharacter);
    return text;
}

std::string fromWindows1252(std::string_view bytes)
{
    std::string text;
    text.reserve(bytes.size() + bytes.size() / 8);
    for (const char byte : bytes) {
        const auto value = static_cast<unsigned char>(byte);
        const bool isControl = value >= 0x80 && value < 0xA0;
        appendUtf8(text, isControl ? upperControls[value - 0x80U] : char32_t{value});
    }
    return text;
}

std::string_view withoutMark(std::string_view bytes, std::string_view mark)
{
    if (bytes.starts_with(mark)) bytes.remove_prefix(mark.size());
    return bytes;
}

} // namespace

EncodingFinding encodingOf(std::string_view bytes)
{
    if (bytes.starts_with(markLittle)) return {Encoding::Utf16LittleEndian, EncodingReason::Mark};
    if (bytes.starts_with(markBig)) return {Encoding::Utf16BigEndian, EncodingReason::Mark};
    const std::size_t foreign = firstForeignByte(bytes);
    if (foreign < bytes.size()) {
        const auto lines =
            std::count(bytes.begin(), bytes.begin() + static_cast<std::ptrdiff_t>(foreign), '\n');
        return {Encoding::Windows1252, EncodingReason::NotUtf8, static_cast<std::size_t>(lines) + 1};
    }
    return {Encoding::Utf8, bytes.starts_with(markUtf8) ? EncodingReason::Mark : EncodingReason::AllUtf8};
}

std::string toUtf8(std::string_view bytes, Encoding encoding)
{
    switch (encoding) {
    case Encoding::Utf16LittleEndian:
        return fromUtf16(withoutMark(bytes, markLittle), false);
    case Encoding::Utf16BigEndian:
        return fromUtf16(withoutMark(bytes, markBig), true);
    case Encoding::Windows1252:
        return fromWindows1252(bytes);
    case Encoding::Utf8:
        break;
    }
    const std::string_view text = withoutMark(bytes, markUtf8);
    return firstForeignByte(text) == text.size() && (text.empty() || isAscii(text.back())) ? std::string(text)
                                                                                           : validUtf8(text);
}

std::string_view codeOf(Encoding encoding)
{
    return codes[static_cast<std::size_t>(encoding)];
}

std::optional<Encoding> encodingNamed(std::string_view code)
{
    for (std::size_t i = 0; i < codes.size(); ++i)
        if (codes[i] == code) return static_cast<Encoding>(i);
    return std::nullopt;
}

} // namespace duskrow::formats
