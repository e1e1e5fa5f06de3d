// SPDX-License-Identifier: MIT
#include "sim/hub_side.h"

#include <nlohmann/json.hpp>
#include <sodium.h>

#include "sim/world.h"
#include "sync/hub/store/copy.h"

namespace duskrow::sim {

using namespace duskrow::domain;

HubSide::HubSide(World& world) : m_world(world), m_folder(world.root / "hub")
{
    fs::create_directories(m_folder / "live");
    open();
}

void HubSide::open()
{
    auto engine = hub::openEngine(m_folder / "live" / "hub.db", hub::Opening::Serve);
    if (!engine) broken("the hub's store does not open: " + engine.error().detail);
    m_store = std::make_unique<hub::HubStore>(std::move(*engine));
    hub::HubOptions options;
    options.token = options.address = {1e9, 1e9};
    auto opened = hub::Hub::open(
        *m_store, options, [this] { return m_world.now; }, [](const std::string&) {});
    if (!opened) broken("no hub");
    m_hub = std::move(*opened);
    m_readUpTo = 0; // what had no receipt may be gone
    m_lines.clear();
    m_ids.clear();
    m_roster.reset();
}

void HubSide::close()
{
    m_hub.reset();
    m_store.reset();
}

hub::Response HubSide::ask(const hub::Request& request)
{
    return m_hub->answer(request);
}

void HubSide::found(Phone& founder)
{
    PublicKey key{};
    std::array<std::uint8_t, 64> secret{};
    std::array<std::uint8_t, 32> seed{9};
    crypto_sign_seed_keypair(key.data(), secret.data(), seed.data());
    if (!m_store->addFounding({key, "District", m_world.now + std::chrono::hours(24), {}, {}}))
        broken("no founding code");
    const std::string text = claimMessage(m_world.programme, founder.stream());
    Signature proof{};
    crypto_sign_detached(proof.data(), nullptr, reinterpret_cast<const unsigned char*>(text.data()),
        text.size(), secret.data());
    hub::Request request;
    request.method = hub::Method::Post;
    request.target = "/v1/programmes";
    request.body =
        nlohmann::json{{"invitation", formatHex(key)}, {"key", formatHex(founder.store->publicKey())},
            {"name", "District"}, {"programme", formatUuid(m_world.programme)}, {"proof", formatHex(proof)},
            {"stream", formatHex(founder.stream())}}
            .dump();
    if (ask(request).status != 201) broken("the programme cannot be founded at the hub");
}

void HubSide::copy()
{
    constexpr std::size_t most = 3;
    close();
    if (m_copies.size() == most) {
        fs::remove_all(m_copies.front().folder);
        m_copies.erase(m_copies.begin());
    }
    m_copies.push_back({m_folder / ("copy" + std::to_string(++m_copiesMade)), receipts, pictureReceipts});
    fs::copy(m_folder / "live", m_copies.back().folder, fs::copy_options::recursive);
    open();
}

void HubSide::putBack()
{
    const auto age = m_world.random.below(m_copies.size());
    const Copy& copy = m_copies[age];
    m_world.fault(
        age + 1 == m_copies.size() ? "hub restored from its newest copy" : "hub restored from an older copy");
    close();
    fs::remove_all(m_folder / "live");
    fs::copy(copy.folder, m_folder / "live", fs::copy_options::recursive);
    receipts = copy.receipts;
    pictureReceipts = copy.pictureReceipts;
    {
        auto engine = hub::openEngine(m_folder / "live" / "hub.db", hub::Opening::Serve);
        if (!engine || !hub::renewEpochs(**engine, m_world.now)) broken("the hub cannot be put back");
    }
    open();
    m_world.forgetWhatIsNowhere();
}

// The part of the log that was not looked at yet, up to what the book does not know yet.
void HubSide::readOn()
{
    std::int64_t after = m_readUpTo;
    bool isAllKnown = true;
    while (true) {
        const auto page = m_store->page(m_world.programme, after, std::int64_t{4} << 20);
        if (!page) broken("the hub's log cannot be read: " + page.error().detail);
        if (page->empty()) return;
        m_roster.reset();
        for (const hub::StoredSegment& segment : *page) {
            after = segment.at;
            const auto head = sync::readHead(segment.bytes);
            if (!head) broken("the hub's log holds what is no segment (I8)");
            m_ids.insert(std::string(head->id.begin(), head->id.end()));
            bool isKnown = true;
            const auto lines = linesIn(segment.bytes, m_world.book, &isKnown);
            m_lines.insert(lines.begin(), lines.end());
            isAllKnown = isAllKnown && isKnown;
            if (isAllKnown) m_readUpTo = after;
        }
    }
}

const Lines& HubSide::lines()
{
    readOn();
    return m_lines;
}

const NaiveRoster& HubSide::naiveRoster()
{
    readOn();
    if (!m_roster)
        m_roster = std::make_unique<NaiveRoster>(
            m_world.programme, m_world.founders, m_world.book.changes(m_lines), StreamId{});
    return *m_roster;
}

std::set<std::string> HubSide::pictures()
{
    std::set<std::string> names;
    for (const auto& [name, bytes] : m_world.pictures) {
        std::array<std::uint8_t, 32> hash{};
        parseHex(name, hash);
        const auto state = m_store->photograph(m_world.programme, hash);
        if (!state) broken("the hub's photographs cannot be read");
        if (!state->isWhole) continue;
        const auto held = m_store->photographBytes(m_world.programme, hash);
        if (!held || *held != bytes) broken("the hub holds a photograph that is not what its name says");
        names.insert(name);
    }
    return names;
}

std::vector<std::string> HubSide::log()
{
    std::vector<std::string> all;
    std::int64_t after = 0;
    while (true) {
        const auto page = m_store->page(m_world.programme, after, std::int64_t{4} << 20);
        if (!page) broken("the hub's log cannot be read: " + page.error().detail);
        if (page->empty()) return all;
        for (const hub::StoredSegment& segment : *page) {
            all.push_back(segment.bytes);
            after = segment.at;
        }
    }
}

std::vector<std::string> HubSide::aside()
{
    std::vector<std::string> all;
    const auto rows = m_store->aside(m_world.programme);
    if (!rows) broken("the hub cannot say what is aside");
    for (const hub::AsideSegment& row : *rows) {
        const auto full = m_store->asideWithBytes(m_world.programme, row.file);
        if (!full || !*full) broken("the hub lost what it kept aside");
        all.push_back((*full)->bytes);
    }
    return all;
}

void HubSide::audit()
{
    m_readUpTo = 0;
    m_ids.clear();
    m_lines.clear();
    readOn();
    for (const std::string& id : receipts)
        if (!m_ids.contains(id)) broken("the hub gave a receipt for what it does not have (I2)");
    if (pictureReceipts.empty()) return;
    const std::set<std::string> held = pictures();
    for (const std::string& name : pictureReceipts)
        if (!held.contains(name)) broken("the hub lost the photograph " + name + " (I2)");
}

} // namespace duskrow::sim
