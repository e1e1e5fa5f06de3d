// SPDX-License-Identifier: MIT
#include "app/round/round_stops.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

#include "app/as_qstring.h"
#include "app/round/round_order.h"
#include "app/season_records.h"
#include "app/today_rows.h"
#include "app/trap_words.h"
#include "domain/rules/trap_now.h"
#include "text/amounts.h"
#include "text/code_names.h"
#include "text/frame_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct RoundWords {
    Q_DECLARE_TR_FUNCTIONS(RoundWords)
};

// As in WalkStartViewModel: after a week it is another walk.
constexpr std::chrono::days longestWalk{7};

// The walks of one field that matter to a round.
struct FieldWalks {
    const Walk* open = nullptr; // begun within the week
    const Walk* finished = nullptr; // the latest
    bool isInfested = false;
};

// Everything a round is made of, while it is made.
struct Making {
    store::Reader& reader;
    const RoundAsk& ask;
    const SeasonRecords& records;
    std::vector<Walk> walks = {};
    std::map<Uuid, FieldWalks> fields = {};
    RoundFound found = {};

    [[nodiscard]] LocalDay today() const { return ask.day.today; }
    [[nodiscard]] FieldWalks walksIn(const Uuid& site) const
    {
        const auto held = fields.find(site);
        return held == fields.end() ? FieldWalks{} : held->second;
    }
};

Result<Done> readWalks(Making& making)
{
    auto walks = store::walksOf(making.reader, making.ask.day.season);
    if (!walks) return walks.error();
    making.walks = std::move(*walks);
    for (const Walk& walk : making.walks) { // newest first
        FieldWalks& field = making.fields[walk.site];
        const bool isFinished = walk.finished.value_or(false);
        if (isFinished && !field.finished) field.finished = &walk;
        if (!isFinished && !field.open && walk.day && making.today() - *walk.day <= longestWalk)
            field.open = &walk;
    }
    const auto decisions = store::decisionsOfSeason(making.reader, making.ask.day.season);
    if (!decisions) return decisions.error();
    std::map<Uuid, std::string> verdicts; // of the latest decision, which comes last
    for (const Decision& decision : *decisions) verdicts[decision.walk] = decision.verdict;
    for (auto& [site, field] : making.fields)
        field.isInfested = field.finished && verdicts[field.finished->id] == "above";
    return Done{};
}

// What is to be done at a stop today. A window of scouting closes with a finished walk, and is not told
// beside an open one.
bool calls(const Making& making, const FieldWalks& field, const DueItem& item)
{
    if (item.day > making.today()) return false;
    if (item.what != DueWhat::ScoutingWindow) return true;
    const bool isScouted = field.finished && field.finished->day && *field.finished->day >= item.day;
    return !isScouted && !field.open && (!item.until || *item.until >= making.today());
}

void addTrapStop(Making& making, Stop stop, const Uuid& site)
{
    const FieldWalks field = making.walksIn(site);
    std::erase_if(stop.items, [&](const DueItem& item) { return !calls(making, field, item); });
    if (stop.items.empty() || !stop.lentTo.isEmpty()) return;
    const TodayRow row = rowOf(stop, making.today());
    making.found.stops.push_back({.key = row.trap,
        .site = asQString(site),
        .title = row.title,
        .line = row.line,
        .route = row.actRoute,
        .subject = row.trap,
        .place = stop.place,
        .isFoundInfested = field.isInfested,
        .changesLure = stop.has(DueWhat::LureChange, making.today())});
}

text::Animal animalIn(const TodayAsk& ask, const std::string& pest)
{
    const auto found = ask.protocols.find(pest);
    return animalOf(found == ask.protocols.end() ? nullptr : found->second);
}

void addDoneTrap(Making& making, const Trap& trap)
{
    const TrapFacts facts = making.records.factsOf(trap);
    QString what;
    for (const Service& service : facts.services)
        if (service.day == making.today() && service.what) what = text::name(*service.what);
    for (const Visit& visit : facts.visits) {
        if (visit.day != making.today() || !visit.outcome) continue;
        what = text::name(*visit.outcome);
        //: what was done at a trap, and what was in it: "counted, 12 moths"
        if (visit.pest)
            what =
                RoundWords::tr("%1, %2").arg(what, animalIn(making.ask.day, trap.pest).amount(*visit.pest));
    }
    if (what.isEmpty()) return;
    making.found.done.push_back({.key = asQString(trap.id),
        .title = making.records.titleOf(trap),
        .detail = what,
        .route = QStringLiteral("season"),
        .subject = asQString(trap.id)});
}

