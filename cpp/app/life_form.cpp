// SPDX-License-Identifier: MIT
#include "app/life_form.h"

#include <algorithm>

#include "app/as_qstring.h"
#include "app/draft_entries.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr int mmPerCm = 10;
const auto placeKey = QStringLiteral("place");

std::string clean(const QString& text)
{
    return text.trimmed().toStdString();
}

// An empty entry is no day; one that is no day is a mistake.
Result<std::optional<LocalDay>> dayOrNone(const QString& text)
{
    if (text.trimmed().isEmpty()) return std::optional<LocalDay>{};
    const auto day = parseDay(clean(text));
    if (!day) return day.error();
    return std::optional<LocalDay>{*day};
}

Result<LocalDay> dayOf(const QString& text, const char* field)
{
    if (text.trimmed().isEmpty()) return Error{ErrorCode::Empty, {field}};
    return parseDay(clean(text));
}

std::optional<ServiceWhat> serviceOf(const QString& act)
{
    const auto* found = std::find(serviceWhatNames.begin(), serviceWhatNames.end(), act.toStdString());
    if (found == serviceWhatNames.end()) return std::nullopt;
    return static_cast<ServiceWhat>(found - serviceWhatNames.begin());
}

// A toggle that was never set stays unsaid.
std::optional<bool> said(bool now, std::optional<bool> before)
{
    return now || before ? std::optional(now) : std::nullopt;
}

template <typename R>
R recordOf(const std::vector<R>& records, const QString& id, const Uuid& newId)
{
    const auto wanted = parseUuid(id.toStdString());
    for (const R& record : records)
        if (wanted && record.id == *wanted) return record;
    R made;
    made.id = newId;
    return made;
}

// A height read in centimetres does not round away what was kept more finely.
std::optional<Millimetres> height(bool isKnown, int cm, std::optional<Millimetres> before)
{
    if (!isKnown) return std::nullopt;
    return before && before->value() / mmPerCm == cm ? before : Millimetres{cm * mmPerCm};
}

// What was not touched stays as it is, blanks included.
void enter(std::string& held, const QString& typed)
{
    if (typed != asQString(held)) held = clean(typed);
}

void add(std::vector<Edit>& edits, Edit edit)
{
    if (!edit.fields.empty()) edits.push_back(std::move(edit));
}

} // namespace

LifeForm::LifeForm(place::PositionSource& source, const Clock& clock, QObject* parent)
    : QObject(parent), m_source(source), m_clock(clock)
{
    freshPlace();
}

void LifeForm::freshPlace()
{
    if (m_place) m_place->deleteLater();
    m_place = new PlaceViewModel(m_source, m_clock, this);
    connect(m_place, &PlaceViewModel::edited, this, &LifeForm::edited);
    Q_EMIT placeChanged();
}

std::optional<Millimetres> LifeForm::entrance() const
{
    return m_entranceKnown ? std::optional(Millimetres{m_entranceCm * mmPerCm}) : std::nullopt;
}

void LifeForm::begin(const QString& act, LocalDay day)
{
    QSignalBlocker quiet(this);
    for (QString* text : {&m_editing, &m_lot, &m_expiry, &m_borrower, &m_member, &m_until}) text->clear();
    for (bool* flag : {&m_entranceKnown, &m_canopyKnown, &m_handlingRead, &m_lureOut, &m_stripOut, &m_washed,
             &m_sparesFrozen})
        *flag = false;
    m_reason = QStringLiteral("season_over");
    m_day = asQString(day);
    m_act = act;
    quiet.unblock();
    freshPlace();
}

void LifeForm::takeEntrance(std::optional<Millimetres> entrance, std::optional<Millimetres> canopy)
{
    m_entranceKnown = entrance.has_value();
    m_canopyKnown = canopy.has_value();
    m_entranceCm = static_cast<int>(entrance.value_or(Millimetres{}).value() / mmPerCm);
    m_canopyCm = static_cast<int>(canopy.value_or(Millimetres{}).value() / mmPerCm);
}

void LifeForm::take(const Service& service)
{
    m_editing = asQString(formatUuid(service.id));
    m_day = asQString(service.day);
    m_lot = asQString(service.lureLot);
    m_expiry = asQString(service.lureExpiry);
    m_handlingRead = service.handlingRead.value_or(false);
    if (service.entrance) takeEntrance(service.entrance, {});
    if (service.latE7 && service.lonE7)
        m_place->setFound(
            {{static_cast<std::int32_t>(*service.latE7), static_cast<std::int32_t>(*service.lonE7)},
                service.fixMethod.value_or(FixMethod::Satellite),
                service.accuracy ? std::optional(toMetres(*service.accuracy)) : std::nullopt, {}, {}});
}

void LifeForm::take(const Loan& loan)
{
    m_editing = asQString(formatUuid(loan.id));
    m_day = asQString(loan.fromDay);
    m_borrower = asQString(loan.borrower);
    m_member = loan.member.isNil() ? QString() : asQString(formatUuid(loan.member));
    m_until = asQString(loan.untilDay);
}

