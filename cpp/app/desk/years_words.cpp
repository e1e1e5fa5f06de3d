// SPDX-License-Identifier: MIT
#include "app/desk/years_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>
#include <functional>

#include "app/session.h"
#include "app/trap_words.h"
#include "domain/rules/bands.h"
#include "text/amounts.h"
#include "text/desk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct Years {
    Q_DECLARE_TR_FUNCTIONS(Years)
};

QString amount(double moths)
{
    const bool isWhole = moths >= 10 || moths == static_cast<double>(static_cast<qint64>(moths));
    return QLocale().toString(moths, 'f', isWhole ? 0 : 1);
}

QString fact(const QString& label, const QString& value)
{
    return label + QLatin1Char('\t') + value;
}

// "11 of 14, 2 at least, 1 not counted"
QString countedWords(std::size_t full, std::size_t atLeast, std::size_t uncounted)
{
    const QLocale locale;
    const auto said = [&](std::size_t count) { return locale.toString(static_cast<qulonglong>(count)); };
    QStringList words{Years::tr("%1 of %2").arg(said(full), said(full + atLeast + uncounted))};
    if (atLeast > 0) words << Years::tr("%1 at least").arg(said(atLeast));
    if (uncounted > 0) words << Years::tr("%1 not counted").arg(said(uncounted));
    return words.join(QStringLiteral(", "));
}

QStringList spreadFacts(const CatchSpread& spread)
{
    if (spread.traps == 0) return {};
    QStringList facts{fact(Years::tr("Median trap"), amount(spread.median))};
    if (spread.traps > 1)
        facts << fact(Years::tr("Middle half of the traps"),
            Years::tr("%1 to %2").arg(amount(spread.lowerQuartile), amount(spread.upperQuartile)));
    facts << fact(Years::tr("Highest trap"), amount(spread.highest));
    return facts;
}

const RegionWeek* weekIn(const RegionSeason& season, const ReportingWeek& week)
{
    const auto found = std::ranges::find(season.weeks, week, &RegionWeek::week);
    return found == season.weeks.end() ? nullptr : &*found;
}

Row weekRow(const QString& title, const store::SeasonRecords& records, const DistrictSeason& of,
    const ReportingWeek& when)
{
    Row row{.title = title};
    const RegionWeek* week = weekIn(of.season, when);
    if (!week) {
        row.flags << fact(Years::tr("Nobody counted a night of this week here."), {});
        return row;
    }
    row.flags = spreadFacts(week->catches);
    row.flags << fact(
        Years::tr("Counted in full"), countedWords(week->catches.traps, week->atLeast, week->uncounted));
    if (!week->highest) return row;
    const Trap& trap = *of.traps[*week->highest];
    const Site* site = records.siteOf(trap);
    row.detail = Years::tr("Highest: %1").arg(site ? trapTitle(*site, trap) : tagWords(trap));
    row.route = QStringLiteral("season");
    row.subject = QString::fromStdString(formatUuid(trap.id));
    return row;
}

// One group through the years; the year it has no trap in is left out.
Row groupRow(const QString& title, const std::vector<RegionYear>& years,
    const std::function<const GroupOfYear*(const RegionYear&)>& groupOf)
{
    Row row{.title = title};
    for (const RegionYear& year : years) {
        const GroupOfYear* group = groupOf(year);
        if (!group) continue;
        const QString counted = countedWords(group->catches.traps, group->minimum, group->uncounted);
        row.flags << fact(QString::number(year.year),
            group->catches.traps > 0 ? Years::tr("median %1 · %2").arg(amount(group->catches.median), counted)
                                     : counted);
    }
    return row;
}

const GroupOfYear* groupIn(const std::vector<GroupOfYear>& groups, const Uuid& id)
{
    const auto found = std::ranges::lower_bound(groups, id, {}, &GroupOfYear::group);
    return found != groups.end() && found->group == id ? &*found : nullptr;
}

const std::vector<GroupOfYear>& groupsOf(const RegionYear& year, bool byKeeper)
{
    return byKeeper ? year.keepers : year.districts;
}

// By name; the latest year first says who is there now.
std::vector<std::pair<QString, Uuid>> groupNames(
    const YearNames& names, const std::vector<RegionYear>& years, bool byKeeper)
{
    std::map<Uuid, QString> known;
    for (const RegionYear& year : years)
        for (const GroupOfYear& group : groupsOf(year, byKeeper))
            known.try_emplace(
                group.group, byKeeper ? names.member(group.group) : names.district(group.group));
    std::vector<std::pair<QString, Uuid>> sorted;
    for (const auto& [id, name] : known) sorted.emplace_back(name, id);
    std::ranges::sort(sorted, [](const auto& a, const auto& b) {
        const int order = QString::localeAwareCompare(a.first, b.first);
        return order != 0 ? order < 0 : a.second < b.second;
    });
    return sorted;
}

formats::Cell numberCell(double value)
{
    return QString::number(value, 'g', 10).toStdString();
}

// Median, quartiles, highest, counted in full, at least, uncounted; nothing where none was counted in full.
void addSpread(
    std::vector<formats::Cell>& row, const CatchSpread& spread, std::size_t atLeast, std::size_t uncounted)
{
    for (const double value : {spread.median, spread.lowerQuartile, spread.upperQuartile, spread.highest})
        row.push_back(spread.traps > 0 ? numberCell(value) : formats::Cell{});
    for (const std::size_t count : {spread.traps, atLeast, uncounted})
        row.emplace_back(std::to_string(count));
}

constexpr std::array spreadHeads{"median", "lower_quartile", "upper_quartile", "highest", "traps_in_full",
    "traps_at_least", "traps_uncounted"};

