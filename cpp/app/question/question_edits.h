// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "store/questions.h"

namespace duskrow::app {

domain::Edit settling(const store::AskedQuestion& asked);
// An answer by answered, by words, or both.
domain::Edit answering(const domain::Uuid& programme, const store::AskedQuestion& asked,
    std::optional<domain::Answered> answered, const std::string& words);
// What setting a record right says to the questions about it: a coordinator settles them, anybody else
// answers.
//
// Errors  as in queries.h
domain::Result<std::vector<domain::Edit>> saidByCorrecting(
    const Session& session, const domain::Uuid& record);

} // namespace duskrow::app
