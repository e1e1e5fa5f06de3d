// SPDX-License-Identifier: MIT
#include "domain/rules/bands.h"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <string>

namespace duskrow::domain {

Result<std::span<const Band>> bandsFor(const Protocol& protocol, std::string_view trapType)
{
    if (!protocol.trapType(trapType))
        return Error{ErrorCode::UnknownCode, {"trap type", std::string(trapType)}};
    for (const CatchRule& rule : protocol.catchRules)
        if (std::find(rule.trapTypes.begin(), rule.trapTypes.end(), trapType) != rule.trapTypes.end())
            return std::span<const Band>(rule.bands);
    return Error{ErrorCode::ProtocolNoBands, {protocol.id, std::string(trapType)}};
}

const Band& bandOf(std::span<const Band> bands, Moths catchOfSeason)
{
    assert(!bands.empty() && catchOfSeason >= Moths{0});
    const auto next = std::find_if(
        bands.begin() + 1, bands.end(), [&](const Band& band) { return band.from > catchOfSeason; });
    return *std::prev(next);
}

} // namespace duskrow::domain
