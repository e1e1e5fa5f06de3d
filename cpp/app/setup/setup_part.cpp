// SPDX-License-Identifier: MIT
#include "app/setup/setup_part.h"

#include <algorithm>

#include "store/queries.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

template <typename R>
const R* find(const std::vector<R>& records, const Uuid& id)
{
    const auto found =
        std::find_if(records.begin(), records.end(), [&](const R& record) { return record.id == id; });
    return found == records.end() ? nullptr : &*found;
}

Result<std::vector<CanopyHeight>> heightsAt(store::Reader& reader, const Uuid& replaced)
{
    std::vector<CanopyHeight> heights;
    if (replaced.isNil()) return heights;
    const auto trap = store::trap(reader, replaced);
    if (!trap) return trap.error();
    if (*trap && (*trap)->setDay && (*trap)->canopy) heights.push_back({*(*trap)->setDay, *(*trap)->canopy});
    const auto visits = store::visitsOf(reader, replaced);
    if (!visits) return visits.error();
    for (const Visit& visit : *visits)
        if (visit.day && visit.canopy) heights.push_back({*visit.day, *visit.canopy});
    return heights;
}

} // namespace

const Site* SetupFacts::site(const Uuid& id) const
{
    return find(sites, id);
}

const Trap* SetupFacts::trap(const Uuid& id) const
{
    return find(traps, id);
}

bool stands(const Trap& trap)
{
    return !trap.endDay && !trap.endReason;
}

Result<SetupFacts> lookUpSetupFacts(
    store::Reader& reader, const Uuid& season, const Uuid& me, const Uuid& replaced)
{
    SetupFacts facts;
    auto districts = store::districts(reader);
    if (!districts) return districts.error();
    auto sites = store::sitesOf(reader, season);
    if (!sites) return sites.error();
    auto traps = store::trapsOf(reader, season);
    if (!traps) return traps.error();
    const auto uses = store::protocolsInUse(reader, season);
    if (!uses) return uses.error();
    auto heights = heightsAt(reader, replaced);
    if (!heights) return heights.error();

    facts.isKnown = true;
    facts.districts = std::move(*districts);
    facts.sites = std::move(*sites);
    std::stable_sort(facts.sites.begin(), facts.sites.end(), [&](const Site& a, const Site& b) {
        const bool mineA = a.keeper == me;
        const bool mineB = b.keeper == me;
        return mineA != mineB ? mineA : a.name < b.name;
    });
    facts.traps = std::move(*traps);
    for (const ProtocolUse& use : *uses) facts.pests.push_back(use.pest);
    facts.heights = std::move(*heights);
    return facts;
}

SetupPart::SetupPart(Session& session, const SetupFacts& facts, QObject* parent)
    : QObject(parent), m_session(session), m_facts(facts)
{
    connect(this, &SetupPart::edited, this, &SetupPart::changed);
}

QString SetupPart::today() const
{
    return QString::fromStdString(formatDay(m_session.clock().today()));
}

QString SetupPart::complaint(const RecordKind& kind, std::string_view field, const QString& text)
{
    const auto checked = checkValue(*kind.find(field), Value{clean(text)});
    return checked ? QString() : text::sentence(checked.error());
}

QString local(const LocalText& text)
{
    return QString::fromStdString(text.in(Session::language()));
}

std::string clean(const QString& text)
{
    return text.trimmed().toStdString();
}

std::optional<LocalDay> dayIn(const QString& text)
{
    const auto day = parseDay(text.toStdString());
    return day ? std::optional(*day) : std::nullopt;
}

QString idText(const Uuid& id)
{
    return id.isNil() ? QString() : QString::fromStdString(formatUuid(id));
}

Uuid idIn(const QString& text)
{
    return parseUuid(text.toStdString()).value_or(Uuid{});
}

} // namespace duskrow::app
