// SPDX-License-Identifier: MIT
#include "app/season_view_model.h"

#include "app/exchange/record_marks.h"
#include "app/season_chart_input.h"
#include "app/trap_words.h"
#include "domain/rules/bands.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/rule_outcomes.h"
#include "text/amounts.h"
#include "text/field_rule_text.h"
#include "text/rule_text.h"
#include "text/season_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

QString fromProtocol(const LocalText& text)
{
    return QString::fromStdString(text.in(Session::language()));
}

// Breaks between its parts and nowhere else.
QString breakingAtDots(QString text)
{
    const QString dot = QStringLiteral(" · ");
    QStringList parts = text.split(dot);
    for (QString& part : parts) part.replace(QLatin1Char(' '), QChar::Nbsp);
    return parts.join(dot);
}

std::chrono::weekday weekStartOf(const Season& season)
{
    const auto week = seasonWeekOf(season);
    return week ? week->weekStart : std::chrono::Monday;
}

} // namespace

SeasonViewModel::SeasonViewModel(Session& session, const QString& trap, QObject* parent)
    : ViewModel(session, parent), m_trap(parseUuid(trap.toStdString()).value_or(Uuid{}))
{
    connect(&session, &Session::changed, this, &SeasonViewModel::refresh);
    refresh();
}

std::optional<store::TrapRecords> SeasonViewModel::recordsOf(const Uuid& trap)
{
    auto found = store::trapRecords(session().reader(), trap);
    if (!found)
        tell(found.error());
    else if (!*found)
        tell(Error{ErrorCode::RecordMissing, {"trap"}});
    else
        return std::move(*found);
    return std::nullopt;
}

void SeasonViewModel::refresh()
{
    auto records = recordsOf(m_trap);
    if (!records) return;
    clearTrouble();
    m_isFound = true;
    m_records = std::move(*records);
    m_protocol = session().protocol(m_records.trap.pest);
    evaluate();
    if (!m_hasLearned) learnFromPast();
}

void SeasonViewModel::evaluate()
{
    const LocalDay today = session().clock().today();
    m_year = m_records.season.year.value_or(yearOf(m_records.trap.setDay.value_or(today)));
    m_rules = SeasonRules{.weekStart = weekStartOf(m_records.season), .today = today};
    if (m_protocol) m_rules = seasonRulesOf(*m_protocol, std::chrono::year{m_year}, m_rules.weekStart, today);
    m_season = trapSeason(m_records.facts(), m_rules);
    m_outlook.reset();
    if (m_season.standing == SeasonStanding::SoFar && m_season.countedUntil)
        m_outlook = seasonOutlook(m_season.total, *m_season.countedUntil, m_past);
    m_band = nullptr;
    if (m_protocol && m_season.takesBand())
        if (const auto bands = bandsFor(*m_protocol, m_records.trap.trapType))
            m_band = &bandOf(*bands, m_season.total);
    showVisits();
    showWeeks();
    showPair();
    ++m_revision;
    Q_EMIT refreshed();
}

// Former seasons do not change while a screen is open: they are looked up once, on another thread.
void SeasonViewModel::learnFromPast()
{
    if (!m_protocol || m_season.standing != SeasonStanding::SoFar) return;
    m_hasLearned = true;
    using Past = std::vector<PastTrapSeason>;
    session().lookUp<Past>(
        this,
        [protocol = *m_protocol, type = m_records.trap.trapType, year = m_year, today = m_rules.today](
            store::Reader& reader) { return store::pastTrapSeasons(reader, protocol, type, year, today); },
        [this](const Result<Past>& past) {
            if (!past) return tell(past.error());
            m_past = *past;
            evaluate();
        });
}

