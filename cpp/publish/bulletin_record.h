// SPDX-License-Identifier: MIT
#pragma once

#include "domain/log/edit.h"
#include "domain/records/bulletin.h"
#include "publish/week_draft.h"
#include "text/bulletin_words.h"

namespace duskrow::publish {

// What tells every phone of a published week; nothing where the records say the same already.
//
// draft   kept: one that is New or Reissued, or as it was published
// Errors  as in queries.h
domain::Result<std::optional<domain::Edit>> bulletinEdit(store::Reader& reader, const domain::Uuid& season,
    const WeekDraft& draft, const text::BulletinWords& words);

// The paragraphs under which a week was published; empty where it was not, or not as this issue.
//
// Errors  as in queries.h
domain::Result<std::string> publishedText(store::Reader& reader, const WeekDraft& draft);

// The bulletins that have come back, the latest week first.
//
// Errors  as in queries.h
domain::Result<std::vector<domain::PublishedBulletin>> bulletinsOf(
    store::Reader& reader, const domain::Uuid& season);

} // namespace duskrow::publish
