// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/rules/flag.h"
#include "store/questions.h"
#include "text/animal.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

// The name of who stood at the trap; empty when it is not known here.
QString observerName(const SeasonRecords& records, const domain::Observer& observer);
// The trap a record belongs to; null when it is not here.
const domain::Trap* trapIn(const SeasonRecords& records, const domain::Uuid& id);

// What that trap catches: moths where the trap or its protocol is not here.
text::Animal animalAt(const SeasonRecords& records, const domain::Uuid& trap, ProtocolShelf& shelf);

// questions  that coordinators asked and nobody settled
std::string flagsJson(const SeasonRecords& records, const std::vector<domain::Flag>& flags,
    const std::vector<store::AskedQuestion>& questions, domain::LocalDay today, ProtocolShelf& shelf);

} // namespace duskrow::tool
