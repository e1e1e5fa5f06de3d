// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <stdexcept>
#include <string>
#include <vector>

namespace duskrow::sim {

// The only source of chance in a run: the same seed, the same run.
class Random {
public:
    explicit Random(std::uint64_t seed) : m_state(seed) { m_state = next() ^ 0xD1B54A32D192ED03U; }

    std::uint64_t next()
    {
        std::uint64_t z = (m_state += 0x9E3779B97F4A7C15U);
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        return z ^ (z >> 31U);
    }
    std::size_t below(std::size_t most) { return most == 0 ? 0 : static_cast<std::size_t>(next() % most); }
    std::int64_t between(std::int64_t low, std::int64_t high)
    {
        return low + static_cast<std::int64_t>(next() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool percent(unsigned chance) { return next() % 100 < chance; }
    template <typename T>
    auto& of(T& all)
    {
        return all[below(all.size())];
    }

private:
    std::uint64_t m_state;
};

// Something that must hold did not.
struct Broken : std::runtime_error {
    using std::runtime_error::runtime_error;
};

[[noreturn]] inline void broken(const std::string& what)
{
    throw Broken(what);
}

} // namespace duskrow::sim
