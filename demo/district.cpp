// SPDX-License-Identifier: MIT
#include "demo/district.h"

#include <algorithm>
#include <tuple>

#include "demo/field_walk.h"
#include "demo/names.h"
#include "demo/trap_life.h"
#include "store/queries.h"

namespace duskrow::demo {

using namespace duskrow::domain;

namespace {

Instant instantOf(LocalDay day, int minute)
{
    return Instant{
        std::chrono::sys_days{day.time_since_epoch()} + std::chrono::minutes{minute} - valleyOffset};
}

Season makeSeason(const Uuid& programme, int year)
{
    Season season;
    season.id = seasonId(programme, year);
    season.year = year;
    season.weekStart = 7; // Sunday
    season.countDay = 1; // Monday
    season.graceDays = 1;
    season.reportDay = 2; // Tuesday noon
    season.reportMinute = 12 * 60;
    return season;
}

class Filling {
public:
    Filling(store::Store& store, const Parameters& wanted);

    Result<District> run();

private:
    Result<Done> keepProgramme();
    Result<Done> keepSeason(int year);
    Result<Done> keepAll(std::vector<Entry> entries);

    store::Store& m_store;
    const Parameters& m_wanted;
    LocalDay m_founded; // when programme and members were entered
    std::uint64_t m_seed;
    Valley m_valley;
    District m_district;
};

Filling::Filling(store::Store& store, const Parameters& wanted)
    : m_store(store), m_wanted(wanted),
      m_founded(dayOf(yearOf(wanted.today) - static_cast<int>(wanted.seasons) + 1, 1, 1)),
      m_seed(static_cast<std::uint64_t>(wanted.seed)),
      m_valley(makeValley(m_seed, static_cast<std::size_t>(wanted.traps), instantOf(m_founded, 540)))
{
    m_district.programme = store.programme();
    m_district.grower = m_valley.keepers[Valley::grower].member;
    m_district.agronomist = m_valley.keepers[Valley::agronomist].member;
    m_district.coordinator = m_valley.keepers[Valley::coordinator].member;
}

Result<Done> Filling::keepProgramme()
{
    Programme programme;
    programme.id = m_store.programme();
    programme.name = valleyName;
    programme.region = valleyRegion;
    programme.invented = true;
    store::Batch batch;
    batch.author = m_district.coordinator.id;
    batch.at = instantOf(m_founded, 540);
    batch.offset = valleyOffset;
    batch.edits.push_back(creation(programme, Uuid{}));
    for (const auto& district : m_valley.districts) batch.edits.push_back(creation(district, Uuid{}));
    for (const Keeper& keeper : m_valley.keepers) batch.edits.push_back(creation(keeper.member, Uuid{}));
    const auto kept = m_store.keepNow(std::move(batch));
    if (!kept) return kept.error();
    return Done{};
}

Result<Done> Filling::keepSeason(int year)
{
    const Season season = makeSeason(m_store.programme(), year);
    ProtocolUse use;
    use.id = protocolUseId(m_store.programme(), season.id, m_wanted.pest);
    use.season = season.id;
    use.pest = m_wanted.pest;
    use.version = m_wanted.protocolVersion;
    const LocalDay opened = dayOf(year, 1, 1);
    std::vector<Entry> entries;
    entries.push_back({opened, 600, m_district.coordinator.id, creation(season, Uuid{})});
    entries.push_back({opened, 601, m_district.coordinator.id, creation(use, Uuid{})});

    const Summer summer(year, Dice(m_seed, 2, static_cast<std::uint64_t>(year)));
    const SeasonFrame frame{m_seed, year, yearOf(m_wanted.today) - year, season.id, m_wanted.today};
    const Common common{m_district.coordinator.id, m_wanted.pest, m_wanted.protocolVersion, m_wanted.trapType,
        m_wanted.today};
    for (std::size_t trap = 0; trap < m_valley.keeperOfTrap.size(); ++trap) {
        const Story story = storyOf(m_valley, frame, trap);
        const Dice dice(m_seed, static_cast<std::uint64_t>(year), 2 * trap + 1);
        TrapLife life(story, common, summer, dice);
        for (Entry& entry : life.entries()) {
            if (entry.edit.kind == kindOf<Trap>().name && entry.edit.fields.contains("set_day"))
                ++m_district.traps;
            if (entry.edit.kind == kindOf<Visit>().name && entry.edit.fields.contains("trap"))
                ++m_district.visits;
            entries.push_back(std::move(entry));
        }
        const Dice walking(m_seed, 100'000 + static_cast<std::uint64_t>(year), trap);
        for (Entry& entry : fieldWalk(story, common, life.site(), walking))
            entries.push_back(std::move(entry));
    }
    return keepAll(std::move(entries));
}

// One batch for all that one person entered in one week, kept at the moment of the last of it; what those
// with the app entered this season is kept day by day, as it would be.
Result<Done> Filling::keepAll(std::vector<Entry> entries)
{
    const auto batchOf = [&](const Entry& entry) {
        const auto day = entry.day.time_since_epoch().count();
        const bool isDaily =
            entry.author != m_district.coordinator.id && yearOf(entry.day) == yearOf(m_wanted.today);
        return std::pair(isDaily ? day : day / 7 * 7, entry.author);
    };
    const auto isEarlier = [&](const Entry& a, const Entry& b) {
        return std::tuple(batchOf(a), a.day) < std::tuple(batchOf(b), b.day);
    };
    std::stable_sort(entries.begin(), entries.end(), isEarlier);
    for (auto first = entries.begin(); first != entries.end();) {
        store::Batch batch;
        batch.author = first->author;
        batch.offset = valleyOffset;
        auto next = first;
        for (; next != entries.end() && batchOf(*next) == batchOf(*first); ++next) {
            batch.at = std::max(batch.at, instantOf(next->day, next->minute));
            batch.edits.push_back(std::move(next->edit));
        }
        const auto kept = m_store.keepNow(std::move(batch));
        if (!kept) return kept.error();
        first = next;
    }
    return Done{};
}

Result<District> Filling::run()
{
    if (const auto kept = keepProgramme(); !kept) return kept.error();
    for (std::int64_t ago = m_wanted.seasons - 1; ago >= 0; --ago) {
        const int year = yearOf(m_wanted.today) - static_cast<int>(ago);
        if (const auto kept = keepSeason(year); !kept) return kept.error();
    }
    // The phone that the demo shows is the grower's.
    const auto held = m_store.saveSettingNow("me", formatUuid(m_district.grower.id));
    if (!held) return held.error();
    return m_district;
}

} // namespace

Result<Done> checkParameters(const Parameters& wanted)
{
    const auto within = [](const char* name, std::int64_t value, std::int64_t low, std::int64_t high) {
        if (value >= low && value <= high) return Result<Done>(Done{});
        return Result<Done>(Error{ErrorCode::OutOfRange, {name, std::to_string(low), std::to_string(high)}});
    };
    if (auto checked = within("traps", wanted.traps, 1, mostTraps); !checked) return checked;
    if (auto checked = within("seasons", wanted.seasons, 1, mostSeasons); !checked) return checked;
    if (auto checked = within("year", yearOf(wanted.today), 1960, 2150); !checked) return checked;
    return within("seed", wanted.seed, 0, largestSeed);
}

Result<District> fillStore(store::Store& store, const Parameters& wanted)
{
    if (const auto checked = checkParameters(wanted); !checked) return checked.error();
    auto reader = store.reader();
    if (!reader) return reader.error();
    const auto held = store::programme(**reader, store.programme());
    if (!held) return held.error();
    if (*held) return Error{ErrorCode::StoreExists, {store.path()}};
    return Filling(store, wanted).run();
}

} // namespace duskrow::demo
