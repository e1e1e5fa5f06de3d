// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>

#include "domain/bulletin/bulletin.h"
#include "domain/protocol/protocol.h"
#include "text/bulletin_words.h"

namespace duskrow::text {

// Writes summary, paragraphs, what to do now and the cautions.
void draftParagraphs(BulletinWords& words, const domain::Bulletin& bulletin, const domain::Protocol& protocol,
    const QLocale& locale);

} // namespace duskrow::text
