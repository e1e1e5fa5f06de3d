// SPDX-License-Identifier: MIT
#pragma once

#include <atomic>
#include <map>
#include <set>
#include <string>

#include "sim/random.h"

namespace duskrow::sim {

enum class Fault {
    Once, // one effect fails, half done
    Full, // from then on nothing grows
    Kill, // from then on nothing happens at all; what was written stays
    PowerCut, // the same, and what was not synchronised is partly lost
};

// Below SQLite and below the files that are written whole: counts the effects on the disk under some folders
// and lets the one that it is told to fail. Reading is never disturbed.
class Disk {
public:
    static Disk& instance();

    // Effects are counted from now on; what stands there now is on the disk.
    void arm(const std::set<std::string>& below, long failAt, Fault fault);
    // Stops counting and failing. Returns whether the fault came.
    bool disarm();
    // Each file of SQLite keeps what was synchronised, and any part of what was written since.
    void losePower(Random& random);

    // For the layers below: whether the effect that comes now fails.
    bool fails(const std::string& path, bool grows = true);
    bool isDead(const std::string& path);
    void opened(const std::string& path, bool isNew);
    void synchronised(const std::string& path);
    void removed(const std::string& path);
    [[nodiscard]] bool isArmed() const { return m_isArmed; }
    [[nodiscard]] Fault fault() const { return m_fault; }

private:
    Disk();
    [[nodiscard]] bool isBelow(const std::string& path) const;

    struct File {
        std::string durable;
        bool isDurable = false; // the name itself
    };
    std::map<std::string, File> m_files;
    std::set<std::string> m_below;
    std::atomic<bool> m_isArmed{false};
    long m_failAt = 0;
    long m_count = 0;
    Fault m_fault = Fault::Once;
    bool m_hasFailed = false;
};

} // namespace duskrow::sim
