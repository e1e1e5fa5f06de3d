// SPDX-License-Identifier: MIT
#include "app/visit/visit_entry.h"

#include <algorithm>
#include <cmath>

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// A number that no bag of this trap bears yet: the tag and a running number.
std::string freeNumber(const TrapBook& book)
{
    for (std::size_t next = book.samples.size() + 1;; ++next) {
        const std::string number =
            (book.trap.tag.empty() ? std::string("S") : book.trap.tag) + "-" + std::to_string(next);
        const bool isTaken = std::any_of(book.samples.begin(), book.samples.end(),
            [&](const Sample& sample) { return sample.number == number; });
        if (!isTaken) return number;
    }
}

void trim(std::string& text)
{
    text = QString::fromStdString(text).trimmed().toStdString();
}

} // namespace

VisitEntry::VisitEntry(Session& session, TrapBook book, const std::optional<Visit>& before, QObject* parent)
    : QObject(parent), m_session(session), m_book(std::move(book)), m_draft(begin(before)),
      m_isCorrection(before.has_value())
{
    const auto held = m_session.draft(draftKey());
    m_wasResumed = held && m_draft.read(*held);
}

VisitDraft VisitEntry::begin(const std::optional<Visit>& before) const
{
    VisitRecords base;
    if (before) base.visit = *before;
    for (const Sample& sample : m_book.samples)
        if (before && sample.visit == before->id) base.sample = sample;
    VisitRecords begun = base;
    begun.lure.id = m_session.newId();
    begun.strip.id = m_session.newId();
    begun.raise.id = m_session.newId();
    if (begun.sample.id.isNil()) {
        begun.sample.id = m_session.newId();
        begun.sample.number = freeNumber(m_book);
    }
    if (before) return {std::move(base), std::move(begun)};
    const Moment now = m_session.clock().now();
    Visit& visit = begun.visit;
    visit.id = m_session.newId();
    visit.trap = m_book.trap.id;
    visit.day = now.day;
    visit.atMs = toMs(now.at);
    visit.offsetMin = static_cast<int>(now.offset.count());
    visit.emptied = true;
    visit.state = TrapState::Fine;
    return {std::move(base), std::move(begun)};
}

LocalDay VisitEntry::day() const
{
    return visit().day.value_or(m_session.clock().today());
}

QString VisitEntry::draftKey() const
{
    // Of a correction by its visit, of a new visit by its trap: one of each may be half entered.
    return m_isCorrection ? QStringLiteral("visit-edit/") + QString::fromStdString(formatUuid(visit().id))
                          : QStringLiteral("visit/") + QString::fromStdString(formatUuid(m_book.trap.id));
}

void VisitEntry::change(const std::function<void(VisitRecords&)>& act, Undoing undoing)
{
    const auto withPlace = [&](VisitRecords& records) {
        act(records);
        if (!m_isCorrection) notePlace(records.visit);
    };
    if (m_draft.change(withPlace, undoing)) save();
}

// Where the first tap was made: a visit finished at home was still made at the trap.
void VisitEntry::notePlace(Visit& visit) const
{
    const auto& here = m_session.position().last();
    if (visit.latE7 || !here || !m_draft.isUntouched()) return;
    visit.latE7 = here->point.latE7;
    visit.lonE7 = here->point.lonE7;
    visit.accuracy = Millimetres{std::max<std::int64_t>(1, std::llround(here->accuracy.value() * 1000.0))};
}

void VisitEntry::go(const std::function<void(VisitPosition&)>& act)
{
    act(m_draft.position());
    save();
}

void VisitEntry::undo()
{
    if (m_draft.undo()) save();
}

void VisitEntry::startOver()
{
    m_draft.startOver();
    m_session.dropDraft(draftKey());
    Q_EMIT changed();
}

void VisitEntry::save()
{
    m_session.saveDraft(draftKey(), m_draft.written());
    Q_EMIT changed();
}

std::vector<Visit> VisitEntry::others() const
{
    std::vector<Visit> others;
    std::copy_if(m_book.visits.begin(), m_book.visits.end(), std::back_inserter(others),
        [&](const Visit& other) { return other.id != visit().id && other.day; });
    return others;
}

