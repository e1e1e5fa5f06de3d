// SPDX-License-Identifier: MIT
#include "app/history_view_model.h"

#include <QLocale>

#include <algorithm>

#include "app/exchange/exchange_words.h"
#include "app/exchange/record_words.h"
#include "app/trap_words.h"
#include "store/queries.h"
#include "store/segments.h"
#include "text/amounts.h"
#include "text/code_names.h"
#include "text/field_names.h"
#include "text/upper_first.h"
#include "text/value_words.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// A moment as the clock on the wall showed it where it was entered.
QString wallClock(Instant at, std::chrono::minutes offset)
{
    const QDateTime local = QDateTime::fromMSecsSinceEpoch(toMs(at + offset), Qt::UTC);
    return QLocale().toString(local, HistoryViewModel::tr("d MMM yyyy, HH:mm", "day and time of a change"));
}

QString dayIn(const Folded& folded, const char* field)
{
    const auto day = parseDay(textIn(folded, field));
    return day ? text::dayAndYear(*day) : QString();
}

} // namespace

HistoryViewModel::HistoryViewModel(Session& session, const QString& subject, QObject* parent)
    : ViewModel(session, parent), m_kind(subject.section(QLatin1Char('/'), 0, 0).toStdString()),
      m_record(parseUuid(subject.section(QLatin1Char('/'), 1).toStdString()).value_or(Uuid{}))
{
    connect(&session, &Session::changed, this, &HistoryViewModel::refresh);
    refresh();
}

void HistoryViewModel::refresh()
{
    const auto changes = session().reader().changesOf(m_record);
    if (!changes) return tell(changes.error());
    if (changes->empty() || changes->front().kind != m_kind || !findKind(m_kind))
        return tell(Error{ErrorCode::RecordMissing, {m_kind}});
    clearTrouble();
    m_isFound = true;
    readNames();
    const auto roster = store::rosterOf(session().reader(), session().store().programme());
    if (!roster) return tell(roster.error());
    const auto counted =
        store::foldedRecord(session().reader(), *roster, session().store().programme(), m_record);
    if (!counted) return tell(counted.error());
    // Of a record that is kept aside as a whole the history is shown all the same.
    const Folded now = *counted && (*counted)->isThere ? **counted : fold(*changes);
    readMarks(now.broughtBack);
    m_site = m_kind == "site" ? m_record : now.site;
    m_withdrawn = QString::fromStdString(textIn(now, "withdrawn"));
    nameIt(now);
    std::vector<Row> rows;
    for (const Change& change : *changes) rows.push_back(rowOf(change, *changes));
    std::reverse(rows.begin(), rows.end());
    m_changes.show(std::move(rows));
    Q_EMIT refreshed();
}

void HistoryViewModel::readMarks(bool isBroughtBack)
{
    m_marks.clear();
    auto marks = RecordMarks::read(session().reader(), session().store().stream());
    if (!marks) return tell(marks.error());
    m_recordMarks = std::move(*marks);
    const auto lines = m_recordMarks.of(session().reader(), m_record);
    if (!lines) return tell(lines.error());
    for (const QString& line : *lines) m_marks << text::upperFirst(line);
    if (isBroughtBack)
        m_marks.prepend(
            tr("It was withdrawn by somebody who had not seen a later entry, so it stands again."));
}

void HistoryViewModel::readNames()
{
    m_names.clear();
    store::Reader& reader = session().reader();
    if (const auto members = store::members(reader))
        for (const Member& member : *members) m_names[member.id] = QString::fromStdString(member.name);
    else
        tell(members.error());
    if (const auto districts = store::districts(reader))
        for (const District& district : *districts)
            m_names[district.id] = QString::fromStdString(district.name);
    else
        tell(districts.error());
}

QString HistoryViewModel::nameOf(const Uuid& id) const
{
    const auto found = m_names.find(id);
    return found == m_names.end() ? QString() : found->second;
}

Uuid HistoryViewModel::firstTrapAt(const Uuid& site)
{
    const auto traps = store::trapsAt(session().reader(), site);
    if (!traps) tell(traps.error());
    return traps && !traps->empty() ? traps->front().id : Uuid{};
}

void HistoryViewModel::nameIt(const Folded& now)
{
    m_trap = m_kind == "trap" ? m_record : m_kind == "site" ? firstTrapAt(m_record) : idIn(now, "trap");
    const auto trap = store::trap(session().reader(), m_trap);
    if (!trap) return tell(trap.error());
    if (*trap) m_pest = (*trap)->pest;
    if (m_site.isNil() && *trap) m_site = (*trap)->site;
    const auto site = store::site(session().reader(), m_site);
    if (!site) return tell(site.error());
    m_subtitle = *trap ? trapTitle(*site ? **site : Site{}, **trap) : QString();
    m_title = text::upperFirst(text::kindName(m_kind));
    if (m_kind == "visit") m_title = tr("Visit of %1").arg(dayIn(now, "day"));
    if (m_kind == "service") {
        const RecordKind* kind = findKind(m_kind);
        m_title = text::upperFirst(text::valueWords(
            *kind, "what", now.values.contains("what") ? now.values.at("what") : Value{}, {}));
    }
    if (m_kind == "site" && *site) m_title = QString::fromStdString((*site)->name);
    if (m_kind == "loan") m_title = tr("Lent to %1").arg(QString::fromStdString(textIn(now, "borrower")));
    if (m_kind == "walk") m_title = tr("Walk of %1").arg(dayIn(now, "day"));
    if (m_kind == "decision") m_title = tr("Decision of %1").arg(dayIn(now, "day"));
    if (m_subtitle.isEmpty() && *site) m_subtitle = QString::fromStdString((*site)->name);
    if (m_kind == "sample") m_title = tr("Sample %1").arg(QString::fromStdString(textIn(now, "number")));
}

