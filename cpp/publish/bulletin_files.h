// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>

#include "formats/bulletin/atom.h"
#include "formats/bulletin/document.h"
#include "publish/week_draft.h"

namespace duskrow::publish {

// A week and how its files are to be.
struct FilesAsked {
    const WeekDraft& draft; // kept
    const text::BulletinWords& words;
    const formats::Overlay& overlay; // boundaries of districts; may be empty
    std::string programmeKey; // as in BulletinDocument
    formats::OccurrenceTerms terms = formats::OccurrenceTerms::Detected;
    QLocale locale;
};

// The document that files, printed page and preview are made of. It looks on what was asked with.
formats::BulletinDocument documentOf(const FilesAsked& asked);

// One entry for each week, the latest first, in the language that is spoken now.
formats::Feed feedOf(const FilesAsked& asked);

// The files of a week as anybody may read them, "index.html" among them for the latest week, and the feed.
// On any thread: nothing of it is translated any more.
//
// Errors  those of the writers
domain::Result<std::vector<formats::ExportedFile>> publishedFiles(
    const FilesAsked& asked, const formats::Feed& feed);

// Writes each file whole or not at all into a folder that is made if need be.
//
// Errors  FileUnwritable {path}
domain::Result<domain::Done> writeFiles(
    const QString& folder, const std::vector<formats::ExportedFile>& files);

} // namespace duskrow::publish
