// SPDX-License-Identifier: MIT
#include "app/exchange/differences_view_model.h"

#include <algorithm>

#include "app/as_qstring.h"
#include "app/exchange/exchange_words.h"
#include "app/exchange/record_words.h"
#include "sync/roster/roster_edits.h"
#include "text/field_names.h"
#include "text/upper_first.h"
#include "text/value_words.h"

namespace duskrow::app {

using namespace duskrow::domain;

// What the screen shows, read on another thread.
struct DifferencesViewModel::State {
    bool isCoordinator = false;
    std::vector<DifferenceRow> differences;
    std::vector<Row> proposals;
    std::vector<Row> stale;
    std::vector<Row> aside;
    std::vector<Row> refused;
};

namespace {

const Change* find(const std::vector<Change>& changes, const ChangeRef& ref)
{
    const auto found =
        std::find_if(changes.begin(), changes.end(), [&](const Change& change) { return change.ref == ref; });
    return found == changes.end() ? nullptr : &*found;
}

// Values that nobody entered, where a field has few: they may be chosen as well.
void addCodes(DifferenceRow& row, const RecordWords& words, const text::Animal& animal)
{
    const RecordKind* kind = findKind(row.kind);
    const Field* field = kind ? kind->find(row.field) : nullptr;
    if (!field) return;
    std::vector<Value> all;
    if (field->type == FieldType::Flag) all = {true, false};
    for (const std::string_view code : field->codes) all.emplace_back(std::string(code));
    for (const Value& value : all) {
        const bool isThere = std::any_of(row.choices.begin(), row.choices.end(),
            [&](const DifferenceRow::Choice& choice) { return choice.value == value; });
        if (!isThere) row.choices.push_back({value, words.valueOf(row.kind, row.field, value, animal)});
    }
}

// Heads of the same value are one choice that several made.
DifferenceRow differenceRow(const Folded& folded, const Difference& difference,
    const std::vector<Change>& changes, const RecordWords& words)
{
    DifferenceRow row{.record = folded.record,
        .site = folded.kind == "site" ? folded.record : folded.site,
        .kind = folded.kind,
        .field = difference.field,
        .title = words.titleOf(changes),
        .label = text::upperFirst(text::fieldName(folded.kind, difference.field)),
        .choices = {}};
    const text::Animal animal = words.animalOf(changes);
    for (const Head& head : difference.heads) {
        const Change* change = find(changes, head.ref);
        const QString who = change ? words.whoAndWhen(*change) : QString();
        const auto same = std::find_if(row.choices.begin(), row.choices.end(),
            [&](const DifferenceRow::Choice& choice) { return choice.value == head.value; });
        if (same == row.choices.end())
            row.choices.push_back(
                {head.value, words.valueOf(folded.kind, difference.field, head.value, animal), who});
        else
            same->besides += QStringLiteral("; ") + who;
    }
    row.standing = static_cast<int>(row.choices.size());
    addCodes(row, words, animal);
    return row;
}

class Reading {
public:
    Reading(store::Reader& reader, const Uuid& programme, const People& people, Animals animals,
        const Moment& now)
        : m_reader(reader), m_programme(programme), m_people(people),
          m_words(reader, people, std::move(animals), now), m_now(now)
    {
    }

    Result<std::vector<DifferenceRow>> differences()
    {
        const auto open = store::openDifferences(m_reader);
        if (!open) return open.error();
        std::vector<DifferenceRow> rows;
        for (const store::OpenDifference& one : *open) {
            const auto changes = m_reader.changesOf(one.record);
            if (!changes) return changes.error();
            const auto folded = store::foldedRecord(m_reader, m_people.roster(), m_programme, one.record);
            if (!folded) return folded.error();
            if (!*folded) continue;
            for (const Difference& difference : (*folded)->differences)
                if (difference.field == one.field)
                    rows.push_back(differenceRow(**folded, difference, *changes, m_words));
        }
        return rows;
    }

    // Proposals are listed with what is kept aside; here the two are told apart.
    Result<Done> asideInto(std::vector<Row>& proposals, std::vector<Row>& aside)
    {
        const auto all = store::asideChanges(m_reader);
        if (!all) return all.error();
        for (const store::AsideChange& one : *all) {
            const auto changes = m_reader.changesOf(one.record);
            if (!changes) return changes.error();
            const Change* change = find(*changes, one.change);
            Row row{.key = QString::fromStdString(formatRef(one.change)), .title = m_words.titleOf(*changes)};
            row.subject = asQString(one.record);
            if (change) {
                row.besides = m_words.whoAndWhen(*change);
                row.flags = m_words.linesOf(*change, m_words.animalOf(*changes));
            }
            const bool isProposal = one.reason == "proposal";
            if (!isProposal) row.detail = asideWords(one.reason);
            (isProposal ? proposals : aside).push_back(std::move(row));
        }
        return Done{};
    }

    // Where a proposal is why, the proposal is what is decided.
    Result<std::vector<Row>> stale(const std::vector<Row>& proposals)
    {
        const auto open = store::staleRulings(m_reader);
        if (!open) return open.error();
        std::vector<Row> rows;
        for (const store::OpenDifference& one : *open) {
            const bool isProposed = std::any_of(proposals.begin(), proposals.end(),
                [&](const Row& row) { return row.subject == asQString(one.record); });
            if (isProposed) continue;
            const auto changes = m_reader.changesOf(one.record);
            if (!changes) return changes.error();
            rows.push_back({.key = asQString(one.record), .title = m_words.titleOf(*changes)});
        }
        return rows;
    }

