// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "sync/roster/joining.h"
#include "sync/roster/roster_edits.h"
#include "text/amounts.h"
#include "tool/arguments.h"
#include "tool/command_programme.h"
#include "tool/exchange_ways.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

constexpr std::chrono::days usualDays{14}; // common practice, no source

struct InviteLine {
    std::string store;
    std::string keys;
    std::string name;
    std::string role;
    std::string again;
    std::string until;
    std::string hub;
    bool asJson = false;
};

// Who is invited: a new member, or one who is known already, for another phone of his.
Result<Member> invitedMember(const Holding& holding, const InviteLine& line)
{
    if (!line.again.empty()) return memberNamed(*holding.reader, line.again);
    Member member;
    if (QString::fromStdString(line.name).trimmed().isEmpty()) return Error{ErrorCode::Empty, {"name"}};
    member.name = line.name;
    const auto* role = std::find(roleNames.begin(), roleNames.end(), line.role);
    if (role == roleNames.end()) return Error{ErrorCode::UnknownCode, {"role", line.role}};
    member.role = static_cast<Role>(role - roleNames.begin());
    return member;
}

Result<LocalDay> lastDay(const std::string& typed)
{
    const LocalDay today = rightNow().day;
    if (typed.empty()) return today + usualDays;
    const auto day = parseDay(typed);
    if (!day) return day.error();
    if (*day < today) return Error{ErrorCode::InvitationPast, {typed}};
    return *day;
}

void say(const InviteLine& line, const Member& member, const sync::Invited& invited, LocalDay until,
    const std::string& link)
{
    if (line.asJson) {
        const nlohmann::ordered_json json{{"code", sync::shownCode(invited.code)}, {"link", link},
            {"member", formatUuid(invited.member)}, {"invitation", formatUuid(invited.invitation)},
            {"until_day", formatDay(until)}};
        return print(QString::fromStdString(json.dump(2)));
    }
    print(QCoreApplication::translate("Tool", "An invitation for %1, good until %2. It is shown only now:")
              .arg(QString::fromStdString(member.name), text::dayAndYear(until)));
    print(QStringLiteral("  %1").arg(QString::fromStdString(sync::shownCode(invited.code))));
    print(QStringLiteral("  %1").arg(QString::fromStdString(link)));
    print(QCoreApplication::translate(
        "Tool", "Exchange once before it is used, so that it lies where it will be looked for."));
}

Result<int> writeInvitation(const InviteLine& line)
{
    auto holding = openToWrite(line.store, line.keys);
    if (!holding) return holding.error();
    if (const auto allowed = asCoordinator(*holding); !allowed) return allowed.error();
    const auto member = invitedMember(*holding, line);
    if (!member) return member.error();
    if (member->role == Role::Coordinator)
        if (const auto allowed = asRoot(*holding); !allowed) return allowed.error();
    const auto until = lastDay(line.until);
    if (!until) return until.error();
    if (!line.hub.empty())
        if (const auto address = hubAddress(line.hub); !address) return address.error();
    auto invited = sync::invite(*member, *until, rightNow().at);
    if (!invited) return invited.error();
    auto edits = sync::earlierFounders(*holding->store, *holding->reader);
    if (!edits) return edits.error();
    edits->insert(edits->end(), invited->edits.begin(), invited->edits.end());
    if (const auto kept = keep(*holding, std::move(*edits)); !kept) return kept.error();
    const StreamId own = holding->store->stream();
    const auto& founders = holding->roster.founders();
    const StreamId founder = founders.contains(own) || founders.empty() ? own : *founders.begin();
    say(line, *member, *invited, *until,
        sync::invitationLink({invited->code, holding->store->programme(), founder, line.hub}));
    return 0;
}

} // namespace

Work declareProgrammeInvite(CLI::App& line)
{
    const auto typed = std::make_shared<InviteLine>();
    addStore(line, typed->store);
    CLI::Option* name = line.add_option("--name", typed->name, "Who is invited")->type_name("NAME");
    CLI::Option* role = line.add_option("--role", typed->role, "grower, agronomist or coordinator")
                            ->type_name("ROLE")
                            ->needs(name);
    name->needs(role);
    CLI::Option* again = line.add_option("--again", typed->again, "A member, for another device of his")
                             ->type_name("MEMBER")
                             ->excludes(name);
    line.add_option(
            "--until", typed->until, "The last day on which it may be used (in two weeks if left out)")
        ->type_name("DAY");
    line.add_option("--hub", typed->hub, "The address of the hub, to stand in the link")->type_name("URL");
    line.add_flag("--json", typed->asJson, "The invitation for other programs");
    addKeys(line, typed->keys);
    line.callback([name, again] {
        if (name->count() == 0 && again->count() == 0) throw CLI::RequiredError("--name or --again");
    });
    return [typed] { return writeInvitation(*typed); };
}

} // namespace duskrow::tool
