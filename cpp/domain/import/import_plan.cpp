// SPDX-License-Identifier: MIT
#include "domain/import/import_plan.h"

#include <algorithm>
#include <boost/container/flat_map.hpp>
#include <tuple>
#include <unordered_map>

#include "domain/base/plain_word.h"

namespace duskrow::domain {

namespace {

constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

template <typename R>
bool wasUndone(const R& record)
{
    return record.withdrawn.starts_with(undoneReason);
}

// A trap of the table while its rows are gathered.
struct TrapWork {
    Trap trap;
    bool isNew = false;
    std::optional<Error> error; // none of its rows can be taken
    std::size_t placeLine = 0;
    std::vector<std::uint32_t> rows; // that are made of it or there already
    boost::container::flat_map<LocalDay, std::uint32_t> byDay; // the row that is made
};

class Planner {
public:
    Planner(std::vector<CountRow> rows, RowWords refused, const KnownRecords& known, const ImportTerms& terms)
        : m_known(known), m_terms(terms)
    {
        m_plan.rows = std::move(rows);
        m_plan.refused = std::move(refused);
        m_plan.emptied = terms.emptied;
        for (const KnownVisit& visit : known.visits) m_visits[visit.trap].push_back(&visit);
    }

    ImportPlan plan()
    {
        for (std::uint32_t i = 0; i < m_plan.rows.size(); ++i) take(i);
        for (TrapWork& work : m_work) finish(work);
        m_plan.places = std::move(m_seasons);
        for (auto* part : {&m_uses, &m_districts, &m_sites, &m_traps})
            std::move(part->begin(), part->end(), std::back_inserter(m_plan.places));
        for (const Edit& edit : m_plan.places) ++m_plan.made[edit.kind];
        if (!m_plan.visits.empty()) m_plan.made["visit"] = m_plan.visits.size();
        std::sort(m_plan.visits.begin(), m_plan.visits.end(),
            [](const PlannedVisit& a, const PlannedVisit& b) { return a.id < b.id; });
        return std::move(m_plan);
    }

private:
    void refuse(const CountRow& row, Error error) { m_plan.refused.add({row.line, {}, std::move(error)}); }

    // Whether a record with a derived id may be made: not when somebody took it back. One that an undoing
    // took back stands again.
    template <typename R>
    Result<Done> make(
        const R& record, const Uuid& site, const std::vector<R>& there, std::vector<Edit>& edits)
    {
        const auto found =
            std::find_if(there.begin(), there.end(), [&](const R& known) { return known.id == record.id; });
        Edit edit = creation(record, site);
        if (found != there.end()) {
            if (!found->withdrawn.empty() && !wasUndone(*found))
                return Error{ErrorCode::RecordWithdrawn, {edit.kind, found->withdrawn}};
            if (found->withdrawn.empty()) return Done{};
            edit = correction(*found, record, site);
        }
        edits.push_back(std::move(edit));
        return Done{};
    }

    Result<Uuid> seasonOf(int year)
    {
        if (const auto made = m_seasonIds.find(year); made != m_seasonIds.end()) return made->second;
        const Season* nearest = nullptr;
        for (const Season& season : m_known.seasons) {
            if (!season.withdrawn.empty() || !season.year) continue;
            if (season.year == year) return m_seasonIds[year] = useOf(season.id);
            if (!nearest || std::abs(*season.year - year) < std::abs(*nearest->year - year))
                nearest = &season;
        }
        Season season = nearest ? *nearest : Season{};
        season.fromNewer.clear();
        season.id = seasonId(m_terms.programme, year);
        season.year = year;
        if (const auto made = make(season, {}, m_known.seasons, m_seasons); !made) return made.error();
        return m_seasonIds[year] = useOf(season.id);
    }

    // The season with the pest in use.
    Uuid useOf(const Uuid& season)
    {
        for (const ProtocolUse& use : m_known.uses)
            if (use.season == season && use.pest == m_terms.pest && use.withdrawn.empty()) return season;
        ProtocolUse use;
        use.id = protocolUseId(m_terms.programme, season, m_terms.pest);
        use.season = season;
        use.pest = m_terms.pest;
        use.version = m_terms.protocolVersion;
        static_cast<void>(make(use, {}, m_known.uses, m_uses).has_value()); // taken back by hand: left so
        return season;
    }

