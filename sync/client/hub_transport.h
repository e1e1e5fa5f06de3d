// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>

#include "domain/base/result.h"

namespace duskrow::sync {

struct HubQuestion {
    std::string method;
    std::string path; // with the query, beginning at /v1
    std::string_view body;
    std::map<std::string, std::string> headers;
};

struct HubAnswer {
    int status = 0;
    std::string body;
    std::map<std::string, std::string> headers; // names in lower case
    [[nodiscard]] std::string header(const std::string& name) const;
};

// Carries one question to a hub and the answer back, in the place of the network; for tests.
//
// Errors  HubUnreachable {address}
using HubTransport = std::function<domain::Result<HubAnswer>(const HubQuestion&)>;

} // namespace duskrow::sync
