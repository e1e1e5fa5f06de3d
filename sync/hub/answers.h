// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>

#include "domain/base/result.h"
#include "sync/hub/http.h"

namespace duskrow::hub {

Response jsonAnswer(int status, const nlohmann::json& body);

// {"error": code, "message": one sentence}
Response refusal(int status, const std::string& code, const std::string& message);

// To be tried again after so many seconds.
Response later(int status, const std::string& code, const std::string& message, std::int64_t seconds);

// The store did not do what it was asked: nothing was kept, and another try may help.
Response storeFailed(const domain::Error& error);

} // namespace duskrow::hub
