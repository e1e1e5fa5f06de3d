// SPDX-License-Identifier: MIT
#include "domain/rules/region_years.h"

#include <map>

namespace duskrow::domain {

namespace {

struct Gathered {
    std::vector<double> catches;
    std::size_t minimum = 0;
    std::size_t uncounted = 0;

    void take(const TrapOfYear& trap)
    {
        if (!trap.isCounted)
            ++uncounted;
        else if (trap.isMinimum)
            ++minimum;
        else
            catches.push_back(static_cast<double>(trap.soFar.value()));
    }

    [[nodiscard]] GroupOfYear of(const Uuid& group)
    {
        return {group, spreadOf(std::move(catches)), minimum, uncounted};
    }
};

std::vector<GroupOfYear> grouped(std::span<const TrapOfYear> traps, Uuid TrapOfYear::*by)
{
    std::map<Uuid, Gathered> groups;
    for (const TrapOfYear& trap : traps) groups[trap.*by].take(trap);
    std::vector<GroupOfYear> made;
    made.reserve(groups.size());
    for (auto& [id, group] : groups) made.push_back(group.of(id));
    return made;
}

} // namespace

LocalDay sameDayIn(LocalDay day, int year)
{
    const std::chrono::year_month_day date{day};
    const std::chrono::year_month_day same{std::chrono::year{year}, date.month(), date.day()};
    if (same.ok()) return LocalDay{same};
    return LocalDay{std::chrono::year{year} / date.month() / std::chrono::last};
}

RegionYear regionYear(int year, LocalDay on, std::span<const TrapOfYear> traps, std::size_t levels)
{
    RegionYear made;
    made.year = year;
    made.on = on;
    made.inBand.resize(levels);
    Gathered all;
    for (const TrapOfYear& trap : traps) {
        all.take(trap);
        if (trap.level && *trap.level < levels)
            ++made.inBand[*trap.level];
        else
            ++made.bandless;
    }
    made.all = all.of({});
    made.districts = grouped(traps, &TrapOfYear::district);
    made.keepers = grouped(traps, &TrapOfYear::keeper);
    return made;
}

} // namespace duskrow::domain
