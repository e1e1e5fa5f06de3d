// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include "store/season_flags.h"
#include "text/amounts.h"
#include "text/flag_text.h"
#include "text/question_text.h"
#include "tool/commands.h"
#include "tool/flags_json.h"
#include "tool/output.h"
#include "tool/season_asked.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct FlagsLine {
    SeasonAsked asked;
    bool asJson = false;
};

// Whose record it is: a trap with its keeper, or one who counted.
QString subjectOf(const SeasonRecords& records, const Flag& flag)
{
    const QString observer = observerName(records, flag.observer);
    const Trap* trap = trapIn(records, flag.trap);
    if (!trap)
        return observer.isEmpty() ? said(QT_TRANSLATE_NOOP("Tool", "a trap not known here")) : observer;
    const QString who = observer.isEmpty() ? records.keeperOf(*trap) : observer;
    const QString title = records.title(*trap);
    return who.isEmpty() ? title : QStringLiteral("%1 (%2)").arg(title, who);
}

void printFlag(const SeasonRecords& records, const Flag& flag, ProtocolShelf& shelf)
{
    QStringList head{text::checkName(flag.check), subjectOf(records, flag)};
    if (flag.day) head.prepend(text::day(*flag.day));
    print(head.join(QStringLiteral(" · ")));
    print(QStringLiteral("    %1").arg(text::flagReason(flag, {}, animalAt(records, flag.trap, shelf))));
    for (const CountNearby& count : flag.around)
        if (const Trap* trap = trapIn(records, count.trap))
            print(QStringLiteral("      %1: %2").arg(records.title(*trap), text::countNearby(count)));
    print(QStringLiteral("    %1").arg(text::goodCounts(flag.check)));
    if (!flag.visit.isNil())
        print(said(QT_TRANSLATE_NOOP("Tool", "    Visit %1"))
                  .arg(QString::fromStdString(formatUuid(flag.visit))));
}

QString memberName(const SeasonRecords& records, const Uuid& member)
{
    const auto name = records.names.find(member);
    return name == records.names.end() ? said(QT_TRANSLATE_NOOP("Tool", "somebody")) : name->second;
}

void printQuestion(const SeasonRecords& records, const store::AskedQuestion& asked)
{
    const Trap* trap = trapIn(records, asked.question.trap);
    QStringList head;
    if (asked.question.day) head << text::day(*asked.question.day);
    head << (trap ? records.title(*trap) : said(QT_TRANSLATE_NOOP("Tool", "a trap not known here")));
    print(QString());
    print(head.join(QStringLiteral(" · ")));
    //: names, a day, and what was asked
    print(said(QT_TRANSLATE_NOOP("Tool", "    %1 asked %2, %3: %4"))
              .arg(memberName(records, asked.by), memberName(records, asked.question.member),
                  text::shortDay(asked.on), QString::fromStdString(asked.question.words)));
    if (!asked.answer) return print(said(QT_TRANSLATE_NOOP("Tool", "    No answer yet.")));
    //: a name, a day, and what was answered
    print(said(QT_TRANSLATE_NOOP("Tool", "    %1 answered, %2: %3"))
              .arg(memberName(records, asked.answer->by), text::shortDay(asked.answer->on),
                  text::answerWords(asked.answer->answer)));
}

void printQuestions(const SeasonRecords& records, const std::vector<store::AskedQuestion>& questions)
{
    if (questions.empty()) return;
    print(QString());
    print(said(QT_TRANSLATE_NOOP("Tool", "Asked and not settled: %1.")).arg(questions.size()));
    for (const store::AskedQuestion& asked : questions) printQuestion(records, asked);
}

void printFlags(
    const SeasonRecords& records, const std::vector<Flag>& flags, LocalDay today, ProtocolShelf& shelf)
{
    print(seasonHead(records.season, today));
    if (flags.empty()) print(said(QT_TRANSLATE_NOOP("Tool", "No record of this season gets a flag.")));
    for (const Flag& flag : flags) {
        print(QString());
        printFlag(records, flag, shelf);
    }
    print(QString());
    print(said(QT_TRANSLATE_NOOP("Tool",
                   "Flags: %1. A flag asks to look; it changes no record. To ask, correct, leave out or let "
                   "stand, open the desk of the week in the app."))
              .arg(flags.size()));
}

Result<int> sayFlags(const FlagsLine& line)
{
    const auto seen = lookAt(line.asked);
    if (!seen) return seen.error();
    const LocalDay today = seen->today;
    const auto records = namedRecords(*seen->reader, seen->season, store::VisitsFor::Nothing);
    if (!records) return records.error();
    const auto flags = store::flagsOfSeason(*seen->reader, seen->season, today);
    if (!flags) return flags.error();
    const auto questions = store::openQuestions(*seen->reader);
    if (!questions) return questions.error();
    ProtocolShelf shelf({});
    if (line.asJson) {
        print(QString::fromStdString(flagsJson(*records, *flags, *questions, today, shelf)));
        return 0;
    }
    printFlags(*records, *flags, today, shelf);
    printQuestions(*records, *questions);
    return 0;
}

} // namespace

Work declareFlags(CLI::App& line)
{
    const auto typed = std::make_shared<FlagsLine>();
    addSeason(line, typed->asked);
    line.add_flag("--json", typed->asJson, "For other programs: JSON with all numbers");
    return [typed] { return sayFlags(*typed); };
}

} // namespace duskrow::tool
