// SPDX-License-Identifier: MIT
#include "app/life_timeline.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/as_qstring.h"
#include "app/session.h"
#include "domain/rules/geodesy.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

QString words(const char* sentence)
{
    return QCoreApplication::translate("LifeOfTrap", sentence);
}

struct Event {
    std::optional<LocalDay> day;
    Row row;
};

Event eventOf(const char* kind, const Record& record, std::optional<LocalDay> day, const QString& title)
{
    const QString id = asQString(formatUuid(record.id));
    Row row{.key = id, .title = title};
    row.besides = day ? text::shortDay(*day) : words(QT_TRANSLATE_NOOP("LifeOfTrap", "day not known"));
    row.route = QStringLiteral("history");
    row.subject = QStringLiteral("%1/%2").arg(QLatin1String(kind), id);
    return {day, std::move(row)};
}

std::optional<GeoPoint> placeOf(const Service& service)
{
    if (service.what != ServiceWhat::Move || !service.latE7 || !service.lonE7) return std::nullopt;
    return GeoPoint{static_cast<std::int32_t>(*service.latE7), static_cast<std::int32_t>(*service.lonE7)};
}

QString movedWords(std::optional<GeoPoint> from, GeoPoint to)
{
    if (!from) return words(QT_TRANSLATE_NOOP("LifeOfTrap", "Moved"));
    return words(QT_TRANSLATE_NOOP("LifeOfTrap", "Moved %1"))
        .arg(text::distance(courseBetween(*from, to).distance));
}

QString lureDetail(const Service& service)
{
    QStringList parts;
    if (!service.lureLot.empty())
        parts << words(QT_TRANSLATE_NOOP("LifeOfTrap", "lot %1")).arg(asQString(service.lureLot));
    if (service.lureExpiry)
        parts << words(QT_TRANSLATE_NOOP("LifeOfTrap", "use by %1")).arg(text::shortDay(*service.lureExpiry));
    return parts.join(QStringLiteral(" · "));
}

Event serviceEvent(const Service& service, std::optional<GeoPoint>& place)
{
    QString title = service.what ? text::name(*service.what) : words(QT_TRANSLATE_NOOP("LifeOfTrap", "Work"));
    title[0] = title[0].toUpper();
    if (service.what == ServiceWhat::Raise && service.entrance)
        title =
            words(QT_TRANSLATE_NOOP("LifeOfTrap", "Entrance set to %1")).arg(text::height(*service.entrance));
    if (const auto to = placeOf(service)) {
        title = movedWords(place, *to);
        place = to;
    }
    Event event = eventOf("service", service, service.day, title);
    event.row.detail = lureDetail(service);
    return event;
}

Event loanEvent(const Loan& loan)
{
    const QString title = words(QT_TRANSLATE_NOOP("LifeOfTrap", "Lent to %1")).arg(asQString(loan.borrower));
    Event event = eventOf("loan", loan, loan.fromDay, title);
    if (loan.untilDay)
        event.row.detail = words(QT_TRANSLATE_NOOP("LifeOfTrap", "until %1")).arg(text::day(*loan.untilDay));
    return event;
}

QString stepWords(TakeDownStep step)
{
    switch (step) {
    case TakeDownStep::LureOut:
        return words(QT_TRANSLATE_NOOP("LifeOfTrap", "lure out"));
    case TakeDownStep::StripOut:
        return words(QT_TRANSLATE_NOOP("LifeOfTrap", "killing strip out"));
    case TakeDownStep::Washed:
        return words(QT_TRANSLATE_NOOP("LifeOfTrap", "trap washed and stored"));
    }
    return {};
}

Event endEvent(const Trap& trap, bool hasStrip)
{
    QString title = words(QT_TRANSLATE_NOOP("LifeOfTrap", "Ended"));
    if (trap.endReason)
        title = words(QT_TRANSLATE_NOOP("LifeOfTrap", "Ended: %1")).arg(text::name(*trap.endReason));
    Event event = eventOf("trap", trap, trap.endDay, title);
    QStringList open;
    for (const TakeDownStep step : openSteps(trap, hasStrip)) open << stepWords(step);
    if (!open.isEmpty())
        event.row.detail =
            words(QT_TRANSLATE_NOOP("LifeOfTrap", "still to do: %1")).arg(open.join(QStringLiteral(", ")));
    return event;
}

