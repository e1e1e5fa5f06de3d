// SPDX-License-Identifier: MIT
#include "text/question_text.h"

#include <QCoreApplication>

#include "text/code_names.h"
#include "text/flag_text.h"
#include "text/upper_first.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct QuestionWords {
    Q_DECLARE_TR_FUNCTIONS(Question)
};

} // namespace

QString readyQuestion(const Flag& flag, const Animal& animal)
{
    //: a sentence that says why a record is looked at
    return QuestionWords::tr("%1 Is it right?").arg(flagReason(flag, {}, animal));
}

QString readyQuestion(const QString& count)
{
    return QuestionWords::tr("Is this count right: %1?").arg(count);
}

QString answerWords(const Answer& answer)
{
    const QString words = QString::fromStdString(answer.words);
    if (!answer.answered) return words;
    //: "It is right."
    const QString answered = QuestionWords::tr("%1.").arg(upperFirst(name(*answer.answered)));
    return words.isEmpty() ? answered : answered + QLatin1Char(' ') + words;
}

} // namespace duskrow::text
