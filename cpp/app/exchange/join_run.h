// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "store/store.h"
#include "sync/exchange/report.h"
#include "sync/roster/bringing_along.h"
#include "sync/roster/joining.h"

namespace duskrow::app {

// What a person who joins has said.
struct JoinAsk {
    sync::InvitationText invitation;
    QString way; // where the programme is found: "hub:<address>", "folder:<path>", "file:<path>"
    QString label; // what the device is called
    QString storeFolder; // where the new store comes to lie
    QString keyFolder;
    domain::Moment now;
    bool bringsAlong = false; // what the present store holds
};

struct Joined {
    std::unique_ptr<store::Store> store;
    std::optional<sync::Brought> brought;
    std::vector<domain::Error> troubles; // after the joining itself: what the first exchange met
};

// Looks the invitation up, makes the store, exchanges for the first time by the same way and keeps that way,
// then brings along what was kept alone. For a worker's thread.
//
// solo    the present store
// Errors  those of keyOfCode, of finding the ticket and of joining: nothing was made then
domain::Result<Joined> joinProgramme(
    const JoinAsk& ask, const store::Store& solo, const sync::Journey& journey);

} // namespace duskrow::app