    Result<Uuid> districtOf(const CountRow& row)
    {
        if (row.district.empty()) return Uuid{};
        const std::string name = plainWord(row.district);
        if (const auto made = m_districtIds.find(name); made != m_districtIds.end()) return made->second;
        for (const District& district : m_known.districts)
            if (district.withdrawn.empty() && plainWord(district.name) == name)
                return m_districtIds[name] = district.id;
        District district;
        district.id = districtId(m_terms.programme, name);
        district.name = row.district;
        if (const auto made = make(district, {}, m_known.districts, m_districts); !made) return made.error();
        return m_districtIds[name] = district.id;
    }

    Result<Uuid> siteOf(const CountRow& row, const Uuid& season)
    {
        const auto district = districtOf(row);
        if (!district) return district.error();
        const std::string name = plainWord(row.site);
        const auto key = std::tuple(season, *district, name);
        if (const auto made = m_siteIds.find(key); made != m_siteIds.end()) return made->second;
        std::vector<const Site*> found;
        for (const Site& site : m_known.sites)
            if (site.withdrawn.empty() && site.season == season && plainWord(site.name) == name
                && (row.district.empty() || site.district.isNil() || site.district == *district))
                found.push_back(&site);
        if (found.size() > 1) return Error{ErrorCode::NameAmbiguous, {"site", row.site}};
        if (!found.empty()) return m_siteIds[key] = found.front()->id;
        Site site;
        site.id = siteId(m_terms.programme, season, plainWord(row.district), name);
        site.season = season;
        site.district = *district;
        site.name = row.site;
        site.field = row.field;
        site.crop = row.crop;
        if (const auto made = make(site, site.id, m_known.sites, m_sites); !made) return made.error();
        return m_siteIds[key] = site.id;
    }

    TrapWork trapOf(const CountRow& row)
    {
        TrapWork work;
        const auto season = seasonOf(row.year);
        const auto site = season ? siteOf(row, *season) : season;
        if (!site) {
            work.error = site.error();
            return work;
        }
        const std::string tag = plainWord(row.tag);
        std::vector<const Trap*> found;
        for (const Trap* trap : trapsAt(*site))
            if (trap->withdrawn.empty() && trap->pest == m_terms.pest
                && (tag.empty() || plainWord(trap->tag) == tag))
                found.push_back(trap);
        if (found.size() > 1)
            work.error = Error{ErrorCode::NameAmbiguous, {"trap", row.site + ' ' + row.tag}};
        if (found.size() == 1) work.trap = *found.front();
        if (!found.empty()) return work;
        work.isNew = true;
        work.trap.id = trapId(m_terms.programme, *site, m_terms.pest, tag);
        work.trap.site = *site;
        work.trap.season = *season;
        work.trap.tag = row.tag;
        work.trap.pest = m_terms.pest;
        work.trap.protocolVersion = m_terms.protocolVersion;
        work.trap.trapType = m_terms.trapType;
        return work;
    }

    const std::vector<const Trap*>& trapsAt(const Uuid& site)
    {
        if (m_trapsAt.empty())
            for (const Trap& trap : m_known.traps) m_trapsAt[trap.site].push_back(&trap);
        return m_trapsAt[site];
    }

    // Most often a row is of the trap of the one before it.
    std::uint32_t workOf(std::uint32_t at)
    {
        const CountRow& row = m_plan.rows[at];
        const CountRow* before = at > 0 ? &m_plan.rows[at - 1] : nullptr;
        if (!before || before->year != row.year || before->site != row.site || before->tag != row.tag
            || before->district != row.district)
            m_lastWork = workBySpelling(row);
        return m_lastWork;
    }

