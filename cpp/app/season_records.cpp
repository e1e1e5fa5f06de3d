// SPDX-License-Identifier: MIT
#include "app/season_records.h"

#include <algorithm>
#include <span>

#include "app/trap_words.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// SQLite orders ids by their bytes, as Uuid does: what was read "by trap" can be searched.
template <typename R>
std::span<const R> ofTrap(const std::vector<R>& records, const Uuid& trap)
{
    const auto first = std::partition_point(
        records.begin(), records.end(), [&](const R& record) { return record.trap < trap; });
    const auto last =
        std::partition_point(first, records.end(), [&](const R& record) { return record.trap == trap; });
    return {first, last};
}

} // namespace

Viewer Viewer::of(const std::optional<Member>& me)
{
    if (!me) return {};
    return {me->id, me->name, me->role && *me->role != Role::Grower};
}

Result<SeasonRecords> SeasonRecords::read(store::Reader& reader, const Uuid& season, VisitFields fields)
{
    auto sites = store::sitesOf(reader, season);
    if (!sites) return sites.error();
    auto traps = store::trapsOf(reader, season);
    if (!traps) return traps.error();
    auto visits = fields == VisitFields::ForDue ? store::visitsForDue(reader, season)
                                                : store::visitsForCatch(reader, season);
    if (!visits) return visits.error();
    auto services = store::servicesOfSeason(reader, season);
    if (!services) return services.error();
    auto samples = store::samplesOfSeason(reader, season);
    if (!samples) return samples.error();
    auto loans = store::loansOfSeason(reader, season);
    if (!loans) return loans.error();
    auto leftOut = store::leftOut(reader);
    if (!leftOut) return leftOut.error();
    SeasonRecords records;
    records.m_leftOut = std::move(*leftOut);
    records.m_sites = std::move(*sites);
    std::sort(records.m_sites.begin(), records.m_sites.end(),
        [](const Site& a, const Site& b) { return a.id < b.id; });
    records.m_traps = std::move(*traps);
    records.m_visits = std::move(*visits);
    records.m_services = std::move(*services);
    records.m_samples = std::move(*samples);
    records.m_loans = std::move(*loans);
    return records;
}

TrapFacts SeasonRecords::factsOf(const Trap& trap) const
{
    return {
        trap, ofTrap(m_visits, trap.id), ofTrap(m_services, trap.id), ofTrap(m_samples, trap.id), m_leftOut};
}

const Site* SeasonRecords::siteOf(const Trap& trap) const
{
    const auto found = std::partition_point(
        m_sites.begin(), m_sites.end(), [&](const Site& site) { return site.id < trap.site; });
    return found != m_sites.end() && found->id == trap.site ? &*found : nullptr;
}

const Loan* SeasonRecords::loanOf(const Trap& trap, LocalDay today) const
{
    for (const Loan& loan : ofTrap(m_loans, trap.id))
        if ((!loan.fromDay || *loan.fromDay <= today) && (!loan.untilDay || *loan.untilDay >= today))
            return &loan;
    return nullptr;
}

bool SeasonRecords::isShownTo(const Viewer& viewer, const Site& site)
{
    return viewer.seesAll || site.keeper.isNil() || site.keeper == viewer.member;
}

bool SeasonRecords::isShownTo(const Viewer& viewer, const Trap& trap, LocalDay today) const
{
    const Site* site = siteOf(trap);
    if (!site || isShownTo(viewer, *site)) return true;
    const Loan* loan = loanOf(trap, today);
    if (!loan) return false;
    return loan->member.isNil() ? loan->borrower == viewer.name : loan->member == viewer.member;
}

QString SeasonRecords::titleOf(const Trap& trap) const
{
    const Site* site = siteOf(trap);
    return site ? trapTitle(*site, trap) : tagWords(trap);
}

} // namespace duskrow::app
