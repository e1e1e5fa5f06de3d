// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/base/time.h"
#include "domain/roster/roster.h"
#include "store/segments.h"
#include "sync/exchange/report.h"

namespace duskrow::app {

// What an exchange came to, in plain words: "12 new entries came in. Yours are handed over."
QString saidOf(const sync::ExchangeReport& report);

// What did not go as it should, though it went on; empty when all did.
QString troubleOf(const sync::ExchangeReport& report);

// "by the folder “Season 2026”", "by the hub at hub.example"
QString wayName(const QString& way);

// "today, 14:05", "9 July, 07:30", on the wall where the device is.
QString momentWords(domain::Instant at, const domain::Moment& now);

// How far the entries of one record got, in one of three words; empty where this device wrote none of it.
QString travelWords(const store::HandedOver& counts);

// Why a change is kept aside, and what would let it in. `reason` as the store lists it.
QString asideWords(const std::string& reason);

// Why a file was refused: an error's code and arguments are read back into its sentence.
QString refusalWords(const std::string& reason);

} // namespace duskrow::app
