// SPDX-License-Identifier: MIT
#include "app/import/temperatures_view_model.h"

#include <QUrl>

#include <utility>

#include "app/import/import_words.h"
#include "domain/rules/heat_course.h"
#include "domain/rules/typed_place.h"
#include "domain/rules/typed_time.h"
#include "store/queries.h"
#include "sync/exchange/import_run.h"
#include "text/amounts.h"
#include "text/import_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

std::size_t newOnes(const ImportPlan& plan)
{
    const auto found = plan.made.find("temperature");
    return found == plan.made.end() ? 0 : found->second;
}

QString countedRows(std::size_t count)
{
    return text::number(static_cast<std::int64_t>(count));
}

} // namespace

TemperaturesViewModel::TemperaturesViewModel(Session& session, QObject* parent)
    : ViewModel(session, parent), m_runner(session)
{
    m_ask.programme = session.store().programme();
    connect(&m_runner, &ImportRunner::progressed, this, &TemperaturesViewModel::progressed);
    if (const auto allowed = m_runner.checkAllowed(); !allowed) tell(allowed.error());
    readStations();
}

void TemperaturesViewModel::readStations()
{
    const auto stations = store::stations(session().reader());
    if (!stations) return tell(stations.error());
    m_stations.clear();
    for (const Station& station : *stations) m_stations << QString::fromStdString(station.name);
}

QString TemperaturesViewModel::unit() const
{
    const auto unit = m_seen && m_seen->reading ? m_seen->reading->scale.unit : m_ask.choices.unit;
    return !unit ? QString() : *unit == HeatUnit::Celsius ? QStringLiteral("c") : QStringLiteral("f");
}

QString TemperaturesViewModel::order() const
{
    const auto& order = m_ask.choices.dayOrder;
    return !order                      ? QString()
        : *order == DayOrder::DayFirst ? QStringLiteral("day")
                                       : QStringLiteral("month");
}

bool TemperaturesViewModel::needsOrder() const
{
    return m_ask.choices.dayOrder
        || (m_seen && m_seen->missing && m_seen->missing->code == ErrorCode::DayOrderUnsaid);
}

QStringList TemperaturesViewModel::header() const
{
    QStringList names;
    if (m_seen)
        for (const std::string& name : m_seen->header) names << text::fromFile(name);
    return names;
}

QStringList TemperaturesViewModel::columns() const
{
    if (m_seen && m_seen->reading) {
        const TemperatureColumns& found = m_seen->reading->columns;
        return {QString::number(found.day + 1), QString::number(found.minimum + 1),
            QString::number(found.maximum + 1)};
    }
    QStringList chosen;
    for (const char* what : {"date", "minimum", "maximum"}) {
        const auto found = m_chosenColumns.find(what);
        chosen << (found == m_chosenColumns.end() ? QString() : QString::fromStdString(found->second));
    }
    return chosen;
}

void TemperaturesViewModel::open(const QString& path)
{
    const QUrl url(path);
    const QString local = url.isLocalFile() ? url.toLocalFile() : path.trimmed();
    if (local.isEmpty() || isRunning()) return;
    m_ask.path = local.toStdString();
    m_ask.choices = {};
    m_chosenColumns.clear();
    m_doneLine.clear();
    read();
}

void TemperaturesViewModel::forget()
{
    if (isRunning()) return;
    m_ask.path.clear();
    m_seen.reset();
    clearTrouble();
    Q_EMIT shown();
}

void TemperaturesViewModel::choose(const QString& what, const QString& words)
{
    const QString typed = words.trimmed();
    if (what == QLatin1String("station")) m_ask.station.name = typed.toStdString();
    if (what == QLatin1String("latitude")) m_latitude = words;
    if (what == QLatin1String("longitude")) m_longitude = words;
    if (what == QLatin1String("dayEnds")) m_dayEnds = words;
    if (what == QLatin1String("unit"))
        m_ask.choices.unit = typed == QLatin1String("c") ? HeatUnit::Celsius : HeatUnit::Fahrenheit;
    if (what == QLatin1String("order"))
        m_ask.choices.dayOrder = typed == QLatin1String("day") ? DayOrder::DayFirst : DayOrder::MonthFirst;
    read();
}

void TemperaturesViewModel::chooseColumn(const QString& what, const QString& column)
{
    m_chosenColumns[what.toStdString()] = column.toStdString();
    m_ask.choices.columns.clear();
    for (const auto& [is, number] : m_chosenColumns) m_ask.choices.columns.push_back({number, is});
    read();
}