void SeasonViewModel::showVisits()
{
    const auto interval = m_protocol ? m_protocol->season.visitInterval.value : std::nullopt;
    std::vector<Row> rows;
    std::vector<Row> withdrawn;
    const auto marks = RecordMarks::read(session().reader(), session().store().stream());
    if (!marks) return tell(marks.error());
    const text::Animal animal = animalOf(m_protocol);
    auto caught = m_season.visits.cbegin();
    for (const Visit& visit : m_records.visits) {
        const QString id = QString::fromStdString(formatUuid(visit.id));
        Row row{.key = id, .route = QStringLiteral("history"), .subject = QStringLiteral("visit/") + id};
        row.title = visit.day ? text::day(*visit.day) : tr("Day not known");
        if (!visit.withdrawn.empty()) {
            row.isStruck = true;
            row.besides = visit.pest ? animal.amount(*visit.pest) : QString();
            row.detail = tr("withdrawn: %1").arg(QString::fromStdString(visit.withdrawn));
            withdrawn.push_back(std::move(row));
        } else if (caught != m_season.visits.cend() && caught->visit == visit.id) {
            row.besides = text::visitCatch(*caught, {}, animal);
            row.detail = breakingAtDots(text::visitNumbers(*caught));
            row.flags = text::visitFlags(*caught, visit, interval);
            const auto lines = marks->of(session().reader(), visit.id);
            if (!lines) return tell(lines.error());
            row.flags << *lines;
            ++caught;
            rows.push_back(std::move(row));
        }
    }
    // The newest first: it is the one looked for.
    std::reverse(rows.begin(), rows.end());
    std::move(withdrawn.rbegin(), withdrawn.rend(), std::back_inserter(rows));
    m_visits.show(std::move(rows));
}

void SeasonViewModel::showWeeks()
{
    std::vector<Row> rows;
    for (const WeekCatch& week : m_season.weeks)
        rows.push_back({.title = text::weekTitle(week.week),
            .besides = text::weekCatch(week, {}, animalOf(m_protocol)),
            .detail = breakingAtDots(text::weekNumbers(week)),
            .flags = text::weekFlags(week)});
    std::reverse(rows.begin(), rows.end());
    m_weeks.show(std::move(rows));
}

void SeasonViewModel::showPair()
{
    m_pairLabels.clear();
    m_pairTotals.clear();
    const auto other = store::pairOf(session().reader(), m_records.trap);
    if (!other) return tell(other.error());
    if (!*other) return;
    const auto records = recordsOf((*other)->id);
    if (!records) return;
    const TrapSeason season = trapSeason(records->facts(), m_rules);
    if (!pairView({m_records.trap, m_season}, {records->trap, season})) return;
    m_pairLabels = {tr("This one, %1").arg(tagWords(m_records.trap)), tagWords(records->trap)};
    for (const TrapSeason& each : {m_season, season})
        m_pairTotals << text::seasonTotal(each) + QLatin1Char(' ')
                + text::seasonCaption(each, animalOf(m_protocol));
}

QString SeasonViewModel::title() const
{
    return m_isFound ? trapTitle(m_records.site, m_records.trap) : tr("Season of a trap");
}

QString SeasonViewModel::subtitle() const
{
    if (!m_isFound) return {};
    QStringList parts;
    if (m_protocol) parts << fromProtocol(m_protocol->name);
    parts << tr("season %1").arg(m_year);
    if (!m_records.trap.withdrawn.empty())
        parts << tr("withdrawn");
    else if (m_records.trap.endDay)
        parts << tr("ended %1").arg(text::shortDay(*m_records.trap.endDay));
    return parts.join(QStringLiteral(" · "));
}

QString SeasonViewModel::total() const
{
    return text::seasonTotal(m_season);
}

QStringList SeasonViewModel::meaning() const
{
    QStringList lines{text::seasonCaption(m_season, animalOf(m_protocol))};
    const QString flight = text::flightWords(m_season, m_outlook, animalOf(m_protocol));
    if (!flight.isEmpty()) lines << flight;
    return lines;
}

QString SeasonViewModel::likely() const
{
    if (!m_outlook || !text::isCounted(m_season)) return {};
    QStringList sentences{text::outlookReason(*m_outlook)};
    const QString range = text::likelyRange(*m_outlook);
    if (!range.isEmpty()) sentences.prepend(range[0].toUpper() + range.mid(1) + QLatin1Char('.'));
    return sentences.join(QLatin1Char(' '));
}

