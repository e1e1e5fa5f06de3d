// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/bulletin/bulletin.h"
#include "formats/bulletin/overlay.h"
#include "formats/formats.h"
#include "formats/picture.h"
#include "text/bulletin_words.h"

namespace duskrow::formats {

// Since May 2026 Darwin Core recommends detected and notDetected for occurrenceStatus; many readers still ask
// for present and absent.
//
// Source  TDWG, Darwin Core, occurrenceStatus, issued 2026-05-26
enum class OccurrenceTerms { Detected, Present };

// A bulletin with its words: all that its files are made of. They look on.
struct BulletinDocument {
    const domain::Bulletin& bulletin;
    const text::BulletinWords& words;
    const Overlay* overlay = nullptr; // boundaries of districts; may be null
    domain::Instant published;
    OccurrenceTerms terms = OccurrenceTerms::Detected;
    // A secret of nobody: the same for all bulletins of a programme, so that feeds and archives of two
    // programmes never share an id.
    std::string programmeKey;
};

// "bulletin-2026-W28"
std::string fileStem(domain::IsoWeek week);
std::string weekText(domain::IsoWeek week); // "2026-W28"

// A middle of a cell in degrees, with the two decimals that it has: "52.15".
std::string centreText(std::int32_t e7);

// "2026-07-13T14:00:00Z"
std::string momentText(domain::Instant at);

// Of a district or cell in machine words: "rising"; empty when not known.
std::string phaseCode(domain::FlightPhase phase);
// The id of a band by its level; empty without one.
std::string bandId(const domain::Bulletin& bulletin, std::optional<int> level);

// The pictures of the page.
Picture mapOf(const BulletinDocument& document, double width);
Picture chartOf(const BulletinDocument& document, double width);

// The page, the table, the map's areas and the archive, in this order.
//
// Errors  those of the writers
domain::Result<std::vector<ExportedFile>> bulletinFiles(const BulletinDocument& document);

} // namespace duskrow::formats