Result<StationTold> TemperaturesViewModel::told() const
{
    StationTold told{m_ask.station.name, {}, {}};
    const std::string latitude = m_latitude.trimmed().toStdString();
    const std::string longitude = m_longitude.trimmed().toStdString();
    if (!latitude.empty() || !longitude.empty()) {
        const auto place = parsePlace(latitude, longitude);
        if (!place) return place.error();
        told.place = *place;
    }
    if (!m_dayEnds.trimmed().isEmpty()) {
        const auto time = parseTimeOfDay(m_dayEnds.trimmed().toStdString());
        if (!time) return time.error();
        told.dayEndsMinute = static_cast<int>(time->count());
    }
    return told;
}

void TemperaturesViewModel::read()
{
    if (m_ask.path.empty()) return Q_EMIT shown();
    if (m_isReading) {
        m_mustReadAgain = true;
        return;
    }
    const auto station = told();
    m_typedWrong = station ? std::nullopt : std::optional(station.error());
    if (station) m_ask.station = *station;
    m_isReading = true;
    Q_EMIT shown();
    using Seen = std::shared_ptr<const TemperaturesSeen>;
    session().lookUpLong<Seen>(
        this, [ask = m_ask](store::Reader& reader) { return readTemperaturesFile(reader, ask); },
        [this](const Result<Seen>& seen) {
            m_isReading = false;
            if (std::exchange(m_mustReadAgain, false)) return read();
            if (!seen) {
                m_seen.reset();
                tell(seen.error());
                return Q_EMIT shown();
            }
            clearTrouble();
            m_seen = *seen;
            show();
        });
}

void TemperaturesViewModel::show()
{
    std::vector<Row> facts;
    const auto add = [&](const QString& title, const QString& value) {
        facts.push_back({.title = title, .besides = value});
    };
    if (const auto& reading = m_seen->reading) {
        if (!reading->rows.empty())
            add(tr("Days in the file"),
                tr("%1, from %2 to %3")
                    .arg(countedRows(reading->rows.size()), text::dayAndYear(reading->rows.front().day),
                        text::dayAndYear(reading->rows.back().day)));
        std::vector<DayTemperature> days;
        for (const TemperatureRow& row : reading->rows) days.push_back({row.day, row.minimum, row.maximum});
        for (const DayGap& gap : bridged(days).gaps)
            add(tr("Nothing for"),
                tr("%1, from %2 to %3")
                    .arg(text::days(std::chrono::days{gap.length()}), text::shortDay(gap.first),
                        text::shortDay(gap.last)));
        if (reading->scale.unit)
            add(tr("Degrees"), *reading->scale.unit == HeatUnit::Celsius ? tr("Celsius") : tr("Fahrenheit"));
    }
    const RowWords none;
    const auto& plan = m_seen->plan;
    if (plan) {
        add(tr("New days"), countedRows(newOnes(*plan)));
        add(tr("Days that are here already"), countedRows(plan->alreadyThere));
        if (plan->made.contains("station")) add(tr("New station"), station());
    }
    m_facts.show(std::move(facts));
    m_refused.show(wordRows(plan ? plan->refused : none));
    m_moreRefused = moreWords(plan ? plan->refused : none);
    Q_EMIT shown();
}

QString TemperaturesViewModel::missing() const
{
    if (m_typedWrong) return text::sentence(*m_typedWrong);
    return m_seen && m_seen->missing ? text::sentence(*m_seen->missing) : QString();
}

bool TemperaturesViewModel::canBring() const
{
    return m_seen && !m_isReading && !isRunning() && missing().isEmpty() && m_seen->plan
        && m_seen->plan->size() > 0 && session().me() && m_runner.checkAllowed().has_value();
}

QString TemperaturesViewModel::bringLine() const
{
    const std::size_t days = m_seen && m_seen->plan ? newOnes(*m_seen->plan) : 0;
    if (days == 0)
        return m_seen && m_seen->plan && m_seen->plan->size() > 0 ? tr("Change the station")
                                                                  : tr("Nothing of it is new");
    return days == 1 ? tr("Bring in 1 day") : tr("Bring in %1 days").arg(countedRows(days));
}

void TemperaturesViewModel::bring()
{
    if (!canBring()) return;
    const Moment now = session().clock().now();
    const store::ImportBy who{session().me()->id, now.at, now.offset};
    m_runner.run(
        [store = &session().store(), seen = m_seen, who](const store::Progress& progress) {
            return sync::runImport(*store, *seen->plan, seen->import, who, progress);
        },
        [this](const Result<store::ImportRun>& run) {
            if (!run)
                tell(run.error());
            else
                m_doneLine = run->isStopped
                    ? tr("Stopped after %1 records. The same file again brings in the rest.")
                          .arg(countedRows(run->kept))
                    : tr("%1 records were brought in. They can be taken back where past years come in.")
                          .arg(countedRows(run->kept));
            readStations();
            read();
        });
    Q_EMIT shown();
}

void TemperaturesViewModel::stop()
{
    m_runner.stop();
}

} // namespace duskrow::app
