// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/uuid.h"

namespace duskrow::hub {

// What the hub keeps of a token. A token has 256 random bits: a slow hash would protect nothing.
inline std::array<std::uint8_t, 32> tokenHash(const std::array<std::uint8_t, 32>& token)
{
    return domain::hashOf("duskrow-hub-token" + std::string(token.begin(), token.end()));
}

} // namespace duskrow::hub
