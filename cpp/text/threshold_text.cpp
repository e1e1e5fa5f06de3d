// SPDX-License-Identifier: MIT
#include "text/threshold_text.h"

#include <QCoreApplication>

#include <cmath>

#include "text/protocol_values.h"
#include "text/unbroken.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct ThresholdWords {
    Q_DECLARE_TR_FUNCTIONS(Threshold)
};

// Enough digits to work on with, and none that are only zeros.
QString plain(double value, const QLocale& locale, int digits = 6)
{
    return locale.toString(value, 'g', digits);
}

QString oneDecimal(double value, const QLocale& locale)
{
    return locale.toString(value, 'f', 1);
}

QString termAsWritten(double value, WorkingUnit unit, const Threshold& threshold, const QLocale& locale)
{
    const QString currency = QString::fromStdString(codeOf(threshold.cost.unit.currency));
    const QString number = plain(value, locale);
    switch (unit) {
    case WorkingUnit::MoneyPerAcre:
        return ThresholdWords::tr("%1 %2/ac").arg(number, currency);
    case WorkingUnit::MoneyPerHectare:
        return ThresholdWords::tr("%1 %2/ha").arg(number, currency);
    case WorkingUnit::MoneyPerBushel:
        return ThresholdWords::tr("%1 %2/bu").arg(number, currency);
    case WorkingUnit::MoneyPerTonne:
        return ThresholdWords::tr("%1 %2/t").arg(number, currency);
    case WorkingUnit::AcreInHectares:
        //: hectares in an acre; all digits, for it is exact
        return ThresholdWords::tr("%1 ha/ac").arg(plain(value, locale, 11));
    case WorkingUnit::BushelInTonnes:
        return ThresholdWords::tr("%1 t/bu").arg(plain(value, locale, 10));
    case WorkingUnit::YieldPerLarva:
        return ThresholdWords::tr("%1 bu/ac for each larva/m²").arg(number);
    case WorkingUnit::MoneyPerLarva:
        return ThresholdWords::tr("%1 %2/ac for each larva/m²").arg(number, currency);
    case WorkingUnit::Density:
        return ThresholdWords::tr("%1 larvae/m²").arg(number);
    case WorkingUnit::CountInFrame:
        return ThresholdWords::tr("%1 larvae a frame").arg(number);
    case WorkingUnit::FrameArea:
        return ThresholdWords::tr("%1 m² a frame").arg(number);
    case WorkingUnit::Number:
        return number;
    }
    return number;
}

QString term(double value, WorkingUnit unit, const Threshold& threshold, const QLocale& locale)
{
    return unbroken(termAsWritten(value, unit, threshold, locale));
}

QString joinedWorking(const QString& left, WorkingSign sign, const QString& right)
{
    switch (sign) {
    case WorkingSign::Begin:
        return right;
    case WorkingSign::Plus:
        return left + QStringLiteral(" + ") + right;
    case WorkingSign::Times:
        return left + QStringLiteral(" × ") + right;
    case WorkingSign::DividedBy:
        return left + QStringLiteral(" ÷ ") + right;
    case WorkingSign::AtLeast:
        return ThresholdWords::tr("%1, but at least %2").arg(left, right);
    }
    return right;
}

template <typename T>
QString span(const Range<T>& range)
{
    if (!range.from) return {};
    return unbroken(ThresholdWords::tr("%1 to %2").arg(valueWords(*range.from), valueWords(*range.to)));
}

} // namespace

QString exactDensity(LarvaePerSquareMetre larvae, const QLocale& locale)
{
    return unbroken(ThresholdWords::tr("%1 larvae/m²").arg(oneDecimal(larvae.value(), locale)));
}

QString perFrame(LarvaePerFrame larvae, const QLocale& locale)
{
    return ThresholdWords::tr("%1 larvae a frame").arg(oneDecimal(larvae.value(), locale));
}

QString money(double amount, const std::string& unit, const QLocale& locale)
{
    return unbroken(QStringLiteral("%1 %2").arg(plain(amount, locale, 5), QString::fromStdString(unit)));
}

QString thresholdSentence(const Threshold& threshold, const QLocale& locale)
{
    return ThresholdWords::tr("The economic threshold is %1 (about %2), or %3.")
        .arg(exactDensity(threshold.larvae, locale), locale.toString(std::llround(threshold.larvae.value())),
            perFrame(threshold.perFrame, locale));
}

