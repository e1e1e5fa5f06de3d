// SPDX-License-Identifier: MIT
#include "app/life_view_model.h"

#include <QJsonDocument>

#include <algorithm>

#include "app/life_timeline.h"
#include "app/trap_words.h"
#include "domain/rules/geodesy.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/trap_now.h"
#include "store/queries.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

QStringList textsOf(const std::vector<Statement>& statements)
{
    QStringList texts;
    for (const Statement& statement : statements)
        texts << QString::fromStdString(statement.text.in(Session::language()));
    return texts;
}

} // namespace

LifeViewModel::LifeViewModel(
    Session& session, DeviceSettings& settings, const QString& subject, QObject* parent)
    : ViewModel(session, parent), m_settings(settings), m_form(session.position(), session.clock(), this)
{
    connect(&session, &Session::changed, this, &LifeViewModel::refresh);
    connect(&m_form, &LifeForm::edited, this, &LifeViewModel::saveDraft);
    connect(this, &LifeViewModel::refreshed, this, &LifeViewModel::formChanged);
    openSubject(subject);
}

void LifeViewModel::openSubject(const QString& subject)
{
    const QString act =
        subject.contains(QLatin1Char(':')) ? subject.section(QLatin1Char(':'), 0, 0) : QString();
    const Uuid id = parseUuid(subject.section(QLatin1Char(':'), -1).toStdString()).value_or(Uuid{});
    if (act == QLatin1String("edit")) return openEdit(id);
    m_trap = id;
    refresh();
    if (!m_isFound) return;
    readDraft();
    if (!act.isEmpty() && m_form.act() != act) begin(act);
}

// Corrects a service or a loan in the form that made it.
void LifeViewModel::openEdit(const Uuid& record)
{
    const auto service = store::service(session().reader(), record);
    const auto loan = store::loan(session().reader(), record);
    if (!service) return tell(service.error());
    if (!loan) return tell(loan.error());
    if (*service) m_trap = (*service)->trap;
    if (*loan) m_trap = (*loan)->trap;
    refresh();
    if (!m_isFound) return;
    if (*service && (*service)->what) {
        begin(QString::fromUtf8(serviceWhatNames.at(static_cast<std::size_t>(*(*service)->what)).data()));
        m_form.take(**service);
    } else if (*loan) {
        begin(QStringLiteral("lend"));
        m_form.take(**loan);
    }
    Q_EMIT m_form.edited();
}

void LifeViewModel::refresh()
{
    auto records = store::trapRecords(session().reader(), m_trap);
    if (!records) return tell(records.error());
    if (!*records) return tell(Error{ErrorCode::RecordMissing, {"trap"}});
    m_isFound = true;
    m_records = std::move(**records);
    m_protocol = session().protocol(m_records.trap.pest);
    m_timeline.show(timelineOf(m_records, hasStrip()));
    m_facts.show(setUpFacts(m_records, m_protocol));
    readMembers();
    Q_EMIT refreshed();
}

void LifeViewModel::readMembers()
{
    m_memberKeys.clear();
    m_memberNames.clear();
    const auto members = store::members(session().reader());
    if (!members) return tell(members.error());
    for (const Member& member : *members) {
        if (session().me() && member.id == session().me()->id) continue;
        m_memberKeys << QString::fromStdString(formatUuid(member.id));
        m_memberNames << QString::fromStdString(member.name);
    }
}

QString LifeViewModel::draftKey() const
{
    return QStringLiteral("life/") + trap();
}

void LifeViewModel::readDraft()
{
    const auto held = session().draft(draftKey());
    if (held) m_form.takeEntries(QJsonDocument::fromJson(*held).object());
}

void LifeViewModel::saveDraft()
{
    Q_EMIT formChanged();
    if (m_form.act().isEmpty()) return;
    session().saveDraft(draftKey(), QJsonDocument(m_form.entries()).toJson(QJsonDocument::Compact));
}