// Before and after; a first value has no before.
QString HistoryViewModel::lineOf(
    const std::string& field, const FieldSet& set, const std::vector<Change>& all) const
{
    const RecordKind& kind = *findKind(m_kind);
    const text::Animal animal = animalOf(session(), m_pest);
    const auto words = [&](const Value& value) {
        const QString named = protocolWords(field, value);
        if (!named.isEmpty()) return named;
        return text::valueWords(
            kind, field, value, [this](const Uuid& id) { return nameOf(id); }, animal);
    };
    QStringList before;
    for (const Change& earlier : all) {
        const bool wasSeen = std::find(set.base.begin(), set.base.end(), earlier.ref) != set.base.end();
        if (wasSeen && earlier.fields.contains(field)) before << words(earlier.fields.at(field).value);
    }
    const QString name = text::upperFirst(text::fieldName(m_kind, field));
    if (before.isEmpty()) return tr("%1: %2", "field and value").arg(name, words(set.value));
    //: field, value before, value after
    return tr("%1: %2 → %3").arg(name, before.join(tr(" and ")), words(set.value));
}

Row HistoryViewModel::rowOf(const Change& change, const std::vector<Change>& all) const
{
    Row row{.key = QString::fromStdString(formatRef(change.ref))};
    const QString author = nameOf(change.author);
    row.title = author.isEmpty() ? tr("Somebody not known here") : author;
    row.besides = wallClock(change.at, change.offset);
    const auto withdrawal = change.fields.find("withdrawn");
    if (&change == &all.front())
        row.detail = tr("kept it");
    else if (withdrawal == change.fields.end())
        row.detail = tr("corrected it");
    else
        row.detail = isEmpty(withdrawal->second.value) ? tr("let it stand again") : tr("withdrew it");
    // In the order of the record's own table; what a newer version added comes last.
    const RecordKind& kind = *findKind(m_kind);
    for (const Field& field : kind.fields)
        if (const auto set = change.fields.find(std::string(field.name)); set != change.fields.end())
            if (text::isWorthReading(set->first)) row.flags << lineOf(set->first, set->second, all);
    for (const auto& [field, set] : change.fields)
        if (!kind.find(field)) row.flags << lineOf(field, set, all);
    const std::string aside = m_recordMarks.asideReason(change.ref);
    if (!aside.empty()) row.flags << tr("Not counted. %1").arg(asideWords(aside));
    return row;
}

// Ids that only a protocol has words for; empty for all others.
QString HistoryViewModel::protocolWords(const std::string& field, const Value& value) const
{
    const auto* id = std::get_if<std::string>(&value);
    if (!id || m_kind != "trap" || (field != "pest" && field != "trap_type")) return {};
    const Protocol* protocol = session().protocol(field == "pest" ? *id : m_pest);
    if (!protocol) return {};
    if (field == "pest") return QString::fromStdString(protocol->name.in(Session::language()));
    const TrapType* type = protocol->trapType(*id);
    return type ? QString::fromStdString(type->name.in(Session::language())) : QString();
}

QString HistoryViewModel::warning() const
{
    if (m_kind == "trap") return tr("Its visits go out of every list and sum with it.");
    if (m_kind == "walk") return tr("Its frames and its decision go out of every list with it.");
    if (m_kind == "frame") return tr("Its larvae go out of the estimate. It stays in the history.");
    if (m_kind == "site") return tr("Its traps keep standing on their own.");
    if (m_kind == "visit")
        return tr("Its moths go out of the total. It stays listed, and you can let it stand again.");
    return tr("It stays in the history, and you can let it stand again.");
}

// A visit, a service and a loan are corrected where they were entered, all else field by field.
QString HistoryViewModel::correctRoute() const
{
    if (!m_isFound || !m_withdrawn.isEmpty() || m_kind == "protocol_use") return {};
    if (m_kind == "visit") return QStringLiteral("visit");
    if (m_kind == "service" || m_kind == "loan") return QStringLiteral("life");
    return QStringLiteral("correct");
}

QString HistoryViewModel::correctSubject() const
{
    const QString id = QString::fromStdString(formatUuid(m_record));
    if (correctRoute() != QLatin1String("correct")) return QStringLiteral("edit:") + id;
    return QString::fromStdString(m_kind) + QLatin1Char('/') + id;
}

void HistoryViewModel::withdraw()
{
    const std::string reason = m_reason.trimmed().toStdString();
    if (reason.empty()) return tell(Error{ErrorCode::Empty, {"withdrawn"}});
    keep(reason);
}

void HistoryViewModel::bringBack()
{
    keep({});
}

void HistoryViewModel::keep(const std::string& reason)
{
    if (m_busy || !m_isFound) return;
    m_busy = true;
    Q_EMIT busyChanged();
    Record record;
    record.id = m_record;
    session().keep({withdrawal(*findKind(m_kind), record, m_site, reason)}, std::nullopt, this,
        [this](const Result<store::Kept>& kept) {
            m_busy = false;
            Q_EMIT busyChanged();
            if (!kept) return tell(kept.error());
            m_reason.clear();
            Q_EMIT reasonChanged();
            clearTrouble();
        });
}

} // namespace duskrow::app