QString lossSentence(const Threshold& threshold, const QLocale& locale)
{
    const std::string currency = codeOf(threshold.cost.unit.currency);
    const auto amount = [&](double dollars, const char* per) {
        return unbroken(QStringLiteral("%1 %2").arg(
            locale.toString(dollars, 'f', 2), QString::fromStdString(currency + per)));
    };
    return ThresholdWords::tr("One larva on each square metre costs %1, which is %2.")
        .arg(amount(threshold.moneyPerLarva.value(), "/ac"),
            amount(toDollarsPerHectare(threshold.moneyPerLarva).value(), "/ha"));
}

QString workingLine(const WorkingStep& step, const Threshold& threshold, const QLocale& locale)
{
    QString line;
    for (const WorkingTerm& one : step.terms)
        line = joinedWorking(line, one.sign, term(one.value, one.unit, threshold, locale));
    return line + QStringLiteral(" = ") + term(step.result, step.unit, threshold, locale);
}

QString workingName(WorkingWhat what)
{
    switch (what) {
    case WorkingWhat::SumCost:
        return ThresholdWords::tr("Cost of control");
    case WorkingWhat::CostPerAcre:
        return ThresholdWords::tr("Cost on an acre");
    case WorkingWhat::PricePerBushel:
        return ThresholdWords::tr("Price of a bushel");
    case WorkingWhat::LossPerLarva:
        return ThresholdWords::tr("Loss to one larva on each square metre");
    case WorkingWhat::UsualSeason:
        return ThresholdWords::tr("Larvae whose loss equals the cost");
    case WorkingWhat::DrySeason:
        return ThresholdWords::tr("In a dry season");
    case WorkingWhat::Floor:
        return ThresholdWords::tr("Not below the floor");
    case WorkingWhat::PerFrame:
        return ThresholdWords::tr("In one frame");
    }
    return {};
}

QString noteSentence(
    ThresholdNote note, const Threshold& threshold, const ThresholdRule& rule, const QLocale& locale)
{
    switch (note) {
    case ThresholdNote::PriceBelowPublished:
        return ThresholdWords::tr(
            "The price lies below those of the published table (%1): computed, not published.")
            .arg(span(rule.publishedPrice));
    case ThresholdNote::PriceAbovePublished:
        return ThresholdWords::tr(
            "The price lies above those of the published table (%1): computed, not published.")
            .arg(span(rule.publishedPrice));
    case ThresholdNote::CostBelowPublished:
        return ThresholdWords::tr(
            "The cost lies below those of the published table (%1): computed, not published.")
            .arg(span(rule.publishedCost));
    case ThresholdNote::CostAbovePublished:
        return ThresholdWords::tr(
            "The cost lies above those of the published table (%1): computed, not published.")
            .arg(span(rule.publishedCost));
    case ThresholdNote::LarvaeBelowPublished:
        return ThresholdWords::tr(
            "No published threshold is so low (%1): whether so few larvae do harm has not been shown.")
            .arg(span(rule.publishedLarvae));
    case ThresholdNote::LarvaeAbovePublished:
        return ThresholdWords::tr("No published threshold is so high (%1).").arg(span(rule.publishedLarvae));
    case ThresholdNote::OtherCurrency:
        return ThresholdWords::tr("The published table is in other dollars; the formula is the same.");
    case ThresholdNote::DrySeason:
        return ThresholdWords::tr("You called this a dry season: the usual threshold, %1, is divided by %2.")
            .arg(exactDensity(threshold.usualSeason, locale),
                plain(threshold.drySeasonDivisor.value_or(1.0), locale));
    case ThresholdNote::DivisorNotPublished:
        if (!rule.drySeasonDivisor.value)
            return ThresholdWords::tr("Nobody has published a divisor for a dry season.");
        return ThresholdWords::tr("The divisor is your own; the published one is %1.")
            .arg(plain(*rule.drySeasonDivisor.value, locale));
    case ThresholdNote::AtFloor:
        return ThresholdWords::tr(
            "The formula gives no more than the lowest threshold that holds, so that one stands.");
    case ThresholdNote::FrameNotPublished:
        return ThresholdWords::tr("The frame is your own, %1.").arg(valueWords(threshold.frame));
    }
    return {};
}

QString drySeasonOffer(const Threshold& threshold, const ThresholdRule& rule, const QLocale& locale)
{
    if (threshold.drySeasonDivisor || !rule.drySeasonDivisor.value) return {};
    const double divisor = *rule.drySeasonDivisor.value;
    const LarvaePerSquareMetre dry =
        thresholdAt(rule, threshold.costPerAcre, threshold.pricePerBushel, divisor);
    return ThresholdWords::tr(
        "If you call the season very dry, the published divisor of %1 gives %2; that is yours to choose.")
        .arg(plain(divisor, locale), exactDensity(dry, locale));
}

} // namespace duskrow::text
