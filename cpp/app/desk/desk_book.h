// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/rules/flag.h"
#include "store/desk_records.h"

namespace duskrow::app {

// Whoever has a trap: two of one name are two.
struct TrapHolder {
    domain::Uuid member; // nil for a borrower from outside
    QString name; // empty where nobody is known

    bool operator==(const TrapHolder&) const = default;
};

// The season on a coordinator's desk: read on another thread, then asked for any week.
class DeskBook {
public:
    // Errors  as in queries.h
    static domain::Result<DeskBook> read(
        store::Reader& reader, const domain::Season& season, const domain::StreamId& own);

    [[nodiscard]] domain::WeekDesk weekOf(domain::ReportingWeek week, domain::LocalDay today) const;
    [[nodiscard]] const store::DeskRecords& records() const { return m_records; }
    [[nodiscard]] const domain::SeasonWeek& rhythm() const { return m_rhythm; }

    [[nodiscard]] const QString& title(std::size_t trap) const
    {
        return m_titles[trap];
    } // "Slough corner · bertha 1"
    // Traps by district and title: where each stands among all.
    [[nodiscard]] std::size_t rank(std::size_t trap) const { return m_ranks[trap]; }
    [[nodiscard]] QString districtName(const domain::Uuid& district) const; // "no district"
    [[nodiscard]] std::optional<std::size_t> trapAt(const domain::Uuid& trap) const; // its place
    // Who has a trap on a day: the borrower, else the keeper.
    [[nodiscard]] TrapHolder holder(std::size_t trap, domain::LocalDay day) const;
    [[nodiscard]] QString person(std::size_t trap, domain::LocalDay day) const
    {
        return holder(trap, day).name;
    }
    [[nodiscard]] bool cameIn(const domain::VisitOfDesk& visit) const
    {
        return m_records.cameIn.contains(visit.visit);
    }

private:
    void name();
    [[nodiscard]] QString memberName(const domain::Uuid& member) const;

    store::DeskRecords m_records;
    domain::SeasonWeek m_rhythm;
    std::vector<QString> m_titles;
    std::vector<std::size_t> m_ranks;
};

// The device setting that says how far the coordinator has looked.
inline constexpr const char* deskMark = "desk_mark";

} // namespace duskrow::app
