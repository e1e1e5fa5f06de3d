// SPDX-License-Identifier: MIT
#include "app/walk/decision_view_model.h"

#include <QJsonDocument>
#include <QLocale>

#include <array>

#include "app/as_qstring.h"
#include "domain/rules/stop_table.h"
#include "text/decision_text.h"
#include "text/frame_text.h"
#include "text/threshold_text.h"
#include "text/walk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

std::string codeOf(ControlVerdict verdict)
{
    switch (verdict) {
    case ControlVerdict::Below:
        return "below";
    case ControlVerdict::Above:
        return "above";
    case ControlVerdict::TooCloseToCall:
        return "too_close";
    }
    return {};
}

QStringList sentencesOf(const std::vector<Statement>& statements)
{
    QStringList all;
    for (const Statement& statement : statements) all << asQString(statement.text.in(Session::language()));
    return all;
}

} // namespace

DecisionViewModel::DecisionViewModel(Session& session, const QString& walk, QObject* parent)
    : ViewModel(session, parent)
{
    const auto read = m_book.read(session, parseUuid(walk.toStdString()).value_or(Uuid{}));
    if (!read) {
        tell(read.error());
        return;
    }
    const auto& divisor = m_book.rule()->drySeasonDivisor.value;
    m_form.take(m_book.decision(), divisor ? QLocale().toString(*divisor, 'g', 4) : QString());
    m_isKept = m_book.isDecisionKept();
    if (const auto draft = session.draft(draftKey())) {
        m_form.takeEntries(QJsonDocument::fromJson(*draft).object());
        m_isKept = false;
    }
    connect(&m_form, &DecisionForm::edited, this, &DecisionViewModel::hear);
    evaluate();
}

QString DecisionViewModel::walk() const
{
    return asQString(formatUuid(m_book.walk().id));
}

QString DecisionViewModel::today() const
{
    return asQString(formatDay(session().clock().today()));
}

QString DecisionViewModel::draftKey() const
{
    return QStringLiteral("decide/") + walk();
}

void DecisionViewModel::hear()
{
    if (!isFound()) return;
    m_isKept = false;
    evaluate();
    session().saveDraft(draftKey(), QJsonDocument(m_form.entries()).toJson(QJsonDocument::Compact));
}

Decision DecisionViewModel::decisionNow() const
{
    Decision decision = m_book.decision();
    m_form.fill(decision);
    return decision;
}

void DecisionViewModel::evaluate()
{
    const Decision decision = decisionNow();
    std::optional<Threshold> threshold;
    m_moneyError.clear();
    if (m_form.hasMoney()) {
        auto worked = m_book.thresholdFor(decision);
        if (worked)
            threshold = std::move(*worked);
        else
            m_moneyError = text::sentence(worked.error());
    }
    auto result = walkResult(*m_book.protocol(), *m_book.rule(), m_book.walk(), m_book.frames(), &decision,
        threshold, session().clock().today());
    if (result) {
        m_result = std::move(*result);
        clearTrouble();
    } else {
        tell(result.error());
    }
    showWorking();
    Q_EMIT changed();
}

void DecisionViewModel::showWorking()
{
    if (!m_result || !m_result->threshold) {
        m_working.show({});
        m_grid.clear();
        return;
    }
    const Threshold& threshold = *m_result->threshold;
    std::vector<Row> rows;
    for (const WorkingStep& step : threshold.working)
        rows.push_back({.title = text::workingName(step.what), .detail = text::workingLine(step, threshold)});
    m_working.show(std::move(rows));
    const ThresholdTable table = thresholdTable(*m_book.rule(), threshold);
    const bool hasFrames = m_result->estimate.stops > 0;
    m_grid.show(table,
        hasFrames ? verdictsOver(table, *m_book.protocol(), *m_result) : ThresholdGrid::Verdicts{},
        threshold);
}

QString DecisionViewModel::mean() const
{
    return m_result ? text::shortDensity(m_result->estimate) : QString();
}

QString DecisionViewModel::rangeLine() const
{
    return m_result ? text::shortRange(*m_result) : QString();
}

QString DecisionViewModel::verdict() const
{
    return m_result && m_result->decision ? text::name(m_result->decision->verdict) : QString();
}

QString DecisionViewModel::verdictKey() const
{
    return m_result && m_result->decision ? asQString(codeOf(m_result->decision->verdict)) : QString();
}

QString DecisionViewModel::nextStep() const
{
    if (!m_result) return {};
    if (!m_result->decision) return tr("Say what control costs and what the harvest brings.");
    return text::nextStep(m_result->decision->next);
}

QStringList DecisionViewModel::reasons() const
{
    QStringList all;
    if (!m_result || !m_result->decision) return all;
    for (const DecisionFinding& finding : m_result->decision->reasons) all << text::decisionReason(finding);
    return all;
}

QStringList DecisionViewModel::changes() const
{
    QStringList all;
    if (!m_result || !m_result->decision) return all;
    for (const DecisionChange& change : m_result->decision->changes)
        all << text::changeSentence(change, *m_result->threshold);
    return all;
}

QString DecisionViewModel::thresholdLine() const
{
    return m_result && m_result->threshold ? text::thresholdSentence(*m_result->threshold) : QString();
}

QString DecisionViewModel::lossLine() const
{
    return m_result && m_result->threshold ? text::lossSentence(*m_result->threshold) : QString();
}

