// SPDX-License-Identifier: MIT
#include "tool/command_programme.h"

#include <array>
#include <vector>

namespace duskrow::tool {

namespace {

constexpr std::array programmeTable{
    Command{"new", "Begin a programme in a new store", declareProgrammeNew},
    Command{"found", "Bring a programme to a hub for the first time", declareProgrammeFound},
    Command{"invite", "Write an invitation, shown once as code and link", declareProgrammeInvite},
    Command{"join", "Come into a programme with an invitation, in a new store", declareProgrammeJoin},
    Command{"members", "Who takes part, with which devices", declareProgrammeMembers},
    Command{"end", "End a lost device: nothing it writes from now on counts", declareProgrammeEnd},
};

} // namespace

Work declareProgramme(CLI::App& line)
{
    std::vector<std::pair<CLI::App*, Work>> works;
    for (const Command& command : programmeTable) {
        CLI::App* own = line.add_subcommand(command.name, command.summary);
        works.emplace_back(own, command.declare(*own));
    }
    line.require_subcommand(1);
    return [works = std::move(works)]() -> domain::Result<int> {
        for (const auto& [own, work] : works)
            if (own->parsed()) return work();
        return 2;
    };
}

} // namespace duskrow::tool
