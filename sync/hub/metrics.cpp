// SPDX-License-Identifier: MIT
#include "sync/hub/metrics.h"

#include <algorithm>
#include <sstream>

namespace duskrow::hub {

namespace {

std::string counter(const std::string& name, const std::string& help)
{
    return "# TYPE " + name + " counter\n# HELP " + name + ' ' + help + '\n';
}

std::string single(const std::string& name, const std::string& help, std::int64_t value)
{
    return counter(name, help) + name + "_total " + std::to_string(value) + '\n';
}

std::string shortly(double number)
{
    std::ostringstream text;
    text.imbue(std::locale::classic());
    text << number;
    return text.str();
}

} // namespace

void Metrics::countRequest(const std::string& call, int status, double seconds)
{
    const std::lock_guard guard(m_mutex);
    ++m_requests[{call, status}];
    Times& times = m_times[call];
    const auto place = std::lower_bound(bounds.begin(), bounds.end(), seconds) - bounds.begin();
    ++times.counts[static_cast<std::size_t>(place)];
    times.sum += seconds;
}

void Metrics::countStored(std::int64_t changes, std::int64_t bytes)
{
    const std::lock_guard guard(m_mutex);
    ++m_segments;
    m_changes += changes;
    m_bytes += bytes;
}

void Metrics::countAside(const std::string& reason)
{
    const std::lock_guard guard(m_mutex);
    ++m_aside[reason];
}

void Metrics::countSent(std::int64_t bytes)
{
    const std::lock_guard guard(m_mutex);
    m_sent += bytes;
}

std::string Metrics::requestsText() const
{
    std::string text = counter("duskrow_requests", "Requests answered.");
    for (const auto& [key, count] : m_requests)
        text += "duskrow_requests_total{call=\"" + key.first + "\",status=\"" + std::to_string(key.second)
            + "\"} " + std::to_string(count) + '\n';
    return text;
}

std::string Metrics::timesText() const
{
    std::string text = "# TYPE duskrow_request_seconds histogram\n# UNIT duskrow_request_seconds seconds\n"
                       "# HELP duskrow_request_seconds Time to answer, without sending.\n";
    for (const auto& [call, times] : m_times) {
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < times.counts.size(); ++i) {
            sum += times.counts[i];
            const std::string bound = i < bounds.size() ? shortly(bounds[i]) : "+Inf";
            text += "duskrow_request_seconds_bucket{call=\"" + call + "\",le=\"" + bound + "\"} "
                + std::to_string(sum) + '\n';
        }
        text += "duskrow_request_seconds_count{call=\"" + call + "\"} " + std::to_string(sum) + '\n';
        text += "duskrow_request_seconds_sum{call=\"" + call + "\"} " + shortly(times.sum) + '\n';
    }
    return text;
}

std::string Metrics::text() const
{
    const std::lock_guard guard(m_mutex);
    std::string text = requestsText() + timesText();
    text += single("duskrow_segments_stored", "Segments taken in.", m_segments);
    text += single("duskrow_changes_stored", "Changes taken in.", m_changes);
    text += single("duskrow_stored_bytes", "Bytes of the segments taken in.", m_bytes);
    text += single("duskrow_sent_bytes", "Bytes of the pages sent.", m_sent);
    text += counter("duskrow_kept_aside", "Segments kept aside.");
    for (const auto& [reason, count] : m_aside)
        text += "duskrow_kept_aside_total{reason=\"" + reason + "\"} " + std::to_string(count) + '\n';
    return text + "# EOF\n";
}

} // namespace duskrow::hub
