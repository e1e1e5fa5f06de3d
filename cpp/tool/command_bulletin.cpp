// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QDateTime>
#include <QDir>

#include <nlohmann/json.hpp>

#include "publish/bulletin_files.h"
#include "publish/bulletin_record.h"
#include "publish/readers_language.h"
#include "store/publications.h"
#include "text/amounts.h"
#include "text/bulletin_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/holding.h"
#include "tool/output.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using publish::WeekDraft;
using publish::WeekOutcome;

namespace {

constexpr int notPublished = 1;

struct BulletinLine {
    std::string store;
    std::string keys;
    std::string protocols;
    std::string out;
    std::string week;
    std::string pest;
    std::string on;
    std::string overlay;
    std::string text;
    std::string language;
    std::string kept;
    bool presentAbsent = false;
    bool reissue = false;
    bool dryRun = false;
    bool asJson = false;
};

// The moment of publishing: now, or the noon of the day that was asked for.
Instant publishedAt(const BulletinLine& line, LocalDay today)
{
    if (line.on.empty()) return instantFromMs(QDateTime::currentMSecsSinceEpoch());
    return Instant{today.time_since_epoch() + std::chrono::hours{12}};
}

Result<std::string> programmeKey(store::Reader& reader)
{
    const auto programmes = reader.select<Programme>({});
    if (!programmes) return programmes.error();
    return programmes->empty() ? std::string() : formatUuid(programmes->front().id);
}

// The boundaries of districts, where a file of them was named.
Result<formats::Overlay> overlayOf(const std::string& path)
{
    if (path.empty()) return formats::Overlay{};
    const auto bytes = publish::readWhole(QString::fromStdString(path));
    if (!bytes) return bytes.error();
    auto read = formats::readOverlay(*bytes);
    if (!read) return Error{ErrorCode::FileUnreadable, {path}, read.error().detail};
    return read;
}

// Keeps what is new, at this desk and for everybody's phones.
Result<Done> keepAll(const BulletinLine& line, const Uuid& season, WeekDraft& draft, Instant now,
    const text::BulletinWords& words, store::Reader& reader)
{
    // Whoever may not write finds that out before the week is frozen.
    std::optional<Holding> holding;
    const auto hold = [&]() -> Result<Done> {
        auto opened = openToWrite(line.store, line.keys);
        if (!opened) return opened.error();
        holding = std::move(*opened);
        return asCoordinator(*holding);
    };
    if (draft.fresh) {
        if (const auto held = hold(); !held) return held;
        if (const auto kept = publish::keepDraft(draft, words.summary, now); !kept) return kept;
    }
    const auto edit = publish::bulletinEdit(reader, season, draft, words);
    if (!edit) return edit.error();
    if (!*edit) return Done{};
    if (!holding)
        if (const auto held = hold(); !held) return held;
    return keep(*holding, {**edit});
}

const char* outcomeCode(WeekOutcome outcome)
{
    switch (outcome) {
    case WeekOutcome::New:
        return "new";
    case WeekOutcome::Again:
        return "again";
    case WeekOutcome::Reissued:
        return "reissued";
    case WeekOutcome::NotOver:
        return "not_over";
    case WeekOutcome::NothingToReissue:
        return "nothing_to_reissue";
    case WeekOutcome::NoTraps:
        return "no_traps";
    }
    return "";
}

void printOutcome(const WeekDraft& made)
{
    switch (made.outcome) {
    case WeekOutcome::New:
        print(
            said(QT_TRANSLATE_NOOP("Tool", "Published for the first time. The week is frozen from now on.")));
        return;
    case WeekOutcome::Again:
        print(said(
            QT_TRANSLATE_NOOP("Tool", "As it was published: issue %1. Traps that have changed since: %2."))
                  .arg(made.bulletin.issue)
                  .arg(made.waiting));
        return;
    case WeekOutcome::Reissued:
        print(said(
            QT_TRANSLATE_NOOP("Tool", "Published again as issue %1. Traps whose change still waits: %2."))
                  .arg(made.bulletin.issue)
                  .arg(made.waiting));
        return;
    case WeekOutcome::NotOver:
    case WeekOutcome::NothingToReissue:
    case WeekOutcome::NoTraps:
        return;
    }
}

void printBulletinJson(
    const BulletinLine& line, const WeekDraft& made, const std::vector<formats::ExportedFile>& files)
{
    nlohmann::ordered_json json{{"week", formats::weekText(made.bulletin.iso)}, {"pest", made.bulletin.pest},
        {"issue", made.bulletin.issue}, {"outcome", outcomeCode(made.outcome)}, {"waiting", made.waiting},
        {"is_published", made.bulletin.whole.has_value()}, {"cells", made.bulletin.cells.size()},
        {"folder", line.out}};
    json["districts"] = nlohmann::ordered_json::array();
    for (const DistrictWeek& district : made.bulletin.districts)
        json["districts"].push_back(
            {{"district", district.name}, {"is_published", district.figures.has_value()}});
    json["files"] = nlohmann::ordered_json::array();
    for (const formats::ExportedFile& file : files) json["files"].push_back(file.name);
    print(
        QString::fromStdString(json.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace)));
}

