// SPDX-License-Identifier: MIT
#include "app/question/questions_view_model.h"

#include <algorithm>
#include <utility>

#include "app/question/question_edits.h"
#include "app/trap_words.h"
#include "store/queries.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

using Told = QuestionsViewModel::Told;

QString nameOf(const std::vector<Member>& members, const Uuid& member)
{
    const auto found = std::ranges::find(members, member, &Member::id);
    return found == members.end() ? QuestionsViewModel::tr("a coordinator")
                                  : QString::fromStdString(found->name);
}

text::Animal animalIn(const Animals& animals, const std::optional<Trap>& trap)
{
    const auto found = trap ? animals.find(trap->pest) : animals.end();
    return found == animals.end() ? text::Animal() : found->second;
}

// The record as it stands now, in a line.
Result<QString> aboutOf(store::Reader& reader, const Question& question, const Animals& animals)
{
    QString line;
    const auto trap = store::trap(reader, question.trap);
    if (!trap) return trap.error();
    if (*trap) {
        const auto site = store::site(reader, (*trap)->site);
        if (!site) return site.error();
        line = *site ? trapTitle(**site, **trap) : tagWords(**trap);
    }
    const auto visit = store::visit(reader, question.subject);
    if (!visit) return visit.error();
    const auto& day = *visit && (*visit)->day ? (*visit)->day : question.day;
    if (day) line = QStringLiteral("%1, %2").arg(line, text::shortDay(*day));
    if (!*visit) return line;
    const QString count = (*visit)->pest ? animalIn(animals, *trap).amount(*(*visit)->pest)
        : (*visit)->outcome              ? text::name(*(*visit)->outcome)
                                         : QString();
    return count.isEmpty() ? line : QStringLiteral("%1: %2").arg(line, count);
}

Result<std::vector<Told>> waitingFor(store::Reader& reader, const Uuid& me, const Animals& animals)
{
    const auto open = store::openQuestions(reader);
    if (!open) return open.error();
    const auto members = store::members(reader);
    if (!members) return members.error();
    std::vector<Told> all;
    for (const store::AskedQuestion& asked : *open) {
        if (asked.answer || asked.question.member != me) continue;
        const auto about = aboutOf(reader, asked.question, animals);
        if (!about) return about.error();
        all.push_back({asked,
            QuestionsViewModel::tr("Asked by %1, %2", "a name, a day")
                .arg(nameOf(*members, asked.by), text::shortDay(asked.on)),
            *about});
    }
    return all;
}

} // namespace

QuestionsViewModel::QuestionsViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &QuestionsViewModel::refresh);
    refresh();
}

void QuestionsViewModel::refresh()
{
    if (m_isLooking) {
        m_mustLookAgain = true;
        return;
    }
    const auto& me = session().me();
    if (!me) return;
    m_isLooking = true;
    session().lookUp<std::vector<Told>>(
        this,
        [me = me->id, animals = animalsOf(session())](
            store::Reader& reader) { return waitingFor(reader, me, animals); },
        [this](const Result<std::vector<Told>>& found) {
            m_isLooking = false;
            if (!found) {
                tell(found.error());
            } else {
                m_found = *found;
                Q_EMIT shown();
            }
            if (std::exchange(m_mustLookAgain, false)) refresh();
        });
}

QString QuestionsViewModel::question() const
{
    if (m_found.empty()) return {};
    return QString::fromStdString(formatUuid(m_found.front().asked.question.id));
}

QString QuestionsViewModel::words() const
{
    return m_found.empty() ? QString() : QString::fromStdString(m_found.front().asked.question.words);
}

QString QuestionsViewModel::subject() const
{
    if (m_found.empty()) return {};
    return QStringLiteral("visit/")
        + QString::fromStdString(formatUuid(m_found.front().asked.question.subject));
}

void QuestionsViewModel::itIsRight()
{
    keep(Answered::Right, {});
}

void QuestionsViewModel::answer(const QString& words)
{
    if (const QString said = words.trimmed(); !said.isEmpty()) keep(std::nullopt, said);
}

void QuestionsViewModel::keep(std::optional<Answered> answered, const QString& words)
{
    if (m_busy || m_found.empty()) return;
    m_busy = true;
    Q_EMIT shown();
    Edit edit =
        answering(session().store().programme(), m_found.front().asked, answered, words.toStdString());
    session().keep({std::move(edit)}, std::nullopt, this, [this](const Result<store::Kept>& kept) {
        m_busy = false;
        if (!kept) {
            tell(kept.error());
        } else {
            clearTrouble();
            m_found.erase(m_found.begin());
            m_saidLine = tr("Your answer is kept here; it goes along with the next exchange.");
        }
        Q_EMIT shown();
    });
}

} // namespace duskrow::app
