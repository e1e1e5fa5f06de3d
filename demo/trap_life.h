// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "demo/story.h"
#include "domain/log/edit.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"

namespace duskrow::demo {

// Something that somebody entered at a moment.
struct Entry {
    domain::LocalDay day;
    int minute = 0; // local, of the day
    domain::Uuid author;
    domain::Edit edit;
};

// What every trap of the demo has in common.
struct Common {
    domain::Uuid coordinator; // types in the counts of those without the app
    std::string pest;
    std::string protocolVersion;
    std::string trapType;
    domain::LocalDay today; // nothing is entered after it
};

// Writes down the season of one trap as it goes by its story: field, set-up, visits, services, samples, loan
// and take-down, in the order of their days.
class TrapLife {
public:
    TrapLife(const Story& story, const Common& common, const Summer& summer, Dice dice);

    std::vector<Entry> entries();
    [[nodiscard]] const domain::Site& site() const { return m_site; } // once the entries are made

private:
    void keepSite();
    void setUp();
    void goRounds();
    void visit(domain::LocalDay day, int number);
    bool couldNotCount(domain::Visit& visit, int number);
    void count(domain::Visit& visit, int number);
    void look(domain::Visit& visit);
    void noteTroubles(domain::Visit& visit, int number);
    void keepSample(const domain::Visit& visit);
    void raiseIfLow(domain::LocalDay day, int minute);
    void service(domain::LocalDay day, int minute, domain::ServiceWhat what);
    void lend();
    void takeDown(domain::LocalDay day, int minute, domain::EndReason reason);

    [[nodiscard]] domain::Instant at(domain::LocalDay day, int minute) const;
    int minuteOn(domain::LocalDay day);
    template <typename R>
    void enter(domain::LocalDay day, int minute, const R& record);
    template <typename R>
    void correct(domain::LocalDay day, int minute, const R& before, const R& after);

    const Story& m_story;
    const Common& m_common;
    const Summer& m_summer;
    Dice m_dice;
    domain::Site m_site;
    domain::Trap m_trap;
    domain::LocalDay m_from; // since when the bucket fills
    domain::Millimetres m_entrance;
    std::vector<Entry> m_entries;
};

inline constexpr std::chrono::minutes valleyOffset{-360}; // no summer time in the valley

} // namespace duskrow::demo
