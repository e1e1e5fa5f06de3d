// SPDX-License-Identifier: MIT
#include "app/print/print_command.h"

#include <QCoreApplication>

#include "app/desk/week_reading.h"
#include "app/print/bulletin_printer.h"
#include "app/print/pdf_paper.h"
#include "app/print/walk_sheet_printer.h"
#include "app/written_file.h"
#include "publish/bulletin_files.h"
#include "publish/bulletin_record.h"
#include "store/queries.h"
#include "text/bulletin_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct PrintCommand {
    Q_DECLARE_TR_FUNCTIONS(PrintCommand)
};

Result<Done> printWalk(Session& session, const PrintOrder& order)
{
    const auto walk = walkCalled(session, order.what);
    if (!walk) return walk.error();
    const auto paper = walkPaper(session, *walk);
    if (!paper) return paper.error();
    const auto pages = printSheet(*paper, order.path);
    if (!pages) return pages.error();
    return Done{};
}

Result<Season> seasonOf(store::Reader& reader, IsoWeek week)
{
    const auto seasons = store::seasons(reader);
    if (!seasons) return seasons.error();
    for (const Season& season : *seasons)
        if (season.year == week.year) return season;
    return Error{ErrorCode::NameMissing, {"season", std::to_string(week.year)}};
}

Result<QString> printWeek(Session& session, IsoWeek week, const QString& path)
{
    const auto season = seasonOf(session.reader(), week);
    if (!season) return season.error();
    const auto reading = readWeek(session.reader(),
        {week, *season, {}, keptFolder(QString::fromStdString(session.store().path())), false,
            session.clock().today()});
    if (!reading) return reading.error();
    const publish::WeekDraft& draft = (*reading)->draft;
    if (!publish::hasBulletin(draft.outcome))
        return Error{ErrorCode::NotPublished, {formats::weekText(week)}};
    text::BulletinWords words = text::bulletinWords(draft.bulletin, *draft.protocol);
    const auto own = publish::publishedText(session.reader(), draft);
    if (!own) return own.error();
    if (!own->empty()) words.paragraphs = text::ownParagraphs(QString::fromStdString(*own));
    if (draft.fresh) words.issue = PrintCommand::tr("A draft: not published.").toStdString();
    const auto document = publish::documentOf({draft, words, (*reading)->overlay, (*reading)->programmeKey,
        formats::OccurrenceTerms::Detected, {}});
    const auto kept = writeFile(path, printedBulletin(document, paperOf(QLocale())));
    if (!kept) return kept.error();
    return (*reading)->overlayTrouble;
}

} // namespace

Result<QString> printNow(const PrintOrder& order)
{
    place::PositionSource position; // asked for nothing
    const auto session = Session::open(order.storePath,
        {.keyFolder = order.keyFolder.toStdString(), .mayCreate = false}, order.clock, position);
    if (!session) return session.error();
    if (const auto week = publish::weekTyped(order.what.toStdString()); week)
        return printWeek(**session, *week, order.path);
    const auto done = printWalk(**session, order);
    if (!done) return done.error();
    return QString();
}

} // namespace duskrow::app
