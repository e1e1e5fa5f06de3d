// SPDX-License-Identifier: MIT
#pragma once

#include "sync/hub/http.h"
#include "sync/hub/limiter.h"
#include "sync/hub/metrics.h"
#include "sync/hub/readable_forms.h"
#include "sync/hub/rosters.h"

namespace duskrow::hub {

struct HubOptions {
    bool isBehindProxy = false; // believe the last entry of X-Forwarded-For
    bool hasOpenMetrics = false; // for everybody, not only for programs of the same machine
    // A first push of 100,000 records is a hundred requests, relaying a season of fifty phones fifteen
    // hundred.
    Limiter::Rate token{1500, 3000};
    // A whole office may stand behind one address.
    Limiter::Rate address{600, 600};
    Limiter::Rate wrongOfAddress{20, 20.0 / 60}; // wrong invitations: 20, then 20 an hour
    Limiter::Rate wrongOfAll{500, 500.0 / 60};
};

using Clock = std::function<Instant()>;
using LogLine = std::function<void(const std::string&)>; // without its line feed

// Answers the calls of FORMAT.md section 7.
class Hub final : public Answerer {
public:
    // Errors  those of the store
    static Result<std::unique_ptr<Hub>> open(
        HubStore& store, const HubOptions& options, Clock clock, LogLine log);

    Response answer(const Request& request) override;
    [[nodiscard]] std::size_t bodyLimit(Method method, const std::string& target) const override;
    void refused(int status, const std::string& address) override;

    // What the calls share.
    HubStore& store;
    const HubOptions options;
    const Clock now;
    Rosters rosters;
    ReadableForms forms;
    Metrics metrics;
    Limiter ofToken;
    Limiter ofAddress;
    Limiter wrongOfAddress;
    Limiter wrongOfAll;
    const std::string secret; // of all hubs over this store

private:
    Hub(HubStore& toUse, const HubOptions& chosen, Clock clock, LogLine log, std::string held);

    LogLine m_log;
};

} // namespace duskrow::hub
