// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>

#include "domain/bulletin/bulletin.h"
#include "domain/protocol/protocol.h"
#include "text/bulletin_words.h"

namespace duskrow::text {

// The words of a bulletin, drafted from its figures. No sentence says that a field should be sprayed: moths
// never tell; what to do now ends at looking for larvae.
//
// locale  of the readers; its language must be the one that the program speaks
BulletinWords bulletinWords(
    const domain::Bulletin& bulletin, const domain::Protocol& protocol, const QLocale& locale = {});

// "Bertha armyworm: week 28 of 2026"
QString bulletinTitle(const QString& pest, domain::IsoWeek week);

// A coordinator's own text as paragraphs: parted by empty lines, without control characters, at most 40.
std::vector<std::string> ownParagraphs(const QString& text);

// "uncertain or higher", "low to moderate", "high"
QString bandGroupName(
    const domain::BandGroup& group, std::span<const domain::Band> bands, const QLocale& locale);

// How the flight stands over an area.
QString flightStage(domain::FlightPhase phase);

} // namespace duskrow::text
