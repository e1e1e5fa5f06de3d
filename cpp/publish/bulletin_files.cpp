// SPDX-License-Identifier: MIT
#include "publish/bulletin_files.h"

#include <QDir>

#include "text/bulletin_text.h"

namespace duskrow::publish {

using namespace duskrow::domain;

formats::Feed feedOf(const FilesAsked& asked)
{
    const auto& [draft, words, overlay, key, terms, locale] = asked;
    formats::Feed feed{words.programme.empty() ? words.pestName : words.programme, draft.bulletin.programme,
        words.language, key, {}};
    const QString pest = QString::fromStdString(draft.protocol->name.in(locale.name().toStdString()));
    for (auto issue = draft.kept.all().rbegin(); issue != draft.kept.all().rend(); ++issue) {
        if (draft.kept.last(issue->iso) != &*issue) continue;
        feed.entries.push_back({issue->iso, issue->pest, text::bulletinTitle(pest, issue->iso).toStdString(),
            issue->iso == draft.bulletin.iso ? words.summary : issue->summary,
            formats::fileStem(issue->iso) + ".html", draft.kept.first(issue->iso)->published,
            issue->published});
    }
    return feed;
}

formats::BulletinDocument documentOf(const FilesAsked& asked)
{
    const KeptIssue* issue = asked.draft.kept.last(asked.draft.bulletin.iso);
    return {asked.draft.bulletin, asked.words, &asked.overlay, issue ? issue->published : instantFromMs(0),
        asked.terms, asked.programmeKey};
}

Result<std::vector<formats::ExportedFile>> publishedFiles(const FilesAsked& asked, const formats::Feed& feed)
{
    auto files = formats::bulletinFiles(documentOf(asked));
    if (!files) return files.error();
    const std::vector<KeptIssue>& kept = asked.draft.kept.all();
    if (!kept.empty() && kept.back().iso == asked.draft.bulletin.iso)
        files->push_back({"index.html", files->front().bytes});
    files->push_back({"feed.atom", formats::writeAtom(feed)});
    return files;
}

Result<Done> writeFiles(const QString& folder, const std::vector<formats::ExportedFile>& files)
{
    const QDir dir(folder);
    if (!dir.mkpath(QStringLiteral("."))) return Error{ErrorCode::FileUnwritable, {folder.toStdString()}};
    for (const formats::ExportedFile& file : files)
        if (auto done = replaceFile(dir.filePath(QString::fromStdString(file.name)), file.bytes); !done)
            return done;
    return Done{};
}

} // namespace duskrow::publish
