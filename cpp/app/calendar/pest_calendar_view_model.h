// SPDX-License-Identifier: MIT
#pragma once

#include "app/calendar/calendar_reading.h"
#include "app/paint/picture_handle.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// The calendar of moth and crop at one trap's field, and the flight of the trap or of its district.
// Everything is read and worked out on another thread.
class PestCalendarViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString title READ title NOTIFY shown FINAL)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY shown FINAL)
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(bool isWorking READ isWorking NOTIFY shown FINAL) // on the flight of the district
    Q_PROPERTY(duskrow::app::RowList* entries READ entries CONSTANT FINAL)
    Q_PROPERTY(QStringList warmth READ warmth NOTIFY shown FINAL)
    Q_PROPERTY(QStringList gaps READ gaps NOTIFY shown FINAL) // what cannot be said, why, and the way out
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY shown FINAL)
    Q_PROPERTY(bool hasFlight READ hasFlight NOTIFY shown FINAL)
    Q_PROPERTY(bool hasWarmth READ hasWarmth NOTIFY shown FINAL) // the flight has an axis of degree-days
    Q_PROPERTY(bool hasDistrict READ hasDistrict NOTIFY shown FINAL)
    Q_PROPERTY(QString district READ district NOTIFY shown FINAL)
    Q_PROPERTY(QString axis READ axis WRITE setAxis NOTIFY shown FINAL) // "days", "warmth"
    Q_PROPERTY(QString whose READ whose WRITE setWhose NOTIFY shown FINAL) // "trap", "district"
    Q_PROPERTY(QString flightTitle READ flightTitle NOTIFY shown FINAL)
    Q_PROPERTY(QStringList flightLines READ flightLines NOTIFY shown FINAL)
    Q_PROPERTY(QStringList flightMethod READ flightMethod NOTIFY shown FINAL)
    Q_PROPERTY(int revision READ revision NOTIFY shown FINAL) // counts up with each change

public:
    PestCalendarViewModel(Session& session, const QString& trap, QObject* parent = nullptr);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] bool isRead() const { return m_book != nullptr; }
    [[nodiscard]] bool isWorking() const { return m_isPooling; }
    [[nodiscard]] RowList* entries() { return &m_entries; }
    [[nodiscard]] QStringList warmth() const;
    [[nodiscard]] QStringList gaps() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] bool hasFlight() const { return m_book && m_book->byDays; }
    [[nodiscard]] bool hasWarmth() const { return m_book && m_book->byWarmth; }
    [[nodiscard]] bool hasDistrict() const { return hasFlight() && !m_book->district.isEmpty(); }
    [[nodiscard]] QString district() const { return m_book ? m_book->district : QString(); }
    [[nodiscard]] QString axis() const
    {
        return m_isByWarmth ? QStringLiteral("warmth") : QStringLiteral("days");
    }
    void setAxis(const QString& axis);
    [[nodiscard]] QString whose() const
    {
        return m_isOfDistrict ? QStringLiteral("district") : QStringLiteral("trap");
    }
    void setWhose(const QString& whose);
    [[nodiscard]] QString flightTitle() const;
    [[nodiscard]] QStringList flightLines() const;
    [[nodiscard]] QStringList flightMethod() const;
    [[nodiscard]] int revision() const { return m_revision; }

    // Pictures for items of these sizes; the strip finds its own height. `revision` is there so that a
    // binding asks again.
    Q_INVOKABLE duskrow::app::PictureHandle strip(double width, double textScale, int revision) const;
    Q_INVOKABLE duskrow::app::PictureHandle fan(
        double width, double height, double textScale, int revision) const;

Q_SIGNALS:
    void shown();

private:
    void refresh();
    void show();
    void pool();
    [[nodiscard]] const FlightRead* flight() const; // that is chosen; null while it is worked out

    domain::Uuid m_trap;
    std::shared_ptr<const CalendarBook> m_book;
    std::shared_ptr<const DistrictFlight> m_district;
    RowList m_entries;
    int m_revision = 0;
    bool m_isByWarmth = false;
    bool m_isOfDistrict = false;
    bool m_isReading = false;
    bool m_mustReadAgain = false;
    bool m_isPooling = false;
};

} // namespace duskrow::app