    std::uint32_t workBySpelling(const CountRow& row)
    {
        std::string key = std::to_string(row.year);
        for (const std::string* part : {&row.district, &row.site, &row.tag})
            key.append(1, '\0').append(*part);
        const auto [found, isNew] = m_bySpelling.try_emplace(std::move(key), none);
        if (!isNew) return found->second;
        TrapWork work = trapOf(row);
        if (work.error) {
            m_work.push_back(std::move(work));
            return found->second = static_cast<std::uint32_t>(m_work.size() - 1);
        }
        // Another spelling of the same names comes to the same trap.
        const auto [known, isFirst] =
            m_byTrap.try_emplace(work.trap.id, static_cast<std::uint32_t>(m_work.size()));
        if (isFirst) m_work.push_back(std::move(work));
        return found->second = known->second;
    }

    void take(std::uint32_t at)
    {
        const CountRow& row = m_plan.rows[at];
        const std::uint32_t trap = workOf(at);
        TrapWork& work = m_work[trap];
        if (work.error) return refuse(row, *work.error);
        if (work.isNew) notePlace(work, row);
        const auto [day, isFirst] = work.byDay.try_emplace(row.day, at);
        if (!isFirst) {
            const CountRow& before = m_plan.rows[day->second];
            if (before.pest == row.pest) {
                ++m_plan.repeated;
                return;
            }
            return refuse(row,
                {ErrorCode::CountKept, {std::to_string(before.line), std::to_string(before.pest.value())}});
        }
        PlannedVisit visit{visitId(m_terms.programme, work.trap.id, row.day), trap, at, false};
        if (const auto there = weigh(work.trap.id, row, visit); !there)
            refuse(row, there.error());
        else if (*there) {
            ++m_plan.alreadyThere;
            work.rows.push_back(at);
        } else {
            m_plan.visits.push_back(visit);
            work.rows.push_back(at);
        }
    }

    // Whether the store holds the row already.
    Result<bool> weigh(const Uuid& trap, const CountRow& row, PlannedVisit& planned)
    {
        const auto known = m_visits.find(trap);
        if (known == m_visits.end()) return false;
        const KnownVisit* other = nullptr;
        for (const KnownVisit* visit : known->second) {
            if (visit->day != row.day) continue;
            if (!visit->withdrawn.empty()) {
                if (visit->id != planned.id) continue;
                if (!wasUndone(*visit)) return Error{ErrorCode::RecordWithdrawn, {"visit", visit->withdrawn}};
                planned.standsAgain = true;
                continue;
            }
            if (visit->outcome == Outcome::Counted && visit->pest == row.pest) return true;
            other = visit;
        }
        if (!other) return false;
        const std::string said = other->pest ? std::to_string(other->pest->value()) : std::string("?");
        return Error{ErrorCode::CountDiffers, {said}};
    }

    void notePlace(TrapWork& work, const CountRow& row)
    {
        if (row.setDay && (!work.trap.setDay || *row.setDay < *work.trap.setDay))
            work.trap.setDay = row.setDay;
        if (!row.place) return;
        if (!work.trap.latE7) {
            work.trap.latE7 = row.place->latE7;
            work.trap.lonE7 = row.place->lonE7;
            work.trap.fixMethod = FixMethod::Typed;
            work.placeLine = row.line;
        } else if (*work.trap.latE7 != row.place->latE7 || *work.trap.lonE7 != row.place->lonE7) {
            m_plan.notes.add({row.line, {}, {ErrorCode::PlaceDiffers, {std::to_string(work.placeLine)}}});
        }
    }

