// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/bulletin/bulletin.h"

namespace duskrow::domain {

// What a desk keeps of an issue it has published: the reports it came from, for the next issue, and what the
// next weeks show of it. It names traps and farms by their ids and stays at the desk.
struct KeptIssue {
    std::string pest;
    std::string trapType;
    IsoWeek iso;
    ReportingWeek week;
    int issue = 1;
    Instant published;
    std::string summary; // one sentence, for a feed
    std::vector<Uuid> districts; // by their numbers in `reports`
    PublishedAreas areas;
    std::optional<Moths> median; // of the week and the whole region, as published
    std::vector<WeekReport> reports;
};

std::string keptIssueText(const KeptIssue& issue);

// Nothing for anything that keptIssueText did not write.
std::optional<KeptIssue> readKeptIssue(std::string_view text);

// Reports and areas of an issue with their districts numbered as in another list. A district that is not in
// it any more is none.
struct Renumbered {
    std::vector<WeekReport> reports;
    PublishedAreas areas;
};
Renumbered renumbered(const KeptIssue& issue, std::span<const Uuid> districts);

} // namespace duskrow::domain
