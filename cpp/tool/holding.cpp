// SPDX-License-Identifier: MIT
#include "tool/holding.h"

#include <QDateTime>
#include <QString>

#include "store/queries.h"
#include "store/segments.h"
#include "sync/roster/roster_edits.h"
#include "tool/arguments.h"

namespace duskrow::tool {

using namespace duskrow::domain;

Result<Holding> openToWrite(const std::string& path, const std::string& namedKeyFolder)
{
    store::OpenHow how;
    how.keyFolder = keyFolder(namedKeyFolder);
    auto store = store::Store::open(path, how);
    if (!store) return store.error();
    auto reader = (*store)->reader();
    if (!reader) return reader.error();
    auto roster = (*store)->rosterNow();
    if (!roster) return roster.error();
    const auto me = sync::holderOf(**store, **reader);
    if (!me && me.error().code != ErrorCode::MemberUnsaid) return me.error();
    return Holding{std::move(*store), std::move(*reader), std::move(*roster), me ? *me : Uuid{}};
}

Result<Looked> lookInto(const std::string& path, const std::string& namedKeyFolder)
{
    auto reader = openToLook(path, namedKeyFolder);
    if (!reader) return reader.error();
    const auto programme = store::programmeOf(**reader);
    if (!programme) return programme.error();
    auto roster = store::rosterOf(**reader, *programme);
    if (!roster) return roster.error();
    return Looked{std::move(*reader), *programme, std::move(*roster)};
}

Result<Done> keep(Holding& holding, std::vector<Edit> edits)
{
    if (holding.me.isNil()) return Error{ErrorCode::MemberUnsaid, {holding.store->path()}};
    const Moment now = rightNow();
    const auto kept = holding.store->keepNow({.author = holding.me,
        .at = now.at,
        .offset = now.offset,
        .edits = std::move(edits),
        .draftDone = {}});
    if (!kept) return kept.error();
    return Done{};
}

Result<Done> asCoordinator(const Holding& holding)
{
    if (holding.roster.isCoordinator(holding.store->stream())) return Done{};
    return Error{ErrorCode::CoordinatorsOnly};
}

Result<Done> asRoot(const Holding& holding)
{
    if (holding.roster.isRoot(holding.store->stream())) return Done{};
    return Error{ErrorCode::RootsOnly};
}

Moment rightNow()
{
    const QDateTime now = QDateTime::currentDateTime();
    const std::chrono::minutes offset{now.offsetFromUtc() / 60};
    const Instant at = instantFromMs(now.toMSecsSinceEpoch());
    return {dayOf(at, offset), at, offset};
}

Result<Member> memberNamed(store::Reader& reader, const std::string& name)
{
    const auto members = store::members(reader);
    if (!members) return members.error();
    const QString wanted = QString::fromStdString(name);
    const Member* found = nullptr;
    for (const Member& member : *members) {
        if (formatUuid(member.id) == name) return member;
        if (QString::fromStdString(member.name).compare(wanted, Qt::CaseInsensitive) != 0) continue;
        if (found) return Error{ErrorCode::NameAmbiguous, {"member", name}};
        found = &member;
    }
    if (!found) return Error{ErrorCode::NameMissing, {"member", name}};
    return *found;
}

} // namespace duskrow::tool
