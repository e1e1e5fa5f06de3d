// SPDX-License-Identifier: MIT
#include "app/today_stops.h"

#include <algorithm>
#include <tuple>

#include "app/exchange/people.h"
#include "app/trap_words.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/trap_now.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Scouting is a window of days, not a stop that somebody waits for.
bool calls(const DueItem& item, LocalDay today)
{
    return item.what != DueWhat::ScoutingWindow && item.day <= today;
}

bool isWithinSight(const DueItem& item, LocalDay today)
{
    const auto ahead = item.what == DueWhat::ScoutingWindow ? scoutingAhead : weekAhead;
    return item.day <= today + ahead;
}

void countReports(TodayFound& found, const std::vector<DueItem>& items, const TodayAsk& ask)
{
    const auto report = reportDue(ask.today, ask.week);
    for (const DueItem& item : items) {
        if (item.what != DueWhat::Count) continue;
        found.isCounting = true;
        if (report && item.day <= report->countDay) ++found.countsToReport;
    }
}

std::optional<Stop> stopOf(
    const SeasonRecords& records, const Trap& trap, std::vector<DueItem> items, const TodayAsk& ask)
{
    std::erase_if(items, [&](const DueItem& item) { return !isWithinSight(item, ask.today); });
    if (items.empty()) return std::nullopt;
    Stop stop{.trap = trap.id, .title = records.titleOf(trap), .site = {}};
    stop.items = std::move(items);
    // As one does them: the count first, the walk for larvae last.
    std::stable_sort(stop.items.begin(), stop.items.end(),
        [](const DueItem& a, const DueItem& b) { return a.what < b.what; });
    if (const Site* site = records.siteOf(trap)) stop.site = QString::fromStdString(site->name);
    stop.place = trapNow(records.factsOf(trap), ask.today).place;
    const Loan* loan = records.loanOf(trap, ask.today);
    if (loan && loan->borrower != ask.viewer.name) stop.lentTo = QString::fromStdString(loan->borrower);
    return stop;
}

Result<QString> titleOfTrap(store::Reader& reader, const Uuid& id)
{
    const auto trap = store::trap(reader, id);
    if (!trap) return trap.error();
    if (!*trap) return QString();
    const auto site = store::site(reader, (*trap)->site);
    if (!site) return site.error();
    return *site ? trapTitle(**site, **trap) : tagWords(**trap);
}

Result<std::optional<OpenDraft>> draftOf(store::Reader& reader, const std::string& key)
{
    const auto slash = key.find('/');
    const std::string kind = key.substr(0, slash);
    const std::string subject = slash == std::string::npos ? std::string() : key.substr(slash + 1);
    OpenDraft draft{
        QString::fromStdString(key), {}, QString::fromStdString(kind), QString::fromStdString(subject)};
    if (kind == "setup") return std::optional(draft);
    const auto id = parseUuid(subject);
    if (!id || (kind != "visit" && kind != "visit-edit")) return std::optional<OpenDraft>{};
    Uuid trap = *id;
    if (kind == "visit-edit") {
        const auto visit = store::visit(reader, *id);
        if (!visit) return visit.error();
        if (!*visit) return std::optional<OpenDraft>{};
        trap = (*visit)->trap;
        draft.route = QStringLiteral("visit");
        draft.subject = QStringLiteral("edit:") + draft.subject;
    }
    auto title = titleOfTrap(reader, trap);
    if (!title) return title.error();
    draft.title = *title;
    return std::optional(draft);
}

Result<Done> findDrafts(store::Reader& reader, TodayFound& found)
{
    const auto keys = reader.draftKeys();
    if (!keys) return keys.error();
    for (const std::string& key : *keys) {
        const auto draft = draftOf(reader, key);
        if (!draft) return draft.error();
        if (*draft) found.drafts.push_back(**draft);
    }
    return Done{};
}

} // namespace

