// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>

#include "domain/records/programme.h"
#include "domain/roster/roster.h"
#include "store/store.h"

namespace duskrow::tool {

// A store that a command writes to, what the roster in it says, and who holds this device.
struct Holding {
    std::unique_ptr<store::Store> store;
    std::unique_ptr<store::Reader> reader;
    domain::Roster roster;
    domain::Uuid me; // nil when nobody said
};

// Errors  those of Store::open
domain::Result<Holding> openToWrite(const std::string& path, const std::string& namedKeyFolder);

// What a command reads of a store that the app may have open at the same time.
struct Looked {
    std::unique_ptr<store::Reader> reader;
    domain::Uuid programme;
    domain::Roster roster;
};

// Errors  those of openToLook
domain::Result<Looked> lookInto(const std::string& path, const std::string& namedKeyFolder);

// Keeps edits in the holder's name.
//
// Errors  MemberUnsaid {path}; those of keeping
domain::Result<domain::Done> keep(Holding& holding, std::vector<domain::Edit> edits);

// Errors  CoordinatorsOnly, RootsOnly
domain::Result<domain::Done> asCoordinator(const Holding& holding);
domain::Result<domain::Done> asRoot(const Holding& holding);

// By this machine's clock and calendar.
domain::Moment rightNow();

// A member by name, large and small letters alike, or by id.
//
// Errors  NameMissing, NameAmbiguous {"member", name}
domain::Result<domain::Member> memberNamed(store::Reader& reader, const std::string& name);

} // namespace duskrow::tool
