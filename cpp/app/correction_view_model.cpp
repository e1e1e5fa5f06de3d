// SPDX-License-Identifier: MIT
#include "app/correction_view_model.h"

#include <QJsonDocument>

#include "app/as_qstring.h"
#include "app/exchange/record_words.h"
#include "app/question/question_edits.h"
#include "store/queries.h"
#include "text/field_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// A place that was typed was not found by satellite, and nobody knows how exact it is.
void sayHowThePlaceIsKnown(const RecordKind& kind, CorrectionEntries::Values& fields)
{
    if (!kind.find("fix_method") || !(fields.contains("lat_e7") || fields.contains("lon_e7"))) return;
    fields.try_emplace("fix_method", std::string(fixMethodNames[static_cast<std::size_t>(FixMethod::Typed)]));
    fields.try_emplace("accuracy_mm", Value{});
}

template <typename R>
std::vector<EntryChoice> namesOf(const std::vector<R>& records)
{
    std::vector<EntryChoice> choices;
    for (const R& record : records)
        choices.push_back(
            {QString::fromStdString(formatUuid(record.id)), QString::fromStdString(record.name)});
    return choices;
}

} // namespace

CorrectionViewModel::CorrectionViewModel(Session& session, const QString& subject, QObject* parent)
    : ViewModel(session, parent), m_kind(subject.section(QLatin1Char('/'), 0, 0).toStdString()),
      m_record(parseUuid(subject.section(QLatin1Char('/'), 1).toStdString()).value_or(Uuid{}))
{
    read();
    if (const auto draft = session.draft(draftKey()))
        m_entries.takeTyped(QJsonDocument::fromJson(*draft).object());
    connect(&m_entries, &CorrectionEntries::edited, this, &CorrectionViewModel::saveDraft);
}

void CorrectionViewModel::read()
{
    const auto changes = session().reader().changesOf(m_record);
    if (!changes) return tell(changes.error());
    if (changes->empty() || changes->front().kind != m_kind || !findKind(m_kind))
        return tell(Error{ErrorCode::RecordMissing, {m_kind}});
    m_isFound = true;
    const Folded now = fold(*changes);
    m_site = m_kind == "site" ? m_record : now.site;
    m_entries.show(*findKind(m_kind), now.values, choices(now));
}

// Fields whose values have a name of their own: other records, and what a protocol knows.
CorrectionEntries::Choices CorrectionViewModel::choices(const Folded& now)
{
    CorrectionEntries::Choices all;
    if (const auto members = store::members(session().reader()))
        all["keeper"] = all["observer"] = namesOf(*members);
    else
        tell(members.error());
    if (const auto districts = store::districts(session().reader()))
        all["district"] = namesOf(*districts);
    else
        tell(districts.error());
    if (m_kind != "trap") return all;
    const Protocol* protocol = session().protocol(textIn(now, "pest"));
    if (!protocol) return all;
    const std::string language = Session::language();
    all["pest"] = {{asQString(protocol->id), QString::fromStdString(protocol->name.in(language))}};
    for (const TrapType& type : protocol->trapTypes)
        all["trap_type"].push_back({asQString(type.id), QString::fromStdString(type.name.in(language))});
    return all;
}

QString CorrectionViewModel::title() const
{
    return tr("Correct the %1").arg(text::kindName(m_kind));
}

QString CorrectionViewModel::today() const
{
    return QString::fromStdString(formatDay(session().clock().today()));
}

QString CorrectionViewModel::draftKey() const
{
    return QStringLiteral("correct/%1/%2")
        .arg(QString::fromStdString(m_kind), QString::fromStdString(formatUuid(m_record)));
}

void CorrectionViewModel::saveDraft()
{
    Q_EMIT changesChanged();
    session().saveDraft(draftKey(), QJsonDocument(m_entries.typed()).toJson(QJsonDocument::Compact));
}

void CorrectionViewModel::keep()
{
    if (m_busy || !m_isFound) return;
    Edit edit{m_kind, m_record, m_site, m_entries.changed()};
    if (edit.fields.empty()) {
        forget();
        return Q_EMIT kept();
    }
    sayHowThePlaceIsKnown(*findKind(m_kind), edit.fields);
    if (const auto checked = checkEdit(edit); !checked) return tell(checked.error());
    auto edits = saidByCorrecting(session(), m_record);
    if (!edits) return tell(edits.error());
    edits->insert(edits->begin(), std::move(edit));
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(std::move(*edits), draftKey(), this, [this](const Result<store::Kept>& answer) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!answer) return tell(answer.error());
        clearTrouble();
        Q_EMIT kept();
    });
}

void CorrectionViewModel::forget()
{
    session().dropDraft(draftKey());
}

} // namespace duskrow::app
