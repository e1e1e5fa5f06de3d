// SPDX-License-Identifier: MIT
#include "bench/big_store.h"

#include <cstdio>
#include <cstdlib>

namespace duskrow::tests {

using namespace duskrow::domain;

namespace {

void addTrap(std::vector<Edit>& edits, int season, int number)
{
    const LocalDay set = dayOf(2023 + season, 6, 5);
    Site site;
    site.id = siteAt(season, number);
    site.season = seasonAt(season);
    site.name = "site " + std::to_string(number);
    site.crop = "canola";
    edits.push_back(creation(site, site.id));

    Trap trap;
    trap.id = trapAt(season, number);
    trap.site = site.id;
    trap.season = site.season;
    trap.tag = std::to_string(number);
    trap.pest = "bertha-armyworm";
    trap.trapType = "bucket";
    trap.setDay = set;
    trap.latE7 = 520'000'000 + number % 100 * 100'000;
    trap.lonE7 = -1'060'000'000 + number / 100 * 100'000;
    trap.accuracy = Millimetres{3000};
    trap.fixMethod = FixMethod::Satellite;
    trap.entrance = Millimetres{1200};
    trap.canopy = Millimetres{400};
    trap.lureIn = true;
    trap.stripIn = true;
    edits.push_back(creation(trap, site.id));

    const auto base = static_cast<std::uint32_t>(4'000'000 + (season * trapsASeason + number) * 16);
    for (int week = 0; week < visitsATrap; ++week)
        edits.push_back(creation(fullVisit(base + static_cast<std::uint32_t>(week), trap.id,
                                     set + std::chrono::days{7 * (week + 1)}),
            site.id));

    Service service;
    service.id = idOf(base + 14);
    service.trap = trap.id;
    service.day = set + std::chrono::days{28};
    service.what = ServiceWhat::Lure;
    service.lureLot = "lot 7";
    edits.push_back(creation(service, site.id));
    if (number % 4 != 0) return;
    Sample sample;
    sample.id = idOf(base + 15);
    sample.trap = trap.id;
    sample.visit = idOf(base);
    sample.number = "12";
    sample.moths = Moths{3};
    sample.state = SampleState::Kept;
    edits.push_back(creation(sample, site.id));
}

} // namespace

Visit fullVisit(std::uint32_t number, const Uuid& trap, LocalDay day)
{
    Visit visit;
    visit.id = idOf(number);
    visit.trap = trap;
    visit.day = day;
    visit.atMs = 1'783'980'000'000 + number;
    visit.offsetMin = -300;
    visit.outcome = Outcome::Counted;
    visit.pest = Moths{number % 97};
    visit.notIt = Moths{number % 5};
    visit.unsure = Moths{0};
    visit.bees = Bees{number % 3};
    visit.emptied = true;
    visit.state = TrapState::Fine;
    visit.sprayed = false;
    visit.lureThere = true;
    visit.stripThere = true;
    visit.entrance = Millimetres{1200};
    visit.canopy = Millimetres{850};
    visit.latE7 = 520'000'000;
    visit.lonE7 = -1'060'000'000;
    visit.accuracy = Millimetres{3000};
    if (number % 9 == 0) visit.remark = "wind from the south-west, canopy wet, a few old moths in the funnel";
    return visit;
}

void fillBigStore(store::Store& store, int years)
{
    for (int season = 0; season < years; ++season) {
        Season year;
        year.id = seasonAt(season);
        year.year = 2023 + season;
        std::vector<Edit> edits{creation(year, {})};
        for (int number = 0; number < trapsASeason; ++number) {
            addTrap(edits, season, number);
            if (number % 500 != 499) continue;
            if (const auto kept = store.keepNow(batchOf(std::move(edits))); !kept) {
                std::fprintf(stderr, "the big store cannot be filled: %s\n", kept.error().detail.c_str());
                std::exit(1);
            }
            edits.clear();
        }
    }
}

} // namespace duskrow::tests