QString found(const std::map<Uuid, QString>& names, const Uuid& id, const QString& none)
{
    const auto name = names.find(id);
    return name == names.end() || name->second.isEmpty() ? none : name->second;
}

} // namespace

Result<YearNames> YearNames::read(store::Reader& reader)
{
    YearNames names;
    const auto districts = store::districts(reader);
    if (!districts) return districts.error();
    const auto members = store::members(reader);
    if (!members) return members.error();
    for (const District& one : *districts) names.districts[one.id] = QString::fromStdString(one.name);
    for (const Member& one : *members) names.members[one.id] = QString::fromStdString(one.name);
    return names;
}

QString YearNames::district(const Uuid& id) const
{
    return found(districts, id, Years::tr("No district"));
}

QString YearNames::member(const Uuid& id) const
{
    return found(members, id, Years::tr("Cooperator not known"));
}

std::vector<Row> weekRows(
    const YearNames& names, const store::RegionOfSeason& season, const ReportingWeek& week)
{
    std::vector<Row> rows;
    for (const DistrictSeason& district : season.result.districts)
        rows.push_back(weekRow(names.district(district.district), season.records, district, week));
    std::ranges::sort(
        rows, [](const Row& a, const Row& b) { return QString::localeAwareCompare(a.title, b.title) < 0; });
    rows.insert(rows.begin(), weekRow(Years::tr("All districts"), season.records, season.result.whole, week));
    return rows;
}

std::vector<Row> yearRows(const YearNames& names, const std::vector<RegionYear>& years, bool byKeeper)
{
    std::vector<Row> rows{
        groupRow(Years::tr("All traps"), years, [](const RegionYear& year) { return &year.all; })};
    for (const auto& [name, id] : groupNames(names, years, byKeeper))
        rows.push_back(groupRow(
            name, years, [&](const RegionYear& year) { return groupIn(groupsOf(year, byKeeper), id); }));
    return rows;
}

formats::BandYearsInput bandYearsInput(
    const std::vector<RegionYear>& years, const Protocol& protocol, const std::string& type)
{
    formats::BandYearsInput input;
    input.title = Years::tr("Bands of all years").toStdString();
    const auto bands = bandsFor(protocol, type);
    if (!bands) return input;
    const std::string language = Session::language();
    for (const Band& band : *bands) input.bands.push_back(band.name.in(language));
    QStringList said;
    for (const RegionYear& year : years) {
        const QString label =
            year.isSoFar ? Years::tr("%1, so far").arg(year.year) : QString::number(year.year);
        input.years.push_back({label.toStdString(), year.inBand});
        QStringList parts;
        for (std::size_t i = 0; i < input.bands.size(); ++i)
            parts << QStringLiteral("%1 %2").arg(year.inBand[i]).arg(QString::fromStdString(input.bands[i]));
        said << QStringLiteral("%1: %2").arg(label, parts.join(QStringLiteral(", ")));
    }
    input.description = said.join(QStringLiteral("; ")).toStdString();
    return input;
}

std::vector<Row> bandRows(
    const std::vector<RegionYear>& years, const Protocol& protocol, const std::string& type)
{
    const formats::BandYearsInput input = bandYearsInput(years, protocol, type);
    std::vector<Row> rows;
    for (std::size_t i = 0; i < input.years.size(); ++i) {
        Row row{.title = QString::fromStdString(input.years[i].label)};
        for (std::size_t level = 0; level < input.bands.size(); ++level)
            row.flags << fact(QString::fromStdString(input.bands[level]),
                QLocale().toString(static_cast<qulonglong>(years[i].inBand[level])));
        if (years[i].bandless > 0)
            row.flags << fact(
                Years::tr("without a band"), QLocale().toString(static_cast<qulonglong>(years[i].bandless)));
        rows.push_back(std::move(row));
    }
    return rows;
}

formats::Table weekTable(const YearNames& names, const store::RegionOfSeason& season)
{
    formats::Table table{"weeks", {"district", "first_day", "last_day"}, {}};
    table.header.insert(table.header.end(), spreadHeads.begin(), spreadHeads.end());
    for (const DistrictSeason& district : season.result.districts)
        for (const RegionWeek& week : district.season.weeks) {
            std::vector<formats::Cell> row{names.district(district.district).toStdString(),
                formatDay(week.week.first), formatDay(week.week.last)};
            addSpread(row, week.catches, week.atLeast, week.uncounted);
            table.rows.push_back(std::move(row));
        }
    return table;
}

formats::Table yearTable(const YearNames& names, const std::vector<RegionYear>& years, bool byKeeper)
{
    formats::Table table{"years", {byKeeper ? "cooperator" : "district", "year", "up_to"}, {}};
    table.header.insert(table.header.end(), spreadHeads.begin(), spreadHeads.end());
    for (const auto& [name, id] : groupNames(names, years, byKeeper))
        for (const RegionYear& year : years) {
            const GroupOfYear* group = groupIn(groupsOf(year, byKeeper), id);
            if (!group) continue;
            std::vector<formats::Cell> row{name.toStdString(), std::to_string(year.year), formatDay(year.on)};
            addSpread(row, group->catches, group->minimum, group->uncounted);
            table.rows.push_back(std::move(row));
        }
    return table;
}

formats::Table bandTable(const formats::BandYearsInput& input)
{
    formats::Table table{"bands", {"year"}, {}};
    table.header.insert(table.header.end(), input.bands.begin(), input.bands.end());
    for (const formats::BandYear& year : input.years) {
        std::vector<formats::Cell> row{year.label};
        for (const std::size_t traps : year.inBand) row.emplace_back(std::to_string(traps));
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace duskrow::app
