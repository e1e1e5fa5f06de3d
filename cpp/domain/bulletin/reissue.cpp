// SPDX-License-Identifier: MIT
#include "domain/bulletin/reissue.h"

#include <map>
#include <set>

namespace duskrow::domain {

namespace {

// One trap, as it was published and as it is now; either may be missing.
struct FigureChange {
    const WeekReport* before = nullptr;
    const WeekReport* now = nullptr;

    [[nodiscard]] bool isChanged() const { return !before || !now || !(*before == *now); }
};

// The pieces that a change shows in: two when the trap went from one to another.
std::set<Piece> piecesOf(const FigureChange& change, const PublishedAreas& areas)
{
    std::set<Piece> pieces;
    for (const WeekReport* report : {change.before, change.now})
        if (report) pieces.insert(pieceOf(report->reporter, areas));
    return pieces;
}

// Takes changes back until every piece has those of five farms or none.
void leaveWhatShows(std::vector<FigureChange>& changes, const PublishedAreas& areas)
{
    for (;;) {
        std::map<Piece, std::set<Uuid>> farms;
        for (const FigureChange& change : changes) {
            const WeekReport& report = change.now ? *change.now : *change.before;
            for (const Piece& piece : piecesOf(change, areas)) farms[piece].insert(report.reporter.farm);
        }
        const auto taken = std::erase_if(changes, [&](const FigureChange& change) {
            for (const Piece& piece : piecesOf(change, areas))
                if (farms[piece].size() < fewestFarms) return true;
            return false;
        });
        if (taken == 0) return;
    }
}

} // namespace

Reissue reissue(
    std::span<const WeekReport> published, const PublishedAreas& areas, std::span<const WeekReport> now)
{
    std::map<Uuid, FigureChange> traps;
    for (const WeekReport& report : published) traps[report.trap].before = &report;
    for (const WeekReport& report : now) traps[report.trap].now = &report;
    std::vector<FigureChange> changes;
    for (const auto& [trap, change] : traps)
        if (change.isChanged()) changes.push_back(change);
    const std::size_t changed = changes.size();
    leaveWhatShows(changes, areas);
    for (const FigureChange& change : changes) {
        FigureChange& shown = traps[change.now ? change.now->trap : change.before->trap];
        shown.before = shown.now;
    }
    Reissue made;
    made.taken = changes.size();
    made.waiting = changed - changes.size();
    for (const auto& [trap, change] : traps)
        if (change.before) made.reports.push_back(*change.before);
    made.areas = areasOf(made.reports, &areas);
    return made;
}

} // namespace duskrow::domain
