// SPDX-License-Identifier: MIT
#include "app/visit/visit_view_model.h"

#include <QQmlEngine>

#include "app/visit/visit_words.h"
#include "store/queries.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

const QString correctionPrefix = QStringLiteral("edit:");

template <typename Model>
std::unique_ptr<Model> ours(std::unique_ptr<Model> model)
{
    // Seen by QML as properties only, never collected by it.
    QQmlEngine::setObjectOwnership(model.get(), QQmlEngine::CppOwnership);
    return model;
}

} // namespace

VisitViewModel::VisitViewModel(Session& session, DeviceSettings& settings, const QString& subject)
    : ViewModel(session), m_which(new WhichTrapViewModel(session, this))
{
    connect(m_which, &WhichTrapViewModel::changed, this, &VisitViewModel::changed);
    connect(m_which, &WhichTrapViewModel::failed, this, [this](const Error& error) { tell(error); });
    const bool isCorrecting = subject.startsWith(correctionPrefix);
    const auto id = parseUuid((isCorrecting ? subject.mid(correctionPrefix.size()) : subject).toStdString());
    if (!id) return;
    if (isCorrecting)
        openCorrection(*id, settings);
    else
        open(*id, std::nullopt, settings);
}

void VisitViewModel::openCorrection(const Uuid& id, DeviceSettings& settings)
{
    const auto visit = store::visit(session().reader(), id);
    if (!visit) return tell(visit.error());
    if (!*visit) return tell({ErrorCode::RecordMissing, {"visit"}});
    open((*visit)->trap, **visit, settings);
}

void VisitViewModel::open(const Uuid& trap, const std::optional<Visit>& before, DeviceSettings& settings)
{
    auto book = readTrapBook(session(), trap);
    if (!book) return tell(book.error());
    m_guide = new MothGuide(book->protocol, this);
    m_entry = std::make_unique<VisitEntry>(session(), std::move(*book), before, nullptr);
    m_count = ours(std::make_unique<VisitCountViewModel>(*m_entry));
    m_heavy = ours(std::make_unique<HeavyCatchViewModel>(*m_entry));
    m_trap = ours(std::make_unique<VisitTrapViewModel>(*m_entry));
    m_lure = ours(std::make_unique<VisitLureViewModel>(*m_entry, settings));
    m_done = ours(std::make_unique<VisitDoneViewModel>(*m_entry));
    connect(m_entry.get(), &VisitEntry::changed, this, &VisitViewModel::changed);
}

QString VisitViewModel::step() const
{
    if (m_isKept) return QStringLiteral("kept");
    if (!m_entry) return QStringLiteral("which");
    const bool isFresh = m_entry->draft().isUntouched() && !m_entry->position().hasTrapTold;
    if (isFresh && !isCorrection() && m_which->isInDoubt(m_entry->book().trap.id))
        return QStringLiteral("which");
    return m_entry->position().step;
}

QString VisitViewModel::trapId() const
{
    return m_entry ? QString::fromStdString(formatUuid(m_entry->book().trap.id)) : QString();
}

QString VisitViewModel::visitId() const
{
    return m_entry ? QString::fromStdString(formatUuid(m_entry->visit().id)) : QString();
}

QString VisitViewModel::title() const
{
    return m_entry ? m_entry->book().title() : QString();
}

QString VisitViewModel::subtitle() const
{
    if (!m_entry) return {};
    if (isCorrection()) {
        const auto day = m_entry->draft().base().visit.day;
        return day ? tr("Correcting the visit of %1").arg(text::day(*day)) : tr("Correcting a visit");
    }
    QStringList words;
    const auto& here = session().position().last();
    if (here && m_entry->book().trap.place()) words.append(whereFromHere(*here, m_entry->book().trap));
    words.append(lastEmptiedWords(*m_entry));
    words.removeAll(QString());
    return words.join(QStringLiteral(" · "));
}

bool VisitViewModel::wasResumed() const
{
    return m_entry && m_entry->wasResumed();
}

bool VisitViewModel::trapSeen() const
{
    if (!m_entry || m_entry->visit().outcome != Outcome::CouldNotCount) return true;
    return m_entry->visit().reason != NoCountReason::Access
        && m_entry->visit().reason != NoCountReason::Missing;
}

QStringList VisitViewModel::steps() const
{
    if (!trapSeen()) return {QStringLiteral("count"), QStringLiteral("done")};
    return {QStringLiteral("count"), QStringLiteral("trap"), QStringLiteral("lure"), QStringLiteral("done")};
}

void VisitViewModel::go(const QString& step)
{
    m_entry->go([&](VisitPosition& position) { position.step = step; });
}

void VisitViewModel::tellTrap()
{
    if (m_entry) m_entry->go([](VisitPosition& position) { position.hasTrapTold = true; });
}

void VisitViewModel::next()
{
    if (!m_entry) return;
    const auto at = steps().indexOf(step());
    if (at + 1 < steps().size()) go(steps().at(at + 1));
}

bool VisitViewModel::previous()
{
    if (!m_entry || m_isKept) return false;
    const auto at = steps().indexOf(step());
    if (at <= 0) return false;
    go(steps().at(at - 1));
    return true;
}

void VisitViewModel::undo()
{
    if (m_entry) m_entry->undo();
}

void VisitViewModel::startOver()
{
    clearTrouble();
    if (m_entry) m_entry->startOver();
}

void VisitViewModel::keep()
{
    if (!m_entry || m_isBusy || m_isKept) return;
    if (m_done->hasSample() && m_done->sampleNumber().trimmed().isEmpty())
        return tell({ErrorCode::Empty, {"number"}});
    std::vector<Edit> edits = m_entry->edits();
    if (edits.empty()) {
        session().dropDraft(m_entry->draftKey());
        m_keptWords = tr("Nothing was changed.");
        return kept();
    }
    m_isBusy = true;
    Q_EMIT changed();
    session().keep(std::move(edits), m_entry->draftKey(), this, [this](const Result<store::Kept>& answer) {
        m_isBusy = false;
        if (!answer) {
            tell(answer.error());
            return Q_EMIT changed();
        }
        wordsOfKept();
        kept();
    });
}

void VisitViewModel::kept()
{
    clearTrouble();
    m_isKept = true;
    Q_EMIT changed();
}

void VisitViewModel::wordsOfKept()
{
    const QString headline = m_done->headline();
    m_keptWords = isCorrection()
        ? tr("%1: corrected on this phone. What stood there before is in its history.").arg(headline)
        : tr("%1: kept on this phone.").arg(headline);
    if (m_done->hasSample())
        m_bagWords =
            tr("Write %1 on the bag in pencil, then freeze it.").arg(m_done->sampleNumber().trimmed());
    if (isCorrection()) return;
    const DueRules& rules = m_entry->book().dueRules;
    const LocalDay next = countAfter(m_entry->day(), rules);
    const auto end = takeDownDay(rules);
    m_nextWords = end && next >= *end ? tr("Last count and take down: %1").arg(text::day(*end))
                                      : tr("Next count: %1").arg(text::day(next));
}

} // namespace duskrow::app
