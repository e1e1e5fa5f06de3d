// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "sim/phone.h"
#include "store/segments.h"
#include "sync/hub/hub.h"

namespace duskrow::sim {

struct World;

// A hub in the same process, without sockets: requests in, answers out.
class HubSide {
public:
    explicit HubSide(World& world);

    void open();
    void close();
    void found(Phone& founder);
    void copy(); // as a backup does
    void putBack(); // one of the copies; other epochs
    [[nodiscard]] bool hasCopy() const { return !m_copies.empty(); }
    [[nodiscard]] bool isOpen() const { return m_hub != nullptr; }
    hub::Response ask(const hub::Request& request);
    // All that it received and answered with a receipt must be there.
    void audit();
    // Whole segments in its log, and those that it keeps aside.
    std::vector<std::string> log();
    std::vector<std::string> aside();
    const Lines& lines(); // all changes in its log
    [[nodiscard]] bool has(const store::SegmentId& id) const
    {
        return m_ids.contains(std::string(id.begin(), id.end()));
    }
    const NaiveRoster& naiveRoster(); // as its log says
    std::set<std::string> pictures(); // whole ones, by name
    [[nodiscard]] const std::filesystem::path& folder() const { return m_folder; }

    std::set<std::string> receipts; // ids of segments
    std::set<std::string> pictureReceipts; // names of photographs
    std::map<std::string, StreamId> tokens; // and whose they are

private:
    World& m_world;
    std::filesystem::path m_folder;
    std::unique_ptr<hub::HubStore> m_store;
    std::unique_ptr<hub::Hub> m_hub;
    struct Copy {
        std::filesystem::path folder;
        std::set<std::string> receipts;
        std::set<std::string> pictureReceipts;
    };
    void readOn();

    std::vector<Copy> m_copies; // the oldest first
    int m_copiesMade = 0;
    std::int64_t m_readUpTo = 0; // of its log
    Lines m_lines;
    std::set<std::string> m_ids;
    std::unique_ptr<NaiveRoster> m_roster;
};

} // namespace duskrow::sim
