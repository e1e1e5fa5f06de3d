// SPDX-License-Identifier: MIT
#include "app/desk/desk_book.h"

#include <QCollator>
#include <QCoreApplication>

#include <algorithm>
#include <numeric>

#include "app/trap_words.h"

namespace duskrow::app {

using namespace duskrow::domain;

Result<DeskBook> DeskBook::read(store::Reader& reader, const Season& season, const StreamId& own)
{
    const auto marked = reader.deviceSetting(deskMark);
    if (!marked) return marked.error();
    std::optional<std::int64_t> since;
    if (*marked) since = QString::fromStdString(**marked).toLongLong();
    auto records = store::deskRecords(reader, season.id, since, own);
    if (!records) return records.error();
    DeskBook book;
    book.m_records = std::move(*records);
    book.m_rhythm = seasonWeekOf(season).value_or(SeasonWeek{});
    book.name();
    return book;
}

void DeskBook::name()
{
    QCollator order;
    order.setNumericMode(true);
    order.setCaseSensitivity(Qt::CaseInsensitive);
    struct Place {
        bool isOfNone; // those of no district stand last
        QCollatorSortKey district;
        QCollatorSortKey title;
    };
    std::vector<Place> places;
    places.reserve(m_records.traps.size());
    for (const Trap& trap : m_records.traps) {
        const Site* site = m_records.siteOf(trap);
        m_titles.push_back(site ? trapTitle(*site, trap) : tagWords(trap));
        const Uuid district = site ? site->district : Uuid{};
        places.push_back(
            {district.isNil(), order.sortKey(districtName(district)), order.sortKey(m_titles.back())});
    }
    std::vector<std::size_t> sorted(places.size());
    std::iota(sorted.begin(), sorted.end(), std::size_t{0});
    std::stable_sort(sorted.begin(), sorted.end(), [&](std::size_t a, std::size_t b) {
        if (places[a].isOfNone != places[b].isOfNone) return places[b].isOfNone;
        const int byDistrict = places[a].district.compare(places[b].district);
        return byDistrict != 0 ? byDistrict < 0 : places[a].title.compare(places[b].title) < 0;
    });
    m_ranks.resize(sorted.size());
    for (std::size_t i = 0; i < sorted.size(); ++i) m_ranks[sorted[i]] = i;
}

WeekDesk DeskBook::weekOf(ReportingWeek week, LocalDay today) const
{
    WeekDesk desk = weekDesk(m_records.trapsOfDesk, m_records.visits, m_rhythm, week, today);
    std::ranges::sort(desk.traps, {}, [&](const TrapWeek& of) { return m_ranks[of.trap]; });
    return desk;
}

QString DeskBook::districtName(const Uuid& district) const
{
    const auto found = std::ranges::find(m_records.districts, district, &District::id);
    if (found != m_records.districts.end()) return QString::fromStdString(found->name);
    return QCoreApplication::translate("Desk", "No district");
}

std::optional<std::size_t> DeskBook::trapAt(const Uuid& trap) const
{
    const auto found = std::ranges::lower_bound(m_records.traps, trap, {}, &Trap::id);
    if (found == m_records.traps.end() || found->id != trap) return std::nullopt;
    return static_cast<std::size_t>(found - m_records.traps.begin());
}

QString DeskBook::memberName(const Uuid& member) const
{
    const auto found = std::ranges::find(m_records.members, member, &Member::id);
    return found == m_records.members.end() ? QString() : QString::fromStdString(found->name);
}

TrapHolder DeskBook::holder(std::size_t trap, LocalDay day) const
{
    const auto [first, last] =
        std::ranges::equal_range(m_records.loans, m_records.traps[trap].id, {}, &Loan::trap);
    for (auto loan = first; loan != last; ++loan) {
        if ((loan->fromDay && *loan->fromDay > day) || (loan->untilDay && *loan->untilDay < day)) continue;
        const QString known = memberName(loan->member);
        return {loan->member, known.isEmpty() ? QString::fromStdString(loan->borrower) : known};
    }
    const Site* site = m_records.siteOf(m_records.traps[trap]);
    return site ? TrapHolder{site->keeper, memberName(site->keeper)} : TrapHolder{};
}

} // namespace duskrow::app