class Facts {
public:
    void add(const char* label, const QString& value)
    {
        if (value.isEmpty()) return;
        m_rows.push_back({.title = words(label), .besides = value});
    }
    void add(const char* label, std::optional<LocalDay> day)
    {
        if (day) add(label, text::dayAndYear(*day));
    }
    void add(const char* label, std::optional<Millimetres> height)
    {
        add(label, height ? text::height(*height) : words(QT_TRANSLATE_NOOP("LifeOfTrap", "not measured")));
    }
    std::vector<Row> rows() { return std::move(m_rows); }

private:
    std::vector<Row> m_rows;
};

QString placeDegrees(double value)
{
    constexpr int decimals = 5; // about a metre
    return QLocale().toString(value, 'f', decimals);
}

QString placeWords(const Trap& trap)
{
    const auto place = trap.place();
    if (!place) return words(QT_TRANSLATE_NOOP("LifeOfTrap", "not known"));
    QStringList parts{
        placeDegrees(place->latitude()) + QStringLiteral(", ") + placeDegrees(place->longitude())};
    if (trap.accuracy) parts << text::accuracy(toMetres(*trap.accuracy));
    if (trap.fixMethod) parts << text::name(*trap.fixMethod);
    return parts.join(QStringLiteral(" · "));
}

QString agreedWords(const Site& site)
{
    if (!site.agreedDay) return asQString(site.landowner);
    if (site.landowner.empty()) return text::dayAndYear(*site.agreedDay);
    return words(QT_TRANSLATE_NOOP("LifeOfTrap", "%1, on %2"))
        .arg(asQString(site.landowner), text::dayAndYear(*site.agreedDay));
}

} // namespace

std::vector<TakeDownStep> openSteps(const Trap& trap, bool hasStrip)
{
    std::vector<TakeDownStep> open;
    if (trap.endReason != EndReason::SeasonOver) return open;
    if (trap.lureOut != true) open.push_back(TakeDownStep::LureOut);
    if (hasStrip && trap.stripOut != true) open.push_back(TakeDownStep::StripOut);
    if (trap.washed != true) open.push_back(TakeDownStep::Washed);
    return open;
}

std::optional<GeoPoint> placeNow(const store::TrapRecords& records, const Uuid& besides)
{
    std::optional<GeoPoint> place = records.trap.place();
    for (const Service& service : records.services)
        if (const auto moved = placeOf(service); moved && service.id != besides) place = moved;
    return place;
}

std::vector<Row> timelineOf(const store::TrapRecords& records, bool hasStrip)
{
    const Trap& trap = records.trap;
    std::vector<Event> events{
        eventOf("trap", trap, trap.setDay, words(QT_TRANSLATE_NOOP("LifeOfTrap", "Set up")))};
    std::optional<GeoPoint> place = trap.place();
    for (const Service& service : records.services) events.push_back(serviceEvent(service, place));
    for (const Loan& loan : records.loans) events.push_back(loanEvent(loan));
    if (trap.endDay || trap.endReason) events.push_back(endEvent(trap, hasStrip));
    std::stable_sort(
        events.begin(), events.end(), [](const Event& a, const Event& b) { return a.day < b.day; });
    std::vector<Row> rows;
    for (auto event = events.rbegin(); event != events.rend(); ++event) rows.push_back(std::move(event->row));
    return rows;
}

std::vector<Row> setUpFacts(const store::TrapRecords& records, const Protocol* protocol)
{
    const Trap& trap = records.trap;
    const Site& site = records.site;
    Facts facts;
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Set up"), trap.setDay);
    const TrapType* type = protocol ? protocol->trapType(trap.trapType) : nullptr;
    if (type)
        facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Trap"), asQString(type->name.in(Session::language())));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Tag"), asQString(trap.tag));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Place"), placeWords(trap));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Field"), asQString(site.field));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Crop"), asQString(site.crop));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Landowner’s yes"), agreedWords(site));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Way in"), asQString(site.gate));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Entrance"), trap.entrance);
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Canopy"), trap.canopy);
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Lure lot"), asQString(trap.lureLot));
    facts.add(QT_TRANSLATE_NOOP("LifeOfTrap", "Lure use by"), trap.lureExpiry);
    return facts.rows();
}

} // namespace duskrow::app
