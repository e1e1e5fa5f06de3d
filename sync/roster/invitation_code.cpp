// SPDX-License-Identifier: MIT
#include "sync/roster/invitation_code.h"

#include <sodium.h>

namespace duskrow::sync {

using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t codeLength = 10;
constexpr unsigned long long passes = 2;
constexpr std::size_t memory = std::size_t{64} << 20;

char plainLetter(char typed)
{
    if (typed >= 'a' && typed <= 'z') typed = static_cast<char>(typed - 'a' + 'A');
    if (typed == 'I' || typed == 'L') return '1';
    return typed == 'O' ? '0' : typed;
}

} // namespace

std::string codeFrom(const std::array<std::uint8_t, 7>& random)
{
    std::uint64_t bits = 0;
    for (const std::uint8_t byte : random) bits = bits << 8 | byte;
    std::string code;
    for (std::size_t i = 0; i < codeLength; ++i, bits >>= 5) code += letters[bits & 31];
    return code;
}

std::string freshCode()
{
    std::array<std::uint8_t, 7> random{};
    randombytes_buf(random.data(), random.size());
    return codeFrom(random);
}

std::string shownCode(const std::string& code)
{
    return code.size() == codeLength ? code.substr(0, 5) + '-' + code.substr(5) : code;
}

Result<std::string> readCode(std::string_view typed)
{
    std::string code;
    for (const char one : typed) {
        if (one == '-' || one == ' ') continue;
        const char letter = plainLetter(one);
        if (letters.find(letter) == std::string_view::npos || code.size() == codeLength)
            return Error{ErrorCode::CodeUnreadable, {std::string(typed)}};
        code += letter;
    }
    if (code.size() != codeLength) return Error{ErrorCode::CodeUnreadable, {std::string(typed)}};
    return code;
}

Result<InvitationKey> keyOfCode(const std::string& code)
{
    const auto salt = domain::hashOf("duskrow-invitation-v1");
    static_assert(crypto_pwhash_SALTBYTES == 16);
    std::array<std::uint8_t, 32> seed{};
    if (crypto_pwhash(seed.data(), seed.size(), code.data(), code.size(), salt.data(), passes, memory,
            crypto_pwhash_ALG_ARGON2ID13)
        != 0)
        return Error{ErrorCode::NotEnoughMemory};
    InvitationKey key;
    crypto_sign_seed_keypair(key.key.data(), key.secret.data(), seed.data());
    sodium_memzero(seed.data(), seed.size());
    return key;
}

domain::Signature InvitationKey::sign(std::string_view message) const
{
    domain::Signature signature{};
    crypto_sign_detached(signature.data(), nullptr, reinterpret_cast<const unsigned char*>(message.data()),
        message.size(), secret.data());
    return signature;
}

} // namespace duskrow::sync
