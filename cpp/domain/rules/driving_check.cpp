// SPDX-License-Identifier: MIT
#include "domain/rules/driving_check.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "domain/rules/geodesy.h"

namespace duskrow::domain {

namespace {

constexpr double metresPerMs = 130.0 / 3600.0; // 130 km/h
constexpr Metres sameStop{100.0};
constexpr std::size_t mostTraps = 3; // that are not asked about

double drivingMs(Metres way)
{
    return way.value() / metresPerMs;
}

HurriedStops runOf(std::vector<StopMade> stops, Metres way)
{
    using std::chrono::minutes;
    HurriedStops run{.stops = std::move(stops), .way = way};
    run.taken = std::chrono::floor<minutes>(run.stops.back().at - run.stops.front().at);
    run.driving = minutes{static_cast<std::int64_t>(std::ceil(drivingMs(way) / 60'000.0))};
    return run;
}

class Runs {
public:
    void take(const StopMade& stop)
    {
        if (m_run.empty()) return begin(stop);
        const Metres way = courseBetween(m_run.back().place, stop.place).distance;
        if (way <= sameStop) return;
        if (static_cast<double>((stop.at - m_run.back().at).count()) >= drivingMs(way)) return begin(stop);
        m_run.push_back(stop);
        m_way += way;
    }

    std::vector<HurriedStops> finish()
    {
        close();
        return std::move(m_found);
    }

private:
    void begin(const StopMade& stop)
    {
        close();
        m_run = {stop};
        m_way = Metres{0.0};
    }

    void close()
    {
        std::set<Uuid> traps;
        for (const StopMade& stop : m_run) traps.insert(stop.trap);
        if (traps.size() > mostTraps) m_found.push_back(runOf(std::move(m_run), m_way));
        m_run.clear();
    }

    std::vector<StopMade> m_run;
    Metres m_way;
    std::vector<HurriedStops> m_found;
};

} // namespace

std::vector<HurriedStops> hurriedStops(std::vector<StopMade> stops)
{
    std::sort(stops.begin(), stops.end(), [](const StopMade& a, const StopMade& b) {
        return std::pair(a.at, a.visit) < std::pair(b.at, b.visit);
    });
    Runs runs;
    for (const StopMade& stop : stops) runs.take(stop);
    return runs.finish();
}

} // namespace duskrow::domain
