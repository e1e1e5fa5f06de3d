// SPDX-License-Identifier: MIT
#include "text/rule_text.h"

#include <QCoreApplication>

#include <cmath>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(RuleText)
};

class Sentences {
public:
    Sentences(
        const RuleOutcome& outcome, const std::string& language, const QLocale& locale, const Animal& animal)
        : m_outcome(outcome), m_language(language), m_locale(locale), m_animal(animal)
    {
    }

    RuleWords made()
    {
        m_words.name = local(headOf(*m_outcome.rule).name);
        std::visit([this](const auto& rule) { say(rule); }, *m_outcome.rule);
        return std::move(m_words);
    }

private:
    [[nodiscard]] QString local(const LocalText& text) const
    {
        return QString::fromStdString(text.in(m_language));
    }

    [[nodiscard]] QString amount(Moths count) const { return m_animal.amount(count, m_locale); }

    [[nodiscard]] QString daysOf(const CatchSpan& span) const
    {
        return Words::tr("%1 to %2").arg(shortDay(span.from, m_locale), shortDay(span.to, m_locale));
    }

    [[nodiscard]] QString inNights(const CatchSpan& span) const
    {
        //: "9 moths in 2 nights, 30 Apr to 2 May"
        return Words::tr("%1 in %2, %3")
            .arg(amount(span.moths), nights(span.nights(), m_locale), daysOf(span));
    }

    void takeStep(const RuleStep& step)
    {
        m_words.meaning = local(step.meaning.text);
        if (step.betweenSprays)
            m_words.remarks
                << Words::tr("Printed between sprays: %1.").arg(days(*step.betweenSprays, m_locale));
    }

    void say(const SumSoFarRule&)
    {
        if (!m_outcome.step) return sayNothing();
        const Moths sum{static_cast<std::int64_t>(*m_outcome.value)};
        m_words.said = Words::tr("%1 so far. %2.").arg(amount(sum), local(m_outcome.step->name));
        takeStep(*m_outcome.step);
    }

    void say(const RateRule& rule)
    {
        if (!m_outcome.step) return sayNothing();
        const QString per = nights(*rule.per.value, m_locale);
        const QString counted = inNights(*m_outcome.span);
        const QString found = m_outcome.span->nights() == *rule.per.value
            ? counted
            : Words::tr("%1 in %2, as a mean of %3").arg(meanCatch(*m_outcome.value, m_locale), per, counted);
        m_words.said = QStringLiteral("%1. %2.").arg(found, local(m_outcome.step->name));
        takeStep(*m_outcome.step);
        if (m_outcome.highestStep != m_outcome.step)
            m_words.remarks << Words::tr("Highest: %1 in %2, %3. %4.")
                                   .arg(meanCatch(m_outcome.highest->catchPer, m_locale), per,
                                       daysOf(m_outcome.highest->span), local(m_outcome.highestStep->name));
    }

    void say(const MilestoneRule& rule)
    {
        if (!m_outcome.value) return sayNothing();
        const QString sum = amount(Moths{static_cast<std::int64_t>(*m_outcome.value)});
        if (m_outcome.step) {
            m_words.said =
                Words::tr("%1 up to the peak, about %2. %3.")
                    .arg(sum, shortDay(*m_outcome.milestone, m_locale), local(m_outcome.step->name));
            return takeStep(*m_outcome.step);
        }
        m_words.said = rule.milestone.value == Milestone::Peak
            ? Words::tr("%1 so far. It is weighed at the peak of the flight, which is not known to be past.")
                  .arg(sum)
            : Words::tr("%1 so far. It is weighed when half of the flight is over, and nobody can tell that "
                        "from one trap.")
                  .arg(sum);
        QStringList steps;
        for (const RuleStep& step : rule.steps)
            if (step.from > 0)
                steps << (step.isOver ? Words::tr("over %1: %2") : Words::tr("from %1: %2"))
                             .arg(meanCatch(step.from, m_locale), local(step.name));
        m_words.remarks << Words::tr("Then: %1.").arg(steps.join(QStringLiteral("; ")));
    }

