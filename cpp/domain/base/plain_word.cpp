// SPDX-License-Identifier: MIT
#include "domain/base/plain_word.h"

#include <array>

namespace duskrow::domain {

namespace {

// 0xC0 to 0xFF without accents; a point where the letter stays as it is. Capitals become small.
constexpr std::array<char, 64> latin = [] {
    constexpr char letters[] = "aaaaaa.ceeeeiiii.nooooo..uuuuy..aaaaaa.ceeeeiiii.nooooo..uuuuy.y";
    std::array<char, 64> table{};
    for (std::size_t i = 0; i < table.size(); ++i) table[i] = letters[i];
    return table;
}();

std::string folded(std::string_view text, bool onlyWords)
{
    std::string plain;
    plain.reserve(text.size());
    bool isBlankDue = false;
    const auto add = [&](char c) {
        if (isBlankDue && !plain.empty()) plain += ' ';
        isBlankDue = false;
        plain += c;
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const auto byte = static_cast<unsigned char>(c);
        const bool isCapital = c >= 'A' && c <= 'Z';
        const bool isWord = isCapital || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80;
        if (c == ' ' || c == '\t' || c == '\n' || c == '\r' || (onlyWords && !isWord)) {
            isBlankDue = true;
        } else if (byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) == 0xA0) {
            isBlankDue = true; // a no-break space
            ++i;
        } else if (byte == 0xC3 && i + 1 < text.size()) {
            const auto at = static_cast<std::size_t>(static_cast<unsigned char>(text[++i]) - 0x80U);
            if (at < latin.size() && latin[at] != '.') {
                add(latin[at]);
            } else {
                add(c);
                plain += text[i];
            }
        } else {
            add(isCapital ? static_cast<char>(c - 'A' + 'a') : c);
        }
    }
    return plain;
}

} // namespace

std::string plainWord(std::string_view name)
{
    return folded(name, false);
}

std::string plainHeading(std::string_view heading)
{
    return folded(heading, true);
}

std::string_view withoutBlanks(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

bool isPlainText(std::string_view text)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte >= 0x20 && byte < 0x7F) continue;
        if (byte < 0x20 || byte == 0x7F) {
            if (byte != '\n' && byte != '\r' && byte != '\t') return false;
            continue;
        }
        const std::string_view rest = text.substr(i, 3);
        if (byte == 0xC2 && rest.size() > 1 && static_cast<unsigned char>(rest[1]) < 0xA0) return false;
        for (const std::string_view bad : {"\u202A", "\u202B", "\u202C", "\u202D", "\u202E", "\u2066",
                 "\u2067", "\u2068", "\u2069", "\uFFFD", "\uFEFF", "\u2028", "\u2029"})
            if (rest == bad) return false;
    }
    return true;
}

} // namespace duskrow::domain
