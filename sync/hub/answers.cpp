// SPDX-License-Identifier: MIT
#include "sync/hub/answers.h"

#include "domain/log/value_json.h"

namespace duskrow::hub {

Response jsonAnswer(int status, const nlohmann::json& body)
{
    return {status, "application/json", domain::canonicalText(body), {}};
}

Response refusal(int status, const std::string& code, const std::string& message)
{
    return jsonAnswer(status, {{"error", code}, {"message", message}});
}

Response later(int status, const std::string& code, const std::string& message, std::int64_t seconds)
{
    Response response = refusal(status, code, message);
    response.headers.emplace_back("Retry-After", std::to_string(seconds));
    return response;
}

Response storeFailed(const domain::Error& error)
{
    // What the database said stays in the log.
    const bool isFull = error.code == domain::ErrorCode::DiskFull;
    return later(503, isFull ? "full" : "store",
        isFull ? "The hub has no room left." : "The hub's store does not answer.", isFull ? 300 : 10);
}

} // namespace duskrow::hub
