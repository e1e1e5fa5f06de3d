// SPDX-License-Identifier: MIT
#include "bench/reference_work.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <random>

namespace duskrow::bench {

using namespace duskrow::domain;

namespace {

Uuid numbered(std::uint8_t kind, std::size_t number)
{
    Uuid id;
    id.bytes[0] = kind;
    id.bytes[6] = 0x70;
    for (std::size_t i = 0; i < 4; ++i) id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
    return id;
}

class Maker {
public:
    explicit Maker(unsigned seed) : m_random(seed) { }

    double fraction() { return std::uniform_real_distribution<double>(0, 1)(m_random); }
    std::size_t below(std::size_t most)
    {
        return std::uniform_int_distribution<std::size_t>(0, most - 1)(m_random);
    }

    std::string remark()
    {
        static constexpr std::array words{"checked", "wet", "wind", "moved", "north", "edge", "row", "gate",
            "clear", "rain", "partly", "full", "late", "early", "shade"};
        std::string text;
        for (std::size_t i = 0, count = 3 + below(9); i < count; ++i)
            text += (text.empty() ? "" : " ") + std::string(words[below(words.size())]);
        return text;
    }

    Visit visit(Instant at, std::size_t trap)
    {
        RandomBytes10 random{};
        for (std::uint8_t& byte : random) byte = static_cast<std::uint8_t>(below(256));
        Visit made;
        made.id = uuidFromTime(at, random);
        made.trap = numbered(2, trap);
        made.day = dayOf(at, std::chrono::minutes{-300});
        made.atMs = toMs(at);
        made.offsetMin = -300;
        made.observer = "observer " + std::to_string(1 + below(24));
        made.outcome = Outcome::Counted;
        const double size = fraction();
        made.pest = Moths{static_cast<std::int64_t>(size * size * size * 180)};
        made.emptied = true;
        made.state = TrapState::Fine;
        made.latE7 =
            510'000'000 + static_cast<std::int64_t>(trap) * 40'000 + static_cast<std::int64_t>(below(1000));
        made.lonE7 = -1'090'000'000 + static_cast<std::int64_t>(trap) * 30'000
            + static_cast<std::int64_t>(below(1000));
        made.accuracy = Millimetres{static_cast<std::int64_t>(3000 + below(12'000))};
        if (fraction() < 0.3) made.remark = remark();
        return made;
    }

    std::mt19937& random() { return m_random; }

private:
    std::mt19937 m_random;
};

} // namespace

ReferenceWork makeReferenceWork(std::size_t count, unsigned seed)
{
    Maker maker(seed);
    ReferenceWork work;
    Instant at = instantFromMs(1'775'030'400'000); // 2026-04-01
    for (std::size_t i = 0; i < count; ++i) {
        at += std::chrono::milliseconds(maker.below(240'000));
        work.visits.push_back(maker.visit(at, i % 400));
        work.sites.push_back(numbered(1, i % 400));
    }
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::shuffle(order.begin(), order.end(), maker.random());
    const auto edit = [&](std::size_t which, bool isRemark, std::int64_t moths) {
        Visit after = work.visits[which];
        if (isRemark)
            after.remark = "corrected on site " + std::to_string(moths);
        else
            after.pest = Moths{moths};
        return std::pair{which, after};
    };
    for (std::size_t i = 0; i < editsOfEachSide; ++i) {
        const auto number = static_cast<std::int64_t>(i);
        const bool isShared = i < touchedByBoth;
        const bool isSameField = i < touchedByBoth / 2;
        work.left.push_back(edit(order[i], !isShared && i % 2 == 0, 1000 + number));
        const std::size_t which = isShared ? order[i] : order[editsOfEachSide + i];
        work.right.push_back(edit(which, isShared ? !isSameField : i % 2 == 0, 5000 + number));
    }
    return work;
}

} // namespace duskrow::bench
