// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <vector>

#include "domain/rules/trap_facts.h"
#include "store/queries.h"

namespace duskrow::app {

// Who looks at a list of traps, and whether it shows the traps of others too.
struct Viewer {
    domain::Uuid member;
    std::string name;
    bool seesAll = false; // agronomists and coordinators look after the traps of many

    static Viewer of(const std::optional<domain::Member>& me);
};

enum class VisitFields { ForDue, ForCatch };

// All of a season at once, for the lists that go over every trap. Read on another thread than the screens'.
class SeasonRecords {
public:
    static domain::Result<SeasonRecords> read(
        store::Reader& reader, const domain::Uuid& season, VisitFields fields);

    [[nodiscard]] const std::vector<domain::Site>& sites() const { return m_sites; }
    [[nodiscard]] const std::vector<domain::Trap>& traps() const { return m_traps; }
    [[nodiscard]] std::size_t visits() const { return m_visits.size(); }

    [[nodiscard]] domain::TrapFacts factsOf(const domain::Trap& trap) const;
    [[nodiscard]] const domain::Site* siteOf(const domain::Trap& trap) const; // null when it is not there
    // The loan that holds on a day; null when the trap is in its keeper's hands.
    [[nodiscard]] const domain::Loan* loanOf(const domain::Trap& trap, domain::LocalDay today) const;

    // Kept by the viewer, in the viewer's hands for a while, or the viewer sees all.
    [[nodiscard]] bool isShownTo(
        const Viewer& viewer, const domain::Trap& trap, domain::LocalDay today) const;

    // A field by itself, whatever is lent in it.
    [[nodiscard]] static bool isShownTo(const Viewer& viewer, const domain::Site& site);

    // "Slough corner · bertha trap 1"
    [[nodiscard]] QString titleOf(const domain::Trap& trap) const;

private:
    std::vector<domain::Site> m_sites; // by id
    std::vector<domain::Trap> m_traps;
    std::vector<domain::Visit> m_visits; // these by trap
    std::vector<domain::Service> m_services;
    std::vector<domain::Sample> m_samples;
    std::vector<domain::Loan> m_loans;
    std::vector<domain::Uuid> m_leftOut;
};

} // namespace duskrow::app
