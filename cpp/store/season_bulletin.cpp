// SPDX-License-Identifier: MIT
#include "store/season_bulletin.h"

#include <algorithm>
#include <map>

#include "domain/base/take.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/season_week.h"
#include "store/season_records.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

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
    const auto records = seasonRecords(reader, season, VisitsFor::Catch);
    if (!records) return records.error();
    std::vector<District> known;
    if (auto error = take(districts(reader), known)) return *error;
    SeasonWeek rhythm = seasonWeekOf(season).value_or(SeasonWeek{});
    const std::chrono::year year{season.year.value_or(yearOf(week.last))};
    const SeasonRules rules = seasonRulesOf(protocol, year, rhythm.weekStart, week.last);
    SeasonReports made;
    std::sort(known.begin(), known.end(),
        [](const District& a, const District& b) { return std::tie(a.name, a.id) < std::tie(b.name, b.id); });
    std::map<Uuid, std::size_t> numbers;
    for (const District& district : known) {
        numbers[district.id] = made.districts.size();
        made.districts.push_back(district.id);
        made.names.push_back(district.name);
    }
    const Farms farms(records->sites);
    for (const Trap& trap : records->traps) {
        if (trap.pest != kind.pest || trap.trapType != kind.trapType) continue;
        const Site* site = records->siteOf(trap);
        const auto number = site ? numbers.find(site->district) : numbers.end();
        made.reports.push_back(
            weekReport(records->facts(trap), week, rhythm, rules, site ? farms.of(site->keeper) : Uuid{},
                number == numbers.end() ? std::nullopt : std::optional(number->second)));
    }
    return made;
}

} // namespace duskrow::store
