// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/base/time.h"
#include "domain/rules/reporting_week.h"

namespace duskrow::formats {

struct FeedEntry {
    domain::IsoWeek week;
    std::string pest; // protocol id
    std::string title;
    std::string summary;
    std::string link; // relative to the feed
    domain::Instant published; // its first issue
    domain::Instant updated; // its last one
};

struct Feed {
    std::string title;
    std::string author;
    std::string language; // BCP 47
    std::string programmeKey; // as in BulletinDocument
    std::vector<FeedEntry> entries; // the newest first
};

// An Atom feed. A bulletin keeps its id through all its issues.
//
// Source  RFC 4287
std::string writeAtom(const Feed& feed);

} // namespace duskrow::formats