void LifeViewModel::begin(const QString& act)
{
    clearTrouble();
    const LocalDay today = session().clock().today();
    m_form.begin(act, today);
    const TrapNow now = trapNow(m_records.facts(), today);
    if (act == QLatin1String("raise")) m_form.takeEntrance(now.entrance, canopyNow());
    if (act == QLatin1String("end")) m_form.takeEnd(m_records.trap);
    if (act == QLatin1String("lure") && m_settings.wasDoneOn(lureHandlingRead, toQDate(today)))
        m_form.setProperty("handlingRead", true);
    Q_EMIT m_form.edited();
}

void LifeViewModel::cancel()
{
    clearTrouble();
    m_form.begin({}, session().clock().today());
    session().dropDraft(draftKey());
    Q_EMIT m_form.edited();
}

void LifeViewModel::acknowledgeHandling()
{
    m_settings.firstTimeOn(lureHandlingRead, toQDate(session().clock().today()));
    m_form.setProperty("handlingRead", true);
}

void LifeViewModel::keepEdits(std::vector<Edit> edits, const std::function<void()>& then)
{
    if (m_busy) return;
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(std::move(edits), draftKey(), this, [this, then](const Result<store::Kept>& kept) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!kept) return tell(kept.error());
        clearTrouble();
        then();
    });
}

void LifeViewModel::keep()
{
    auto edits = m_form.edits(m_records, session().clock().now(), session().newId());
    if (!edits) return tell(edits.error());
    keepEdits(std::move(*edits), [this] {
        refresh(); // before the overview comes, so that nothing on it moves under a finger
        m_form.begin({}, session().clock().today());
        Q_EMIT m_form.edited();
        Q_EMIT finished();
    });
}

void LifeViewModel::replace()
{
    Trap after = m_records.trap;
    after.endDay = session().clock().today();
    after.endReason = EndReason::Replaced;
    keepEdits({correction(m_records.trap, after, after.site)},
        [this] { Q_EMIT replacementWanted(QStringLiteral("replace/") + trap()); });
}

void LifeViewModel::takeBack()
{
    const Loan* loan = currentLoan();
    if (!loan) return;
    Loan after = *loan;
    after.untilDay = session().clock().today();
    keepEdits({correction(*loan, after, m_records.trap.site)}, [] {});
}

void LifeViewModel::letRunOn()
{
    Trap after = m_records.trap;
    after.endDay.reset();
    after.endReason.reset();
    after.lureOut.reset();
    after.stripOut.reset();
    after.washed.reset();
    keepEdits({correction(m_records.trap, after, after.site)}, [] {});
}

const Loan* LifeViewModel::currentLoan() const
{
    const LocalDay today = session().clock().today();
    for (const Loan& loan : m_records.loans)
        if (loan.fromDay && loan.untilDay && *loan.fromDay <= today && today < *loan.untilDay) return &loan;
    return nullptr;
}

QString LifeViewModel::title() const
{
    return m_isFound ? trapTitle(m_records.site, m_records.trap) : tr("Life of a trap");
}

QString LifeViewModel::trap() const
{
    return QString::fromStdString(formatUuid(m_trap));
}

QString LifeViewModel::site() const
{
    const Uuid& id = m_records.site.id;
    return id.isNil() ? QString() : QString::fromStdString(formatUuid(id));
}

QString LifeViewModel::today() const
{
    return QString::fromStdString(formatDay(session().clock().today()));
}

bool LifeViewModel::isRunning() const
{
    const Trap& trap = m_records.trap;
    return m_isFound && trap.withdrawn.empty() && !trap.endDay && !trap.endReason;
}

bool LifeViewModel::isUnfinished() const
{
    return !openSteps(m_records.trap, hasStrip()).empty();
}

QString LifeViewModel::ended() const
{
    const Trap& trap = m_records.trap;
    if (!trap.withdrawn.empty()) return tr("Withdrawn: %1").arg(QString::fromStdString(trap.withdrawn));
    if (!trap.endDay) return {};
    const QString day = text::day(*trap.endDay);
    return trap.endReason ? tr("Ended on %1: %2.").arg(day, text::name(*trap.endReason))
                          : tr("Ended on %1.").arg(day);
}

