// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "domain/rules/due.h"
#include "domain/rules/trap_now.h"
#include "domain/rules/trap_season.h"
#include "text/animal.h"

namespace duskrow::app {

// All that the store knows of one trap, read at once, and the rules it is held against.
struct TrapBook {
    domain::Trap trap = {};
    domain::Site site = {};
    std::vector<domain::Visit> visits = {};
    std::vector<domain::Service> services = {};
    std::vector<domain::Sample> samples = {};
    std::vector<domain::Uuid> leftOut = {}; // visits whose count is left out of the picture
    const domain::Protocol* protocol = nullptr; // null when its file cannot be had; the session has told why
    domain::SeasonRules seasonRules = {};
    domain::DueRules dueRules = {};

    [[nodiscard]] domain::TrapFacts facts() const { return {trap, visits, services, samples, leftOut}; }
    [[nodiscard]] bool hasStrip() const;
    [[nodiscard]] domain::HeightRule heightRule() const;
    [[nodiscard]] QString pestName() const; // "bertha armyworm", in the language of the device
    [[nodiscard]] text::Animal animal() const; // what is counted
    // What is counted, named as far as it must be: "bertha armyworm moths", "midges".
    [[nodiscard]] QString oneOfPest() const;
    [[nodiscard]] QString manyOfPest() const;
    [[nodiscard]] bool isBucket() const;
    [[nodiscard]] QString title() const; // "Slough corner · bertha trap 1"
};

// The book of a trap, or of the trap of a visit.
//
// Errors  RecordMissing {trap} when there is none of that id, else those of the queries
domain::Result<TrapBook> readTrapBook(Session& session, const domain::Uuid& trap);

// A name of a protocol as it stands within a sentence.
QString inSentence(const domain::LocalText& name);

} // namespace duskrow::app
