// SPDX-License-Identifier: MIT
#include "sync/hub/call.h"

// Calls for those who run the hub.
namespace duskrow::hub {

Response health(Hub& hub, Call&)
{
    const auto answers = hub.store.ping();
    if (!answers) return storeFailed(answers.error());
    return jsonAnswer(200, {{"status", "ok"}});
}

Response metricsText(Hub& hub, Call& call)
{
    const bool isNear = call.address == "127.0.0.1" || call.address.starts_with("::");
    if (!isNear && !hub.options.hasOpenMetrics) return refusal(404, "unknown", "There is nothing here.");
    return {200, "application/openmetrics-text; version=1.0.0; charset=utf-8", hub.metrics.text(), {}};
}

} // namespace duskrow::hub
