// SPDX-License-Identifier: MIT
#include "app/visit/visit_lure_view_model.h"

#include <cmath>

#include "app/as_qstring.h"
#include "app/trap_words.h"
#include "app/visit/visit_words.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

QStringList wordsOf(const std::vector<Statement>& statements)
{
    QStringList words;
    for (const Statement& statement : statements)
        words.append(QString::fromStdString(statement.text.in(Session::language())));
    return words;
}

} // namespace

VisitLureViewModel::VisitLureViewModel(VisitEntry& entry, DeviceSettings& settings)
    : ViewModel(entry.session()), m_entry(entry), m_settings(settings)
{
    connect(&m_entry, &VisitEntry::changed, this, &VisitLureViewModel::changed);
}

void VisitLureViewModel::setDetailed(bool detailed)
{
    m_entry.go([&](VisitPosition& position) { position.hasLureDetails = detailed; });
}

bool VisitLureViewModel::answeredYes() const
{
    return visit().lureThere == true && (!hasStrip() || visit().stripThere == true);
}

void VisitLureViewModel::allThere()
{
    m_entry.change([&](VisitRecords& records) {
        records.visit.lureThere = true;
        if (hasStrip()) records.visit.stripThere = true;
        if (hasStrip()) records.visit.mothsAlive = false;
        if (records.visit.state == TrapState::LureGone) records.visit.state = TrapState::Fine;
    });
}

void VisitLureViewModel::setLureThere(bool there)
{
    m_entry.change([&](VisitRecords& records) { records.visit.lureThere = there; });
}

void VisitLureViewModel::setLureChanged(bool isChanged)
{
    m_entry.change([&](VisitRecords& records) {
        Service& lure = records.lure;
        lure.what = isChanged ? std::optional(ServiceWhat::Lure) : std::nullopt;
        const QDate day = toQDate(session().clock().today());
        lure.handlingRead =
            isChanged && m_settings.wasDoneOn(lureHandlingRead, day) ? std::optional(true) : std::nullopt;
        if (isChanged) return;
        lure.lureLot.clear();
        lure.lureExpiry.reset();
    });
}

bool VisitLureViewModel::handlingNeeded() const
{
    return lureChanged() && records().lure.handlingRead != true;
}

void VisitLureViewModel::acknowledgeHandling()
{
    m_settings.firstTimeOn(lureHandlingRead, toQDate(session().clock().today()));
    m_entry.change([](VisitRecords& records) { records.lure.handlingRead = true; });
}

QStringList VisitLureViewModel::handling() const
{
    const Protocol* protocol = m_entry.book().protocol;
    return protocol && protocol->lure ? wordsOf(protocol->lure->handling) : QStringList();
}

void VisitLureViewModel::setLureLot(const QString& lot)
{
    m_entry.change(
        [&](VisitRecords& records) { records.lure.lureLot = lot.toStdString(); }, Undoing::AsTyped);
}

QString VisitLureViewModel::lureExpiry() const
{
    return asQString(records().lure.lureExpiry);
}

void VisitLureViewModel::setLureExpiry(const QString& day)
{
    const auto parsed = parseDay(day.toStdString());
    if (!parsed) return tell(parsed.error());
    clearTrouble();
    m_entry.change([&](VisitRecords& records) { records.lure.lureExpiry = *parsed; }, Undoing::AsTyped);
}

QString VisitLureViewModel::expiredWords() const
{
    const auto expiry = records().lure.lureExpiry;
    if (!expiry || *expiry >= m_entry.day()) return {};
    return tr("This lure expired on %1. Use a fresh one if you have it; the record keeps what was put in.")
        .arg(text::dayAndYear(*expiry));
}

void VisitLureViewModel::setStripThere(bool there)
{
    m_entry.change([&](VisitRecords& records) { records.visit.stripThere = there; });
}

void VisitLureViewModel::setStripChanged(bool isChanged)
{
    m_entry.change([&](VisitRecords& records) {
        records.strip.what = isChanged ? std::optional(ServiceWhat::Strip) : std::nullopt;
    });
}

QStringList VisitLureViewModel::stripCautions() const
{
    const Protocol* protocol = m_entry.book().protocol;
    return protocol ? wordsOf(protocol->cautionsAt(CautionPlace::KillingStrip)) : QStringList();
}

void VisitLureViewModel::setMothsAlive(bool alive)
{
    m_entry.change([&](VisitRecords& records) { records.visit.mothsAlive = alive; });
}

void VisitLureViewModel::setEmptied(bool isEmptied)
{
    m_entry.change([&](VisitRecords& records) { records.visit.emptied = isEmptied; });
}

QString VisitLureViewModel::emptiedWords() const
{
    if (emptied()) return tr("The next count begins from nothing.");
    return tr(
        "What was counted stays in the trap: the next count holds it as well, and it is not added twice.");
}

void VisitLureViewModel::setSprayed(bool isSprayed)
{
    m_entry.change([&](VisitRecords& records) {
        Visit& visit = records.visit;
        visit.sprayed = isSprayed;
        if (isSprayed) return;
        visit.sprayedWhat.clear();
        visit.sprayedDay.reset();
        visit.reentryHours.reset();
    });
}

void VisitLureViewModel::setSprayedWhat(const QString& what)
{
    m_entry.change(
        [&](VisitRecords& records) { records.visit.sprayedWhat = what.toStdString(); }, Undoing::AsTyped);
}

QString VisitLureViewModel::sprayedDay() const
{
    return asQString(visit().sprayedDay);
}

void VisitLureViewModel::setSprayedDay(const QString& day)
{
    const auto parsed = parseDay(day.toStdString());
    if (!parsed) return tell(parsed.error());
    clearTrouble();
    m_entry.change([&](VisitRecords& records) { records.visit.sprayedDay = *parsed; }, Undoing::AsTyped);
}

double VisitLureViewModel::reentryHours() const
{
    return static_cast<double>(visit().reentryHours.value_or(0));
}

void VisitLureViewModel::setReentry(double hours)
{
    m_entry.change(
        [&](VisitRecords& records) { records.visit.reentryHours = std::llround(hours); }, Undoing::AsTyped);
}

void VisitLureViewModel::clearReentry()
{
    m_entry.change([](VisitRecords& records) { records.visit.reentryHours.reset(); });
}

QString VisitLureViewModel::sprayedWords() const
{
    if (visit().sprayed == false) return tr("Not sprayed");
    if (!sprayed()) return tr("Tap if it was, or if you know that it was not");
    QStringList words{sprayedWhat().isEmpty() ? tr("Sprayed") : tr("Sprayed with %1").arg(sprayedWhat())};
    if (visit().sprayedDay) words.append(text::shortDay(*visit().sprayedDay));
    return words.join(QStringLiteral(", "));
}

QString VisitLureViewModel::reentry() const
{
    return reentryWords(visit(), session().clock().now());
}

QString VisitLureViewModel::today() const
{
    return QString::fromStdString(formatDay(session().clock().today()));
}

QString VisitLureViewModel::trapShape() const
{
    return app::trapShape(m_entry.book().protocol, m_entry.book().trap.trapType);
}

} // namespace duskrow::app
