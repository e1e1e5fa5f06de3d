// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "domain/protocol/protocol.h"
#include "domain/protocol/reading.h"

// Parts that readers of rules share.
namespace duskrow::domain {

// The ids of a list that must all be known and stand once.
template <typename Known>
std::vector<std::string> readReferences(
    Reading& reading, const LocatedJson& rule, std::string_view key, const Known& known)
{
    std::vector<std::string> ids;
    for (const LocatedJson& node : reading.list(rule, key).items) {
        const bool found =
            std::any_of(known.begin(), known.end(), [&](const auto& one) { return one.id == node.text; });
        if (!found)
            reading.refuse(node, inQuotes(node.text) + " is not among the ids of this file");
        else if (std::find(ids.begin(), ids.end(), node.text) != ids.end())
            reading.refuse(node, inQuotes(node.text) + " stands here twice");
        ids.push_back(node.text);
    }
    if (ids.empty()) reading.refuse(rule, inQuotes(key) + " names none");
    return ids;
}

// Reads a rule of a shape that it knows into `protocol`; false when it does not know the shape.
bool readTrapRule(Reading& reading, const LocatedJson& node, const std::string& shape, Protocol& protocol);
bool readFieldRule(Reading& reading, const LocatedJson& node, const std::string& shape, Protocol& protocol);

} // namespace duskrow::domain
