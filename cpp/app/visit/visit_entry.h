// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>

#include "app/visit/trap_book.h"
#include "app/visit/visit_draft.h"
#include "domain/rules/visit_questions.h"

namespace duskrow::app {

// A visit being entered or corrected: the trap's book, the draft, and what the two say together. Each change
// is saved as a draft at once.
class VisitEntry : public QObject {
    Q_OBJECT

public:
    // before  the visit to be corrected; nothing for a new one
    VisitEntry(Session& session, TrapBook book, const std::optional<domain::Visit>& before, QObject* parent);

    [[nodiscard]] Session& session() const { return m_session; }
    [[nodiscard]] const TrapBook& book() const { return m_book; }
    [[nodiscard]] const VisitDraft& draft() const { return m_draft; }
    [[nodiscard]] const domain::Visit& visit() const { return m_draft.records().visit; }
    [[nodiscard]] const VisitPosition& position() const { return m_draft.position(); }
    [[nodiscard]] bool isCorrection() const { return m_isCorrection; }
    [[nodiscard]] bool wasResumed() const { return m_wasResumed; }
    [[nodiscard]] domain::LocalDay day() const;
    [[nodiscard]] QString draftKey() const;

    void change(const std::function<void(VisitRecords&)>& act, Undoing undoing = Undoing::EachOne);
    void go(const std::function<void(VisitPosition&)>& act);
    void undo();
    void startOver();

    // The trap's season with this visit as it stands now, and this visit's place in it.
    [[nodiscard]] domain::TrapSeason season() const;
    [[nodiscard]] std::optional<domain::VisitCatch> caught() const;
    // The trap as it stood before this visit.
    [[nodiscard]] domain::TrapNow before() const;
    [[nodiscard]] std::vector<domain::AskedQuestion> questions() const;
    // Moths of the season before this visit.
    [[nodiscard]] domain::Moths soFarBefore() const;
    // What is to be kept: the visit, its services and its sample; of a correction only what differs.
    [[nodiscard]] std::vector<domain::Edit> edits() const;
    // The sample of this visit that is already kept.
    [[nodiscard]] const domain::Sample* keptSample() const;

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] VisitDraft begin(const std::optional<domain::Visit>& before) const;
    [[nodiscard]] std::vector<domain::Visit> others() const;
    void addServices(std::vector<domain::Edit>& edits) const;
    void addSample(std::vector<domain::Edit>& edits) const;
    void notePlace(domain::Visit& visit) const;
    void save();

    Session& m_session;
    TrapBook m_book;
    VisitDraft m_draft;
    bool m_isCorrection;
    bool m_wasResumed = false;
};

} // namespace duskrow::app
