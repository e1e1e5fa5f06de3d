// SPDX-License-Identifier: MIT
#include <algorithm>
#include <filesystem>

#include "store/publications.h"
#include "sync/client/hub_exchange.h"
#include "sync/folder/folder_files.h"

namespace duskrow::sync {

using namespace duskrow::domain;
namespace fs = std::filesystem;

// What this desk has published and the hub lacks, or has in an older form, is handed over.
Result<Done> HubExchange::handOverPublications()
{
    constexpr std::size_t mostBytes = std::size_t{4} << 20;
    if (m_report.wasStopped) return Done{};
    std::error_code failure;
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(store::publicFolder(m_store.path()), failure))
        if (entry.is_regular_file(failure)) files.push_back(entry.path());
    if (files.empty()) return Done{};
    std::sort(files.begin(), files.end());
    const auto answer = withToken("GET", m_home + "/publications", {});
    if (!answer) return answer.error();
    if (answer->status == 404) return Done{}; // a hub of an older version serves none
    const auto there = objectIn(*answer);
    if (answer->status != 200) return m_link.refusal(*answer);
    if (!there) return Error{ErrorCode::HubNotOurs, {m_link.address()}, "publications"};
    for (const fs::path& path : files) {
        const std::string name = path.filename().string();
        const auto bytes = readPlainFile(path, mostBytes);
        if (!bytes || bytes->empty() || textIn(*there, name.c_str()) == formatHex(hashOf(*bytes))) continue;
        const auto sent = withToken(
            "PUT", m_home + "/publications/" + name, *bytes, {{"Content-Type", "application/octet-stream"}});
        if (!sent) return sent.error();
        if (sent->status == 403)
            return Done{}; // no coordinator any more: it is not for this device to publish
        if (sent->status != 201) m_report.troubles.push_back(m_link.refusal(*sent));
    }
    return Done{};
}

} // namespace duskrow::sync
