// SPDX-License-Identifier: MIT
#include "store/queries.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

template <typename R>
Result<std::optional<R>> one(Reader& reader, Selection wanted)
{
    auto found = reader.select<R>(wanted);
    if (!found) return found.error();
    if (found->empty()) return std::optional<R>{};
    return std::optional<R>{std::move(found->front())};
}

// A record asked for by name is shown even when it was withdrawn: its history can still be read.
template <typename R>
Result<std::optional<R>> byId(Reader& reader, const Uuid& id)
{
    return one<R>(reader, {.where = "id=?", .binds = {formatUuid(id)}, .withWithdrawn = true});
}

constexpr const char* ofSeason = "trap IN (SELECT id FROM now_trap WHERE season=?)";
constexpr const char* ofSeasonsWalks = "walk IN (SELECT id FROM now_walk WHERE season=?)";

} // namespace

Result<std::optional<Programme>> programme(Reader& reader, const Uuid& id)
{
    return byId<Programme>(reader, id);
}

Result<std::vector<Season>> seasons(Reader& reader)
{
    return reader.select<Season>({.order = "year"});
}

Result<std::optional<Season>> seasonOfYear(Reader& reader, int year)
{
    return one<Season>(reader, {.where = "year=?", .binds = {std::int64_t{year}}});
}

Result<std::vector<Member>> members(Reader& reader)
{
    return reader.select<Member>({.order = "name, id"});
}

Result<std::vector<District>> districts(Reader& reader)
{
    return reader.select<District>({.order = "name, id"});
}

Result<std::vector<ProtocolUse>> protocolsInUse(Reader& reader, const Uuid& season)
{
    return reader.select<ProtocolUse>({.where = "season=?", .binds = {formatUuid(season)}, .order = "pest"});
}

Result<std::vector<Site>> sitesOf(Reader& reader, const Uuid& season)
{
    return reader.select<Site>({.where = "season=?", .binds = {formatUuid(season)}, .order = "name, id"});
}

Result<std::vector<Trap>> trapsOf(Reader& reader, const Uuid& season)
{
    return reader.select<Trap>({.where = "season=?", .binds = {formatUuid(season)}});
}

Result<std::optional<Site>> site(Reader& reader, const Uuid& id)
{
    return byId<Site>(reader, id);
}

Result<std::optional<Trap>> trap(Reader& reader, const Uuid& id)
{
    return byId<Trap>(reader, id);
}

Result<std::optional<Visit>> visit(Reader& reader, const Uuid& id)
{
    return byId<Visit>(reader, id);
}

Result<std::optional<Service>> service(Reader& reader, const Uuid& id)
{
    return byId<Service>(reader, id);
}

Result<std::optional<Loan>> loan(Reader& reader, const Uuid& id)
{
    return byId<Loan>(reader, id);
}

Result<std::optional<Sample>> sample(Reader& reader, const Uuid& id)
{
    return byId<Sample>(reader, id);
}

Result<std::vector<Trap>> trapsAt(Reader& reader, const Uuid& site)
{
    return reader.select<Trap>({.where = "site=?", .binds = {formatUuid(site)}});
}

Result<std::optional<Trap>> pairOf(Reader& reader, const Trap& trap)
{
    if (trap.pairedWith.isNil())
        return one<Trap>(reader,
            {.where = "site=? AND paired_with=?", .binds = {formatUuid(trap.site), formatUuid(trap.id)}});
    return one<Trap>(reader, {.where = "id=?", .binds = {formatUuid(trap.pairedWith)}});
}

Result<std::optional<Trap>> successorOf(Reader& reader, const Trap& trap)
{
    return one<Trap>(
        reader, {.where = "site=? AND replaces=?", .binds = {formatUuid(trap.site), formatUuid(trap.id)}});
}

Result<std::vector<Visit>> visitsOf(Reader& reader, const Uuid& trap, bool withWithdrawn)
{
    return reader.select<Visit>({.where = "trap=?",
        .binds = {formatUuid(trap)},
        .order = "day, at_ms, id",
        .withWithdrawn = withWithdrawn});
}

Result<std::vector<Service>> servicesOf(Reader& reader, const Uuid& trap)
{
    return reader.select<Service>(
        {.where = "trap=?", .binds = {formatUuid(trap)}, .order = "day, at_ms, id"});
}

Result<std::vector<Sample>> samplesOf(Reader& reader, const Uuid& trap)
{
    return reader.select<Sample>({.where = "trap=?", .binds = {formatUuid(trap)}, .order = "kept_day, id"});
}

Result<std::vector<Loan>> loansOf(Reader& reader, const Uuid& trap)
{
    return reader.select<Loan>({.where = "trap=?", .binds = {formatUuid(trap)}, .order = "from_day, id"});
}

Result<std::optional<Walk>> walk(Reader& reader, const Uuid& id)
{
    return byId<Walk>(reader, id);
}

