// SPDX-License-Identifier: MIT
#include "domain/log/canonical_form.h"

#include <array>
#include <optional>
#include <string>

namespace duskrow::domain {

namespace {

constexpr std::string_view shortEscapes = "\"\\bfnrt";
constexpr std::string_view meantLetters = "\"\\\b\f\n\r\t";

constexpr std::size_t deepestForm = 16; // as changes may be

struct Level {
    bool isObject = false;
    bool hasKey = false;
    std::string_view key; // the last one read, as written
};

// The control character of `00` and two digits, or nothing where a string must not be written so.
std::optional<char> controlOf(std::string_view digits)
{
    const std::size_t low = std::string_view("0123456789abcdef").find(digits[3]);
    if (!(digits.starts_with("000") || digits.starts_with("001")) || low == std::string_view::npos)
        return std::nullopt;
    const char control = static_cast<char>((digits[2] - '0') * 16 + static_cast<int>(low));
    if (meantLetters.find(control) != std::string_view::npos) return std::nullopt;
    return control;
}

// Passes a string of well-formed JSON, from behind its opening quote to behind its closing one; false when a
// letter is not written in the one way.
bool passString(std::string_view text, std::size_t& at)
{
    const std::size_t end = text.find('"', at);
    if (end == std::string_view::npos) return false;
    if (text.substr(at, end - at).find('\\') == std::string_view::npos) {
        at = end + 1;
        return true;
    }
    while (at < text.size() && text[at] != '"') {
        if (text[at++] != '\\') continue;
        if (at == text.size()) return false;
        const char letter = text[at++];
        if (letter == 'u') {
            if (text.size() - at < 4 || !controlOf(text.substr(at, 4))) return false;
            at += 4;
        } else if (shortEscapes.find(letter) == std::string_view::npos)
            return false; // an escaped slash
    }
    return at++ < text.size();
}

// What a string that was passed says.
std::string decoded(std::string_view written)
{
    std::string bytes;
    for (std::size_t at = 0; at < written.size();) {
        const char letter = written[at++];
        if (letter != '\\') {
            bytes += letter;
        } else if (written[at] == 'u') {
            bytes += controlOf(written.substr(at + 1, 4)).value_or('?');
            at += 5;
        } else
            bytes += meantLetters[shortEscapes.find(written[at++])];
    }
    return bytes;
}

bool comesAfter(std::string_view key, std::string_view before)
{
    if (key.find('\\') == std::string_view::npos && before.find('\\') == std::string_view::npos)
        return key > before;
    return decoded(key) > decoded(before);
}

} // namespace

bool isCanonicalForm(std::string_view text)
{
    if (text.starts_with("\xEF\xBB\xBF")) return false; // the library passes over this mark
    std::array<Level, deepestForm> levels;
    std::size_t depth = 0;
    bool isKeyNext = false;
    for (std::size_t at = 0; at < text.size();) {
        const char token = text[at++];
        switch (token) {
        case ' ':
        case '\t':
        case '\n':
        case '\r':
            return false;
        case '{':
        case '[':
            if (depth == levels.size()) return false;
            levels[depth++] = {token == '{', false, {}};
            isKeyNext = token == '{';
            break;
        case '}':
        case ']':
            if (depth-- == 0) return false;
            isKeyNext = false;
            break;
        case ',':
            if (depth == 0) return false;
            isKeyNext = levels[depth - 1].isObject;
            break;
        case '-':
            if (text.substr(at).starts_with('0')) return false;
            break;
        case '"': {
            const std::size_t begin = at;
            if (!passString(text, at)) return false;
            if (!isKeyNext) break;
            Level& level = levels[depth - 1];
            const std::string_view key = text.substr(begin, at - 1 - begin);
            if (level.hasKey && !comesAfter(key, level.key)) return false;
            level.hasKey = true;
            level.key = key;
            isKeyNext = false;
            break;
        }
        default:
            break;
        }
    }
    return true;
}

} // namespace duskrow::domain
