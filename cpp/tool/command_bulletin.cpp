// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QTranslator>

#include <nlohmann/json.hpp>

#include "formats/bulletin/atom.h"
#include "formats/bulletin/document.h"
#include "text/amounts.h"
#include "text/bulletin_text.h"
#include "tool/arguments.h"
#include "tool/bulletin_week.h"
#include "tool/commands.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

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
    bool asJson = false;
};

// The language of the readers, for as long as it lives.
class Readers {
public:
    explicit Readers(const std::string& language)
    {
        if (language.empty()) return;
        m_locale = language == "fr" ? QLocale(QLocale::French, QLocale::Canada)
                                    : QLocale(QLocale::English, QLocale::Canada);
        if (m_translator.load(
                m_locale, QStringLiteral("duskrow"), QStringLiteral("_"), QStringLiteral(":/translations")))
            QCoreApplication::installTranslator(&m_translator);
    }
    [[nodiscard]] const QLocale& locale() const { return m_locale; }

private:
    QLocale m_locale;
    QTranslator m_translator;
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

formats::Feed feedOf(
    const WeekMade& made, const std::string& key, const text::BulletinWords& words, const QLocale& locale)
{
    formats::Feed feed{words.programme.empty() ? words.pestName : words.programme, made.bulletin.programme,
        words.language, key, {}};
    const QString pest = QString::fromStdString(made.protocol->name.in(locale.name().toStdString()));
    for (auto issue = made.kept.all().rbegin(); issue != made.kept.all().rend(); ++issue) {
        if (made.kept.last(issue->iso) != &*issue) continue;
        feed.entries.push_back({issue->iso, issue->pest, text::bulletinTitle(pest, issue->iso).toStdString(),
            issue->iso == made.bulletin.iso ? words.summary : issue->summary,
            formats::fileStem(issue->iso) + ".html", made.kept.first(issue->iso)->published,
            issue->published});
    }
    return feed;
}

Result<std::vector<formats::ExportedFile>> filesOf(const BulletinLine& line, const WeekMade& made,
    const std::string& key, const text::BulletinWords& words, const QLocale& locale)
{
    formats::Overlay overlay;
    if (!line.overlay.empty()) {
        const auto bytes = readWhole(QString::fromStdString(line.overlay));
        if (!bytes) return bytes.error();
        auto read = formats::readOverlay(*bytes);
        if (!read) return Error{ErrorCode::FileUnreadable, {line.overlay}, read.error().detail};
        overlay = std::move(*read);
    }
    const KeptIssue* issue = made.kept.last(made.bulletin.iso);
    const formats::BulletinDocument document{made.bulletin, words, &overlay,
        issue ? issue->published : instantFromMs(0),
        line.presentAbsent ? formats::OccurrenceTerms::Present : formats::OccurrenceTerms::Detected, key};
    auto files = formats::bulletinFiles(document);
    if (!files) return files.error();
    if (made.kept.all().back().iso == made.bulletin.iso)
        files->push_back({"index.html", files->front().bytes});
    files->push_back({"feed.atom", formats::writeAtom(feedOf(made, key, words, locale))});
    return files;
}

Result<Done> writeAll(const QDir& folder, const std::vector<formats::ExportedFile>& files)
{
    if (!folder.mkpath(QStringLiteral(".")))
        return Error{ErrorCode::FileUnwritable, {folder.path().toStdString()}};
    for (const formats::ExportedFile& file : files)
        if (auto done = replaceFile(folder.filePath(QString::fromStdString(file.name)), file.bytes); !done)
            return done;
    return Done{};
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
    }
    return "";
}

void printOutcome(const WeekMade& made)
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
        return;
    }
}

void printJson(
    const BulletinLine& line, const WeekMade& made, const std::vector<formats::ExportedFile>& files)
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

Result<int> refuse(const WeekMade& made)
{
    if (made.outcome == WeekOutcome::NotOver)
        printError(said(QT_TRANSLATE_NOOP("Tool",
            "The counts of this week are not all due yet, and a published week is frozen. Publish it when it "
            "is "
            "over.")));
    else
        printError(said(QT_TRANSLATE_NOOP("Tool",
                            "No new issue: counts have changed at %1 traps, and nowhere at those of five "
                            "farms or more. A new issue "
                            "would show whose they are."))
                       .arg(made.waiting));
    return notPublished;
}

Result<int> publish(const BulletinLine& line)
{
    const auto iso = weekTyped(line.week);
    if (!iso) return iso.error();
    const auto today = dayOrToday(line.on);
    if (!today) return today.error();
    auto reader = openToLook(line.store, line.keys);
    if (!reader) return reader.error();
    const auto key = programmeKey(**reader);
    if (!key) return key.error();
    const Readers readers(line.language);
    ProtocolShelf shelf(line.protocols);
    const WeekAsked asked{*iso, line.pest, line.kept.empty() ? line.store + "-bulletins" : line.kept,
        line.reissue, *today, publishedAt(line, *today)};
    const auto made =
        weekMade(**reader, asked, shelf, [&](const Bulletin& bulletin, const Protocol& protocol) {
            return text::bulletinWords(bulletin, protocol, readers.locale()).summary;
        });
    if (!made) return made.error();
    if (made->outcome == WeekOutcome::NotOver || made->outcome == WeekOutcome::NothingToReissue)
        return refuse(*made);
    text::BulletinWords words = text::bulletinWords(made->bulletin, *made->protocol, readers.locale());
    if (!line.text.empty()) {
        const auto own = readWhole(QString::fromStdString(line.text));
        if (!own) return own.error();
        words.paragraphs = text::ownParagraphs(QString::fromStdString(*own));
    }
    const auto files = filesOf(line, *made, *key, words, readers.locale());
    if (!files) return files.error();
    const QDir folder(QString::fromStdString(line.out));
    if (const auto written = writeAll(folder, *files); !written) return written.error();
    if (line.asJson) {
        printJson(line, *made, *files);
        return 0;
    }
    printOutcome(*made);
    for (const formats::ExportedFile& file : *files)
        print(folder.filePath(QString::fromStdString(file.name)));
    return 0;
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
    line.add_flag("--present-absent", typed->presentAbsent,
        "In the archive say present and absent, for readers that do not know detected and notDetected");
    line.add_flag("--json", typed->asJson, "Say as JSON what was written");
    addKeys(line, typed->keys);
    addProtocols(line, typed->protocols);
    return [typed] { return publish(*typed); };
}

} // namespace duskrow::tool
