// SPDX-License-Identifier: MIT
#pragma once

#include "store/store.h"
#include "sync/exchange/report.h"

namespace duskrow::sync {

// Takes in the bytes of segments that came from anywhere. While the store takes in one, the next is checked.
// What is refused is kept aside with its reason and counted; only a failure of this device's own store is an
// error.
class Intake {
public:
    Intake(store::Store& store, domain::Instant now, ExchangeReport& report)
        : m_store(store), m_now(now), m_report(report)
    {
    }

    // An error may be of one that was added before.
    domain::Result<domain::Done> add(std::string_view bytes, const std::string& origin);
    // Waits for the last one. Nothing is in the report, or sure to be in the store, before this.
    domain::Result<domain::Done> finish();

private:
    domain::Result<domain::Done> refuse(
        std::string_view bytes, const std::string& origin, const domain::Error& reason);

    store::Store& m_store;
    domain::Instant m_now;
    ExchangeReport& m_report;
    std::future<domain::Result<store::Taken>> m_underWay;
};

} // namespace duskrow::sync
