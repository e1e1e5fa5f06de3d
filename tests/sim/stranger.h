// SPDX-License-Identifier: MIT
#pragma once

#include "sim/book.h"
#include "sync/segment/segment.h"

namespace duskrow::sim {

// A device that is not of this version, or does not keep to the rules: it writes changes by hand and signs
// whatever it likes.
class Stranger {
public:
    Stranger(const Uuid& programme, std::uint64_t seed);

    // The next change of its stream.
    int write(Book& book, Change change);
    // All that is in no segment yet; `needs` names an ability that this version lacks.
    std::string seal(Book& book, const std::string& needs = {});
    // Of another content for the last sealed numbers, after the same predecessor.
    std::string sealAgain(Book& book, const Change& change);
    // A sound segment whose signature is by another key.
    std::string forge(const std::string& sound) const;

    [[nodiscard]] const StreamId& stream() const { return m_stream; }
    [[nodiscard]] const domain::PublicKey& key() const { return m_key; }
    [[nodiscard]] std::int64_t next() const { return m_next; }
    std::vector<std::string> segments; // all that it made and that is sound

private:
    void citeOthersOnly(Change& change) const;
    std::string seal(const std::vector<std::string>& lines, const sync::Hash& previous, sync::Hash& id);

    Uuid m_programme;
    domain::PublicKey m_key{};
    std::array<std::uint8_t, 64> m_secret{};
    StreamId m_stream{};
    std::int64_t m_next = 1;
    std::vector<std::string> m_unsealed;
    sync::Hash m_previous{};
    sync::Hash m_beforeThat{};
    std::int64_t m_lastFirst = 0;
};

} // namespace duskrow::sim
