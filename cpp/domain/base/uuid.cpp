// SPDX-License-Identifier: MIT
#include "domain/base/uuid.h"

#include <algorithm>
#include <sodium.h>

namespace duskrow::domain {

namespace {

void stampVersion(Uuid& id, std::uint8_t version)
{
    id.bytes[6] = static_cast<std::uint8_t>((id.bytes[6] & 0x0F) | (version << 4));
    id.bytes[8] = static_cast<std::uint8_t>((id.bytes[8] & 0x3F) | 0x80);
}

constexpr std::array<std::int8_t, 256> hexDigits = [] {
    std::array<std::int8_t, 256> digits{};
    digits.fill(-1);
    for (int i = 0; i < 10; ++i) digits[static_cast<std::size_t>('0' + i)] = static_cast<std::int8_t>(i);
    for (int i = 0; i < 6; ++i) digits[static_cast<std::size_t>('a' + i)] = static_cast<std::int8_t>(10 + i);
    return digits;
}();

int hexDigit(char c)
{
    return hexDigits[static_cast<std::uint8_t>(c)];
}

void putHex(char* place, std::uint8_t byte)
{
    constexpr std::string_view digits = "0123456789abcdef";
    place[0] = digits[byte >> 4];
    place[1] = digits[byte & 0x0F];
}

// Where the text of an id has a dash.
constexpr bool isDash(std::size_t at)
{
    return at == 8 || at == 13 || at == 18 || at == 23;
}

} // namespace

Uuid uuidFromTime(Instant at, const RandomBytes10& random)
{
    Uuid id;
    const auto ms = static_cast<std::uint64_t>(toMs(at));
    for (std::size_t i = 0; i < 6; ++i) id.bytes[i] = static_cast<std::uint8_t>(ms >> (40 - 8 * i));
    std::copy(random.begin(), random.end(), id.bytes.begin() + 6);
    stampVersion(id, 7);
    return id;
}

Uuid uuidFromName(std::span<const std::string> parts)
{
    std::string joined;
    joined.reserve(160);
    for (const std::string& part : parts) joined += std::to_string(part.size()) + ':' + part;
    const auto hash = hashOf(joined);
    Uuid id;
    std::copy_n(hash.begin(), id.bytes.size(), id.bytes.begin());
    stampVersion(id, 8);
    return id;
}

std::string formatHex(std::span<const std::uint8_t> bytes)
{
    std::string text(bytes.size() * 2, '0');
    for (std::size_t i = 0; i < bytes.size(); ++i) putHex(&text[2 * i], bytes[i]);
    return text;
}

bool parseHex(std::string_view text, std::span<std::uint8_t> out)
{
    if (text.size() != out.size() * 2) return false;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const int high = hexDigit(text[2 * i]);
        const int low = hexDigit(text[2 * i + 1]);
        if (high < 0 || low < 0) return false;
        out[i] = static_cast<std::uint8_t>(high * 16 + low);
    }
    return true;
}

void appendUuid(std::string& text, const Uuid& id)
{
    std::array<char, 36> chars{};
    std::size_t at = 0;
    for (const std::uint8_t byte : id.bytes) {
        if (isDash(at)) chars[at++] = '-';
        putHex(&chars[at], byte);
        at += 2;
    }
    text.append(chars.data(), chars.size());
}

std::string formatUuid(const Uuid& id)
{
    std::string text;
    appendUuid(text, id);
    return text;
}

std::optional<Uuid> parseUuid(std::string_view text)
{
    if (text.size() != 36 || text[8] != '-' || text[13] != '-' || text[18] != '-' || text[23] != '-')
        return std::nullopt;
    std::array<char, 32> hex{};
    std::size_t digits = 0;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (!isDash(i)) hex[digits++] = text[i];
    Uuid id;
    if (!parseHex({hex.data(), hex.size()}, id.bytes)) return std::nullopt;
    return id;
}

std::array<std::uint8_t, 32> hashOf(std::string_view bytes)
{
    std::array<std::uint8_t, 32> hash{};
    crypto_generichash(hash.data(), hash.size(), reinterpret_cast<const unsigned char*>(bytes.data()),
        bytes.size(), nullptr, 0);
    return hash;
}

} // namespace duskrow::domain
