// SPDX-License-Identifier: MIT
#pragma once

#include "store/store.h"
#include "tool/commands.h"

namespace duskrow::tool {

// The commands under `programme`.
Work declareProgrammeNew(CLI::App& line);
Work declareProgrammeFound(CLI::App& line);
Work declareProgrammeInvite(CLI::App& line);
Work declareProgrammeJoin(CLI::App& line);
Work declareProgrammeMembers(CLI::App& line);
Work declareProgrammeEnd(CLI::App& line);

// Brings a programme to a hub with the founding code, and hands everything over.
//
// Errors  CodeUnreadable, InvitationUnknown; those of the hub
domain::Result<domain::Done> foundThere(
    store::Store& store, const std::string& name, const std::string& hub, const std::string& code);

} // namespace duskrow::tool
