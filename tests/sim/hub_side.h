// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "sim/phone.h"
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
    void putBack(); // the copy; other epochs
    [[nodiscard]] bool hasCopy() const { return m_hasCopy; }
    [[nodiscard]] bool isOpen() const { return m_hub != nullptr; }
    hub::Response ask(const hub::Request& request);
    // All that it received and answered with a receipt must be there.
    void audit();
    // Whole segments in its log, and those that it keeps aside.
    std::vector<std::string> log();
    std::vector<std::string> aside();
    [[nodiscard]] const std::filesystem::path& folder() const { return m_folder; }

    std::set<std::string> receipts; // ids of segments

private:
    World& m_world;
    std::filesystem::path m_folder;
    std::unique_ptr<hub::HubStore> m_store;
    std::unique_ptr<hub::Hub> m_hub;
    std::set<std::string> m_receiptsOfCopy;
    bool m_hasCopy = false;
};

} // namespace duskrow::sim
