// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/own_news.h"
#include "app/season_records.h"
#include "app/session.h"
#include "domain/protocol/protocol.h"
#include "domain/rules/due.h"
#include "domain/rules/geodesy.h"
#include "store/segments.h"

namespace duskrow::app {

// What is asked of a season to make the list of a day. It is handed to another thread, protocols by pointer:
// they live as long as the session, which waits for that thread.
struct TodayAsk {
    domain::Uuid season;
    int year = 0;
    domain::LocalDay today = {};
    domain::SeasonWeek week = {};
    Viewer viewer;
    domain::Uuid programme;
    domain::StreamId own{};
    std::map<std::string, const domain::Protocol*> protocols; // by pest
};

// Nothing while this year has no season. Errors as those of store/queries.h.
domain::Result<std::optional<TodayAsk>> todayAskOf(Session& session);

// The rules of each pest and trap type, worked out once. It only looks on.
class RulesByTrap {
public:
    explicit RulesByTrap(const TodayAsk& ask) : m_ask(ask) { }

    // Null for a pest without a protocol: then nobody knows what is due.
    const domain::DueRules* of(const domain::Trap& trap);

private:
    const TodayAsk& m_ask;
    std::map<std::pair<std::string, std::string>, domain::DueRules> m_rules;
};

// One trap at which something is due, or soon will be.
struct Stop {
    domain::Uuid trap;
    QString title;
    QString site;
    std::optional<domain::GeoPoint> place = {};
    std::vector<domain::DueItem> items = {}; // in the order of doing; never none
    QString lentTo = {}; // in whose hands it is; empty for its keeper's
    std::optional<domain::Course> way = {}; // from where one stands

    [[nodiscard]] domain::LocalDay day() const; // of what comes first
    [[nodiscard]] bool isDue(domain::LocalDay today) const;
    [[nodiscard]] bool has(domain::DueWhat what, domain::LocalDay today) const; // due by today
};

// Half-entered work, to be gone on with.
struct OpenDraft {
    QString key;
    QString title; // of the trap; empty when it is not known
    QString route;
    QString subject;
};

struct TodayFound {
    std::vector<Stop> stops;
    std::vector<OpenDraft> drafts;
    std::size_t traps = 0; // shown to the viewer
    std::size_t visits = 0; // of the season, on this device
    std::size_t countsToReport = 0; // not in yet, of those to report next
    bool isCounting = false; // some trap still waits for counts
    bool hasOthers = false; // in the programme
    store::HandedOver own; // how far the own entries got
    std::optional<LatestNews> news;
};

// How far ahead the list looks, scouting apart, for which one arranges oneself.
inline constexpr std::chrono::days weekAhead{7};
inline constexpr std::chrono::days scoutingAhead{21};

// Every stop of a season that was read; no drafts.
TodayFound findStops(const SeasonRecords& records, const TodayAsk& ask);

// Reads the season and finds every stop. Errors as those of store/queries.h.
domain::Result<TodayFound> findStops(store::Reader& reader, const TodayAsk& ask);

// Puts stops in the order to go: what is due now by distance, without a fix by day; then what comes by day.
void rankStops(std::vector<Stop>& stops, domain::LocalDay today, const std::optional<domain::GeoPoint>& here);

} // namespace duskrow::app