void LifeForm::takeEnd(const Trap& trap)
{
    if (trap.endDay) m_day = asQString(trap.endDay);
    if (trap.endReason == EndReason::Lost) m_reason = QStringLiteral("lost");
    m_lureOut = trap.lureOut.value_or(false);
    m_stripOut = trap.stripOut.value_or(false);
    m_washed = trap.washed.value_or(false);
    m_sparesFrozen = trap.spareLuresFrozen.value_or(false);
}

Result<std::vector<Edit>> LifeForm::edits(
    const store::TrapRecords& records, const Moment& now, const Uuid& newId) const
{
    if (serviceOf(m_act)) return serviceEdits(records, now, newId);
    if (m_act == QLatin1String("lend")) return loanEdits(records, newId);
    if (m_act == QLatin1String("end")) return endEdits(records);
    return std::vector<Edit>{};
}

std::optional<Error> LifeForm::fill(Service& service) const
{
    switch (*service.what) {
    case ServiceWhat::Raise:
        if (!m_entranceKnown) return Error{ErrorCode::Empty, {"entrance_mm"}};
        service.entrance = height(true, m_entranceCm, service.entrance);
        return std::nullopt;
    case ServiceWhat::Lure: {
        const auto expiry = dayOrNone(m_expiry);
        if (!expiry) return expiry.error();
        enter(service.lureLot, m_lot);
        service.lureExpiry = *expiry;
        service.handlingRead = said(m_handlingRead, service.handlingRead);
        return std::nullopt;
    }
    case ServiceWhat::Move: {
        const auto& found = m_place->found();
        if (!found) return Error{ErrorCode::Empty, {"place"}};
        service.latE7 = found->point.latE7;
        service.lonE7 = found->point.lonE7;
        service.fixMethod = found->method;
        service.accuracy.reset();
        if (found->accuracy)
            service.accuracy =
                Millimetres{static_cast<std::int64_t>(found->accuracy->value() * 1000.0 + 0.5)};
        return std::nullopt;
    }
    case ServiceWhat::Strip:
        return std::nullopt;
    }
    return std::nullopt;
}

Result<std::vector<Edit>> LifeForm::serviceEdits(
    const store::TrapRecords& records, const Moment& now, const Uuid& newId) const
{
    const auto day = app::dayOf(m_day, "day");
    if (!day) return day.error();
    const Service before = recordOf(records.services, m_editing, newId);
    Service after = before;
    after.trap = records.trap.id;
    after.what = *serviceOf(m_act);
    if (after.day != *day) {
        after.day = *day;
        after.atMs = toMs(now.at + (*day - now.day));
        after.offsetMin = static_cast<int>(now.offset.count());
    }
    if (const auto mistake = fill(after)) return *mistake;
    std::vector<Edit> edits;
    add(edits, correction(before, after, records.trap.site));
    return edits;
}

Result<std::vector<Edit>> LifeForm::loanEdits(const store::TrapRecords& records, const Uuid& newId) const
{
    const auto from = app::dayOf(m_day, "from_day");
    if (!from) return from.error();
    const auto until = app::dayOf(m_until, "until_day");
    if (!until) return until.error();
    if (m_borrower.trimmed().isEmpty()) return Error{ErrorCode::Empty, {"borrower"}};
    if (*until < *from) return Error{ErrorCode::OutOfRange, {"until_day", formatDay(*from), "9999-12-31"}};
    const Loan before = recordOf(records.loans, m_editing, newId);
    Loan after = before;
    after.trap = records.trap.id;
    enter(after.borrower, m_borrower);
    after.member = parseUuid(m_member.toStdString()).value_or(Uuid{});
    after.fromDay = *from;
    after.untilDay = *until;
    std::vector<Edit> edits;
    add(edits, correction(before, after, records.trap.site));
    return edits;
}

Result<std::vector<Edit>> LifeForm::endEdits(const store::TrapRecords& records) const
{
    const auto day = app::dayOf(m_day, "end_day");
    if (!day) return day.error();
    const Trap& before = records.trap;
    Trap after = before;
    after.endDay = *day;
    after.endReason = m_reason == QLatin1String("lost") ? EndReason::Lost : EndReason::SeasonOver;
    if (after.endReason == EndReason::SeasonOver) {
        after.lureOut = said(m_lureOut, before.lureOut);
        after.stripOut = said(m_stripOut, before.stripOut);
        after.washed = said(m_washed, before.washed);
    }
    after.spareLuresFrozen = said(m_sparesFrozen, before.spareLuresFrozen);
    std::vector<Edit> edits;
    add(edits, correction(before, after, records.trap.site));
    return edits;
}

QJsonObject LifeForm::entries() const
{
    QJsonObject all = entriesOf(*this);
    all.insert(placeKey, m_place->entries());
    return all;
}

void LifeForm::takeEntries(const QJsonObject& entries)
{
    const QSignalBlocker quiet(this);
    app::takeEntries(*this, entries);
    m_place->takeEntries(entries.value(placeKey).toObject());
}

} // namespace duskrow::app
