// SPDX-License-Identifier: MIT
#include "app/desk/desk_questions.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/desk/desk_words.h"
#include "text/amounts.h"
#include "text/question_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct DeskQuestionText {
    Q_DECLARE_TR_FUNCTIONS(DeskQuestion)
};

} // namespace

QString questionState(const store::AskedQuestion& asked)
{
    return asked.answer ? DeskQuestionText::tr("answered") : DeskQuestionText::tr("asked");
}

QString memberWords(const DeskBook& book, const Uuid& member)
{
    const auto& members = book.records().members;
    const auto found = std::ranges::find(members, member, &Member::id);
    return found == members.end() ? DeskQuestionText::tr("somebody") : QString::fromStdString(found->name);
}

Row questionRow(const DeskBook& book, const store::AskedQuestion& asked)
{
    Row row{.key = idWords(asked.question.id), .subject = idWords(asked.question.subject)};
    //: names, then a day
    row.title = DeskQuestionText::tr("%1 asked %2, %3")
                    .arg(memberWords(book, asked.by), memberWords(book, asked.question.member),
                        text::shortDay(asked.on));
    row.detail = QString::fromStdString(asked.question.words);
    if (!asked.answer) {
        row.besides = DeskQuestionText::tr("No answer yet.");
        return row;
    }
    //: a name, a day, what was answered
    row.besides = DeskQuestionText::tr("%1 answered, %2: %3")
                      .arg(memberWords(book, asked.answer->by), text::shortDay(asked.answer->on),
                          text::answerWords(asked.answer->answer));
    return row;
}

} // namespace duskrow::app
