// SPDX-License-Identifier: MIT
#include "text/protocol_values.h"

#include <QCoreApplication>
#include <QLocale>

#include "text/amounts.h"
#include "text/code_names.h"
#include "text/figure_sheet.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

// As many decimals as the figure has, and no more.
QString plain(double value)
{
    return QLocale().toString(value, 'g', 6);
}

} // namespace

QString valueWords(int count)
{
    return number(count);
}

QString valueWords(double number)
{
    return plain(number);
}

QString valueWords(const std::string& text)
{
    return QString::fromStdString(text);
}

QString valueWords(std::chrono::days count)
{
    return days(count);
}

QString valueWords(std::chrono::weeks weeks)
{
    return Figures::tr("%1 weeks").arg(number(weeks.count()));
}

QString valueWords(std::chrono::year year)
{
    return QString::number(static_cast<int>(year));
}

QString valueWords(std::chrono::month_day day)
{
    // Any leap year does: only day and month are shown.
    const QDate date(2024, static_cast<int>(static_cast<unsigned>(day.month())),
        static_cast<int>(static_cast<unsigned>(day.day())));
    //: a day of any year; see QLocale::toString for the letters
    return QLocale().toString(date, Figures::tr("d MMMM"));
}

QString valueWords(std::chrono::weekday day)
{
    return weekday(static_cast<int>(day.iso_encoding()));
}

QString valueWords(Millimetres length)
{
    if (length >= Millimetres{100}) return height(length);
    return Figures::tr("%1 mm").arg(number(length.value()));
}

QString valueWords(Metres length)
{
    return distance(length);
}

QString valueWords(SquareMetres area)
{
    return Figures::tr("%1 m²").arg(plain(area.value()));
}

QString valueWords(Frames frames)
{
    return number(frames.value());
}

QString valueWords(DegreesCelsius temperature)
{
    return Figures::tr("%1 °C").arg(plain(temperature.value()));
}

QString valueWords(DegreeDays sum)
{
    return Figures::tr("%1 degree-days").arg(plain(sum.value()));
}

QString valueWords(Percent share)
{
    return Figures::tr("%1 %").arg(plain(share.value()));
}

QString valueWords(Kilograms mass)
{
    return Figures::tr("%1 kg").arg(plain(mass.value()));
}

QString valueWords(BbchStage stage)
{
    return Figures::tr("BBCH %1").arg(number(stage.value()));
}

QString valueWords(Nights count)
{
    return nights(count);
}

QString valueWords(Moths count)
{
    return moths(count);
}

QString valueWords(LarvaePerSquareMetre density)
{
    return Figures::tr("%1 larvae per m²").arg(plain(density.value()));
}

QString valueWords(DollarsPerBushel price)
{
    return Figures::tr("%1 dollars a bushel").arg(plain(price.value()));
}

QString valueWords(DollarsPerAcre cost)
{
    return Figures::tr("%1 dollars an acre").arg(plain(cost.value()));
}

QString valueWords(BushelsPerAcrePerLarva loss)
{
    return Figures::tr("%1 bushels an acre").arg(plain(loss.value()));
}

QString valueWords(Currency currency)
{
    return currency == Currency::Canadian ? Figures::tr("Canadian dollars")
                                          : Figures::tr("United States dollars");
}

QString valueWords(HeightRule rule)
{
    return name(rule);
}

QString valueWords(CatchOf caught)
{
    switch (caught) {
    case CatchOf::Males:
        return Figures::tr("males");
    case CatchOf::Females:
        return Figures::tr("females");
    case CatchOf::Both:
        return Figures::tr("males and females");
    }
    return {};
}

} // namespace duskrow::text