const DueRules* RulesByTrap::of(const Trap& trap)
{
    const auto protocol = m_ask.protocols.find(trap.pest);
    if (protocol == m_ask.protocols.end() || !protocol->second) return nullptr;
    const auto [held, isNew] = m_rules.try_emplace({trap.pest, trap.trapType});
    if (isNew)
        held->second =
            dueRulesOf(*protocol->second, trap.trapType, std::chrono::year{m_ask.year}, m_ask.week);
    return &held->second;
}

Result<std::optional<TodayAsk>> todayAskOf(Session& session)
{
    const auto& season = session.season();
    if (!season) return std::optional<TodayAsk>{};
    const LocalDay today = session.clock().today();
    TodayAsk ask{.season = season->id,
        .year = season->year.value_or(yearOf(today)),
        .today = today,
        .week = seasonWeekOf(*season).value_or(SeasonWeek{}),
        .viewer = Viewer::of(session.me()),
        .programme = session.store().programme(),
        .own = session.store().stream(),
        .protocols = {}};
    const auto uses = store::protocolsInUse(session.reader(), season->id);
    if (!uses) return uses.error();
    for (const ProtocolUse& use : *uses) ask.protocols[use.pest] = session.protocol(use.pest);
    return std::optional(ask);
}

bool Stop::isDue(LocalDay today) const
{
    return lentTo.isEmpty()
        && std::any_of(items.begin(), items.end(), [&](const DueItem& item) { return calls(item, today); });
}

bool Stop::has(DueWhat what, LocalDay today) const
{
    return std::any_of(items.begin(), items.end(),
        [&](const DueItem& item) { return item.what == what && item.day <= today; });
}

LocalDay Stop::day() const
{
    return std::min_element(items.begin(), items.end(), [](const DueItem& a, const DueItem& b) {
        return a.day < b.day;
    })->day;
}

TodayFound findStops(const SeasonRecords& records, const TodayAsk& ask)
{
    TodayFound found;
    found.visits = records.visits();
    RulesByTrap rules(ask);
    for (const Trap& trap : records.traps()) {
        if (!records.isShownTo(ask.viewer, trap, ask.today)) continue;
        ++found.traps;
        const DueRules* ofTrap = rules.of(trap);
        if (!ofTrap) continue;
        auto items = dueOf(records.factsOf(trap), *ofTrap, ask.today);
        countReports(found, items, ask);
        auto stop = stopOf(records, trap, std::move(items), ask);
        if (stop) found.stops.push_back(std::move(*stop));
    }
    return found;
}

Result<TodayFound> findStops(store::Reader& reader, const TodayAsk& ask)
{
    const auto records = SeasonRecords::read(reader, ask.season, VisitFields::ForDue);
    if (!records) return records.error();
    TodayFound found = findStops(*records, ask);
    if (const auto drafts = findDrafts(reader, found); !drafts) return drafts.error();
    auto news = latestNews(reader, ask.season, ask.viewer.member);
    if (!news) return news.error();
    found.news = std::move(*news);
    const auto people = People::read(reader, ask.programme, ask.own);
    if (!people) return people.error();
    found.hasOthers = people->hasOthers();
    const auto own = store::handedOver(reader, ask.own);
    if (!own) return own.error();
    found.own = *own;
    return found;
}

void rankStops(std::vector<Stop>& stops, LocalDay today, const std::optional<GeoPoint>& here)
{
    constexpr double farOff = 1e9;
    for (Stop& stop : stops)
        stop.way = here && stop.place ? std::optional(courseBetween(*here, *stop.place)) : std::nullopt;
    const auto key = [&](const Stop& stop) {
        const bool isDue = stop.isDue(today);
        const LocalDay day = isDue && here ? today : stop.day();
        return std::tuple(!isDue, day, stop.way ? stop.way->distance.value() : farOff, stop.title, stop.trap);
    };
    std::sort(stops.begin(), stops.end(), [&](const Stop& a, const Stop& b) { return key(a) < key(b); });
}

} // namespace duskrow::app
