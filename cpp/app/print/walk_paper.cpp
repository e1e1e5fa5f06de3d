// SPDX-License-Identifier: MIT
#include "app/print/walk_paper.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

#include "app/walk/walk_book.h"
#include "store/queries.h"
#include "text/amounts.h"
#include "text/frame_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct PaperWords {
    Q_DECLARE_TR_FUNCTIONS(PaperWords)
};

// Who walked: as said, or whoever kept the walk first.
Result<std::string> whoWalked(Session& session, const Walk& walk)
{
    if (!walk.observer.empty()) return walk.observer;
    const auto changes = session.reader().changesOf(walk.id);
    if (!changes) return changes.error();
    const auto first = std::min_element(
        changes->begin(), changes->end(), [](const Change& a, const Change& b) { return a.at < b.at; });
    if (first == changes->end()) return std::string();
    const auto members = store::members(session.reader());
    if (!members) return members.error();
    for (const Member& member : *members)
        if (member.id == first->author) return member.name;
    return std::string();
}

// A name that every file system takes.
QString fileNameOf(const Walk& walk, const QString& field)
{
    QString plain;
    for (const QChar letter : field.toLower()) plain += letter.isLetterOrNumber() ? letter : u'-';
    while (plain.contains(QStringLiteral("--"))) plain.replace(QStringLiteral("--"), QStringLiteral("-"));
    constexpr qsizetype longest = 60;
    const QString day = walk.day ? QString::fromStdString(formatDay(*walk.day)) + u'-' : QString();
    return QStringLiteral("duskrow-%1%2.pdf").arg(day, plain.left(longest));
}

formats::FrameMapInput mapOf(const std::vector<Frame>& frames)
{
    formats::FrameMapInput map;
    for (const Frame& frame : frames) {
        formats::FrameSpot spot{std::to_string(map.frames.size() + 1), std::nullopt, frame.larvae};
        if (frame.latE7 && frame.lonE7)
            spot.place =
                GeoPoint{static_cast<std::int32_t>(*frame.latE7), static_cast<std::int32_t>(*frame.lonE7)};
        map.frames.push_back(std::move(spot));
    }
    map.title = PaperWords::tr("Where the frames were").toStdString();
    map.description = map.title;
    //: the letter beside the arrow that points to the north
    map.northLabel = PaperWords::tr("N").toStdString();
    map.keyLabel =
        PaperWords::tr("Bold: larvae. Light: number of the frame. Ring: none found.").toStdString();
    map.noPlaceLabel = PaperWords::tr("No frame knows its place, so there is no sketch.").toStdString();
    map.crowdedLabel =
        PaperWords::tr("Some frames lie too close together for their numbers: see the table.").toStdString();
    return map;
}

std::optional<formats::StopLinesInput> linesOf(const WalkResult& result)
{
    if (!result.plan) return std::nullopt;
    formats::StopLinesInput input{.plan = *result.plan};
    Larvae total{0};
    for (const FrameStop& stop : result.stops) {
        total = Larvae{total.value() + stop.larvae.value()};
        input.totals.push_back(total);
    }
    input.title = PaperWords::tr("Larvae so far, by stop").toStdString();
    input.description = text::stopSentence(*result.plan, result.report, result.estimate).toStdString();
    input.aboveLabel = PaperWords::tr("above your threshold").toStdString();
    input.onLabel = PaperWords::tr("keep looking").toStdString();
    input.belowLabel = PaperWords::tr("below").toStdString();
    //: what the lower axis counts
    input.stopsLabel = PaperWords::tr("stops").toStdString();
    return input;
}

// The fields of one season by id, with the walks of it that have such a field, newest first.
Result<std::optional<Uuid>> latestWalkIn(Session& session, const Season& season, const QString& field)
{
    store::Reader& reader = session.reader();
    const auto sites = store::sitesOf(reader, season.id);
    if (!sites) return sites.error();
    const auto walks = store::walksOf(reader, season.id);
    if (!walks) return walks.error();
    std::optional<Walk> latest;
    for (const Walk& walk : *walks) {
        const auto site =
            std::find_if(sites->begin(), sites->end(), [&](const Site& one) { return one.id == walk.site; });
        if (site == sites->end()
            || QString::fromStdString(site->name).compare(field, Qt::CaseInsensitive) != 0)
            continue;
        if (latest && latest->site != walk.site)
            return Error{ErrorCode::NameAmbiguous, {"site", field.toStdString()}};
        if (!latest) latest = walk;
    }
    return latest ? std::optional(latest->id) : std::nullopt;
}

} // namespace

Result<WalkPaper> walkPaper(Session& session, const Uuid& id)
{
    WalkBook book;
    if (const auto read = book.read(session, id); !read) return read.error();
    const auto who = whoWalked(session, book.walk());
    if (!who) return who.error();
    const Decision* decision = book.isDecisionKept() ? &book.decision() : nullptr;
    const LocalDay day = decision && decision->day ? *decision->day : session.clock().today();
    const auto result = book.result(day);
    if (!result) return result.error();
    const auto& programme = session.programme();
    const text::WalkSheetInput input{.protocol = *book.protocol(),
        .rule = *book.rule(),
        .walk = book.walk(),
        .frames = book.frames(),
        .result = *result,
        .decision = decision,
        .programme = programme ? programme->name : std::string(),
        .isInvented = programme && programme->invented.value_or(false),
        .field = book.site().name,
        .crop = book.site().crop,
        .who = *who,
        .day = day,
        .language = Session::language()};
    return WalkPaper{.sheet = text::walkSheet(input),
        .map = mapOf(book.frames()),
        .lines = linesOf(*result),
        .who = QString::fromStdString(*who),
        .fileName = fileNameOf(book.walk(), book.title())};
}

Result<Uuid> walkCalled(Session& session, const QString& name)
{
    if (const auto id = parseUuid(name.toStdString())) {
        const auto walk = store::walk(session.reader(), *id);
        if (!walk) return walk.error();
        if (*walk) return *id;
    }
    auto seasons = store::seasons(session.reader());
    if (!seasons) return seasons.error();
    std::reverse(seasons->begin(), seasons->end());
    for (const Season& season : *seasons) {
        const auto found = latestWalkIn(session, season, name.trimmed());
        if (!found) return found.error();
        if (*found) return **found;
    }
    return Error{ErrorCode::NameMissing, {"walk", name.toStdString()}};
}

} // namespace duskrow::app
