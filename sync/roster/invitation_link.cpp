// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sync/roster/joining.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

constexpr std::string_view head = "duskrow:join?";
constexpr std::size_t longestLink = 4096; // bytes

bool isPlain(char one)
{
    return (one >= 'a' && one <= 'z') || (one >= 'A' && one <= 'Z') || (one >= '0' && one <= '9')
        || std::string_view("-._~").find(one) != std::string_view::npos;
}

// Percent-encoding of RFC 3986.
std::string encoded(std::string_view text)
{
    std::string all;
    for (const char one : text) {
        const auto byte = static_cast<std::uint8_t>(one);
        all += isPlain(one) ? std::string(1, one) : '%' + formatHex(std::span(&byte, 1));
    }
    return all;
}

std::string lowered(std::string_view text)
{
    std::string all(text);
    for (char& one : all)
        if (one >= 'A' && one <= 'Z') one = static_cast<char>(one - 'A' + 'a');
    return all;
}

std::optional<std::string> decoded(std::string_view text)
{
    std::string all;
    for (std::size_t at = 0; at < text.size(); ++at) {
        std::uint8_t byte = 0;
        if (text[at] != '%') {
            all += text[at];
            continue;
        }
        if (!parseHex(lowered(text.substr(at + 1, 2)), std::span(&byte, 1))) return std::nullopt;
        all += static_cast<char>(byte);
        at += 2;
    }
    return all;
}

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view spaces = " \t\r\n";
    const std::size_t from = text.find_first_not_of(spaces);
    if (from == std::string_view::npos) return {};
    return text.substr(from, text.find_last_not_of(spaces) - from + 1);
}

// One part of a link; false when it is not what it should be.
bool take(InvitationText& invitation, std::string_view name, const std::string& value)
{
    if (name == "hub") invitation.hub = value;
    if (name == "programme") {
        const auto id = parseUuid(lowered(value));
        if (!id || id->isNil()) return false;
        invitation.programme = *id;
    }
    if (name == "root") {
        StreamId stream{};
        if (!parseHex(lowered(value), stream)) return false;
        invitation.founder = stream;
    }
    if (name != "code") return true;
    auto code = readCode(value);
    if (!code) return false;
    invitation.code = std::move(*code);
    return true;
}

} // namespace

std::string invitationLink(const InvitationText& invitation)
{
    std::string link = std::string(head) + "code=" + invitation.code;
    if (!invitation.programme.isNil()) link += "&programme=" + formatUuid(invitation.programme);
    if (invitation.founder) link += "&root=" + formatHex(*invitation.founder);
    if (!invitation.hub.empty()) link += "&hub=" + encoded(invitation.hub);
    return link;
}

Result<InvitationText> readInvitation(std::string_view typed)
{
    const Error unreadable{ErrorCode::CodeUnreadable, {std::string(typed.substr(0, longestLink))}};
    if (typed.size() > longestLink) return unreadable;
    std::string_view rest = trimmed(typed);
    InvitationText invitation;
    if (lowered(rest.substr(0, head.size())) != head) {
        auto code = readCode(rest);
        if (!code) return unreadable;
        invitation.code = std::move(*code);
        return invitation;
    }
    rest.remove_prefix(head.size());
    while (!rest.empty()) {
        const std::string_view part = rest.substr(0, rest.find('&'));
        rest.remove_prefix(std::min(part.size() + 1, rest.size()));
        const std::size_t equals = part.find('=');
        if (equals == std::string_view::npos) continue;
        const auto value = decoded(part.substr(equals + 1));
        if (!value || !take(invitation, part.substr(0, equals), *value)) return unreadable;
    }
    if (invitation.code.empty()) return unreadable;
    return invitation;
}

} // namespace duskrow::sync