Result<int> refuse(const WeekDraft& made)
{
    if (made.outcome == WeekOutcome::NotOver)
        printError(said(QT_TRANSLATE_NOOP("Tool",
            "The counts of this week are not all due yet, and a published week is frozen. Publish it when it "
            "is "
            "over.")));
    else if (made.outcome == WeekOutcome::NoTraps)
        printError(said(QT_TRANSLATE_NOOP("Tool", "No trap stood out in this week. Choose another.")));
    else
        printError(said(QT_TRANSLATE_NOOP("Tool",
                            "No new issue: counts have changed at %1 traps, and nowhere at those of five "
                            "farms or more. A new issue "
                            "would show whose they are."))
                       .arg(made.waiting));
    return notPublished;
}

// What else is worth knowing of the files.
void sayBesides(const BulletinLine& line, const WeekDraft& made, const formats::Overlay& overlay)
{
    if (!line.text.empty() && made.outcome == WeekOutcome::Again)
        print(said(QT_TRANSLATE_NOOP(
            "Tool", "The text is the one given now; the figures stay as they were published.")));
    QStringList without;
    if (!line.overlay.empty())
        for (const DistrictWeek& district : made.bulletin.districts)
            if (!formats::areaNamed(overlay, district.name)) without << QString::fromStdString(district.name);
    if (!without.isEmpty())
        print(said(QT_TRANSLATE_NOOP("Tool", "No boundary in the file bears the name of: %1."))
                  .arg(without.join(QStringLiteral(", "))));
}

Result<int> say(const BulletinLine& line, const WeekDraft& made, const formats::Overlay& overlay,
    const std::vector<formats::ExportedFile>& files)
{
    if (line.asJson) {
        printBulletinJson(line, made, files);
        return 0;
    }
    if (line.dryRun)
        print(
            said(QT_TRANSLATE_NOOP("Tool", "A look only: nothing was kept, and the week is not published.")));
    else
        printOutcome(made);
    sayBesides(line, made, overlay);
    const QDir folder(QString::fromStdString(line.out));
    for (const formats::ExportedFile& file : files) print(folder.filePath(QString::fromStdString(file.name)));
    return 0;
}

