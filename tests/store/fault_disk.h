// SPDX-License-Identifier: MIT
#pragma once

#include <limits>
#include <map>
#include <random>
#include <string>
#include <vector>

struct sqlite3_file;

namespace duskrow::tests {

enum class Fault {
    Once, // one operation fails, half done; the next ones work
    ForGood, // from that operation on everything fails
    PowerCut, // the same, and what was not synchronised before is partly lost
};

// A disk below SQLite, registered as the VFS "fault", that counts the operations which change something and
// fails the one it is told to. Reading is never disturbed.
class FaultDisk {
public:
    static constexpr const char* name = "fault";
    static FaultDisk& instance();

    void arm(long failAt, Fault fault);
    // Counts and fails nothing.
    void watch() { arm(std::numeric_limits<long>::max(), Fault::Once); }
    // What was done since, one operation after the other: "write" and the file, or another name.
    [[nodiscard]] const std::vector<std::string>& steps() const { return m_steps; }
    // Stops counting and failing. Returns whether a fault came.
    bool disarm();
    [[nodiscard]] bool hasFailed() const { return m_hasFailed; }

    // After a power cut: each file keeps what was synchronised, and any part of the 512-byte sectors that
    // were written since; a file that was never synchronised may be gone.
    void losePower(std::mt19937& random);

    // For the VFS: whether the operation that comes now fails.
    bool fails(const std::string& step);
    void opened(const std::string& path, bool isNew);
    void synchronised(const std::string& path);
    void removed(const std::string& path) { m_files.erase(path); }

private:
    FaultDisk();

    struct File {
        std::string durable;
        bool isDurable = false; // the name itself
    };
    std::map<std::string, File> m_files;
    std::vector<std::string> m_steps;
    long m_failAt = -1;
    long m_count = 0;
    Fault m_fault = Fault::Once;
    bool m_hasFailed = false;
};

} // namespace duskrow::tests