Result<std::vector<Walk>> walksOf(Reader& reader, const Uuid& season)
{
    return reader.select<Walk>(
        {.where = "season=?", .binds = {formatUuid(season)}, .order = "day DESC, at_ms DESC, id"});
}

Result<std::vector<Frame>> framesOf(Reader& reader, const Uuid& walk)
{
    return reader.select<Frame>({.where = "walk=?", .binds = {formatUuid(walk)}, .order = "day, at_ms, id"});
}

Result<std::vector<Frame>> framesOfSeason(Reader& reader, const Uuid& season)
{
    return reader.select<Frame>(
        {.where = ofSeasonsWalks, .binds = {formatUuid(season)}, .order = "walk, day, at_ms, id"});
}

Result<std::optional<Decision>> lastDecision(Reader& reader)
{
    return one<Decision>(reader, {.order = "day DESC, id DESC LIMIT 1"});
}

Result<std::vector<Decision>> decisionsOf(Reader& reader, const Uuid& walk)
{
    return reader.select<Decision>({.where = "walk=?", .binds = {formatUuid(walk)}, .order = "day, id"});
}

Result<std::vector<Decision>> decisionsOfSeason(Reader& reader, const Uuid& season)
{
    return reader.select<Decision>(
        {.where = ofSeasonsWalks, .binds = {formatUuid(season)}, .order = "walk, day, id"});
}

Result<std::vector<Visit>> visitsForDue(Reader& reader, const Uuid& season)
{
    return reader.select<Visit>({.where = ofSeason,
        .binds = {formatUuid(season)},
        .order = "trap, day, at_ms",
        .only = {"trap", "day", "at_ms", "outcome", "reason", "emptied", "pest", "state", "at_least",
            "lure_there", "strip_there", "moths_alive", "entrance_mm", "canopy_mm", "flowering_over"}});
}

Result<std::vector<Visit>> visitsForCatch(Reader& reader, const Uuid& season)
{
    return reader.select<Visit>({.where = ofSeason,
        .binds = {formatUuid(season)},
        .order = "trap, day, at_ms",
        .only = {"trap", "day", "at_ms", "outcome", "reason", "emptied", "pest", "unsure", "pest_low",
            "pest_high", "state", "at_least"}});
}

Result<std::vector<Visit>> visitsForChecks(Reader& reader, const Uuid& season)
{
    return reader.select<Visit>({.where = ofSeason,
        .binds = {formatUuid(season)},
        .order = "trap, day, at_ms",
        .only = {"trap", "day", "at_ms", "observer", "reported_how", "outcome", "reason", "emptied", "pest",
            "unsure", "count_method", "pest_low", "pest_high", "state", "at_least", "lat_e7", "lon_e7",
            "accuracy_mm"}});
}

Result<std::vector<Visit>> visitsWithoutTrap(Reader& reader, int year)
{
    const std::string text = std::to_string(year);
    return reader.select<Visit>(
        {.where = "(trap IS NULL OR trap NOT IN (SELECT id FROM now_trap WHERE withdrawn IS NULL)) "
                  "AND day BETWEEN ? AND ?",
            .binds = {text + "-01-01", text + "-12-31"},
            .order = "day, id"});
}

Result<std::vector<Ruling>> rulings(Reader& reader)
{
    return reader.select<Ruling>({});
}

Result<std::vector<Uuid>> leftOut(Reader& reader)
{
    const auto said = reader.select<Ruling>({.where = "left_out IS NOT NULL", .order = "record"});
    if (!said) return said.error();
    std::vector<Uuid> visits;
    for (const Ruling& ruling : *said)
        if (!ruling.leftOut.empty()) visits.push_back(ruling.subject);
    return visits;
}

Result<std::vector<Service>> servicesOfSeason(Reader& reader, const Uuid& season)
{
    return reader.select<Service>(
        {.where = ofSeason, .binds = {formatUuid(season)}, .order = "trap, day, at_ms"});
}

Result<std::vector<Loan>> loansOfSeason(Reader& reader, const Uuid& season)
{
    return reader.select<Loan>(
        {.where = ofSeason, .binds = {formatUuid(season)}, .order = "trap, from_day, id"});
}

Result<std::vector<Sample>> samplesOfSeason(Reader& reader, const Uuid& season)
{
    return reader.select<Sample>({.where = ofSeason, .binds = {formatUuid(season)}, .order = "trap, id"});
}

Result<std::vector<Station>> stations(Reader& reader, bool withWithdrawn)
{
    return reader.select<Station>({.order = "name, id", .withWithdrawn = withWithdrawn});
}

Result<std::vector<Temperature>> temperaturesOf(Reader& reader, const Uuid& station, bool withWithdrawn)
{
    return reader.select<Temperature>({.where = "station=?",
        .binds = {formatUuid(station)},
        .order = "day, id",
        .withWithdrawn = withWithdrawn});
}

} // namespace duskrow::store