    void say(const MothsInNightsRule& rule)
    {
        const QString least = amount(*rule.moths.value);
        const QString within = nights(*rule.nights.value, m_locale);
        switch (m_outcome.window) {
        case WindowState::NotReached:
            m_words.said = Words::tr("Not reached so far: the rule waits for %1 in %2.").arg(least, within);
            break;
        case WindowState::CannotTell:
            m_words.said = Words::tr("%1: nobody can tell whether %2 came in %3. Count more often.")
                               .arg(inNights(*m_outcome.span), least, within);
            break;
        case WindowState::ReachedWithin:
            m_words.said = Words::tr("%1: reached, for so many cannot have come without %2 in %3.")
                               .arg(inNights(*m_outcome.span), least, within);
            break;
        case WindowState::Reached:
            m_words.said = Words::tr("%1: reached. The rule waits for %2 in %3.")
                               .arg(inNights(*m_outcome.span), least, within);
            break;
        }
        if (!m_outcome.isReached) return;
        m_words.meaning = local(rule.meaning.text);
        QStringList sums;
        for (const HeatStep& step : rule.then)
            if (step.sum.value)
                sums << Words::tr("%1 at %2").arg(local(step.name), warmthWords(step, m_locale));
        if (!sums.isEmpty())
            m_words.remarks << Words::tr("From %1 on: %2.")
                                   .arg(shortDay(m_outcome.span->to, m_locale),
                                       sums.join(QStringLiteral("; ")));
    }

    void say(const VisitsInARowRule& rule)
    {
        const QString least = amount(*rule.moths.value);
        const QString asked = number(*rule.visits.value, m_locale);
        if (m_outcome.isReached) {
            m_words.said = Words::tr("%1 or more on %2 visits in a row, %3: reached.")
                               .arg(least, asked, daysOf(*m_outcome.span));
            m_words.meaning = local(rule.meaning.text);
        } else {
            m_words.said = Words::tr("%1 of %2 visits in a row with %3 or more so far.")
                               .arg(number(m_outcome.run.atEnd, m_locale), asked, least);
        }
        if (m_outcome.run.isOverMoreNights)
            m_words.remarks << Words::tr("A visit here covers more nights than the rule's %1.")
                                   .arg(number(rule.apart.value->value(), m_locale));
    }

    void sayNothing() { m_words.said = Words::tr("Nothing counted yet that it could be held against."); }

    const RuleOutcome& m_outcome;
    const std::string& m_language;
    const QLocale& m_locale;
    const Animal& m_animal;
    RuleWords m_words;
};

} // namespace

QString RuleWords::line() const
{
    QStringList parts{QStringLiteral("%1: %2").arg(name, said)};
    if (!meaning.isEmpty()) parts << meaning;
    return (parts + remarks).join(QLatin1Char(' '));
}

RuleWords ruleWords(
    const RuleOutcome& outcome, const std::string& language, const QLocale& locale, const Animal& animal)
{
    return Sentences(outcome, language, locale, animal).made();
}

QString meanCatch(double moths, const QLocale& locale)
{
    const double rounded = std::round(moths * 100) / 100;
    int decimals = 0;
    for (double scaled = rounded; decimals < 2 && std::abs(scaled - std::round(scaled)) > 1e-6; scaled *= 10)
        ++decimals;
    return locale.toString(rounded, 'f', decimals);
}

QString warmthWords(const HeatStep& step, const QLocale& locale)
{
    const QString sum = locale.toString(step.sum.value.value_or(0), 'g', 6);
    return step.isFahrenheit ? Words::tr("%1 degree-days °F").arg(sum)
                             : Words::tr("%1 degree-days °C").arg(sum);
}

} // namespace duskrow::text
