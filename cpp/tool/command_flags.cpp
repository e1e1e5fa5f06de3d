// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include "store/season_flags.h"
#include "text/amounts.h"
#include "text/flag_text.h"
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

void printFlag(const SeasonRecords& records, const Flag& flag)
{
    QStringList head{text::checkName(flag.check), subjectOf(records, flag)};
    if (flag.day) head.prepend(text::day(*flag.day));
    print(head.join(QStringLiteral(" · ")));
    print(QStringLiteral("    %1").arg(text::flagReason(flag)));
    for (const CountNearby& count : flag.around)
        if (const Trap* trap = trapIn(records, count.trap))
            print(QStringLiteral("      %1: %2").arg(records.title(*trap), text::countNearby(count)));
    print(QStringLiteral("    %1").arg(text::goodCounts(flag.check)));
}

void printFlags(const SeasonRecords& records, const std::vector<Flag>& flags, LocalDay today)
{
    print(seasonHead(records.season, today));
    if (flags.empty()) print(said(QT_TRANSLATE_NOOP("Tool", "No record of this season gets a flag.")));
    for (const Flag& flag : flags) {
        print(QString());
        printFlag(records, flag);
    }
    print(QString());
    print(said(QT_TRANSLATE_NOOP("Tool", "Flags: %1. A flag asks to look; it changes no record."))
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
    if (line.asJson)
        print(QString::fromStdString(flagsJson(*records, *flags, today)));
    else
        printFlags(*records, *flags, today);
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
