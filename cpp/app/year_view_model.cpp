// SPDX-License-Identifier: MIT
#include "app/year_view_model.h"

#include <algorithm>

#include "app/roll_over.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/season_week.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// The month from which next year may be begun where no protocol says when traps come down.
constexpr std::chrono::month monthToLookAhead{std::chrono::August}; // common practice, no source

QString weekdayOf(const std::optional<int>& iso)
{
    return iso && *iso >= 1 && *iso <= 7 ? text::weekday(*iso) : QString();
}

} // namespace

YearViewModel::YearViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &YearViewModel::show);
    show();
}

int YearViewModel::year() const
{
    const auto& season = session().season();
    return season && season->year ? *season->year : yearOf(session().clock().today());
}

QString YearViewModel::programme() const
{
    const auto& programme = session().programme();
    return programme ? QString::fromStdString(programme->name) : QString();
}

void YearViewModel::show()
{
    clearTrouble();
    showFacts();
    showProtocols();
    showPeople();
    showNextYear();
    Q_EMIT shown();
}

void YearViewModel::showFacts()
{
    std::vector<Row> rows;
    const auto add = [&rows](const QString& title, const QString& value) {
        if (!value.isEmpty()) rows.push_back({.title = title, .besides = value});
    };
    if (const auto& season = session().season()) {
        add(tr("The week begins on"), weekdayOf(season->weekStart));
        add(tr("Traps are counted on"), weekdayOf(season->countDay));
        if (season->graceDays.value_or(0) > 0)
            add(tr("Grace before and after"), text::days(std::chrono::days{*season->graceDays}));
        QString report = weekdayOf(season->reportDay);
        if (!report.isEmpty() && season->reportMinute)
            report += QStringLiteral(", ") + text::timeOfDay(*season->reportMinute);
        add(tr("Report by"), report);
    }
    const auto districts = store::districts(session().reader());
    if (!districts) return tell(districts.error());
    QStringList names;
    for (const District& district : *districts) names << QString::fromStdString(district.name);
    add(tr("Districts"), names.join(QStringLiteral(", ")));
    m_facts.show(std::move(rows));
}

void YearViewModel::showProtocols()
{
    std::vector<Row> rows;
    const auto& season = session().season();
    if (!season) return m_protocols.show({});
    const auto uses = store::protocolsInUse(session().reader(), season->id);
    if (!uses) return tell(uses.error());
    for (const ProtocolUse& use : *uses) {
        const Protocol* protocol = session().protocol(use.pest);
        Row row{.key = QString::fromStdString(use.pest), .title = QString::fromStdString(use.pest)};
        if (protocol) {
            row.title = QString::fromStdString(protocol->name.in(Session::language()));
            row.detail =
                tr("protocol %1 · cautions, figures, sources").arg(QString::fromStdString(protocol->version));
        }
        row.route = QStringLiteral("protocol");
        row.subject = row.key;
        rows.push_back(std::move(row));
    }
    m_protocols.show(std::move(rows));
}

void YearViewModel::showPeople()
{
    const auto members = store::members(session().reader());
    if (!members) return tell(members.error());
    std::vector<Row> rows;
    for (const Member& member : *members) {
        const bool isMe = session().me() && session().me()->id == member.id;
        Row row{.key = QString::fromStdString(formatUuid(member.id)),
            .title = QString::fromStdString(member.name)};
        row.besides = member.role ? text::name(*member.role) : QString();
        //: after one's own name and role in the list of people
        if (isMe) row.besides = row.besides.isEmpty() ? tr("you") : tr("%1, you").arg(row.besides);
        rows.push_back(std::move(row));
    }
    m_people.show(std::move(rows));
}

// A year that has no season yet: this one, or the next once this one's traps are down.
void YearViewModel::showNextYear()
{
    m_yearToBegin = 0;
    m_begunLine.clear();
    const auto seasons = store::seasons(session().reader());
    if (!seasons) return tell(seasons.error());
    const LocalDay today = session().clock().today();
    const int wanted = hasSeason() ? year() + 1 : year();
    const bool isThere = std::any_of(
        seasons->begin(), seasons->end(), [&](const Season& season) { return season.year == wanted; });
    if (isThere) {
        m_begunLine = tr("%1 is ready: it opens on 1 January.").arg(wanted);
        return;
    }
    const auto month = std::chrono::year_month_day{today}.month();
    if (!hasSeason() || month >= monthToLookAhead) m_yearToBegin = wanted;
}

void YearViewModel::rollOver()
{
    if (m_yearToBegin == 0) return;
    const auto edits = app::rollOver(session().reader(), session().store().programme(), m_yearToBegin);
    if (!edits) return tell(edits.error());
    if (edits->empty()) return;
    session().keep(*edits, std::nullopt, this, [this](const Result<store::Kept>& kept) {
        if (!kept) tell(kept.error());
    });
}

} // namespace duskrow::app
