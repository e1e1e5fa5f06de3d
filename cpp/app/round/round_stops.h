// SPDX-License-Identifier: MIT
#pragma once

#include <QHash>
#include <QStringList>

#include "app/row_list.h"
#include "app/today_stops.h"
#include "domain/rules/visiting_order.h"

namespace duskrow::app {

// One stop of the day's round: a trap at which something is due, or a field to be scouted.
struct RoundPlace {
    QString key; // of the trap, or "walk/" and the walk's id
    QString site; // the field's id
    QString title;
    QString line; // what is due
    QString route; // where a touch leads
    QString subject;
    std::optional<domain::GeoPoint> place = {};
    bool isFoundInfested = false; // by the field's latest finished walk
    bool changesLure = false;
};

// What is asked of a season to make the round of a day.
struct RoundAsk {
    TodayAsk day;
    std::optional<domain::GeoPoint> here;
    domain::RoundMetric metric = domain::RoundMetric::StraightLine;
    bool infestedLast = true;
    QHash<QString, bool> marks; // field's id to whether it is infested, by hand

    [[nodiscard]] bool isInfested(const RoundPlace& stop) const;
};

struct RoundFound {
    std::vector<RoundPlace> stops; // in the suggested order; without a position by name
    bool isFromHere = false; // not by name
    std::optional<domain::Error> trouble; // of the order: then it is by name
    std::vector<Row> done; // today, a row each
    QStringList cautions; // that the protocols show on a round
};

// Reads the season, finds the stops of the day and suggests an order. It takes its time: for another thread
// than the screens'. Errors as those of store/queries.h.
domain::Result<RoundFound> findRound(store::Reader& reader, const RoundAsk& ask);

} // namespace duskrow::app