    // With all its rows at hand: when the trap was set up, and whether the nights fit the days.
    void finish(TrapWork& work)
    {
        m_plan.traps.push_back({work.trap.id, work.trap.site});
        if (work.error || work.rows.empty()) return;
        std::sort(work.rows.begin(), work.rows.end(),
            [&](std::uint32_t a, std::uint32_t b) { return m_plan.rows[a].day < m_plan.rows[b].day; });
        const CountRow& first = m_plan.rows[work.rows.front()];
        if (work.isNew && !work.trap.setDay) work.trap.setDay = first.fromDay;
        std::optional<LocalDay> before = work.trap.setDay;
        for (const std::uint32_t at : work.rows) {
            const CountRow& row = m_plan.rows[at];
            if (row.fromDay && before && *row.fromDay != *before)
                m_plan.notes.add({row.line, {},
                    {ErrorCode::NightsDiffer,
                        {std::to_string(nightsBetween(*row.fromDay, row.day).value()),
                            std::to_string(nightsBetween(*before, row.day).value())}}});
            before = row.day;
        }
        if (!work.isNew) return;
        if (!work.trap.setDay) ++m_plan.trapsWithoutSetDay;
        if (const auto made = make(work.trap, work.trap.site, m_known.traps, m_traps); !made)
            withdrawRows(work, made.error());
    }

    // The trap was taken back by hand: its rows are not made either.
    void withdrawRows(const TrapWork& work, const Error& error)
    {
        std::erase_if(m_plan.visits,
            [&](const PlannedVisit& visit) { return m_work[visit.trap].trap.id == work.trap.id; });
        for (const std::uint32_t at : work.rows) refuse(m_plan.rows[at], error);
    }

    const KnownRecords& m_known;
    const ImportTerms& m_terms;
    ImportPlan m_plan;
    std::vector<TrapWork> m_work;
    std::uint32_t m_lastWork = none;
    std::unordered_map<std::string, std::uint32_t> m_bySpelling;
    std::map<Uuid, std::uint32_t> m_byTrap;
    std::map<Uuid, std::vector<const KnownVisit*>> m_visits;
    std::map<Uuid, std::vector<const Trap*>> m_trapsAt;
    std::map<int, Uuid> m_seasonIds;
    std::map<std::string, Uuid> m_districtIds;
    std::map<std::tuple<Uuid, Uuid, std::string>, Uuid> m_siteIds;
    std::vector<Edit> m_seasons;
    std::vector<Edit> m_uses;
    std::vector<Edit> m_districts;
    std::vector<Edit> m_sites;
    std::vector<Edit> m_traps;
};

} // namespace

ImportPlan planImport(
    std::vector<CountRow> rows, RowWords refused, const KnownRecords& known, const ImportTerms& terms)
{
    return Planner(std::move(rows), std::move(refused), known, terms).plan();
}

std::vector<std::string> ImportPlan::newNames(std::string_view kind) const
{
    std::vector<std::string> names;
    for (const Edit& edit : places) {
        if (edit.kind != kind) continue;
        const auto found = edit.fields.find("name");
        const auto* name = found == edit.fields.end() ? nullptr : std::get_if<std::string>(&found->second);
        if (name && std::find(names.begin(), names.end(), *name) == names.end()) names.push_back(*name);
    }
    return names;
}

Edit ImportPlan::edit(std::size_t at) const
{
    if (at < places.size()) return places[at];
    const PlannedVisit& planned = visits[at - places.size()];
    const CountRow& row = rows[planned.row];
    const PlannedTrap& trap = traps[planned.trap];
    Edit edit{"visit", planned.id, trap.site, {}};
    auto& fields = edit.fields;
    fields.reserve(8);
    if (planned.standsAgain) fields.emplace("withdrawn", Value{});
    fields.emplace("trap", formatUuid(trap.id));
    fields.emplace("day", formatDay(row.day));
    fields.emplace("outcome", std::string(outcomeNames[static_cast<std::size_t>(Outcome::Counted)]));
    fields.emplace("pest", row.pest.value());
    if (const auto wasEmptied = row.emptied ? row.emptied : emptied; wasEmptied)
        fields.emplace("emptied", *wasEmptied);
    if (row.notIt) fields.emplace("not_it", row.notIt->value());
    if (row.bees) fields.emplace("bees", row.bees->value());
    if (row.entrance) fields.emplace("entrance_mm", row.entrance->value());
    if (row.canopy) fields.emplace("canopy_mm", row.canopy->value());
    if (!row.observer.empty()) fields.emplace("observer", row.observer);
    if (!row.remark.empty()) fields.emplace("remark", row.remark);
    return edit;
}

} // namespace duskrow::domain
