// SPDX-License-Identifier: MIT
#include "app/round/round_gpx.h"

#include <QCoreApplication>

#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct RoundWords {
    Q_DECLARE_TR_FUNCTIONS(RoundWords)
};

} // namespace

formats::Gpx roundGpx(const std::vector<RoundPlace>& stops, Moment made)
{
    const std::string name =
        //: a day, as the name of a file's content
        RoundWords::tr("Round of %1").arg(text::dayAndYear(made.day)).toStdString();
    formats::GpxRoute route{.name = name,
        .description =
            RoundWords::tr("An order of stops by distance. It knows no road, gate or slough.").toStdString(),
        .points = {}};
    for (const RoundPlace& stop : stops)
        if (stop.place)
            route.points.push_back({*stop.place, stop.title.toStdString(), stop.line.toStdString()});
    return {.name = name, .description = {}, .made = made.at, .waypoints = route.points, .routes = {route}};
}

} // namespace duskrow::app