Result<int> publishWeek(const BulletinLine& line)
{
    const auto iso = publish::weekTyped(line.week);
    if (!iso) return iso.error();
    const auto today = dayOrToday(line.on);
    if (!today) return today.error();
    auto reader = openToLook(line.store, line.keys);
    if (!reader) return reader.error();
    const auto key = programmeKey(**reader);
    if (!key) return key.error();
    const auto season = seasonWanted(**reader, iso->year, *today);
    if (!season) return season.error();
    const auto overlay = overlayOf(line.overlay);
    if (!overlay) return overlay.error();
    const publish::ReadersLanguage readers(line.language);
    ProtocolShelf shelf(line.protocols);
    const publish::WeekAsked asked{*iso, *season, line.pest,
        line.kept.empty() ? line.store + "-bulletins" : line.kept, line.reissue, *today};
    auto made = publish::weekDraft(**reader, asked, [&](const std::string& pest) { return shelf.of(pest); });
    if (!made) return made.error();
    if (!hasBulletin(made->outcome) || made->outcome == WeekOutcome::NothingToReissue) return refuse(*made);
    text::BulletinWords words = text::bulletinWords(made->bulletin, *made->protocol, readers.locale());
    // Words that a coordinator published stay until others are given.
    const auto own = !line.text.empty() ? publish::readWhole(QString::fromStdString(line.text))
        : line.language.empty()         ? publish::publishedText(**reader, *made)
                                        : Result<std::string>(std::string());
    if (!own) return own.error();
    if (!own->empty()) words.paragraphs = text::ownParagraphs(QString::fromStdString(*own));
    if (!line.dryRun)
        if (const auto kept = keepAll(line, season->id, *made, publishedAt(line, *today), words, **reader);
            !kept)
            return kept.error();
    const publish::FilesAsked how{*made, words, *overlay, *key,
        line.presentAbsent ? formats::OccurrenceTerms::Present : formats::OccurrenceTerms::Detected,
        readers.locale()};
    const auto files = publish::publishedFiles(how, publish::feedOf(how));
    if (!files) return files.error();
    // A hub that this store exchanges with is given what it is to serve.
    std::vector<std::string> folders{line.out};
    if (!line.dryRun) folders.push_back(store::publicFolder(line.store).string());
    for (const std::string& folder : folders)
        if (const auto written = publish::writeFiles(QString::fromStdString(folder), *files); !written)
            return written.error();
    return say(line, *made, *overlay, *files);
}

} // namespace

Work declareBulletin(CLI::App& line)
{
    const auto typed = std::make_shared<BulletinLine>();
    addStore(line, typed->store);
    line.add_option(
            "OUT", typed->out, "Folder for the files, made if need be; those of the same week are replaced")
        ->required();
    line.add_option("--week", typed->week, "The week to publish, by its ISO number, such as 2026-W28")
        ->required()
        ->type_name("WEEK");
    line.add_option("--pest", typed->pest, "The pest (the one with the most traps if left out)")
        ->type_name("PEST");
    line.add_option("--overlay", typed->overlay, "Boundaries of districts, as GeoJSON with a name for each")
        ->type_name("FILE");
    line.add_option("--text", typed->text,
            "Your own text in the stead of the drafted one; an empty line parts paragraphs")
        ->type_name("FILE");
    line.add_option("--language", typed->language, "The readers' language: en or fr")
        ->check(CLI::IsMember({"en", "fr"}));
    line.add_option("--kept", typed->kept,
            "Where your desk keeps what it has published, never itself published (STORE-bulletins if left "
            "out)")
        ->type_name("FOLDER");
    line.add_option("--on", typed->on, "The day to look from, such as 2026-07-14 (today if left out)")
        ->type_name("DAY");
    line.add_flag("--reissue", typed->reissue,
        "Publish the week again where counts of five farms or more have changed");
    line.add_flag("--dry-run", typed->dryRun, "Write the files to be looked at, and publish nothing");
    line.add_flag("--present-absent", typed->presentAbsent,
        "In the archive say present and absent, for readers that do not know detected and notDetected");
    line.add_flag("--json", typed->asJson, "Say as JSON what was written");
    addKeys(line, typed->keys);
    addProtocols(line, typed->protocols);
    return [typed] { return publishWeek(*typed); };
}

} // namespace duskrow::tool
