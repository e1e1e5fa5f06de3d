// SPDX-License-Identifier: MIT
#include "store/season_bulletin.h"

#include <algorithm>
#include <map>

#include "domain/base/take.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/season_week.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

struct SeasonRead {
    std::vector<Trap> traps;
    std::vector<Site> sites;
    std::vector<District> districts;
    std::vector<Visit> visits; // these by trap
    std::vector<Service> services;
    std::vector<Sample> samples;
    std::vector<Uuid> leftOut;
};

std::optional<Error> read(Reader& reader, const Season& season, SeasonRead& records)
{
    if (auto error = take(trapsOf(reader, season.id), records.traps)) return error;
    if (auto error = take(sitesOf(reader, season.id), records.sites)) return error;
    if (auto error = take(districts(reader), records.districts)) return error;
    if (auto error = take(visitsForCatch(reader, season.id), records.visits)) return error;
    if (auto error = take(servicesOfSeason(reader, season.id), records.services)) return error;
    if (auto error = take(leftOut(reader), records.leftOut)) return error;
    return take(samplesOfSeason(reader, season.id), records.samples);
}

template <typename R>
std::map<Uuid, std::vector<R>> byTrap(std::vector<R> records)
{
    std::map<Uuid, std::vector<R>> found;
    for (R& record : records) found[record.trap].push_back(std::move(record));
    return found;
}

template <typename R>
std::span<const R> ofTrap(const std::map<Uuid, std::vector<R>>& records, const Uuid& trap)
{
    const auto found = records.find(trap);
    return found == records.end() ? std::span<const R>{} : std::span<const R>{found->second};
}

// Joins what belongs to one farm: the first of its keepers stands for it.
class Farms {
public:
    explicit Farms(const std::vector<Site>& sites)
    {
        std::map<std::string, Uuid> ofLandowner;
        for (const Site& site : sites) {
            if (site.landowner.empty()) continue;
            const auto [known, isNew] = ofLandowner.emplace(site.landowner, site.keeper);
            if (!isNew) m_joined[of(site.keeper)] = of(known->second);
        }
    }

    [[nodiscard]] Uuid of(Uuid keeper) const
    {
        for (auto next = m_joined.find(keeper); next != m_joined.end() && next->second != keeper;
             next = m_joined.find(keeper))
            keeper = next->second;
        return keeper;
    }

private:
    std::map<Uuid, Uuid> m_joined;
};

} // namespace

Result<TrapKind> mostCommonKind(Reader& reader, const Season& season, const std::string& pest)
{
    const auto traps = trapsOf(reader, season.id);
    if (!traps) return traps.error();
    std::map<std::pair<std::string, std::string>, std::size_t> kinds;
    for (const Trap& trap : *traps)
        if (pest.empty() || trap.pest == pest) ++kinds[{trap.pest, trap.trapType}];
    const auto most = std::max_element(
        kinds.begin(), kinds.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == kinds.end()) return Error{ErrorCode::NameMissing, {"pest", pest}};
    return TrapKind{most->first.first, most->first.second};
}

Result<SeasonReports> reportsOfWeek(Reader& reader, const Season& season, const Protocol& protocol,
    const TrapKind& kind, const ReportingWeek& week)
{
    SeasonRead records;
    if (auto error = read(reader, season, records)) return *error;
    SeasonWeek rhythm = seasonWeekOf(season).value_or(SeasonWeek{});
    const std::chrono::year year{season.year.value_or(yearOf(week.last))};
    const SeasonRules rules = seasonRulesOf(protocol, year, rhythm.weekStart, week.last);
    SeasonReports made;
    std::sort(records.districts.begin(), records.districts.end(),
        [](const District& a, const District& b) { return std::tie(a.name, a.id) < std::tie(b.name, b.id); });
    std::map<Uuid, std::size_t> numbers;
    for (const District& district : records.districts) {
        numbers[district.id] = made.districts.size();
        made.districts.push_back(district.id);
        made.names.push_back(district.name);
    }
    const Farms farms(records.sites);
    std::map<Uuid, const Site*> sites;
    for (const Site& site : records.sites) sites[site.id] = &site;
    const auto visits = byTrap(std::move(records.visits));
    const auto services = byTrap(std::move(records.services));
    const auto samples = byTrap(std::move(records.samples));
    for (const Trap& trap : records.traps) {
        if (trap.pest != kind.pest || trap.trapType != kind.trapType) continue;
        const auto site = sites.find(trap.site);
        const bool isKnown = site != sites.end();
        const auto number = isKnown ? numbers.find(site->second->district) : numbers.end();
        made.reports.push_back(weekReport({trap, ofTrap(visits, trap.id), ofTrap(services, trap.id),
                                              ofTrap(samples, trap.id), records.leftOut},
            week, rhythm, rules, isKnown ? farms.of(site->second->keeper) : Uuid{},
            number == numbers.end() ? std::nullopt : std::optional(number->second)));
    }
    return made;
}

} // namespace duskrow::store