QString SeasonViewModel::scouting() const
{
    if (!m_protocol || !m_protocol->scouting || m_year != yearOf(m_rules.today)) return {};
    const auto after = m_protocol->scouting->startsAfterPeak.value;
    if (!after) return {};
    const auto& highest = m_season.flight.highest;
    const bool isPast = m_season.flight.phase == FlightPhase::PastHighest;
    if (!isPast || !highest)
        return tr("Look for larvae about %n days after the peak.", nullptr, int(after->count()));
    return tr("Highest catch about %1: look for larvae from about %2.")
        .arg(text::shortDay(highest->middle()), text::shortDay(highest->middle() + *after));
}

QString SeasonViewModel::standing() const
{
    QStringList reasons = text::standingReasons(m_season, m_records.trap, m_rules, animalOf(m_protocol));
    if (m_protocol && m_protocol->noBands)
        reasons << fromProtocol(*m_protocol->noBands);
    else if (m_season.takesBand() && !m_band)
        reasons << tr("No band: nobody has published bands for this type of trap.");
    return reasons.join(QLatin1Char(' '));
}

QStringList SeasonViewModel::remarks() const
{
    return text::totalRemarks(m_season, {}, animalOf(m_protocol));
}

QString SeasonViewModel::bandName() const
{
    if (!m_band) return {};
    const QString name = fromProtocol(m_band->name);
    return m_season.isAtLeast ? tr("%1 or higher").arg(name) : name;
}

QString SeasonViewModel::bandSpan() const
{
    return m_band ? text::bandSpan(*m_band, {}, animalOf(m_protocol)) : QString();
}

QString SeasonViewModel::bandMeaning() const
{
    return m_band ? fromProtocol(m_band->meaning.text) : QString();
}

QStringList SeasonViewModel::rules() const
{
    QStringList lines;
    if (!m_protocol || !m_isFound) return lines;
    for (const RuleOutcome& outcome : ruleOutcomes(*m_protocol, m_records.trap.trapType, m_season)) {
        QStringList said{text::ruleWords(outcome, Session::language(), {}, animalOf(m_protocol)).line()};
        for (const Statement& remark : headOf(*outcome.rule).reading) said << fromProtocol(remark.text);
        lines << said.join(QLatin1Char(' '));
    }
    return lines;
}

QStringList SeasonViewModel::fieldRules() const
{
    QStringList lines;
    if (!m_protocol || !m_isFound) return lines;
    for (const FieldRule& rule : m_protocol->fieldRules)
        lines << text::fieldRuleLine(*m_protocol, rule, Session::language());
    return lines;
}

QString SeasonViewModel::caution() const
{
    QStringList sentences;
    if (m_protocol)
        for (const Statement& caution : m_protocol->cautionsAt(CautionPlace::Counting))
            sentences << fromProtocol(caution.text);
    return sentences.join(QLatin1Char(' '));
}

QString SeasonViewModel::protocolLine() const
{
    if (!m_protocol) return {};
    const QString used = QString::fromStdString(m_protocol->version);
    const QString setUpWith = QString::fromStdString(m_records.trap.protocolVersion);
    if (setUpWith.isEmpty() || setUpWith == used) return tr("By protocol version %1").arg(used);
    return tr("By protocol version %1; the trap was set up by version %2").arg(used, setUpWith);
}

QString SeasonViewModel::next() const
{
    const Trap& trap = m_records.trap;
    if (!m_isFound || !trap.withdrawn.empty() || trap.endDay || trap.endReason) return {};
    const bool isBehind =
        m_year < yearOf(m_rules.today) || (m_rules.lastDay && m_rules.today > *m_rules.lastDay);
    return isBehind ? QStringLiteral("takeDown") : QStringLiteral("count");
}

PictureHandle SeasonViewModel::chart(double width, double height, double textScale, int revision) const
{
    Q_UNUSED(revision)
    if (!m_protocol || !m_isFound) return {};
    formats::SeasonChartInput input =
        chartInputOf({m_records.trap, m_season, *m_protocol, m_rules, m_outlook, m_year});
    input.width = width;
    input.height = height;
    input.textScale = textScale;
    return PictureHandle(formats::seasonChart(input));
}

} // namespace duskrow::app
