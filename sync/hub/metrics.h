// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <mutex>
#include <string>

namespace duskrow::hub {

// What is counted since the hub began, as OpenMetrics text.
class Metrics {
public:
    void countRequest(const std::string& call, int status, double seconds);
    void countStored(std::int64_t changes, std::int64_t bytes);
    void countAside(const std::string& reason);
    void countSent(std::int64_t bytes);

    // Ends with "# EOF".
    [[nodiscard]] std::string text() const;

private:
    static constexpr std::array<double, 10> bounds{0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 1, 5};

    struct Times {
        std::array<std::int64_t, bounds.size() + 1> counts{}; // the last is for what took longer
        double sum = 0;
    };

    [[nodiscard]] std::string requestsText() const;
    [[nodiscard]] std::string timesText() const;

    mutable std::mutex m_mutex;
    std::map<std::pair<std::string, int>, std::int64_t> m_requests;
    std::map<std::string, Times> m_times;
    std::map<std::string, std::int64_t> m_aside;
    std::int64_t m_segments = 0;
    std::int64_t m_changes = 0;
    std::int64_t m_bytes = 0;
    std::int64_t m_sent = 0;
};

} // namespace duskrow::hub
