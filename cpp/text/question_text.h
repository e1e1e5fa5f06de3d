// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/records/question.h"
#include "domain/rules/flag.h"
#include "text/animal.h"

namespace duskrow::text {

// What a coordinator may ask as it stands: why the record is looked at, and whether it is right.
QString readyQuestion(const domain::Flag& flag, const Animal& animal = {});
// Where nothing is flagged: "Is this count right: 47 moths?"
QString readyQuestion(const QString& count);
// "It is right. I counted twice."
QString answerWords(const domain::Answer& answer);

} // namespace duskrow::text
