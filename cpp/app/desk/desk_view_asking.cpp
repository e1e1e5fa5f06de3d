// SPDX-License-Identifier: MIT
// What a desk asks of whoever has a trap, and how it stands.
#include <algorithm>

#include "app/desk/desk_questions.h"
#include "app/desk/desk_view_model.h"
#include "app/desk/desk_words.h"
#include "app/question/question_edits.h"
#include "text/question_text.h"

namespace duskrow::app {

using namespace duskrow::domain;
using store::AskedQuestion;

namespace {

Uuid idIn(const QString& words)
{
    return parseUuid(words.toStdString()).value_or(Uuid{});
}

QString keyOf(const AskedQuestion& asked)
{
    return QStringLiteral("question/") + idWords(asked.question.id);
}

} // namespace

std::vector<const AskedQuestion*> DeskViewModel::unflagged() const
{
    std::vector<const AskedQuestion*> all;
    for (const AskedQuestion& asked : m_questions)
        if (std::ranges::find(m_flags, asked.question.subject, &Flag::visit) == m_flags.end())
            all.push_back(&asked);
    return all;
}

QString DeskViewModel::askedState(const Uuid& visit) const
{
    if (visit.isNil()) return {};
    const auto found = std::ranges::find_if(
        m_questions, [&](const AskedQuestion& asked) { return asked.question.subject == visit; });
    return found == m_questions.end() ? QString() : questionState(*found);
}

DeskLine DeskViewModel::lineOf(const AskedQuestion& asked) const
{
    const auto trap = m_book->trapAt(asked.question.trap);
    const Row row = questionRow(*m_book, asked);
    DeskLine line{.key = keyOf(asked), .trap = idWords(asked.question.trap)};
    line.title = trap ? m_book->title(*trap) : tr("No trap that is known here");
    line.besides = row.title;
    line.right = questionState(asked);
    line.remark = asked.answer ? row.besides : row.detail;
    line.isDue = true;
    return line;
}

void DeskViewModel::showQuestions()
{
    std::vector<Row> rows;
    for (const AskedQuestion& asked : m_questions) {
        const bool isChosen = keyOf(asked) == m_chosen;
        if (m_trap.isNil() ? !isChosen : asked.question.trap != m_trap) continue;
        rows.push_back(questionRow(*m_book, asked));
        if (isChosen || m_asked.isEmpty()) m_asked = rows.back().subject;
    }
    m_trapQuestions.show(std::move(rows));
}

const VisitOfDesk* DeskViewModel::visitOfDesk(const Uuid& visit) const
{
    if (!m_book || visit.isNil()) return nullptr;
    const auto& all = m_book->records().visits;
    const auto found = std::ranges::find(all, visit, &VisitOfDesk::visit);
    return found == all.end() ? nullptr : &*found;
}

const VisitOfDesk* DeskViewModel::askableVisit() const
{
    if (const VisitOfDesk* flagged = visitOfDesk(idIn(m_asked))) return flagged;
    const auto trap = m_book ? m_book->trapAt(m_trap) : std::nullopt;
    if (!trap) return nullptr;
    const auto& all = m_book->records().visits;
    const auto ofWeek = std::ranges::find(m_desk.traps, *trap, &TrapWeek::trap);
    if (ofWeek != m_desk.traps.end() && ofWeek->visit) return &all[*ofWeek->visit];
    const auto [first, last] = std::ranges::equal_range(all, m_trap, {}, &VisitOfDesk::trap);
    return first == last ? nullptr : &*(last - 1);
}

QString DeskViewModel::askable() const
{
    const VisitOfDesk* visit = askableVisit();
    return visit ? idWords(visit->visit) : QString();
}

QString DeskViewModel::askableDay() const
{
    const VisitOfDesk* visit = askableVisit();
    return visit ? visitWords(*visit) : QString();
}

QString DeskViewModel::readyWords(const QString& visit) const
{
    const Uuid id = idIn(visit);
    const auto flag = std::ranges::find(m_flags, id, &Flag::visit);
    if (flag != m_flags.end()) return text::readyQuestion(*flag, animalAt(flag->trap));
    const VisitOfDesk* of = visitOfDesk(id);
    if (!of) return {};
    return text::readyQuestion(
        standingWords(of->pest ? WeekStanding::Counted : WeekStanding::NotCounted, of, animalAt(of->trap)));
}

QString DeskViewModel::whoIsAsked(const QString& visit) const
{
    const VisitOfDesk* of = visitOfDesk(idIn(visit));
    const auto trap = of ? m_book->trapAt(of->trap) : std::nullopt;
    const QString name = trap ? m_book->person(*trap, of->day) : QString();
    return name.isEmpty() ? tr("somebody") : name;
}

void DeskViewModel::askAbout(const QString& visit, const QString& words)
{
    const VisitOfDesk* of = visitOfDesk(idIn(visit));
    const auto trap = of ? m_book->trapAt(of->trap) : std::nullopt;
    const QString said = words.trimmed();
    if (!trap || said.isEmpty()) return;
    const TrapHolder holder = m_book->holder(*trap, of->day);
    if (holder.member.isNil()) return tell(Error{ErrorCode::Empty, {"keeper"}}); // whose field it is
    Question question;
    question.id = session().newId();
    question.subject = of->visit;
    question.trap = of->trap;
    question.member = holder.member;
    question.day = of->day;
    question.words = said.toStdString();
    keep({creation(question, m_book->records().traps[*trap].site)}, {});
}

void DeskViewModel::settle(const QString& question)
{
    const Uuid id = idIn(question);
    for (const AskedQuestion& asked : m_questions)
        if (asked.question.id == id) return keep({settling(asked)}, {id});
}

std::vector<Edit> DeskViewModel::settlingOf(const std::set<Uuid>& visits) const
{
    std::vector<Edit> edits;
    for (const AskedQuestion& asked : m_questions)
        if (visits.contains(asked.question.subject)) edits.push_back(settling(asked));
    return edits;
}

} // namespace duskrow::app
