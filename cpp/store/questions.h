// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/question.h"
#include "store/reader.h"

namespace duskrow::store {

struct GivenAnswer {
    domain::Answer answer;
    domain::Uuid by;
    domain::LocalDay on;
};

// A question with who asked and what came back.
struct AskedQuestion {
    domain::Question question;
    domain::Uuid site;
    domain::Uuid by;
    domain::LocalDay on;
    std::optional<GivenAnswer> answer;
};

// Those that no coordinator has settled, oldest day of work first. Errors  as in queries.h
domain::Result<std::vector<AskedQuestion>> openQuestions(Reader& reader);
// The same, about one record.
domain::Result<std::vector<AskedQuestion>> openQuestionsOn(Reader& reader, const domain::Uuid& record);

} // namespace duskrow::store
