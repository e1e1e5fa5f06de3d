// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/roster/roster.h"
#include "sync/hub/store/cells.h"
#include "sync/hub/store/copy.h"

namespace duskrow::hub {

namespace {

constexpr std::int64_t pageBytes = std::int64_t{8} << 20;

class Check {
public:
    Check(HubStore& store, StoreReport& report, const ProgrammeRow& programme)
        : m_store(store), m_report(report), m_programme(programme),
          m_name(domain::formatUuid(programme.programme))
    {
    }

    Result<Done> run()
    {
        for (std::int64_t after = 0;;) {
            const auto page = m_store.page(m_programme.programme, after, pageBytes);
            if (!page) return page.error();
            if (page->empty()) break;
            for (const StoredSegment& segment : *page) {
                take(segment, after + 1);
                after = segment.at;
            }
            m_last = after;
        }
        if (m_last != m_programme.head)
            fault("the counter says " + std::to_string(m_programme.head) + ", segments end at "
                + std::to_string(m_last));
        const auto facts = checkFacts();
        if (!facts) return facts.error();
        const auto streams = checkStreams();
        if (!streams) return streams.error();
        return checkPhotographs();
    }

private:
    void fault(const std::string& what) { m_report.faults.push_back(m_name + ": " + what); }

    void take(const StoredSegment& stored, std::int64_t due)
    {
        ++m_report.segments;
        const std::string name = "segment " + std::to_string(stored.at);
        if (stored.at != due) fault("after " + std::to_string(due - 1) + " comes " + name);
        auto head = sync::readHead(stored.bytes);
        if (!head) return fault(name + " is damaged");
        const sync::SegmentHeader header = head->header;
        const auto segment = sync::openSegment(std::move(*head));
        const bool isNewer = !segment
            && segment.error().code == domain::ErrorCode::SegmentNewer; // known to the signature only
        if (!segment && !isNewer) return fault(name + " does not pass its checks");
        if (header.programme != m_programme.programme) fault(name + " belongs to another programme");
        std::int64_t& last = m_streams[header.stream];
        if (header.first > last + 1) fault(name + " leaves a gap in " + domain::formatHex(header.stream));
        last = std::max(last, header.last);
        m_report.changes += header.last - header.first + 1;
        if (isNewer) return;
        for (const sync::SegmentLine& line : segment->lines)
            if (domain::isRosterKind(line.change.kind)) m_facts.push_back(line.bytes);
    }

    Result<Done> checkFacts()
    {
        const auto held = m_store.factsAfter(m_programme.programme, 0);
        if (!held) return held.error();
        if (held->lines != m_facts) fault("the changes to the roster are not those of the segments");
        return Done{};
    }

    Result<Done> checkStreams()
    {
        const auto held = m_store.lastNumbers(m_programme.programme);
        if (!held) return held.error();
        for (const auto& [stream, last] : *held)
            if (m_streams[stream] != last)
                fault("of " + domain::formatHex(stream) + " stand " + std::to_string(m_streams[stream])
                    + " changes, its row says " + std::to_string(last));
        for (const auto& [stream, last] : m_streams)
            if (!held->contains(stream)) fault(domain::formatHex(stream) + " has no row");
        return Done{};
    }

    Result<Done> checkPhotographs()
    {
        std::vector<Hash> whole;
        const auto read = m_store.engine().read([&](Session& session) {
            whole.clear();
            for (const Row& row :
                session.run("SELECT photograph FROM photograph WHERE programme=$1 AND whole=1",
                    {cell(m_programme.programme)}))
                whole.push_back(arrayOf<32>(row.bytes(0)));
        });
        if (!read) return read.error();
        for (const Hash& name : whole) {
            const auto bytes = m_store.photographBytes(m_programme.programme, name);
            if (!bytes) return bytes.error();
            ++m_report.photographs;
            if (domain::hashOf(*bytes) != name)
                fault("photograph " + domain::formatHex(name) + " is damaged");
        }
        return Done{};
    }

    HubStore& m_store;
    StoreReport& m_report;
    const ProgrammeRow& m_programme;
    std::string m_name;
    std::int64_t m_last = 0;
    std::map<StreamId, std::int64_t> m_streams;
    std::vector<std::string> m_facts;
};

} // namespace

Result<StoreReport> checkStore(HubStore& store)
{
    StoreReport report;
    const auto programmes = store.programmes();
    if (!programmes) return programmes.error();
    for (const ProgrammeRow& programme : *programmes) {
        ++report.programmes;
        const auto done = Check(store, report, programme).run();
        if (!done) return done.error();
        const auto aside = store.aside(programme.programme);
        if (!aside) return aside.error();
        report.aside += static_cast<std::int64_t>(aside->size());
    }
    return report;
}

} // namespace duskrow::hub
