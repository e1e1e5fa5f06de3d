// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "domain/bulletin/bulletin.h"

namespace duskrow::domain {

// A published week is frozen. Figures that moved with every late count would show, held against the ones
// before, what that one count was. So late counts and corrections wait, and come out together as a new issue
// of the whole week: within each piece that the published areas cut (disclosure.h) either the counts of five
// farms or more have changed and all of them are taken, or none is. The new issue has the areas of the old
// one, at most. What waits is lost for the week alone: the season so far of the next weeks holds it.
struct Reissue {
    std::vector<WeekReport> reports; // as published, with the changes that may be shown
    PublishedAreas areas;
    std::size_t taken = 0; // traps whose change is shown now
    std::size_t waiting = 0; // traps whose change would be of fewer than five farms
};

// published  the reports of the last issue, with its areas
// now        the reports of the same week as the records say today, each trap once
Reissue reissue(
    std::span<const WeekReport> published, const PublishedAreas& areas, std::span<const WeekReport> now);

} // namespace duskrow::domain
