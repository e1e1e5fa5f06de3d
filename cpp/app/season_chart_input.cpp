// SPDX-License-Identifier: MIT
#include "app/season_chart_input.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/session.h"
#include "app/trap_words.h"
#include "domain/rules/bands.h"
#include "domain/rules/season_days.h"
#include "text/amounts.h"
#include "text/season_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

std::string words(const char* sentence)
{
    return QCoreApplication::translate("SeasonChart", sentence).toStdString();
}

constexpr std::chrono::days tickStep{14};
constexpr std::chrono::days unplannedSeason{56};

class ChartInput {
public:
    explicit ChartInput(const ChartedSeason& charted) : m_charted(charted) { }

    formats::SeasonChartInput made()
    {
        takeDays();
        takeBands();
        for (const CatchStep& step : m_charted.season.steps) takeStep(step);
        takeUnknown();
        takeOutlook();
        for (LocalDay day = m_input.firstDay; day <= m_input.lastDay; day += tickStep)
            m_input.ticks.push_back({day, text::shortDay(day).toStdString()});
        m_input.today = m_charted.rules.today;
        m_input.todayLabel = words(QT_TRANSLATE_NOOP("SeasonChart", "today"));
        m_input.totalLabel = text::seasonTotal(m_charted.season).toStdString();
        m_input.emptyLabel = words(QT_TRANSLATE_NOOP("SeasonChart", "No counts yet"));
        m_input.title = words(QT_TRANSLATE_NOOP("SeasonChart", "Catch of the season"));
        m_input.description = description().toStdString();
        m_input.number = [](Moths moths) { return text::number(moths.value()).toStdString(); };
        return std::move(m_input);
    }

private:
    // The protocol's season, stretched so that no count falls outside.
    void takeDays()
    {
        const auto planned = seasonDaysOf(m_charted.protocol.season, std::chrono::year{m_charted.year});
        const LocalDay start = m_charted.trap.setDay.value_or(m_charted.rules.today);
        m_input.firstDay = planned ? std::min(planned->first, start) : start;
        m_input.lastDay = planned ? planned->last : start + unplannedSeason;
        for (const CatchStep& step : m_charted.season.steps) {
            m_input.firstDay = std::min({m_input.firstDay, step.to, step.from.value_or(step.to)});
            m_input.lastDay = std::max(m_input.lastDay, step.to);
        }
    }

    void takeBands()
    {
        const SeasonStanding standing = m_charted.season.standing;
        if (standing != SeasonStanding::SoFar && standing != SeasonStanding::Whole) return;
        const auto bands = bandsFor(m_charted.protocol, m_charted.trap.trapType);
        if (!bands) return;
        for (const Band& band : *bands) {
            const std::string name = m_charted.season.takesBand() ? band.name.in(Session::language()) : "";
            m_input.bands.push_back({band.from, name, band.level});
        }
    }

    void takeStep(const CatchStep& step)
    {
        const LocalDay from = step.from.value_or(step.to);
        if (!step.caught) {
            m_input.unknown.push_back(
                {from, step.to, words(QT_TRANSLATE_NOOP("SeasonChart", "emptied uncounted"))});
            return;
        }
        const Nights nights = nightsBetween(from, step.to);
        const bool isLong = text::isLong(nights, m_charted.protocol.season.visitInterval.value);
        m_input.intervals.push_back({from, step.to, *step.caught, isLong, step.isAtLeast,
            isLong ? text::longCount(nights).toStdString() : std::string()});
    }

    void takeUnknown()
    {
        const PartReasons& part = m_charted.season.part;
        const LocalDay set = m_charted.trap.setDay.value_or(m_input.firstDay);
        if (part.cameLate && set > m_input.firstDay)
            m_input.unknown.push_back(
                {m_input.firstDay, set, words(QT_TRANSLATE_NOOP("SeasonChart", "no trap yet"))});
        if (!part.endedEarly && !part.notCountedToEnd) return;
        const LocalDay counted = std::max(set, m_charted.season.countedUntil.value_or(set));
        if (counted < m_input.lastDay)
            m_input.unknown.push_back(
                {counted, m_input.lastDay, words(QT_TRANSLATE_NOOP("SeasonChart", "not counted"))});
    }

    void takeOutlook()
    {
        const auto& outlook = m_charted.outlook;
        if (m_charted.season.standing != SeasonStanding::SoFar || !outlook || !outlook->totalLow) return;
        m_input.fan = {*outlook->totalLow, *outlook->totalHigh, text::likelyRange(*outlook).toStdString()};
    }

    [[nodiscard]] QString description() const
    {
        const text::Animal animal = animalOf(&m_charted.protocol);
        QStringList parts{text::seasonTotal(m_charted.season) + QLatin1Char(' ')
            + text::seasonCaption(m_charted.season, animal)};
        parts << text::flightWords(m_charted.season, m_charted.outlook, animal);
        if (m_input.fan) parts << text::likelyRange(*m_charted.outlook);
        parts << QCoreApplication::translate("SeasonChart", "the visits stand in the list beside the chart");
        return parts.join(QStringLiteral("; "));
    }

    const ChartedSeason& m_charted;
    formats::SeasonChartInput m_input;
};

} // namespace

formats::SeasonChartInput chartInputOf(const ChartedSeason& charted)
{
    return ChartInput(charted).made();
}

} // namespace duskrow::app
