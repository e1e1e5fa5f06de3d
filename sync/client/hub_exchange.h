// SPDX-License-Identifier: MIT
#pragma once

#include "store/store.h"
#include "sync/client/hub_client.h"
#include "sync/client/hub_link.h"

namespace duskrow::sync {

// One exchange with one hub. FORMAT.md section 7.
class HubExchange {
public:
    HubExchange(store::Store& store, store::Reader& reader, const QUrl& hub, domain::Instant now,
        const Journey& journey, const HubTransport& transport = {});
    domain::Result<ExchangeReport> run();

private:
    // Where the fetching stands, kept between exchanges.
    struct Cursor {
        std::int64_t after = 0;
        std::string epoch;
        std::string scope;
    };
    domain::Result<domain::Done> exchangeAll();
    bool goesOn(std::int64_t done, std::int64_t all);
    domain::Result<domain::Done> enter();
    domain::Result<domain::Done> askForToken();
    domain::Result<domain::Done> claim();
    domain::Result<HubAnswer> withToken(const char* method, const std::string& path, std::string_view bytes,
        const std::map<std::string, std::string>& headers = {});
    domain::Result<Cursor> cursor();
    domain::Result<domain::Done> keepCursor(const Cursor& cursor);

    domain::Result<domain::Done> meetEpoch();
    domain::Result<domain::Done> handOverAll();
    domain::Result<domain::Done> handOver(const store::SegmentRow& row, Cursor& place);
    domain::Result<domain::Done> closeGap(const store::SegmentRow& row, const HubAnswer& answer);
    domain::Result<int> put(const store::SegmentRow& row, HubAnswer& answer);
    domain::Result<domain::Done> fetchAll();
    domain::Result<bool> fetchPage(Cursor& cursor);
    domain::Result<domain::Done> handOverPublications();
    domain::Result<domain::Done> exchangePhotos();
    domain::Result<domain::Done> sendPhoto(const std::string& name);
    domain::Result<domain::Done> fetchPhoto(const std::string& name);

    store::Store& m_store;
    store::Reader& m_reader;
    std::string m_route;
    HubLink m_link;
    domain::Instant m_now;
    const Journey& m_journey;
    std::int64_t m_done = 0; // as the journey was told last
    std::int64_t m_all = 0;
    std::string m_home; // path of the programme
    std::string m_epoch; // as the hub says it now
    std::vector<std::int64_t> m_had; // places at the hub of what was handed over in this exchange
    ExchangeReport m_report;
};

} // namespace duskrow::sync