QStringList DecisionViewModel::notes() const
{
    QStringList all;
    if (!m_result || !m_result->threshold) return all;
    for (const ThresholdNote note : m_result->threshold->notes)
        all << text::noteSentence(note, *m_result->threshold, *m_book.rule());
    return all;
}

QStringList DecisionViewModel::evidence() const
{
    QStringList all;
    if (!isFound()) return all;
    const ThresholdRule& rule = *m_book.rule();
    for (const LocalText& note :
        {rule.lossPerLarva.note, rule.trialYears.note, rule.trialVarieties.note, rule.floor.note})
        if (const std::string text = note.in(Session::language()); !text.empty()) all << asQString(text);
    return all + sentencesOf(rule.evidence);
}

QString DecisionViewModel::dryLine() const
{
    return isFound() ? asQString(m_book.rule()->drySeasonDivisor.note.in(Session::language())) : QString();
}

QString DecisionViewModel::dryNote() const
{
    if (!m_book.walk().drySeason.value_or(false) || !decisionNow().dryDivisor.empty()) return {};
    return tr("You noted a very dry season on the walk. Your threshold is that of a usual one.");
}

QString DecisionViewModel::timing() const
{
    return m_result ? text::name(m_result->timing.timing) : QString();
}

QStringList DecisionViewModel::timingReasons() const
{
    QStringList all;
    if (!m_result) return all;
    for (const TimingFinding& finding : m_result->timing.findings) all << text::timingReason(finding);
    for (const QString& sentence :
        {text::lastDaySentence(m_result->timing), text::lookAgainSentence(m_result->timing)})
        if (!sentence.isEmpty()) all << sentence;
    return all;
}

QStringList DecisionViewModel::sources() const
{
    QStringList all;
    if (!isFound()) return all;
    for (const std::string& id : {m_book.rule()->lossPerLarva.source, m_book.rule()->publishedPrice.source,
             m_book.rule()->drySeasonDivisor.source})
        if (const std::string* citation = m_book.protocol()->citation(id)) all << asQString(*citation);
    all.removeDuplicates();
    return all << tr("Protocol %1, version %2")
                      .arg(asQString(m_book.protocol()->id), asQString(m_book.protocol()->version));
}

QStringList DecisionViewModel::cautions() const
{
    return isFound() ? sentencesOf(m_book.protocol()->cautionsAt(CautionPlace::Decision)) : QStringList();
}

QStringList DecisionViewModel::estimateLines() const
{
    if (!m_result) return {};
    QStringList all = text::estimateSentences(m_result->estimate);
    if (m_result->threshold) {
        const QString chance = text::chanceSentence(m_result->estimate, m_result->threshold->larvae);
        if (!chance.isEmpty()) all << chance;
    }
    if (m_result->plan) all << text::stopSentence(*m_result->plan, m_result->report, m_result->estimate);
    return all;
}

// How often the plan errs in fields well below, near and well above the user's own threshold.
QStringList DecisionViewModel::errorRates() const
{
    QStringList all;
    if (!m_result || !m_result->plan) return all;
    const StopPlan& plan = *m_result->plan;
    const double threshold = plan.design.threshold.value();
    const std::array densities{LarvaePerSquareMetre{threshold / 1.5}, LarvaePerSquareMetre{threshold},
        LarvaePerSquareMetre{threshold * 1.5}};
    const auto table = operatingTable(plan, densities, plan.design.dispersion);
    if (!table) return all;
    for (const OperatingRow& row : *table) all << text::operatingSentence(row, plan.design.threshold);
    return all;
}

QStringList DecisionViewModel::planning() const
{
    QStringList all;
    if (!m_result) return all;
    if (m_result->plan) {
        const StopPlan& plan = *m_result->plan;
        const QString precision =
            text::precisionSentence(LarvaePerFrame{plan.thresholdAtAStop}, plan.design.dispersion);
        if (!precision.isEmpty()) all << precision;
    }
    if (const auto figures = textbookFigures(m_result->stops, m_result->frame))
        all << text::textbookSentence(*figures);
    return all;
}

void DecisionViewModel::keep()
{
    if (m_busy || !isFound()) return;
    const Decision before = m_book.isDecisionKept() ? m_book.decision() : Decision{};
    Decision after = decisionNow();
    after.walk = m_book.walk().id;
    after.protocolVersion = m_book.protocol()->version;
    after.day = session().clock().today();
    after.verdict = m_result && m_result->decision ? codeOf(m_result->decision->verdict) : std::string();
    after.lookAgainDay = m_result ? m_result->timing.lookAgain : std::nullopt;
    Edit edit;
    if (m_book.isDecisionKept()) {
        edit = correction(before, after, m_book.walk().site);
    } else {
        after.id = session().newId();
        edit = creation(after, m_book.walk().site);
    }
    if (edit.fields.empty()) {
        session().dropDraft(draftKey());
        return Q_EMIT kept();
    }
    if (const auto checked = checkEdit(edit); !checked) return tell(checked.error());
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep({std::move(edit)}, draftKey(), this, [this](const Result<store::Kept>& answer) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!answer) return tell(answer.error());
        if (const auto read = m_book.read(session(), m_book.walk().id); !read) return tell(read.error());
        m_isKept = true;
        evaluate();
        Q_EMIT kept();
    });
}

} // namespace duskrow::app
