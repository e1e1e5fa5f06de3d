// SPDX-License-Identifier: MIT
#include "domain/protocol/protocol.h"

#include <algorithm>

namespace duskrow::domain {

const TrapType* Protocol::trapType(std::string_view trapTypeId) const
{
    const auto found = std::find_if(
        trapTypes.begin(), trapTypes.end(), [&](const TrapType& type) { return type.id == trapTypeId; });
    return found == trapTypes.end() ? nullptr : &*found;
}

const std::string* Protocol::citation(std::string_view sourceId) const
{
    const auto found = std::find_if(
        sources.begin(), sources.end(), [&](const CitedSource& source) { return source.id == sourceId; });
    return found == sources.end() ? nullptr : &found->citation;
}

std::vector<Statement> Protocol::cautionsAt(CautionPlace place) const
{
    std::vector<Statement> shown;
    for (const Caution& caution : cautions)
        if (std::find(caution.shown.begin(), caution.shown.end(), place) != caution.shown.end())
            shown.push_back(caution.statement);
    return shown;
}

} // namespace duskrow::domain
