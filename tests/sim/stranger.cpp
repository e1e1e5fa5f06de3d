// SPDX-License-Identifier: MIT
#include "sim/stranger.h"

#include <nlohmann/json.hpp>
#include <sodium.h>

#include "sim/random.h"

namespace duskrow::sim {

using namespace duskrow::domain;

Stranger::Stranger(const Uuid& programme, std::uint64_t seed) : m_programme(programme)
{
    std::array<std::uint8_t, 32> bytes{};
    Random random(seed);
    for (std::uint8_t& byte : bytes) byte = static_cast<std::uint8_t>(random.next());
    crypto_sign_seed_keypair(m_key.data(), m_secret.data(), bytes.data());
    m_stream = streamOf(m_key, programme);
}

// No change cites itself or a later one of its stream.
void Stranger::citeOthersOnly(Change& change) const
{
    for (auto& [name, set] : change.fields)
        std::erase_if(set.base, [&](const ChangeRef& ref) { return ref.stream == m_stream; });
}

int Stranger::write(Book& book, Change change)
{
    change.programme = m_programme;
    change.ref = {m_stream, m_next++};
    citeOthersOnly(change);
    m_unsealed.push_back(canonicalJson(change));
    return book.write(m_unsealed.back());
}

std::string Stranger::seal(const std::vector<std::string>& lines, const sync::Hash& previous, sync::Hash& id)
{
    const sync::Sealing how{m_programme, m_stream, m_key, previous, 0};
    const auto head = sync::seal(how, lines, [&](std::string_view text) {
        Signature signature{};
        crypto_sign_detached(signature.data(), nullptr, reinterpret_cast<const unsigned char*>(text.data()),
            text.size(), m_secret.data());
        return signature;
    });
    if (!head) broken("a stranger cannot seal");
    id = head->id;
    return sync::segmentBytes(*head);
}

std::string Stranger::seal(Book& book, const std::string& needs)
{
    if (m_unsealed.empty()) return {};
    m_beforeThat = m_previous;
    m_lastFirst = m_next - static_cast<std::int64_t>(m_unsealed.size());
    std::string bytes = seal(m_unsealed, m_previous, m_previous);
    if (!needs.empty()) {
        auto head = sync::readHead(bytes);
        nlohmann::json header = nlohmann::json::parse(head->headerBytes);
        header["needs"] = {needs};
        head->headerBytes = header.dump();
        const std::string text = "DSEG1-signed" + head->headerBytes;
        crypto_sign_detached(head->signature.data(), nullptr,
            reinterpret_cast<const unsigned char*>(text.data()), text.size(), m_secret.data());
        bytes = sync::segmentBytes(*head);
        m_previous = sync::readHead(bytes)->id;
        book.unread.insert(std::string(m_previous.begin(), m_previous.end()));
    }
    m_unsealed.clear();
    segments.push_back(bytes);
    return bytes;
}

std::string Stranger::sealAgain(Book& book, const Change& change)
{
    if (m_lastFirst == 0) return {};
    Change other = change;
    other.programme = m_programme;
    other.ref = {m_stream, m_lastFirst};
    citeOthersOnly(other);
    const std::string line = canonicalJson(other);
    book.write(line);
    sync::Hash id{};
    segments.push_back(seal({line}, m_beforeThat, id));
    return segments.back();
}

std::string Stranger::forge(const std::string& sound) const
{
    auto head = sync::readHead(sound);
    if (!head) return {};
    const std::string text = "DSEG1-signed" + head->headerBytes;
    crypto_sign_detached(head->signature.data(), nullptr, reinterpret_cast<const unsigned char*>(text.data()),
        text.size(), m_secret.data());
    return sync::segmentBytes(*head);
}

} // namespace duskrow::sim
