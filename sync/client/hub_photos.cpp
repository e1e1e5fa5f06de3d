// SPDX-License-Identifier: MIT
#include <filesystem>

#include "store/photos.h"
#include "sync/client/hub_exchange.h"
#include "sync/folder/folder_files.h"

namespace duskrow::sync {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {

constexpr std::size_t mostPhotoBytes = std::size_t{16} << 20;
constexpr std::size_t partBytes = std::size_t{1} << 20;

} // namespace

// Pictures that records name and that are not here are fetched; those here that the hub lacks are sent.
Result<Done> HubExchange::exchangePhotos()
{
    if (m_report.wasStopped) return Done{};
    const auto named = store::photosNamed(m_reader);
    if (!named) return named.error();
    std::int64_t done = 0;
    for (const std::string& name : *named) {
        if (!goesOn(done++, static_cast<std::int64_t>(named->size()))) return Done{};
        std::error_code failure;
        const bool isHere = fs::exists(store::photoPath(m_store.path(), name), failure);
        const auto exchanged = isHere ? sendPhoto(name) : fetchPhoto(name);
        if (!exchanged) return exchanged.error();
    }
    return Done{};
}

Result<Done> HubExchange::sendPhoto(const std::string& name)
{
    const std::string key = "photo/" + m_route + '/' + name;
    const auto isThere = m_reader.deviceSetting(key);
    if (!isThere) return isThere.error();
    // A hub that was put back from a backup may have lost it: then the epoch is another one.
    if (*isThere == m_epoch) return Done{};
    const auto bytes = readPlainFile(store::photoPath(m_store.path(), name), mostPhotoBytes);
    if (!bytes || formatHex(hashOf(*bytes)) != name) return Done{};
    const std::string path = m_home + "/photographs/" + name;
    const auto asked = withToken("HEAD", path, {});
    if (!asked) return asked.error();
    const std::string heldText = asked->header("duskrow-held");
    std::size_t held =
        heldText.empty() ? 0 : static_cast<std::size_t>(std::strtoull(heldText.c_str(), nullptr, 10));
    if (asked->status == 200) return m_store.saveSettingNow(key, m_epoch);
    // It goes on after what the hub holds of it: a picture that was cut off is not sent twice.
    while (held < bytes->size()) {
        const std::string_view part = std::string_view(*bytes).substr(held, partBytes);
        const std::string range = "bytes " + std::to_string(held) + '-'
            + std::to_string(held + part.size() - 1) + '/' + std::to_string(bytes->size());
        const auto sent = withToken(
            "PUT", path, part, {{"Content-Range", range}, {"Content-Type", "application/octet-stream"}});
        if (!sent) return sent.error();
        if (sent->status == 200 || sent->status == 201) {
            m_report.photosSent += sent->status == 201 ? 1 : 0;
            return m_store.saveSettingNow(key, m_epoch);
        }
        if (sent->status != 202) {
            m_report.troubles.push_back(m_link.refusal(*sent));
            return Done{};
        }
        held += part.size();
    }
    return Done{};
}

Result<Done> HubExchange::fetchPhoto(const std::string& name)
{
    const auto answer = withToken("GET", m_home + "/photographs/" + name, {});
    if (!answer) return answer.error();
    if (answer->status == 404) return Done{}; // whoever has it has not been here yet
    if (answer->status != 200) {
        m_report.troubles.push_back(m_link.refusal(*answer));
        return Done{};
    }
    if (formatHex(hashOf(answer->body)) != name) return Done{};
    const auto kept = sync::handOver(store::photoPath(m_store.path(), name), answer->body, m_store.stream());
    if (!kept) return kept.error();
    ++m_report.photosReceived;
    return Done{};
}

} // namespace duskrow::sync
