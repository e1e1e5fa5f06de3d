// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include <nlohmann/json.hpp>

#include "store/segments.h"
#include "text/amounts.h"
#include "text/code_names.h"
#include "tool/arguments.h"
#include "tool/command_programme.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

struct MembersLine {
    std::string store;
    std::string keys;
    bool asJson = false;
};

using Streams = std::map<StreamId, store::StreamState>;

Json dayJson(const std::optional<LocalDay>& day)
{
    return day ? Json(formatDay(*day)) : Json();
}

Json deviceJson(const EnrolledDevice& device, const Streams& streams)
{
    const auto state = streams.find(device.stream);
    return {{"stream", formatHex(device.stream)}, {"label", device.label}, {"root", device.isRoot},
        {"confirmed", device.isConfirmed},
        {"ended_after", device.endedAfter ? Json(*device.endedAfter) : Json()},
        {"changes_here", state == streams.end() ? 0 : state->second.used},
        {"forked", state != streams.end() && state->second.isForked}};
}

Json membersJson(const Looked& seen, const Streams& streams)
{
    Json members = Json::array();
    for (const auto& [id, member] : seen.roster.members()) {
        Json devices = Json::array();
        for (const auto& [stream, device] : seen.roster.devices())
            if (device.member == id) devices.push_back(deviceJson(device, streams));
        members.push_back({{"id", formatUuid(id)}, {"name", member.name},
            {"role", member.role ? Json(roleNames.at(static_cast<std::size_t>(*member.role))) : Json()},
            {"until_day", dayJson(member.until)}, {"devices", std::move(devices)}});
    }
    Json invitations = Json::array();
    for (const auto& [id, invitation] : seen.roster.invitations())
        invitations.push_back({{"id", formatUuid(id)}, {"member", formatUuid(invitation.member)},
            {"until_day", dayJson(invitation.until)}, {"claimed", invitation.isClaimed}});
    return {{"programme", formatUuid(seen.programme)}, {"members", std::move(members)},
        {"invitations", std::move(invitations)}};
}

QString standing(const EnrolledDevice& device)
{
    if (device.endedAfter)
        return QCoreApplication::translate("Tool", "ended after change %1")
            .arg(text::number(*device.endedAfter));
    if (device.isRoot) return QCoreApplication::translate("Tool", "founding");
    return device.isConfirmed ? QCoreApplication::translate("Tool", "in")
                              : QCoreApplication::translate("Tool", "in by its invitation");
}

void printMembers(const Looked& seen)
{
    std::vector<QStringList> rows;
    for (const auto& [id, member] : seen.roster.members()) {
        const QString name = QString::fromStdString(member.name);
        const QString role = member.role ? text::name(*member.role) : QString();
        const std::size_t before = rows.size();
        for (const auto& [stream, device] : seen.roster.devices())
            if (device.member == id)
                rows.push_back({name, role, QString::fromStdString(device.label), standing(device),
                    QString::fromStdString(formatHex(stream))});
        if (rows.size() == before) rows.push_back({name, role, QString(), QString(), QString()});
    }
    printTable(
        {QCoreApplication::translate("Tool", "name"), QCoreApplication::translate("Tool", "who"),
            QCoreApplication::translate("Tool", "device"), QCoreApplication::translate("Tool", "standing"),
            QCoreApplication::translate("Tool", "stream")},
        rows, {});
    for (const auto& [id, invitation] : seen.roster.invitations()) {
        if (invitation.isClaimed || !invitation.until) continue;
        const auto member = seen.roster.members().find(invitation.member);
        const std::string& name = member == seen.roster.members().end() ? "?" : member->second.name;
        print(QCoreApplication::translate("Tool", "An invitation for %1 is open until %2.")
                  .arg(QString::fromStdString(name), text::dayAndYear(*invitation.until)));
    }
}

Result<int> sayMembers(const MembersLine& line)
{
    const auto seen = lookInto(line.store, line.keys);
    if (!seen) return seen.error();
    const auto streams = store::streamStates(*seen->reader);
    if (!streams) return streams.error();
    if (line.asJson)
        print(QString::fromStdString(membersJson(*seen, *streams).dump(2)));
    else
        printMembers(*seen);
    return 0;
}

} // namespace

Work declareProgrammeMembers(CLI::App& line)
{
    const auto typed = std::make_shared<MembersLine>();
    addStore(line, typed->store);
    line.add_flag("--json", typed->asJson, "The members for other programs");
    addKeys(line, typed->keys);
    return [typed] { return sayMembers(*typed); };
}

} // namespace duskrow::tool
