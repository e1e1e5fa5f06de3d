// SPDX-License-Identifier: MIT
#include "sync/exchange/refusal_code.h"

#include <algorithm>
#include <array>

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

struct Word {
    ErrorCode code;
    std::string_view word;
};

constexpr std::array words{
    Word{ErrorCode::SegmentMalformed, "malformed"},
    Word{ErrorCode::SegmentTooLarge, "too_large"},
    Word{ErrorCode::SegmentForged, "forged"},
    Word{ErrorCode::OtherProgramme, "other_programme"},
};

} // namespace

std::string refusalText(const Error& reason)
{
    const auto* const found =
        std::find_if(words.begin(), words.end(), [&](const Word& word) { return word.code == reason.code; });
    std::string text(found == words.end() ? "refused" : found->word);
    for (const std::string& arg : reason.args) text += '\n' + arg;
    return text;
}

std::optional<Error> refusalIn(std::string_view text)
{
    const std::string_view name = text.substr(0, text.find('\n'));
    const auto* const found =
        std::find_if(words.begin(), words.end(), [&](const Word& word) { return word.word == name; });
    if (found == words.end()) return std::nullopt;
    Error error{found->code};
    for (std::size_t at = text.find('\n'); at != std::string_view::npos;) {
        const std::size_t next = text.find('\n', at + 1);
        error.args.emplace_back(text.substr(at + 1, next == std::string_view::npos ? next : next - at - 1));
        at = next;
    }
    return error;
}

} // namespace duskrow::sync
