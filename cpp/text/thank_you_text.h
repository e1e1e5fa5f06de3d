// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "text/animal.h"
#include "text/walk_sheet.h"

namespace duskrow::text {

struct ThankYouTrap {
    QString title = {}; // "Slough corner · bertha 1"
    std::int64_t visits = 0;
    std::optional<domain::Moths> caught =
        {}; // in the season; nothing where no protocol says how counts add up
    Animal animal = {}; // what is caught
    bool isMinimum = false;
    QString band = {}; // empty where none applies
};

// What one who kept traps is told of the season.
struct ThankYou {
    QString name = {};
    std::vector<ThankYouTrap> traps = {};
    std::pair<std::optional<domain::LocalDay>, std::optional<domain::LocalDay>> days = {}; // of visits
    std::int64_t everybodysVisits = 0;
    std::int64_t people = 0;
};

struct ThankYouSheet {
    QString title; // "Thank you, Tom"
    QString above; // programme and year
    QStringList before; // paragraphs
    SheetTable table; // a row a trap
    QStringList after;
};

struct ThankYouFrom {
    QString programme;
    bool isInvented = false;
    int year = 0;
    QString coordinator; // who writes it; may be empty
};

ThankYouSheet thankYouSheet(const ThankYou& thanks, const ThankYouFrom& from);

// The same as words alone, for a message.
QString asText(const ThankYouSheet& sheet);

} // namespace duskrow::text
