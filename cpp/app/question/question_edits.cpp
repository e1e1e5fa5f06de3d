// SPDX-License-Identifier: MIT
#include "app/question/question_edits.h"

#include "app/exchange/people.h"

namespace duskrow::app {

using namespace duskrow::domain;

Edit settling(const store::AskedQuestion& asked)
{
    return {"question", asked.question.id, asked.site, {{"settled", true}}};
}

Edit answering(const Uuid& programme, const store::AskedQuestion& asked, std::optional<Answered> answered,
    const std::string& words)
{
    Answer answer;
    answer.id = answerId(programme, asked.question.id);
    answer.question = asked.question.id;
    answer.trap = asked.question.trap;
    answer.day = asked.question.day;
    answer.answered = answered;
    answer.words = words;
    return creation(answer, asked.site);
}

Result<std::vector<Edit>> saidByCorrecting(const Session& session, const Uuid& record)
{
    std::vector<Edit> edits;
    const auto open = store::openQuestionsOn(session.reader(), record);
    if (!open) return open.error();
    if (open->empty()) return edits;
    const Uuid programme = session.store().programme();
    const auto people = People::read(session.reader(), programme, session.store().stream());
    if (!people) return people.error();
    for (const store::AskedQuestion& asked : *open) {
        if (people->isCoordinator())
            edits.push_back(settling(asked));
        else if (!asked.answer)
            edits.push_back(answering(programme, asked, Answered::Corrected, {}));
    }
    return edits;
}

} // namespace duskrow::app
