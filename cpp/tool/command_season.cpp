// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QLocale>

#include "domain/rules/rule_outcomes.h"
#include "domain/rules/season_outlook.h"
#include "store/trap_records.h"
#include "text/amounts.h"
#include "text/rule_text.h"
#include "text/season_text.h"
#include "tool/commands.h"
#include "tool/output.h"
#include "tool/season_asked.h"
#include "tool/season_json.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

text::Animal animalOf(const TrapResult& result)
{
    return text::animalOf(result.protocol, QLocale().name().toStdString());
}

struct SeasonLine {
    SeasonAsked asked;
    std::string trap;
    std::string protocols;
    bool asJson = false;
};

QString dayOrNothing(const std::optional<LocalDay>& day)
{
    return day ? text::shortDay(*day) : QStringLiteral("–");
}

QString bandCell(const TrapResult& result)
{
    if (!result.band) return QStringLiteral("–");
    const QString name = inLanguage(result.band->name);
    if (!result.season.isAtLeast) return name;
    return said(QT_TRANSLATE_NOOP("Tool", "%1 or higher")).arg(name);
}

void printCautions(const Protocol& protocol)
{
    for (const Statement& caution : protocol.cautionsAt(CautionPlace::Counting))
        print(inLanguage(caution.text));
}

// What stands below every table: which protocol the bands are by, and what they never say.
void printProtocols(const std::vector<TrapResult>& results)
{
    std::vector<const Protocol*> told;
    for (const TrapResult& result : results) {
        if (std::find(told.begin(), told.end(), result.protocol) != told.end()) continue;
        told.push_back(result.protocol);
        print(said(QT_TRANSLATE_NOOP("Tool", "Bands are for whole seasons, by the protocol %1 %2."))
                  .arg(QString::fromStdString(result.protocol->id),
                      QString::fromStdString(result.protocol->version)));
        printCautions(*result.protocol);
    }
}

// What the other rules of the protocol say of a trap so far.
void printRules(const TrapResult& result)
{
    const std::string language = QLocale().name().toStdString();
    if (!result.band && result.protocol->noBands) print(inLanguage(*result.protocol->noBands));
    for (const RuleOutcome& outcome : ruleOutcomes(*result.protocol, result.trap->trapType, result.season))
        print(text::ruleWords(outcome, language, {}, animalOf(result)).line());
}

void printSeason(const SeasonRecords& records, const std::vector<TrapResult>& results, LocalDay today)
{
    print(seasonHead(records.season, today));
    std::vector<QStringList> rows;
    rows.reserve(results.size());
    for (const TrapResult& result : results)
        rows.push_back(
            {records.districtOf(*result.trap), records.title(*result.trap), dayOrNothing(result.trap->setDay),
                dayOrNothing(result.season.countedUntil), text::seasonTotal(result.season),
                text::seasonCaption(result.season, animalOf(result)), bandCell(result)});
    printTable({said(QT_TRANSLATE_NOOP("Tool", "district")), said(QT_TRANSLATE_NOOP("Tool", "trap")),
                   said(QT_TRANSLATE_NOOP("Tool", "set up")), said(QT_TRANSLATE_NOOP("Tool", "counted to")),
                   said(QT_TRANSLATE_NOOP("Tool", "catch")), said(QT_TRANSLATE_NOOP("Tool", "of what")),
                   said(QT_TRANSLATE_NOOP("Tool", "band"))},
        rows, {4});
    printProtocols(results);
}

void printVisits(const TrapResult& result, const std::vector<Visit>& visits)
{
    std::vector<QStringList> rows;
    rows.reserve(result.season.visits.size());
    for (const VisitCatch& caught : result.season.visits) {
        const auto visit = std::find_if(
            visits.begin(), visits.end(), [&](const Visit& one) { return one.id == caught.visit; });
        if (visit == visits.end()) continue;
        const auto flags = text::visitFlags(caught, *visit, result.protocol->season.visitInterval.value);
        rows.push_back({text::day(caught.day), text::visitCatch(caught, {}, animalOf(result)),
            text::visitNumbers(caught), flags.join(QStringLiteral("; "))});
    }
    printTable({said(QT_TRANSLATE_NOOP("Tool", "day")), said(QT_TRANSLATE_NOOP("Tool", "catch")), QString(),
                   QString()},
        rows, {1});
}