    Result<std::vector<Row>> refused()
    {
        const auto files = store::asideRows(m_reader);
        if (!files) return files.error();
        std::vector<Row> rows;
        for (const store::AsideRow& file : *files)
            rows.push_back({.key = QString::fromStdString(formatHex(file.hash)),
                .title = QString::fromStdString(file.origin),
                .besides = momentWords(file.at, m_now),
                .detail = refusalWords(file.reason)});
        return rows;
    }

private:
    store::Reader& m_reader;
    Uuid m_programme;
    const People& m_people;
    RecordWords m_words;
    Moment m_now;
};

} // namespace

DifferencesViewModel::DifferencesViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &DifferencesViewModel::refresh);
    refresh();
}

bool DifferencesViewModel::isEmpty() const
{
    return m_differences.count() + m_proposals.count() + m_stale.count() + m_aside.count() + m_refused.count()
        == 0;
}

void DifferencesViewModel::refresh()
{
    const auto read = [programme = session().store().programme(), own = session().store().stream(),
                          animals = animalsOf(session()),
                          now = session().clock().now()](store::Reader& reader) -> Result<State> {
        const auto people = People::read(reader, programme, own);
        if (!people) return people.error();
        Reading reading(reader, programme, *people, animals, now);
        State state;
        state.isCoordinator = people->isCoordinator();
        auto differences = reading.differences();
        if (!differences) return differences.error();
        state.differences = std::move(*differences);
        if (const auto aside = reading.asideInto(state.proposals, state.aside); !aside) return aside.error();
        auto stale = reading.stale(state.proposals);
        if (!stale) return stale.error();
        state.stale = std::move(*stale);
        auto refused = reading.refused();
        if (!refused) return refused.error();
        state.refused = std::move(*refused);
        return state;
    };
    session().lookUp<State>(this, read, [this](const Result<State>& state) {
        if (!state) return tell(state.error());
        m_isRead = true;
        m_isCoordinator = state->isCoordinator;
        m_differences.show(state->differences);
        m_proposals.show(state->proposals);
        m_stale.show(state->stale);
        m_aside.show(state->aside);
        m_refused.show(state->refused);
        Q_EMIT shown();
    });
}

void DifferencesViewModel::keep(std::vector<Edit> edits)
{
    if (m_busy || edits.empty()) return;
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(std::move(edits), std::nullopt, this, [this](const Result<store::Kept>& kept) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!kept) return tell(kept.error());
        clearTrouble();
    });
}

void DifferencesViewModel::settle()
{
    const auto edits = m_differences.edits();
    if (!edits) return tell(edits.error());
    keep(*edits);
}

// With the proposal taken the record stands again, all of it seen.
void DifferencesViewModel::take(const QString& proposal)
{
    const auto ref = parseRef(proposal.toStdString());
    const auto aside = store::asideChanges(session().reader());
    if (!ref || !aside) return aside ? void() : tell(aside.error());
    for (const store::AsideChange& one : *aside) {
        if (one.change != *ref) continue;
        const auto changes = session().reader().changesOf(one.record);
        if (!changes) return tell(changes.error());
        const Change* change = find(*changes, *ref);
        if (!change) return tell(Error{ErrorCode::RecordMissing, {one.kind}});
        Edit edit{change->kind, change->record, change->site, {}};
        for (const auto& [field, set] : change->fields) edit.fields[field] = set.value;
        return keep({std::move(edit), sync::ruling(session().store().programme(), one.record, Says::Stands)});
    }
}

// What stands is said once more, citing the proposals: they are answered. A new word alone would take them
// in.
void DifferencesViewModel::leave(const QString& record)
{
    const auto id = parseUuid(record.toStdString());
    if (!id) return;
    store::Reader& reader = session().reader();
    const Uuid& programme = session().store().programme();
    const auto roster = store::rosterOf(reader, programme);
    if (!roster) return tell(roster.error());
    const auto folded = store::foldedRecord(reader, *roster, programme, *id);
    if (!folded) return tell(folded.error());
    const auto changes = reader.changesOf(*id);
    if (!changes) return tell(changes.error());
    if (!*folded) return tell(Error{ErrorCode::RecordMissing, {"record"}});
    Edit edit{(*folded)->kind, *id, (*folded)->site, {}};
    for (const ChangeRef& ref : (*folded)->proposals) {
        const Change* proposal = find(*changes, ref);
        if (!proposal) continue;
        for (const auto& [field, set] : proposal->fields) {
            const auto stands = (*folded)->values.find(field);
            edit.fields[field] = stands == (*folded)->values.end() ? Value{} : stands->second;
        }
    }
    if (edit.fields.empty()) return;
    keep({std::move(edit), sync::ruling(programme, *id, Says::Stands)});
}

void DifferencesViewModel::standAnew(const QString& record)
{
    const auto id = parseUuid(record.toStdString());
    if (id) keep({sync::ruling(session().store().programme(), *id, Says::Stands)});
}

void DifferencesViewModel::letIn(const QString& change)
{
    if (const auto ref = parseRef(change.toStdString()))
        keep({sync::admission(session().store().programme(), *ref)});
}

} // namespace duskrow::app