QString LifeViewModel::lent() const
{
    const Loan* loan = currentLoan();
    if (!loan) return {};
    return tr("Lent to %1 until %2.").arg(QString::fromStdString(loan->borrower), text::day(*loan->untilDay));
}

QString LifeViewModel::trapShape() const
{
    return app::trapShape(m_protocol, m_records.trap.trapType);
}

bool LifeViewModel::hasStrip() const
{
    const TrapType* type = m_protocol ? m_protocol->trapType(m_records.trap.trapType) : nullptr;
    if (type) return type->hasKillingStrip;
    return m_protocol && m_protocol->killingStrip;
}

QStringList LifeViewModel::handling() const
{
    return m_protocol && m_protocol->lure ? textsOf(m_protocol->lure->handling) : QStringList();
}

QStringList LifeViewModel::stripCautions() const
{
    QStringList texts =
        m_protocol ? textsOf(m_protocol->cautionsAt(CautionPlace::KillingStrip)) : QStringList();
    return texts << tr("Put on fresh gloves afterwards.");
}

bool LifeViewModel::needsReminder() const
{
    return m_form.act() == QLatin1String("lure") && !m_form.isHandlingRead() && !m_form.isCorrection();
}

bool LifeViewModel::needsLastCount() const
{
    const LocalDay today = session().clock().today();
    return isRunning()
        && std::none_of(m_records.visits.begin(), m_records.visits.end(),
            [&](const Visit& visit) { return visit.withdrawn.empty() && visit.day && *visit.day >= today; });
}

std::optional<Millimetres> LifeViewModel::canopyNow() const
{
    const TrapNow now = trapNow(m_records.facts(), session().clock().today());
    return now.canopy.empty() ? std::nullopt : std::optional(now.canopy.back().canopy);
}

QString LifeViewModel::clearance() const
{
    const auto entrance = m_form.entrance();
    const auto canopy = canopyNow();
    if (!entrance || !canopy) return {};
    return text::clearance(clearanceOf(*entrance, *canopy).height);
}

QString LifeViewModel::entranceWords() const
{
    const auto entrance = m_form.entrance();
    return entrance ? tr("entrance %1").arg(text::height(*entrance)) : QString();
}

QString LifeViewModel::canopyWords() const
{
    const auto canopy = canopyNow();
    return canopy ? tr("canopy %1").arg(text::height(*canopy)) : tr("canopy not measured");
}

QString LifeViewModel::raiseAdvice() const
{
    const auto entrance = m_form.entrance();
    if (m_form.act() != QLatin1String("raise") || !entrance) return {};
    const TrapNow now = trapNow(m_records.facts(), session().clock().today());
    if (now.canopy.empty()) return tr("Nobody has measured the canopy here.");
    const CanopyHeight& last = now.canopy.back();
    const QString measured = tr("Canopy last measured on %1.").arg(text::shortDay(last.day));
    if (clearanceOf(*entrance, last.canopy).position != EntrancePosition::Above)
        return tr("%1 The crop stands at or over the entrance: set it higher.").arg(measured);
    const auto reaches = dayCropReaches(*entrance, now.canopy);
    if (!reaches) return measured;
    return tr("%1 At its last pace it reaches this height about %2: an estimate.")
        .arg(measured, text::shortDay(*reaches));
}

QString LifeViewModel::moved() const
{
    const auto& found = m_form.place()->found();
    if (!found) return {};
    const Uuid edited = parseUuid(m_form.editing().toStdString()).value_or(Uuid{});
    const auto stood = placeNow(m_records, edited);
    if (!stood) return tr("Nobody noted where it stood before.");
    return tr("%1 from where it stood").arg(text::distance(courseBetween(*stood, found->point).distance));
}

} // namespace duskrow::app
