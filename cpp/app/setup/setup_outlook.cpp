// SPDX-License-Identifier: MIT
#include "app/setup/setup_outlook.h"

#include "app/setup/setup_part.h"
#include "app/trap_words.h"
#include "domain/rules/protocol_rules.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct Outlook {
    Q_DECLARE_TR_FUNCTIONS(SetupOutlook)
};

std::optional<LocalDay> inYear(const std::optional<std::chrono::month_day>& day, int year)
{
    if (!day) return std::nullopt;
    return LocalDay{std::chrono::year{year} / day->month() / day->day()};
}

QString firstMoths(const SeasonPlan& plan, LocalDay setDay)
{
    const auto& after = plan.firstMothsAfter;
    const auto inTime = inYear(plan.setUp.to, yearOf(setDay));
    if (!after.from || !after.to) return {};
    if (inTime && setDay > *inTime) return Outlook::tr("may be flying already");
    return Outlook::tr("about %1 to %2")
        .arg(text::shortDay(setDay + *after.from), text::shortDay(setDay + *after.to));
}

QString stepWords(SetUpStep step)
{
    switch (step) {
    case SetUpStep::Day:
        return Outlook::tr("the day of set-up");
    case SetUpStep::Place:
        return Outlook::tr("the place");
    case SetUpStep::Lure:
        return Outlook::tr("the lure");
    case SetUpStep::Strip:
        return Outlook::tr("the killing strip");
    case SetUpStep::Entrance:
        return Outlook::tr("the height of the entrance");
    }
    return {};
}

} // namespace

SetupOutlook outlookAfter(const Protocol& protocol, std::string_view trapType, LocalDay setDay,
    const std::optional<SeasonWeek>& week)
{
    SetupOutlook outlook;
    std::optional<LocalDay> first;
    std::optional<LocalDay> end;
    if (week) {
        const DueRules rules = dueRulesOf(protocol, trapType, std::chrono::year{yearOf(setDay)}, *week);
        first = countAfter(setDay, rules);
        end = takeDownDay(rules);
    }
    const auto add = [&](const QString& label, const QString& value) {
        if (value.isEmpty()) return;
        outlook.labels << label;
        outlook.values << value;
    };
    if (first && (!end || *first <= *end)) add(Outlook::tr("First count"), text::day(*first));
    //: "First moths"
    add(Outlook::tr("First %1").arg(animalOf(&protocol).many()), firstMoths(protocol.season, setDay));
    if (end)
        add(*end > setDay ? Outlook::tr("Traps come down") : Outlook::tr("Traps came down"), text::day(*end));
    return outlook;
}

QString lateness(const Protocol& protocol, LocalDay setDay, int season)
{
    if (yearOf(setDay) != season)
        return Outlook::tr("%1 lies outside the season of %2. Is the day right?")
            .arg(text::dayAndYear(setDay), QString::number(season));
    const SeasonPlan& plan = protocol.season;
    const auto tooLate = inYear(plan.tooLateFrom.value, season);
    if (tooLate && setDay >= *tooLate)
        return Outlook::tr("From %1 on it is late to set up a trap: it will show part of the flight only, "
                           "and the season gets no band.")
            .arg(text::day(*tooLate));
    const auto usual = inYear(plan.setUp.to, season);
    const LocalDay whole = usual ? *usual + plan.firstMothsAfter.from.value_or(std::chrono::days{0}) : setDay;
    if (setDay > whole)
        return Outlook::tr("Traps usually stand by %1. This one may show part of the flight only, and then "
                           "the season gets no band.")
            .arg(text::day(*usual));
    return {};
}

QString openSteps(const Trap& trap, const DueRules& rules, LocalDay today)
{
    const LocalDay seen = std::max(today, trap.setDay.value_or(today));
    for (const DueItem& item :
        dueOf({.trap = trap, .visits = {}, .services = {}, .samples = {}}, rules, seen)) {
        if (item.what != DueWhat::SetUpUnfinished) continue;
        QStringList open;
        for (const auto step : item.numbers) open << stepWords(static_cast<SetUpStep>(step));
        const QString last = open.takeLast();
        const QString all =
            open.isEmpty() ? last : Outlook::tr("%1 and %2").arg(open.join(Outlook::tr(", ")), last);
        return Outlook::tr("Still to come: %1.").arg(all);
    }
    return {};
}

} // namespace duskrow::app
