// SPDX-License-Identifier: MIT
#pragma once

#include <QtGlobal>

#include <map>
#include <sodium.h>

#include "domain/base/signing.h"
#include "sync/segment/segment.h"

// Devices of a made-up programme, and what they write.
namespace duskrow::tests {

using namespace duskrow::domain;

using Texts = ByName<Value>;

inline Uuid uuidOf(std::uint8_t kind, std::uint32_t number)
{
    RandomBytes10 random{};
    random[0] = kind;
    for (std::size_t i = 0; i < 4; ++i) random[6 + i] = static_cast<std::uint8_t>(number >> (8 * i));
    return uuidFromTime(instantFromMs(1'750'000'000'000), random);
}

struct Keys {
    PublicKey key{};
    std::array<std::uint8_t, 64> secret{};

    explicit Keys(std::uint32_t seed)
    {
        std::array<std::uint8_t, 32> bytes{};
        for (std::size_t i = 0; i < 4; ++i) bytes[i] = static_cast<std::uint8_t>(seed >> (8 * i));
        crypto_sign_seed_keypair(key.data(), secret.data(), bytes.data());
    }
    [[nodiscard]] Signature sign(std::string_view text) const
    {
        Signature signature{};
        crypto_sign_detached(signature.data(), nullptr, reinterpret_cast<const unsigned char*>(text.data()),
            text.size(), secret.data());
        return signature;
    }
};

class Phone {
public:
    Phone(const Uuid& ofProgramme, std::uint32_t seed)
        : keys(seed), programme(ofProgramme), stream(streamOf(keys.key, ofProgramme)), member(uuidOf(1, seed))
    {
    }

    // The next change of this stream.
    const Change& write(
        const std::string& kind, const Uuid& record, const Texts& fields, const Uuid& site = {})
    {
        Change change;
        change.programme = programme;
        change.ref = {stream, static_cast<std::int64_t>(lines.size()) + 1};
        change.author = member;
        change.kind = kind;
        change.record = record;
        change.site = site;
        change.at = instantFromMs(1'783'000'000'000 + static_cast<std::int64_t>(lines.size()));
        for (const auto& [name, value] : fields) change.fields[name].value = value;
        lines.push_back(canonicalJson(change));
        m_last = change;
        return m_last;
    }

    // A visit to a trap of a site, with so many moths.
    void visit(std::uint32_t number, const Uuid& site, std::int64_t moths = 3)
    {
        write("visit", uuidOf(9, number), {{"moths", moths}, {"trap", formatUuid(uuidOf(8, number))}}, site);
    }

    // Everything that is not in a segment yet, as the next segment.
    sync::SegmentHead seal()
    {
        const std::vector<std::string> rest(
            lines.begin() + static_cast<std::ptrdiff_t>(m_sealed), lines.end());
        sync::Sealing how;
        how.programme = programme;
        how.stream = stream;
        how.key = keys.key;
        how.previous = previous;
        auto head = sync::seal(how, rest, [this](std::string_view text) { return keys.sign(text); });
        if (!head) qFatal("not sealed");
        m_sealed = static_cast<std::size_t>(head->header.last);
        previous = head->id;
        return *head;
    }

    // Founder: coordinator and own device.
    void writeFounding()
    {
        write("member", member, {{"name", std::string("Ida")}, {"role", std::string("coordinator")}});
        writeDevice(*this, member);
    }
    void writeMember(const Uuid& id, const std::string& role)
    {
        write("member", id, {{"name", std::string("Somebody")}, {"role", role}});
    }
    void writeInvitation(
        const Uuid& id, const Uuid& forMember, const PublicKey& key, const std::string& until)
    {
        write("invitation", id,
            {{"key", formatHex(key)}, {"member", formatUuid(forMember)}, {"until_day", until}});
    }
    void writeDevice(const Phone& other, const Uuid& ofMember)
    {
        write("device", other.device(),
            {{"key", formatHex(other.keys.key)}, {"label", std::string("a phone")},
                {"member", formatUuid(ofMember)}, {"stream", formatHex(other.stream)}});
    }
    void writeEnd(const Phone& other, std::int64_t after)
    {
        write("device", other.device(), {{"ended_after", after}, {"stream", formatHex(other.stream)}});
    }
    void writeClaim(const Uuid& invitation, const Keys& code)
    {
        write("device", device(),
            {{"invitation", formatUuid(invitation)}, {"key", formatHex(keys.key)},
                {"label", std::string("a phone")},
                {"proof", formatHex(code.sign(claimMessage(programme, stream)))},
                {"stream", formatHex(stream)}});
    }
    void writeSite(const Uuid& site) { write("site", site, {{"name", std::string("a field")}}, site); }

    [[nodiscard]] Uuid device() const
    {
        const std::vector<std::string> name{formatUuid(programme), "device", formatHex(stream)};
        return uuidFromName(name);
    }

    Keys keys;
    Uuid programme;
    StreamId stream;
    Uuid member;
    std::vector<std::string> lines;
    sync::Hash previous{};
    std::string token;

private:
    Change m_last;
    std::size_t m_sealed = 0;
};

} // namespace duskrow::tests