void addTraps(Making& making)
{
    TodayFound all = findStops(making.records, making.ask.day);
    std::map<Uuid, Stop> stops;
    for (Stop& stop : all.stops) stops.emplace(stop.trap, std::move(stop));
    for (const Trap& trap : making.records.traps()) {
        if (!making.records.isShownTo(making.ask.day.viewer, trap, making.today())) continue;
        const auto before = making.found.stops.size();
        if (const auto stop = stops.find(trap.id); stop != stops.end())
            addTrapStop(making, std::move(stop->second), trap.site);
        if (making.found.stops.size() == before) addDoneTrap(making, trap);
    }
}

// Where a field lies: where it was last searched, else where a trap stands in it.
std::optional<GeoPoint> placeOf(const Making& making, const Site& site, const std::vector<Frame>& frames)
{
    for (auto frame = frames.rbegin(); frame != frames.rend(); ++frame)
        if (frame->latE7 && frame->lonE7)
            return GeoPoint{
                static_cast<std::int32_t>(*frame->latE7), static_cast<std::int32_t>(*frame->lonE7)};
    for (const Trap& trap : making.records.traps())
        if (trap.site == site.id) return trapNow(making.records.factsOf(trap), making.today()).place;
    return std::nullopt;
}

Result<Done> addField(Making& making, const Site& site, const FieldWalks& field)
{
    const Walk& walk = field.open ? *field.open : *field.finished;
    const auto frames = store::framesOf(making.reader, walk.id);
    if (!frames) return frames.error();
    const auto count = static_cast<std::int64_t>(frames->size());
    //: a field in which larvae are searched for
    const QString title = RoundWords::tr("%1, larvae").arg(QString::fromStdString(site.name));
    if (field.open) {
        making.found.stops.push_back({.key = QStringLiteral("walk/") + asQString(walk.id),
            .site = asQString(site.id),
            .title = title,
            .line = RoundWords::tr("a walk to go on with, %1").arg(text::frames(Frames{count})),
            .route = QStringLiteral("frames"),
            .subject = asQString(walk.id),
            .place = placeOf(making, site, *frames),
            .isFoundInfested = field.isInfested});
        return Done{};
    }
    const bool wasToday =
        walk.day == making.today() || (!frames->empty() && frames->back().day == making.today());
    if (wasToday)
        making.found.done.push_back({.key = QStringLiteral("walk/") + asQString(walk.id),
            .title = title,
            .detail = RoundWords::tr("walked, %1").arg(text::frames(Frames{count})),
            .route = QStringLiteral("decide"),
            .subject = asQString(walk.id)});
    return Done{};
}

Result<Done> addFields(Making& making)
{
    for (const Site& site : making.records.sites()) {
        const FieldWalks field = making.walksIn(site.id);
        const bool isRecent =
            field.finished && field.finished->day && making.today() - *field.finished->day <= longestWalk;
        if (!field.open && !isRecent) continue;
        if (!making.records.isShownTo(making.ask.day.viewer, site)) continue;
        if (const auto added = addField(making, site, field); !added) return added.error();
    }
    return Done{};
}

void addCautions(Making& making)
{
    for (const auto& [pest, protocol] : making.ask.day.protocols) {
        if (!protocol) continue;
        for (const Statement& caution : protocol->cautionsAt(CautionPlace::Round)) {
            const QString words = QString::fromStdString(caution.text.in(Session::language()));
            if (!making.found.cautions.contains(words)) making.found.cautions << words;
        }
    }
}

} // namespace

bool RoundAsk::isInfested(const RoundPlace& stop) const
{
    return marks.value(stop.site, stop.isFoundInfested);
}

Result<RoundFound> findRound(store::Reader& reader, const RoundAsk& ask)
{
    const auto records = SeasonRecords::read(reader, ask.day.season, VisitFields::ForDue);
    if (!records) return records.error();
    Making making{reader, ask, *records};
    if (const auto walks = readWalks(making); !walks) return walks.error();
    addTraps(making);
    if (const auto fields = addFields(making); !fields) return fields.error();
    addCautions(making);
    suggestOrder(making.found, ask);
    return std::move(making.found);
}

} // namespace duskrow::app
