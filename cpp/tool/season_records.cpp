// SPDX-License-Identifier: MIT
#include "tool/season_records.h"

#include <QCollator>
#include <QLocale>

#include <algorithm>

#include "domain/base/take.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

QString nameIn(const std::map<Uuid, QString>& names, const Uuid& id)
{
    const auto found = names.find(id);
    return found == names.end() ? QString() : found->second;
}

std::optional<Error> takeNames(store::Reader& reader, SeasonRecords& records)
{
    std::vector<District> districts;
    std::vector<Member> members;
    if (auto error = take(store::districts(reader), districts)) return error;
    if (auto error = take(store::members(reader), members)) return error;
    for (const District& district : districts)
        records.names[district.id] = QString::fromStdString(district.name);
    for (const Member& member : members) records.names[member.id] = QString::fromStdString(member.name);
    return std::nullopt;
}

void sortByPlace(SeasonRecords& records)
{
    // "bertha 9" comes before "bertha 10".
    QCollator order;
    order.setNumericMode(true);
    const auto key = [&](const Trap& trap) {
        return records.districtOf(trap) + QChar(u'\n') + records.title(trap);
    };
    std::vector<std::pair<QCollatorSortKey, std::size_t>> keyed;
    keyed.reserve(records.traps.size());
    for (std::size_t i = 0; i < records.traps.size(); ++i)
        keyed.emplace_back(order.sortKey(key(records.traps[i])), i);
    std::stable_sort(
        keyed.begin(), keyed.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Trap> sorted;
    sorted.reserve(keyed.size());
    for (const auto& entry : keyed) sorted.push_back(std::move(records.traps[entry.second]));
    records.traps = std::move(sorted);
}

} // namespace

QString SeasonRecords::title(const Trap& trap) const
{
    const Site* site = siteOf(trap);
    const QString tag = QString::fromStdString(trap.tag);
    if (!site || site->name.empty()) return tag;
    const QString name = QString::fromStdString(site->name);
    return tag.isEmpty() ? name : QStringLiteral("%1 · %2").arg(name, tag);
}

QString SeasonRecords::districtOf(const Trap& trap) const
{
    const Site* site = siteOf(trap);
    return site ? nameIn(names, site->district) : QString();
}

QString SeasonRecords::keeperOf(const Trap& trap) const
{
    const Site* site = siteOf(trap);
    return site ? nameIn(names, site->keeper) : QString();
}

Result<Season> seasonWanted(store::Reader& reader, std::optional<int> year, LocalDay today)
{
    auto known = store::seasons(reader);
    if (!known) return known.error();
    std::optional<Season> wanted;
    for (Season& season : *known)
        if (season.year && (year ? *season.year == *year : *season.year <= yearOf(today)))
            wanted = std::move(season);
    if (!wanted)
        return Error{ErrorCode::NameMissing, {"season", std::to_string(year.value_or(yearOf(today)))}};
    return std::move(*wanted);
}

Result<SeasonRecords> namedRecords(store::Reader& reader, const Season& season, store::VisitsFor wanted)
{
    auto read = store::seasonRecords(reader, season, wanted);
    if (!read) return read.error();
    SeasonRecords records{std::move(*read), {}};
    if (auto error = takeNames(reader, records)) return *error;
    sortByPlace(records);
    return records;
}

Result<Trap> trapNamed(const SeasonRecords& records, const std::string& name)
{
    const QString wanted = QString::fromStdString(name).simplified();
    const auto isCalled = [&](const QString& called) {
        return called.compare(wanted, Qt::CaseInsensitive) == 0;
    };
    const Trap* found = nullptr;
    for (const Trap& trap : records.traps) {
        const Site* site = records.siteOf(trap);
        const bool isMeant = isCalled(records.title(trap)) || isCalled(QString::fromStdString(trap.tag))
            || isCalled(QString::fromStdString(formatUuid(trap.id)))
            || (site && isCalled(QString::fromStdString(site->name)));
        if (!isMeant) continue;
        if (found) return Error{ErrorCode::NameAmbiguous, {"trap", name}};
        found = &trap;
    }
    if (!found) return Error{ErrorCode::NameMissing, {"trap", name}};
    return *found;
}

} // namespace duskrow::tool
