// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <numbers>

#include "domain/rules/degree_days.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

HeatMethod methodNamed(const QByteArray& name)
{
    const QList<QByteArray> names{
        "average", "average_clamped", "single_triangle", "double_triangle", "single_sine", "double_sine"};
    const auto at = names.indexOf(name);
    if (at < 0) qFatal("no method %s", name.constData());
    return static_cast<HeatMethod>(at);
}

CutOff cutOffNamed(const QByteArray& name)
{
    const QList<QByteArray> names{"none", "horizontal", "intermediate", "vertical"};
    const auto at = names.indexOf(name);
    if (at < 0) qFatal("no cut-off %s", name.constData());
    return static_cast<CutOff>(at);
}

// The warmth of a day by adding up its course in small steps, without the closed form.
double byIntegration(const HeatTerms& terms, double minimum, double maximum)
{
    constexpr int steps = 200'000;
    const double mean = (minimum + maximum) / 2, half = (maximum - minimum) / 2;
    double sum = 0.0;
    for (int i = 0; i < steps; ++i) {
        const double part = (i + 0.5) / steps; // of the day
        const double shape = terms.method == HeatMethod::SingleSine
            ? -std::cos(2 * std::numbers::pi * part)
            : 1 - 4 * std::abs(part - 0.5); // from -1 up to 1 and back
        const double warm = mean + half * shape;
        const double upper = terms.upper.value_or(1e9);
        double counted = warm;
        if (warm > upper && terms.cutOff == CutOff::Horizontal) counted = upper;
        if (warm > upper && terms.cutOff == CutOff::Intermediate) counted = upper - (warm - upper);
        if (warm > upper && terms.cutOff == CutOff::Vertical) counted = terms.lower;
        if (warm > terms.lower) sum += counted - terms.lower;
    }
    return sum / steps;
}

} // namespace

class DegreeDaysTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyGoldenDay()
    {
        int rows = 0;
        for (const auto& row : readGolden("rules/degree_days.csv")) {
            const HeatTerms terms{methodNamed(row.text("method")), row.number("lower"), row.number("upper"),
                cutOffNamed(row.text("cutoff"))};
            QVERIFY(checkTerms(terms).has_value());
            const double minimum = row.number("tmin"), maximum = row.number("tmax");
            const double next = row.isBlank("tmin_next") ? minimum : row.number("tmin_next");
            // The table leaves an intermediate cut-off below 0 where it falls there.
            const double sum = rawDegreeDays(terms, minimum, maximum, next);
            QVERIFY2(std::abs(sum - row.number("dd")) < 1e-6,
                qPrintable(
                    QStringLiteral("%1 %2 %3-%4: %5 not %6")
                        .arg(QString::fromUtf8(row.text("method")), QString::fromUtf8(row.text("cutoff")))
                        .arg(minimum)
                        .arg(maximum)
                        .arg(sum, 0, 'f', 7)
                        .arg(row.number("dd"), 0, 'f', 6)));
            QVERIFY(degreeDays(terms, minimum, maximum, next) >= 0.0);
            ++rows;
        }
        QVERIFY(rows > 200);
    }

    // Values as printed, to the digits printed. One of them contradicts its own source (a day wholly above
    // the upper limit gives the whole span, as the same source says of the double sine) and is held to that.
    void everyPublishedValue()
    {
        int rows = 0;
        for (const auto& row : readGolden("rules/degree_days_published.csv")) {
            const bool isInconsistent = row.text("agree").startsWith("NO");
            const bool isMeanOnly = row.isBlank("tmin");
            const HeatTerms terms{methodNamed(row.text("method")), row.number("lower"),
                row.isBlank("upper") ? std::nullopt : std::optional(row.number("upper")),
                cutOffNamed(row.text("cutoff"))};
            const double minimum = isMeanOnly ? 64.0 : row.number("tmin");
            const double maximum = isMeanOnly ? 64.0 : row.number("tmax");
            const double sum = degreeDays(terms, minimum, maximum, minimum);
            const QByteArray printed = row.text("published");
            const auto point = printed.indexOf('.');
            const double digits = point < 0 ? 0.0 : static_cast<double>(printed.size() - point - 1);
            const double wanted = isInconsistent ? 21.0 : row.number("published");
            QVERIFY2(std::abs(sum - wanted) <= 0.5 * std::pow(10.0, -digits) + 1e-9, printed.constData());
            ++rows;
        }
        QCOMPARE(rows, 13);
    }

    void twoConventionsOfTheAverage_data()
    {
        QTest::addColumn<double>("minimum");
        QTest::addColumn<double>("maximum");
        QTest::addColumn<double>("lower");
        QTest::addColumn<double>("upper");
        QTest::addColumn<double>("ofMean"); // the mean is capped: Nebraska
        QTest::addColumn<double>("ofEnds"); // maximum and minimum are capped first: Iowa
        const auto row = [](const char* name, double minimum, double maximum, double lower, double upper,
                             double ofMean, double ofEnds) {
            QTest::newRow(name) << minimum << maximum << lower << upper << ofMean << ofEnds;
        };
        // University of Nebraska, CropWatch 2018, 2020 and 2021: low 38 F, high 75 F on the daily mean.
        row("55 to 65", 55, 65, 38, 75, 22, 22);
        row("55 to 70", 55, 70, 38, 75, 24.5, 24.5);
        row("50 to 85", 50, 85, 38, 75, 29.5, 24.5);
        row("50 to 70", 50, 70, 38, 75, 22, 22);
        row("a mean above the limit", 70, 90, 38, 75, 37, 34.5);
        // Iowa State University, ICM 28 June 1999: maximum capped at 86 F, minimum floored at 50 F.
        row("60 to 85", 60, 85, 50, 86, 22.5, 22.5);
        row("45 to 75", 45, 75, 50, 86, 10, 12.5);
        row("40 to 60", 40, 60, 50, 86, 0, 5);
        row("60 to 95", 60, 95, 50, 86, 27.5, 23);
        row("35 to 48", 35, 48, 50, 86, 0, 0);
    }

    void twoConventionsOfTheAverage()
    {
        QFETCH(double, minimum);
        QFETCH(double, maximum);
        QFETCH(double, lower);
        QFETCH(double, upper);
        QFETCH(double, ofMean);
        QFETCH(double, ofEnds);
        const HeatTerms mean{HeatMethod::Average, lower, upper, CutOff::Horizontal};
        const HeatTerms ends{HeatMethod::AverageClamped, lower, upper, CutOff::Horizontal};
        QCOMPARE(degreeDays(mean, minimum, maximum, minimum), ofMean);
        QCOMPARE(degreeDays(ends, minimum, maximum, minimum), ofEnds);
    }

    void theClosedFormIsTheAreaUnderTheCourse()
    {
        const double days[][2]{
            {-5, 4}, {3, 15}, {5, 20}, {7, 14}, {8, 31}, {12, 34}, {15, 38}, {36, 42}, {2, 40}};
        for (const HeatMethod method : {HeatMethod::SingleSine, HeatMethod::SingleTriangle})
            for (const CutOff cutOff :
                {CutOff::None, CutOff::Horizontal, CutOff::Intermediate, CutOff::Vertical})
                for (const auto& day : days) {
                    const HeatTerms terms{method, 7, 30, cutOff};
                    const double sum = rawDegreeDays(terms, day[0], day[1], day[0]);
                    QVERIFY(std::abs(sum - byIntegration(terms, day[0], day[1])) < 2e-4);
                }
    }

    // Base 7, limit 30 degrees Celsius, single sine; computed by integration.
    void cutOffsOfTheSine()
    {
        const double cases[][6]{{8, 31, 12.5, 12.4111, 12.3222, 9.3354},
            {12, 34, 16.0, 15.2621, 14.5242, 8.8120}, {15, 38, 19.5, 17.4186, 15.3371, 8.1826},
            {36, 42, 32.0, 23.0, 14.0, 0.0}};
        for (const auto& one : cases)
            for (int cutOff = 0; cutOff < 4; ++cutOff) {
                const HeatTerms terms{HeatMethod::SingleSine, 7, 30, static_cast<CutOff>(cutOff)};
                QVERIFY(std::abs(degreeDays(terms, one[0], one[1], one[0]) - one[2 + cutOff]) < 5e-5);
            }
    }

    void aDoubleMethodLooksAtTheNextNight()
    {
        const HeatTerms single{HeatMethod::SingleSine, 7};
        const HeatTerms twice{HeatMethod::DoubleSine, 7};
        const double mean = (degreeDays(single, 3, 15, 3) + degreeDays(single, 9, 15, 9)) / 2;
        QCOMPARE(degreeDays(twice, 3, 15, 9), mean);
        // A night after which it is warmer than the warmest hour of the day before.
        QCOMPARE(degreeDays(twice, 3, 15, 18), (degreeDays(single, 3, 15, 3) + 8.0) / 2);
    }

    void fahrenheitIsTheSameWarmth()
    {
        const HeatTerms celsius{HeatMethod::SingleSine, 10, 30, CutOff::Horizontal};
        const HeatTerms fahrenheit{
            HeatMethod::SingleSine, toFahrenheit(10), toFahrenheit(30), CutOff::Horizontal};
        for (double minimum = -5; minimum < 30; minimum += 2.5) {
            const double sum = degreeDays(celsius, minimum, minimum + 13, minimum);
            const double other = degreeDays(
                fahrenheit, toFahrenheit(minimum), toFahrenheit(minimum + 13), toFahrenheit(minimum));
            QVERIFY(std::abs(other - 1.8 * sum) < 1e-9);
        }
        QCOMPARE(toCelsius(toFahrenheit(-40)), -40.0);
    }

    void anIntermediateCutOffNeverTakesMoreThanThereIs()
    {
        const HeatTerms terms{HeatMethod::SingleSine, 7, 20, CutOff::Intermediate};
        QVERIFY(rawDegreeDays(terms, 36, 42, 36) < 0.0);
        QCOMPARE(degreeDays(terms, 36, 42, 36), 0.0);
    }

    void aDayWithoutAnyRiseIsFlat()
    {
        for (int method = 0; method < 6; ++method) {
            const HeatTerms terms{static_cast<HeatMethod>(method), 7};
            QCOMPARE(degreeDays(terms, 12, 12, 12), 5.0);
            QCOMPARE(degreeDays(terms, 7, 7, 7), 0.0);
            QCOMPARE(degreeDays(terms, -3, -3, -3), 0.0);
        }
    }

    void termsThatCannotBe()
    {
        using enum HeatMethod;
        const auto code = [](const HeatTerms& terms) {
            const auto checked = checkTerms(terms);
            return checked ? -1 : static_cast<int>(checked.error().code);
        };
        QCOMPARE(code({SingleSine, 7}), -1);
        QCOMPARE(code({SingleSine, 7, 5, CutOff::None}), -1);
        QCOMPARE(code({SingleSine, 7, {}, CutOff::Horizontal}), static_cast<int>(ErrorCode::Empty));
        QCOMPARE(code({SingleSine, 7, 7, CutOff::Vertical}), static_cast<int>(ErrorCode::LimitsCrossed));
        QCOMPARE(code({SingleSine, 7, std::nan(""), CutOff::Vertical}),
            static_cast<int>(ErrorCode::LimitsCrossed));
        QCOMPARE(code({AverageClamped, 7, 30, CutOff::Vertical}), static_cast<int>(ErrorCode::UnknownCode));
        QCOMPARE(code({AverageClamped, 7, 30, CutOff::Horizontal}), -1);
    }

    // 0.1 has no exact binary form: a plain sum of a million of them is off in the ninth digit.
    void aLongSumKeepsItsDigits()
    {
        const HeatTerms terms{HeatMethod::Average, 0};
        std::vector<DayTemperature> days(1'000'000, {dayOf(2026, 4, 1), 0.1, 0.1});
        const auto sums = sumDegreeDays(terms, days);
        QVERIFY(std::abs(sums.back().total - 100'000.0) < 1e-10);
        double plain = 0.0;
        for (const auto& sum : sums) plain += sum.degreeDays;
        QVERIFY(std::abs(plain - 100'000.0) > 1e-7);
        QVERIFY(sumDegreeDays(terms, {}).empty());
    }

    // University of Illinois, bulletin 10, 1998: five days of mean 70 F above 50 F make 100.
    void aSeriesOfDays()
    {
        std::vector<DayTemperature> days;
        for (unsigned day = 1; day <= 5; ++day) days.push_back({dayOf(2026, 5, day), 60.0, 80.0});
        const auto sums = sumDegreeDays({HeatMethod::Average, 50}, days);
        QCOMPARE(sums.size(), std::size_t{5});
        QCOMPARE(sums[1].total, 40.0);
        QCOMPARE(sums.back().total, 100.0);
        QCOMPARE(sums.back().day, dayOf(2026, 5, 5));
    }
};

QTEST_APPLESS_MAIN(DegreeDaysTest)
#include "degree_days_test.moc"
