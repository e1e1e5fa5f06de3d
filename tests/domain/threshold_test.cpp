// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/threshold_table.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

std::string typed(double number)
{
    return QByteArray::number(number, 'g', 15).toStdString();
}

ThresholdInput perAcreAndBushel(const std::string& cost, const std::string& price)
{
    ThresholdInput input;
    input.cost.sum = cost;
    input.costUnit = "CAD/ac";
    input.price = price;
    input.priceUnit = "CAD/bu";
    return input;
}

bool isClose(double a, double b, double relative = 1e-12)
{
    return std::abs(a - b) <= relative * std::abs(b);
}

bool has(const Threshold& threshold, ThresholdNote note)
{
    return std::find(threshold.notes.begin(), threshold.notes.end(), note) != threshold.notes.end();
}

// A step worked with pencil and paper.
double worked(const WorkingStep& step)
{
    double value = 0.0;
    for (const WorkingTerm& term : step.terms) {
        switch (term.sign) {
        case WorkingSign::Begin:
            value = term.value;
            break;
        case WorkingSign::Plus:
            value += term.value;
            break;
        case WorkingSign::Times:
            value *= term.value;
            break;
        case WorkingSign::DividedBy:
            value /= term.value;
            break;
        case WorkingSign::AtLeast:
            value = std::max(value, term.value);
            break;
        }
    }
    return value;
}

} // namespace

class ThresholdTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY(read.has_value());
        m_protocol = *read;
        m_rule = m_protocol.thresholdRules.front();
    }

    // Government of Alberta, Economic thresholds for insects attacking oilseeds: all 42 cells.
    void everyCellOfThePublishedTable()
    {
        int cells = 0;
        for (const auto& row : readGolden("rules/threshold_table.csv"))
            for (int price = 6; price <= 12; ++price) {
                const auto threshold = of(row.text("cost_per_acre").toStdString(), std::to_string(price));
                const auto printed = row.whole("price_" + QByteArray::number(price));
                QCOMPARE(std::llround(threshold.larvae.value()), printed);
                QVERIFY(threshold.notes.empty());
                ++cells;
            }
        QCOMPARE(cells, 42);
    }

    // The same table by the hectare and the tonne, of which the headings alone are rounded to whole dollars.
    // The numbers of larvae hold for the amounts behind those headings.
    void theHeadingsOfTheMetricHalf()
    {
        const QList<int> hectares{17, 20, 22, 25, 27, 30};
        const QList<int> tonnes{265, 309, 353, 397, 441, 485, 529};
        for (int i = 0; i < hectares.size(); ++i)
            QCOMPARE(std::lround(inUnit(DollarsPerAcre{7.0 + i}, LandUnit::Hectare)), hectares[i]);
        for (int i = 0; i < tonnes.size(); ++i)
            QCOMPARE(
                std::lround(inUnit(DollarsPerBushel{6.0 + i}, HarvestUnit::Tonne, anyThreshold().bushel)),
                tonnes[i]);
        for (const int cost : hectares)
            for (const int price : tonnes) {
                ThresholdInput input = perAcreAndBushel(std::to_string(cost), std::to_string(price));
                input.costUnit = "CAD/ha";
                input.priceUnit = "CAD/t";
                // 30 dollars and 265 give 34.9, where the table prints the 34 of 12 dollars and 6.
                for (const ThresholdNote note : of(input).notes)
                    QCOMPARE(note, ThresholdNote::LarvaeAbovePublished);
            }
    }

    // Canola Council of Canada, thresholds after Bracken and Bucher 1977.
    void workedExamples()
    {
        for (const auto& row : readGolden("rules/economic_threshold.csv")) {
            const auto threshold =
                of(row.text("cost_per_ac").toStdString(), row.text("price_per_bu").toStdString());
            QVERIFY(std::abs(threshold.larvae.value() - row.number("et_per_m2")) < 1e-6);
            QVERIFY(std::abs(threshold.perFrame.value() - row.number("et_per_quarter_m2_frame")) < 1e-6);
            if (!row.isBlank("published_rounded"))
                QCOMPARE(std::llround(threshold.larvae.value()), row.whole("published_rounded"));
        }
    }

    void otherPrintedPoints_data()
    {
        QTest::addColumn<QString>("cost");
        QTest::addColumn<QString>("price");
        QTest::addColumn<int>("printed");
        const auto row = [](const char* name, const char* cost, const char* price, int printed) {
            QTest::newRow(name) << QString::fromLatin1(cost) << QString::fromLatin1(price) << printed;
        };
        row("Canola Watch, 7 February and 8 August 2013", "8", "12", 11);
        row("Canola Watch, 14 and 21 August 2013, 17 August 2011", "12", "12", 17);
        row("Saskatchewan news release, 8 August 2006: the lowest", "7", "12", 10);
        row("Saskatchewan news release, 8 August 2006: the highest", "12", "6", 34);
        row("Canola Watch, 25 July 2019, a quiz; answer computed", "12", "10", 21);
    }

    void otherPrintedPoints()
    {
        QFETCH(QString, cost);
        QFETCH(QString, price);
        QFETCH(int, printed);
        QCOMPARE(std::lround(of(cost.toStdString(), price.toStdString()).larvae.value()), printed);
    }

    // Canola Watch, 14 August 2013: 20 larvae a square metre cost 1.16 bushels an acre. Canola Watch, 28
    // August 2013: at 20 dollars an acre the threshold is double that at 10.
    void whatLarvaeCost()
    {
        QVERIFY(isClose(20.0 * m_rule.lossPerLarva.value->value(), 1.16));
        QVERIFY(isClose(of("20", "10").larvae.value(), 2.0 * of("10", "10").larvae.value()));
        const Threshold threshold = of("12", "10");
        QVERIFY(isClose(threshold.moneyPerLarva.value(), 0.58));
        QVERIFY(isClose(toDollarsPerHectare(threshold.moneyPerLarva).value(), 0.58 / 0.40468564224));
        QVERIFY(isClose(threshold.moneyPerLarva.value() * threshold.larvae.value(), 12.0));
        // 0.325 g a larva on each of 10,000 square metres, Bracken and Bucher 1977, is 3.25 kg.
        QVERIFY(std::abs(threshold.yieldPerLarva.value() - 3.25) < 0.005);
    }

    // Canola Encyclopedia: divide by 1.48. Numbers beyond the printed table are computed, not published.
    void aDrySeasonIsTheUsersOwnChoice_data()
    {
        QTest::addColumn<int>("cost");
        QTest::addColumn<int>("price");
        QTest::addColumn<double>("larvae");
        QTest::newRow("8 and 8") << 8 << 8 << 11.65;
        QTest::newRow("12 and 10") << 12 << 10 << 13.98;
        QTest::newRow("20 and 8") << 20 << 8 << 29.12;
        QTest::newRow("8 and 20") << 8 << 20 << 4.66;
        QTest::newRow("16 and 16") << 16 << 16 << 11.65;
    }

    void aDrySeasonIsTheUsersOwnChoice()
    {
        QFETCH(int, cost);
        QFETCH(int, price);
        QFETCH(double, larvae);
        ThresholdInput input = perAcreAndBushel(std::to_string(cost), std::to_string(price));
        const Threshold usual = of(input);
        QVERIFY(!usual.drySeasonDivisor && !has(usual, ThresholdNote::DrySeason));
        input.drySeasonDivisor = "1.48";
        const Threshold dry = of(input);
        QVERIFY(std::abs(dry.larvae.value() - larvae) < 0.005);
        QVERIFY(dry.drySeasonDivisor == 1.48 && has(dry, ThresholdNote::DrySeason));
        QVERIFY(!has(dry, ThresholdNote::DivisorNotPublished));
        QVERIFY(dry.usualSeason == usual.larvae);
        QVERIFY(isClose(dry.moneyPerLarva.value() * dry.larvae.value(), cost));
        input.drySeasonDivisor = "1.6";
        QVERIFY(has(of(input), ThresholdNote::DivisorNotPublished));
    }

    void moreCostMoreLarvaeMorePriceFewer()
    {
        for (int price = 1; price < 60; ++price)
            for (int cost = 1; cost < 60; ++cost) {
                const auto here = of(std::to_string(cost), std::to_string(price)).larvae;
                QVERIFY(of(std::to_string(cost + 1), std::to_string(price)).larvae > here);
                QVERIFY(of(std::to_string(cost), std::to_string(price + 1)).larvae < here);
            }
    }

    void theUnitDoesNotMatter()
    {
        const double bushel = m_rule.bushel.value->value();
        for (double cost = 3.1; cost < 60; cost *= 1.7)
            for (double price = 2.3; price < 60; price *= 1.6) {
                ThresholdInput input = perAcreAndBushel(typed(cost), typed(price));
                const Threshold imperial = of(input);
                input.costUnit = "CAD/ha";
                input.cost.sum = typed(cost / 0.40468564224);
                QVERIFY(isClose(of(input).larvae.value(), imperial.larvae.value()));
                input.priceUnit = "CAD/t";
                input.price = typed(price * 1000.0 / bushel);
                QVERIFY(isClose(of(input).larvae.value(), imperial.larvae.value()));
                QVERIFY(isClose(of(input).moneyPerLarva.value(), imperial.moneyPerLarva.value()));
            }
    }

    void theWorkingCanBeCheckedByHand()
    {
        ThresholdInput input = perAcreAndBushel("", "441");
        input.cost = {"", "20", "8.5", "1.5"};
        input.costUnit = "USD/ha";
        input.priceUnit = "USD/t";
        input.drySeasonDivisor = "1.48";
        const Threshold threshold = of(input);
        QCOMPARE(threshold.working.size(), std::size_t{7});
        std::vector<double> known{20.0, 8.5, 1.5, 441.0, 1.48, hectaresPerAcre, 0.02267961850, 0.058, 0.25};
        for (const WorkingStep& step : threshold.working) {
            QVERIFY(isClose(worked(step), step.result));
            for (const WorkingTerm& term : step.terms)
                QVERIFY2(std::any_of(known.begin(), known.end(),
                             [&](double one) { return isClose(one, term.value, 1e-14); }),
                    "a number out of nowhere");
            known.push_back(step.result);
        }
        QVERIFY(threshold.working.back().result == threshold.perFrame.value());
    }

    void notesSayWhereThePrintedTableEnds_data()
    {
        QTest::addColumn<QStringList>("typed"); // cost, its unit, price, its unit
        QTest::addColumn<QList<int>>("notes");
        const auto row = [](const char* name, const char* line, std::initializer_list<ThresholdNote> notes) {
            QList<int> numbers;
            for (const ThresholdNote note : notes) numbers << static_cast<int>(note);
            QTest::newRow(name) << QString::fromLatin1(line).split(QLatin1Char(' ')) << numbers;
        };
        using Note = ThresholdNote;
        row("a corner", "7 CAD/ac 12 CAD/bu", {});
        row("a little dearer", "12.01 CAD/ac 10 CAD/bu", {Note::CostAbovePublished});
        row("cheaper", "6.99 CAD/ac 10 CAD/bu", {Note::CostBelowPublished});
        row("a high price", "12 CAD/ac 16 CAD/bu", {Note::PriceAbovePublished});
        row("a low price and more larvae than any printed", "12 CAD/ac 5.9 CAD/bu",
            {Note::PriceBelowPublished, Note::LarvaeAbovePublished});
        row("fewer larvae than any printed", "8 CAD/ac 16 CAD/bu",
            {Note::PriceAbovePublished, Note::LarvaeBelowPublished});
        row("the dearest heading by the hectare", "30 CAD/ha 529 CAD/t", {});
        row("beyond it", "31 CAD/ha 530 CAD/t", {Note::PriceAbovePublished, Note::CostAbovePublished});
        row("other dollars", "20 USD/ac 10 USD/bu", {Note::OtherCurrency});
    }

    void notesSayWhereThePrintedTableEnds()
    {
        QFETCH(QStringList, typed);
        QFETCH(QList<int>, notes);
        ThresholdInput input = perAcreAndBushel(typed[0].toStdString(), typed[2].toStdString());
        input.costUnit = typed[1].toStdString();
        input.priceUnit = typed[3].toStdString();
        QList<int> found;
        for (const ThresholdNote note : of(input).notes) found << static_cast<int>(note);
        QCOMPARE(found, notes);
    }

    void aFloorHolds()
    {
        ThresholdRule rule = m_rule;
        rule.floor.value = LarvaePerSquareMetre{10.0};
        const auto low = thresholdOf(m_protocol, rule, perAcreAndBushel("8", "20"));
        QVERIFY(low->larvae == LarvaePerSquareMetre{10.0} && has(*low, ThresholdNote::AtFloor));
        QVERIFY(isClose(low->usualSeason.value(), 8.0 / 1.16));
        QCOMPARE(low->perFrame.value(), 2.5);
        for (const WorkingStep& step : low->working) QVERIFY(isClose(worked(step), step.result));
        const auto high = thresholdOf(m_protocol, rule, perAcreAndBushel("12", "10"));
        QVERIFY(!has(*high, ThresholdNote::AtFloor) && isClose(high->larvae.value(), 12.0 / 0.58));
        // Nobody has published one for this pest, so nothing holds the number up.
        QVERIFY(!m_rule.floor.value && of("8", "20").larvae < LarvaePerSquareMetre{7.0});
    }

    void theFrameCanBeTheUsersOwn()
    {
        ThresholdInput input = perAcreAndBushel("12", "10");
        QVERIFY(isClose(of(input).perFrame.value(), of(input).larvae.value() / 4.0));
        input.frameM2 = "1";
        QVERIFY(of(input).perFrame.value() == of(input).larvae.value());
        QVERIFY(has(of(input), ThresholdNote::FrameNotPublished));
    }

    void theTableStandsAroundTheUsersPoint_data()
    {
        QTest::addColumn<double>("own");
        QTest::addColumn<QList<double>>("values");
        QTest::newRow("12") << 12.0 << QList<double>{9, 10, 11, 12, 13, 14, 15};
        QTest::newRow("between steps") << 12.37 << QList<double>{10, 11, 12, 12.37, 13, 14, 15};
        QTest::newRow("a tonne") << 441.0 << QList<double>{300, 350, 400, 441, 450, 500, 550};
        QTest::newRow("a hectare") << 30.0 << QList<double>{24, 26, 28, 30, 32, 34, 36};
        QTest::newRow("little") << 1.0 << QList<double>{0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.3};
    }

    void theTableStandsAroundTheUsersPoint()
    {
        QFETCH(double, own);
        QFETCH(QList<double>, values);
        const auto found = stepsAround(own);
        QVERIFY2(QList<double>(found.begin(), found.end()) == values, qPrintable(QString::number(own)));
    }

    void everyCellOfTheTableIsAThreshold()
    {
        const Threshold threshold = of("12", "12");
        const ThresholdTable table = thresholdTable(m_rule, threshold);
        QVERIFY(table.cells[table.ownCost][table.ownPrice].larvae == threshold.larvae);
        for (std::size_t i = 0; i < table.costs.size(); ++i)
            for (std::size_t j = 0; j < table.prices.size(); ++j) {
                const auto& cell = table.cells[i][j];
                QVERIFY(isClose(
                    cell.larvae.value(), of(typed(table.costs[i]), typed(table.prices[j])).larvae.value()));
                QCOMPARE(cell.isPublished, table.costs[i] <= 12.0 && table.prices[j] <= 12.0);
            }
    }

    void thresholdsBelongToTheirCrops()
    {
        QCOMPARE((*thresholdRuleFor(m_protocol, ""))->id, std::string("larvae-threshold"));
        QCOMPARE((*thresholdRuleFor(m_protocol, "mustard"))->id, std::string("larvae-threshold"));
        const auto flax = thresholdRuleFor(m_protocol, "flax");
        QVERIFY(!flax.has_value() && flax.error().code == ErrorCode::ProtocolNoThreshold);
    }

    void theResultSaysByWhichRules()
    {
        const Threshold threshold = of("12", "10");
        QCOMPARE(threshold.protocol, std::string("bertha-armyworm"));
        QCOMPARE(threshold.protocolVersion, m_protocol.version);
        QCOMPARE(threshold.rule, std::string("larvae-threshold"));
        QVERIFY(m_rule.trialYears.from == std::chrono::year{1974} && m_rule.trialVarieties.value == 2);
    }

private:
    [[nodiscard]] Threshold of(const ThresholdInput& input) const
    {
        auto threshold = thresholdOf(m_protocol, m_rule, input);
        if (!threshold) qFatal("refused: %s", threshold.error().args.at(0).c_str());
        return std::move(*threshold);
    }
    [[nodiscard]] Threshold of(const std::string& cost, const std::string& price) const
    {
        return of(perAcreAndBushel(cost, price));
    }
    [[nodiscard]] Threshold anyThreshold() const { return of("12", "10"); }

    Protocol m_protocol;
    ThresholdRule m_rule;
};

QTEST_APPLESS_MAIN(ThresholdTest)
#include "threshold_test.moc"
