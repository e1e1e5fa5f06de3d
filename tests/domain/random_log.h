// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <random>

#include "domain/log/change.h"

namespace duskrow::tests {

// Several people edit one record, each knowing only what has reached them so far. Which changes stand is
// worked out here by looking at every pair of changes: slowly, and without the code under test.
class RandomLog {
public:
    RandomLog(unsigned seed, std::string kind) : m_random(seed), m_kind(std::move(kind)) { }

    std::vector<domain::Change> grow(int streams, int steps)
    {
        m_known.assign(static_cast<std::size_t>(streams), {});
        for (int step = 0; step < steps; ++step) {
            const std::size_t who = below(m_known.size());
            if (below(3) == 0)
                receive(who, below(m_known.size()));
            else
                write(who);
        }
        return m_all;
    }

    static bool stands(
        const std::vector<domain::Change>& changes, const domain::Change& one, const std::string& field)
    {
        for (const domain::Change& other : changes) {
            const auto set = other.fields.find(field);
            if (set == other.fields.end()) continue;
            for (const domain::ChangeRef& cited : set->second.base)
                if (cited == one.ref) return false;
        }
        return true;
    }

    std::size_t below(std::size_t bound) { return m_random() % bound; }
    std::mt19937& random() { return m_random; }

private:
    void receive(std::size_t to, std::size_t from)
    {
        for (const domain::Change& change : m_known[from])
            if (std::none_of(m_known[to].begin(), m_known[to].end(),
                    [&](const domain::Change& c) { return c.ref == change.ref; }))
                m_known[to].push_back(change);
    }

    domain::Value valueFor(const std::string& field)
    {
        if (below(8) == 0) return {};
        if (field == "emptied") return below(2) == 0;
        if (field == "pest") return static_cast<std::int64_t>(below(4));
        if (field == "zz_newer" && below(2) == 0) return domain::RawJson{"[1]"};
        return std::string(1, static_cast<char>('a' + below(4)));
    }

    void write(std::size_t who)
    {
        auto& known = m_known[who];
        domain::Change change;
        change.kind = m_kind;
        change.record.bytes.back() = 1;
        change.ref.stream.back() = static_cast<std::uint8_t>(who + 1);
        change.ref.seq = 1 + std::count_if(known.begin(), known.end(), [&](const domain::Change& c) {
            return c.ref.stream == change.ref.stream;
        });
        if (below(2) == 0) change.site.bytes.back() = static_cast<std::uint8_t>(1 + below(3));
        for (const char* field : {"emptied", "observer", "pest", "remark", "withdrawn", "zz_newer"}) {
            if (below(field == std::string("withdrawn") ? 6 : 3) != 0) continue;
            auto& set = change.fields[field];
            set.value = valueFor(field);
            for (const domain::Change& seen : known)
                if (seen.fields.contains(field) && stands(known, seen, field)) set.base.push_back(seen.ref);
        }
        if (change.fields.contains("withdrawn"))
            for (const domain::Change& seen : known)
                for (const auto& [field, set] : seen.fields)
                    if (stands(known, seen, field)) change.saw.push_back(seen.ref);
        known.push_back(change);
        m_all.push_back(std::move(change));
    }

    std::mt19937 m_random;
    std::string m_kind;
    std::vector<std::vector<domain::Change>> m_known; // one a stream
    std::vector<domain::Change> m_all;
};

} // namespace duskrow::tests