// How far the flight is and where the season may end, where past seasons say it.
Result<Done> printOutlook(store::Reader& reader, const TrapResult& result, const Season& season)
{
    std::optional<SeasonOutlook> outlook;
    if (result.season.standing == SeasonStanding::SoFar && result.season.countedUntil) {
        const auto past = store::pastTrapSeasons(reader, *result.protocol, result.trap->trapType,
            season.year.value_or(yearOf(result.rules.today)), result.rules.today);
        if (!past) return past.error();
        outlook = seasonOutlook(result.season.total, *result.season.countedUntil, *past);
    }
    const QString flight = text::flightWords(result.season, outlook, animalOf(result));
    if (!flight.isEmpty()) print(flight);
    if (!outlook || !text::isCounted(result.season)) return Done{};
    const QString range = text::likelyRange(*outlook);
    if (!range.isEmpty()) print(range);
    print(text::outlookReason(*outlook));
    return Done{};
}

Result<int> sayTrap(store::Reader& reader, const SeasonRecords& records, const Trap& trap, LocalDay today,
    ProtocolShelf& shelf)
{
    const auto found = store::trapRecords(reader, trap.id);
    if (!found) return found.error();
    if (!*found) return Error{ErrorCode::RecordMissing, {"trap"}};
    const store::TrapRecords& own = **found;
    const auto result = trapResult(own.facts(), records.season, today, shelf);
    if (!result) return result.error();

    print(QStringLiteral("%1, %2").arg(
        records.title(trap), QString::number(records.season.year.value_or(yearOf(today)))));
    printVisits(*result, own.visits);
    const text::Animal animal = animalOf(*result);
    print(QStringLiteral("%1 %2").arg(
        text::seasonTotal(result->season), text::seasonCaption(result->season, animal)));
    if (const auto printed = printOutlook(reader, *result, records.season); !printed) return printed.error();
    for (const QString& line : text::totalRemarks(result->season, {}, animal)) print(line);
    for (const QString& line : text::standingReasons(result->season, trap, result->rules, animal))
        print(line);
    if (result->band)
        print(QStringLiteral("%1 (%2). %3")
                  .arg(bandCell(*result), text::bandSpan(*result->band, {}, animal),
                      inLanguage(result->band->meaning.text)));
    printRules(*result);
    printProtocols({*result});
    return 0;
}

Result<int> saySeason(const SeasonLine& line)
{
    const auto seen = lookAt(line.asked);
    if (!seen) return seen.error();
    const LocalDay today = seen->today;
    auto records = namedRecords(*seen->reader, seen->season, store::VisitsFor::Catch);
    if (!records) return records.error();
    ProtocolShelf shelf(line.protocols);
    if (!line.trap.empty()) {
        const auto trap = trapNamed(*records, line.trap);
        if (!trap) return trap.error();
        if (!line.asJson) return sayTrap(*seen->reader, *records, *trap, today, shelf);
        records->traps = {*trap};
    }
    const auto results = trapResults(*records, today, shelf);
    if (!results) return results.error();
    if (line.asJson)
        print(QString::fromStdString(seasonJson(*records, *results, today)));
    else
        printSeason(*records, *results, today);
    return 0;
}

} // namespace

Work declareSeason(CLI::App& line)
{
    const auto typed = std::make_shared<SeasonLine>();
    addSeason(line, typed->asked);
    line.add_option("--trap", typed->trap, "One trap with its visits: its site, its tag, or both")
        ->type_name("NAME");
    line.add_flag("--json", typed->asJson, "For other programs: JSON with all visits");
    addProtocols(line, typed->protocols);
    return [typed] { return saySeason(*typed); };
}

} // namespace duskrow::tool