TrapSeason VisitEntry::season() const
{
    std::vector<Visit> visits = others();
    Visit mine = visit();
    mine.day = day();
    const auto later = std::find_if(visits.begin(), visits.end(), [&](const Visit& other) {
        return *other.day > *mine.day || (*other.day == *mine.day && momentOf(other) > momentOf(mine));
    });
    visits.insert(later, mine);
    return trapSeason(
        {m_book.trap, visits, m_book.services, m_book.samples, m_book.leftOut}, m_book.seasonRules);
}

std::optional<VisitCatch> VisitEntry::caught() const
{
    const TrapSeason all = season();
    for (const VisitCatch& caught : all.visits)
        if (caught.visit == visit().id) return caught;
    return std::nullopt;
}

TrapNow VisitEntry::before() const
{
    std::vector<Visit> earlier = others();
    std::erase_if(earlier, [&](const Visit& other) { return *other.day > day(); });
    TrapNow now = trapNow({m_book.trap, earlier, m_book.services, m_book.samples}, day());
    now.visits = {};
    return now;
}

Moths VisitEntry::soFarBefore() const
{
    const TrapSeason all = season();
    Moths before;
    for (const VisitCatch& caught : all.visits) {
        if (caught.visit == visit().id) break;
        before = caught.soFar;
    }
    return before;
}

std::vector<AskedQuestion> VisitEntry::questions() const
{
    Visit mine = visit();
    mine.day = day();
    return questionsAbout(mine, m_book.facts(), m_session.clock().today());
}

const Sample* VisitEntry::keptSample() const
{
    const auto found = std::find_if(m_book.samples.begin(), m_book.samples.end(),
        [&](const Sample& sample) { return sample.visit == visit().id && sample.withdrawn.empty(); });
    return found == m_book.samples.end() ? nullptr : &*found;
}

std::vector<Edit> VisitEntry::edits() const
{
    std::vector<Edit> edits;
    Visit mine = visit();
    trim(mine.sprayedWhat);
    trim(mine.remark);
    if (!m_isCorrection)
        edits.push_back(creation(mine, m_book.trap.site));
    else if (Edit edit = correction(m_draft.base().visit, mine, m_book.trap.site); !edit.fields.empty())
        edits.push_back(std::move(edit));
    if (!m_isCorrection) addServices(edits);
    addSample(edits);
    return edits;
}

void VisitEntry::addServices(std::vector<Edit>& edits) const
{
    const auto add = [&](Service service, ServiceWhat what) {
        service.trap = m_book.trap.id;
        service.what = what;
        service.day = visit().day;
        service.atMs = visit().atMs;
        service.offsetMin = visit().offsetMin;
        trim(service.lureLot);
        edits.push_back(creation(service, m_book.trap.site));
    };
    const VisitRecords& records = m_draft.records();
    if (records.lure.what) add(records.lure, ServiceWhat::Lure);
    if (records.strip.what) add(records.strip, ServiceWhat::Strip);
    const auto entrance = before().entrance;
    if (!visit().entrance || (entrance && *visit().entrance <= *entrance)) return;
    Service raise = records.raise;
    raise.entrance = visit().entrance;
    add(raise, ServiceWhat::Raise);
}

void VisitEntry::addSample(std::vector<Edit>& edits) const
{
    const Moths unsure = visit().unsure.value_or(Moths{});
    const Sample* kept = keptSample();
    Sample sample = kept ? *kept : m_draft.records().sample;
    sample.number = m_draft.records().sample.number;
    trim(sample.number);
    sample.moths = unsure;
    if (kept && unsure.value() > 0) {
        if (Edit edit = correction(*kept, sample, m_book.trap.site); !edit.fields.empty())
            edits.push_back(std::move(edit));
    } else if (kept && kept->state == SampleState::Kept) {
        edits.push_back(withdrawal(*kept, m_book.trap.site, "no moth of the visit is unsure any more"));
    } else if (!kept && unsure.value() > 0) {
        sample.visit = visit().id;
        sample.trap = m_book.trap.id;
        sample.state = SampleState::Kept;
        sample.keptDay = visit().day;
        edits.push_back(creation(sample, m_book.trap.site));
    }
}

} // namespace duskrow::app
