// SPDX-License-Identifier: MIT
#include "app/calendar/pest_calendar_view_model.h"

#include <utility>

#include "app/calendar/calendar_words.h"
#include "app/trap_words.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

PestCalendarViewModel::PestCalendarViewModel(Session& session, const QString& trap, QObject* parent)
    : ViewModel(session, parent), m_trap(parseUuid(trap.toStdString()).value_or(Uuid{}))
{
    connect(&session, &Session::changed, this, &PestCalendarViewModel::refresh);
    refresh();
}

void PestCalendarViewModel::refresh()
{
    if (m_isReading) {
        m_mustReadAgain = true;
        return;
    }
    const auto trap = store::trap(session().reader(), m_trap);
    if (!trap) return tell(trap.error());
    if (!*trap) return tell(Error{ErrorCode::RecordMissing, {"trap"}});
    const Protocol* const protocol = session().protocol((*trap)->pest);
    if (!protocol) return tell(Error{ErrorCode::ProtocolMissing, {(*trap)->pest}});
    m_isReading = true;
    using Book = std::shared_ptr<const CalendarBook>;
    session().lookUpLong<Book>(
        this,
        [trap = m_trap, protocol = std::make_shared<const Protocol>(*protocol),
            today = session().clock().today()](
            store::Reader& reader) { return CalendarBook::read(reader, trap, *protocol, today); },
        [this](const Result<Book>& book) {
            m_isReading = false;
            if (std::exchange(m_mustReadAgain, false)) return refresh();
            if (!book) return tell(book.error());
            clearTrouble();
            m_book = *book;
            m_district.reset();
            m_isByWarmth = m_isByWarmth && m_book->byWarmth;
            m_isOfDistrict = m_isOfDistrict && hasDistrict();
            m_entries.show(calendarRows(*m_book));
            show();
            if (m_isOfDistrict) pool();
        });
}

void PestCalendarViewModel::show()
{
    ++m_revision;
    Q_EMIT shown();
}

void PestCalendarViewModel::setAxis(const QString& axis)
{
    const bool isByWarmth = axis == QLatin1String("warmth");
    if (isByWarmth == m_isByWarmth || (isByWarmth && !hasWarmth())) return;
    m_isByWarmth = isByWarmth;
    show();
}

void PestCalendarViewModel::setWhose(const QString& whose)
{
    const bool isOfDistrict = whose == QLatin1String("district");
    if (isOfDistrict == m_isOfDistrict || (isOfDistrict && !hasDistrict())) return;
    m_isOfDistrict = isOfDistrict;
    show();
    if (m_isOfDistrict && !m_district) pool();
}

// Only when it is asked for: each trap of a district takes its own time.
void PestCalendarViewModel::pool()
{
    if (m_isPooling || !m_book) return;
    m_isPooling = true;
    using Flight = std::shared_ptr<const DistrictFlight>;
    session().lookUpLong<Flight>(
        this, [book = m_book](store::Reader& reader) { return districtFlight(reader, *book); },
        [this, of = m_book](const Result<Flight>& flight) {
            m_isPooling = false;
            if (of != m_book) return m_isOfDistrict ? pool() : show();
            if (!flight)
                tell(flight.error());
            else
                m_district = *flight;
            show();
        });
    show();
}

const FlightRead* PestCalendarViewModel::flight() const
{
    if (!m_book || (m_isOfDistrict && !m_district)) return nullptr;
    const auto& days = m_isOfDistrict ? m_district->byDays : m_book->byDays;
    const auto& warmth = m_isOfDistrict ? m_district->byWarmth : m_book->byWarmth;
    const auto& wanted = m_isByWarmth ? warmth : days;
    return wanted ? &*wanted : nullptr;
}

QString PestCalendarViewModel::title() const
{
    return tr("Calendar of pest and crop");
}

QString PestCalendarViewModel::subtitle() const
{
    if (!m_book) return {};
    return QStringList{trapTitle(m_book->site, m_book->trap),
        QString::fromStdString(m_book->protocol.name.in(Session::language())),
        tr("as on %1").arg(text::shortDay(m_book->today))}
        .join(QStringLiteral(" · "));
}

QStringList PestCalendarViewModel::warmth() const
{
    return m_book ? warmthLines(*m_book) : QStringList();
}

QStringList PestCalendarViewModel::gaps() const
{
    return m_book ? gapLines(*m_book) : QStringList();
}

QStringList PestCalendarViewModel::cautions() const
{
    return m_book ? cautionLines(m_book->protocol) : QStringList();
}

QString PestCalendarViewModel::flightTitle() const
{
    const FlightRead* const found = flight();
    return found ? app::flightTitle(*found, m_isOfDistrict ? WhoseFlight::District : WhoseFlight::Trap)
                 : QString();
}

QStringList PestCalendarViewModel::flightLines() const
{
    const FlightRead* const found = flight();
    if (!found) return {};
    return app::flightLines(*m_book, *found, m_isOfDistrict ? WhoseFlight::District : WhoseFlight::Trap);
}

QStringList PestCalendarViewModel::flightMethod() const
{
    const FlightRead* const found = flight();
    return found ? app::flightMethod(*m_book, *found) : QStringList();
}

PictureHandle PestCalendarViewModel::strip(double width, double textScale, int revision) const
{
    Q_UNUSED(revision)
    if (!m_book || m_book->calendar.spans.empty()) return {};
    formats::CalendarStripInput input = stripInput(*m_book);
    input.width = width;
    input.textScale = textScale;
    return PictureHandle(formats::calendarStrip(input));
}

PictureHandle PestCalendarViewModel::fan(double width, double height, double textScale, int revision) const
{
    Q_UNUSED(revision)
    const FlightRead* const found = flight();
    if (!found) return {};
    formats::FlightFanInput input = fanInput(*m_book, *found);
    input.width = width;
    input.height = height;
    input.textScale = textScale;
    return PictureHandle(formats::flightFan(input));
}

} // namespace duskrow::app
