// SPDX-License-Identifier: MIT
#include "app/round/round_order.h"

#include <algorithm>
#include <tuple>

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

void orderByName(std::vector<RoundPlace>& stops, const RoundAsk& ask)
{
    const auto key = [&](const RoundPlace& stop) {
        return std::tuple(ask.infestedLast && ask.isInfested(stop), !stop.place);
    };
    std::stable_sort(stops.begin(), stops.end(), [&](const RoundPlace& a, const RoundPlace& b) {
        if (key(a) != key(b)) return key(a) < key(b);
        const int byTitle = QString::localeAwareCompare(a.title, b.title);
        return byTitle != 0 ? byTitle < 0 : a.key < b.key;
    });
}

} // namespace

void suggestOrder(RoundFound& found, const RoundAsk& ask)
{
    orderByName(found.stops, ask);
    if (!ask.here) return;
    const auto withPlace = std::stable_partition(found.stops.begin(), found.stops.end(),
        [](const RoundPlace& stop) { return stop.place.has_value(); });
    std::vector<RoundStop> places;
    for (auto stop = found.stops.begin(); stop != withPlace; ++stop)
        places.push_back({*stop->place, ask.isInfested(*stop)});
    const auto round =
        visitingOrder(*ask.here, places, {.metric = ask.metric, .infestedLast = ask.infestedLast});
    if (!round) {
        found.trouble = round.error();
        return;
    }
    found.isFromHere = true;
    std::vector<RoundPlace> ordered;
    for (const RoundLeg& leg : round->legs) ordered.push_back(found.stops[leg.stop]);
    std::move(ordered.begin(), ordered.end(), found.stops.begin());
}

std::vector<RoundWay> waysAlong(
    const std::vector<RoundPlace>& stops, const std::optional<GeoPoint>& here, RoundMetric metric)
{
    std::vector<RoundWay> ways;
    std::optional<GeoPoint> from = here;
    bool isFromHere = true;
    for (const RoundPlace& stop : stops) {
        RoundWay way{.course = {}, .isFromHere = isFromHere};
        if (from && stop.place)
            way.course =
                Course{roundDistance(*from, *stop.place, metric), courseBetween(*from, *stop.place).bearing};
        ways.push_back(way);
        from = stop.place;
        isFromHere = false;
    }
    return ways;
}

} // namespace duskrow::app
